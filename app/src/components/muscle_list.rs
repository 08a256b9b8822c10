//! The list of muscles: everything the plate does, by keyboard, by ear, and without a drawing.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, Side, Sides};
use hindsaddle_model::plan::Action;
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::rules::{self, Verdict};
use yew::prelude::*;

use super::controls::{Choice, Choosable};
use crate::store::{Msg, State};
use crate::text;

/// Properties of [`MuscleList`].
#[derive(PartialEq, Properties)]
pub struct MuscleListProps {
    /// The page's state.
    pub state: Rc<State>,
    /// Told what happens.
    pub send: Callback<Msg>,
}

/// The list.
#[component]
pub fn MuscleList(props: &MuscleListProps) -> Html {
    let reset = {
        let send = props.send.clone();
        Callback::from(move |_: MouseEvent| send.emit(Msg::Act(Action::ResetCuts)))
    };
    html! {
        <section class="card list" aria-label={text::LIST}>
            <h2>{ text::LIST }</h2>
            { for Region::ALL.into_iter().map(|region| html! {
                <table key={text::region(region)}>
                    <caption>{ text::region(region) }</caption>
                    <thead class="unseen"><tr><th scope="col">{ text::MUSCLE }</th><th scope="col">{ text::BECOMES }</th><th scope="col">{ text::GIVES }</th></tr></thead>
                    <tbody>{ for region.muscles().map(|muscle| row(&props.state, muscle, &props.send)) }</tbody>
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
    let name = text::muscle(muscle);
    let forecast = &state.forecast.muscles[muscle.index()];
    let division = state.plan.division(muscle, Side::Left);
    let single = division.single().filter(|_| state.plan.is_even(muscle));
    let mut options: Vec<Choosable> = cuts()
        .into_iter()
        .map(|product| Choosable {
            label: product.map_or(text::DISCARD, text::product).into(),
            disabled: product
                .is_some_and(|product| matches!(rules::verdict(muscle, product), Verdict::Impossible(_))),
        })
        .collect();
    let chosen = if let Some(cut) = single {
        cuts().iter().position(|product| *product == cut.product())
    } else {
        let label = if state.plan.is_even(muscle) { text::DIVIDED } else { text::UNEVEN };
        options.push(Choosable { label: label.into(), disabled: true });
        Some(options.len() - 1)
    };
    let on_choose = {
        let send = send.clone();
        Callback::from(move |place: usize| {
            if let Some(product) = cuts().get(place) {
                let cut = product.map_or(Cut::Discard, Cut::usual);
                send.emit(Msg::Act(Action::Assign { muscle, sides: Sides::Both, cut }));
            }
        })
    };
    let pick = {
        let send = send.clone();
        Callback::from(move |_: MouseEvent| send.emit(Msg::Pick(Some(muscle))))
    };
    let is_picked = state.muscle == Some(muscle);
    html! {
        <tr key={muscle.id()} class={classes!(is_picked.then_some("picked"))}>
            <th scope="row"><button type="button" class="muscle-name" aria-pressed={is_picked.to_string()} onclick={pick}>{ name }</button></th>
            <td><Choice label={text::becomes(name)} labelled={false} {options} {chosen} {on_choose} /></td>
            <td class="gives">{ text::muscle_result(forecast, state.plan.is_recovered(muscle)) }</td>
        </tr>
    }
}
