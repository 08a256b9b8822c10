//! The first deer: ten steps on the plate. Where one stopped is remembered on the device.

use yew::prelude::*;

use super::PartProps;
use super::picture::{Marking, picture};
use crate::app::remember;
use crate::plate::figure::plate;
use crate::platform::{focus, storage};
use crate::text;
use crate::views::walk::{STEPS, cautions, remembered};

const HEADING: &str = "walk-step";

/// The part.
#[component]
pub(super) fn Walk(props: &PartProps) -> Html {
    let at = use_state(|| remembered(storage::read(storage::WALK).as_deref()));
    let here = *at;
    let go = {
        let (at, send) = (at.clone(), props.send.clone());
        Callback::from(move |to: usize| {
            let to = to.min(STEPS.len() - 1);
            remember(storage::WALK, &to.to_string(), &send);
            at.set(to);
            focus::focus(HEADING);
        })
    };
    let to = |to: usize| go.reform(move |_: MouseEvent| to);
    let onkeydown = {
        let go = go.clone();
        Callback::from(move |event: KeyboardEvent| match event.key().as_str() {
            "ArrowRight" | "PageDown" if here + 1 < STEPS.len() => {
                event.prevent_default();
                go.emit(here + 1);
            }
            "ArrowLeft" | "PageUp" if here > 0 => {
                event.prevent_default();
                go.emit(here - 1);
            }
            _ => {}
        })
    };
    let (step, words) = (&STEPS[here], &text::WALK[here]);
    let plate = plate(step.view, props.state.plan.animal().species());
    let names: Vec<&str> = step.muscles.iter().copied().map(text::muscle).collect();
    let says = text::step_picture(text::view(step.view), &names);
    html! {
        <section class="card lesson-page walk" aria-label={text::FIRST_DEER} {onkeydown}>
            <div class="lesson-plate">
                { picture(&plate, None, step.muscles, Marking::default(), Html::default(), says) }
                if !names.is_empty() { <p class="hint">{ text::named(text::WORKED_ON, &names.join(", ")) }</p> }
            </div>
            <div class="lesson-text">
                <p class="hint">{ text::step_of(here + 1, STEPS.len()) }</p>
                <progress aria-label={text::FIRST_DEER} max={STEPS.len().to_string()} value={(here + 1).to_string()}></progress>
                <h2 id={HEADING} tabindex="-1">{ words.name }</h2>
                <p class="becomes">{ words.doing }</p>
                if step.order.len() > 1 {
                    <ol class="plain-list numbered">{ for step.order.iter().map(|why| html! { <li key={text::why(*why)}>{ text::why(*why) }</li> }) }</ol>
                }
                <p>{ words.watch }</p>
                { for cautions(step).into_iter().map(|(about, says)| html! { <p key={says} class="caution"><b>{ about }</b>{ ": " }{ says }</p> }) }
                <p class="hint">{ text::CAUTION_FOOT }</p>
                if here + 1 == STEPS.len() { <p class="answer">{ text::WALK_END }</p> }
                <p class="hint">{ text::WALK_NOTE }</p>
                <div class="table-actions steps-on walk-actions">
                    <button type="button" class="tool" disabled={here == 0} onclick={to(here.saturating_sub(1))}>{ text::BACK }</button>
                    if here + 1 < STEPS.len() {
                        <button type="button" class="tool main-action" onclick={to(here + 1)}>{ text::NEXT }</button>
                    } else {
                        <button type="button" class="tool main-action" onclick={to(0)}>{ text::FROM_THE_START }</button>
                    }
                </div>
            </div>
        </section>
    }
}
