//! How long a package takes to thaw in the refrigerator, and what is left of it when it is cooked.

use crate::packages::{Contents, Package};
use crate::product::Product;
use crate::sources::Source;
use crate::tables::{COOKED_YIELD, THAW};
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

    /// What a package is; a roast is large from [`LARGE`] up.
    pub fn of(package: &Package) -> Piece {
        let pieces = match package.contents {
            Contents::Pieces { pieces, .. } => pieces.max(1),
            Contents::Pooled | Contents::Patties(_) => 1,
        };
        match package.product {
            Product::Roast if package.mass / f64::from(pieces) >= LARGE => Piece::Large,
            Product::Roast => Piece::SmallRoast,
            Product::Steak | Product::Chop => Piece::Slices,
            Product::Stew | Product::Grind => Piece::Loose,
        }
    }
}

/// From this weight up a roast is large. Judgement: the sources do not say.
pub const LARGE: Mass = Mass::pounds(4.0);

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

/// Shortest and longest time in the refrigerator, as each source has it.
pub fn thaw(piece: Piece, mass: Mass) -> impl Iterator<Item = (Duration, Duration, Source)> {
    THAW.iter()
        .filter(move |row| row.piece == piece)
        .map(move |row| (row.pace.0.time(mass), row.pace.1.time(mass), row.source))
}

/// The longest of them: when to take it out of the freezer.
pub fn thaw_at_most(piece: Piece, mass: Mass) -> Duration {
    thaw(piece, mass).map(|(_, most, _)| most).fold(Duration::default(), |a, b| if b > a { b } else { a })
}

/// What raw meat is likely to weigh when it is cooked.
pub fn cooked(raw: Mass) -> Mass {
    raw * COOKED_YIELD.spread.likely()
}
