//! Every caution on one page.

use yew::prelude::*;

use crate::caution::Caution;
use crate::text;

/// The page.
pub(super) fn view() -> Html {
    html! {
        <section class="card" aria-label={text::CAUTIONS}>
            <h2>{ text::CAUTIONS }</h2>
            <dl class="cautions">
                { for Caution::ALL.map(text::caution).into_iter().map(|(about, says)| html! {
                    <div key={about}><dt>{ about }</dt><dd>{ says }</dd></div>
                }) }
            </dl>
            <p class="answer">{ text::CAUTION_FOOT }</p>
        </section>
    }
}
