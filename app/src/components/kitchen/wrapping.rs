//! Paper, bags and rolls: what each product is wrapped in, what a package takes, and the shopping list.

use hindsaddle_model::product::Product;
use hindsaddle_model::tables::PAPER_ROLLS;
use hindsaddle_model::wrap::{Need, Wrap};
use yew::prelude::*;

use super::{PartProps, field};
use crate::app::remember;
use crate::components::controls::{Choosable, choice, choice_of};
use crate::platform::storage;
use crate::text;
use crate::views::kitchen::{all_supplies, counted, shopping};

/// What is there already, as it was typed.
fn read_have() -> Vec<String> {
    let mut have: Vec<String> =
        storage::read(storage::HAVE).unwrap_or_default().lines().map(str::to_owned).collect();
    have.resize(text::SUPPLY_NAMES.len(), String::new());
    have
}

/// The card.
#[component]
pub(super) fn WrappingCard(props: &PartProps) -> Html {
    let have = use_state(read_have);
    let wrapping = props.state.plan.kitchen().wrapping;
    let units = props.state.units;
    let products: Vec<Product> = Product::ALL
        .into_iter()
        .filter(|product| props.packed().packages.iter().any(|package| package.product == *product))
        .collect();
    let amounts: [f64; 8] = std::array::from_fn(|place| text::typed(&have[place]).unwrap_or(0.0).max(0.0));
    let rolls =
        PAPER_ROLLS.iter().map(|row| Choosable::new(text::length(row.value, units))).collect::<Vec<_>>();
    let roll = PAPER_ROLLS.iter().position(|row| row.value == wrapping.roll);
    let on_roll = props.on(|kitchen, place: usize| kitchen.wrapping.roll = PAPER_ROLLS[place].value);
    let on_spare = props.on(|kitchen, typed: String| {
        if let Some(number) = text::typed(&typed) {
            kitchen.wrapping.spare_percent = number.max(0.0).min(250.0) as u8;
        }
    });
    let rows = shopping(&all_supplies(&props.all), &amounts, units);
    html! {
        <section class="card" aria-label={text::WRAPPING}>
            <h2>{ text::WRAPPING }</h2>
            <div class="fields">
                { for products.iter().map(|product| wrap(props, *product)) }
                { choice(text::ROLL, rolls, roll, &on_roll) }
                { field(text::SPARE, "number", wrapping.spare_percent.to_string(), "%", &on_spare) }
            </div>
            <h3>{ text::SUPPLIES }</h3>
            if props.all.len() > 1 { <p>{ text::for_all(counted(&props.all).count()) }</p> }
            <table class="plain">
                <thead><tr><td></td><th scope="col">{ text::NEEDED }</th><th scope="col">{ text::HAVE }</th><th scope="col">{ text::TO_BUY }</th></tr></thead>
                <tbody>
                    { for rows.iter().map(|row| {
                        let (typed, have, place, send) = (&have[row.place], have.clone(), row.place, props.send.clone());
                        let on_have = Callback::from(move |typed: String| {
                            let mut now = (*have).clone();
                            now[place] = typed.chars().filter(|letter| !letter.is_control()).take(12).collect();
                            remember(storage::HAVE, &now.join("\n"), &send);
                            have.set(now);
                        });
                        html! {
                            <tr key={row.place}>
                                <th scope="row">{ text::SUPPLY_NAMES[row.place] }</th>
                                <td>{ &row.needed }</td>
                                <td class="have">{ field(text::HAVE, "number", typed.clone(), row.unit, &on_have) }</td>
                                <td><b>{ &row.to_buy }</b></td>
                            </tr>
                        }
                    }) }
                </tbody>
            </table>
            <p class="hint">{ text::WRAP_HINT }</p>
            if wrapping.by.contains(&Wrap::Vacuum) { <p class="caution">{ text::VACUUM_CAUTION }</p> }
            <p class="hint">{ text::MIDDLE_CASE }</p>
        </section>
    }
}

/// The wrap of a product, and the most that a package of it takes.
fn wrap(props: &PartProps, product: Product) -> Html {
    let now = props.state.plan.kitchen().wrapping.by[product as usize];
    let on_choose = props.on(move |kitchen, wrap: Wrap| kitchen.wrapping.by[product as usize] = wrap);
    let of = props.packed().packages.iter().zip(&props.packed().wrapped);
    let worst = of.filter(|(package, _)| package.product == product).map(|(_, wrapped)| wrapped.need).reduce(
        |worst, need| match (worst, need) {
            (Ok(Need::Sheet { length: one, .. }), Ok(Need::Sheet { length: other, .. })) if one > other => {
                worst
            }
            (Err(_), Ok(_)) => worst,
            _ => need,
        },
    );
    html! {
        <div key={product.id()} class="wrap-choice">
            { choice_of(text::product(product), &Wrap::ALL, text::wrap, now, &on_choose) }
            if let Some(need) = worst { <p class={if need.is_ok() { "hint" } else { "caution" }}>{ text::need(need, props.state.units) }</p> }
        </div>
    }
}
