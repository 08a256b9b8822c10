//! Two plans side by side: two animals of the season, or one and a plan that came by link.

use std::rc::Rc;

use hindsaddle_model::forecast::forecast;
use hindsaddle_model::link;
use hindsaddle_model::plan::Plan;
use yew::prelude::*;

use super::PartProps;
use crate::components::controls::{Choosable, choice};
use crate::components::field::field;
use crate::components::small_plate::small_plate;
use crate::store::{Msg, Notice};
use crate::text;
use crate::views::season::compared;

/// The card.
#[component]
pub(super) fn Compare(props: &PartProps) -> Html {
    let state = &props.state;
    let pasted = use_state(|| None::<Rc<Plan>>);
    let chosen = use_state(|| [0_usize, 1]);
    let mut plans: Vec<(String, &Plan)> = state
        .season
        .animals()
        .iter()
        .enumerate()
        .map(|(place, plan)| (text::animal_name(plan, place), plan))
        .collect();
    if let Some(plan) = &*pasted {
        plans.push((text::PASTED.to_owned(), plan));
    }
    let on_paste = {
        let (pasted, send) = (pasted.clone(), props.send.clone());
        Callback::from(move |typed: String| {
            // The whole address or only what stands behind its sign.
            let typed = typed.rsplit('#').next().unwrap_or_default();
            match link::read(typed) {
                Ok(season) => pasted.set(Some(Rc::new(season.animal(0).clone()))),
                Err(error) if !typed.is_empty() => send.emit(Msg::Say(Notice::LinkRefused(error))),
                Err(_) => pasted.set(None),
            }
        })
    };
    let last = plans.len() - 1;
    let both = chosen.map(|place| place.min(last));
    html! {
        <section class="card" aria-label={text::COMPARE}>
            <h2>{ text::COMPARE }</h2>
            if last == 0 { <p>{ text::COMPARE_HINT }</p> }
            <div class="fields">
                if last > 0 {
                    { for [text::FIRST_PLAN, text::OTHER_PLAN].into_iter().enumerate().map(|(which, label)| {
                        let chosen = chosen.clone();
                        let on_choose = Callback::from(move |place: usize| {
                            let mut now = *chosen;
                            now[which] = place;
                            chosen.set(now);
                        });
                        let options = plans.iter().map(|(name, _)| Choosable::new(name.clone())).collect::<Vec<_>>();
                        html! { <key={which}>{ choice(label, options, Some(both[which]), &on_choose) }</> }
                    }) }
                }
                { field(text::PASTE_LINK, "text", String::new(), "", &on_paste) }
            </div>
            if last > 0 { { table(props, both.map(|place| &plans[place])) } }
        </section>
    }
}

/// Two plans, each by its name.
pub(super) fn table(props: &PartProps, plans: [&(String, &Plan); 2]) -> Html {
    let units = props.state.units;
    html! {
        <>
            <table class="plain compare">
                <thead>
                    <tr><td></td>{ for plans.iter().enumerate().map(|(place, (name, plan))| html! {
                        <th key={place} scope="col"><b>{ name }</b><span class="each">{ text::animal_line(plan, units) }</span>{ small_plate(plan, &forecast(plan), ["compare-one", "compare-other"][place]) }</th>
                    }) }</tr>
                </thead>
                <tbody>
                    { for compared(plans.map(|(_, plan)| *plan), units).into_iter().map(|row| html! {
                        <tr key={row.name} class={classes!((row.of[0] != row.of[1]).then_some("differs"))}>
                            <th scope="row">{ row.name }</th>
                            { for row.of.into_iter().map(|of| html! { <td>{ of.0 }<span class="each">{ of.1 }</span></td> }) }
                        </tr>
                    }) }
                </tbody>
            </table>
            <p class="hint">{ text::COMPARE_NOTE }</p>
        </>
    }
}
