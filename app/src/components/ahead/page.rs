//! The page put together.

use yew::prelude::*;

use super::{PartProps, compare, device, kept, partners, season, share, wishes};
use crate::app::use_season;
use crate::components::header::{Place, page};
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
    let (state, send) = use_season(None);
    let part = use_state(|| 0);
    let props = PartProps { state: state.clone(), send: send.clone() };
    let shown = match PARTS[*part].0 {
        Part::Wishes => html! { <wishes::WishesCard ..props /> },
        Part::Season => html! { <season::SeasonCard ..props /> },
        Part::Partners => html! { <partners::PartnersCard ..props /> },
        Part::Compare => html! { <compare::Compare ..props /> },
        Part::Share => html! { <share::Share ..props /> },
        Part::Kept => html! { <kept::KeptPlans ..props /> },
        Part::Device => html! { <device::Device ..props /> },
    };
    page(Place::Ahead, (&state, &send), (&PARTS.map(|(_, name)| name), &part), shown)
}
