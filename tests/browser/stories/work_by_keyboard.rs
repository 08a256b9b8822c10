//! Someone has no pointer: the whole job, from the first visit to labels and a link, by keys alone.

use crate::act;
use crate::find::{Name, Role};
use crate::keys::Key;
use crate::page::{Page, Screen};
use crate::see;

fn tally(page: &Page) -> String {
    see::text(page, Role::Status, Name::from("Tally"))
}

/// Goes there and presses it.
fn open(page: &Page, name: &str) {
    act::tab_to(page, name);
    act::key(page, Key::Enter);
}

#[test]
fn the_whole_job_by_keys_alone() {
    let page = Page::open(Screen::DESKTOP);
    let before = tally(&page);

    // The animal.
    act::tab_to(&page, "Weight");
    act::key(&page, Key::Control('a'));
    act::type_in(&page, "110");
    act::key(&page, Key::Tab);
    let weighed = tally(&page);
    assert_ne!(weighed, before);

    // A muscle on the plate: its neighbour by arrow, its sheet by Enter, a cut by its radio buttons.
    act::tab_to(&page, "Backstrap");
    act::key(&page, Key::Enter);
    act::tab_to(&page, "Steak");
    act::key(&page, Key::Up);
    act::key(&page, Key::Escape);
    let cut = tally(&page);
    assert_ne!(cut, weighed);

    // And one in the list: a native list takes the first letter of what is wanted.
    act::tab_to(&page, "Knuckle becomes");
    act::type_in(&page, "G");
    act::key(&page, Key::Tab);
    assert_ne!(tally(&page), cut);

    // Back and forward again.
    let ground = tally(&page);
    act::key(&page, Key::Control('z'));
    assert_eq!(tally(&page), cut);
    act::key(&page, Key::ControlShift('z'));
    assert_eq!(tally(&page), ground);

    // At the table: a mark, a weight, the labels' date, and the work order.
    open(&page, "Cut & pack");
    see::shown(&page, Role::Heading, "From table to freezer");
    act::tab_to(&page, "On the scale");
    act::type_in(&page, "1.2 lb");
    act::key(&page, Key::Tab);
    act::tab_to(&page, "Done");
    act::key(&page, Key::Space);
    open(&page, "Labels");
    act::tab_to(&page, "Packed on");
    act::type_in(&page, "11262026");
    act::key(&page, Key::Tab);
    see::says(&page, Role::Region, Name::from("At its best until"), "2027");
    open(&page, "Work order");
    see::shown(&page, Role::Button, "Print the work order");

    // And on to somebody else.
    page.allow_clipboard();
    open(&page, "Wish & share");
    see::shown(&page, Role::Heading, "Wishes and sharing");
    open(&page, "Share");
    open(&page, "Copy link");
    see::says(&page, Role::Alert, Name::Any, "Link copied");
    assert!(page.clipboard().contains("/read.html#"), "{}", page.clipboard());
}
