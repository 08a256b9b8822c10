//! Around the drawing: which view, which region, the tools, the legend, and what to do next.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Region, Sides, View};
use hindsaddle_model::plan::{Action, Division};
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::tables;
use yew::prelude::*;

use super::controls::{Choosable, choice, segments, segments_of};
use super::muscle_sheet::STAGE;
use super::plate_drawing::{PLATE, PlateDrawing, Touched};
use super::plate_handles::{division_handles, wound_handles};
use super::plate_tools::plate_tools;
use super::still::{Still, still};
use crate::plate::Frame;
use crate::platform::{focus, pointer};
use crate::store::{Msg, Notice, State, Tool};
use crate::text;
use crate::views::plate_view::{Drawer, Scene, kept};
use crate::views::wounds;

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

/// Below this a finger meets the whole deer too small to hit a muscle: the first tap comes closer.
const PHONE: f64 = 700.0;

/// The stage.
#[component]
pub fn PlateStage(props: &PlateStageProps) -> Html {
    let (state, send) = (&props.state, &props.send);
    let look = state.look;
    let drawer = use_mut_ref(Drawer::default);
    let scene = Rc::new(drawer.borrow_mut().scene(state, props.width));
    let (frame, whole) = (scene.frame, scene.whole);
    let free = look.lens.is_some();
    let looked = send.reform(move |wanted: Frame| match kept(wanted, whole) {
        Some(frame) => Msg::Lens(Some(frame)),
        None => Msg::Zoom(None),
    });
    use_fingers(frame, free, &looked);
    let is_phone = props.width < PHONE;
    // On a phone what was chosen below the plate, a region or a tool, is to be seen on it.
    use_effect_with((look.region, state.tool), move |(region, tool)| {
        if is_phone && (region.is_some() || *tool != Tool::Decide) {
            focus::reveal(STAGE);
        }
    });
    let on_touch = on_touch(state, &scene, is_phone, send, &looked);
    let on_view = send.reform(Msg::View);
    let far = look.region.is_none() && !free;
    let hint = match state.tool {
        Tool::Wound => text::TAP_WOUND,
        Tool::Decide | Tool::Names | Tool::Peel | Tool::Save | Tool::Paint(_) if is_phone && far => {
            text::TAP_REGION
        }
        Tool::Paint(_) => text::TAP_PAINT,
        Tool::Decide | Tool::Names | Tool::Peel | Tool::Save => text::TAP_MUSCLE,
    };
    html! {
        <section id={STAGE} class="stage" aria-label={text::PLATE}>
            <div class="stage-head">
                { segments_of(text::VIEW, &View::ALL, text::view, look.view, &on_view) }
            </div>
            <div class="paper">
                <PlateDrawing scene={scene.clone()} summary={text::plate_summary(state.forecast.packs)} {free}
                    aiming={state.tool == Tool::Wound} above={look.view == View::Above} {on_touch}>
                    { handles(state, &scene, send) }
                </PlateDrawing>
            </div>
            { plate_tools(state, &scene, send) }
            <p class="hint">{ hint }</p>
            { regions(state, &scene, send) }
            { still(text::LEGEND, Legend) }
        </section>
    }
}

/// Fingers, wheel and drag on the drawing.
#[hook]
pub(super) fn use_fingers(frame: Frame, free: bool, looked: &Callback<Frame>) {
    let looked = looked.clone();
    use_effect_with((frame, free), move |(frame, free)| {
        let watch = pointer::watch(PLATE, *frame, *free, move |frame| looked.emit(frame));
        move || drop(watch)
    });
}

/// The frame about the same middle, `by` times as close.
pub(super) fn scaled(frame: Frame, by: f64) -> Frame {
    let (width, height) = (frame.width / by, frame.height / by);
    Frame {
        x: frame.x + (frame.width - width) / 2.0,
        y: frame.y + (frame.height - height) / 2.0,
        width,
        height,
    }
}

fn on_touch(
    state: &Rc<State>,
    scene: &Rc<Scene>,
    is_phone: bool,
    send: &Callback<Msg>,
    looked: &Callback<Frame>,
) -> Callback<Touched> {
    let (send, looked, state, scene) = (send.clone(), looked.clone(), state.clone(), scene.clone());
    let far = is_phone && state.look.region.is_none() && state.look.lens.is_none();
    Callback::from(move |touched: Touched| match touched {
        Touched::Muscle { muscle, by_keyboard: false, .. } if far => {
            send.emit(Msg::Zoom(Some(tables::muscle(muscle).region)));
        }
        Touched::Muscle { muscle, side, .. } => send.emit(match state.tool {
            Tool::Paint(brush) => Msg::Act(Action::Assign {
                muscle,
                sides: side.map_or(state.sides, Sides::One),
                cut: brush.map_or(Cut::Discard, Cut::usual),
            }),
            Tool::Decide | Tool::Wound | Tool::Names | Tool::Peel | Tool::Save => Msg::Pick(Some(muscle)),
        }),
        Touched::Place(x, y) => {
            let wound = wounds::marked(state.look.side, &scene.plate, (x, y));
            send.emit(Msg::Act(Action::AddWound(wound)));
        }
        Touched::Closer(by) => looked.emit(scaled(scene.frame, by)),
    })
}

/// What can be dragged: the ends of the parts of the muscle that is decided about, or the wounds.
fn handles(state: &Rc<State>, scene: &Rc<Scene>, send: &Callback<Msg>) -> Html {
    if state.tool == Tool::Wound {
        let on_wound = send.reform(|(place, wound)| {
            Msg::Act(match wound {
                Some(wound) => Action::ChangeWound { place, wound },
                None => Action::RemoveWound(place),
            })
        });
        return wound_handles(&scene.wounds, &scene.plate, (scene.frame, scene.pixels), &on_wound);
    }
    let Some(muscle) = state.muscle else { return Html::default() };
    let Some(view) = scene.areas.iter().find(|view| view.picked && view.is_open() && view.taken) else {
        return Html::default();
    };
    if tables::muscle(muscle).size.is_none() {
        return Html::default();
    }
    let sides = view.area.side.map_or(state.sides, Sides::One);
    let shown = view.area.side.unwrap_or(state.look.side);
    let on_divide = send.reform(move |parts| match Division::new(parts) {
        Ok(division) => Msg::Act(Action::Divide { muscle, sides, division }),
        Err(refusal) => Msg::Say(Notice::Refused(refusal)),
    });
    division_handles(
        &view.area,
        state.plan.division(muscle, shown).parts(),
        (scene.frame, scene.pixels),
        &on_divide,
    )
}

fn regions(state: &Rc<State>, scene: &Scene, send: &Callback<Msg>) -> Html {
    let regions: Vec<Option<Region>> =
        std::iter::once(None).chain(Region::ALL.into_iter().map(Some)).collect();
    let options = regions
        .iter()
        .map(|region| Choosable {
            label: region.map_or(text::WHOLE, text::region).into(),
            disabled: scene.plate.frame(*region, false).is_none(),
        })
        .collect::<Vec<_>>();
    let chosen =
        regions.iter().position(|region| *region == state.look.region).filter(|_| state.look.lens.is_none());
    let on_choose = send.reform(move |place: usize| Msg::Zoom(regions[place]));
    html! {
        <>
            { segments(text::REGIONS, options, chosen, &on_choose) }
            if let Some(region) = state.look.region { { region_choice(region, send) } }
        </>
    }
}

fn region_choice(region: Region, send: &Callback<Msg>) -> Html {
    let mut options = vec![Choosable { label: text::CHOOSE.into(), disabled: true }];
    options.extend(Product::ALL.map(|product| Choosable::new(text::product(product))));
    let on_choose = send.reform(move |place: usize| {
        Msg::Act(Action::AssignRegion { region, product: Product::ALL[place - 1] })
    });
    html! { <key={text::region(region)}>{ choice(text::ALL_OF_REGION, options, Some(0), &on_choose) }</> }
}

/// The letters and patterns of the products.
#[derive(PartialEq)]
struct Legend;

impl Still for Legend {
    fn draw(&self) -> Html {
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
}
