//! The plan for somebody else: what goes along, the device's own way of sharing, a link, and a code from screen to
//! screen.

use yew::prelude::*;

use super::PartProps;
use crate::components::code::Code;
use crate::components::controls::{Choosable, segments};
use crate::components::field::tick;
use crate::components::plan_file::save_plan;
use crate::platform::{address, clipboard, screen, share};
use crate::store::{Msg, Notice};
use crate::text;
use crate::views::season::what_travels;

/// The element that fills the screen.
const CODE: &str = "code";

/// The pages a link can lead to: the one for reading, and the plan's own.
const PAGES: [&str; 2] = ["read.html", ""];

/// The card.
#[component]
pub(super) fn Share(props: &PartProps) -> Html {
    let whom = use_state(|| 0);
    let state = &props.state;
    let link = state.link();
    let of_plan = address::of_page(PAGES[*whom], &link);
    let on_whom = {
        let whom = whom.clone();
        Callback::from(move |place: usize| whom.set(place))
    };
    let on_names = props.send.reform(Msg::NamesTravel);
    let on_copy = {
        let (send, of_plan) = (props.send.clone(), of_plan.clone());
        Callback::from(move |_: MouseEvent| {
            let send = send.clone();
            clipboard::copy(&of_plan, move |copied| {
                send.emit(Msg::Say(if copied { Notice::Copied } else { Notice::NotCopied }));
            });
        })
    };
    let on_share = {
        let of_plan = of_plan.clone();
        Callback::from(move |_: MouseEvent| share::offer(text::page(0), &of_plan))
    };
    let on_file = {
        let state = state.clone();
        props.send.reform(move |_: MouseEvent| save_plan(&state))
    };
    html! {
        <section class="card" aria-label={text::SHARE}>
            <h2>{ text::SHARE }</h2>
            <h3>{ text::WHAT_TRAVELS }</h3>
            <ul class="plain-list">{ for what_travels(&state.season, state.names_travel, state.units).into_iter().map(|line| html! { <li key={line.clone()}>{ line }</li> }) }</ul>
            { tick(text::NAMES_TRAVEL, state.names_travel, &on_names) }
            if address::is_one_file() {
                <p>{ text::NO_ADDRESS }</p>
                <button type="button" class="tool wide" onclick={on_file}>{ text::SAVE_PLAN }</button>
            } else {
            { segments(text::FOR_WHOM, text::WHOM.map(Choosable::new).to_vec(), Some(*whom), &on_whom) }
            <p class="hint">{ text::WHOM_HINTS[*whom] }</p>
            <div class="row-tools">
                if share::is_possible() { <button type="button" class="tool" onclick={on_share}>{ text::SHARE_BY }</button> }
                <button type="button" class="tool" onclick={on_copy}>{ text::COPY_LINK }</button>
                <button type="button" class="tool" onclick={on_file}>{ text::SAVE_PLAN }</button>
            </div>
            <p><a href="single.html" download="hindsaddle.html">{ text::ONE_FILE }</a>{ " " }{ text::ONE_FILE_HINT }</p>
            { match Code::of(&of_plan) {
                Some(code) => html! {
                    <>
                        <h3>{ text::CODE }</h3>
                        <p>{ text::CODE_HINT }</p>
                        <div id={CODE} class="code"><svg viewBox={code.view_box} role="img" aria-label={text::CODE_ALT}><path d={code.modules} /></svg></div>
                        <button type="button" class="tool wide" onclick={|_: MouseEvent| screen::fill(CODE)}>{ text::FULL_SCREEN }</button>
                    </>
                },
                None => html! { <p>{ text::NO_CODE }</p> },
            } }
            }
        </section>
    }
}
