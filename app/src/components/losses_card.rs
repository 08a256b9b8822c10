//! What is lost between clean lean and the table, with the cautions that belong there.

use hindsaddle_model::plan::{Action, Care, Losses, MOST_HUNG_DAYS, Shot};
use yew::prelude::*;

use super::controls::{choice_of, stepper};
use super::still::{Still, still};
use crate::store::{Msg, State};
use crate::text;

/// The card.
pub fn losses_card(state: &State, send: &Callback<Msg>) -> Html {
    let (losses, marked) = (state.plan.losses(), !state.plan.wounds().is_empty());
    still(text::LOSSES, Card { losses, marked, send: send.clone() })
}

#[derive(PartialEq)]
struct Card {
    losses: Losses,
    /// Whether wounds are marked, which stand in for the choice of the shot.
    marked: bool,
    send: Callback<Msg>,
}

impl Still for Card {
    fn draw(&self) -> Html {
        let losses = self.losses;
        let set = {
            let send = self.send.clone();
            Callback::from(move |losses: Losses| send.emit(Msg::Act(Action::SetLosses(losses))))
        };
        let on_shot = set.reform(move |shot: Shot| Losses { shot, ..losses });
        let on_care = set.reform(move |care: Care| Losses { care, ..losses });
        let on_hung = set.reform(move |by: i32| Losses {
            hung_days: (i32::from(losses.hung_days) + by).clamp(0, i32::from(MOST_HUNG_DAYS)) as u8,
            ..losses
        });
        html! {
            <details class="card">
                <summary>{ text::LOSSES }</summary>
                <div class="fields">
                    { choice_of(text::SHOT, &Shot::ALL, text::shot, losses.shot, &on_shot) }
                    { choice_of(text::CARE, &Care::ALL, text::care, losses.care, &on_care) }
                    { stepper(text::HUNG, losses.hung_days.to_string(), &on_hung, (text::LESS, text::MORE)) }
                </div>
                if self.marked { <p class="hint">{ text::WOUNDS_COUNT }</p> }
                <p class="caution">{ text::SHOT_CAUTION }</p>
                if losses.hung_days > 0 { <p class="caution">{ text::HUNG_CAUTION }</p> }
            </details>
        }
    }
}
