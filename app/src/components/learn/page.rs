//! The page put together. While a lesson is open the address is the lesson's; the plan goes along in the memory and in
//! the ways to the other pages.

use hindsaddle_model::lesson::Lesson;
use hindsaddle_model::link::LinkError;
use hindsaddle_model::link::lesson::{is_lesson, read, write};
use yew::prelude::*;

use super::practice::Practice;
use super::{PartProps, muscles, sources, walk, words};
use crate::app::{use_season, use_width};
use crate::components::class_sheets;
use crate::components::header::{Place, page};
use crate::platform::address;
use crate::store::Msg;
use crate::text;
use crate::views::draft::{Draft, sides};

/// A part of the page.
#[derive(Clone, Copy)]
enum Part {
    Muscles,
    FirstDeer,
    Practice,
    Words,
    Sources,
}

const PARTS: [(Part, &str); 5] = [
    (Part::Muscles, text::MUSCLES),
    (Part::FirstDeer, text::FIRST_DEER),
    (Part::Practice, text::PRACTICE),
    (Part::Words, text::WORDS),
    (Part::Sources, text::SOURCES),
];
/// The place of practice among them, where a lesson opens.
const PRACTICE: usize = 2;

/// The lesson of a fragment, or why it is none; None if it claims to be none.
fn lesson_of(fragment: &str) -> Option<Result<Lesson, LinkError>> {
    is_lesson(fragment).then(|| read(fragment))
}

/// The page.
#[component]
pub fn LearnPage() -> Html {
    let lesson = use_state_eq(|| lesson_of(&address::fragment()));
    let part = use_state(|| if lesson.is_some() { PRACTICE } else { 0 });
    let (state, send) = use_season(lesson.as_ref().and_then(|lesson| lesson.as_ref().ok()).map(write));
    {
        let (lesson, part) = (lesson.setter(), part.setter());
        use_effect_with((), move |()| {
            let listener = address::on_change(move |fragment| {
                let opened = lesson_of(&fragment);
                if opened.is_some() {
                    part.set(PRACTICE);
                }
                lesson.set(opened);
            });
            move || drop(listener)
        });
    }
    let draft = use_state(Draft::beginning);
    let sheets = use_state(Vec::new);
    let width = use_width();
    if state.class_sheets {
        return class_sheets(&state, &sheets, &send);
    }
    let on_lesson = {
        let (lesson, part) = (lesson.clone(), part.clone());
        Callback::from(move |opened: Option<Lesson>| {
            part.set(PRACTICE);
            lesson.set(opened.map(Ok));
        })
    };
    let on_sheets = {
        let (sheets, send) = (sheets, send.clone());
        Callback::from(move |of: Lesson| {
            sheets.set(sides(&of));
            send.emit(Msg::ClassSheets(true));
        })
    };
    let props = PartProps { state: state.clone(), width, send: send.clone() };
    let shown = match PARTS[*part].0 {
        Part::Muscles => html! { <muscles::Muscles ..props /> },
        Part::FirstDeer => html! { <walk::Walk ..props /> },
        Part::Practice => {
            html! { <Practice part={props} lesson={(*lesson).clone()} {on_lesson} {draft} {on_sheets} /> }
        }
        Part::Words => html! { <words::Words /> },
        Part::Sources => sources::view(),
    };
    page(Place::Learn, (&state, &send), (&PARTS.map(|(_, name)| name), &part), shown)
}
