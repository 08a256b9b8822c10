//! Someone opens the page for the first time.

use serde_json::json;

use super::go_to_the_freezer::the_heaviest;
use crate::find::{Name, Role};
use crate::page::{Page, Screen};
use crate::see;
use crate::server::Programs;

#[test]
fn it_starts_on_a_phone() {
    let page = Page::open(Screen::PHONE);
    see::shown(&page, Role::Heading, "Hindsaddle");
    see::no_sideways_scrolling(&page);
}

#[test]
fn it_starts_on_a_desk() {
    let page = Page::open(Screen::DESKTOP);
    see::shown(&page, Role::Heading, "Hindsaddle");
}

#[test]
fn the_longest_numbers_stay_inside_the_tally() {
    for screen in [Screen::PHONE, Screen::DESKTOP] {
        let page = Page::open_at(screen, &the_heaviest());
        see::says(&page, Role::Region, Name::from("Tally"), "lb");
        let outside = "(() => {
            const edge = document.querySelector('.tally').getBoundingClientRect().right;
            const seen = [...document.querySelectorAll('.tally *')];
            return seen.filter((part) => part.getBoundingClientRect().right > edge).map((part) => part.outerHTML);
        })()";
        assert_eq!(page.script(outside), json!([]));
    }
}

/// Where the parts of the first screen are, and what the plate and the tally show.
const FIRST_SCREEN: &str = "(() => {
    const place = (part) => { const { x, y, width, height } = part.getBoundingClientRect(); return [x, y, width, height]; };
    const parts = ['.header', '.animal summary', '.stage', '#plate', '.tally'].map((part) => document.querySelector(part));
    const meat = [...document.querySelectorAll('#plate .meat')].map((path) => path.getAttribute('d'));
    return { places: parts.map(place), meat, tally: document.querySelector('.tally').innerText };
})()";

/// Before the program has arrived the page shows what it will show, and nothing jumps when it takes over. On a desk the
/// animal's form opens with the program, so its head is not compared there.
#[test]
fn the_plate_is_seen_before_the_program_and_stays_where_it_is() {
    for screen in [Screen::PHONE, Screen::DESKTOP] {
        let page = Page::open_before_its_program(screen, "");
        let waiting = page.script("document.getElementById('start') !== null");
        assert_eq!(waiting, json!(true), "the program was there already");
        page.script("new PerformanceObserver((list) => { window.shifts = (window.shifts ?? []).concat(list.getEntries().map((shift) => [shift.value, ...shift.sources.map(({ node }) => node?.outerHTML?.slice(0, 90))])); }).observe({ type: 'layout-shift', buffered: true }); true");
        let before = page.script(FIRST_SCREEN);
        page.answer_for_programs(Programs::There);
        see::shown(&page, Role::Heading, "Hindsaddle");
        let after = page.script(FIRST_SCREEN);
        assert_eq!(before["meat"], after["meat"]);
        assert_eq!(before["tally"], after["tally"]);
        let places = |seen: &serde_json::Value| {
            let mut places = seen["places"].as_array().expect("places").clone();
            if !screen.touch {
                places.remove(1);
            }
            places
        };
        assert_eq!(places(&before), places(&after));
        page.settle();
        assert_eq!(page.script("window.shifts ?? []"), json!([]), "something jumped");
    }
}

/// Whoever has a plan is not shown another one's numbers while the program is on its way.
#[test]
fn an_own_plan_does_not_begin_as_the_example() {
    let page = Page::open_before_its_program(Screen::PHONE, &the_heaviest());
    let seen = page.script("['#plate .body', '#plate .part-fill', '.tally', '.animal h2'].map((part) => getComputedStyle(document.querySelector(part)).visibility)");
    assert_eq!(seen, json!(["visible", "hidden", "hidden", "hidden"]));
    page.answer_for_programs(Programs::There);
    see::says(&page, Role::Region, Name::from("Tally"), "lb");
}

#[test]
fn a_program_that_cannot_be_fetched_is_said() {
    let page = Page::open_before_its_program(Screen::PHONE, "");
    page.answer_for_programs(Programs::Missing);
    let said = "document.querySelector('#start [role=alert]')?.textContent ?? ''";
    let wait = format!(
        "new Promise((found) => (function look() {{ const said = {said}; if (said) found(said); else requestAnimationFrame(look); }})())"
    );
    assert!(page.script(&wait).as_str().unwrap().contains("The plan is kept in the address"));
    assert!(!page.complaints().is_empty(), "what was missing is logged");
}
