//! The head of each page: name, undo and redo, the ways to the other pages, and which animal is shown.

use std::rc::Rc;

use yew::prelude::*;

use super::notice_bar;
use crate::platform::{address, clipboard};
use crate::store::{Msg, Notice, State};
use crate::text;

/// The head of the first page.
pub fn header(state: &Rc<State>, send: &Callback<Msg>) -> Html {
    let on_copy = {
        let (send, state) = (send.clone(), state.clone());
        Callback::from(move |_: MouseEvent| {
            // The address is written a moment after an edit; a copy wants it now.
            address::replace_fragment(&state.link());
            let send = send.clone();
            clipboard::copy(&address::whole(), move |copied| {
                send.emit(Msg::Say(if copied { Notice::Copied } else { Notice::NotCopied }));
            });
        })
    };
    html! {
        <header class="header">
            <div class="brand">
                <h1>{ text::NAME }</h1>
                <p class="motto">{ text::MOTTO }</p>
            </div>
            <div class="tools">
                { turns(state, send) }
                { ways(Place::Plan, state) }
                <button type="button" class="tool" aria-label={text::COPY_LINK} title={text::COPY_LINK} onclick={on_copy}>{ turn("M10 16l6-6M8 12l-3 3a4 4 0 0 0 6 6l3-3M18 14l3-3a4 4 0 0 0-6-6l-3 3") }</button>
            </div>
            { animals(state, send) }
        </header>
    }
}

/// A page.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(in crate::components) enum Place {
    Plan,
    Ahead,
    Kitchen,
    Learn,
}

impl Place {
    const ALL: [Place; 4] = [Place::Plan, Place::Ahead, Place::Kitchen, Place::Learn];

    const fn file(self) -> &'static str {
        match self {
            Place::Plan => "./",
            Place::Ahead => "ahead.html",
            Place::Kitchen => "kitchen.html",
            Place::Learn => "learn.html",
        }
    }
}

/// A page other than the first: its head, what is to be said, the names of its parts, of which one is open, and that one.
pub(in crate::components) fn page(
    place: Place,
    (state, send): (&State, &Callback<Msg>),
    (names, open): (&[&'static str], &UseStateHandle<usize>),
    part: Html,
) -> Html {
    // A lesson in the address is at home on one page.
    let notice =
        state.notice.as_ref().filter(|notice| place != Place::Learn || !matches!(notice, Notice::Lesson(_)));
    html! {
        <div class={classes!("page", "kitchen", (place == Place::Learn).then_some("learn"))}>
            <header class="header">
                <div class="brand"><h1>{ text::page(place as usize) }</h1><p class="motto">{ text::animal_line(&state.plan, state.units) }</p></div>
                <div class="tools">{ turns(state, send) }{ ways(place, state) }</div>
                { animals(state, send) }
            </header>
            { notice_bar(notice, state.units, send) }
            { parts(names, open) }
            <main class="kitchen-part">{ part }</main>
        </div>
    }
}

/// Links to the other pages, with the season in them.
fn ways(here: Place, state: &State) -> Html {
    let link = state.link();
    html! {
        { for Place::ALL.into_iter().filter(|place| *place != here).map(|place| html! {
            <a key={place.file()} class="tool" href={format!("{}#{link}", place.file())}>{ text::way(place as usize) }</a>
        }) }
    }
}

/// The animals of the season, where there are several: a tap shows another one.
pub(in crate::components) fn animals(state: &State, send: &Callback<Msg>) -> Html {
    let season = state.season.animals();
    if season.len() < 2 {
        return Html::default();
    }
    html! {
        <nav class="animals" aria-label={text::ANIMALS}>
            { for season.iter().enumerate().map(|(place, plan)| html! {
                <button key={place} type="button" class="segment" aria-pressed={(place == state.at).to_string()} onclick={send.reform(move |_: MouseEvent| Msg::Turn(place))}>{ text::animal_name(plan, place) }</button>
            }) }
        </nav>
    }
}

/// The parts of a page, of which one is open.
fn parts(names: &[&'static str], open: &UseStateHandle<usize>) -> Html {
    html! {
        <nav class="parts" aria-label={text::PARTS_OF_PAGE}>
            { for names.iter().enumerate().map(|(place, name)| {
                let part = open.clone();
                html! { <button key={*name} type="button" class="segment" aria-pressed={(**open == place).to_string()} onclick={move |_| part.set(place)}>{ *name }</button> }
            }) }
        </nav>
    }
}

/// Undo and redo.
fn turns(state: &State, send: &Callback<Msg>) -> Html {
    let button = |name: &'static str, able: bool, message: Msg, path: &'static str| {
        let onclick = send.reform(move |_: MouseEvent| message.clone());
        html! { <button type="button" class="tool" aria-label={name} title={name} disabled={!able} {onclick}>{ turn(path) }</button> }
    };
    html! {
        <>
            { button(text::UNDO, state.can_undo(), Msg::Undo, "M9 5L4 10l5 5M4 10h10a6 6 0 0 1 0 12h-3") }
            { button(text::REDO, state.can_redo(), Msg::Redo, "M17 5l5 5-5 5M22 10H12a6 6 0 0 0 0 12h3") }
        </>
    }
}

/// An arrow that turns back or forward.
fn turn(path: &'static str) -> Html {
    html! { <svg class="icon" viewBox="0 0 26 26" aria-hidden="true"><path d={path} /></svg> }
}
