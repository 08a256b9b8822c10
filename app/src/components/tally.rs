//! The running tally: a bar that never leaves the screen, and all of it on demand.

use std::rc::Rc;

use hindsaddle_model::forecast::{Forecast, Line};
use hindsaddle_model::plan::Plan;
use yew::prelude::*;

use super::still::{Still, still};
use crate::store::{Msg, Topic};
use crate::text::{self, Units};
use crate::views::tally_view::{self, LedgerRow, ProductRow};

/// Properties of [`Tally`].
#[derive(PartialEq, Properties)]
pub struct TallyProps {
    /// The plan.
    pub plan: Rc<Plan>,
    /// What it gives.
    pub forecast: Rc<Forecast>,
    /// The reader's units.
    pub units: Units,
    /// Told what happens.
    pub send: Callback<Msg>,
}

/// The tally.
#[component]
pub fn Tally(props: &TallyProps) -> Html {
    let open = use_state(|| false);
    let toggle = {
        let open = open.clone();
        Callback::from(move |_: MouseEvent| open.set(!*open))
    };
    let forecast = &props.forecast;
    let products = tally_view::products(forecast, props.units);
    let explain = |topic: Topic| explain(&props.send, topic);
    let packs = forecast.packs;
    html! {
        <section class={classes!("tally", open.then_some("tally-open"))} aria-label={text::TALLY}>
            <p class="unseen" role="status" aria-label={text::TALLY}>{ text::tally(forecast, props.units) }</p>
            <div class="tally-bar">
                <button type="button" class="figure" onclick={explain(Topic::Packages)}>
                    <span class="big">{ text::about(packs) }{ " " }<small>{ text::packages(packs.likely()) }</small></span>
                    <span class="ends">{ text::count_ends(packs).unwrap_or_default() }</span>
                    { how() }
                </button>
                <button type="button" class="figure" onclick={explain(Topic::Line(Line::TakeHome))}>
                    <span class="big">{ text::mass_likely(forecast.take_home, props.units) }{ " " }<small>{ text::TO_TAKE_HOME }</small></span>
                    <span class="ends">{ text::mass_ends(forecast.take_home, props.units).unwrap_or_default() }</span>
                    { how() }
                </button>
                <button type="button" class="tool tally-toggle" aria-expanded={open.to_string()} onclick={toggle}>
                    { if *open { text::HIDE_TALLY } else { text::SHOW_TALLY } }
                </button>
            </div>
            <ul class="chips" aria-hidden="true">
                { for products.iter().map(|row| html! {
                    <li key={row.product.id()} class={classes!("chip", format!("is-{}", row.product.id()))}>
                        <b>{ text::product_mark(row.product) }</b>{ text::product(row.product) }{ " " }{ &row.packs }
                    </li>
                }) }
            </ul>
            <p class="hint in-it">{ text::weighings_in_it(props.plan.weighings().len(), !props.plan.own().is_table()) }</p>
            <div class="tally-more">
                <table class="products">
                    <thead><tr><th scope="col">{ text::BECOMES }</th><th scope="col">{ text::PACKAGES }</th><th scope="col">{ text::TAKE_HOME }</th></tr></thead>
                    <tbody>{ for products.into_iter().map(|row| still(row.product.id(), Produced { row, send: props.send.clone() })) }</tbody>
                </table>
                <h3>{ text::LEDGER }</h3>
                <ul class="ledger">
                    { for tally_view::ledger(forecast, props.units).into_iter().map(|row| still(row.line.id(), Entered { row, send: props.send.clone() })) }
                </ul>
                <p class="hint">{ text::ESTIMATES }</p>
            </div>
        </section>
    }
}

/// What a press on a number does, for those who do not see that it can be pressed.
fn how() -> Html {
    html! { <span class="unseen">{ text::HOW }</span> }
}

/// A press on a number shows its working.
fn explain(send: &Callback<Msg>, topic: Topic) -> Callback<MouseEvent> {
    send.reform(move |_| Msg::Explain(Some(topic)))
}

/// A product that has packages.
#[derive(PartialEq)]
struct Produced {
    row: ProductRow,
    send: Callback<Msg>,
}

impl Still for Produced {
    fn draw(&self) -> Html {
        let row = &self.row;
        let name = text::product(row.product);
        html! {
            <tr>
                <th scope="row"><span class={classes!("swatch", format!("is-{}", row.product.id()))} aria-hidden="true">{ text::product_mark(row.product) }</span>{ name }<span class="each">{ &row.each }</span></th>
                <td><button type="button" class="number" onclick={explain(&self.send, Topic::Product(row.product))}>{ &row.packs }<span class="unseen">{ " " }{ text::product_packages(row.product) }</span>{ how() }</button><span class="ends">{ &row.pack_ends }</span>{ span(row.span) }</td>
                <td>{ &row.mass }<span class="ends">{ &row.mass_ends }</span></td>
            </tr>
        }
    }
}

/// A count and its range, on the scale that all rows share.
fn span(parts: [f64; 3]) -> Html {
    let [low, likely, high] = parts.map(|part| (part * 100.0).round() as u32);
    html! { <svg class="span" viewBox="-2 0 104 8" preserveAspectRatio="none" aria-hidden="true"><path class="goes-on" d={format!("M0 1H{likely}V7H0Z")} /><path d={format!("M{low} 4H{high}M{low} 1V7M{high} 1V7")} /></svg> }
}

/// A line of the ledger. Its bar is part of a flow: light what goes on to the next line, dark what leaves here.
#[derive(PartialEq)]
struct Entered {
    row: LedgerRow,
    send: Callback<Msg>,
}

impl Still for Entered {
    fn draw(&self) -> Html {
        let row = &self.row;
        let name = text::line(row.line);
        let per_mille = |part: f64| (part * 1000.0).round() as u32;
        let is_whole = matches!(row.line, Line::Live | Line::TakeHome);
        let (goes_on, part) = (if is_whole { 0 } else { per_mille(row.left) }, per_mille(row.part));
        html! {
            <li class={classes!(matches!(row.line, Line::TakeHome).then_some("kept"))}>
                <button type="button" class="ledger-row" onclick={explain(&self.send, Topic::Line(row.line))}>
                    <span>{ name }</span>
                    <svg class="bar" viewBox="0 0 1000 10" preserveAspectRatio="none" aria-hidden="true"><path class="goes-on" d={format!("M0 0H{goes_on}V10H0Z")} /><path d={format!("M{goes_on} 0h{part}v10h-{part}Z")} /></svg>
                    <span class="ledger-mass">{ &row.mass }</span>
                    <span class="ends">{ &row.ends }</span>
                    { how() }
                </button>
            </li>
        }
    }
}
