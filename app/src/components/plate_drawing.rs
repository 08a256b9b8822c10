//! The drawing. Layers, bottom up: the far legs; the silhouette; the bones; for each muscle its parts with
//! their cuts, clipped to its border; grain and silverskin; ink; letters; and on top the touch layer, the only
//! one that takes pointers and the keyboard.

use hindsaddle_model::anatomy::Muscle;
use yew::prelude::*;

use crate::plate::marks::Marks;
use crate::plate::{Area, Frame, Plate};
use crate::platform::focus;
use crate::text;
use crate::views::plate_view::{AreaView, Toward, neighbour};

/// Properties of [`PlateDrawing`].
#[derive(PartialEq, Properties)]
pub(super) struct PlateDrawingProps {
    /// The view.
    pub plate: &'static Plate,
    /// What is shown of it.
    pub frame: Frame,
    /// Whether antlers are drawn.
    pub antlers: bool,
    /// The muscles.
    pub areas: Vec<AreaView>,
    /// What the whole is.
    pub summary: AttrValue,
    /// How large a letter is, in units of the drawing.
    pub letter: f64,
    /// Told which muscle was pressed, and whether by keyboard.
    pub on_press: Callback<(Muscle, bool)>,
}

/// The drawing.
#[component]
pub(super) fn PlateDrawing(props: &PlateDrawingProps) -> Html {
    // The one area that the Tab key reaches; arrows move it.
    let stop = use_state(|| 0_usize);
    let plate = props.plate;
    let Frame { x, y, width, height } = props.frame;
    let stop_here = (*stop).min(props.areas.len().saturating_sub(1));
    html! {
        <svg class="plate" viewBox={view_box(x, y, width, height)} role="group" aria-label={props.summary.clone()}>
            <defs>
                { for props.areas.iter().map(|view| html! {
                    <clipPath key={view.id.clone()} id={format!("border-{}", view.id)}><path d={plate.areas[view.index].outline} /></clipPath>
                }) }
                { stipple() }
            </defs>
            <g aria-hidden="true">
                <path class="far" d={plate.far} />
                if props.antlers { <path class="antlers" d={plate.antlers} /> }
                <path class="body" d={plate.body} />
                <path class="body" d={plate.ear} />
                <path class="bones" d={plate.bones} />
                { for props.areas.iter().map(|view| fill(view, &plate.areas[view.index])) }
                <path class="ink" d={plate.ink} />
                { for props.areas.iter().map(|view| letter(view, &plate.areas[view.index], props.letter)) }
            </g>
            <g>{ for props.areas.iter().map(|view| touch(props, view, view.index == stop_here, &stop)) }</g>
        </svg>
    }
}

fn view_box(x: f64, y: f64, width: f64, height: f64) -> String {
    [x, y, width, height].map(|number| (number.round() as i64).to_string()).join(" ")
}

/// The dots of ground meat.
fn stipple() -> Html {
    html! {
        <pattern id="stipple" width="16" height="16" patternUnits="userSpaceOnUse">
            <circle class="dot" cx="3" cy="4" r="1.9" /><circle class="dot" cx="11" cy="7" r="1.6" /><circle class="dot" cx="6" cy="12" r="1.8" /><circle class="dot" cx="14" cy="14" r="1.5" />
        </pattern>
    }
}

fn fill(view: &AreaView, area: &'static Area) -> Html {
    let clip = format!("url(#border-{})", view.id);
    html! {
        <g key={view.id.clone()} class={classes!("muscle", (!view.taken).then_some("left-behind"))}>
            <g clip-path={clip}>
                <path class="meat" d={area.outline} />
                { for view.marks.iter().enumerate().map(|(place, marks)| part(place, marks)) }
                <path class="grain" d={area.grain} />
                <path class="sheen" d={area.sheen} />
            </g>
            <path class="border" d={area.outline} />
        </g>
    }
}

fn part(place: usize, marks: &Marks) -> Html {
    let product = marks.product.map_or("discard", |product| product.id());
    html! {
        <g key={place} class={classes!("part-fill", format!("is-{product}"))}>
            <path class="stretch" d={marks.stretch.clone()} />
            if product == "grind" { <path class="stipple" d={marks.stretch.clone()} fill="url(#stipple)" /> }
            if !marks.lines.is_empty() { <path class="knife" d={marks.lines.clone()} /> }
        </g>
    }
}

fn letter(view: &AreaView, area: &'static Area, size: f64) -> Html {
    let (x, y) = area.label;
    html! {
        <g key={view.id.clone()} class="letter">
            <text x={(x.round() as i64).to_string()} y={((y + size * 0.36).round() as i64).to_string()}
                font-size={(size.round() as i64).to_string()} text-anchor="middle">{ view.mark }</text>
        </g>
    }
}

fn touch(props: &PlateDrawingProps, view: &AreaView, is_stop: bool, stop: &UseStateHandle<usize>) -> Html {
    let plate = props.plate;
    let area = &plate.areas[view.index];
    let (muscle, index) = (area.muscle, view.index);
    let press = |by_keyboard: bool| {
        let on_press = props.on_press.clone();
        let stop = stop.clone();
        move || {
            stop.set(index);
            on_press.emit((muscle, by_keyboard));
        }
    };
    let (clicked, entered) = (press(false), press(true));
    let moved = stop.clone();
    let ids: Vec<String> = props.areas.iter().map(|view| format!("touch-{}", view.id)).collect();
    let onkeydown = Callback::from(move |event: KeyboardEvent| {
        let to = match event.key().as_str() {
            "Enter" | " " => {
                event.prevent_default();
                entered();
                return;
            }
            "ArrowLeft" => neighbour(plate, index, Toward::Left),
            "ArrowRight" => neighbour(plate, index, Toward::Right),
            "ArrowUp" => neighbour(plate, index, Toward::Up),
            "ArrowDown" => neighbour(plate, index, Toward::Down),
            "Home" => Some(0),
            "End" => Some(ids.len() - 1),
            _ => return,
        };
        event.prevent_default();
        if let Some(to) = to {
            moved.set(to);
            focus::focus(&ids[to]);
        }
    });
    html! {
        <path key={view.id.clone()} id={format!("touch-{}", view.id)} class={classes!("touch", view.picked.then_some("picked"))}
            d={area.outline} role="button" tabindex={if is_stop { "0" } else { "-1" }} aria-label={view.name.clone()}
            aria-pressed={view.picked.to_string()} onclick={move |_| clicked()} {onkeydown}>
            <title>{ text::muscle(muscle) }</title>
        </path>
    }
}
