//! Someone opens the page for the first time.

use serde_json::json;

use super::go_to_the_freezer::the_heaviest;
use crate::find::{Name, Role};
use crate::page::{Page, Screen};
use crate::see;

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
