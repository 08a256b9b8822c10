//! The work order: one printed page for whoever cuts.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::forecast::MuscleForecast;
use hindsaddle_model::order::{Task, working_order};
use hindsaddle_model::plan::Plan;
use hindsaddle_model::product::Product;
use yew::prelude::*;

use super::PartProps;
use crate::caution::Caution;
use crate::components::small_plate::small_plate;
use crate::platform::picture;
use crate::store::State;
use crate::text;
use crate::views::explain::pack_rule;

/// The page.
pub(super) fn view(props: &PartProps) -> Html {
    let state = &props.state;
    let (plan, units) = (&state.plan, state.units);
    let kitchen = plan.kitchen();
    let or_line =
        |text: &str| if text.is_empty() { "______________________".to_owned() } else { text.to_owned() };
    let grinder = kitchen.grinder;
    let forecast = &state.forecast;
    html! {
        <section class="card order" aria-label={text::WORK_ORDER}>
            <div class="card-head screen-only"><p class="hint">{ text::ORDER_HINT }</p>
                <button type="button" class="tool" onclick={|_: MouseEvent| picture::print()}>{ text::PRINT_ORDER }</button></div>
            <div class="order-head">
                <div>
                    <h2>{ text::WORK_ORDER }</h2>
                    <p><b>{ text::animal_line(plan, units) }</b></p>
                    <p>{ text::OWNER_LINE }{ ": " }{ or_line(&kitchen.owner) }{ "  " }{ text::TAG_LINE }{ ": " }{ or_line(&kitchen.tag) }</p>
                    if let Some(day) = kitchen.harvested { <p>{ text::HARVESTED }{ " " }{ text::date(day) }</p> }
                    <p>{ text::tally(forecast, units) }</p>
                </div>
                { small_plate(&state.plan, &state.forecast, "order") }
            </div>
            <table class="plain">
                <thead><tr><th scope="col">{ text::MUSCLE_COLUMN }</th><th scope="col">{ text::LEFT_COLUMN }</th><th scope="col">{ text::EXPECTED }</th></tr></thead>
                <tbody>{ for in_hand(plan).into_iter().map(|muscle| row(state, &forecast.muscles[muscle.index()])) }</tbody>
            </table>
            <p><b>{ text::GRINDER }</b>{ ": " }{ text::MIXES[text::mix_place(grinder.mix)] }
                if let Some(target) = grinder.mix.target() { { ", " }{ text::one_decimal(target.fat.to_percent()) }{ " % " }{ text::FATS[text::added_place(target.added)] } }
                { "; " }{ grinder.patties.map_or(text::BY_WEIGHT, |(patty, _)| text::patty(patty)) }</p>
            <p><b>{ text::WRAPPING }</b>{ ": " }{ for Product::ALL.into_iter().filter(|product| forecast.tallies[*product as usize].packs.likely() > 0).map(|product| html! {
                <span key={product.id()}>{ text::product(product) }{ ": " }{ pack_rule(plan.packing().rule(product), units) }{ ", " }{ text::wrap(kitchen.wrapping.by[product as usize]) }{ ". " }</span>
            }) }</p>
            <p class="caution">{ text::SHOT_CAUTION }</p>
            <p class="hint">{ text::caution(Caution::Tag).1 }{ " " }{ text::caution(Caution::Selling).1 }</p>
            <p class="notes">{ text::NOTES }</p>
            <p class="hint">{ text::ESTIMATES }</p>
        </section>
    }
}

/// Every muscle in the order of the table card, so that whoever reads either finds the other; those without a step last.
fn in_hand(plan: &Plan) -> Vec<Muscle> {
    let mut muscles: Vec<Muscle> = working_order(plan)
        .into_iter()
        .filter_map(|step| match step.task {
            Task::Muscle(muscle) => Some(muscle),
            Task::Tub => None,
        })
        .collect();
    for muscle in Muscle::ALL {
        if !muscles.contains(&muscle) {
            muscles.push(muscle);
        }
    }
    muscles
}

fn row(state: &State, forecast: &MuscleForecast) -> Html {
    let (plan, muscle) = (&state.plan, forecast.muscle);
    let taken = plan.is_recovered(muscle);
    let becomes = if taken { text::muscle_cuts(plan, muscle, " + ", state.units) } else { String::new() };
    let expect: Vec<String> = forecast.packs.iter().map(|row| text::pack_row(row, state.units)).collect();
    let expect = if expect.is_empty() { text::muscle_result(forecast, taken) } else { expect.join("; ") };
    html! { <tr key={muscle.id()}><th scope="row">{ text::muscle(muscle) }</th><td>{ becomes }if let Some(whose) = state.season.partners().claimant(muscle) { <span class="each">{ text::claimed_by(state.season.partners(), whose) }</span> }</td><td>{ expect }</td></tr> }
}
