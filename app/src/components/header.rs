//! Name, undo and redo, copy link.

use std::rc::Rc;

use yew::prelude::*;

use crate::platform::{address, clipboard};
use crate::store::{Msg, Notice, State};
use crate::text;

/// Properties of [`Header`].
#[derive(PartialEq, Properties)]
pub struct HeaderProps {
    /// The page's state.
    pub state: Rc<State>,
    /// Told what happens.
    pub send: Callback<Msg>,
}

/// The head of the page.
#[component]
pub fn Header(props: &HeaderProps) -> Html {
    let state = &props.state;
    let on_copy = {
        let (send, state) = (props.send.clone(), state.clone());
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
                { turns(state, &props.send) }
                <a class="tool" href={format!("kitchen.html#{}", state.link())}>{ text::TO_KITCHEN }</a>
                <button type="button" class="tool" aria-label={text::COPY_LINK} title={text::COPY_LINK} onclick={on_copy}>{ turn("M10 16l6-6M8 12l-3 3a4 4 0 0 0 6 6l3-3M18 14l3-3a4 4 0 0 0-6-6l-3 3") }</button>
            </div>
        </header>
    }
}

/// Undo and redo.
pub(in crate::components) fn turns(state: &State, send: &Callback<Msg>) -> Html {
    let button = |name: &'static str, able: bool, message: Msg, path: &'static str| {
        let is_redo = message == Msg::Redo;
        let onclick = send.reform(move |_: MouseEvent| message.clone());
        html! { <button type="button" class={classes!("tool", is_redo.then_some("redo"))} aria-label={name} title={name} disabled={!able} {onclick}>{ turn(path) }</button> }
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
