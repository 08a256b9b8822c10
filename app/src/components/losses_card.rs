//! What is lost between clean lean and the table, with the cautions that belong there.

use hindsaddle_model::plan::{Action, Care, Losses, MOST_HUNG_DAYS, Shot};
use yew::prelude::*;

use super::controls::{Choice, Choosable, Stepper};
use crate::store::Msg;
use crate::text;

/// Properties of [`LossesCard`].
#[derive(PartialEq, Properties)]
pub struct LossesCardProps {
    /// The losses.
    pub losses: Losses,
    /// Whether wounds are marked, which stand in for the choice of the shot.
    pub marked: bool,
    /// Told what happens.
    pub send: Callback<Msg>,
}

/// The card.
#[component]
pub fn LossesCard(props: &LossesCardProps) -> Html {
    let losses = props.losses;
    let set = {
        let send = props.send.clone();
        Callback::from(move |losses: Losses| send.emit(Msg::Act(Action::SetLosses(losses))))
    };
    let on_shot = set.reform(move |place: usize| Losses { shot: Shot::ALL[place], ..losses });
    let on_care = set.reform(move |place: usize| Losses { care: Care::ALL[place], ..losses });
    let on_hung = set.reform(move |by: i32| Losses {
        hung_days: (i32::from(losses.hung_days) + by).clamp(0, i32::from(MOST_HUNG_DAYS)) as u8,
        ..losses
    });
    let shots = Shot::ALL.map(|shot| Choosable::new(text::shot(shot))).to_vec();
    let cares = Care::ALL.map(|care| Choosable::new(text::care(care))).to_vec();
    html! {
        <details class="card">
            <summary>{ text::LOSSES }</summary>
            <div class="fields">
                <Choice label={text::SHOT} options={shots} chosen={Shot::ALL.iter().position(|shot| *shot == losses.shot)} on_choose={on_shot} />
                <Choice label={text::CARE} options={cares} chosen={Care::ALL.iter().position(|care| *care == losses.care)} on_choose={on_care} />
                <Stepper label={text::HUNG} value={losses.hung_days.to_string()} on_step={on_hung} less={text::LESS} more={text::MORE} />
            </div>
            if props.marked { <p class="hint">{ text::WOUNDS_COUNT }</p> }
            <p class="caution">{ text::SHOT_CAUTION }</p>
            if losses.hung_days > 0 { <p class="caution">{ text::HUNG_CAUTION }</p> }
        </details>
    }
}
