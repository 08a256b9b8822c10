//! What a freezer holds, what it freezes in a day, how long the rest may wait, and what the heat equation
//! needs.

use super::fact::{Fact, fact};
use crate::freezer::Waits;
use crate::heat::{Conductivity, HeatCapacity, HeatPerMass, SurfaceTransfer};
use crate::sources::{Grade, Source};
use crate::units::{Density, Length, Temperature};

const fn pounds(pounds: f64, grade: Grade, source: Source) -> Fact<Density> {
    fact(Density::pounds_per_cubic_foot(pounds), grade, source)
}

/// Packed meat in a cubic foot: loosest, likely, tightest.
pub static SPACE: [Fact<Density>; 3] = [
    pounds(30.0, Grade::C, Source::RetailSpace),
    pounds(35.0, Grade::B, Source::NcStateSpace),
    pounds(40.0, Grade::C, Source::FarmSpace),
];

/// Unfrozen food that a freezer takes in 24 hours, as one source has it.
#[derive(Debug)]
pub struct LoadRow {
    /// Least and most in a cubic foot of the freezer.
    pub range: (Density, Density),
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

const fn load(least: f64, most: f64, grade: Grade, source: Source) -> LoadRow {
    LoadRow {
        range: (Density::pounds_per_cubic_foot(least), Density::pounds_per_cubic_foot(most)),
        grade,
        source,
    }
}

/// The published loads. The default is the least of them, which the stricter table has as its only figure.
pub static LOADS: [LoadRow; 3] = [
    load(2.0, 3.0, Grade::A, Source::UmnLoad),
    load(2.0, 3.0, Grade::B, Source::ApplianceLoad),
    load(2.0, 2.0, Grade::B, Source::ApplianceMeat),
];

/// How many days raw meat waits in the refrigerator, as one source has it.
#[derive(Debug)]
pub struct HoldRow {
    /// Which meat.
    pub waits: Waits,
    /// Least and most.
    pub days: (u8, u8),
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

const fn hold(waits: Waits, least: u8, most: u8, grade: Grade, source: Source) -> HoldRow {
    HoldRow { waits, days: (least, most), grade, source }
}

/// The published waits. The first row of each kind sets the default, at its least.
pub static HOLDING: [HoldRow; 5] = [
    hold(Waits::Ground, 1, 2, Grade::A, Source::FdaStorage),
    hold(Waits::Whole, 3, 5, Grade::A, Source::FsisBasics),
    hold(Waits::Ground, 1, 2, Grade::A, Source::FoodKeeper),
    hold(Waits::Whole, 3, 5, Grade::B, Source::MichiganHealth),
    hold(Waits::Whole, 2, 3, Grade::C, Source::WisconsinColumn),
];

/// What Plank's equation takes.
#[derive(Debug)]
pub struct HeatRows {
    /// Through frozen lean meat: a choice between 1.3 ([`Source::FrozenMeat`]) and 1.6 W/mK (from memory).
    pub conductivity: Fact<Conductivity>,
    /// From the pack to still air: the slow end of 8 to 15 W/m²K.
    pub surface: Fact<SurfaceTransfer>,
    /// The same at the fast end.
    pub surface_at_best: Fact<SurfaceTransfer>,
    /// Air of the freezer.
    pub air: Fact<Temperature>,
    /// Where lean meat begins to freeze.
    pub freezing_point: Fact<Temperature>,
    /// Where the pack starts: out of a cold refrigerator.
    pub start: Fact<Temperature>,
    /// Of meat; between fresh and frozen.
    pub density: Fact<Density>,
    /// Water in lean venison, as a part of its mass (from memory).
    pub water: Fact<f64>,
    /// To freeze water.
    pub latent_of_water: Fact<HeatPerMass>,
    /// Of meat above freezing, by its water.
    pub above: Fact<HeatCapacity>,
    /// Of meat below freezing, by its water.
    pub below: Fact<HeatCapacity>,
}

/// The inputs as the page shows them.
pub static HEAT: HeatRows = HeatRows {
    conductivity: fact(Conductivity::watts_per_metre_kelvin(1.4), Grade::D, Source::Judgement),
    surface: fact(SurfaceTransfer::watts_per_square_metre_kelvin(8.0), Grade::A, Source::HomeFreezers),
    surface_at_best: fact(
        SurfaceTransfer::watts_per_square_metre_kelvin(15.0),
        Grade::A,
        Source::HomeFreezers,
    ),
    air: fact(Temperature::celsius(-18.0), Grade::B, Source::FsisBasics),
    freezing_point: fact(Temperature::celsius(-1.7), Grade::B, Source::AshraeMeat),
    start: fact(Temperature::celsius(4.0), Grade::B, Source::FsisBasics),
    density: fact(Density::kilograms_per_cubic_metre(1050.0), Grade::D, Source::Judgement),
    water: fact(0.7357, Grade::D, Source::Analogy),
    latent_of_water: fact(HeatPerMass::joules_per_kilogram(335.0e3), Grade::B, Source::EarleProperties),
    above: fact(HeatCapacity::joules_per_kilogram_kelvin(3304.6), Grade::C, Source::EarleProperties),
    below: fact(HeatCapacity::joules_per_kilogram_kelvin(1767.0), Grade::C, Source::EarleProperties),
};

/// A pack thicker than this is warned of: by Plank's equation 2 in freezes in a day with air on both faces,
/// and 3 in does not.
pub static THICKEST_PACK: Fact<Length> = fact(Length::inches(2.0), Grade::C, Source::PlankEquation);
