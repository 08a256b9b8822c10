//! Paper, bags and vacuum rolls: sizes, and how much a package takes.

use super::fact::{Fact, fact};
use crate::sources::{Grade, Source};
use crate::units::{Area, Length};
use crate::wrap::{Bag, Fold};

/// How often a sheet goes round, as a length of girths.
#[derive(Debug)]
pub struct TurnRow {
    /// Which fold.
    pub fold: Fold,
    /// Sheet over girth; none where the sheet is as long as the roll is wide.
    pub girths: Option<f64>,
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

/// Every fold, in the order of [`Fold::ALL`]. The two rules for the drugstore fold disagree; the longer sheet
/// is the default.
pub static TURNS: [TurnRow; 4] = [
    TurnRow { fold: Fold::Butcher, girths: Some(2.0), grade: Grade::A, source: Source::NdsuWrap },
    TurnRow { fold: Fold::Drugstore, girths: Some(1.5), grade: Grade::A, source: Source::NdsuWrap },
    TurnRow {
        fold: Fold::DrugstoreShort,
        girths: Some(4.0 / 3.0),
        grade: Grade::B,
        source: Source::ApplianceMeat,
    },
    TurnRow { fold: Fold::Square, girths: None, grade: Grade::D, source: Source::CommonPractice },
];

/// Widths of freezer paper.
pub static PAPER_ROLLS: [Fact<Length>; 3] = [
    fact(Length::inches(15.0), Grade::D, Source::TradeSizes),
    fact(Length::inches(18.0), Grade::D, Source::TradeSizes),
    fact(Length::inches(24.0), Grade::D, Source::TradeSizes),
];

/// Widths of vacuum roll, flat, narrow first.
pub static VACUUM_ROLLS: [Fact<Length>; 2] = [
    fact(Length::inches(8.0), Grade::D, Source::TradeSizes),
    fact(Length::inches(11.0), Grade::D, Source::TradeSizes),
];

/// How much longer than its content a vacuum bag is cut.
pub static VACUUM_ALLOWANCE: Fact<Length> = fact(Length::inches(3.0), Grade::C, Source::VacuumPage);

/// How thick ground meat is pressed.
pub static FLAT_PACK: Fact<Length> = fact(Length::inches(1.0), Grade::C, Source::FlatPackPage);

/// A zip freezer bag.
#[derive(Debug)]
pub struct BagRow {
    /// Which.
    pub bag: Bag,
    /// Across the mouth, flat.
    pub width: Length,
    /// From the bottom to the zip.
    pub length: Length,
    /// What a slab can cover with the air pressed out and the zip closed: about five sixths of it (judgement).
    pub flat: Area,
    /// How good the size is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

/// Both bags, in the order of [`Bag::ALL`].
pub static BAGS: [BagRow; 2] = [
    BagRow {
        bag: Bag::Quart,
        width: Length::inches(7.0),
        length: Length::inches(8.0),
        flat: Area::square_inches(45.0),
        grade: Grade::C,
        source: Source::QuartPage,
    },
    BagRow {
        bag: Bag::Gallon,
        width: Length::inches(10.5),
        length: Length::inches(11.0),
        flat: Area::square_inches(100.0),
        grade: Grade::D,
        source: Source::TradeSizes,
    },
];
