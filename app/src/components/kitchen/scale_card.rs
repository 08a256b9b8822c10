//! What is weighed beside the single muscles, and every weight that is in the plan.

use hindsaddle_model::plan::Action;
use yew::prelude::*;

use super::own_card::OwnCard;
use super::weigh_box::{WeighBox, Weighs};
use super::{PartProps, row};
use crate::store::Msg;
use crate::text;
use crate::views::scale::said;

/// The card.
pub(super) fn view(props: &PartProps) -> Html {
    let state = &props.state;
    let weighings = state.plan.weighings();
    html! {
        <>
            <section class="card" aria-label={text::SCALE}>
                <h3>{ text::SCALE }</h3>
                <p class="hint">{ text::SCALE_HINT }</p>
                <WeighBox part={props.clone()} weighs={Weighs::Lot} />
                <WeighBox part={props.clone()} weighs={Weighs::Packages} />
                <h3>{ text::ALL_WEIGHINGS }</h3>
                if weighings.is_empty() { <p class="hint">{ text::NO_WEIGHINGS }</p> }
                <ul class="rows">
                    { for weighings.iter().map(|weighing| {
                        let (said, target) = (said(*weighing, state.units), weighing.target);
                        let remove = props.send.reform(move |_: MouseEvent| Msg::Act(Action::Weigh { target, mass: None }));
                        row(said.clone(), text::remove_weighing(&said), remove)
                    }) }
                </ul>
            </section>
            <OwnCard ..props.clone() />
        </>
    }
}
