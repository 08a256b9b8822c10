//! The animals of a season: add, order, copy cuts, test, remove; and what they come to together.

use hindsaddle_model::plan::{Action, Tested};
use hindsaddle_model::season::{Change, MOST_ANIMALS};
use yew::prelude::*;

use super::PartProps;
use crate::components::controls::choice_of;
use crate::store::Msg;
use crate::text;
use crate::views::season::{AnimalRow, rows, together};

/// The card.
#[component]
pub(super) fn SeasonCard(props: &PartProps) -> Html {
    let state = &props.state;
    let rows = use_memo((state.season.clone(), state.units), |(season, units)| rows(season, *units));
    let count = rows.len();
    let at = state.at;
    let on_add = props.send.reform(move |_: MouseEvent| Msg::Season(Change::AddLike(at)));
    html! {
        <section class="card" aria-label={text::SEASON}>
            <h2>{ text::SEASON }</h2>
            <p>{ if count == 1 { text::ONE_ANIMAL } else { text::SEASON_HINT } }</p>
            <ol class="animals-list">
                { for rows.iter().enumerate().map(|(place, row)| animal(props, place, count, row)) }
            </ol>
            if count < MOST_ANIMALS {
                <button type="button" class="tool wide" onclick={on_add}>{ text::ADD_ANIMAL }</button>
            } else {
                <p class="hint">{ text::season_full(MOST_ANIMALS) }</p>
            }
            if count > 1 { { sums(props, &rows) } }
        </section>
    }
}

fn animal(props: &PartProps, place: usize, count: usize, row: &AnimalRow) -> Html {
    let state = &props.state;
    let plan = state.season.animal(place);
    let on = |message: Msg| props.send.reform(move |_: MouseEvent| message.clone());
    let moved = |to: usize| on(Msg::Season(Change::Move { from: place, to }));
    let on_test =
        props.send.reform(move |tested: Tested| Msg::Season(Change::Act(place, Action::SetTested(tested))));
    let shown = place == state.at;
    // The other page opens on the animal that is shown here.
    let plan_it = on(Msg::Turn(place));
    html! {
        <li key={place} class={classes!("season-animal", shown.then_some("shown"))}>
            <button type="button" class="muscle-name" aria-current={shown.then_some("true")} onclick={on(Msg::Turn(place))}>
                <b>{ &row.name }</b>{ " " }<span class="each">{ &row.line }</span>
            </button>
            <p>{ &row.gives }</p>
            { choice_of(text::of_animal(text::TEST, &row.name), &Tested::ALL, text::tested, plan.tested(), &on_test) }
            if let Some(caution) = text::tested_caution(plan.tested()) { <p class="caution">{ caution }</p> }
            <div class="row-tools">
                if count > 1 {
                    <button type="button" class="tool" aria-label={text::of_animal(text::EARLIER, &row.name)} disabled={place == 0} onclick={moved(place.saturating_sub(1))}>{ "\u{2191}" }</button>
                    <button type="button" class="tool" aria-label={text::of_animal(text::LATER, &row.name)} disabled={place + 1 == count} onclick={moved((place + 1).min(count - 1))}>{ "\u{2193}" }</button>
                    if !shown {
                        <button type="button" class="tool" onclick={on(Msg::Season(Change::CopyCuts { from: state.at, to: place }))}>{ text::cuts_of(&text::animal_name(state.season.animal(state.at), state.at)) }</button>
                    }
                    <button type="button" class="tool" aria-label={text::of_animal(text::REMOVE, &row.name)} onclick={on(Msg::Season(Change::Remove(place)))}>{ text::REMOVE }</button>
                }
                <a class="tool" href={format!("./#{}", state.link())} onclick={plan_it}>{ text::PLAN_IT }</a>
            </div>
        </li>
    }
}

/// What all animals come to together.
fn sums(props: &PartProps, rows: &[AnimalRow]) -> Html {
    html! {
        <>
            <h3>{ text::TOGETHER }</h3>
            <table class="plain">
                <tbody>
                    { for together(rows, props.state.units).into_iter().map(|(name, value)| html! { <tr key={name}><th scope="row">{ name }</th><td>{ value }</td></tr> }) }
                </tbody>
            </table>
            <p class="hint">{ text::TOGETHER_HINT }</p>
        </>
    }
}
