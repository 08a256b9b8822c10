//! Every source, its kind, what rests on it and how good that is, and what is our own judgement.

use hindsaddle_model::sources::Grade;
use yew::prelude::*;

use crate::text;
use crate::views::sources::all;

/// The part.
pub(super) fn view() -> Html {
    let mut last = "";
    html! {
        <section class="card" aria-label={text::SOURCES}>
            <h2>{ text::SOURCES }</h2>
            <p>{ text::SOURCES_HINT }</p>
            <p class="answer">{ text::JUDGEMENT_HINT }</p>
            <h3>{ text::GRADES }</h3>
            <ul class="plain-list">{ for [Grade::A, Grade::B, Grade::C, Grade::D].into_iter().map(|grade| html! { <li key={text::grade(grade)}>{ text::grade(grade) }</li> }) }</ul>
            { for all().into_iter().map(|view| {
                let heading = (view.kind != last).then_some(view.kind);
                last = view.kind;
                html! {
                    <div key={text::citation(view.source)} class={classes!("a-source", view.is_ours.then_some("ours"))}>
                        if let Some(kind) = heading { <h3>{ kind }</h3> }
                        <p>{ text::citation(view.source) }</p>
                        <p class="hint">if view.is_ours { <b>{ text::OURS }{ ". " }</b> }{ view.rests.join("; ") }{ "." }</p>
                    </div>
                }
            }) }
        </section>
    }
}
