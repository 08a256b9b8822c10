//! Handles on the drawing: where a muscle is divided, and where a wound lies. Each is dragged, or focused and
//! moved with the arrow keys.

use std::rc::Rc;

use hindsaddle_model::plan::Part;
use hindsaddle_model::wounds::Wound;
use yew::prelude::*;

use super::plate_drawing::PLATE;
use crate::plate::axis::Axis;
use crate::plate::{Area, Frame, Plate, whole};
use crate::platform::pointer;
use crate::text;
use crate::views::parts;
use crate::views::wounds::{WoundView, moved, stepped};

/// Half of 44 CSS pixels: what a cold thumb hits.
const THUMB: f64 = 22.0;

/// A handle at each end of a part but the muscle's own; one in the middle of a muscle that is whole. `on_divide` is told
/// the new parts.
pub(super) fn division_handles(
    area: &Rc<Area>,
    parts: &[Part],
    (frame, pixels): (Frame, f64),
    on_divide: &Callback<Vec<Part>>,
) -> Html {
    let handles: Vec<u8> = match parts.len() {
        1 => vec![50],
        _ => parts::boundaries(parts),
    };
    html! {
        <>{ for handles.into_iter().enumerate().map(|(index, percent)| html! {
            <DivisionHandle key={index} area={area.clone()} parts={parts.to_vec()} {frame} {pixels} {index} {percent} on_divide={on_divide.clone()} />
        }) }</>
    }
}

/// Properties of [`DivisionHandle`].
#[derive(PartialEq, Properties)]
struct DivisionHandleProps {
    /// The muscle as it is drawn.
    area: Rc<Area>,
    /// Its parts.
    parts: Vec<Part>,
    /// What is shown of the drawing.
    frame: Frame,
    /// CSS pixels in a unit of the drawing.
    pixels: f64,
    index: usize,
    percent: u8,
    on_divide: Callback<Vec<Part>>,
}

#[component]
fn DivisionHandle(props: &DivisionHandleProps) -> Html {
    // While it is dragged the plan stays as it is: one drag is one step of its history.
    let dragged = use_state(|| None::<u8>);
    let (all, index) = (props.parts.clone(), props.index);
    let (area, frame) = (props.area.clone(), props.frame);
    let percent_at = move |event: &PointerEvent| {
        let u = Axis::new(&area.axis).nearest(pointer::on_drawing(PLATE, frame, event)?);
        Some((u * 100.0).round() as u8)
    };
    let divide = {
        let (on_divide, all) = (props.on_divide.clone(), all.clone());
        move |percent: u8| on_divide.emit(parts::bounded(&all, index, percent))
    };
    let onpointerdown = {
        let (dragged, percent) = (dragged.clone(), props.percent);
        Callback::from(move |event: PointerEvent| {
            event.stop_propagation();
            pointer::capture(&event);
            dragged.set(Some(percent));
        })
    };
    let onpointermove = {
        let (dragged, percent_at) = (dragged.clone(), percent_at.clone());
        Callback::from(move |event: PointerEvent| {
            if dragged.is_some() {
                event.stop_propagation();
                dragged.set(percent_at(&event));
            }
        })
    };
    let onpointerup = {
        let (dragged, divide) = (dragged.clone(), divide.clone());
        Callback::from(move |event: PointerEvent| {
            event.stop_propagation();
            if let Some(percent) = *dragged {
                divide(percent);
            }
            dragged.set(None);
        })
    };
    let onkeydown = {
        let (percent, is_whole) = (props.percent, all.len() == 1);
        Callback::from(move |event: KeyboardEvent| {
            let step = if event.shift_key() { 10 } else { 1 };
            let to = match event.key().as_str() {
                "ArrowRight" | "ArrowUp" => percent.saturating_add(step).min(99),
                "ArrowLeft" | "ArrowDown" => percent.saturating_sub(step).max(1),
                "Home" => 1,
                "End" => 99,
                "Enter" | " " if is_whole => percent,
                _ => return,
            };
            event.prevent_default();
            event.stop_propagation();
            divide(to);
        })
    };
    let shown = dragged.unwrap_or(props.percent);
    let axis = Axis::new(&props.area.axis);
    let ((x, y), (dx, dy)) = axis.at(f64::from(shown) / 100.0);
    let reach = 30.0 / props.pixels;
    let line = format!(
        "M{} {}L{} {}",
        whole(x - dy * reach),
        whole(y + dx * reach),
        whole(x + dy * reach),
        whole(y - dx * reach)
    );
    let class =
        classes!("handle", (all.len() == 1).then_some("hollow"), dragged.is_some().then_some("dragged"));
    html! {
        <g {class} role="slider" tabindex="0" aria-label={text::boundary(index + 1, all.len() == 1)} aria-valuemin="1" aria-valuemax="99"
            aria-valuenow={shown.to_string()} aria-valuetext={text::percent_of_length(shown)}
            {onpointerdown} {onpointermove} {onpointerup} onpointercancel={let_go(&dragged)} {onkeydown}>
            <circle class="reach" cx={whole(x)} cy={whole(y)} r={whole(THUMB / props.pixels)} />
            <path d={line} />
            <circle class="knob" cx={whole(x)} cy={whole(y)} r={whole(9.0 / props.pixels)} />
            if dragged.is_some() {
                <text x={whole(x)} y={whole(y - reach * 1.3)} font-size={whole(16.0 / props.pixels)} text-anchor="middle">{ text::percent_of_length(shown) }</text>
            }
        </g>
    }
}

/// Ends a drag that the browser took for itself, as for scrolling: nothing has moved.
fn let_go<T: 'static>(dragged: &UseStateHandle<Option<T>>) -> Callback<PointerEvent> {
    let dragged = dragged.setter();
    Callback::from(move |_: PointerEvent| dragged.set(None))
}

/// A handle in the middle of each wound. `on_wound` is told the place of a wound in the plan and how it is now; None if it
/// is to go.
pub(super) fn wound_handles(
    wounds: &[WoundView],
    plate: &Rc<Plate>,
    (frame, pixels): (Frame, f64),
    on_wound: &Callback<(usize, Option<Wound>)>,
) -> Html {
    html! {
        <>{ for wounds.iter().map(|view| html! {
            <WoundHandle key={view.place} view={view.clone()} plate={plate.clone()} {frame} {pixels} on_wound={on_wound.clone()} />
        }) }</>
    }
}

/// Properties of [`WoundHandle`].
#[derive(PartialEq, Properties)]
struct WoundHandleProps {
    view: WoundView,
    plate: Rc<Plate>,
    frame: Frame,
    pixels: f64,
    on_wound: Callback<(usize, Option<Wound>)>,
}

#[component]
fn WoundHandle(props: &WoundHandleProps) -> Html {
    let dragged = use_state(|| None::<(f64, f64)>);
    let view = &props.view;
    let frame = props.frame;
    let onpointerdown = {
        let (dragged, at) = (dragged.clone(), view.at);
        Callback::from(move |event: PointerEvent| {
            event.stop_propagation();
            pointer::capture(&event);
            dragged.set(Some(at));
        })
    };
    let onpointermove = {
        let dragged = dragged.clone();
        Callback::from(move |event: PointerEvent| {
            if dragged.is_some() {
                event.stop_propagation();
                dragged.set(pointer::on_drawing(PLATE, frame, &event));
            }
        })
    };
    let onpointerup = {
        let (dragged, on_wound, plate) = (dragged.clone(), props.on_wound.clone(), props.plate.clone());
        let (number, wound) = (view.place, view.wound);
        Callback::from(move |event: PointerEvent| {
            event.stop_propagation();
            if let Some(at) = *dragged {
                on_wound.emit((number, Some(moved(wound, &plate, at))));
            }
            dragged.set(None);
        })
    };
    let onkeydown = {
        let (on_wound, number, wound) = (props.on_wound.clone(), view.place, view.wound);
        Callback::from(move |event: KeyboardEvent| {
            let now = match event.key().as_str() {
                "ArrowRight" => Some(stepped(wound, 1, 0, 0)),
                "ArrowLeft" => Some(stepped(wound, -1, 0, 0)),
                "ArrowUp" => Some(stepped(wound, 0, 1, 0)),
                "ArrowDown" => Some(stepped(wound, 0, -1, 0)),
                "+" | "=" => Some(stepped(wound, 0, 0, 1)),
                "-" => Some(stepped(wound, 0, 0, -1)),
                "Delete" | "Backspace" => None,
                _ => return,
            };
            event.prevent_default();
            event.stop_propagation();
            on_wound.emit((number, now));
        })
    };
    let (x, y) = dragged.unwrap_or(view.at);
    let arm = 9.0 / props.pixels;
    let cross = format!(
        "M{} {}h{}M{} {}v{}",
        whole(x - arm),
        whole(y),
        whole(arm * 2.0),
        whole(x),
        whole(y - arm),
        whole(arm * 2.0)
    );
    html! {
        <g class="handle wound-handle" role="button" tabindex="0" aria-label={text::wound_handle(&view.name)}
            {onpointerdown} {onpointermove} {onpointerup} onpointercancel={let_go(&dragged)} {onkeydown} onclick={|event: MouseEvent| event.stop_propagation()}>
            <circle class="reach" cx={whole(x)} cy={whole(y)} r={whole((THUMB / props.pixels).max(view.radius))} />
            if dragged.is_some() { <circle class="rim" cx={whole(x)} cy={whole(y)} r={whole(view.radius)} /> }
            <path d={cross} />
        </g>
    }
}
