//! Someone is sent a plan: it is read, the work order first, and nothing of the reader's own changes unasked.

use crate::act;
use crate::find::{Name, Role};
use crate::page::{A4, LETTER, Page, Screen};
use crate::see;

/// A plan of somebody else's, and what its tally says.
fn theirs() -> (String, String) {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Knuckle becomes", "Grind");
    act::choose(&page, "Neck becomes", "Grind");
    let fragment = page.fragment_of_plan();
    (fragment, tally(&page))
}

fn tally(page: &Page) -> String {
    see::text(page, Role::Status, Name::from("Tally"))
}

fn remembered(page: &Page) -> String {
    page.remembered("hindsaddle.plan").as_str().unwrap_or_default().to_owned()
}

/// A reader with a plan of their own opens the link, and so do its tally and its address.
fn reader(screen: Screen, link: &str) -> (Page, String, String) {
    let page = Page::open(screen);
    act::choose(&page, "Knuckle becomes", "Stew");
    let (mine, says) = (page.fragment_of_plan(), tally(&page));
    page.go_to(&format!("read.html{link}"));
    see::shown(&page, Role::Heading, "Your work order");
    (page, mine, says)
}

#[test]
fn the_work_order_comes_first_and_nothing_changes_by_reading() {
    let (link, says) = theirs();
    let (page, mine, _) = reader(Screen::PHONE, &link);
    let regions = see::names(&page, Role::Region);
    assert_eq!(regions.first().map(String::as_str), Some("Work order"), "{regions:?}");
    see::says(&page, Role::Region, Name::from("Work order"), &says);
    see::no_sideways_scrolling(&page);
    // What is done about it is in the thumb's reach, whatever is being read.
    see::in_view(&page, Role::Button, "Open theirs");
    assert_eq!(see::count(&page, Role::Textbox, Name::Any), 0, "nothing can be changed");
    act::press(&page, Role::Button, "kg");
    see::says(&page, Role::Region, Name::from("Work order"), " kg");
    assert_eq!(format!("#{}", remembered(&page)), mine);
    assert_eq!(page.fragment(), link);
    assert_eq!((page.sheets(LETTER), page.sheets(A4)), (1, 1), "the work order alone");
}

#[test]
fn mine_is_kept() {
    let (link, _) = theirs();
    let (page, mine, says) = reader(Screen::PHONE, &link);
    act::press(&page, Role::Button, "Keep mine");
    see::shown(&page, Role::Heading, "Hindsaddle");
    assert_eq!((tally(&page), page.fragment()), (says, mine));
    assert_eq!(page.script("localStorage.getItem('hindsaddle.kept')").as_str(), None, "theirs is not");
}

#[test]
fn theirs_is_opened_and_mine_is_put_aside() {
    let (link, says) = theirs();
    let (page, mine, _) = reader(Screen::PHONE, &link);
    act::press(&page, Role::Button, "Open theirs");
    see::shown(&page, Role::Heading, "Hindsaddle");
    assert_eq!(tally(&page), says);
    let kept = page.script("localStorage.getItem('hindsaddle.kept')");
    assert!(kept.as_str().is_some_and(|kept| kept.ends_with(&mine[1..])), "{kept}");
    page.go_to(&format!("read.html{link}"));
    see::says(&page, Role::Region, Name::from("Yours or theirs"), "This is the plan you have");
}

#[test]
fn both_are_kept() {
    let (link, _) = theirs();
    let (page, mine, says) = reader(Screen::DESKTOP, &link);
    act::press(&page, Role::Button, "Keep both");
    see::says(&page, Role::Alert, Name::Any, "Both are kept");
    let kept = page.script("localStorage.getItem('hindsaddle.kept')");
    assert!(kept.as_str().is_some_and(|kept| kept.ends_with(&link[1..])), "{kept}");
    act::press(&page, Role::Button, "Keep mine");
    see::shown(&page, Role::Heading, "Hindsaddle");
    assert_eq!((tally(&page), page.fragment()), (says, mine));
}

#[test]
fn a_full_list_is_said_and_nothing_is_replaced() {
    let (link, _) = theirs();
    let (page, mine, _) = reader(Screen::DESKTOP, &link);
    page.script("localStorage.setItem('hindsaddle.kept', Array.from({ length: 60 }, (_, place) => '2026-11-26\\t\\t' + place).join('\\n')); true");
    for choice in ["Keep both", "Open theirs"] {
        act::press(&page, Role::Button, choice);
        see::says(&page, Role::Alert, Name::Any, "60 plans are kept");
        act::press(&page, Role::Button, "Dismiss");
    }
    assert_eq!(format!("#{}", remembered(&page)), mine);
}

#[test]
fn who_has_no_plan_plans_on_from_it() {
    let (link, says) = theirs();
    let page = Page::open_at(Screen::PHONE, &format!("read.html{link}"));
    act::press(&page, Role::Button, "Plan on from this");
    see::shown(&page, Role::Heading, "Hindsaddle");
    assert_eq!(tally(&page), says);
    act::choose(&page, "Knuckle becomes", "Stew");
    assert_ne!(page.fragment_of_plan(), link);
}

/// The same choice on the page of the plan, where a link takes one's own place at once.
#[test]
fn a_link_to_the_plan_itself_leaves_the_choice() {
    let (link, _) = theirs();
    let page = Page::open(Screen::PHONE);
    act::choose(&page, "Knuckle becomes", "Stew");
    let (mine, says) = (page.fragment_of_plan(), tally(&page));
    page.go_to(&link);
    act::press(&page, Role::Button, "Keep both");
    see::says(&page, Role::Alert, Name::Any, "Both are kept");
    assert_eq!((tally(&page), page.fragment_of_plan()), (says.clone(), mine.clone()));
    page.go_to(&link);
    act::press(&page, Role::Button, "Keep mine");
    assert_eq!((tally(&page), page.fragment_of_plan()), (says, mine));
    page.go_to(&link);
    act::press(&page, Role::Button, "Open theirs");
    assert_eq!(page.fragment_of_plan(), link);
}

#[test]
fn what_cannot_be_read_says_so_and_leads_home() {
    for (link, why) in [
        ("#1AAAA", "The end of this link is missing"),
        ("#9later", "later version"),
        ("", "nothing in this link"),
    ] {
        let page = Page::open(Screen::PHONE);
        act::choose(&page, "Knuckle becomes", "Stew");
        let (mine, says) = (page.fragment_of_plan(), tally(&page));
        page.go_to(&format!("read.html{link}"));
        see::says(&page, Role::Alert, Name::Any, why);
        act::press(&page, Role::Link, "To your own plan");
        see::shown(&page, Role::Heading, "Hindsaddle");
        assert_eq!((tally(&page), page.fragment_of_plan()), (says, mine));
    }
}
