//! Someone opens the page for the first time.

use crate::find::Role;
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
