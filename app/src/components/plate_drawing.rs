//! The drawing. Layers, bottom up: the far legs; mane and beard; the silhouette; the bones; for each muscle its
//! parts with their cuts, clipped to its border; grain and silverskin; shade; ink; letters; wounds; labels; and on top
//! the touch layer, which takes pointers and the keyboard, and the handles.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Side};
use yew::prelude::*;

use super::still::{Still, still, use_latest};
use crate::plate::leaders::Stands;
use crate::plate::marks::Marks;
use crate::plate::{Area, Plate, whole};
use crate::platform::{focus, pointer};
use crate::text;
use crate::views::labels::Label;
use crate::views::lesson_plate::Called;
use crate::views::plate_view::{AreaView, Cover, Scene, Toward, neighbour};
use crate::views::wounds::WoundView;

/// The element of the drawing.
pub(super) const PLATE: &str = "plate";

/// Something done to the drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Touched {
    /// A muscle was pressed, on one side where both are drawn.
    Muscle {
        /// Which.
        muscle: Muscle,
        /// See above.
        side: Option<Side>,
        /// Whether by keyboard.
        by_keyboard: bool,
    },
    /// A place was pressed while places are asked for.
    Place(f64, f64),
    /// The plus or the minus key: closer by this factor.
    Closer(f64),
}

/// Properties of [`PlateDrawing`].
#[derive(PartialEq, Properties)]
pub(super) struct PlateDrawingProps {
    /// Everything drawn.
    pub scene: Rc<Scene>,
    /// What the whole is.
    pub summary: AttrValue,
    /// Whether a press asks for a place and not for a muscle.
    pub aiming: bool,
    /// Whether one finger moves the picture.
    pub free: bool,
    /// Whether it is seen from above.
    pub above: bool,
    /// Whether a muscle under the pointer says its name.
    #[prop_or(Called::Names)]
    pub called: Called,
    /// Told what was touched.
    pub on_touch: Callback<Touched>,
    /// Handles on top.
    pub children: Html,
}

/// The drawing.
#[component]
pub(super) fn PlateDrawing(props: &PlateDrawingProps) -> Html {
    // The one area that the Tab key reaches; arrows move it.
    let stop = use_state(|| 0_usize);
    let scene = &props.scene;
    let plate = &scene.plate;
    let first = scene.areas.iter().position(|view| view.is_open()).unwrap_or(0);
    let stop_here = if scene.areas.get(*stop).is_some_and(|view| view.is_open()) { *stop } else { first };
    let antlers = scene.antlers && !props.above;
    let on_press = use_latest(on_press(props, &stop));
    let size = (15.0 / scene.pixels).max(20.0).min(56.0);
    let class = classes!("plate", props.free.then_some("free"), props.aiming.then_some("aiming"));
    html! {
        <svg id={PLATE} {class} viewBox={scene.frame.view_box()} role="group" aria-label={props.summary.clone()}>
            <defs>
                { patterns() }
                <clipPath id="border-body"><path d={plate.body.clone()} /></clipPath>
            </defs>
            <g aria-hidden="true">
                { trunk(plate, antlers) }
                <g clip-path="url(#border-body)">{ rounded(&plate.body) }</g>
                { crown(plate, antlers) }
                <path class="bones" d={plate.bones.clone()} />
                { for scene.areas.iter().map(|view| still(&*view.id, Drawn(view.clone()))) }
                <path class="ink" d={plate.ink.clone()} />
                if scene.areas.iter().all(|view| view.cover == Cover::Open) { <path class="ink" d={plate.seams.clone()} /> }
                if scene.antlers && props.above { <path class="antlers" d={plate.antlers[1].clone()} /> }
                <g clip-path="url(#border-body)">{ for scene.wounds.iter().map(wound) }</g>
                { for scene.areas.iter().filter(|view| view.is_open() && !scene.is_spoiled(view.area.label)).map(|view| still(&*view.id, Letter { view: view.clone(), size })) }
                { for scene.labels.labels.iter().enumerate().map(|(place, shown)| html! {
                    <g key={place} class="label">{ label(shown, scene.labels.size) }</g>
                }) }
            </g>
            <g>{ for scene.areas.iter().enumerate().filter(|(_, view)| view.is_open()).map(|(index, view)| {
                let (is_stop, called, on_press) = (index == stop_here, props.called, on_press.clone());
                still(&*view.id, Touch { view: view.clone(), index, is_stop, called, on_press })
            }) }</g>
            if props.aiming { { aim(props) } }
            { props.children.clone() }
        </svg>
    }
}

/// The animal without its muscles.
pub(in crate::components) fn silhouette(plate: &Plate, antlers: bool) -> Html {
    html! { <>{ trunk(plate, antlers) }{ crown(plate, antlers) }</> }
}

/// What it has lost as a traced line, the far legs and the far antler, mane and beard, and the body.
fn trunk(plate: &Plate, antlers: bool) -> Html {
    let traced = !plate.trace.is_empty();
    html! {
        <>
            if traced { <path class="trace" d={plate.trace.clone()} /> }
            <path class="far" d={plate.far.clone()} />
            if antlers && !traced { <path class="far" d={plate.antlers[0].clone()} /> }
            <path class="body" d={plate.shape.clone()} />
            <path class="body" d={plate.body.clone()} />
        </>
    }
}

/// What stands before the body and its shade: the near antler, on the skull, and the ear.
fn crown(plate: &Plate, antlers: bool) -> Html {
    html! {
        <>
            if antlers { <path class={if plate.trace.is_empty() { "antlers" } else { "trace" }} d={plate.antlers[1].clone()} /> }
            <path class="body" d={plate.ear.clone()} />
        </>
    }
}

/// The dots of ground meat, and the strikes over spoiled meat.
fn patterns() -> Html {
    html! {
        <>
        <pattern id="stipple" width="16" height="16" patternUnits="userSpaceOnUse">
            <circle class="dot" cx="3" cy="4" r="1.9" /><circle class="dot" cx="11" cy="7" r="1.6" /><circle class="dot" cx="6" cy="12" r="1.8" /><circle class="dot" cx="14" cy="14" r="1.5" />
        </pattern>
        <pattern id="strike" width="22" height="22" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="strike" d="M11 0V22" />
        </pattern>
        </>
    }
}

fn wound(view: &WoundView) -> Html {
    let (x, y, radius) = (whole(view.at.0), whole(view.at.1), whole(view.radius));
    html! {
        <g key={view.place} class="wound">
            <circle class="meat" cx={x.clone()} cy={y.clone()} r={radius.clone()} />
            <circle class="rim" cx={x} cy={y} r={radius} fill="url(#strike)" />
        </g>
    }
}

/// A muscle.
#[derive(PartialEq)]
struct Drawn(Rc<AreaView>);

impl Still for Drawn {
    fn draw(&self) -> Html {
        let view = &self.0;
        let border = format!("border-{}", view.id);
        let area = &view.area;
        let class = classes!(
            "muscle",
            (!view.taken).then_some("left-behind"),
            (view.cover == Cover::Lifted).then_some("lifted")
        );
        html! {
            <g {class}>
                <g clip-path={format!("url(#{border})")}>
                    <path class="meat" d={area.outline.clone()} />
                    { for view.marks.iter().enumerate().map(|(place, marks)| part(place, marks, area)) }
                    <path class="grain" d={area.grain.clone()} />
                    <path class="sheen" d={area.sheen.clone()} />
                    { rounded(&area.outline) }
                </g>
                <path class="border" d={area.outline.clone()} />
                <clipPath id={border}><path d={area.outline.clone()} /></clipPath>
            </g>
        }
    }
}

/// Shade on the inside of an outline, away from the light, and a bright edge towards it: wide strokes, of which
/// the clip leaves the inner half.
fn rounded(outline: &Rc<str>) -> Html {
    html! {
        <>
            <path class="shade deep" d={outline.clone()} />
            <path class="shade" d={outline.clone()} />
            <path class="light" d={outline.clone()} />
        </>
    }
}

/// A part of a muscle as its cut.
pub(in crate::components) fn part(place: usize, marks: &Marks, area: &Area) -> Html {
    let product = marks.product.map_or("discard", |product| product.id());
    let stretch =
        marks.stretch.clone().map_or_else(|| AttrValue::from(area.outline.clone()), AttrValue::from);
    html! {
        <g key={place} class={classes!("part-fill", format!("is-{product}"))}>
            <path class="stretch" d={stretch.clone()} />
            if product == "grind" { <path class="stipple" d={stretch} fill="url(#stipple)" /> }
            if !marks.lines.is_empty() { <path class="knife" d={marks.lines.clone()} /> }
        </g>
    }
}

/// The letter of its product.
#[derive(PartialEq)]
struct Letter {
    view: Rc<AreaView>,
    size: f64,
}

impl Still for Letter {
    fn draw(&self) -> Html {
        let (size, (x, y)) = (self.size, self.view.area.label);
        html! {
            <g class="letter">
                <text x={whole(x)} y={whole(y + size * 0.36)} font-size={whole(size)} text-anchor="middle">{ self.view.mark }</text>
            </g>
        }
    }
}

/// The line to a label and its words.
pub(in crate::components) fn label(label: &Label, size: f64) -> Html {
    let ((x, y), (to_x, to_y)) = (label.anchor, label.slot.at);
    let length = ((to_x - x) * (to_x - x) + (to_y - y) * (to_y - y)).sqrt().max(1.0);
    // The line stops short of the letter on the muscle.
    let gap = (size * 0.8).min(length / 2.0) / length;
    let (from_x, from_y) = (x + (to_x - x) * gap, y + (to_y - y) * gap);
    let (anchor, text_x, text_y) = match label.slot.stands {
        Stands::Left => ("end", to_x - size * 0.3, to_y + size * 0.35),
        Stands::Right => ("start", to_x + size * 0.3, to_y + size * 0.35),
        Stands::Over => ("middle", to_x, to_y - size * 0.3),
        Stands::Under => ("middle", to_x, to_y + size),
    };
    let line = format!("M{} {}L{} {}", whole(from_x), whole(from_y), whole(to_x), whole(to_y));
    html! {
        <>
            <path class="leader-halo" d={line.clone()} />
            <path class="leader" d={line} />
            <circle class="leader-end" cx={whole(from_x)} cy={whole(from_y)} r={whole(size * 0.16)} />
            <text x={whole(text_x)} y={whole(text_y)} font-size={whole(size)} text-anchor={anchor}>{ &label.says }</text>
        </>
    }
}

/// Takes every press while a wound is being marked.
fn aim(props: &PlateDrawingProps) -> Html {
    let frame = props.scene.frame;
    let on_touch = props.on_touch.clone();
    let onclick = Callback::from(move |event: MouseEvent| {
        if let Some((x, y)) = pointer::on_drawing(PLATE, frame, &event) {
            on_touch.emit(Touched::Place(x, y));
        }
    });
    html! { <rect class="aim" x={whole(frame.x)} y={whole(frame.y)} width={whole(frame.width)} height={whole(frame.height)} {onclick} /> }
}

/// What was pressed: the place of a muscle, and the key, or none where it was tapped.
type Press = (usize, Option<KeyboardEvent>);

/// What follows a press: the muscle is touched, or another is reached.
fn on_press(props: &PlateDrawingProps, stop: &UseStateHandle<usize>) -> Callback<Press> {
    let (stop, scene, on_touch) = (stop.clone(), props.scene.clone(), props.on_touch.clone());
    Callback::from(move |(index, key): Press| {
        let areas = &scene.areas;
        let Some(view) = areas.get(index) else { return };
        let touch = |by_keyboard: bool| {
            stop.set(index);
            on_touch.emit(Touched::Muscle { muscle: view.area.muscle, side: view.area.side, by_keyboard });
        };
        let Some(event) = key else { return touch(false) };
        let to = match event.key().as_str() {
            "Enter" | " " => {
                event.prevent_default();
                return touch(true);
            }
            "+" | "=" => return on_touch.emit(Touched::Closer(1.5)),
            "-" => return on_touch.emit(Touched::Closer(1.0 / 1.5)),
            "ArrowLeft" => neighbour(areas, index, Toward::Left),
            "ArrowRight" => neighbour(areas, index, Toward::Right),
            "ArrowUp" => neighbour(areas, index, Toward::Up),
            "ArrowDown" => neighbour(areas, index, Toward::Down),
            "Home" => areas.iter().position(|view| view.is_open()),
            "End" => areas.iter().rposition(|view| view.is_open()),
            _ => return,
        };
        event.prevent_default();
        if let Some(to) = to {
            stop.set(to);
            focus::focus(&format!("touch-{}", areas[to].id));
        }
    })
}

/// What takes the presses of a muscle.
#[derive(PartialEq)]
struct Touch {
    view: Rc<AreaView>,
    /// Its place.
    index: usize,
    /// Whether the Tab key reaches it.
    is_stop: bool,
    called: Called,
    on_press: Callback<Press>,
}

impl Still for Touch {
    fn draw(&self) -> Html {
        let (view, index) = (&self.view, self.index);
        let area: &Area = &view.area;
        let onclick = self.on_press.reform(move |_: MouseEvent| (index, None));
        let onkeydown = self.on_press.reform(move |event: KeyboardEvent| (index, Some(event)));
        html! {
            <path id={format!("touch-{}", view.id)} class={classes!("touch", view.picked.then_some("picked"))}
                d={area.outline.clone()} role="button" tabindex={if self.is_stop { "0" } else { "-1" }} aria-label={view.name.clone()}
                aria-pressed={view.picked.to_string()} {onclick} {onkeydown}>
                if self.called == Called::Names { <title>{ text::muscle(area.muscle) }</title> }
            </path>
        }
    }
}
