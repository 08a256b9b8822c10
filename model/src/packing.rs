//! Pieces to packages: by people at the table, by pieces, or by weight.

use crate::product::Product;
use crate::tables;
use crate::units::Mass;

/// How much raw boneless meat a person is served.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Appetite {
    /// Four servings a pound.
    Light,
    /// Three servings a pound.
    Hearty,
}

impl Appetite {
    /// Both.
    pub const ALL: [Appetite; 2] = [Appetite::Light, Appetite::Hearty];
}

/// How a product is divided into packages.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PackBy {
    /// Enough for everybody at the table.
    Table,
    /// A number of pieces.
    Pieces(u8),
    /// A weight.
    Weight(Mass),
}

/// How everything is packed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Packing {
    /// People at the table: 1 to [`MOST_PEOPLE`].
    pub people: u8,
    /// How much each eats.
    pub appetite: Appetite,
    /// The rule of each product, in the order of [`Product::ALL`].
    pub by: [PackBy; 5],
}

/// The most people a package is made for.
pub const MOST_PEOPLE: u8 = 12;
/// The most pieces in a package.
pub const MOST_PIECES: u8 = 24;
/// Lightest and heaviest package by weight.
pub const PACK_WEIGHT_RANGE: (Mass, Mass) = (Mass::grams(100.0), Mass::grams(5000.0));

/// A remainder under this part of a package is shared among the others instead of being packed alone; a
/// package may be this much short of what the table needs. Judgement.
const TOLERANCE: f64 = 0.1;

impl Default for Packing {
    /// Four hearty eaters; a roast a pack, steaks and chops by the table, stew and ground meat by the pound
    /// (ground packs of 1 to 2 lb: [`crate::sources::Source::MsuFreezer`]).
    fn default() -> Self {
        let pound = PackBy::Weight(Mass::grams(454.0));
        Self {
            people: 4,
            appetite: Appetite::Hearty,
            by: [PackBy::Pieces(1), PackBy::Table, PackBy::Table, pound, pound],
        }
    }
}

impl Packing {
    /// The rule of a product.
    pub fn rule(&self, product: Product) -> PackBy {
        self.by[product as usize]
    }

    /// Raw meat for everybody at the table.
    pub fn table(&self) -> Mass {
        tables::portion(self.appetite).raw * f64::from(self.people)
    }

    /// How many pieces of weight `each` go into one package of `product`: at least one.
    pub fn pieces_a_pack(&self, product: Product, each: Mass) -> u32 {
        match self.rule(product) {
            PackBy::Pieces(pieces) => u32::from(pieces.max(1)),
            PackBy::Table => pieces_toward(self.table(), each),
            PackBy::Weight(weight) => pieces_toward(weight, each),
        }
    }

    /// The weight of one package of loose meat (stew, ground): a package counted in pieces makes no sense
    /// there and is read as one for the table.
    pub fn loose_pack(&self, product: Product) -> Mass {
        match self.rule(product) {
            PackBy::Weight(weight) => weight,
            PackBy::Table | PackBy::Pieces(_) => self.table(),
        }
    }
}

fn pieces_toward(target: Mass, each: Mass) -> u32 {
    if each <= Mass::ZERO {
        return 1;
    }
    ((target / each - TOLERANCE).ceil() as u32).clamp(1, u32::from(MOST_PIECES))
}

/// Packages of `pieces` pieces, so many a pack.
pub fn packs_of_pieces(pieces: u32, a_pack: u32) -> u32 {
    pieces.div_ceil(a_pack.max(1))
}

/// Packages of loose meat.
pub fn packs_of_loose(mass: Mass, pack: Mass) -> u32 {
    if mass <= Mass::ZERO {
        return 0;
    }
    ((mass / pack - TOLERANCE).ceil() as u32).max(1)
}

/// The last of `packs` packages of loose meat, if it is short; if not, the remainder is shared among them.
pub fn short_last(mass: Mass, pack: Mass, packs: u32) -> Option<Mass> {
    let last = mass - pack * f64::from(packs.saturating_sub(1));
    (packs > 0 && last < pack * (1.0 - TOLERANCE)).then_some(last)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_remainder_is_shared_out_or_packed_short() {
        let pound = Mass::pounds(1.0);
        assert_eq!(packs_of_loose(Mass::pounds(10.05), pound), 10);
        assert_eq!(packs_of_loose(Mass::pounds(10.5), pound), 11);
        assert_eq!(packs_of_loose(Mass::ounces(1.0), pound), 1);
        assert_eq!(packs_of_loose(Mass::ZERO, pound), 0);
    }

    #[test]
    fn a_pack_for_the_table_holds_enough_pieces() {
        let packing = Packing::default();
        assert_eq!(packing.pieces_a_pack(Product::Steak, Mass::grams(150.0)), 4);
        assert_eq!(packing.pieces_a_pack(Product::Steak, Mass::kilograms(2.0)), 1);
    }
}
