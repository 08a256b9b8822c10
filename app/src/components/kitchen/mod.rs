//! The second page: from the table to the freezer. It is a program of its own, so that a first visit need not
//! fetch it; it shares the plan by the address and the storage.

mod cautions;
mod dates;
mod files;
mod freezer;
mod grinder;
mod labels;
mod own_card;
mod page;
mod scale_card;
mod table_card;
mod weigh_box;
mod work_order;
mod wrapping;

use std::rc::Rc;

use hindsaddle_model::kitchen::Kitchen;
use hindsaddle_model::plan::Action;
use web_sys::HtmlInputElement;
use yew::prelude::*;

pub use page::KitchenPage;

use crate::store::{Msg, State};
use crate::text;
use crate::views::kitchen::Packed;

/// What every part of the page is given.
#[derive(Clone, PartialEq, Properties)]
pub(super) struct PartProps {
    /// The page's state.
    pub state: Rc<State>,
    /// The packages of its plan.
    pub packed: Rc<Packed>,
    /// Told what happens.
    pub send: Callback<Msg>,
}

impl PartProps {
    /// A callback that changes what was decided about the kitchen.
    pub(super) fn on<T: 'static>(&self, change: impl Fn(&mut Kitchen, T) + 'static) -> Callback<T> {
        let plan = self.state.plan.clone();
        self.send.reform(move |value: T| {
            let mut kitchen = plan.kitchen().clone();
            change(&mut kitchen, value);
            Msg::Act(Action::SetKitchen(Box::new(kitchen)))
        })
    }
}

/// A field with its label; `on_text` is told what was typed when it is left.
pub(super) fn field(
    label: &'static str,
    kind: &'static str,
    value: String,
    unit: &'static str,
    on_text: &Callback<String>,
) -> Html {
    let onchange = on_text.reform(|event: Event| event.target_unchecked_into::<HtmlInputElement>().value());
    // Numbers are typed as text, so that a comma does as well as a point.
    let (kind, mode) = if kind == "number" { ("text", "decimal") } else { (kind, "text") };
    html! {
        <label class="field">
            <span class="field-label">{ label }</span>
            <span class="with-unit"><input type={kind} inputmode={mode} aria-label={label} {value} {onchange} />
            if !unit.is_empty() { <span class="unit">{ unit }</span> }</span>
        </label>
    }
}

/// A box to tick.
pub(super) fn tick(label: &'static str, checked: bool, on_tick: &Callback<bool>) -> Html {
    let onchange = on_tick.reform(|event: Event| event.target_unchecked_into::<HtmlInputElement>().checked());
    html! { <label class="tick"><input type="checkbox" {checked} {onchange} />{ label }</label> }
}

/// A button that does one thing.
pub(super) fn button(label: &'static str, onclick: Callback<MouseEvent>) -> Html {
    html! { <button type="button" class="tool" {onclick}>{ label }</button> }
}

/// A line with a button that takes it away; `removes` is what the button says of itself.
pub(super) fn row(said: String, removes: String, onclick: Callback<MouseEvent>) -> Html {
    html! {
        <li key={said.clone()}>
            <span>{ said }</span>
            <button type="button" class="tool" aria-label={removes} {onclick}>{ text::REMOVE }</button>
        </li>
    }
}
