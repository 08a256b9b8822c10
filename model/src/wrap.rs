//! Paper, bags and vacuum rolls: what each package is wrapped in, and the list for the shop.

use std::ops::Add;

use crate::forecast::Forecast;
use crate::packages::{Contents, Package};
use crate::product::Product;
use crate::shape::{self, Block, Loose, Shape, longer};
use crate::tables::{BAGS, PAPER_ROLLS, TURNS, VACUUM_ALLOWANCE, VACUUM_ROLLS};
use crate::units::Length;

/// How paper is folded round a package.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fold {
    /// From a corner, twice round: for bulky and uneven pieces.
    Butcher,
    /// Edges folded down together, one and a half times round.
    Drugstore,
    /// The same by the other published rule, one and a third.
    DrugstoreShort,
    /// A square as long as the roll is wide, the package laid across its corners.
    Square,
}

impl Fold {
    /// Every fold.
    pub const ALL: [Fold; 4] = [Fold::Butcher, Fold::Drugstore, Fold::DrugstoreShort, Fold::Square];
}

/// A zip freezer bag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bag {
    /// About 7 by 8 in.
    Quart,
    /// About 10 1/2 by 11 in.
    Gallon,
}

impl Bag {
    /// Both, small first.
    pub const ALL: [Bag; 2] = [Bag::Quart, Bag::Gallon];
}

/// What a product is wrapped in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wrap {
    /// Freezer paper, coated side to the meat.
    Paper(Fold),
    /// A zip freezer bag, flat, the air pressed out.
    Zip,
    /// A bag cut from a vacuum roll.
    Vacuum,
}

impl Wrap {
    /// Every wrap.
    pub const ALL: [Wrap; 6] = [
        Wrap::Paper(Fold::Butcher),
        Wrap::Paper(Fold::Drugstore),
        Wrap::Paper(Fold::DrugstoreShort),
        Wrap::Paper(Fold::Square),
        Wrap::Zip,
        Wrap::Vacuum,
    ];
}

/// How everything is wrapped.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wrapping {
    /// The wrap of each product, in the order of [`Product::ALL`].
    pub by: [Wrap; 5],
    /// Width of the paper.
    pub roll: Length,
    /// How much more paper, vacuum roll and tape is bought than is used, in percent.
    pub spare_percent: u8,
}

impl Default for Wrapping {
    /// Paper for what has a shape, bags for what is loose, 18 in paper, a tenth to spare (judgement).
    fn default() -> Self {
        let (butcher, drugstore) = (Wrap::Paper(Fold::Butcher), Wrap::Paper(Fold::Drugstore));
        Self {
            by: [butcher, drugstore, drugstore, Wrap::Zip, Wrap::Zip],
            roll: PAPER_ROLLS[1].value,
            spare_percent: 10,
        }
    }
}

/// What one package takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Need {
    /// A sheet off the roll, and tape.
    Sheet {
        /// Off the roll.
        length: Length,
        /// For the seam and both ends.
        tape: Length,
    },
    /// A zip bag.
    Bag(Bag),
    /// A bag off a vacuum roll.
    VacuumBag {
        /// Which roll, by its place in [`VACUUM_ROLLS`].
        roll: usize,
        /// Off the roll.
        length: Length,
    },
}

/// Why a package cannot be wrapped as asked. The way out is another wrap, or a smaller package.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Misfit {
    /// The paper would have to be this wide.
    PaperTooNarrow {
        /// The least width.
        needs: Length,
    },
    /// No zip bag takes it.
    NoBagTakesIt,
    /// No vacuum roll is this wide.
    NoRollTakesIt {
        /// The least width.
        needs: Length,
    },
    /// More roasts than go into one vacuum bag.
    TooManyRoasts {
        /// The most.
        most: u32,
    },
}

/// The most roasts in one vacuum bag. Common practice, no source.
pub const MOST_ROASTS_IN_VACUUM: u32 = 3;
/// A double fold at each end of a paper package, of 1 in ([`crate::sources::Source::NdsuWrap`]).
const END_FOLDS: Length = Length::inches(2.0);
/// Keeps what fits exactly from being refused for rounding.
const SLACK: Length = Length::mm(0.01);
/// A square of paper holds what a sheet this many girths long would, along its diagonal. Judgement.
const SQUARE_GIRTHS: f64 = 4.0 / 3.0;

/// A package with its wrap.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wrapped {
    /// Its shape as it is wrapped.
    pub shape: Shape,
    /// What it takes, or why it cannot be so wrapped.
    pub need: Result<Need, Misfit>,
}

/// How one package is wrapped.
pub fn wrapped(forecast: &Forecast, package: &Package, wrapping: &Wrapping) -> Wrapped {
    let mut shape = shape::shape(forecast, package);
    let need = match wrapping.by[package.product as usize] {
        Wrap::Paper(fold) => paper(&shape.block, fold, wrapping.roll),
        Wrap::Zip => match package.contents {
            Contents::Pooled => {
                let loose = Loose::of(forecast, package);
                match loose.bag() {
                    Some(row) => {
                        shape = Shape { block: loose.in_bag(row), stacked: 0 };
                        Ok(Need::Bag(row.bag))
                    }
                    None => Err(Misfit::NoBagTakesIt),
                }
            }
            Contents::Pieces { .. } | Contents::Patties(_) => zip(&shape.block),
        },
        Wrap::Vacuum => match package.contents {
            Contents::Pieces { pieces, .. }
                if package.product == Product::Roast && pieces > MOST_ROASTS_IN_VACUUM =>
            {
                Err(Misfit::TooManyRoasts { most: MOST_ROASTS_IN_VACUUM })
            }
            Contents::Pieces { .. } | Contents::Pooled | Contents::Patties(_) => vacuum(&shape.block),
        },
    };
    Wrapped { shape, need }
}

/// The sheet of paper that goes round a block: its length off the roll.
///
/// # Errors
/// Paper that is too narrow for either way of laying the block.
pub fn sheet(block: &Block, fold: Fold, roll: Length) -> Result<Length, Misfit> {
    let Some(girths) = TURNS[fold as usize].girths else {
        let diagonal = roll * std::f64::consts::SQRT_2;
        let needs = longer(block.length + block.thickness + END_FOLDS, block.girth() * SQUARE_GIRTHS);
        return if needs <= diagonal + SLACK {
            Ok(roll)
        } else {
            Err(Misfit::PaperTooNarrow { needs: needs * std::f64::consts::FRAC_1_SQRT_2 })
        };
    };
    let width = |block: &Block| block.length + block.thickness + END_FOLDS;
    let turned = block.turned();
    match [*block, turned].iter().find(|block| width(block) <= roll + SLACK) {
        Some(block) => Ok(block.girth() * girths),
        None => Err(Misfit::PaperTooNarrow { needs: width(&turned) }),
    }
}

fn paper(block: &Block, fold: Fold, roll: Length) -> Result<Need, Misfit> {
    // Along the seam and over both ends: judgement.
    let tape = block.length + block.width * 2.0;
    Ok(Need::Sheet { length: sheet(block, fold, roll)?, tape })
}

/// Half of what goes round a block has to go into the mouth, and its length with the end into the bag.
fn zip(block: &Block) -> Result<Need, Misfit> {
    let goes_in = |block: &Block, mouth: Length, depth: Length| {
        block.girth() * 0.5 <= mouth && block.length + block.thickness <= depth
    };
    BAGS.iter()
        .find(|row| [*block, block.turned()].iter().any(|block| goes_in(block, row.width, row.length)))
        .map(|row| Need::Bag(row.bag))
        .ok_or(Misfit::NoBagTakesIt)
}

/// The bag of least area, either way round.
fn vacuum(block: &Block) -> Result<Need, Misfit> {
    let turned = block.turned();
    let mut best: Option<(f64, usize, Length)> = None;
    for (roll, width) in VACUUM_ROLLS.iter().enumerate() {
        for laid in [block, &turned] {
            let length = laid.length + VACUUM_ALLOWANCE.value;
            let area = (length * width.value).to_square_mm();
            if laid.girth() * 0.5 <= width.value && best.is_none_or(|(least, ..)| area < least) {
                best = Some((area, roll, length));
            }
        }
    }
    best.map(|(_, roll, length)| Need::VacuumBag { roll, length })
        .ok_or(Misfit::NoRollTakesIt { needs: block.girth() * 0.5 })
}

/// What is used, bought, or in the cupboard.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Supplies {
    /// Freezer paper of the width that was chosen.
    pub paper: Length,
    /// Freezer tape: masking tape lets go in the cold.
    pub tape: Length,
    /// Double sheets between pieces that lie on each other.
    pub between: u32,
    /// Zip bags, in the order of [`Bag::ALL`].
    pub bags: [u32; 2],
    /// Vacuum roll, in the order of [`VACUUM_ROLLS`].
    pub vacuum: [Length; 2],
    /// One label a package.
    pub labels: u32,
}

impl Add for Supplies {
    type Output = Supplies;
    fn add(self, other: Supplies) -> Supplies {
        Supplies {
            paper: self.paper + other.paper,
            tape: self.tape + other.tape,
            between: self.between + other.between,
            bags: [0, 1].map(|bag: usize| self.bags[bag] + other.bags[bag]),
            vacuum: [0, 1].map(|roll: usize| self.vacuum[roll] + other.vacuum[roll]),
            labels: self.labels + other.labels,
        }
    }
}

impl Supplies {
    /// What is still to be bought when there is already `have`.
    #[must_use]
    pub fn without(self, have: &Supplies) -> Supplies {
        let less = |need: Length, have: Length| if need > have { need - have } else { Length::ZERO };
        Supplies {
            paper: less(self.paper, have.paper),
            tape: less(self.tape, have.tape),
            between: self.between.saturating_sub(have.between),
            bags: [0, 1].map(|bag: usize| self.bags[bag].saturating_sub(have.bags[bag])),
            vacuum: [0, 1].map(|roll: usize| less(self.vacuum[roll], have.vacuum[roll])),
            labels: self.labels.saturating_sub(have.labels),
        }
    }

    /// These and those of another animal.
    #[must_use]
    pub fn with(self, other: &Supplies) -> Supplies {
        Supplies {
            paper: self.paper + other.paper,
            tape: self.tape + other.tape,
            between: self.between + other.between,
            bags: [0, 1].map(|bag: usize| self.bags[bag] + other.bags[bag]),
            vacuum: [0, 1].map(|roll: usize| self.vacuum[roll] + other.vacuum[roll]),
            labels: self.labels + other.labels,
        }
    }

    /// What the packages take, with the spare. A package that does not fit its wrap takes a label and nothing
    /// else.
    pub fn of(packages: &[Wrapped], wrapping: &Wrapping) -> Supplies {
        let mut supplies = Supplies::default();
        for wrapped in packages {
            supplies.labels += 1;
            supplies.between += wrapped.shape.stacked;
            match wrapped.need {
                Ok(Need::Sheet { length, tape }) => {
                    supplies.paper += length;
                    supplies.tape += tape;
                }
                Ok(Need::Bag(bag)) => supplies.bags[bag as usize] += 1,
                Ok(Need::VacuumBag { roll, length }) => supplies.vacuum[roll] += length,
                Err(_) => {}
            }
        }
        let more = 1.0 + f64::from(wrapping.spare_percent) / 100.0;
        supplies.paper = supplies.paper * more;
        supplies.tape = supplies.tape * more;
        supplies.vacuum = supplies.vacuum.map(|length| length * more);
        supplies
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn block(length: f64, width: f64, thickness: f64) -> Block {
        Block::new(Length::inches(length), Length::inches(width), Length::inches(thickness))
    }

    /// By hand, with 3 in to close: 10 x 4 x 2 in goes into an 8 in roll only lengthwise; 8 x 2 x 2 in takes
    /// 11 x 8 in there, and 5 x 11 in across the wide roll.
    #[test]
    fn the_vacuum_bag_of_least_area_is_cut() {
        for (block, expected, inches) in [(block(10.0, 4.0, 2.0), 0, 13.0), (block(8.0, 2.0, 2.0), 1, 5.0)] {
            let Ok(Need::VacuumBag { roll, length }) = vacuum(&block) else { panic!("{block:?}") };
            assert_eq!(roll, expected);
            assert!((length.to_inches() - inches).abs() < 1e-9);
        }
        let Err(Misfit::NoRollTakesIt { needs }) = vacuum(&block(12.0, 9.0, 3.0)) else { panic!("12 in") };
        assert!((needs.to_inches() - 12.0).abs() < 1e-9);
    }

    #[test]
    fn tape_goes_along_the_seam_and_over_both_ends() {
        let need = paper(&block(6.0, 4.0, 2.0), Fold::Drugstore, Length::inches(18.0));
        let Ok(Need::Sheet { tape, .. }) = need else { panic!("18 in") };
        assert!((tape.to_inches() - 14.0).abs() < 1e-9);
    }
}
