//! Two pages for a class: the plate with numbers and blanks, and the same with the answers.

use hindsaddle_model::anatomy::{Muscle, View};
use yew::prelude::*;

use super::opened::Opened;
use super::plate_drawing::{label, silhouette};
use crate::platform::picture;
use crate::store::{Msg, State};
use crate::text;
use crate::views::labels::Labels;
use crate::views::plate_view::{Scene, numbered};

const CLOSE: &str = "sheets-close";

/// The sheets, and how to print them: the sides, each with the muscles that are asked.
pub fn class_sheets(state: &State, sides: &[(View, Vec<Muscle>)], send: &Callback<Msg>) -> Html {
    let close = send.reform(|_: MouseEvent| Msg::ClassSheets(false));
    html! {
        <main class="class-sheets">
            <Opened focus={CLOSE} />
            <div class="sheet-tools">
                <button id={CLOSE} type="button" class="tool" onclick={close}>{ text::CLOSE }</button>
                <button type="button" class="tool" onclick={|_: MouseEvent| picture::print()}>{ text::PRINT }</button>
                <p class="hint">{ text::CLASS_HINT }</p>
            </div>
            { for [false, true].into_iter().flat_map(|answers| sides.iter().map(move |(view, asked)| (answers, *view, asked))).map(|(answers, view, asked)| {
                let (scene, numbers) = numbered(state, view, asked);
                page(state, view, &scene, &numbers, answers)
            }) }
        </main>
    }
}

fn page(state: &State, view: View, scene: &Scene, numbers: &Labels, answers: bool) -> Html {
    let view = text::view(view);
    let species = text::species(state.plan.animal().species());
    html! {
        <section class="class-sheet" aria-label={text::class_title(answers)}>
            <h2>{ text::class_title(answers) }</h2>
            <p class="also">{ text::class_subject(species, view) }</p>
            if !answers { <p>{ text::NAME_LINE }</p> }
            { drawing(scene, numbers, answers) }
            <ol class="blanks">
                { for numbers.key.iter().map(|muscle| html! {
                    <li key={muscle.id()}>
                        if answers {
                            <b>{ text::muscle(*muscle) }</b>{ " " }<i>{ text::anatomical_short(*muscle) }</i>
                        } else {
                            <span class="blank"></span>
                        }
                    </li>
                }) }
            </ol>
            <p class="hint">{ text::CLASS_FOOT }</p>
        </section>
    }
}

/// The muscles as the plate has them, without a plan on them.
fn drawing(scene: &Scene, numbers: &Labels, answers: bool) -> Html {
    let plate = &scene.plate;
    let summary = text::class_title(answers);
    html! {
        <svg class="plate bare" viewBox={numbers.frame.view_box()} role="img" aria-label={summary}>
            { silhouette(plate, false) }
            <path class="bones" d={plate.bones.clone()} />
            { for scene.areas.iter().map(|view| html! {
                <g key={view.id.clone()}>
                    <path class="meat" d={view.area.outline.clone()} />
                    <path class="grain" d={view.area.grain.clone()} />
                    <path class="border" d={view.area.outline.clone()} />
                </g>
            }) }
            <path class="ink" d={plate.ink.clone()} />
            <path class="ink" d={plate.seams.clone()} />
            { for numbers.labels.iter().enumerate().map(|(place, shown)| html! { <g key={place} class="label">{ label(shown, numbers.size) }</g> }) }
        </svg>
    }
}
