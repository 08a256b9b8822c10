//! From the freezer to the table: hours to thaw, what to cook to, what is left of it.

use super::fact::{Fact, fact};
use super::yields::{Figure, figure};
use crate::sources::{Grade, Source};
use crate::thaw::{Pace, Piece};
use crate::units::{Duration, Temperature};

/// Cooked over raw weight; the ends are judgement around the one patty that was weighed.
pub static COOKED_YIELD: Figure = figure(0.70, 0.75, 0.80, Grade::B, Source::UsdaPatty);

/// What venison is cooked to inside. The first is the default; they disagree, and 165 °F holds where local
/// advice says so.
pub static COOK_TO: [Fact<Temperature>; 5] = [
    fact(Temperature::fahrenheit(160.0), Grade::B, Source::FederalVenison),
    fact(Temperature::fahrenheit(160.0), Grade::B, Source::PennGame),
    fact(Temperature::fahrenheit(165.0), Grade::A, Source::MsuConsumers),
    fact(Temperature::fahrenheit(165.0), Grade::C, Source::WisconsinColumn),
    fact(Temperature::fahrenheit(165.0), Grade::B, Source::CanadaCooking),
];

/// How long one kind of piece thaws in the refrigerator, as one source has it.
#[derive(Debug)]
pub struct ThawRow {
    /// Which kind of piece.
    pub piece: Piece,
    /// Shortest and longest.
    pub pace: (Pace, Pace),
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

const fn thaw(piece: Piece, pace: (Pace, Pace), grade: Grade, source: Source) -> ThawRow {
    ThawRow { piece, pace, grade, source }
}

const fn a_pound(least: f64, most: f64) -> (Pace, Pace) {
    (Pace::EachPound(Duration::hours(least)), Pace::EachPound(Duration::hours(most)))
}

const fn in_all(least: f64, most: f64) -> (Pace, Pace) {
    (Pace::InAll(Duration::hours(least)), Pace::InAll(Duration::hours(most)))
}

/// The published thawing times. 24 hours for each 5 lb is 4.8 hours a pound.
pub static THAW: [ThawRow; 10] = [
    thaw(Piece::Large, a_pound(4.8, 4.8), Grade::B, Source::FsisThaw),
    thaw(Piece::Large, a_pound(4.0, 7.0), Grade::C, Source::ThawPage),
    thaw(Piece::SmallRoast, a_pound(3.0, 5.0), Grade::C, Source::ThawPage),
    thaw(Piece::Slices, in_all(12.0, 14.0), Grade::C, Source::ThawPage),
    thaw(Piece::Loose, in_all(24.0, 24.0), Grade::B, Source::FsisThaw),
    thaw(Piece::Loose, in_all(24.0, 24.0), Grade::C, Source::ThawPage),
    thaw(Piece::Large, a_pound(4.0, 7.0), Grade::C, Source::RanchThaw),
    thaw(Piece::SmallRoast, a_pound(3.0, 5.0), Grade::C, Source::RanchThaw),
    thaw(Piece::Slices, in_all(12.0, 12.0), Grade::C, Source::RanchThaw),
    thaw(Piece::Loose, in_all(24.0, 24.0), Grade::C, Source::RanchThaw),
];
