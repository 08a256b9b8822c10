//! Fat in meat, what is added to it, and how it is ground.

use super::fact::{Fact, fact};
use super::yields::{Figure, figure};
use crate::fat::{FatContent, NamedFat};
use crate::grind::Plate;
use crate::sources::{Grade, Source};
use crate::units::{Length, Temperature};

/// Fat of lean deer meat. The energy was read; the percent is from memory and closes the energy.
pub static DEER_FAT: Fact<FatContent> = fact(FatContent::percent(2.42), Grade::B, Source::UsdaDeer);

/// A fat that is bought in.
#[derive(Debug)]
pub struct FatRow {
    /// Which.
    pub fat: NamedFat,
    /// How much of it is fat; fat tissue is never all fat.
    pub content: Fact<FatContent>,
}

/// The fats that are named, in the order of [`NamedFat::ALL`].
pub static FATS: [FatRow; 2] = [
    FatRow {
        fat: NamedFat::PorkBackFat,
        content: fact(FatContent::percent(88.69), Grade::A, Source::UsdaBackfat),
    },
    FatRow {
        fat: NamedFat::BeefFat,
        content: fact(FatContent::percent(70.9), Grade::C, Source::UsdaBeefFat),
    },
];

/// Target of a burger, percent; twice that is common.
pub static BURGER_FAT: Figure = figure(10.0, 10.0, 20.0, Grade::C, Source::HunterBurger);
/// Target of sausage, percent; the middle is judgement.
pub static SAUSAGE_FAT: Figure = figure(20.0, 25.0, 30.0, Grade::C, Source::HunterBurger);
/// The most fat that "ground beef" may hold: a measure to compare with, no rule for venison.
pub static FAT_LIMIT: Fact<FatContent> = fact(FatContent::percent(30.0), Grade::C, Source::BeefSlides);

/// The meat is best this cold when it is ground.
pub static GRIND_BEST: Fact<Temperature> = fact(Temperature::fahrenheit(35.0), Grade::C, Source::BeefSlides);
/// It goes back to the cold above this.
pub static GRIND_WARMEST: Fact<Temperature> =
    fact(Temperature::fahrenheit(40.0), Grade::B, Source::FsisBasics);

/// A plate of the grinder.
#[derive(Debug)]
pub struct PlateRow {
    /// Which.
    pub plate: Plate,
    /// Across a hole.
    pub hole: Fact<Length>,
}

/// Both plates, in the order of [`Plate::ALL`]. [`Source::MsuSausage`] has 1/2 to 1 in for the first pass of
/// sausage, and the same 3/16 in for the second.
pub static PLATES: [PlateRow; 2] = [
    PlateRow { plate: Plate::Coarse, hole: fact(Length::inches(0.375), Grade::C, Source::PlatesPage) },
    PlateRow { plate: Plate::Fine, hole: fact(Length::inches(0.1875), Grade::B, Source::MsuSausage) },
];
