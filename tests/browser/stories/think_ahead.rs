//! Someone thinks ahead: several animals in one plan, and two plans side by side.

use crate::act;
use crate::find::{Name, Role, starting};
use crate::page::{Page, Screen};
use crate::see;

/// The third page, by its link.
fn ahead(screen: Screen) -> Page {
    let page = Page::open(screen);
    act::press(&page, Role::Link, "Wish & share");
    see::shown(&page, Role::Heading, "Wishes and sharing");
    page
}

#[test]
fn animals_are_added_tested_removed_and_brought_back() {
    let page = ahead(Screen::PHONE);
    act::press(&page, Role::Button, "Season");
    act::press(&page, Role::Button, "Add an animal cut the same way");
    see::says(&page, Role::Region, Name::from("Season"), "All together");
    act::choose(&page, "Disease test (CWD): 2 Doe", "Do not eat");
    see::says(&page, Role::Region, Name::from("Season"), "how to dispose of it");
    act::choose(&page, "Disease test (CWD): 2 Doe", "Result awaited");
    see::says(&page, Role::Region, Name::from("Season"), "eat none of it until the result is there");
    see::no_sideways_scrolling(&page);
    act::press(&page, Role::Button, "Remove: 2 Doe");
    see::says(&page, Role::Region, Name::from("Season"), "There is one animal so far");
    act::press(&page, Role::Button, "Undo");
    see::says(&page, Role::Region, Name::from("Season"), "eat none of it until the result is there");
}

#[test]
fn a_season_goes_along_to_the_table_and_to_a_partner() {
    let page = ahead(Screen::DESKTOP);
    act::press(&page, Role::Button, "Season");
    act::press(&page, Role::Button, "Add an animal cut the same way");
    act::choose(&page, "Disease test (CWD): 2 Doe", "Result awaited");
    act::press(&page, Role::Link, "Cut & pack");
    see::shown(&page, Role::Heading, "From table to freezer");
    see::is(&page, Role::Button, "2 Doe", "pressed");
    act::press(&page, Role::Button, "Wrap");
    see::says(&page, Role::Region, Name::from("Wrap"), "For all 2 animals");
    act::press(&page, Role::Button, "Labels");
    page.until("labels of both animals, one of them to be held", || {
        let labels =
            page.script("[...document.querySelectorAll('.one-label')].map((label) => label.textContent)");
        let labels: Vec<String> = labels
            .as_array()
            .into_iter()
            .flatten()
            .map(|label| label.as_str().unwrap_or_default().to_owned())
            .collect();
        let of = |words: &str| labels.iter().filter(|label| label.contains(words)).count();
        let (first, second, held) = (of("1 Doe"), of("2 Doe"), of("HOLD: test result awaited"));
        if first > 20 && first == second && held == second {
            Ok(())
        } else {
            Err(format!("{first} {second} {held}"))
        }
    });
    act::press(&page, Role::Link, "Plan");
    see::shown(&page, Role::Heading, "Hindsaddle");
    see::is(&page, Role::Button, "2 Doe", "pressed");
    let fragment = page.fragment_of_plan();
    assert!(fragment.starts_with("#3"), "{fragment}");
    let theirs = page.open_in_second_profile(Screen::PHONE, &fragment);
    see::is(&theirs, Role::Button, "1 Doe", "pressed");
    act::press(&theirs, Role::Button, "2 Doe");
    see::is(&theirs, Role::Button, "2 Doe", "pressed");
    see::no_sideways_scrolling(&theirs);
}

#[test]
fn two_plans_stand_side_by_side() {
    let page = ahead(Screen::PHONE);
    act::press(&page, Role::Button, "Compare");
    see::says(&page, Role::Region, Name::from("Compare"), "paste the link of another plan");
    act::fill(&page, Role::Textbox, "Paste a link here to compare with it", "https://example.org/#1nonsense");
    act::press(&page, Role::Heading, "Compare");
    see::shown(&page, Role::Alert, Name::Any);
    let example = page.fragment_of_plan();
    act::fill(&page, Role::Textbox, "Paste a link here to compare with it", &example);
    act::press(&page, Role::Heading, "Compare");
    see::says(&page, Role::Region, Name::from("Compare"), "Knife work");
    see::no_sideways_scrolling(&page);
}

#[test]
fn wishes_become_the_best_plan_and_undo_takes_it_back() {
    let page = ahead(Screen::PHONE);
    act::press(&page, Role::Button, starting("Try an invented example"));
    act::press(&page, Role::Button, "Find the best plan");
    see::says(
        &page,
        Role::Region,
        Name::from("The best plan for it"),
        "Proven: no way to cut it meets this better",
    );
    see::says(
        &page,
        Role::Region,
        Name::from("The best plan for it"),
        "Every wish is met, in the likely case",
    );
    see::says(
        &page,
        Role::Region,
        Name::from("The best plan for it"),
        "because of \u{201c}one whole roast\u{201d}",
    );
    see::no_sideways_scrolling(&page);
    let before = page.fragment_of_plan();
    act::press(&page, Role::Button, "Use this plan");
    see::gone(&page, Role::Region, "The best plan for it");
    assert_ne!(page.fragment_of_plan(), before);
    act::press(&page, Role::Button, "Undo");
    assert_eq!(page.fragment_of_plan(), before);
}

#[test]
fn wishes_that_contradict_each_other_name_the_pair() {
    let page = ahead(Screen::DESKTOP);
    for what in ["must be roast", "never roast"] {
        act::choose(&page, "Muscle", "Tenderloin");
        act::choose(&page, "What about it", what);
    }
    see::says(
        &page,
        Role::Alert,
        Name::Any,
        "Tenderloin: \u{201c}must be roast\u{201d} and \u{201c}never roast\u{201d} cannot both be",
    );
    act::fill(&page, Role::Textbox, "At most so many roasts, steaks and chops (empty: no limit)", "0");
    act::press(&page, Role::Heading, "Wishes");
    act::press(&page, Role::Button, "Find the best plan");
    see::says(&page, Role::Alert, Name::Any, "takes at least");
}

#[test]
fn packages_are_dealt_and_their_owners_are_on_the_labels() {
    let page = ahead(Screen::PHONE);
    act::press(&page, Role::Button, "Partners");
    act::press(&page, Role::Button, starting("Try an invented example"));
    see::says(&page, Role::Region, Name::from("Partners"), "The parts add up to 3; read as 67 %, 33 %");
    see::says(&page, Role::Region, Name::from("Who gets what"), "Farthest from a share");
    see::no_sideways_scrolling(&page);
    act::fill(&page, Role::Textbox, "Parts: Partner B", "0");
    act::press(&page, Role::Heading, "Partners");
    see::says(&page, Role::Alert, Name::Any, "Partner B: parts are 1 to 999");
    act::press(&page, Role::Link, "Cut & pack");
    see::says(&page, Role::Region, Name::from("Table card"), "For Ann");
    act::press(&page, Role::Button, "Labels");
    page.until("labels of both", || {
        let labels = page.script(
            "[...document.querySelectorAll('.one-label')].map((label) => label.textContent).join('|')",
        );
        let labels = labels.as_str().unwrap_or_default().to_owned();
        let of = |name: &str| labels.matches(&format!("\u{b7} {name}")).count();
        let (ann, bo) = (of("Ann"), of("Bo"));
        if bo > 8 && ann > bo && ann + bo >= 40 { Ok(()) } else { Err(format!("{ann} {bo} {labels}")) }
    });
}
