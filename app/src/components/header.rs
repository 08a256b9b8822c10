//! Name, title of the plan, undo and redo, units, copy link.

use std::rc::Rc;

use hindsaddle_model::plan::Action;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::controls::{Choosable, Segments};
use crate::platform::{address, clipboard};
use crate::store::{Msg, Notice, State};
use crate::text::{self, Units};

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
    let on_title = {
        let send = props.send.clone();
        Callback::from(move |event: Event| {
            let title = event.target_unchecked_into::<HtmlInputElement>().value();
            send.emit(Msg::Act(Action::SetTitle(title)));
        })
    };
    let on_travel = {
        let send = props.send.clone();
        Callback::from(move |event: Event| {
            send.emit(Msg::NamesTravel(event.target_unchecked_into::<HtmlInputElement>().checked()));
        })
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
    let on_units = {
        let send = props.send.clone();
        Callback::from(move |place: usize| {
            send.emit(Msg::Units(if place == 0 { Units::Pounds } else { Units::Kilograms }));
        })
    };
    let units = vec![Choosable::new(text::POUNDS), Choosable::new(text::KILOGRAMS)];
    let chosen = if state.units == Units::Pounds { 0 } else { 1 };
    html! {
        <header class="header">
            <div class="brand">
                <h1>{ text::NAME }</h1>
                <p class="motto">{ text::MOTTO }</p>
            </div>
            <div class="title-field">
                <input type="text" aria-label={text::TITLE} placeholder={text::TITLE_HINT} maxlength="40" autocomplete="off"
                    value={state.plan.title().to_owned()} onchange={on_title} />
                if !state.plan.title().is_empty() {
                    <label class="tick"><input type="checkbox" checked={state.names_travel} onchange={on_travel} />{ text::TITLE_TRAVELS }</label>
                }
            </div>
            <div class="tools">
                <button type="button" class="tool" disabled={!state.can_undo()} onclick={message(Msg::Undo)}>{ text::UNDO }</button>
                <button type="button" class="tool" disabled={!state.can_redo()} onclick={message(Msg::Redo)}>{ text::REDO }</button>
                <button type="button" class="tool" onclick={on_copy}>{ text::COPY_LINK }</button>
                <Segments label={text::UNITS} options={units} chosen={Some(chosen)} on_choose={on_units} />
            </div>
        </header>
    }
}
