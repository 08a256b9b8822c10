//! The files a person takes away, read back by other people's readers, and letter for letter as the standards
//! have them.

use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::animal::Animal;
use hindsaddle_model::csv::{csv, safe};
use hindsaddle_model::dates::{Date, Keeps};
use hindsaddle_model::ics::{Reminder, Stamp, Whose, calendar};
use hindsaddle_model::kitchen::Kitchen;
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::product::Cut;
use icalendar::{Calendar, CalendarComponent, Component, DatePerhapsTime};
use proptest::prelude::*;

fn read(text: &str) -> Vec<Vec<String>> {
    csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes())
        .records()
        .map(|record| record.unwrap().iter().map(str::to_owned).collect())
        .collect()
}

#[test]
fn a_formula_is_made_safe_and_nothing_else_is_touched() {
    let hostile = ["=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx", "=cmd|' /C calc'!A0"];
    for field in hostile {
        assert_eq!(read(&csv([[field, "next"]])), [[format!("'{field}"), "next".to_owned()]]);
    }
    for field in ["", "steak", "1.5", "a=b", "a, \"b\"\r\nc", " x ", "'", "鹿 42", "späte Jagd"] {
        assert_eq!(read(&csv([[field, "next"]])), [[field, "next"]]);
    }
    assert_eq!(csv([["a", "b"], ["c", "d"]]), "a,b\r\nc,d\r\n");
    assert_eq!(csv(Vec::<[&str; 2]>::new()), "");
}

proptest! {
    #[test]
    fn any_names_are_read_back_by_another_reader(
        rows in prop::collection::vec(prop::collection::vec("([=+@\t\r\n,\"' -]|\\PC){0,8}", 1..5), 0..6)
    ) {
        let expected: Vec<Vec<String>> =
            rows.iter().map(|row| row.iter().map(|field| safe(field)).collect()).collect();
        let text = csv(&rows);
        prop_assert_eq!(read(&text), expected);
        for row in read(&text) {
            for field in row {
                prop_assert!(!field.starts_with(['=', '+', '-', '@', '\t', '\r']));
            }
        }
    }

    #[test]
    fn any_words_survive_the_calendar_file(summary in "(\\PC|[\n;,\\\\]){0,120}", key in "\\PC{0,8}") {
        let text = written(&summary, &key);
        for line in text.split("\r\n") {
            prop_assert!(line.len() <= 75 && !line.contains(['\r', '\n']));
        }
        prop_assert_eq!(opened(&text), [(summary, "2027-02-28".to_owned(), "2027-03-01".to_owned())]);
    }
}

fn written(summary: &str, key: &str) -> String {
    let date = Date::new(2027, 2, 28).unwrap();
    let made = Stamp { date: Date::new(2026, 11, 25).unwrap(), hour: 7, minute: 5, second: 9 };
    calendar(
        &Whose::of(&Plan::new(Animal::example()), 0),
        made,
        &[Reminder { key, date, summary, description: "" }],
    )
}

/// Summary, first day and the day after the last of each entry, as a calendar reads them.
fn opened(text: &str) -> Vec<(String, String, String)> {
    let calendar: Calendar = text.parse().unwrap();
    let events = calendar.components.iter().filter_map(CalendarComponent::as_event);
    let day = |date: Option<DatePerhapsTime>| match date {
        Some(DatePerhapsTime::Date(date)) => date.to_string(),
        Some(DatePerhapsTime::DateTime(_)) | None => panic!("an entry lasts the day"),
    };
    events
        .map(|event| {
            assert_eq!(event.get_timestamp().unwrap().to_rfc3339(), "2026-11-25T07:05:09+00:00");
            let summary = event.get_summary().unwrap_or_default().to_owned();
            (summary, day(event.get_start()), day(event.get_end()))
        })
        .collect()
}

#[test]
fn a_calendar_file_is_as_the_standard_has_it() {
    let date = Date::new(2027, 2, 28).unwrap();
    let made = Stamp { date: Date::new(2026, 11, 25).unwrap(), hour: 7, minute: 5, second: 9 };
    let reminders = [
        Reminder { key: "steak", date, summary: "Best by: steaks, 4 packs", description: "" },
        Reminder { key: "grind", date, summary: "Best by: ground", description: "One\nTwo; three" },
    ];
    let whose = Whose::of(&Plan::new(Animal::example()), 0);
    let text = calendar(&whose, made, &reminders);
    let expected = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Hindsaddle//Best by//EN\r\nCALSCALE:GREGORIAN\r\n\
        BEGIN:VEVENT\r\nUID:UID0\r\nDTSTAMP:20261125T070509Z\r\nDTSTART;VALUE=DATE:20270228\r\n\
        DTEND;VALUE=DATE:20270301\r\nSUMMARY:Best by: steaks\\, 4 packs\r\nTRANSP:TRANSPARENT\r\nEND:VEVENT\r\n\
        BEGIN:VEVENT\r\nUID:UID1\r\nDTSTAMP:20261125T070509Z\r\nDTSTART;VALUE=DATE:20270228\r\n\
        DTEND;VALUE=DATE:20270301\r\nSUMMARY:Best by: ground\r\nDESCRIPTION:One\\nTwo\\; three\r\n\
        TRANSP:TRANSPARENT\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
    let uids: Vec<&str> = text.split("\r\n").filter_map(|line| line.strip_prefix("UID:")).collect();
    assert_eq!(uids.len(), 2);
    assert_eq!(text, expected.replace("UID0", uids[0]).replace("UID1", uids[1]));
    assert_ne!(uids[0], uids[1]);
    // The same entry, made later, replaces itself.
    let later = Stamp { hour: 8, ..made };
    assert!(calendar(&whose, later, &reminders[..1]).contains(uids[0]));
}

/// What makes an entry the one that a calendar has.
fn uid(plan: &Plan, place: usize, form: Keeps) -> String {
    let date = Date::new(2027, 2, 28).unwrap();
    let made = Stamp { date, hour: 0, minute: 0, second: 0 };
    let reminder = Reminder { key: form.id(), date, summary: "", description: "" };
    let text = calendar(&Whose::of(plan, place), made, &[reminder]);
    text.split("\r\n").find_map(|line| line.strip_prefix("UID:")).unwrap().to_owned()
}

#[test]
fn a_correction_keeps_the_entries_that_a_calendar_has() {
    let set = |plan: &Plan, change: &dyn Fn(&mut Kitchen)| {
        let mut kitchen = plan.kitchen().clone();
        change(&mut kitchen);
        plan.apply(Action::SetKitchen(Box::new(kitchen))).unwrap().plan
    };
    let day = |day| Date::new(2026, 11, day).ok();
    let plan = set(&Plan::new(Animal::example()), &|kitchen| {
        (kitchen.harvested, kitchen.packed) = (day(20), day(24));
    });
    let steaks = uid(&plan, 0, Keeps::Steak);
    let cut = Action::Assign { muscle: Muscle::Neck, sides: Sides::Both, cut: Cut::Grind };
    assert_eq!(uid(&plan.apply(cut).unwrap().plan, 0, Keeps::Steak), steaks);
    assert_eq!(uid(&set(&plan, &|kitchen| kitchen.packed = day(25)), 0, Keeps::Steak), steaks);
    // Every form, and another animal.
    let mut all: Vec<String> = Keeps::ALL.map(|form| uid(&plan, 0, form)).to_vec();
    all.push(uid(&plan, 1, Keeps::Steak));
    all.push(uid(&set(&plan, &|kitchen| kitchen.tag = "1207".into()), 0, Keeps::Steak));
    all.push(uid(&set(&plan, &|kitchen| kitchen.harvested = day(21)), 0, Keeps::Steak));
    all.sort();
    all.dedup();
    assert_eq!(all.len(), Keeps::ALL.len() + 3);
}
