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
mod reading;
mod scale_card;
mod table_card;
mod weigh_box;
mod work_order;
mod wrapping;

use std::rc::Rc;

use hindsaddle_model::dates::Date;
use hindsaddle_model::kitchen::{Kitchen, KitchenError};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::rules::Refusal;
use yew::prelude::*;

pub use page::KitchenPage;

use super::field::{field, tick};
use crate::store::{Msg, Notice, State};
use crate::text;
use crate::views::kitchen::{Packed, typed_date};

/// What every part of the page is given.
#[derive(Clone, PartialEq, Properties)]
pub(super) struct PartProps {
    /// The page's state.
    pub state: Rc<State>,
    /// The packages of each animal.
    pub all: Rc<Vec<Packed>>,
    /// Told what happens.
    pub send: Callback<Msg>,
}

impl PartProps {
    /// The packages of the animal that is shown.
    pub(super) fn packed(&self) -> &Packed {
        &self.all[self.state.at]
    }

    /// A callback that changes what was decided about the kitchen.
    pub(super) fn on<T: 'static>(&self, change: impl Fn(&mut Kitchen, T) + 'static) -> Callback<T> {
        let plan = self.state.plan.clone();
        self.send.reform(move |value: T| changed(&plan, |kitchen| change(kitchen, value)))
    }

    /// Tells of a date as a field gives it; one that no plan may name is said and changes nothing.
    pub(super) fn on_date(&self, field: fn(&mut Kitchen) -> &mut Option<Date>) -> Callback<String> {
        let plan = self.state.plan.clone();
        self.send.reform(move |typed: String| match typed_date(&typed) {
            Ok(date) => changed(&plan, |kitchen| *field(kitchen) = date),
            Err(error) => Msg::Say(Notice::Refused(Refusal::Kitchen(KitchenError::Date(error)))),
        })
    }
}

/// What is told to have the kitchen of a plan changed.
fn changed(plan: &Plan, change: impl FnOnce(&mut Kitchen)) -> Msg {
    let mut kitchen = plan.kitchen().clone();
    change(&mut kitchen);
    Msg::Act(Action::SetKitchen(Box::new(kitchen)))
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
