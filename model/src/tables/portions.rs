//! How much raw boneless meat a person is served.

use crate::packing::Appetite;
use crate::sources::{Grade, Source};
use crate::units::Mass;

/// Raw boneless meat for one person.
#[derive(Debug)]
pub struct PortionRow {
    /// Which appetite.
    pub appetite: Appetite,
    /// Raw weight.
    pub raw: Mass,
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

/// Both portions, in the order of [`Appetite::ALL`].
pub static PORTIONS: [PortionRow; 2] = [
    PortionRow {
        appetite: Appetite::Light,
        raw: Mass::ounces(4.0),
        grade: Grade::B,
        source: Source::IowaPortions,
    },
    PortionRow {
        appetite: Appetite::Hearty,
        raw: Mass::pounds(1.0 / 3.0),
        grade: Grade::C,
        source: Source::ExtensionPortions,
    },
];

/// The portion for an appetite.
pub fn portion(appetite: Appetite) -> &'static PortionRow {
    &PORTIONS[appetite as usize]
}
