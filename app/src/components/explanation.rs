//! How a number was worked out, over the page.

use yew::prelude::*;

use super::opened::Opened;
use crate::store::{Msg, State, Topic};
use crate::text;
use crate::views::explain::explain;

const CLOSE: &str = "explanation-close";

/// The dialog.
pub fn explanation(state: &State, topic: Topic, send: &Callback<Msg>) -> Html {
    let working = explain(state, topic);
    let close = send.reform(|_: MouseEvent| Msg::Explain(None));
    html! {
        <div class="veil">
            <section class="dialog" role="dialog" aria-modal="true" aria-label={text::how(&working.title)}>
                <div class="card-head">
                    <h2>{ &working.title }</h2>
                    <button id={CLOSE} type="button" class="tool" onclick={close}>{ text::CLOSE }</button>
                </div>
                <Opened focus={CLOSE} />
                <p class="answer">{ &working.answer }</p>
                <h3>{ text::WORKED_OUT }</h3>
                { for working.steps.iter().map(|step| html! { <p key={step.clone()}>{ step }</p> }) }
                <h3>{ text::INPUTS }</h3>
                <dl class="inputs">
                    { for working.inputs.iter().map(|input| html! {
                        <div key={input.name.clone()} class="input">
                            <dt>{ &input.name }</dt>
                            <dd class="value">{ &input.value } <span class="ends">{ &input.spread }</span></dd>
                            <dd class="source">{ input.grade }{ ". " }{ &input.source }</dd>
                        </div>
                    }) }
                </dl>
                <p class="hint">{ text::ESTIMATES }</p>
            </section>
        </div>
    }
}
