//! A small picture of a plan: the outer side, each muscle filled with its cut and marked with its letter. It is
//! looked at, not worked on.

use hindsaddle_model::anatomy::{Side, View};
use hindsaddle_model::forecast::Forecast;
use hindsaddle_model::plan::Plan;
use yew::prelude::*;

use super::plate_drawing::{part, silhouette};
use crate::plate::figure::plate;
use crate::plate::marks::marks;
use crate::plate::{Area, whole};
use crate::text;

/// CSS pixels that a unit of the drawing takes, about.
const PIXELS: f64 = 0.2;

/// The picture. `id` sets it apart from the others on the page.
pub(super) fn small_plate(plan: &Plan, forecast: &Forecast, id: &str) -> Html {
    let plate = plate(View::Outer, plan.animal().species());
    let Some(frame) = plate.frame(None, false) else { return Html::default() };
    let clip = |area: &Area| format!("{id}-{}", area.muscle.id());
    let cuts = |area: &Area| {
        let forecast = &forecast.muscles[area.muscle.index()];
        marks(&area.axis, &forecast.sides[Side::Left.index()], forecast.length, PIXELS)
    };
    html! {
        <svg class="plate small" viewBox={frame.view_box()} aria-hidden="true">
            <defs>{ for plate.areas.iter().map(|area| html! { <clipPath key={area.muscle.id()} id={clip(area)}><path d={area.outline.clone()} /></clipPath> }) }</defs>
            { silhouette(&plate, false) }
            { for plate.areas.iter().map(|area| html! {
                <g key={area.muscle.id()}>
                    <g clip-path={format!("url(#{})", clip(area))}>
                        { for cuts(area).iter().enumerate().map(|(place, marks)| part(place, marks, area)) }
                    </g>
                    <path class="border" d={area.outline.clone()} />
                    <text class="order-letter" x={whole(area.label.0)} y={whole(area.label.1 + 14.0)} font-size="44" text-anchor="middle">
                        { plan.division(area.muscle, Side::Left).parts()[0].cut.product().map_or(text::DISCARD_MARK, text::product_mark) }
                    </text>
                </g>
            }) }
            <path class="ink" d={plate.ink.clone()} />
            <path class="ink" d={plate.seams.clone()} />
        </svg>
    }
}
