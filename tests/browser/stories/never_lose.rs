//! Things go wrong: windows close early, two are open at once, memory is full or spoiled, the program stops. Nothing
//! that was decided is lost, and what happened is said.

use crate::act;
use crate::find::{Name, Role};
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
        page.script(&set);
        page.reload();
        see::shown(&page, Role::Heading, "Hindsaddle");
        see::shown(&page, Role::Alert, Name::Any);
        let aside = page.script("localStorage.getItem('hindsaddle.set_aside')");
        assert_eq!(aside.as_str(), Some(spoiled));
    }
}

#[test]
fn a_full_memory_is_said_and_the_address_has_the_plan() {
    let page = Page::open(Screen::DESKTOP);
    let before = page.fragment_of_plan();
    page.script(
        "Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }; true",
    );
    act::choose(&page, "Knuckle becomes", "Grind");
    see::says(&page, Role::Alert, Name::Any, "It is all in the address");
    let edited = tally(&page);
    page.until("the plan in the address", || {
        let fragment = page.fragment();
        if fragment == before { Err(fragment) } else { Ok(()) }
    });
    let other = page.open_in_second_profile(Screen::DESKTOP, &page.fragment());
    assert_eq!(tally(&other), edited);
}

/// A fault of the program is put in from outside, as an event of the kind a stopped program raises.
#[test]
fn a_program_that_stops_says_so_and_offers_the_same_plan() {
    let page = Page::open(Screen::PHONE);
    act::choose(&page, "Knuckle becomes", "Grind");
    let edited = tally(&page);
    page.script("dispatchEvent(new ErrorEvent('error', { error: new WebAssembly.RuntimeError('unreachable') })); true");
    see::says(&page, Role::Alert, Name::Any, "Nothing you decided is lost");
    act::press(&page, Role::Button, "Open the same plan again");
    see::gone(&page, Role::Button, "Open the same plan again");
    assert_eq!(tally(&page), edited);
}

#[test]
fn names_that_look_like_code_stay_words() {
    for name in
        ["<img src=x onerror=alert(1)>", "=HYPERLINK(\"x\")", "\u{202e}gnol", "🦌🦌🦌", "</script><b>"]
    {
        let page = Page::open(Screen::DESKTOP);
        act::fill(&page, Role::Textbox, "Title of the plan", name);
        act::press(&page, Role::Heading, "Hindsaddle");
        act::press(&page, Role::Link, "Ahead");
        act::press(&page, Role::Button, "Kept plans");
        act::press(&page, Role::Button, "Keep the plan that is open");
        see::says(&page, Role::Region, Name::from("Kept plans"), name);
        let marked = page.script("document.querySelectorAll('main img, main b').length");
        assert_eq!(marked.as_u64(), Some(0), "{name}");
        page.expect_no_complaint();
    }
}
