//! The third page: thinking ahead. Several animals of a season, two plans
//! side by side, plans that are shared and kept, a plan made from
//! wishes, and packages dealt to partners. It is a program of its
//! own, as the second page is.

mod compare;
mod device;
mod kept;
mod page;
mod partners;
mod season;
mod share;
mod wishes;

use std::rc::Rc;

use yew::prelude::*;

pub use page::AheadPage;

use crate::store::{Msg, State};

/// What every part of the page is given.
#[derive(Clone, PartialEq, Properties)]
pub(super) struct PartProps {
    /// The page's state.
    pub state: Rc<State>,
    /// Told what happens.
    pub send: Callback<Msg>,
}
