//! How a number was worked out, over the page.

use std::rc::Rc;

use yew::prelude::*;

use crate::platform::focus;
use crate::store::{Msg, State, Topic};
use crate::text;
use crate::views::explain::explain;

/// Properties of [`Explanation`].
#[derive(PartialEq, Properties)]
pub struct ExplanationProps {
    /// The page's state.
    pub state: Rc<State>,
    /// The number.
    pub topic: Topic,
    /// Told what happens.
    pub send: Callback<Msg>,
}

const CLOSE: &str = "explanation-close";

/// The dialog.
#[component]
pub fn Explanation(props: &ExplanationProps) -> Html {
    use_effect_with((), |()| focus::focus(CLOSE));
    let working = explain(&props.state, props.topic);
    let close = {
        let send = props.send.clone();
        Callback::from(move |_: MouseEvent| send.emit(Msg::Explain(None)))
    };
    html! {
        <div class="veil">
            <section class="dialog" role="dialog" aria-modal="true" aria-label={text::how(&working.title)}>
                <div class="card-head">
                    <h2>{ &working.title }</h2>
                    <button id={CLOSE} type="button" class="tool" onclick={close}>{ text::CLOSE }</button>
                </div>
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
