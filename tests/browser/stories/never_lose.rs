//! Things go wrong: windows close early, two are open at once, memory is full or spoiled, the program stops. Nothing
//! that was decided is lost, and what happened is said.

use crate::act;
use crate::find::{Name, Role};
use crate::folder::Folder;
use crate::page::{Page, Screen};
use crate::see;

fn tally(page: &Page) -> String {
    see::text(page, Role::Status, Name::from("Tally"))
}

/// The address is written a moment after an edit. Whoever reloads before that still finds the edit.
#[test]
fn an_edit_outlives_a_reload_at_once() {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Neck becomes", "Stew");
    let before = page.fragment_of_plan();
    act::choose(&page, "Knuckle becomes", "Grind");
    let edited = tally(&page);
    page.script("location.reload(); true");
    see::shown(&page, Role::Heading, "Hindsaddle");
    page.until("the edit, in the address, too", || {
        let (says, address) = (tally(&page), page.fragment());
        if says == edited && address != before { Ok(()) } else { Err(format!("{says} {address}")) }
    });
    // And whoever reloads at the very moment in which the edit reaches the address gets the address before it.
    page.script(&format!("history.replaceState(null, '', '{before}'); location.reload(); true"));
    page.until("the edit again", || {
        let (says, address) = (tally(&page), page.fragment());
        if says == edited && address != before { Ok(()) } else { Err(format!("{says} {address}")) }
    });
    // And whoever reloads in the same breath, before anything that waits has been written, can still take a step back.
    page.script(
        "const knuckle = document.querySelector('select[aria-label=\"Knuckle becomes\"]'); \
         knuckle.selectedIndex = [...knuckle.options].findIndex(option => option.text.trim() === 'Stew'); \
         knuckle.dispatchEvent(new Event('change', { bubbles: true })); location.reload(); true",
    );
    page.reload();
    assert_ne!(tally(&page), edited);
    act::press(&page, Role::Button, "Undo");
    see::says(&page, Role::Status, Name::from("Tally"), &edited);
}

/// Two windows share what the browser remembers; each keeps its own plan.
#[test]
fn two_windows_keep_a_plan_each() {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Knuckle becomes", "Stew");
    page.fragment_of_plan();
    let mine = tally(&page);
    // What another window of the same browser writes.
    let theirs = "1DCBVDKh____-izo";
    page.script(&format!("localStorage.setItem('hindsaddle.plan', '{theirs}'); true"));
    page.reload();
    assert_eq!(tally(&page), mine);
}

#[test]
fn spoiled_memory_is_put_aside_and_said() {
    for spoiled in ["1nonsense", "", "9later", "\u{202e}<img onerror=alert(1)>", &"x".repeat(100_000)] {
        let page = Page::open(Screen::DESKTOP);
        let set = format!(
            "localStorage.setItem('hindsaddle.plan', {}); sessionStorage.clear(); history.replaceState(null, '', location.pathname); true",
            serde_json::json!(spoiled)
        );
        page.hide();
        page.script(&set);
        page.reload();
        see::shown(&page, Role::Heading, "Hindsaddle");
        see::shown(&page, Role::Alert, Name::Any);
        let aside = page.remembered("hindsaddle.set_aside");
        assert_eq!(aside.as_str(), Some(spoiled));
    }
}

/// Where there is no room to set it aside, it stays where it is.
#[test]
fn spoiled_memory_is_never_written_over() {
    let page = Page::open(Screen::DESKTOP);
    page.hide();
    page.script("localStorage.setItem('hindsaddle.plan', '1nonsense'); sessionStorage.clear(); history.replaceState(null, '', location.pathname); true");
    page.reload();
    page.hide();
    page.script("localStorage.removeItem('hindsaddle.set_aside'); localStorage.setItem('hindsaddle.plan', '1nonsense'); (set => { Storage.prototype.setItem = function (name, text) { if (name === 'hindsaddle.set_aside') throw new DOMException('full', 'QuotaExceededError'); return set.call(this, name, text); }; })(Storage.prototype.setItem); true");
    act::choose(&page, "Knuckle becomes", "Grind");
    see::says(&page, Role::Alert, Name::Any, "will not remember");
    assert_eq!(page.remembered("hindsaddle.plan").as_str(), Some("1nonsense"));
}

#[test]
fn a_full_memory_is_said_and_the_address_has_the_plan() {
    let page = Page::open(Screen::DESKTOP);
    let before = page.fragment_of_plan();
    page.script(
        "Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }; true",
    );
    act::choose(&page, "Knuckle becomes", "Grind");
    see::says(&page, Role::Alert, Name::Any, "is all in the address");
    // What is no part of the plan says so, too.
    act::press(&page, Role::Button, "Dismiss");
    act::press(&page, Role::Button, "kg");
    see::says(&page, Role::Alert, Name::Any, "will not remember");
    act::press(&page, Role::Button, "lb");
    let edited = tally(&page);
    page.until("the plan in the address", || {
        let fragment = page.fragment();
        if fragment == before { Err(fragment) } else { Ok(()) }
    });
    let other = page.open_in_second_profile(Screen::DESKTOP, &page.fragment());
    assert_eq!(tally(&other), edited);
}

/// The document refuses a new element, on which the framework panics: a real stop of the program, not an event that looks
/// like one.
#[test]
fn a_program_that_stops_says_so_and_offers_the_same_plan() {
    let page = Page::open(Screen::PHONE);
    act::choose(&page, "Knuckle becomes", "Grind");
    let edited = tally(&page);
    page.script("Node.prototype.insertBefore = () => { throw new Error('refused'); }; true");
    page.script("document.querySelector('.tally-toggle').click(); document.querySelector('[aria-label=\"Undo\"]').click(); document.querySelector('.figure').click(); true");
    page.until("the program to stop", || {
        let complaints = page.complaints();
        if complaints.iter().any(|complaint| complaint.contains("unreachable")) {
            Ok(())
        } else {
            Err(complaints.join("\n"))
        }
    });
    see::says(&page, Role::Alert, Name::Any, "Nothing you decided is lost");
    act::press(&page, Role::Button, "Open the same plan again");
    see::gone(&page, Role::Button, "Open the same plan again");
    assert_eq!(tally(&page), edited);
}

/// A link that is pasted over a plan makes a step in the browser's history; both ways along it are ways to a plan.
#[test]
fn back_and_forward_lead_from_plan_to_plan() {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Knuckle becomes", "Stew");
    let (mine, says) = (page.fragment_of_plan(), tally(&page));
    page.go_to("#1DCBVDKh____-izo");
    see::shown(&page, Role::Button, "Keep both");
    let theirs = tally(&page);
    assert_ne!(theirs, says);
    act::go_back(&page);
    page.until("one's own plan", || if tally(&page) == says { Ok(()) } else { Err(tally(&page)) });
    assert_eq!(page.fragment_of_plan(), mine);
    page.script("history.forward()");
    page.until("the other plan", || if tally(&page) == theirs { Ok(()) } else { Err(tally(&page)) });
    act::press(&page, Role::Button, "Undo");
    assert_eq!(tally(&page), says);
}

#[test]
fn a_name_of_ten_thousand_letters_is_cut_and_breaks_nothing() {
    let page = Page::open(Screen::PHONE);
    page.script("(field => { field.value = 'W\u{1F98C}\u{202e}x '.repeat(2000); field.dispatchEvent(new Event('input', { bubbles: true })); field.dispatchEvent(new Event('change', { bubbles: true })); })(document.querySelector('[aria-label=\"Title of the plan\"]')); true");
    page.settle();
    see::no_sideways_scrolling(&page);
    for way in ["Wish & share", "Cut & pack", "Learn", "Plan"] {
        act::press(&page, Role::Link, way);
        see::shown(&page, Role::Main, Name::Any);
        see::no_sideways_scrolling(&page);
    }
    let plan = page.remembered("hindsaddle.plan");
    assert!(plan.as_str().is_some_and(|plan| plan.len() < 400), "{plan}");
}

#[test]
fn names_that_look_like_code_stay_words() {
    for name in
        ["<img src=x onerror=alert(1)>", "=HYPERLINK(\"x\")", "\u{202e}gnol", "🦌🦌🦌", "</script><b>"]
    {
        let page = Page::open(Screen::DESKTOP);
        act::fill(&page, Role::Textbox, "Title of the plan", name);
        act::press(&page, Role::Heading, "Hindsaddle");
        act::press(&page, Role::Link, "Wish & share");
        act::press(&page, Role::Button, "Kept plans");
        act::press(&page, Role::Button, "Keep the plan that is open");
        see::says(&page, Role::Region, Name::from("Kept plans"), name);
        let marked = page.script("document.querySelectorAll('main img, main b').length");
        assert_eq!(marked.as_u64(), Some(0), "{name}");
        page.expect_no_complaint();
    }
}

/// Chromium keeps what a page tells it to remember in its own memory for seconds; the battery does not wait. Ten edits,
/// and the browser is killed right after the last.
#[test]
fn a_browser_that_is_killed_loses_no_edit() {
    let folder = Folder::new("killed");
    let page = Page::open_with_profile(Screen::DESKTOP, &folder.0);
    for (muscle, cut) in [
        ("Knuckle", "Grind"),
        ("Neck", "Stew"),
        ("Eye of round", "Steak"),
        ("Shoulder clod", "Grind"),
        ("Backstrap", "Chop"),
        ("Neck", "Grind"),
        ("Top round", "Roast"),
        ("Knuckle", "Stew"),
        ("Sirloin", "Roast"),
    ] {
        act::choose(&page, Name::from(&format!("{muscle} becomes")), cut);
    }
    let before = page.fragment_of_plan();
    act::choose(&page, "Knuckle becomes", "Steak");
    let edited = tally(&page);
    // The second memory takes a moment, too: what counts is that it is there long before the first.
    page.until("the last edit in the second memory", || {
        let kept = page.script(
            "caches.match('hindsaddle.plan', { cacheName: 'hindsaddle.journal' }).then(kept => kept?.text() ?? '').then(text => text.split('\\n')[1])",
        );
        let plan = page.script("localStorage.getItem('hindsaddle.plan')");
        let is_new = plan.as_str().is_some_and(|plan| format!("#{plan}") != before);
        if is_new && kept == plan { Ok(()) } else { Err(kept.to_string()) }
    });
    let page = page.killed_and_opened_again(&folder.0);
    assert_eq!(tally(&page), edited);
}

/// Days are the reader's own, an hour before and after the clocks change, and with a clock that is decades off.
#[test]
fn the_clock_may_be_wrong_or_change() {
    // The first and third change in spring and autumn (US rules since 2007), Santiago's at midnight; from memory, and
    // the browser's own tz database is what answers.
    for (milliseconds, zone, day) in [
        (1_772_955_000_000, "America/Chicago", "2026-03-08"),
        (1_772_958_600_000, "America/Chicago", "2026-03-08"),
        (1_793_514_600_000, "America/Chicago", "2026-11-01"),
        (1_788_667_800_000, "America/Santiago", "2026-09-06"),
        (0, "America/Chicago", "1969-12-31"),
        (7_258_118_400_000, "Pacific/Kiritimati", "2200-01-01"),
    ] {
        let page = Page::open(Screen::DESKTOP);
        page.set_clock(milliseconds, zone);
        page.reload();
        act::press(&page, Role::Link, "Wish & share");
        act::press(&page, Role::Button, "Kept plans");
        act::press(&page, Role::Button, "Keep the plan that is open");
        see::says(&page, Role::Region, Name::from("Kept plans"), day);
        // The days of the kitchen are those that are entered: the clock has no say in them.
        act::press(&page, Role::Link, "Cut & pack");
        act::press(&page, Role::Button, "Labels");
        page.script("(field => { field.value = '2026-11-01'; field.dispatchEvent(new Event('change', { bubbles: true })); })(document.querySelectorAll('input[type=date]')[1]); true");
        see::says(&page, Role::Region, Name::from("At its best until"), "2027");
        let folder = Folder::new(&format!("clock-{milliseconds}"));
        page.save_into(&folder.0);
        act::press(&page, Role::Button, "Best-by reminders (.ics)");
        let calendar = folder.saved(&page, "hindsaddle.ics", "END:VCALENDAR\r\n");
        assert!(calendar.contains("DTSTART;VALUE=DATE:20270501"), "{calendar}");
    }
}

#[test]
fn everything_is_forgotten_only_when_that_is_meant() {
    let page = Page::open(Screen::PHONE);
    act::choose(&page, "Knuckle becomes", "Grind");
    act::press(&page, Role::Link, "Wish & share");
    act::press(&page, Role::Button, "This device");
    see::says(&page, Role::Region, Name::from("This device"), "characters");
    act::press(&page, Role::Button, "Forget everything on this device");
    act::press(&page, Role::Button, "No, keep it");
    assert_ne!(page.script("localStorage.length").as_u64(), Some(0));
    act::press(&page, Role::Button, "Forget everything on this device");
    act::press(&page, Role::Button, "Yes, forget it all");
    page.arrive("");
    see::shown(&page, Role::Heading, "Hindsaddle");
    let fresh = Page::open(Screen::PHONE);
    assert_eq!(tally(&page), tally(&fresh), "the example is back");
    page.reload();
    assert_eq!(tally(&page), tally(&fresh));
}

/// What the second memory was just being told does not come back after all of it was forgotten.
#[test]
fn what_was_being_written_is_forgotten_too() {
    let page = Page::open(Screen::PHONE);
    act::press(&page, Role::Link, "Wish & share");
    page.script("(put => { Cache.prototype.put = async function (...all) { await new Promise(go => setTimeout(go, 1000)); return put.apply(this, all); }; })(Cache.prototype.put); true");
    act::press(&page, Role::Button, "Season");
    act::press(&page, Role::Button, "Add an animal cut the same way");
    act::press(&page, Role::Button, "This device");
    act::press(&page, Role::Button, "Forget everything on this device");
    act::press(&page, Role::Button, "Yes, forget it all");
    page.arrive("");
    see::shown(&page, Role::Heading, "Hindsaddle");
    page.reload();
    assert_eq!(tally(&page), tally(&Page::open(Screen::PHONE)), "one animal, the example");
}

#[test]
fn a_kept_plan_is_duplicated_under_a_name_of_its_own() {
    let page = Page::open(Screen::PHONE);
    act::press(&page, Role::Link, "Wish & share");
    act::press(&page, Role::Button, "Kept plans");
    act::press(&page, Role::Button, "Keep the plan that is open");
    act::fill(&page, Role::Textbox, "Name", "north ridge");
    act::press(&page, Role::Heading, "Kept plans");
    act::press(&page, Role::Button, "Duplicate");
    let names = page.script(
        "[...document.querySelectorAll('.season-animal input')].map(field => field.value).join('; ')",
    );
    assert_eq!(names, "north ridge; north ridge, copy");
}
