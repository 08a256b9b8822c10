//! The plate that is touched for learning: come closer, press a muscle.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, View};
use hindsaddle_model::plan::Plan;
use hindsaddle_model::tables;
use yew::prelude::*;

use super::picture::{Marking, marked};
use crate::components::controls::{Choosable, segments};
use crate::components::plate_drawing::{PlateDrawing, Touched};
use crate::components::plate_stage::{scaled, use_fingers};
use crate::plate::Frame;
use crate::text;
use crate::views::lesson_plate::{Called, Near, bare};
use crate::views::plate_view::kept;

/// Below this a finger meets the whole deer too small to hit a muscle: the first tap comes closer.
const PHONE: f64 = 700.0;

/// Properties of [`LearnPlate`].
#[derive(PartialEq, Properties)]
pub(super) struct LearnPlateProps {
    /// The animal.
    pub plan: Rc<Plan>,
    /// The side that is shown.
    pub view: View,
    /// Width of the window in CSS pixels.
    pub width: f64,
    /// What the muscles are called.
    pub called: Called,
    /// The marked ones.
    pub lit: Vec<Muscle>,
    /// How.
    #[prop_or_default]
    pub marking: Marking,
    /// What the whole is.
    pub summary: AttrValue,
    /// Told which was pressed.
    pub on_muscle: Callback<Muscle>,
}

/// The plate. Give it a key for each side, so that another side is seen whole.
#[component]
pub(super) fn LearnPlate(props: &LearnPlateProps) -> Html {
    let near = use_state_eq(|| Near::WHOLE);
    let scene = Rc::new(bare(&props.plan, props.view, *near, props.width, props.called, &props.lit));
    let (frame, whole) = (scene.frame, scene.whole);
    let free = near.lens.is_some();
    let looked = {
        let near = near.clone();
        Callback::from(move |wanted: Frame| {
            near.set(
                kept(wanted, whole)
                    .map_or(Near::WHOLE, |frame| Near { region: near.region, lens: Some(frame) }),
            );
        })
    };
    use_fingers(frame, free, &looked);
    let far = props.width < PHONE && *near == Near::WHOLE;
    let on_touch = {
        let (near, on_muscle) = (near.clone(), props.on_muscle.clone());
        Callback::from(move |touched: Touched| match touched {
            Touched::Muscle { muscle, by_keyboard: false, .. } if far => {
                near.set(Near { region: Some(tables::muscle(muscle).region), lens: None });
            }
            Touched::Muscle { muscle, .. } => on_muscle.emit(muscle),
            Touched::Closer(by) => looked.emit(scaled(frame, by)),
            Touched::Place(..) => {}
        })
    };
    html! {
        <section class="stage" aria-label={text::PLATE}>
            <div class="paper">
                <PlateDrawing scene={scene.clone()} summary={props.summary.clone()} {free} aiming={false} above={props.view == View::Above}
                    called={props.called} {on_touch}>
                    { marked(&scene.plate, &props.lit, props.marking) }
                </PlateDrawing>
            </div>
            if let Some(hint) = hint(far, props.called) { <p class="hint">{ hint }</p> }
            { regions(&near, |region| scene.plate.frame(region, false).is_some()) }
        </section>
    }
}

/// What a tap does: it comes closer first, while muscles are small under a finger.
fn hint(far: bool, called: Called) -> Option<&'static str> {
    match (far, called) {
        (true, Called::Names) => Some(text::TAP_REGION),
        (true, Called::Places) => Some(text::TAP_CLOSER),
        (false, Called::Names) => None,
        (false, Called::Places) => Some(text::TAP_ANSWER),
    }
}

/// The whole animal and its regions.
fn regions(near: &UseStateHandle<Near>, is_shown: impl Fn(Option<Region>) -> bool) -> Html {
    let regions: Vec<Option<Region>> =
        std::iter::once(None).chain(Region::ALL.into_iter().map(Some)).collect();
    let options = regions
        .iter()
        .map(|region| Choosable {
            label: region.map_or(text::WHOLE, text::region).into(),
            disabled: !is_shown(*region),
        })
        .collect::<Vec<_>>();
    let chosen = regions.iter().position(|region| *region == near.region).filter(|_| near.lens.is_none());
    let near = near.clone();
    let on_choose = Callback::from(move |place: usize| near.set(Near { region: regions[place], lens: None }));
    segments(text::REGIONS, options, chosen, &on_choose)
}
