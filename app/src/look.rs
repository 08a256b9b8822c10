//! How the plate is looked at, and what a tap on it means. No part of the plan.

use hindsaddle_model::anatomy::{Region, Side, View};
use hindsaddle_model::product::Product;

use crate::plate::Frame;

/// What a tap on the plate is for, and which panel is open under it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tool {
    /// Decide about the muscle.
    Decide,
    /// Make it this; None throws it away.
    Paint(Option<Product>),
    /// Mark a wound there.
    Wound,
    /// Decide; the panel is about names.
    Names,
    /// Decide; the panel lifts muscles off.
    Peel,
    /// Decide; the panel saves the picture.
    Save,
}

/// What is written beside the muscles.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Naming {
    /// Nothing.
    Off,
    /// What the trade calls them.
    Common,
    /// What anatomy calls them.
    Anatomical,
}

/// How the plate is looked at. No part of the plan, so no step of its history.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// The side of the plate.
    pub view: View,
    /// The side of the animal that the side views show.
    pub side: Side,
    /// The region zoomed to.
    pub region: Option<Region>,
    /// Closer or farther than that, by hand.
    pub lens: Option<Frame>,
    /// How many layers of the outer side are lifted off.
    pub peel: u8,
    /// What is written beside the muscles.
    pub naming: Naming,
}

impl Look {
    /// Layers lifted off: none but from the outer side.
    pub fn lifted(&self) -> u8 {
        if self.view == View::Outer { self.peel } else { 0 }
    }
}
