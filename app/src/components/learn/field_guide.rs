//! Pages of a field guide on paper: each muscle of a lesson with its picture and what is said of it.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::Species;
use hindsaddle_model::lesson::{Lesson, shown_from};
use yew::prelude::*;

use super::muscles::taught;
use super::picture::{Marking, picture};
use crate::plate::figure::plate;
use crate::text;

/// The pages; seen only on paper.
pub(super) fn field_guide(lesson: &Lesson, species: Species) -> Html {
    html! {
        <section class="field-guide" aria-label={text::FIELD_GUIDE}>
            <h2>{ text::FIELD_GUIDE }{ ": " }{ text::species(species) }</h2>
            { for lesson.muscles().map(|muscle| html! { <article key={muscle.id()} class="guide-entry">{ small(muscle, species) }<div>{ taught(muscle) }</div></article> }) }
            <p class="hint">{ text::LESSON_NOTE }</p>
            <p class="hint">{ text::CLASS_FOOT }</p>
        </section>
    }
}

fn small(muscle: Muscle, species: Species) -> Html {
    let plate = plate(shown_from(muscle), species);
    picture(
        &plate,
        None,
        &[muscle],
        Marking { numbered: false, flows: true },
        Html::default(),
        text::muscle(muscle).to_owned(),
    )
}
