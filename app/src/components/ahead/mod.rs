//! The third page: thinking ahead. Several animals of a season, two plans
//! side by side, plans that are shared and kept. It is a program of its
//! own, as the second page is.

mod compare;
mod kept;
mod page;
mod season;
mod share;

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
