//! Someone works at the table, grinds, wraps and freezes.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species, Weighed};
use hindsaddle_model::link::{self, Names};
use hindsaddle_model::plan::{Action, Plan};

use crate::act;
use crate::find::{Name, Role};
use crate::folder::Folder;
use crate::page::{A4, LETTER, Page, Screen};
use crate::see;

/// The second page, by its link.
pub(super) fn at_the_table(screen: Screen) -> Page {
    let page = Page::open(screen);
    act::press(&page, Role::Link, "Cut & pack");
    see::shown(&page, Role::Heading, "From table to freezer");
    page
}

#[test]
fn the_table_card_goes_step_by_step_and_remembers_what_is_done() {
    let page = at_the_table(Screen::PHONE);
    see::shown(&page, Role::Heading, "Tenderloin");
    act::fill(&page, Role::Textbox, "On the scale", "12 oz");
    act::press(&page, Role::Checkbox, "Done");
    see::gone(&page, Role::Heading, "Tenderloin");
    see::says(&page, Role::Region, Name::from("All steps"), "✓ 12 oz");
    page.reload();
    see::says(&page, Role::Region, Name::from("Table card"), "1 of 26 done");
    see::gone(&page, Role::Heading, "Tenderloin");
    act::press(&page, Role::Button, "Take all marks away");
    see::shown(&page, Role::Heading, "Tenderloin");
}

#[test]
fn with_nothing_to_cut_every_part_still_opens_and_the_table_says_why() {
    let mut plan = Plan::new(Animal::example());
    for muscle in Muscle::ALL {
        plan =
            plan.apply(Action::Recover { muscle, taken: false }).expect("any muscle can be left behind").plan;
    }
    let page = Page::open_at(Screen::PHONE, &format!("#{}", link::write(&plan.into(), Names::LeftOut)));
    act::press(&page, Role::Link, "Cut & pack");
    see::says(&page, Role::Region, Name::from("Table card"), "Nothing to cut");
    for part in ["Grind", "Wrap", "Freeze", "Labels", "Work order", "Files", "Cautions", "Table card"] {
        act::press(&page, Role::Button, part);
        see::is(&page, Role::Button, part, "pressed");
    }
}

#[test]
fn what_is_decided_here_is_in_the_plan_and_what_cannot_be_is_refused() {
    let page = at_the_table(Screen::DESKTOP);
    act::press(&page, Role::Button, "Grind");
    act::choose(&page, "The tub becomes", "Burger, with fat");
    see::says(&page, Role::Region, Name::from("Grind"), "of pork back fat make");
    act::fill(&page, Role::Textbox, "Fat of the mix, %", "95");
    act::press(&page, Role::Heading, "Grind");
    see::says(&page, Role::Alert, Name::Any, "a mix has less. Aim lower");
    see::says(&page, Role::Region, Name::from("Grind"), "with 10 % fat");
    act::press(&page, Role::Button, "Freeze");
    act::fill(&page, Role::Textbox, "Size of the freezer", "0");
    act::press(&page, Role::Heading, "Freeze");
    see::says(&page, Role::Alert, Name::Any, "A freezer holds 0.5 cu ft to 100 cu ft");
    act::fill(&page, Role::Textbox, "Size of the freezer", "7");
    act::press(&page, Role::Heading, "Freeze");
    see::says(&page, Role::Region, Name::from("Freeze"), "This freezer freezes 14 lb a day");
    act::fill(&page, Role::Textbox, "Still free in it", "0.5");
    act::press(&page, Role::Heading, "Freeze");
    see::says(&page, Role::Region, Name::from("Freeze"), "there is less room. Free another");
    act::press(&page, Role::Link, "Plan");
    see::shown(&page, Role::Heading, "Hindsaddle");
    let fragment = page.fragment_of_plan();
    assert!(fragment.starts_with("#2"), "{fragment}");
    act::press(&page, Role::Link, "Cut & pack");
    act::press(&page, Role::Button, "Grind");
    see::says(&page, Role::Region, Name::from("Grind"), "of pork back fat make");
}

#[test]
fn a_date_before_the_harvest_is_refused_and_a_right_one_gives_reminders() {
    let page = at_the_table(Screen::DESKTOP);
    let folder = Folder::new("reminders");
    page.save_into(&folder.0);
    act::press(&page, Role::Button, "Labels");
    let set = |field: usize, date: &str| {
        page.script(&format!(
            "(field => {{ field.value = '{date}'; field.dispatchEvent(new Event('change', {{ bubbles: true }})); }})(document.querySelectorAll('input[type=date]')[{field}])"
        ));
    };
    set(0, "2026-11-21");
    set(1, "2026-11-20");
    see::says(&page, Role::Alert, Name::Any, "before it was killed on 21 Nov 2026");
    set(1, "2026-11-25");
    see::says(&page, Role::Region, Name::from("At its best until"), "Steaks: 25 May 2027");
    act::press(&page, Role::Button, "Best-by reminders (.ics)");
    let text = folder.saved(&page, "hindsaddle.ics", "END:VCALENDAR\r\n");
    let calendar: icalendar::Calendar = text.parse().expect("another reader reads it");
    assert_eq!(calendar.components.len(), 4, "roasts, steaks, stew, ground: {text}");
    assert!(text.contains("DTSTART;VALUE=DATE:20270525"), "{text}");
}

#[test]
fn packages_and_plan_go_out_as_files_and_the_plan_comes_back() {
    let page = at_the_table(Screen::DESKTOP);
    let folder = Folder::new("files");
    page.save_into(&folder.0);
    act::press(&page, Role::Button, "Labels");
    act::fill(&page, Role::Textbox, "Owner (on labels and order)", "=HYPERLINK(1)");
    act::press(&page, Role::Button, "Files");
    act::press(&page, Role::Button, "Packages (.csv)");
    let text = folder.saved(&page, "hindsaddle-packages.csv", "white_tailed,,\r\n");
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
    assert!(rows.len() > 30, "{}", rows.len());
    assert_eq!(&rows[0][9], "'=HYPERLINK(1)", "a name is no formula");
    act::press(&page, Role::Checkbox, "Titles, names and tags, too");
    act::press(&page, Role::Button, "Plan as a file");
    folder.saved(&page, "hindsaddle-plan.txt", "\n");
    // Another browser, with another plan, opens the file.
    let other = page.open_in_second_profile(Screen::DESKTOP, "");
    act::press(&other, Role::Link, "Cut & pack");
    act::press(&other, Role::Button, "Files");
    other.choose_file("input[type=file]", &folder.0.join("hindsaddle-plan.txt"));
    see::says(&other, Role::Alert, Name::Any, "Undo brings it back");
    act::press(&other, Role::Button, "Labels");
    assert_eq!(see::value(&other, Role::Textbox, "Owner (on labels and order)"), "=HYPERLINK(1)");
    // A file that is none says so.
    let wrong = folder.0.join("wrong.txt");
    std::fs::write(&wrong, "dear diary").expect("written");
    act::press(&other, Role::Button, "Files");
    other.choose_file("input[type=file]", &wrong);
    see::says(&other, Role::Alert, Name::Any, "Your own plan is still here");
}

#[test]
fn what_is_there_is_taken_off_the_shopping_list() {
    let page = at_the_table(Screen::DESKTOP);
    act::press(&page, Role::Button, "Wrap");
    let row =
        || page.script("[...document.querySelectorAll('.plain tbody tr')].at(-1).textContent").to_string();
    let before = row();
    let field = "[...document.querySelectorAll('.have input')].at(-1)";
    page.script(&format!(
        "({field}).value = '30'; ({field}).dispatchEvent(new Event('change', {{ bubbles: true }}))"
    ));
    page.until("fewer labels to buy", || if row() == before { Err(before.clone()) } else { Ok(()) });
    act::choose(&page, "Roast", "Zip freezer bag");
    see::says(&page, Role::Region, Name::from("Wrap"), "fits no zip bag. Choose paper");
}

#[test]
fn every_caution_stands_on_one_page_and_the_order_prints_on_one() {
    let page = at_the_table(Screen::DESKTOP);
    act::press(&page, Role::Button, "Cautions");
    for words in ["Keep each animal's meat apart", "do not grind it", "department decide"] {
        see::says(&page, Role::Region, Name::from("Cautions"), words);
    }
    for link in [page.fragment_of_plan(), the_heaviest()] {
        page.go_to(&link);
        act::press(&page, Role::Link, "Cut & pack");
        act::press(&page, Role::Button, "Work order");
        see::shown(&page, Role::Button, "Print the work order");
        for paper in [A4, LETTER] {
            assert_eq!(page.sheets(paper), 1, "{link} on {paper:?}");
        }
    }
}

/// The link of a typical moose: the longest numbers of all.
pub(super) fn the_heaviest() -> String {
    let moose = Animal::new(Species::Moose, Sex::Buck, Age::Adult, Condition::Ordinary, Weighed::Typical);
    format!("#{}", link::write(&Plan::new(moose.expect("a typical animal")).into(), Names::LeftOut))
}
