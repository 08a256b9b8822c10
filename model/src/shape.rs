//! The shape of a package before it is wrapped: a block with length, width and thickness.
//!
//! Pieces are blocks as large as the muscle they are cut from, scaled to the animal; a muscle is rounder than
//! its block, so the block errs on the side of more wrap. Loose meat is a slab.

use crate::forecast::Forecast;
use crate::freezer::MEAT;
use crate::packages::{Contents, Package};
use crate::product::{Cut, Product};
use crate::tables::{self, BAGS, BagRow, FLAT_PACK, THICKEST_PACK};
use crate::units::{Length, Mass, Volume};

/// A block. Length is the longer side of its face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Block {
    /// The long way.
    pub length: Length,
    /// Across.
    pub width: Length,
    /// The thin way, as it lies in the freezer.
    pub thickness: Length,
}

impl Block {
    /// A block with this face, the longer side first.
    pub fn new(one: Length, other: Length, thickness: Length) -> Self {
        let (length, width) = if other > one { (other, one) } else { (one, other) };
        Self { length, width, thickness }
    }

    /// The distance round it, across its length.
    pub fn girth(&self) -> Length {
        (self.width + self.thickness) * 2.0
    }

    /// The same block turned a quarter, so that the wrap goes round its length. Its length is then the shorter
    /// side.
    pub(crate) fn turned(&self) -> Self {
        Self { length: self.width, width: self.length, thickness: self.thickness }
    }
}

/// A package as a block, and how its pieces lie in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shape {
    /// The whole package.
    pub block: Block,
    /// Pieces that lie on another piece, each wanting a double sheet below it.
    pub stacked: u32,
}

/// Space between cubes, as a part of a pack of stew. Judgement.
const BETWEEN_CUBES: f64 = 0.1;
/// A patty's thickness. Judgement.
const PATTY: Length = Length::inches(0.5);
/// A sheet of muscle thinner than this is rolled and tied to a roast. Judgement.
const ROLLED: Length = Length::mm(25.0);

/// The shape of a package, loose meat pressed flat ([`crate::sources::Source::FlatPackPage`]).
pub fn shape(forecast: &Forecast, package: &Package) -> Shape {
    match package.contents {
        Contents::Pieces { muscle, cut, pieces: count } => {
            let each = package.mass / f64::from(count.max(1));
            let row = &forecast.muscles[muscle.index()];
            let size = tables::muscle(muscle).size.zip(row.length);
            let one = size.map_or_else(
                || cube(each),
                |(size, length)| {
                    let scale = length / size.length;
                    let (width, thickness) = (size.width * scale, size.thickness * scale);
                    let whole = row.mass.likely() / 2.0;
                    let part = if whole > Mass::ZERO { (each / whole).min(1.0) } else { 1.0 };
                    piece(cut, width, thickness, length * part)
                },
            );
            laid_out(one, count.max(1), package.product != Product::Roast)
        }
        Contents::Patties(patties) => {
            let volume = package.mass / f64::from(patties.max(1)) / MEAT;
            let across = square_side(volume * (4.0 / std::f64::consts::PI), PATTY);
            laid_out(Block::new(across, across, PATTY), patties.max(1), true)
        }
        Contents::Pooled => {
            let loose = Loose::of(forecast, package);
            let thickness = longer(FLAT_PACK.value, loose.thinnest);
            let side = square_side(loose.volume, thickness);
            Shape { block: Block::new(side, side, thickness), stacked: 0 }
        }
    }
}

/// Loose meat on its way into a bag.
#[derive(Clone, Copy, Debug)]
pub struct Loose {
    volume: Volume,
    /// Cubes lie no flatter than they are.
    thinnest: Length,
}

impl Loose {
    /// The pooled meat of a package: cubes with the space between them, of the largest edge that is cut.
    pub fn of(forecast: &Forecast, package: &Package) -> Self {
        let meat = package.mass / MEAT;
        match package.product {
            Product::Stew => {
                let parts = forecast.muscles.iter().flat_map(|muscle| muscle.sides.iter().flatten());
                let edges = parts.filter_map(|part| match part.cut {
                    Cut::Stew(edge) => Some(edge),
                    Cut::Roast(_) | Cut::Steak(_) | Cut::Chop(_) | Cut::Grind | Cut::Discard => None,
                });
                Self { volume: meat / (1.0 - BETWEEN_CUBES), thinnest: edges.fold(Length::ZERO, longer) }
            }
            Product::Grind | Product::Roast | Product::Steak | Product::Chop => {
                Self { volume: meat, thinnest: Length::ZERO }
            }
        }
    }

    /// Pressed flat in a zip bag: over all of it, or over as much as the cubes take lying side by side.
    pub fn in_bag(&self, bag: &BagRow) -> Block {
        let thickness = longer(self.volume / bag.flat, self.thinnest);
        let covered = (self.volume / thickness).to_square_mm() / (bag.width * bag.length).to_square_mm();
        let side = covered.sqrt();
        Block::new(bag.length * side, bag.width * side, thickness)
    }

    /// The smallest bag in which it lies flat, or the largest if it is then no thicker than freezes in a day.
    pub fn bag(&self) -> Option<&'static BagRow> {
        let lies_within = |most: Length| move |bag: &&BagRow| self.volume / bag.flat <= most;
        BAGS.iter()
            .find(lies_within(longer(FLAT_PACK.value, self.thinnest)))
            .or_else(|| BAGS.iter().rev().find(lies_within(THICKEST_PACK.value)))
    }
}

pub(crate) fn longer(one: Length, other: Length) -> Length {
    if other > one { other } else { one }
}

fn square_side(volume: Volume, thickness: Length) -> Length {
    Length::mm((volume / thickness).to_square_mm().sqrt())
}

fn cube(mass: Mass) -> Block {
    let side = Length::cm(libm::cbrt((mass / MEAT).to_litres() * 1000.0));
    Block::new(side, side, side)
}

/// One piece of a muscle of this width and thickness; `along` is how much of its length a roast takes.
fn piece(cut: Cut, width: Length, thickness: Length, along: Length) -> Block {
    match cut {
        Cut::Steak(thick) | Cut::Chop(thick) => Block::new(width, thickness, thick),
        Cut::Roast(_) | Cut::Stew(_) | Cut::Grind | Cut::Discard => {
            if thickness < ROLLED {
                let round = Length::mm((width * thickness).to_square_mm().sqrt());
                Block::new(along, round, round)
            } else {
                Block::new(along, width, thickness)
            }
        }
    }
}

/// Pieces side by side, and if they may be stacked, as many layers as still freeze in a day; the footprint as
/// near a square as it gets.
fn laid_out(piece: Block, pieces: u32, stacks: bool) -> Shape {
    let fit = (THICKEST_PACK.value / piece.thickness).floor() as u32;
    let layers = if stacks { fit.clamp(1, pieces) } else { 1 };
    let in_layer = pieces.div_ceil(layers);
    let layers = pieces.div_ceil(in_layer);
    let face = |columns: u32| {
        let rows = in_layer.div_ceil(columns);
        Block::new(
            piece.length * f64::from(columns),
            piece.width * f64::from(rows),
            piece.thickness * f64::from(layers),
        )
    };
    let around = |block: &Block| (block.length + block.width).to_mm();
    let block =
        (1..=in_layer).map(face).min_by(|one, other| around(one).total_cmp(&around(other))).unwrap_or(piece);
    Shape { block, stacked: pieces - in_layer }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slices_are_stacked_to_two_inches_and_roasts_are_not() {
        let chop = Block::new(Length::mm(70.0), Length::mm(40.0), Length::mm(12.7));
        let eight = laid_out(chop, 8, true);
        assert_eq!(eight.stacked, 6);
        assert_eq!(eight.block, Block::new(Length::mm(80.0), Length::mm(70.0), Length::mm(50.8)));
        let roast = Block::new(Length::mm(200.0), Length::mm(100.0), Length::mm(80.0));
        let two = laid_out(roast, 2, false);
        assert_eq!(two.stacked, 0);
        assert_eq!(two.block, Block::new(Length::mm(200.0), Length::mm(200.0), Length::mm(80.0)));
    }

    #[test]
    fn a_thin_sheet_is_rolled_and_a_thick_muscle_is_not() {
        let cm = Length::cm;
        let whole = Cut::Roast(crate::product::RoastSize::Whole);
        let rolled = piece(whole, cm(9.0), cm(1.0), cm(30.0));
        assert_eq!(rolled, Block::new(cm(30.0), cm(3.0), cm(3.0)));
        let block = piece(whole, cm(9.0), cm(4.0), cm(30.0));
        assert_eq!(block, Block::new(cm(30.0), cm(9.0), cm(4.0)));
    }

    #[test]
    fn a_cube_of_scraps_has_the_volume_of_its_mass() {
        assert!((cube(MEAT * Volume::litres(1.0)).length.to_mm() - 100.0).abs() < 1e-9);
    }
}
