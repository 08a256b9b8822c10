//! Everything that can happen to the page: see [`crate::store`].

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, Side, Sides, View};
use hindsaddle_model::plan::Action;
use hindsaddle_model::season::{Change, Season};

use crate::look::{Naming, Tool};
use crate::notice::Notice;
use crate::plate::Frame;
use crate::store::Topic;
use crate::text::Units;

/// Something that happens.
#[derive(Clone, Debug, PartialEq)]
pub enum Msg {
    /// A change of the plan that is shown.
    Act(Action),
    /// A change of the season.
    Season(Change),
    /// Show another animal.
    Turn(usize),
    /// One step back.
    Undo,
    /// One step forward again.
    Redo,
    /// Pounds or kilograms.
    Units(Units),
    /// Another side of the plate.
    View(View),
    /// To a region, or back to the whole animal.
    Zoom(Option<Region>),
    /// Decide about a muscle, or stop.
    Pick(Option<Muscle>),
    /// Decide for both sides or one.
    Sides(Sides),
    /// Show how a number was worked out, or stop.
    Explain(Option<Topic>),
    /// Closer or farther than a region, by hand; None for the region itself.
    Lens(Option<Frame>),
    /// Another side of the animal in the side views.
    Show(Side),
    /// A tap means something else.
    Take(Tool),
    /// Other names beside the muscles.
    Naming(Naming),
    /// How many layers of the outer side are lifted off.
    Peel(u8),
    /// The sheets for a class, or back to the plan.
    ClassSheets(bool),
    /// A season arrived by link.
    Open(Rc<Season>),
    /// Back to the plan whose place a link took; with `both`, the link's is put aside, too.
    KeepMine {
        /// Whether the link's plan is kept beside it.
        both: bool,
    },
    /// The plan that another took the place of could not be put aside, and why.
    NotAside(Notice),
    /// Say something.
    Say(Notice),
    /// Stop saying it.
    Quiet,
    /// Whether the title travels with the link.
    NamesTravel(bool),
}
