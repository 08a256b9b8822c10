//! A teacher's lesson: tick muscles and games, choose the side, hand on the link or its code.

use hindsaddle_model::anatomy::{Region, View};
use hindsaddle_model::lesson::{Game, Lesson};
use hindsaddle_model::link::lesson::write;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::components::code::Code;
use crate::components::controls::{segments_of, stepper};
use crate::components::still::Still;
use crate::platform::{address, clipboard};
use crate::text;
use crate::views::draft::Draft;

/// The card.
#[derive(PartialEq)]
pub(super) struct ClassLesson {
    /// What is ticked.
    pub draft: UseStateHandle<Draft>,
    /// Told to open the lesson.
    pub on_open: Callback<Option<Lesson>>,
    /// Told to show its sheets.
    pub on_sheets: Callback<Lesson>,
}

const VIEWS: [Option<View>; 4] = [None, Some(View::Outer), Some(View::Inner), Some(View::Above)];

impl Still for ClassLesson {
    fn draw(&self) -> Html {
        let draft = &self.draft;
        let set = {
            let draft = draft.clone();
            Callback::from(move |now: Draft| draft.set(now))
        };
        let on_view = {
            let (set, now) = (set.clone(), (**draft).clone());
            Callback::from(move |view: Option<View>| set.emit(now.clone().seen_from(view)))
        };
        let on_order = {
            let (set, now) = (set.clone(), (**draft).clone());
            Callback::from(move |by: i32| set.emit(now.clone().stepped(by)))
        };
        html! {
            <details class="card class-lesson">
                <summary>{ text::FOR_A_CLASS }</summary>
                <p>{ text::CLASS_LESSON_HINT }</p>
                <fieldset class="ticks"><legend>{ text::GAMES }</legend>
                    { for Game::ALL.into_iter().map(|game| {
                        let (set, now) = (set.clone(), (**draft).clone());
                        ticked(text::game(game), draft.games[game.index()], false, &Callback::from(move |on: bool| {
                            let mut now = now.clone();
                            now.games[game.index()] = on;
                            set.emit(now);
                        }))
                    }) }
                </fieldset>
                <h3>{ text::SEEN_FROM }</h3>
                { segments_of(text::SEEN_FROM, &VIEWS, |view| view.map_or(text::ANY_SIDE, text::view), draft.view, &on_view) }
                { for Region::ALL.into_iter().map(|region| of_region(draft, region, &set)) }
                { stepper(text::ORDER, (u32::from(draft.order) + 1).to_string(), &on_order, (text::EARLIER_ORDER, text::NEXT_ORDER)) }
                { match draft.lesson() {
                    Ok(lesson) => html! { <Link key="link" {lesson} on_open={self.on_open.reform(Some)} on_sheets={self.on_sheets.clone()} /> },
                    Err(error) => html! { <p key="trouble" class="wrong" role="alert">{ text::lesson_trouble(error) }</p> },
                } }
            </details>
        }
    }
}

/// The muscles of a region.
fn of_region(draft: &Draft, region: Region, set: &Callback<Draft>) -> Html {
    let all = |on: bool| {
        let (set, now) = (set.clone(), draft.clone());
        Callback::from(move |_: MouseEvent| set.emit(now.clone().region(region, on)))
    };
    let name = text::region(region);
    html! {
        <fieldset key={name} class="ticks">
            <legend>{ name }</legend>
            <span class="all-none">
                <button type="button" class="tool" aria-label={text::named(name, text::TICK_ALL)} onclick={all(true)}>{ text::TICK_ALL }</button>
                <button type="button" class="tool" aria-label={text::named(name, text::TICK_NONE)} onclick={all(false)}>{ text::TICK_NONE }</button>
            </span>
            { for region.muscles().map(|muscle| {
                let (set, now) = (set.clone(), draft.clone());
                ticked(text::muscle(muscle), draft.muscles[muscle.index()], !draft.can_tick(muscle), &Callback::from(move |on: bool| set.emit(now.clone().ticked(muscle, on))))
            }) }
        </fieldset>
    }
}

fn ticked(name: &'static str, checked: bool, disabled: bool, on_tick: &Callback<bool>) -> Html {
    let onchange = on_tick.reform(|event: Event| event.target_unchecked_into::<HtmlInputElement>().checked());
    html! { <label key={name} class="tick"><input type="checkbox" {checked} {disabled} {onchange} /><span>{ name }</span></label> }
}

#[derive(PartialEq, Properties)]
struct LinkProps {
    lesson: Lesson,
    on_open: Callback<Lesson>,
    on_sheets: Callback<Lesson>,
}

/// The link of a lesson, its code, and its sheets.
#[component]
fn Link(props: &LinkProps) -> Html {
    let said = use_state(|| "");
    let lesson = &props.lesson;
    let link = address::of_page("learn.html", &write(lesson));
    let on_copy = {
        let (said, link) = (said.clone(), link.clone());
        Callback::from(move |_: MouseEvent| {
            let said = said.clone();
            clipboard::copy(&link, move |copied| {
                said.set(if copied { text::LESSON_COPIED } else { text::NOT_COPIED });
            });
        })
    };
    let with_lesson = |then: &Callback<Lesson>| {
        let lesson = lesson.clone();
        then.reform(move |_: MouseEvent| lesson.clone())
    };
    let games: Vec<&str> = lesson.games().map(text::game).collect();
    html! {
        <>
            <p class="answer">{ text::lesson_line(lesson.questions().len(), lesson.muscles().count(), &games.join(", "), lesson.view()) }</p>
            <label class="field"><span class="field-label">{ text::LESSON_LINK }</span><input type="text" readonly=true value={link.clone()} /></label>
            <div class="row-tools">
                <button type="button" class="tool main-action" onclick={on_copy}>{ text::COPY_LESSON }</button>
                <button type="button" class="tool" onclick={with_lesson(&props.on_open)}>{ text::OPEN_HERE }</button>
                <button type="button" class="tool" onclick={with_lesson(&props.on_sheets)}>{ text::LESSON_SHEETS }</button>
            </div>
            <p role="status" class="hint">{ *said }</p>
            if let Some(code) = Code::of(&link) {
                <div class="code"><svg viewBox={code.view_box} role="img" aria-label={text::LESSON_CODE_ALT}><path d={code.modules} /></svg></div>
            }
        </>
    }
}
