//! The list of muscles: everything the plate does, by keyboard, by ear, and without a drawing.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, Side, Sides};
use hindsaddle_model::forecast::MuscleForecast;
use hindsaddle_model::plan::Action;
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::rules::{self, Verdict};
use yew::prelude::*;

use super::controls::{Choosable, bare_choice};
use super::still::{Still, still};
use crate::store::{Msg, State};
use crate::text;

/// The list.
pub fn muscle_list(state: &State, send: &Callback<Msg>) -> Html {
    let reset = send.reform(|_: MouseEvent| Msg::Act(Action::ResetCuts));
    html! {
        <section class="card list" aria-label={text::LIST}>
            <h2>{ text::LIST }</h2>
            { for Region::ALL.into_iter().map(|region| html! {
                <table key={text::region(region)}>
                    <caption>{ text::region(region) }</caption>
                    <thead class="unseen"><tr><th scope="col">{ text::MUSCLE }</th><th scope="col">{ text::BECOMES }</th><th scope="col">{ text::GIVES }</th></tr></thead>
                    <tbody>{ for region.muscles().map(|muscle| row(state, muscle, send)) }</tbody>
                </table>
            }) }
            <button type="button" class="tool" onclick={reset}>{ text::RESET }</button>
        </section>
    }
}

/// Everything a muscle may become at once, and discard.
fn cuts() -> Vec<Option<Product>> {
    Product::ALL.into_iter().map(Some).chain([None]).collect()
}

fn row(state: &State, muscle: Muscle, send: &Callback<Msg>) -> Html {
    let is_even = state.plan.is_even(muscle);
    let single = state.plan.division(muscle, Side::Left).single().filter(|_| is_even);
    let (forecast, taken) = (state.forecast.muscles[muscle.index()].clone(), state.plan.is_recovered(muscle));
    let becomes = single.map(Cut::product).ok_or(is_even);
    let is_picked = state.muscle == Some(muscle);
    still(muscle.id(), Row { muscle, becomes, forecast, taken, is_picked, send: send.clone() })
}

/// One muscle.
#[derive(PartialEq)]
struct Row {
    muscle: Muscle,
    /// What all of it becomes; where it is divided, whether both sides alike.
    becomes: Result<Option<Product>, bool>,
    forecast: Rc<MuscleForecast>,
    /// Whether it is taken at all.
    taken: bool,
    is_picked: bool,
    send: Callback<Msg>,
}

impl Still for Row {
    fn draw(&self) -> Html {
        let muscle = self.muscle;
        let name = text::muscle(muscle);
        let mut options: Vec<Choosable> = cuts()
            .into_iter()
            .map(|product| Choosable {
                label: product.map_or(text::DISCARD, text::product).into(),
                disabled: product
                    .is_some_and(|product| matches!(rules::verdict(muscle, product), Verdict::Impossible(_))),
            })
            .collect();
        let chosen = match self.becomes {
            Ok(becomes) => cuts().iter().position(|product| *product == becomes),
            Err(is_even) => {
                let label = if is_even { text::DIVIDED } else { text::UNEVEN };
                options.push(Choosable { label: label.into(), disabled: true });
                Some(options.len() - 1)
            }
        };
        let on_choose = {
            let send = self.send.clone();
            Callback::from(move |place: usize| {
                if let Some(product) = cuts().get(place) {
                    let cut = product.map_or(Cut::Discard, Cut::usual);
                    send.emit(Msg::Act(Action::Assign { muscle, sides: Sides::Both, cut }));
                }
            })
        };
        let pick = self.send.reform(move |_: MouseEvent| Msg::Pick(Some(muscle)));
        html! {
            <tr class={classes!(self.is_picked.then_some("picked"))}>
                <th scope="row"><button type="button" class="muscle-name" aria-pressed={self.is_picked.to_string()} onclick={pick}>{ name }</button></th>
                <td><label class="field">{ bare_choice(text::becomes(name).into(), options, chosen, &on_choose) }</label></td>
                <td class="gives">{ text::muscle_result(&self.forecast, self.taken) }</td>
            </tr>
        }
    }
}
