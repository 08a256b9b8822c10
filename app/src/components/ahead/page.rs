//! The page put together.

use std::rc::Rc;

use yew::prelude::*;

use super::{PartProps, compare, device, kept, partners, season, share, wishes};
use crate::app::{opening, use_listeners, use_memory};
use crate::components::NoticeBar;
use crate::components::header::{Place, page_header, parts};
use crate::store::{Msg, State};
use crate::text;

/// A part of the page.
#[derive(Clone, Copy)]
enum Part {
    Wishes,
    Season,
    Partners,
    Compare,
    Share,
    Kept,
    Device,
}

const PARTS: [(Part, &str); 7] = [
    (Part::Wishes, text::WISHES),
    (Part::Season, text::SEASON),
    (Part::Partners, text::PARTNERS),
    (Part::Compare, text::COMPARE),
    (Part::Share, text::SHARE),
    (Part::Kept, text::KEPT_PLANS),
    (Part::Device, text::DEVICE),
];

/// The page.
#[component]
pub fn AheadPage() -> Html {
    let state = use_reducer(opening);
    use_memory(&state, None);
    use_listeners(&state);
    let part = use_state(|| 0);
    let send = {
        let dispatch = state.dispatcher();
        use_callback((), move |message: Msg, ()| dispatch.dispatch(message))
    };
    let shared: Rc<State> = Rc::new((*state).clone());
    let props = PartProps { state: shared.clone(), send: send.clone() };
    html! {
        <div class="page kitchen">
            { page_header(Place::Ahead, &shared, &send) }
            <NoticeBar notice={state.notice.clone()} units={state.units} send={send.clone()} />
            { parts(&PARTS.map(|(_, name)| name), &part) }
            <main class="kitchen-part">
                { match PARTS[*part].0 {
                    Part::Wishes => html! { <wishes::WishesCard ..props /> },
                    Part::Season => html! { <season::SeasonCard ..props /> },
                    Part::Partners => html! { <partners::PartnersCard ..props /> },
                    Part::Compare => html! { <compare::Compare ..props /> },
                    Part::Share => html! { <share::Share ..props /> },
                    Part::Kept => html! { <kept::KeptPlans ..props /> },
                    Part::Device => html! { <device::Device ..props /> },
                } }
            </main>
        </div>
    }
}
