//! The fourth page: learning and teaching. Each muscle and two side by side, a first deer in ten steps, practice with a
//! link for a class, the words, and every source. It is a program of its own, as the other pages are.

mod class_lesson;
mod compare;
mod field_guide;
mod learn_plate;
mod muscles;
mod page;
mod picture;
mod practice;
mod round;
mod sources;
mod walk;
mod words;

use std::rc::Rc;

use yew::prelude::*;

pub use page::LearnPage;

use crate::store::{Msg, State};

/// What every part of the page is given.
#[derive(Clone, PartialEq, Properties)]
pub(super) struct PartProps {
    /// The page's state.
    pub state: Rc<State>,
    /// Width of the window in CSS pixels.
    pub width: f64,
    /// Told what happens.
    pub send: Callback<Msg>,
}
