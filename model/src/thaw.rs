//! How long a package takes to thaw in the refrigerator, as the sources say it.

use crate::product::Product;
use crate::tables::THAW;
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

/// A roast from this weight on is a large one. Judgement: the sources' examples are one of 3 lb and one of 5.
pub const LARGE_ROAST: Mass = Mass::pounds(4.0);

/// How long a package of this product and mass thaws in the refrigerator: what the quickest source says and what the
/// slowest.
pub fn thawing_time(product: Product, mass: Mass) -> (Duration, Duration) {
    let piece = match product {
        Product::Roast if mass >= LARGE_ROAST => Piece::Large,
        Product::Roast => Piece::SmallRoast,
        Product::Steak | Product::Chop => Piece::Slices,
        Product::Stew | Product::Grind => Piece::Loose,
    };
    let times = THAW.iter().filter(|row| row.piece == piece).flat_map(|row| [row.pace.0, row.pace.1]);
    let hours = times.map(|pace| pace.time(mass).to_hours());
    let (low, high) =
        hours.fold((f64::INFINITY, 0.0), |(low, high), hours| (hours.min(low), hours.max(high)));
    (Duration::hours(low), Duration::hours(high))
}
