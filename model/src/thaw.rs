//! How long a package takes to thaw in the refrigerator, as the sources say it.

use crate::units::{Duration, Mass};

/// What decides how long it takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Piece {
    /// A large roast.
    Large,
    /// A small roast.
    SmallRoast,
    /// Steaks and chops.
    Slices,
    /// A flat pack of ground meat or cubes.
    Loose,
}

impl Piece {
    /// Every one.
    pub const ALL: [Piece; 4] = [Piece::Large, Piece::SmallRoast, Piece::Slices, Piece::Loose];
}

/// How a time is given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pace {
    /// For each pound.
    EachPound(Duration),
    /// For the pack, whatever it weighs.
    InAll(Duration),
}

impl Pace {
    /// For a piece of this mass.
    pub fn time(self, mass: Mass) -> Duration {
        match self {
            Pace::EachPound(hours) => hours * mass.to_pounds(),
            Pace::InAll(hours) => hours,
        }
    }
}
