//! May this muscle become that? A refusal has a reason and a way out; nothing is changed silently.

use crate::anatomy::Muscle;
use crate::animal::AnimalError;
use crate::kitchen::KitchenError;
use crate::partners::PartnersError;
use crate::product::{self, Cut, Product, RoastSize};
use crate::tables;
use crate::units::{Length, Mass};
use crate::wishes::WishError;

/// Why a product is a poor choice, wants care, or is not possible. The sentence is the page's.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// A chop is a slice of the loin; this muscle has no such shape.
    NoLoinShape,
    /// The toughest of the round, coarse-grained.
    CoarseAndTough,
    /// Firm at both ends, best in the middle.
    ToughEnds,
    /// Several muscles with seams between them: seam it apart first.
    SeamsInside,
    /// One of the best pieces; this use wastes it.
    BestPiece,
    /// Tendons never soften by quick heat.
    TendonsStayHard,
    /// Tendons clog the grinder unless they are trimmed out.
    TendonsClog,
    /// Only scraps.
    Scraps,
    /// A sheet of gristle runs through the middle: fillet it out first.
    SheetInside,
    /// Looks like tenderloin and is not.
    LooksTender,
    /// Tendon plates inside, worse in old animals.
    InnerTendons,
    /// Too thin for this.
    Thin,
    /// Small, with tendons at both ends.
    SmallWithTendons,
    /// A sheet a few millimetres thick.
    ThinSheet,
    /// Thin ropes.
    ThinRopes,
    /// Many layers and sheets.
    Layers,
    /// Tough, with hard fat that tastes.
    ToughHardFat,
}

/// What is said of a muscle as a product.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// A good use; with a reason, one that wants care.
    Allowed(Option<Reason>),
    /// A poor use, allowed with the reason shown.
    Discouraged(Reason),
    /// Refused.
    Impossible(Reason),
}

/// What is said of `muscle` as `product`.
pub fn verdict(muscle: Muscle, product: Product) -> Verdict {
    tables::muscle(muscle).rules[product as usize]
}

/// Why a change was refused.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Refusal {
    /// The animal is not believed.
    Animal(AnimalError),
    /// The muscle cannot be that product.
    Impossible {
        /// Which muscle.
        muscle: Muscle,
        /// What was asked.
        product: Product,
        /// Why not.
        reason: Reason,
        /// A use that is possible.
        instead: Product,
    },
    /// A slice thinner or thicker than a knife makes.
    ThicknessOutOfRange {
        /// Thinnest.
        least: Length,
        /// Thickest.
        most: Length,
    },
    /// A slice or roast longer than the muscle.
    LongerThanMuscle {
        /// Which muscle.
        muscle: Muscle,
        /// How long it is on this animal, in the middle case.
        length: Length,
    },
    /// A roast weight outside the range.
    RoastWeightOutOfRange {
        /// Lightest.
        least: Mass,
        /// Heaviest.
        most: Mass,
    },
    /// A roast length outside the range.
    RoastLengthOutOfRange {
        /// Shortest.
        least: Length,
        /// Longest.
        most: Length,
    },
    /// A stew cube outside the range.
    CubeOutOfRange {
        /// Smallest.
        least: Length,
        /// Largest.
        most: Length,
    },
    /// The parts of a muscle do not add up to the whole.
    PartsDoNotAddUp {
        /// What they add to, in percent.
        total: u32,
    },
    /// A part of nothing.
    EmptyPart,
    /// More parts than a muscle may have.
    TooManyParts {
        /// The most allowed.
        most: usize,
    },
    /// Scraps have no length to divide.
    NoLengthToDivide {
        /// Which group.
        muscle: Muscle,
    },
    /// People at the table outside the range.
    PeopleOutOfRange {
        /// The most allowed.
        most: u8,
    },
    /// Pieces in a pack outside the range.
    PiecesOutOfRange {
        /// The most allowed.
        most: u8,
    },
    /// A pack weight outside the range.
    PackWeightOutOfRange {
        /// Lightest.
        least: Mass,
        /// Heaviest.
        most: Mass,
    },
    /// A weight on the scale that is none.
    WeighingOutOfRange {
        /// Lightest.
        least: Mass,
        /// Heaviest.
        most: Mass,
    },
    /// Days of hanging beyond the range.
    HungTooLong {
        /// The most allowed.
        most: u8,
    },
    /// Something about packing and freezing cannot be.
    Kitchen(KitchenError),
    /// More wounds than are computed.
    TooManyWounds {
        /// The most allowed.
        most: usize,
    },
    /// A wound beside the animal, or larger than is computed.
    WoundOffThePlate,
    /// What is wished cannot be.
    Wishes(WishError),
    /// Partners that cannot be.
    Partners(PartnersError),
    /// More animals than a season holds.
    TooManyAnimals {
        /// The most allowed.
        most: usize,
    },
    /// A title that is too long or holds what cannot be printed.
    Title {
        /// The most characters allowed.
        most: usize,
    },
}

/// Whether `muscle` may become `cut` on an animal where it is `length` long (none: not known).
///
/// # Errors
/// A product the muscle cannot be, or a size outside its range, or longer than the muscle.
pub fn check(muscle: Muscle, cut: Cut, length: Option<Length>) -> Result<(), Refusal> {
    if let Some(product) = cut.product()
        && let Verdict::Impossible(reason) = verdict(muscle, product)
    {
        return Err(Refusal::Impossible { muscle, product, reason, instead: tables::muscle(muscle).usual });
    }
    match cut {
        Cut::Roast(RoastSize::Whole) | Cut::Grind | Cut::Discard => Ok(()),
        Cut::Roast(RoastSize::Weight(weight)) => {
            let (least, most) = product::ROAST_WEIGHT_RANGE;
            if weight >= least && weight <= most {
                Ok(())
            } else {
                Err(Refusal::RoastWeightOutOfRange { least, most })
            }
        }
        Cut::Roast(RoastSize::Length(long)) => {
            let (least, most) = product::ROAST_LENGTH_RANGE;
            if long < least || long > most {
                return Err(Refusal::RoastLengthOutOfRange { least, most });
            }
            fits(muscle, long, length)
        }
        Cut::Steak(thick) | Cut::Chop(thick) => {
            let (least, most) = product::THICKNESS_RANGE;
            if thick >= least && thick <= most {
                fits(muscle, thick, length)
            } else {
                Err(Refusal::ThicknessOutOfRange { least, most })
            }
        }
        Cut::Stew(edge) => {
            let (least, most) = product::CUBE_RANGE;
            if edge >= least && edge <= most { Ok(()) } else { Err(Refusal::CubeOutOfRange { least, most }) }
        }
    }
}

fn fits(muscle: Muscle, wanted: Length, length: Option<Length>) -> Result<(), Refusal> {
    match length {
        Some(length) if wanted > length => Err(Refusal::LongerThanMuscle { muscle, length }),
        Some(_) | None => Ok(()),
    }
}
