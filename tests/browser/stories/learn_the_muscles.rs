//! Someone learns where cuts come from, alone or in a class: reads of a muscle, walks through a first deer, practises;
//! and a teacher hands a lesson on.

use crate::act;
use crate::find::{Name, Role, starting};
use crate::keys::Key;
use crate::page::{A4, Page, Screen};
use crate::see;

/// A frozen lesson: find the backstrap, the top round and the tenderloin, in this order.
const LESSON: &str = "#L1IEwGAAAO3A";

/// The fourth page, by its link.
fn learn(screen: Screen, part: &str) -> Page {
    let page = Page::open(screen);
    act::press(&page, Role::Link, "Learn");
    see::shown(&page, Role::Heading, "Learn");
    act::press(&page, Role::Button, part);
    page
}

/// Words that stand in the main part of the page.
#[track_caller]
fn says(page: &Page, words: &str) {
    see::says(page, Role::Main, Name::Any, words);
}

#[test]
fn a_muscle_is_read_about_by_tap_and_set_beside_another() {
    let page = learn(Screen::PHONE, "Muscles");
    says(&page, "Tap any muscle of the deer");
    act::press(&page, Role::Button, "Knuckle");
    act::press(&page, Role::Button, "Knuckle");
    see::says(&page, Role::Region, "About knuckle", "It straightened the knee");
    see::says(&page, Role::Region, "About knuckle", "Why not the others");
    act::choose(&page, "Compare with", "Tenderloin");
    see::says(&page, Role::Region, "Compare", "The tenderloin is a little tenderer than the knuckle");
    see::no_sideways_scrolling(&page);
    act::choose(&page, "Muscle", "Tenderloin");
    see::is(&page, Role::Button, "Inner side", "pressed");
    see::gone(&page, Role::Region, "Compare");
}

#[test]
fn a_muscle_is_read_about_by_keyboard() {
    let page = learn(Screen::DESKTOP, "Muscles");
    act::press(&page, Role::Button, "From above");
    act::key(&page, Key::Tab);
    act::key(&page, Key::Enter);
    let before = see::text(&page, Role::Main, Name::Any);
    assert!(before.contains("In life"), "{before}");
    act::key(&page, Key::Right);
    act::key(&page, Key::Space);
    see::next_text(&page, Role::Main, Name::Any, &before);
}

#[test]
fn the_first_deer_is_walked_and_remembered() {
    let page = learn(Screen::PHONE, "First deer");
    says(&page, "Step 1 of 10");
    says(&page, "Test first where your wildlife agency asks or advises it");
    for _ in 0..2 {
        act::press(&page, Role::Button, "Next");
    }
    says(&page, "Lift off the shoulders");
    see::no_sideways_scrolling(&page);
    page.reload();
    act::press(&page, Role::Button, "First deer");
    says(&page, "Step 3 of 10");
    act::press(&page, Role::Heading, "Lift off the shoulders");
    act::key(&page, Key::Right);
    says(&page, "Step 4 of 10");
    act::key(&page, Key::Left);
    says(&page, "Step 3 of 10");
    for _ in 3..10 {
        act::press(&page, Role::Button, "Next");
    }
    says(&page, "Wrap, label, freeze");
    act::press(&page, Role::Button, "From the start");
    says(&page, "Step 1 of 10");
}

#[test]
fn a_lesson_asks_the_same_of_everyone_and_keeps_the_score_here() {
    let page = Page::open_at(Screen::PHONE, &format!("learn.html{LESSON}"));
    see::says(&page, Role::Region, "Lesson", "3 questions about 3 muscles: Find the muscle.");
    act::press(&page, Role::Button, "Start");
    see::shown(&page, Role::Heading, "Where is the backstrap?");
    let groove = "In the groove beside the spine, from the hip to the base of the neck";
    // The first tap comes closer.
    act::press(&page, Role::Button, groove);
    act::press(&page, Role::Button, groove);
    says(&page, "Yes, that is the backstrap");
    act::press(&page, Role::Button, "Next question");
    see::shown(&page, Role::Heading, "Where is the top round?");
    act::choose(&page, "Or choose the place in words", "Inside of the thigh, against its twin");
    says(&page, "Yes, that is the top round");
    act::press(&page, Role::Button, "Next question");
    act::choose(&page, "Or choose the place in words", "The wall between chest and belly, inside");
    says(&page, "That is the skirt. The tenderloin is marked now");
    see::no_sideways_scrolling(&page);
    act::press(&page, Role::Button, "See how it went");
    see::shown(&page, Role::Heading, "2 of 3 right");
    says(&page, "Hidden inside the belly under the spine");
    assert_eq!(page.fragment(), LESSON, "the address is the lesson's");
    page.reload();
    see::says(&page, Role::Region, "So far on this device", "Find the muscle: 2 of 3 right");
    act::press(&page, Role::Button, "Forget the score");
    see::says(&page, Role::Region, "So far on this device", "Nothing has been answered");
    act::press(&page, Role::Button, "Leave the lesson");
    page.fragment_of_plan();
}

#[test]
fn cuts_and_strokes_are_answered_by_keyboard() {
    let page = learn(Screen::DESKTOP, "Practice");
    for (game, group, answers) in
        [("Which cut", "what does it want to be?", 5), ("Which stroke", "which stroke crosses the grain?", 3)]
    {
        act::press(&page, Role::Button, game);
        act::press(&page, Role::Button, "Start");
        for question in 1..=10 {
            says(&page, &format!("Question {question} of 10"));
            says(&page, group);
            // From the question to an answer, which is different each time; then what is said has the focus, and the way
            // on comes next.
            for _ in 0..=question % answers {
                act::key(&page, Key::Tab);
            }
            act::key(&page, Key::Enter);
            act::key(&page, Key::Tab);
            act::key(&page, Key::Enter);
        }
        says(&page, "of 10 right");
        act::press(&page, Role::Button, "Leave");
    }
    see::says(&page, Role::Region, "So far on this device", "Which stroke: ");
}

#[test]
fn a_teacher_hands_a_lesson_on() {
    let page = learn(Screen::DESKTOP, "Practice");
    act::press(&page, Role::Disclosure, starting("For a class: make a lesson"));
    see::shown(&page, Role::Image, "The link of the lesson as a code to photograph");
    act::press(&page, Role::Button, "Hind leg: None");
    says(&page, "Tick at least one muscle.");
    act::press(&page, Role::Button, "Inner side");
    act::press(&page, Role::Checkbox, "Tenderloin");
    act::press(&page, Role::Checkbox, "Which stroke");
    says(&page, "3 questions about 1 muscle, inner side");
    let link = see::value(&page, Role::Textbox, "Link of the lesson");
    let fragment = link.split_once('#').expect("a fragment").1.to_owned();
    act::press(&page, Role::Button, "Worksheet and key of it");
    assert_eq!(see::count(&page, Role::ListItem, Name::Any), 2, "one blank and one answer");
    see::shown(&page, Role::Region, "Name the muscles: answer key");
    act::press(&page, Role::Button, "Close");
    let class = page.open_in_second_profile(Screen::PHONE, &format!("learn.html#{fragment}"));
    see::says(&class, Role::Region, "Lesson", "3 questions about 1 muscle, inner side");
    act::press(&class, Role::Button, "Start");
    see::shown(&class, Role::Heading, "Where is the tenderloin?");
}

#[test]
fn a_lesson_on_another_page_says_what_it_is_and_a_damaged_one_says_so() {
    let page = Page::open_at(Screen::PHONE, LESSON);
    see::says(&page, Role::Alert, Name::Any, "This is the link of a lesson, not of a plan.");
    see::no_sideways_scrolling(&page);
    act::press(&page, Role::Link, "Open the lesson");
    see::says(&page, Role::Region, "Lesson", "3 questions about 3 muscles");
    page.go_to("learn.html#L1IEwGAAAO3B");
    see::says(&page, Role::Alert, Name::Any, "You can practise without it");
    page.go_to("learn.html#L9AAAAAAAAAA");
    see::says(&page, Role::Alert, Name::Any, "made by a later version");
    act::press(&page, Role::Button, "Start");
    says(&page, "Question 1 of 10");
}

#[test]
fn a_plan_opened_here_is_the_plan_everywhere() {
    let page = Page::open(Screen::DESKTOP);
    act::choose(&page, "Knuckle becomes", "Stew");
    let link = page.fragment_of_plan();
    let theirs = page.open_in_second_profile(Screen::DESKTOP, &format!("learn.html{link}"));
    see::shown(&theirs, Role::Heading, "Learn");
    act::press(&theirs, Role::Link, "Plan");
    assert_eq!(theirs.fragment_of_plan(), link);
}

#[test]
fn words_are_found_and_sources_are_named() {
    let page = learn(Screen::PHONE, "Words");
    act::fill(&page, Role::Textbox, "Find a word", "kerf");
    says(&page, "What a cut itself takes away");
    see::says(&page, Role::Status, Name::Any, "1 word");
    act::fill(&page, Role::Textbox, "Find a word", "<b>");
    see::says(&page, Role::Status, Name::Any, "No word here has \u{201c}<b>\u{201d} in it");
    act::fill(&page, Role::Textbox, "Find a word", " ");
    act::press(&page, Role::Button, "W");
    see::in_view(&page, Role::Term, "Withers");
    see::no_sideways_scrolling(&page);
    act::press(&page, Role::Button, "Sources");
    says(&page, "Our judgement. Each muscle's share");
    see::no_sideways_scrolling(&page);
}

#[test]
fn a_lesson_prints_as_a_field_guide() {
    let page = Page::open_at(Screen::DESKTOP, &format!("learn.html{LESSON}"));
    see::shown(&page, Role::Button, "Start");
    page.show_as_print();
    see::says(&page, Role::Region, "Field guide", "Hidden inside the belly under the spine");
    see::gone(&page, Role::Button, "Start");
    assert_eq!(page.sheets(A4), 2);
}
