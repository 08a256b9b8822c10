//! What an animal of each species loses on the way from live weight to careful boneless meat.
//!
//! Fractions are low, likely, high: about a 90 % range of individuals. `dressed` has the lower legs still on.
//! `lean` is careful boneless meat of a clean kill, before shot loss, hurry and aging, so that no loss is
//! counted twice.

use crate::animal::{Age, Sex, Species};
use crate::estimate::Estimate;
use crate::sources::{Grade, Source};
use crate::units::{Length, Mass};

/// A fraction with its spread, its grade and its source.
#[derive(Clone, Copy, Debug)]
pub struct Figure {
    /// Low, likely, high.
    pub spread: Estimate<f64>,
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

/// A row's figure, its order checked when the table is compiled.
pub(super) const fn figure(low: f64, likely: f64, high: f64, grade: Grade, source: Source) -> Figure {
    Figure { spread: Estimate::row(low, likely, high), grade, source }
}

/// One species, or one sex of it where the sexes were measured apart.
#[derive(Debug)]
pub struct YieldRow {
    /// Field-dressed over live.
    pub dressed: Figure,
    /// Hanging over field-dressed.
    pub hanging: Figure,
    /// Careful boneless over hanging.
    pub lean: Figure,
}

/// The row of a species and sex.
pub fn yields(species: Species, sex: Sex) -> &'static YieldRow {
    match (species, sex) {
        (Species::WhiteTailed, _) => &WHITE_TAILED,
        (Species::Mule, _) => &MULE,
        (Species::BlackTailed, _) => &BLACK_TAILED,
        (Species::Elk, _) => &ELK,
        (Species::Moose, _) => &MOOSE,
        (Species::Caribou, _) => &CARIBOU,
        (Species::Red, _) => &RED,
        (Species::Roe, _) => &ROE,
        (Species::Fallow, _) => &FALLOW,
        (Species::Sika, _) => &SIKA,
        (Species::Axis, _) => &AXIS,
        (Species::Pronghorn, Sex::Buck) => &PRONGHORN_BUCK,
        (Species::Pronghorn, Sex::Doe) => &PRONGHORN_DOE,
    }
}

// Centre: `Source::MinnesotaDeer`, n = 1,027. Width: Oklahoma, where 95 % of adults lie within 6 % of the
// middle.
static WHITE_TAILED: YieldRow = YieldRow {
    dressed: figure(0.72, 0.76, 0.8, Grade::A, Source::NobleDeer),
    hanging: figure(0.73, 0.78, 0.82, Grade::B, Source::GermanRoe),
    lean: figure(0.56, 0.61, 0.66, Grade::B, Source::OhioDeer),
};
static MULE: YieldRow = YieldRow {
    dressed: figure(0.69, 0.75, 0.8, Grade::B, Source::NorthDakotaLean),
    hanging: figure(0.75, 0.8, 0.84, Grade::B, Source::WyomingMule),
    lean: figure(0.53, 0.58, 0.63, Grade::B, Source::WyomingMule),
};
static BLACK_TAILED: YieldRow = YieldRow {
    dressed: figure(0.68, 0.75, 0.81, Grade::C, Source::SitkaText),
    hanging: figure(0.74, 0.79, 0.83, Grade::C, Source::SitkaText),
    lean: figure(0.54, 0.59, 0.64, Grade::C, Source::SitkaText),
};
static ELK: YieldRow = YieldRow {
    dressed: figure(0.66, 0.72, 0.78, Grade::B, Source::ElkGirth),
    hanging: figure(0.77, 0.81, 0.85, Grade::B, Source::WyomingElk),
    lean: figure(0.55, 0.59, 0.63, Grade::B, Source::WyomingElk),
};
static MOOSE: YieldRow = YieldRow {
    dressed: figure(0.63, 0.7, 0.76, Grade::D, Source::SwedishMoose),
    hanging: figure(0.64, 0.7, 0.76, Grade::D, Source::SwedishMoose),
    lean: figure(0.66, 0.72, 0.77, Grade::B, Source::MooseLean),
};
static PRONGHORN_BUCK: YieldRow = YieldRow {
    dressed: figure(0.69, 0.735, 0.77, Grade::A, Source::AlbertaPronghorn),
    hanging: figure(0.73, 0.765, 0.8, Grade::A, Source::AlbertaPronghorn),
    lean: figure(0.53, 0.58, 0.62, Grade::C, Source::Analogy),
};
static PRONGHORN_DOE: YieldRow = YieldRow {
    dressed: figure(0.63, 0.67, 0.72, Grade::A, Source::AlbertaPronghorn),
    hanging: figure(0.74, 0.775, 0.81, Grade::A, Source::AlbertaPronghorn),
    lean: figure(0.53, 0.58, 0.62, Grade::C, Source::Analogy),
};
static CARIBOU: YieldRow = YieldRow {
    dressed: figure(0.65, 0.72, 0.79, Grade::D, Source::Analogy),
    hanging: figure(0.67, 0.72, 0.78, Grade::D, Source::Analogy),
    lean: figure(0.58, 0.65, 0.71, Grade::D, Source::Analogy),
};
static RED: YieldRow = YieldRow {
    dressed: figure(0.66, 0.71, 0.77, Grade::D, Source::HillRed),
    hanging: figure(0.68, 0.73, 0.79, Grade::D, Source::HillRed),
    lean: figure(0.56, 0.62, 0.68, Grade::B, Source::HillRed),
};
// Hanging share: the mean of two measured animals, 0.780 (`Source::AustrianRoe`) and 0.801, is 0.79; 0.788
// meets both (calibration).
static ROE: YieldRow = YieldRow {
    dressed: figure(0.64, 0.69, 0.75, Grade::C, Source::LithuanianRoe),
    hanging: figure(0.76, 0.788, 0.82, Grade::B, Source::GermanRoe),
    lean: figure(0.57, 0.62, 0.66, Grade::B, Source::GermanRoe),
};
static FALLOW: YieldRow = YieldRow {
    dressed: figure(0.7, 0.76, 0.81, Grade::D, Source::MasseyFallow),
    hanging: figure(0.74, 0.78, 0.82, Grade::D, Source::MasseyFallow),
    lean: figure(0.58, 0.64, 0.69, Grade::B, Source::MasseyFallow),
};
static SIKA: YieldRow = YieldRow {
    dressed: figure(0.69, 0.74, 0.79, Grade::D, Source::TanbaSika),
    hanging: figure(0.73, 0.77, 0.82, Grade::D, Source::TanbaSika),
    lean: figure(0.57, 0.63, 0.68, Grade::B, Source::TanbaSika),
};
static AXIS: YieldRow = YieldRow {
    dressed: figure(0.69, 0.75, 0.8, Grade::D, Source::Analogy),
    hanging: figure(0.73, 0.78, 0.83, Grade::D, Source::Analogy),
    lean: figure(0.56, 0.62, 0.67, Grade::D, Source::Analogy),
};

/// How the part of the hanging carcass that is not careful lean divides.
#[derive(Debug)]
pub struct NonLean {
    /// Bone, with the scraps that stay on it, as a share of what is not lean.
    pub bone: Figure,
    /// Drying while it is cut, as a share of what is not lean and not bone; the rest is fat and membrane.
    pub drying: f64,
}

/// The division for a species. Default of the hanging carcass: lean 60, bone 25, fat and membranes 11,
/// drying 4; moose 72, 19, 7, 2.
pub fn non_lean(species: Species) -> &'static NonLean {
    if species == Species::Moose { &MOOSE_NON_LEAN } else { &NON_LEAN }
}

static NON_LEAN: NonLean =
    NonLean { bone: figure(0.55, 0.625, 0.70, Grade::D, Source::GermanRoe), drying: 4.0 / 15.0 };
static MOOSE_NON_LEAN: NonLean =
    NonLean { bone: figure(0.60, 0.68, 0.75, Grade::D, Source::MooseLean), drying: 2.0 / 9.0 };

/// A regression of weight on chest girth, measured just behind the fore legs.
#[derive(Debug)]
pub struct GirthRow {
    /// Live weight from girth.
    pub live: fn(Length) -> Mass,
    /// Field-dressed weight from girth, where it was published.
    pub dressed: Option<fn(Length) -> Mass>,
    /// Smallest and largest girth it is used for: our judgement of the range of the data.
    pub range: (Length, Length),
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

/// The regression for a species and age, where one was published.
pub fn girth(species: Species, age: Age) -> Option<&'static GirthRow> {
    match (species, age) {
        (Species::WhiteTailed, Age::Fawn) => Some(&WHITE_TAILED_FAWN_GIRTH),
        (Species::WhiteTailed, Age::Yearling | Age::Adult | Age::Old) => Some(&WHITE_TAILED_GIRTH),
        (Species::Elk, Age::Yearling | Age::Adult | Age::Old) => Some(&ELK_GIRTH),
        (Species::Moose, Age::Yearling | Age::Adult | Age::Old) => Some(&MOOSE_GIRTH),
        (
            Species::Elk
            | Species::Moose
            | Species::Mule
            | Species::BlackTailed
            | Species::Pronghorn
            | Species::Caribou
            | Species::Red
            | Species::Roe
            | Species::Fallow
            | Species::Sika
            | Species::Axis,
            _,
        ) => None,
    }
}

static WHITE_TAILED_GIRTH: GirthRow = GirthRow {
    live: |girth| Mass::pounds(6.5520 * girth.to_inches() - 95.0128),
    dressed: Some(|girth| Mass::pounds(5.6037 * girth.to_inches() - 94.0982)),
    range: (Length::inches(24.0), Length::inches(52.0)),
    grade: Grade::B,
    source: Source::SeafwaGirth,
};
static WHITE_TAILED_FAWN_GIRTH: GirthRow = GirthRow {
    live: |girth| Mass::pounds(5.3003 * girth.to_inches() - 74.1489),
    dressed: Some(|girth| Mass::pounds(3.9499 * girth.to_inches() - 55.6158)),
    range: (Length::inches(18.0), Length::inches(36.0)),
    grade: Grade::B,
    source: Source::SeafwaGirth,
};
static ELK_GIRTH: GirthRow = GirthRow {
    live: |girth| Mass::kilograms(2.76 * girth.to_cm() - 128.46),
    dressed: Some(|girth| Mass::kilograms(0.024 * libm::pow(girth.to_cm(), 1.81))),
    range: (Length::cm(110.0), Length::cm(190.0)),
    grade: Grade::B,
    source: Source::ElkGirth,
};
#[expect(clippy::approx_constant, reason = "a regression slope, not pi")]
static MOOSE_GIRTH: GirthRow = GirthRow {
    live: |girth| Mass::kilograms(-245.3 + 3.14 * girth.to_cm()),
    dressed: None,
    range: (Length::cm(120.0), Length::cm(240.0)),
    grade: Grade::B,
    source: Source::MooseGirth,
};

/// Relative spread of a weight read from girth: 20 % at 90 % (judgement, from R² 0.74).
pub const GIRTH_SPREAD: Figure = figure(-0.20, 0.0, 0.20, Grade::D, Source::Judgement);

/// Typical live weight of adults in autumn.
#[derive(Debug)]
pub struct TypicalRow {
    /// Adult male.
    pub buck: Mass,
    /// Adult female.
    pub doe: Mass,
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

/// Relative spread of an animal that was not weighed: 45 % at 90 %.
pub const TYPICAL_SPREAD: Figure = figure(-0.45, 0.0, 0.45, Grade::D, Source::Judgement);

/// Typical live weight of a species, sex and age. Ages other than adult are a fixed part of the adult weight
/// (judgement: fawn half, yearling 85 %, old 105 %).
pub fn typical_live(species: Species, sex: Sex, age: Age) -> (Mass, &'static TypicalRow) {
    let row = &TYPICAL[species as usize];
    let adult = match sex {
        Sex::Buck => row.buck,
        Sex::Doe => row.doe,
    };
    let part = match age {
        Age::Fawn => 0.5,
        Age::Yearling => 0.85,
        Age::Adult => 1.0,
        Age::Old => 1.05,
    };
    (adult * part, row)
}

const fn typical(buck_kg: f64, doe_kg: f64, grade: Grade, source: Source) -> TypicalRow {
    TypicalRow { buck: Mass::kilograms(buck_kg), doe: Mass::kilograms(doe_kg), grade, source }
}

/// In the order of [`Species::ALL`]. Where a source gives dressed or hanging weights, they were divided by
/// the likely fractions above.
static TYPICAL: [TypicalRow; Species::ALL.len()] = [
    typical(73.0, 54.0, Grade::C, Source::NewHampshireDeer),
    typical(91.0, 59.0, Grade::B, Source::WyomingMuleWeights),
    typical(60.0, 45.0, Grade::C, Source::BlackTailWeights),
    typical(287.0, 222.0, Grade::B, Source::WyomingElk),
    typical(508.0, 406.0, Grade::B, Source::BritishColumbiaMoose),
    typical(52.0, 39.0, Grade::C, Source::PronghornHanging),
    typical(110.0, 72.0, Grade::C, Source::NorwegianReindeer),
    typical(105.0, 70.0, Grade::C, Source::ScottishVenison),
    typical(26.0, 25.0, Grade::C, Source::LithuanianRoe),
    typical(47.4, 41.9, Grade::B, Source::WildFallow),
    typical(46.4, 36.3, Grade::B, Source::TanbaSika),
    typical(75.0, 45.0, Grade::C, Source::AxisRanch),
];

/// Lightest and heaviest live animal that is believed, in kg, in the order of [`Species::ALL`]. Our judgement,
/// drawn wide: a record animal passes, a slip of the keyboard does not.
pub static WEIGHT_LIMITS: [(f64, f64); Species::ALL.len()] = [
    (7.0, 230.0),
    (9.0, 230.0),
    (6.0, 160.0),
    (30.0, 600.0),
    (40.0, 850.0),
    (6.0, 90.0),
    (10.0, 330.0),
    (12.0, 350.0),
    (4.0, 50.0),
    (6.0, 140.0),
    (6.0, 150.0),
    (6.0, 140.0),
];

/// Lightest and heaviest live animal of a species that is believed.
pub fn weight_limits(species: Species) -> (Mass, Mass) {
    let (low, high) = WEIGHT_LIMITS[species as usize];
    (Mass::kilograms(low), Mass::kilograms(high))
}
