//! The page put together.

use std::rc::Rc;

use yew::prelude::*;

use super::{PartProps, cautions, dates, files, freezer, grinder, labels, table_card, work_order, wrapping};
use crate::app::{opening, use_listeners, use_memory};
use crate::components::NoticeBar;
use crate::components::header::turns;
use crate::store::{Msg, State};
use crate::text;
use crate::views::kitchen::packed;

/// A part of the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Part {
    TableCard,
    Grinder,
    Wrapping,
    Freezer,
    Labels,
    WorkOrder,
    Files,
    Cautions,
}

const PARTS: [(Part, &str); 8] = [
    (Part::TableCard, text::TABLE_CARD),
    (Part::Grinder, text::GRINDER),
    (Part::Wrapping, text::WRAPPING),
    (Part::Freezer, text::FREEZER),
    (Part::Labels, text::LABELS),
    (Part::WorkOrder, text::WORK_ORDER),
    (Part::Files, text::FILES),
    (Part::Cautions, text::CAUTIONS),
];

/// The page.
#[component]
pub fn KitchenPage() -> Html {
    let state = use_reducer(opening);
    use_memory(&state);
    use_listeners(&state);
    let part = use_state(|| Part::TableCard);
    let send = {
        let dispatch = state.dispatcher();
        use_callback((), move |message: Msg, ()| dispatch.dispatch(message))
    };
    let packed =
        use_memo((state.plan.clone(), state.forecast.clone()), |(plan, forecast)| packed(plan, forecast));
    let shared: Rc<State> = Rc::new((*state).clone());
    let props = PartProps { state: shared.clone(), packed, send: send.clone() };
    html! {
        <div class="page kitchen">
            { header(&shared, &send) }
            <NoticeBar notice={state.notice.clone()} units={state.units} send={send.clone()} />
            <nav class="parts" aria-label={text::PARTS_OF_KITCHEN}>
                { for PARTS.into_iter().map(|(of, name)| {
                    let part = part.clone();
                    html! { <button key={name} type="button" class="segment" aria-pressed={(*part == of).to_string()} onclick={move |_| part.set(of)}>{ name }</button> }
                }) }
            </nav>
            <main class="kitchen-part">
                { match *part {
                    Part::TableCard => html! { <table_card::TableCard ..props /> },
                    Part::Grinder => html! { <grinder::Grinder ..props /> },
                    Part::Wrapping => html! { <wrapping::WrappingCard ..props /> },
                    Part::Freezer => freezer::view(&props),
                    Part::Labels => html! { <>{ dates::view(&props) }<labels::Labels ..props /></> },
                    Part::WorkOrder => work_order::view(&props),
                    Part::Files => files::view(&props),
                    Part::Cautions => cautions::view(),
                } }
            </main>
        </div>
    }
}

fn header(state: &Rc<State>, send: &Callback<Msg>) -> Html {
    html! {
        <header class="header">
            <div class="brand"><h1>{ text::KITCHEN }</h1><p class="motto">{ text::animal_line(&state.plan, state.units) }</p></div>
            <div class="tools">
                { turns(state, send) }
                <a class="tool" href={format!("./#{}", state.link())}>{ text::TO_PLAN }</a>
            </div>
        </header>
    }
}
