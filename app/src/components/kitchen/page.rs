//! The page put together.

use yew::prelude::*;

use super::{
    PartProps, cautions, dates, files, freezer, grinder, labels, reading, table_card, work_order, wrapping,
};
use crate::app::use_season;
use crate::components::header::{Place, page};
use crate::platform::address;
use crate::text;
use crate::views::kitchen::all_packed;

/// A part of the page.
#[derive(Clone, Copy)]
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

/// The program's page: the table's, or the one for reading.
#[component]
pub fn KitchenPage() -> Html {
    if address::is_page("read.html") {
        html! { <reading::Reading /> }
    } else {
        html! { <Kitchen /> }
    }
}

/// The table's page.
#[component]
fn Kitchen() -> Html {
    let (state, send) = use_season(None);
    let part = use_state(|| 0);
    let all = use_memo(state.season.clone(), |season| all_packed(season));
    let props = PartProps { state: state.clone(), all, send: send.clone() };
    let shown = match PARTS[*part].0 {
        Part::TableCard => html! { <table_card::TableCard ..props /> },
        Part::Grinder => html! { <grinder::Grinder ..props /> },
        Part::Wrapping => html! { <wrapping::WrappingCard ..props /> },
        Part::Freezer => freezer::view(&props),
        Part::Labels => html! { <>{ dates::view(&props) }<labels::Labels ..props /></> },
        Part::WorkOrder => work_order::view(&props),
        Part::Files => files::view(&props),
        Part::Cautions => cautions::view(),
    };
    page(Place::Kitchen, (&state, &send), (&PARTS.map(|(_, name)| name), &part), shown)
}
