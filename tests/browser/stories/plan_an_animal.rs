//! Someone plans an animal, and a partner opens the link.

use crate::act;
use crate::find::{Name, Role, starting};
use crate::page::{Page, Screen};
use crate::see;

/// Enters "white-tailed doe, 110 lb field-dressed" and gives three muscles away by pointer.
fn plan_the_doe(page: &Page) {
    act::fill(page, Role::Textbox, "Weight", "108");
    act::fill(page, Role::Textbox, "Weight", "110");
    act::press(page, Role::Heading, "Hindsaddle");
    for (muscle, cut) in [("Backstrap: ", "Chop"), ("Knuckle: ", "Steak"), ("Shoulder clod: ", "Stew")] {
        act::press(page, Role::Button, starting(muscle));
        act::press(page, Role::Radio, starting(cut));
        act::press(page, Role::Button, "Close");
    }
}

fn tally(page: &Page) -> String {
    see::text(page, Role::Status, Name::from("Tally"))
}

#[test]
fn three_muscles_by_pointer_and_the_link_in_a_second_profile() {
    let page = Page::open(Screen::DESKTOP);
    let before = (tally(&page), page.fragment_of_plan());
    plan_the_doe(&page);
    let (mine, fragment) = (tally(&page), page.fragment_of_plan());
    assert_ne!(mine, before.0);
    assert_ne!(fragment, before.1);
    assert!(mine.contains("packages") && mine.contains(" lb"), "{mine}");
    let partner = page.open_in_second_profile(Screen::PHONE, &fragment);
    assert_eq!(tally(&partner), mine);
}

#[test]
fn a_damaged_link_says_so_and_leaves_the_plan_alone() {
    let page = Page::open(Screen::DESKTOP);
    let before = tally(&page);
    page.go_to("#1AAAA");
    see::says(&page, Role::Alert, Name::Any, "Your own plan is still here");
    assert_eq!(tally(&page), before);
}

#[test]
fn undo_takes_a_choice_back_and_redo_makes_it_again() {
    let page = Page::open(Screen::DESKTOP);
    let before = tally(&page);
    act::choose(&page, "Knuckle becomes", "Stew");
    let after = tally(&page);
    assert_ne!(after, before);
    act::press(&page, Role::Button, "Undo");
    assert_eq!(tally(&page), before);
    act::press(&page, Role::Button, "Redo");
    assert_eq!(tally(&page), after);
}

#[test]
fn an_animal_that_cannot_be_is_refused_beside_its_field() {
    let page = Page::open(Screen::DESKTOP);
    let before = tally(&page);
    act::fill(&page, Role::Textbox, "Weight", "9000");
    act::press(&page, Role::Heading, "Hindsaddle");
    see::is(&page, Role::Textbox, "Weight", "invalid");
    assert_eq!(tally(&page), before);
}

#[test]
fn a_remembered_plan_that_cannot_be_read_is_set_aside() {
    let page = Page::open(Screen::DESKTOP);
    page.hide();
    page.script("localStorage.setItem('hindsaddle.plan', '1damaged'); location.hash = ''; true");
    page.reload();
    see::says(&page, Role::Alert, Name::Any, "this browser remembered is damaged");
    assert_eq!(page.remembered("hindsaddle.set_aside"), "1damaged");
    assert!(tally(&page).contains("packages"));
}

#[test]
fn without_storage_the_page_works_and_says_that_it_will_not_remember() {
    let page = Page::open_without_storage(Screen::PHONE);
    see::says(&page, Role::Alert, Name::Any, "will not remember");
    assert!(tally(&page).contains("packages"));
}
