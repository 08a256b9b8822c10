//! The table card: one step of the work at a time, large, with its place on the animal, done marks and what the
//! scale said. Marks stay on this device.

use std::collections::BTreeMap;
use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::order::{Step, Task, working_order};
use hindsaddle_model::tables;
use hindsaddle_model::units::Mass;
use yew::prelude::*;

use super::{PartProps, field, tick};
use crate::components::plate_drawing::silhouette;
use crate::plate::figure::plate;
use crate::platform::{storage, wake};
use crate::store::State;
use crate::text;

/// What is remembered of each step: whether it is done, and what the scale said, in the reader's words.
type Marks = BTreeMap<String, (bool, String)>;

fn read_marks() -> Marks {
    let text = storage::read(storage::TABLE).unwrap_or_default();
    text.lines()
        .filter_map(|line| {
            let mut parts = line.splitn(3, '\t');
            let (step, done) = (parts.next()?, parts.next()?);
            Some((step.to_owned(), (done == "1", parts.next().unwrap_or_default().to_owned())))
        })
        .collect()
}

fn write_marks(marks: &Marks) {
    let lines: Vec<String> =
        marks.iter().map(|(step, (done, weight))| format!("{step}\t{}\t{weight}", u8::from(*done))).collect();
    storage::write(storage::TABLE, &lines.join("\n"));
}

fn id(step: Step) -> &'static str {
    match step.task {
        Task::Muscle(muscle) => muscle.id(),
        Task::Tub => "tub",
    }
}

fn name(step: Step) -> &'static str {
    match step.task {
        Task::Muscle(muscle) => text::muscle(muscle),
        Task::Tub => text::TUB_STEP,
    }
}

/// The card.
#[component]
pub(super) fn TableCard(props: &PartProps) -> Html {
    let marks = use_state(read_marks);
    let awake = use_state(|| false);
    let steps = working_order(&props.state.plan);
    let first_open = steps.iter().position(|step| !marks.get(id(*step)).is_some_and(|(done, _)| *done));
    let place = use_state(|| first_open.unwrap_or(0));
    let at = (*place).min(steps.len().saturating_sub(1));
    let Some(step) = steps.get(at) else {
        return html! { <section class="card" aria-label={text::TABLE_CARD}><p>{ text::NO_STEP }</p></section> };
    };
    let mark = {
        let marks = marks.clone();
        move |step: &'static str, change: &dyn Fn(&mut (bool, String))| {
            let mut changed = (*marks).clone();
            change(changed.entry(step.to_owned()).or_default());
            write_marks(&changed);
            marks.set(changed);
        }
    };
    let (done, weight) = marks.get(id(*step)).cloned().unwrap_or_default();
    let on_done = {
        let (mark, step, place, last) = (mark.clone(), id(*step), place.clone(), steps.len() - 1);
        Callback::from(move |done: bool| {
            mark(step, &|of| of.0 = done);
            if done {
                place.set((at + 1).min(last));
            }
        })
    };
    let on_weight = {
        let step = id(*step);
        // A line of the memory is one step.
        Callback::from(move |weight: String| {
            let weight: String = weight.chars().filter(|letter| !letter.is_control()).take(20).collect();
            mark(step, &|of| of.1.clone_from(&weight));
        })
    };
    let go = |to: usize| {
        let place = place.clone();
        Callback::from(move |_: MouseEvent| place.set(to))
    };
    let again = {
        let (marks, place) = (marks.clone(), place.clone());
        Callback::from(move |_: MouseEvent| {
            write_marks(&Marks::new());
            marks.set(Marks::new());
            place.set(0);
        })
    };
    let on_awake = {
        let awake = awake.clone();
        Callback::from(move |_: bool| {
            let awake = awake.clone();
            wake::keep(move |kept| awake.set(kept));
        })
    };
    let count = steps.iter().filter(|step| marks.get(id(**step)).is_some_and(|(done, _)| *done)).count();
    html! {
        <>
            <section class="card table-card" aria-label={text::TABLE_CARD}>
                <p class="hint">{ text::step_of(at + 1, steps.len()) }{ " \u{b7} " }{ text::done_of(count, steps.len()) }</p>
                <h2>{ name(*step) }</h2>
                <p class="why">{ text::why(step.why) }</p>
                { match step.task {
                    Task::Muscle(muscle) => muscle_step(&props.state, muscle),
                    Task::Tub => html! { <><p class="caution">{ text::GRIND_CAUTION }</p><p>{ text::CLEAN_UP }</p></> },
                } }
                <span key={id(*step)}>{ field(text::WEIGHED_NOW, "text", weight, "", &on_weight) }</span>
                <div class="table-actions steps-on">
                    <button type="button" class="tool" disabled={at == 0} onclick={go(at.saturating_sub(1))}>{ text::BACK }</button>
                    { tick(text::DONE, done, &on_done) }
                    <button type="button" class="tool" disabled={at + 1 == steps.len()} onclick={go(at + 1)}>{ text::NEXT }</button>
                </div>
                if wake::is_possible() { { tick(text::AWAKE, *awake, &on_awake) } }
                <p class="hint">{ text::HAND_CAUTION }</p>
                { for [0, 2, 6].map(|place| text::ALL_CAUTIONS[place]).into_iter().map(|(about, says)| html! { <p key={about} class="hint"><b>{ about }</b>{ ": " }{ says }</p> }) }
            </section>
            <section class="card" aria-label={text::ALL_STEPS}>
                <h3>{ text::ALL_STEPS }</h3>
                <ol class="steps">
                    { for steps.iter().enumerate().map(|(index, step)| {
                        let (done, weight) = marks.get(id(*step)).cloned().unwrap_or_default();
                        html! {
                            <li key={id(*step)} class={classes!(done.then_some("done"))}>
                                <button type="button" class="muscle-name" aria-current={(index == at).then_some("step")} onclick={go(index)}>{ name(*step) }</button>
                                { if done { "\u{2713} " } else { "" } }{ weight }
                            </li>
                        }
                    }) }
                </ol>
                <button type="button" class="tool" onclick={again}>{ text::START_AGAIN }</button>
            </section>
        </>
    }
}

fn muscle_step(state: &Rc<State>, muscle: Muscle) -> Html {
    let row = tables::muscle(muscle);
    let forecast = &state.forecast.muscles[muscle.index()];
    let tub: Mass = forecast.sides.iter().flatten().map(|part| part.pieces.tub).sum();
    let becomes = text::muscle_cuts(&state.plan, muscle, ", ", state.units);
    html! {
        <div class="table-step">
            { place_of(state, muscle) }
            <div>
                <p class="becomes">{ becomes }</p>
                <ul class="results">
                    { for forecast.packs.iter().map(|row| html! { <li key={text::cut(row.cut, state.units)}>{ text::pack_row(row, state.units) }</li> }) }
                </ul>
                <p>{ text::both_sides(&text::mass_range(forecast.mass, state.units)) }{ "; " }{ text::ends_and_trim(&text::mass(tub, state.units)) }</p>
                <p>{ text::teach(muscle) }</p>
                <p><b>{ text::KNIFE }</b>{ ": " }{ text::knife(muscle) }</p>
                <p>{ text::SILVERSKIN }{ ": " }{ text::of_five(row.silverskin) }{ ". " }<b>{ text::NEXT_TO }</b>{ ": " }{ text::touching(tables::touching(muscle)) }</p>
            </div>
        </div>
    }
}

/// Where the muscle is: the animal in outline and this one filled.
fn place_of(state: &Rc<State>, muscle: Muscle) -> Html {
    let species = state.plan.animal().species();
    let outer = plate(View::Outer, species);
    let plate = if outer.shows(muscle) { outer } else { plate(View::Inner, species) };
    let Some(frame) = plate.frame(None, false) else { return Html::default() };
    html! {
        <svg class="plate place" viewBox={frame.view_box()} role="img" aria-label={text::muscle(muscle)}>
            { silhouette(&plate, Html::default()) }
            { for plate.areas.iter().filter(|area| area.side.is_none()).map(|area| html! {
                <g key={area.muscle.id()}>
                    <path class={if area.muscle == muscle { "here" } else { "meat" }} d={area.outline.clone()} />
                    <path class="grain" d={area.grain.clone()} />
                    <path class="border" d={area.outline.clone()} />
                </g>
            }) }
            <path class="ink" d={plate.ink.clone()} />
            <path class="ink" d={plate.seams.clone()} />
        </svg>
    }
}
