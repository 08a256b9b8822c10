//! Someone weighs at the table: estimates narrow, an absurd weight is asked about, and all of it can be undone.

use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species, Weighed};
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::link::Names;
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::scale::OnScale;
use hindsaddle_model::units::Mass;
use hindsaddle_tests::write;

use super::go_to_the_freezer::at_the_table;
use crate::act;
use crate::find::{Name, Role, starting};
use crate::page::{Page, Screen};
use crate::see;

/// How far the ends of a range lie apart in words such as "13 oz, 9 to 15 oz" before `mark`; nothing without ends.
#[track_caller]
fn width(text: &str, mark: &str) -> f64 {
    let before = text.split(mark).next().and_then(|before| before.rsplit(['\n', ';']).next());
    let before = before.unwrap_or_default();
    let Some((low, high)) = before.rsplit_once(" to ") else { return 0.0 };
    let number = |word: Option<&str>| word.and_then(|word| word.parse::<f64>().ok());
    let high = number(high.split(' ').next()).unwrap_or_else(|| panic!("{before}"));
    number(low.rsplit(' ').next()).map_or(0.0, |low| high - low)
}

fn card(page: &Page) -> String {
    see::text(page, Role::Region, Name::from("Table card"))
}

fn take_home(page: &Page) -> f64 {
    width(&see::text(page, Role::Status, Name::from("Tally")), " lb to take home")
}

#[test]
fn a_weight_narrows_the_plan_and_undo_brings_it_back() {
    let page = Page::open(Screen::PHONE);
    let before = take_home(&page);
    act::press(&page, Role::Link, "Cut & pack");
    see::shown(&page, Role::Heading, "Tenderloin");
    let wide = card(&page);
    assert!(width(&wide, " oz, both sides") > 3.0, "{wide}");
    act::fill(&page, Role::Textbox, "On the scale", "14 oz");
    act::press(&page, Role::Heading, "Tenderloin");
    see::says(&page, Role::Region, Name::from("Table card"), "Tenderloin, both sides: 14 oz");
    see::says(&page, Role::Region, Name::from("Table card"), "more to take home, 1 more package of ground");
    let narrow = card(&page);
    assert!(width(&narrow, " oz, both sides") < width(&wide, " oz, both sides") / 2.0, "{narrow}");
    act::press(&page, Role::Link, "Plan");
    see::says(&page, Role::Region, Name::from("Tally"), "1 weighing in it");
    assert!(take_home(&page) < before, "{before}");
    let fragment = page.fragment_of_plan();
    // Whoever opens the link has the same weight in it.
    let partner = page.open_in_second_profile(Screen::PHONE, &fragment);
    see::says(&partner, Role::Region, Name::from("Tally"), "1 weighing in it");
    act::press(&page, Role::Button, "Undo");
    assert_eq!(take_home(&page), before);
}

#[test]
fn an_absurd_weight_is_asked_about_and_kept_or_taken_back() {
    let page = at_the_table(Screen::PHONE);
    see::shown(&page, Role::Heading, "Tenderloin");
    let before = card(&page);
    let enter = |text: &str| {
        act::fill(&page, Role::Textbox, "On the scale", text);
        act::press(&page, Role::Heading, "Tenderloin");
    };
    enter("heavy");
    see::says(&page, Role::Region, Name::from("Table card"), "That is no weight");
    // The step is not left before the question is answered.
    act::fill(&page, Role::Textbox, "On the scale", "9 lb");
    act::press(&page, Role::Checkbox, "Done");
    see::says(&page, Role::Region, Name::from("Table card"), "1 of 26 done");
    see::shown(&page, Role::Heading, "Tenderloin");
    act::press(&page, Role::Checkbox, "Done");
    see::says(&page, Role::Region, Name::from("Table card"), "0 of 26 done");
    let question = "That is far from the 13 oz expected. Is it the right muscle, and both sides?";
    see::says(&page, Role::Region, Name::from("Table card"), question);
    act::press(&page, Role::Button, "Keep it");
    see::gone(&page, Role::Button, "Keep it");
    see::says(&page, Role::Region, Name::from("All steps"), "9 lb");
    enter("90 lb");
    see::says(&page, Role::Region, Name::from("Table card"), "more than all the meat expected");
    act::press(&page, Role::Button, starting("Take it back"));
    see::gone(&page, Role::Button, starting("Take it back"));
    assert_eq!(card(&page), before);
}

#[test]
fn sides_the_lot_and_packages_are_weighed_and_removed_one_by_one() {
    let page = at_the_table(Screen::DESKTOP);
    let table = Name::from("Table card");
    act::choose(&page, "Which", "Left");
    act::fill(&page, Role::Textbox, "On the scale", "6.5 oz");
    act::choose(&page, "Which", "Right");
    act::fill(&page, Role::Textbox, "On the scale", "190 g");
    act::press(&page, Role::Heading, "Tenderloin");
    see::says(&page, Role::Region, table, "Tenderloin, left: 6.5 oz");
    see::says(&page, Role::Region, table, "Tenderloin, right: 6.7 oz");
    see::says(&page, Role::Region, Name::from("All steps"), "6.5 oz + 6.7 oz");
    act::fill(&page, Role::Textbox, "All boneless meat, before it is cut", "41 lb 3 oz");
    act::choose(&page, "Packages of", "Stew");
    act::fill(&page, Role::Textbox, "How many (empty: all)", "none");
    act::fill(&page, Role::Textbox, "They weigh, together", "2 lb");
    act::press(&page, Role::Heading, "Tenderloin");
    see::says(&page, Role::Region, Name::from("Scale"), "How many is a whole number");
    act::fill(&page, Role::Textbox, "How many (empty: all)", "2");
    act::fill(&page, Role::Textbox, "They weigh, together", "2 lb");
    act::press(&page, Role::Heading, "Tenderloin");
    for said in ["All boneless meat, before it is cut: 41 lb 3 oz", "2 packages of stew: 2 lb"] {
        see::says(&page, Role::Region, Name::from("Scale"), said);
    }
    act::press(&page, Role::Button, "Remove Tenderloin, left: 6.5 oz");
    see::gone(&page, Role::Button, "Remove Tenderloin, left: 6.5 oz");
    see::shown(&page, Role::Button, "Remove Tenderloin, right: 6.7 oz");
}

/// A doe by her hanging weight, every muscle weighed a tenth lighter than the table has it, the backstrap heavier.
fn weighed_doe(kilograms: f64) -> String {
    let hanging = Weighed::Hanging(Mass::kilograms(kilograms));
    let doe = Animal::new(Species::WhiteTailed, Sex::Doe, Age::Adult, Condition::Ordinary, hanging);
    let table = Plan::new(doe.expect("a doe of common weight"));
    let expected = forecast(&table);
    let plan = Muscle::ALL.into_iter().fold(table, |plan, muscle| {
        let factor = if muscle == Muscle::Backstrap { 1.2 } else { 0.9 };
        let mass = Some(expected.muscles[muscle.index()].mass.likely() * factor);
        let target = OnScale::Muscle(muscle, Sides::Both);
        plan.apply(Action::Weigh { target, mass }).expect("a weight").plan
    });
    format!("#{}", write(&plan, Names::LeftOut))
}

#[test]
fn own_figures_are_kept_only_when_asked_and_used_only_by_a_tap() {
    let page = Page::open_at(Screen::DESKTOP, &weighed_doe(30.0));
    let own = Name::from("Your own figures");
    act::press(&page, Role::Link, "Cut & pack");
    see::says(&page, Role::Region, own, "Nothing is kept yet");
    act::press(&page, Role::Checkbox, "Keep this animal's comparison on this device");
    see::says(&page, Role::Region, own, "white tailed doe adult hanging 30000 g");
    // Another animal of the species starts as the table has it, until somebody asks.
    let next = Plan::new(Animal::example());
    page.go_to(&format!("#{}", write(&next, Names::LeftOut)));
    act::press(&page, Role::Link, "Cut & pack");
    see::says(&page, Role::Region, own, "From 1 other animal of this species: ");
    see::says(&page, Role::Region, own, "Backstrap +");
    act::press(&page, Role::Button, "Use them in this plan");
    see::says(&page, Role::Region, own, "Your own figures are in this plan");
    act::press(&page, Role::Link, "Plan");
    see::says(&page, Role::Region, Name::from("Tally"), "Your own figures are in it");
    let fragment = page.fragment_of_plan();
    // The link has the figures in it, the other device has no animals.
    let partner = page.open_in_second_profile(Screen::PHONE, &fragment);
    act::press(&partner, Role::Link, "Cut & pack");
    see::says(&partner, Role::Region, own, "Your own figures are in this plan");
    see::says(&partner, Role::Region, own, "Nothing is kept yet");
    act::press(&partner, Role::Button, "Take them out");
    see::gone(&partner, Role::Button, "Take them out");
    act::press(&page, Role::Link, "Cut & pack");
    act::press(&page, Role::Button, "Erase all");
    see::says(&page, Role::Region, own, "Nothing is kept yet");
}
