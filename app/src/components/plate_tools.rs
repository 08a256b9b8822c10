//! The tools under the drawing, and the panel of the one that is open.

use hindsaddle_model::anatomy::View;
use hindsaddle_model::plan::Action;
use hindsaddle_model::product::Product;
use hindsaddle_model::wounds::{MOST_WOUNDS, USUAL_RADIUS, Wound};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::controls::{Choosable, segments, segments_of, stepper};
use super::plate_drawing::PLATE;
use crate::plate::peel::LAYERS;
use crate::platform::picture::{self, Kind};
use crate::store::{Msg, Naming, Notice, State, Tool};
use crate::text;
use crate::views::plate_view::Scene;
use crate::views::wounds::{WoundView, stepped};

/// Whether a tool is the open one; every brush is the same tool.
fn is_open(state: &State, tool: Tool) -> bool {
    std::mem::discriminant(&state.tool) == std::mem::discriminant(&tool)
}

/// The tools.
pub(super) fn plate_tools(state: &State, scene: &Scene, send: &Callback<Msg>) -> Html {
    let look = state.look;
    let message = |message: Msg| send.reform(move |_: MouseEvent| message.clone());
    let tools = [
        (Tool::Paint(Some(Product::Stew)), text::PAINT),
        (Tool::Wound, text::WOUND),
        (Tool::Names, text::NAMES),
        (Tool::Peel, text::PEEL),
        (Tool::Save, text::SAVE),
    ];
    html! {
        <>
            <div class="plate-tools" role="toolbar" aria-label={text::TOOLS}>
                if look.region.is_some() || look.lens.is_some() {
                    <button type="button" class="tool back" onclick={message(Msg::Zoom(None))}>{ text::BACK_TO_WHOLE }</button>
                }
                if look.view != View::Above {
                    <button type="button" class="tool" aria-label={text::shown_side(look.side)} title={text::shown_side(look.side)}
                        onclick={message(Msg::Show(look.side.other()))}>{ text::side_switch(look.side) }</button>
                }
                { for tools.into_iter().map(|(tool, name)| {
                    let open = is_open(state, tool);
                    html! {
                        <button key={name} type="button" class="tool" aria-expanded={open.to_string()}
                            onclick={message(Msg::Take(if open { Tool::Decide } else { tool }))}>{ name }</button>
                    }
                }) }
            </div>
            { panel(state, scene, send) }
        </>
    }
}

fn panel(state: &State, scene: &Scene, send: &Callback<Msg>) -> Html {
    let (name, inside) = match state.tool {
        Tool::Decide => return Html::default(),
        Tool::Paint(brush) => (text::PAINT, brushes(brush, send)),
        Tool::Wound => (text::WOUND, wounds(state, scene, send)),
        Tool::Names => (text::NAMES, naming(state.look.naming, scene, send)),
        Tool::Peel => (text::PEEL, peel(state.look.peel, send)),
        Tool::Save => (text::SAVE, save(send)),
    };
    html! { <section class="card tool-panel" aria-label={name}>{ inside }</section> }
}

fn brushes(brush: Option<Product>, send: &Callback<Msg>) -> Html {
    let all: Vec<Option<Product>> = Product::ALL.into_iter().map(Some).chain([None]).collect();
    let name = |brush: &Option<Product>| brush.map_or(text::DISCARD, text::product);
    let options = all.iter().map(|brush| Choosable::new(name(brush))).collect::<Vec<_>>();
    let chosen = all.iter().position(|other| *other == brush);
    let on_choose = send.reform(move |place: usize| Msg::Take(Tool::Paint(all[place])));
    html! {
        <>
            { segments(text::PAINT, options, chosen, &on_choose) }
            <p class="hint">{ text::painting(name(&brush)) }</p>
        </>
    }
}

fn wounds(state: &State, scene: &Scene, send: &Callback<Msg>) -> Html {
    // Behind the shoulder, where most shots go: common practice, no source.
    let behind_the_shoulder = Wound { side: state.look.side, x: 20, y: 38, radius: USUAL_RADIUS };
    let add = send.reform(move |_: MouseEvent| Msg::Act(Action::AddWound(behind_the_shoulder)));
    html! {
        <>
            if scene.wounds.is_empty() { <p>{ text::no_wound(state.look.side) }</p> }
            { for scene.wounds.iter().map(|view| wound(view, send)) }
            if !state.plan.wounds().is_empty() { <p>{ text::WOUNDS_COUNT }</p> }
            if state.plan.wounds().len() < MOST_WOUNDS {
                <button type="button" class="tool" onclick={add}>{ text::ADD_WOUND }</button>
            }
            <p class="caution">{ text::SHOT_CAUTION }</p>
            <p class="hint">{ text::LEAD_CAUTION }</p>
        </>
    }
}

fn wound(view: &WoundView, send: &Callback<Msg>) -> Html {
    let (place, wound) = (view.place, view.wound);
    let on_step =
        send.reform(move |by: i32| Msg::Act(Action::ChangeWound { place, wound: stepped(wound, 0, 0, by) }));
    let remove = send.reform(move |_: MouseEvent| Msg::Act(Action::RemoveWound(place)));
    html! {
        <div key={place} class="wound-row">
            <p>{ &view.name }</p>
            { stepper(text::ACROSS, view.reach.clone(), &on_step, (text::LESS, text::MORE)) }
            <button type="button" class="tool" aria-label={text::remove_wound(place + 1)} onclick={remove}>{ text::REMOVE }</button>
        </div>
    }
}

fn naming(now: Naming, scene: &Scene, send: &Callback<Msg>) -> Html {
    const ALL: [Naming; 3] = [Naming::Off, Naming::Common, Naming::Anatomical];
    html! {
        <>
            { segments_of(text::NAMES, &ALL, text::naming_choice, now, &send.reform(Msg::Naming)) }
            if !scene.labels.key.is_empty() {
                <ol class="key">
                    { for scene.labels.key.iter().map(|muscle| html! { <li key={muscle.id()}>{ text::naming(*muscle, now) }</li> }) }
                </ol>
            }
        </>
    }
}

fn peel(layers: u8, send: &Callback<Msg>) -> Html {
    let oninput = send.reform(|event: InputEvent| {
        let typed = event.target_unchecked_into::<HtmlInputElement>().value();
        Msg::Peel(typed.parse().unwrap_or(0))
    });
    html! {
        <label class="peel">
            <span>{ text::lifted(layers) }</span>
            <input type="range" min="0" max={LAYERS.to_string()} value={layers.to_string()} aria-label={text::PEEL} aria-valuetext={text::lifted(layers)} {oninput} />
        </label>
    }
}

fn save(send: &Callback<Msg>) -> Html {
    let file = |kind: Kind| {
        let send = send.clone();
        move |_: MouseEvent| {
            let send = send.clone();
            picture::save(PLATE, text::PICTURE_FILE, kind, move |saved| {
                send.emit(Msg::Say(Notice::saved(saved)));
            });
        }
    };
    let sheets = send.reform(|_: MouseEvent| Msg::ClassSheets(true));
    html! {
        <div class="saves">
            <button type="button" class="tool" onclick={file(Kind::Svg)}>{ text::SAVE_SVG }</button>
            <button type="button" class="tool" onclick={file(Kind::Png)}>{ text::SAVE_PNG }</button>
            <button type="button" class="tool" onclick={sheets}>{ text::CLASS_SHEETS }</button>
        </div>
    }
}
