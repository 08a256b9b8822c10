//! Each muscle: where it is, its life, why it is tender or tough, its silverskin, its grain, what it wants to be.

use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::tables;
use yew::prelude::*;

use super::PartProps;
use super::compare::compare;
use super::learn_plate::LearnPlate;
use super::picture::Marking;
use crate::components::controls::{self, Choosable, segments_of};
use crate::text;
use crate::views::lesson_plate::{Called, view_for};
use crate::views::teaching::{about, read_for, share, why_not};

/// The part.
#[component]
pub(super) fn Muscles(props: &PartProps) -> Html {
    let view = use_state(|| View::Outer);
    let muscle = use_state(|| None::<Muscle>);
    let other = use_state(|| None::<Muscle>);
    let plan = &props.state.plan;
    let species = plan.animal().species();
    let pick = {
        let (view, muscle) = (view.clone(), muscle.clone());
        Callback::from(move |picked: Option<Muscle>| {
            if let Some(picked) = picked {
                view.set(view_for(picked, *view, species));
            }
            muscle.set(picked);
        })
    };
    let on_view = {
        let view = view.clone();
        Callback::from(move |to: View| view.set(to))
    };
    let on_other = {
        let other = other.clone();
        Callback::from(move |picked: Option<Muscle>| other.set(picked))
    };
    let name = muscle.map(text::muscle);
    let second = other.filter(|other| muscle.is_some_and(|muscle| muscle != *other));
    html! {
        <>
            <div class="lesson-page">
                <div class="lesson-plate">
                    { choice(text::WHICH_MUSCLE, text::CHOOSE_MUSCLE, *muscle, &pick) }
                    <div class="stage-head">
                        { segments_of(text::VIEW, &View::ALL, text::view, *view, &on_view) }
                    </div>
                    <LearnPlate key={*view as usize} plan={plan.clone()} view={*view} width={props.width} called={Called::Names}
                        lit={muscle.iter().copied().collect::<Vec<_>>()} marking={Marking { numbered: false, flows: true }}
                        summary={text::plate_of(text::species(species), name)} on_muscle={pick.reform(Some)} />
                </div>
                { match *muscle {
                    Some(muscle) => html! {
                        <section class="card lesson-text" aria-label={text::about_muscle(muscle)}>
                            { taught(muscle) }
                            <div class="screen-only">{ choice(text::COMPARE_WITH, text::COMPARE_NONE, second, &on_other) }</div>
                        </section>
                    },
                    None => html! { <p class="card lesson-text empty">{ text::NO_MUSCLE_YET }</p> },
                } }
            </div>
            if let (Some(muscle), Some(second)) = (*muscle, second) { { compare(muscle, second, species) } }
        </>
    }
}

/// A list of all muscles, with nothing first.
pub(super) fn choice(
    label: &'static str,
    nothing: &'static str,
    chosen: Option<Muscle>,
    on_muscle: &Callback<Option<Muscle>>,
) -> Html {
    let options: Vec<Choosable> = std::iter::once(Choosable::new(nothing))
        .chain(Muscle::ALL.into_iter().map(|muscle| Choosable::new(text::muscle(muscle))))
        .collect();
    let on_choose = on_muscle
        .reform(|place: usize| place.checked_sub(1).and_then(|place| Muscle::ALL.get(place).copied()));
    controls::choice(label, options, Some(chosen.map_or(0, |muscle| muscle.index() + 1)), &on_choose)
}

/// Everything that is said of one muscle.
pub(super) fn taught(muscle: Muscle) -> Html {
    let row = tables::muscle(muscle);
    let also = text::muscle_also(muscle);
    let sources = read_for(muscle);
    let poor = why_not(muscle);
    html! {
        <>
            <h2 aria-live="polite">{ text::muscle(muscle) }</h2>
            if !also.is_empty() { <p class="also">{ also }</p> }
            <p class="latin">{ text::anatomical(muscle) }</p>
            <p class="becomes">{ text::teach(muscle) }</p>
            <dl class="taught">
                { for about(muscle).into_iter().map(|(about, says)| html! { <div key={about}><dt>{ about }</dt><dd>{ says }</dd></div> }) }
                if !poor.is_empty() {
                    <div><dt>{ text::WHY_NOT_HEAD }</dt>{ for poor.into_iter().map(|says| html! { <dd key={says.clone()}>{ says }</dd> }) }</div>
                }
                <div><dt>{ text::SHARE_HEAD }</dt><dd>{ share(muscle) }{ " \u{b7} " }{ text::grade(row.grade) }</dd></div>
            </dl>
            <details class="about">
                <summary>{ text::READ_FOR_THIS }</summary>
                <ul class="plain-list">{ for sources.iter().map(|source| html! { <li key={text::citation(*source)}>{ text::citation(*source) }</li> }) }</ul>
                <p class="hint">{ text::LESSON_NOTE }</p>
            </details>
        </>
    }
}
