//! The table card: one step of the work at a time, large, with its place on the animal, the weigh box and done
//! marks. Marks stay on this device; weights are in the plan.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::order::{Step, Task, working_order};
use hindsaddle_model::plan::Plan;
use hindsaddle_model::scale::{OnScale, Weighing, doubt};
use hindsaddle_model::tables;
use hindsaddle_model::units::Mass;
use yew::prelude::*;

use super::weigh_box::{WeighBox, Weighs, is_sure};
use super::{PartProps, scale_card, tick};
use crate::app::remember;
use crate::caution::Caution;
use crate::components::plate_drawing::silhouette;
use crate::plate::figure::plate;
use crate::platform::{focus, storage, wake};
use crate::store::{Msg, State};
use crate::text;
use crate::views::scale::{key, of_muscle};

/// The steps that are done.
type Marks = Vec<String>;

/// A line is a step and whether it is done; lines from before weights were in the plan go on with the weight.
fn read_marks() -> Marks {
    let text = storage::read(storage::TABLE).unwrap_or_default();
    let done = |line: &str| {
        let (step, rest) = line.split_once('\t')?;
        rest.starts_with('1').then(|| step.to_owned())
    };
    text.lines().filter_map(done).collect()
}

fn write_marks(marks: &Marks, send: &Callback<Msg>) {
    let lines: Vec<String> = marks.iter().map(|step| format!("{step}\t1")).collect();
    remember(storage::TABLE, &lines.join("\n"), send);
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

/// The element of the card: each step begins at its top.
const CARD: &str = "table-card";

/// The card.
#[component]
pub(super) fn TableCard(props: &PartProps) -> Html {
    let marks = use_state(read_marks);
    let awake = use_state(|| false);
    let steps = working_order(&props.state.plan);
    let is_done = |step: &Step| marks.iter().any(|mark| mark == id(*step));
    let place = use_state(|| steps.iter().position(|step| !is_done(step)).unwrap_or(0));
    let at = (*place).min(steps.len().saturating_sub(1));
    let Some(step) = steps.get(at) else {
        return html! { <section class="card" aria-label={text::TABLE_CARD}><p>{ text::NO_STEP }</p></section> };
    };
    let asked = use_memo((props.state.plan.clone(), step.task), |(plan, task)| {
        of_step(plan, *task)
            .into_iter()
            .filter(|one| doubt(plan, *one).is_some())
            .map(key)
            .collect::<Vec<_>>()
    });
    let on_done = {
        let (marks, step, place, last) = (marks.clone(), id(*step), place.clone(), steps.len() - 1);
        let send = props.send.clone();
        Callback::from(move |done: bool| {
            let mut changed: Marks = marks.iter().filter(|mark| *mark != step).cloned().collect();
            if done {
                changed.push(step.to_owned());
                // A weight that is asked about is not left behind unseen.
                if asked.iter().all(|key| is_sure(key)) {
                    place.set((at + 1).min(last));
                    focus::reveal(CARD);
                }
            }
            write_marks(&changed, &send);
            marks.set(changed);
        })
    };
    let go = |to: usize| {
        let place = place.clone();
        Callback::from(move |_: MouseEvent| {
            place.set(to);
            focus::reveal(CARD);
        })
    };
    let again = {
        let (marks, place, send) = (marks.clone(), place.clone(), props.send.clone());
        Callback::from(move |_: MouseEvent| {
            write_marks(&Marks::new(), &send);
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
    let count = steps.iter().filter(|step| is_done(step)).count();
    let weighs = match step.task {
        Task::Muscle(muscle) => Weighs::Muscle(muscle),
        Task::Tub => Weighs::Tub,
    };
    html! {
        <>
            <section id={CARD} class="card table-card" aria-label={text::TABLE_CARD}>
                <p class="hint">{ text::step_of(at + 1, steps.len()) }{ " \u{b7} " }{ text::done_of(count, steps.len()) }</p>
                // Before the first cut, and not small.
                if at == 0 { { warned(Caution::Testing, "caution") } }
                <h2>{ name(*step) }</h2>
                <p class="why">{ text::why(step.why) }</p>
                { match step.task {
                    Task::Muscle(muscle) => muscle_step(&props.state, muscle),
                    Task::Tub => html! { <><p class="caution">{ text::GRIND_CAUTION }</p><p>{ text::CLEAN_UP }</p></> },
                } }
                <div class="table-actions steps-on">
                    <button type="button" class="tool" disabled={at == 0} onclick={go(at.saturating_sub(1))}>{ text::BACK }</button>
                    { tick(text::DONE, is_done(step), &on_done) }
                    <button type="button" class="tool" disabled={at + 1 == steps.len()} onclick={go(at + 1)}>{ text::NEXT }</button>
                </div>
                <WeighBox key={id(*step)} part={props.clone()} {weighs} />
                if wake::is_possible() { { tick(text::AWAKE, *awake, &on_awake) } }
                <p class="hint">{ text::HAND_CAUTION }</p>
                if at > 0 { { warned(Caution::Testing, "hint") } }
                { warned(Caution::OneAnimal, "hint") }
                { warned(Caution::Gut, "hint") }
            </section>
            <section class="card" aria-label={text::ALL_STEPS}>
                <h3>{ text::ALL_STEPS }</h3>
                <ol class="steps">
                    { for steps.iter().enumerate().map(|(index, step)| {
                        let done = is_done(step);
                        html! {
                            <li key={id(*step)} class={classes!(done.then_some("done"))}>
                                <button type="button" class="muscle-name" aria-current={(index == at).then_some("step")} onclick={go(index)}>{ name(*step) }</button>
                                { if done { " \u{2713} " } else { " " } }{ weights(&props.state, step.task) }
                            </li>
                        }
                    }) }
                </ol>
                <button type="button" class="tool" onclick={again}>{ text::START_AGAIN }</button>
            </section>
            { scale_card::view(props) }
        </>
    }
}

fn warned(caution: Caution, class: &'static str) -> Html {
    let (about, says) = text::caution(caution);
    html! { <p {class}><b>{ about }</b>{ ": " }{ says }</p> }
}

/// The weights of a step.
fn of_step(plan: &Plan, task: Task) -> Vec<Weighing> {
    match task {
        Task::Muscle(muscle) => of_muscle(plan, muscle),
        Task::Tub => plan.weighings().iter().copied().filter(|one| one.target == OnScale::Tub).collect(),
    }
}

/// What a step weighed: "12 oz", or one side after the other.
fn weights(state: &State, task: Task) -> String {
    let of = of_step(&state.plan, task);
    of.iter().map(|one| text::weight(one.mass, state.units)).collect::<Vec<_>>().join(" + ")
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
                <p><b>{ text::TAKE_OFF }</b>{ ": " }{ text::take_off(muscle) }</p>
                <p><b>{ text::KNIFE }</b>{ ": " }{ text::knife(muscle) }</p>
                if let Some(whose) = state.season.partners().claimant(muscle) { <p>{ text::claimed_by(state.season.partners(), whose) }</p> }
                <ul class="results">
                    { for forecast.packs.iter().map(|row| html! { <li key={text::cut(row.cut, state.units)}>{ text::pack_row(row, state.units) }</li> }) }
                </ul>
                <p>{ text::both_sides(&text::mass_range(forecast.mass, state.units)) }{ "; " }{ text::ends_and_trim(&text::mass(tub, state.units)) }</p>
                <p>{ text::teach(muscle) }</p>
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
            { silhouette(&plate, false) }
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
