//! Two muscles side by side.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::Species;
use hindsaddle_model::lesson::shown_from;
use yew::prelude::*;

use super::picture::{Marking, picture};
use crate::plate::figure::plate;
use crate::text;
use crate::views::lesson_plate::seen_together;
use crate::views::teaching::compared;

/// The card: both on a picture, one sentence, and a table.
pub(super) fn compare(one: Muscle, other: Muscle, species: Species) -> Html {
    let both = [one, other];
    let heading = text::named(text::muscle(one), text::muscle(other));
    html! {
        <section class="card" aria-label={text::COMPARE}>
            <h2>{ text::COMPARE }</h2>
            { pictures(both, species) }
            <p class="becomes" role="status">{ text::apart(one, other) }</p>
            <table class="plain compare" aria-label={heading}>
                <thead><tr><td></td>{ for both.into_iter().enumerate().map(|(place, muscle)| html! {
                    <th key={place} scope="col"><b>{ place + 1 }{ " " }{ text::muscle(muscle) }</b></th>
                }) }</tr></thead>
                <tbody>
                    { for compared(one, other).into_iter().map(|(name, of)| html! {
                        <tr key={name}><th scope="row">{ name }</th>{ for of.into_iter().map(|of| html! { <td>{ of }</td> }) }</tr>
                    }) }
                </tbody>
            </table>
        </section>
    }
}

/// One picture where both are seen from one side, else one of each.
fn pictures([one, other]: [Muscle; 2], species: Species) -> Html {
    let marking = Marking { numbered: true, flows: false };
    let names = text::two_muscles(one, other);
    if let Some(view) = seen_together(one, other, species) {
        return picture(&plate(view, species), None, &[one, other], marking, Html::default(), names);
    }
    let marking = Marking { numbered: false, flows: false };
    html! {
        <div class="two-plates">
            { for [one, other].into_iter().enumerate().map(|(place, muscle)| {
                let plate = plate(shown_from(muscle), species);
                html! { <figure key={place}>{ picture(&plate, None, &[muscle], marking, Html::default(), text::muscle(muscle).to_owned()) }<figcaption>{ place + 1 }{ " " }{ text::muscle(muscle) }</figcaption></figure> }
            }) }
        </div>
    }
}
