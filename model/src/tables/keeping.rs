//! How many months frozen meat stays good at 0 °F, by form. Quality, not safety: the sources say so
//! themselves. Wrap does not change the months; no agency figure for that was found.

use crate::dates::Keeps;
use crate::sources::{Grade, Source};

/// What one source says of some forms.
#[derive(Debug, PartialEq)]
pub struct KeepRow {
    /// Which forms.
    pub forms: &'static [Keeps],
    /// From and to, in months; the same twice where the source says only "within".
    pub months: (u8, u8),
    /// Whether the source speaks of game, not of domestic meat.
    pub is_game: bool,
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

const fn game(forms: &'static [Keeps], months: (u8, u8), grade: Grade, source: Source) -> KeepRow {
    KeepRow { forms, months, is_game: true, grade, source }
}

const fn domestic(forms: &'static [Keeps], months: (u8, u8), grade: Grade, source: Source) -> KeepRow {
    KeepRow { forms, months, is_game: false, grade, source }
}

const WHOLE: &[Keeps] = &[Keeps::Roast, Keeps::Steak];
const CUTS: &[Keeps] = &[Keeps::Roast, Keeps::Steak, Keeps::Chop];
const CUTS_STEW_GROUND: &[Keeps] =
    &[Keeps::Roast, Keeps::Steak, Keeps::Chop, Keeps::Stew, Keeps::Ground, Keeps::GroundWithFat];
const LOOSE: &[Keeps] = &[Keeps::Stew, Keeps::Ground, Keeps::GroundWithFat];
const GROUND: &[Keeps] = &[Keeps::Ground, Keeps::GroundWithFat];

/// Every figure that was read.
pub static KEEPING: [KeepRow; 20] = [
    game(WHOLE, (8, 12), Grade::A, Source::UmnGame),
    game(LOOSE, (2, 3), Grade::A, Source::UmnGame),
    game(WHOLE, (8, 12), Grade::A, Source::MsuGame),
    game(LOOSE, (2, 3), Grade::A, Source::MsuGame),
    game(CUTS, (9, 12), Grade::B, Source::PennGame),
    game(CUTS_STEW_GROUND, (6, 6), Grade::A, Source::CsuGame),
    game(WHOLE, (6, 9), Grade::C, Source::GarrettColumn),
    game(GROUND, (3, 3), Grade::C, Source::GarrettColumn),
    game(WHOLE, (8, 12), Grade::B, Source::ApplianceMonths),
    game(GROUND, (3, 4), Grade::B, Source::ApplianceMonths),
    domestic(WHOLE, (6, 12), Grade::A, Source::FdaStorage),
    domestic(&[Keeps::Chop], (4, 6), Grade::A, Source::FdaStorage),
    domestic(GROUND, (3, 4), Grade::A, Source::FdaStorage),
    domestic(&[Keeps::Sausage], (1, 2), Grade::A, Source::FdaStorage),
    domestic(&[Keeps::Organs], (3, 4), Grade::B, Source::FdaStorage),
    domestic(&[Keeps::Roast], (4, 12), Grade::B, Source::FoodSafetyGov),
    domestic(&[Keeps::Chop], (4, 6), Grade::B, Source::FoodSafetyGov),
    domestic(&[Keeps::Roast, Keeps::Chop, Keeps::Stew], (4, 12), Grade::A, Source::FoodKeeper),
    domestic(GROUND, (3, 4), Grade::A, Source::FoodKeeper),
    domestic(&[Keeps::Organs], (3, 4), Grade::C, Source::ColumbiaText),
];
