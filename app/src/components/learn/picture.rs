//! The plate as a picture: muscles without a plan, and some of them marked.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::lesson::Game;
use yew::prelude::*;

use crate::components::plate_drawing::silhouette;
use crate::plate::axis::Axis;
use crate::plate::{Frame, Plate, whole};
use crate::views::lesson_plate::areas_of;

/// What a mark on a muscle says.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Marking {
    /// Whether the marked muscles have numbers, from 1.
    pub numbered: bool,
    /// Whether their fibres run.
    pub flows: bool,
}

/// The picture, with `over` on top of it.
pub(super) fn picture(
    plate: &Plate,
    frame: Option<Frame>,
    lit: &[Muscle],
    marking: Marking,
    over: Html,
    says: String,
) -> Html {
    let Some(frame) = frame.or_else(|| plate.frame(None, false)) else { return Html::default() };
    html! {
        <svg class="plate lesson" viewBox={frame.view_box()} role="img" aria-label={says}>
            { silhouette(plate, false) }
            <path class="bones" d={plate.bones.clone()} />
            { for plate.areas.iter().enumerate().map(|(key, area)| html! {
                <g {key}>
                    <path class="meat" d={area.outline.clone()} />
                    <path class="grain" d={area.grain.clone()} />
                    <path class="border" d={area.outline.clone()} />
                </g>
            }) }
            <path class="ink" d={plate.ink.clone()} />
            <path class="ink" d={plate.seams.clone()} />
            { marked(plate, lit, marking) }
            { over }
        </svg>
    }
}

/// The marks on muscles: filled, with their fibres, and the line they run along.
pub(super) fn marked(plate: &Plate, lit: &[Muscle], marking: Marking) -> Html {
    let areas = lit
        .iter()
        .enumerate()
        .flat_map(|(place, muscle)| areas_of(plate, *muscle).map(move |area| (place, area)));
    html! {
        <g class="marked" aria-hidden="true">
            { for areas.enumerate().map(|(key, (place, area))| html! {
                <g {key} class={classes!((place == 1 && marking.numbered).then_some("other"))}>
                    <path class="lit-meat" d={area.outline.clone()} />
                    <path class="lit-grain" d={area.grain.clone()} />
                    if marking.flows && Game::Knife.asks(area.muscle) { <path class="flow" d={along(&area.axis)} /> }
                    <path class="lit-border" d={area.outline.clone()} />
                    if marking.numbered {
                        <text class="order-letter" x={whole(area.label.0)} y={whole(area.label.1 + 22.0)} font-size="64" text-anchor="middle">{ place + 1 }</text>
                    }
                </g>
            }) }
        </g>
    }
}

/// The run of the fibres, a little inside the muscle.
fn along(axis: &[(f64, f64)]) -> String {
    let axis = Axis::new(axis);
    let points: Vec<String> = [0.08, 0.22, 0.36, 0.5, 0.64, 0.78, 0.92]
        .into_iter()
        .map(|u| {
            let ((x, y), _) = axis.at(u);
            format!("{} {}", whole(x), whole(y))
        })
        .collect();
    format!("M{}", points.join("L"))
}
