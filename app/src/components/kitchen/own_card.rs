//! The household's own figures: kept only when asked, seen, saved as a file, erased, and put into a plan by a tap.

use hindsaddle_model::own::{self, Animal, Own, compared, figures};
use hindsaddle_model::plan::Action;
use yew::prelude::*;

use super::{PartProps, button, row, tick};
use crate::app::remember;
use crate::platform::{files, storage};
use crate::store::{Msg, Notice};
use crate::text;

fn read() -> Vec<Animal> {
    own::read(&storage::read(storage::OWN).unwrap_or_default())
}

/// The card.
#[component]
pub(super) fn OwnCard(props: &PartProps) -> Html {
    let animals = use_state(read);
    let plan = &props.state.plan;
    let name = own::name(plan);
    let comparison = use_memo(plan.clone(), |plan| compared(plan));
    let write = {
        let (animals, send) = (animals.clone(), props.send.clone());
        move |now: Vec<Animal>| {
            remember(storage::OWN, &own::write(&now), &send);
            animals.set(read());
        }
    };
    let others = |without: &str| -> Vec<Animal> {
        animals.iter().filter(|animal| animal.name != without).cloned().collect()
    };
    let is_kept = animals.iter().any(|animal| animal.name == name);
    // A kept animal is weighed on: its line says what is known now.
    {
        let (write, now, others) = (write.clone(), comparison.clone(), others(&name));
        use_effect_with(comparison.clone(), move |_| {
            if let (true, Ok(animal)) = (is_kept, &*now) {
                write(others.into_iter().chain([animal.clone()]).collect());
            }
        });
    }
    let on_keep = {
        let (write, now, others) = (write.clone(), comparison.clone(), others(&name));
        Callback::from(move |keep: bool| {
            let mine = now.as_ref().as_ref().ok().filter(|_| keep).cloned();
            write(others.iter().cloned().chain(mine).collect());
        })
    };
    let erase = |without: String| {
        let (write, others) = (write.clone(), others(&without));
        Callback::from(move |_: MouseEvent| write(others.clone()))
    };
    let erase_all = {
        let write = write.clone();
        Callback::from(move |_: MouseEvent| write(Vec::new()))
    };
    let save = {
        let text = own::write(&animals);
        props.send.reform(move |_: MouseEvent| {
            Msg::Say(Notice::saved(files::save("hindsaddle-own-figures.txt", "text/plain", &text)))
        })
    };
    let (own, from) = figures(&animals, plan.animal().species(), &name);
    let use_own = |own: Own| props.send.reform(move |_: MouseEvent| Msg::Act(Action::UseOwn(own)));
    html! {
        <section class="card" aria-label={text::OWN}>
            <h3>{ text::OWN }</h3>
            <p class="hint">{ text::OWN_HINT }</p>
            if !plan.own().is_table() {
                <p class="caution">{ text::OWN_IN_IT }</p>
                { button(text::OWN_OUT, use_own(Own::default())) }
            }
            { match &*comparison {
                Ok(_) => tick(text::OWN_KEEP, is_kept, &on_keep),
                Err(too_little) => html! { <p>{ text::own_too_little(too_little.weighed) }</p> },
            } }
            if from > 0 {
                <p>{ text::own_figures(&own, from) }</p>
                if *plan.own() != own { { button(text::OWN_USE, use_own(own)) } }
            }
            if animals.is_empty() {
                <p class="hint">{ text::OWN_NONE }</p>
            } else {
                <ul class="rows">
                    { for animals.iter().map(|animal| row(text::own_animal(animal), text::own_erase(animal), erase(animal.name.clone()))) }
                </ul>
                <div class="saves">
                    { button(text::OWN_SAVE, save) }
                    { button(text::OWN_ERASE, erase_all) }
                </div>
            }
        </section>
    }
}
