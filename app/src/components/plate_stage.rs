//! Around the drawing: which view, which region, the legend, and what to do next.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, View};
use hindsaddle_model::plan::Action;
use hindsaddle_model::product::Product;
use hindsaddle_model::tables;
use yew::prelude::*;

use super::controls::{Choice, Choosable, Segments};
use super::muscle_sheet::STAGE;
use super::plate_drawing::PlateDrawing;
use crate::plate::plate;
use crate::store::{Msg, State};
use crate::text;
use crate::views::plate_view;

/// Properties of [`PlateStage`].
#[derive(PartialEq, Properties)]
pub struct PlateStageProps {
    /// The page's state.
    pub state: Rc<State>,
    /// Width of the window in CSS pixels.
    pub width: f64,
    /// Told what happens.
    pub send: Callback<Msg>,
}

const VIEWS: [View; 3] = [View::Outer, View::Inner, View::Above];
/// Below this a finger meets the whole deer too small to hit a muscle: the first tap comes closer.
const PHONE: f64 = 700.0;

/// The stage.
#[component]
pub fn PlateStage(props: &PlateStageProps) -> Html {
    let state = &props.state;
    let drawn = plate(state.view);
    let antlers = plate_view::has_antlers(&state.plan);
    let frame = drawn.frame(state.region, antlers).unwrap_or(drawn.view_box);
    let pixels = plate_view::pixels(props.width, frame);
    let areas = plate_view::areas(state, drawn, pixels);
    let is_phone = props.width < PHONE;
    let on_press = {
        let (send, region) = (props.send.clone(), state.region);
        Callback::from(move |(muscle, by_keyboard): (Muscle, bool)| {
            if is_phone && region.is_none() && !by_keyboard {
                send.emit(Msg::Zoom(Some(tables::muscle(muscle).region)));
            } else {
                send.emit(Msg::Pick(Some(muscle)));
            }
        })
    };
    let on_view = props.send.reform(|place: usize| Msg::View(VIEWS[place]));
    let views = VIEWS.map(|view| Choosable::new(text::view(view))).to_vec();
    let regions: Vec<Option<Region>> =
        std::iter::once(None).chain(Region::ALL.into_iter().map(Some)).collect();
    let region_options = regions
        .iter()
        .map(|region| Choosable {
            label: region.map_or(text::WHOLE, text::region).into(),
            disabled: drawn.frame(*region, antlers).is_none(),
        })
        .collect::<Vec<_>>();
    let chosen_region = regions.iter().position(|region| *region == state.region);
    let on_region = props.send.reform(move |place: usize| Msg::Zoom(regions[place]));
    let hint = if is_phone && state.region.is_none() { text::TAP_REGION } else { text::TAP_MUSCLE };
    html! {
        <section id={STAGE} class="stage" aria-label={text::PLATE}>
            <div class="stage-head">
                <Segments label={text::VIEW} options={views} chosen={VIEWS.iter().position(|view| *view == state.view)} on_choose={on_view} />
            </div>
            <div class="paper">
                <PlateDrawing plate={drawn} {frame} antlers={antlers && state.region.is_none()} {areas}
                    summary={text::plate(state.forecast.packs)} letter={(15.0 / pixels).max(20.0).min(64.0)} {on_press} />
            </div>
            <Segments label={text::REGIONS} options={region_options} chosen={chosen_region} on_choose={on_region} />
            if let Some(region) = state.region { { region_choice(region, &props.send) } }
            <p class="hint">{ hint }</p>
            { legend() }
        </section>
    }
}

fn region_choice(region: Region, send: &Callback<Msg>) -> Html {
    let mut options = vec![Choosable { label: text::CHOOSE.into(), disabled: true }];
    options.extend(Product::ALL.map(|product| Choosable::new(text::product(product))));
    let on_choose = send.reform(move |place: usize| {
        Msg::Act(Action::AssignRegion { region, product: Product::ALL[place - 1] })
    });
    html! { <Choice key={text::region(region)} label={text::ALL_OF_REGION} {options} chosen={Some(0)} {on_choose} /> }
}

fn legend() -> Html {
    html! {
        <ul class="legend" aria-label={text::LEGEND}>
            { for Product::ALL.into_iter().map(|product| html! {
                <li key={product.id()}>
                    <span class={classes!("swatch", format!("is-{}", product.id()))} aria-hidden="true">{ text::product_mark(product) }</span>
                    { text::product(product) }
                </li>
            }) }
        </ul>
    }
}
