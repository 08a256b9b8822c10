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
    let message = |message: Msg| {
        let send = props.send.clone();
        Callback::from(move |_: MouseEvent| send.emit(message.clone()))
    };
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
                <button type="button" class="tool" aria-label={text::UNDO} title={text::UNDO} disabled={!state.can_undo()}
                    onclick={message(Msg::Undo)}>{ turn("M9 5L4 10l5 5M4 10h10a6 6 0 0 1 0 12h-3") }</button>
                <button type="button" class="tool" aria-label={text::REDO} title={text::REDO} disabled={!state.can_redo()}
                    onclick={message(Msg::Redo)}>{ turn("M17 5l5 5-5 5M22 10H12a6 6 0 0 0 0 12h3") }</button>
                <button type="button" class="tool" onclick={on_copy}>{ text::COPY_LINK }</button>
            </div>
        </header>
    }
}

/// An arrow that turns back or forward.
fn turn(path: &'static str) -> Html {
    html! { <svg class="icon" viewBox="0 0 26 26" aria-hidden="true"><path d={path} /></svg> }
}
