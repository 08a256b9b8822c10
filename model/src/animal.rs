//! The animal and what was weighed.

use crate::tables;
use crate::units::{Length, Mass};

/// A species the planner has yields for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Species {
    /// Odocoileus virginianus.
    WhiteTailed,
    /// Odocoileus hemionus.
    Mule,
    /// Odocoileus hemionus columbianus and sitkensis.
    BlackTailed,
    /// Cervus canadensis; wapiti.
    Elk,
    /// Alces alces.
    Moose,
    /// Antilocapra americana.
    Pronghorn,
    /// Rangifer tarandus; reindeer.
    Caribou,
    /// Cervus elaphus.
    Red,
    /// Capreolus capreolus.
    Roe,
    /// Dama dama.
    Fallow,
    /// Cervus nippon.
    Sika,
    /// Axis axis; chital.
    Axis,
}

impl Species {
    /// Every species.
    pub const ALL: [Species; 12] = [
        Species::WhiteTailed,
        Species::Mule,
        Species::BlackTailed,
        Species::Elk,
        Species::Moose,
        Species::Pronghorn,
        Species::Caribou,
        Species::Red,
        Species::Roe,
        Species::Fallow,
        Species::Sika,
        Species::Axis,
    ];

    /// The name used by scripts.
    pub const fn id(self) -> &'static str {
        match self {
            Species::WhiteTailed => "white_tailed",
            Species::Mule => "mule",
            Species::BlackTailed => "black_tailed",
            Species::Elk => "elk",
            Species::Moose => "moose",
            Species::Pronghorn => "pronghorn",
            Species::Caribou => "caribou",
            Species::Red => "red",
            Species::Roe => "roe",
            Species::Fallow => "fallow",
            Species::Sika => "sika",
            Species::Axis => "axis",
        }
    }
}

/// Male or female.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Sex {
    /// Male: buck, bull, stag.
    Buck,
    /// Female: doe, cow, hind.
    Doe,
}

impl Sex {
    /// Both.
    pub const ALL: [Sex; 2] = [Sex::Buck, Sex::Doe];

    /// The name used by scripts.
    pub const fn id(self) -> &'static str {
        match self {
            Sex::Buck => "buck",
            Sex::Doe => "doe",
        }
    }
}

/// Age class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Age {
    /// In its first year: fawn, calf.
    Fawn,
    /// In its second year.
    Yearling,
    /// Grown.
    Adult,
    /// Past its prime.
    Old,
}

impl Age {
    /// Every age class, youngest first.
    pub const ALL: [Age; 4] = [Age::Fawn, Age::Yearling, Age::Adult, Age::Old];

    /// The name used by scripts.
    pub const fn id(self) -> &'static str {
        match self {
            Age::Fawn => "fawn",
            Age::Yearling => "yearling",
            Age::Adult => "adult",
            Age::Old => "old",
        }
    }
}

/// What the season did to the animal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Condition {
    /// Nothing known or nothing special.
    Ordinary,
    /// A buck at his heaviest.
    PreRut,
    /// A buck at the end of the rut: empty gut, lean.
    LateRut,
    /// A doe in milk or carrying.
    Nursing,
}

impl Condition {
    /// Every condition.
    pub const ALL: [Condition; 4] =
        [Condition::Ordinary, Condition::PreRut, Condition::LateRut, Condition::Nursing];

    /// The name used by scripts.
    pub const fn id(self) -> &'static str {
        match self {
            Condition::Ordinary => "ordinary",
            Condition::PreRut => "pre_rut",
            Condition::LateRut => "late_rut",
            Condition::Nursing => "nursing",
        }
    }

    /// Whether an animal of this sex and age can be in it; a fawn is always ordinary.
    pub fn suits(self, sex: Sex, age: Age) -> bool {
        match self {
            Condition::Ordinary => true,
            Condition::PreRut | Condition::LateRut => sex == Sex::Buck && age != Age::Fawn,
            Condition::Nursing => sex == Sex::Doe && age != Age::Fawn,
        }
    }
}

/// Whether the lower legs were on the scale with the rest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Legs {
    /// Lower legs still on.
    On,
    /// Cut off at knee and hock.
    Off,
}

/// The moment at which the animal was weighed or measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stage {
    /// Nothing was weighed.
    Typical,
    /// Whole.
    Live,
    /// All organs out; head and hide on.
    FieldDressed,
    /// Skinned; head and lower legs off.
    Hanging,
    /// The boneless meat on the table.
    Deboned,
    /// Chest girth behind the fore legs.
    Girth,
}

impl Stage {
    /// Every stage, in the order shown.
    pub const ALL: [Stage; 6] =
        [Stage::Live, Stage::FieldDressed, Stage::Hanging, Stage::Deboned, Stage::Girth, Stage::Typical];

    /// The name used by scripts.
    pub const fn id(self) -> &'static str {
        match self {
            Stage::Typical => "typical",
            Stage::Live => "live",
            Stage::FieldDressed => "field_dressed",
            Stage::Hanging => "hanging",
            Stage::Deboned => "deboned",
            Stage::Girth => "girth",
        }
    }
}

/// What is known of the animal's size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Weighed {
    /// Nothing: a typical animal of its kind.
    Typical,
    /// Live weight.
    Live(Mass),
    /// Field-dressed weight.
    FieldDressed(Mass, Legs),
    /// Hanging weight.
    Hanging(Mass),
    /// Boneless meat on the table, before it is cut up.
    Deboned(Mass),
    /// Chest girth.
    Girth(Length),
}

impl Weighed {
    /// When it was weighed.
    pub fn stage(self) -> Stage {
        match self {
            Weighed::Typical => Stage::Typical,
            Weighed::Live(_) => Stage::Live,
            Weighed::FieldDressed(..) => Stage::FieldDressed,
            Weighed::Hanging(_) => Stage::Hanging,
            Weighed::Deboned(_) => Stage::Deboned,
            Weighed::Girth(_) => Stage::Girth,
        }
    }
}

/// One animal. Built only through [`Animal::new`], so its weight can be believed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Animal {
    species: Species,
    sex: Sex,
    age: Age,
    condition: Condition,
    weighed: Weighed,
}

/// Why an animal was not believed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AnimalError {
    /// The weight or girth is not a number above zero.
    NotPositive,
    /// Lighter or heavier than any animal of the species at that stage.
    WeightOutOfRange {
        /// Lightest believed.
        least: Mass,
        /// Heaviest believed.
        most: Mass,
    },
    /// No regression was published for the species and age.
    NoGirthTable,
    /// Outside the girths the regression is used for.
    GirthOutOfRange {
        /// Smallest believed.
        least: Length,
        /// Largest believed.
        most: Length,
    },
    /// The condition is one of the other sex, or of a grown animal.
    ConditionDoesNotSuit,
}

impl Animal {
    /// Takes an animal if it can be believed. Weights are kept to the gram and girths to a tenth of a
    /// millimetre, so that a link says exactly what was entered.
    ///
    /// # Errors
    /// A weight or girth that is not above zero, or outside the range of the species at that stage; a girth
    /// where no table was published; a condition that does not suit the sex and age.
    pub fn new(
        species: Species,
        sex: Sex,
        age: Age,
        condition: Condition,
        weighed: Weighed,
    ) -> Result<Animal, AnimalError> {
        if !condition.suits(sex, age) {
            return Err(AnimalError::ConditionDoesNotSuit);
        }
        let (lightest, heaviest) = tables::weight_limits(species);
        let row = tables::yields(species, sex);
        let (dressed, hanging, lean) = (row.dressed.spread, row.hanging.spread, row.lean.spread);
        let between = |mass: Mass, least: f64, most: f64| believed(mass, lightest * least, heaviest * most);
        let weighed = match weighed {
            Weighed::Typical => Weighed::Typical,
            Weighed::Live(mass) => Weighed::Live(between(mass, 1.0, 1.0)?),
            Weighed::FieldDressed(mass, legs) => {
                let off = tables::legs_on_per_legs_off(legs);
                Weighed::FieldDressed(between(mass, dressed.low() / off, dressed.high() / off)?, legs)
            }
            Weighed::Hanging(mass) => Weighed::Hanging(between(
                mass,
                dressed.low() * hanging.low(),
                dressed.high() * hanging.high(),
            )?),
            Weighed::Deboned(mass) => Weighed::Deboned(between(
                mass,
                dressed.low() * hanging.low() * lean.low() * LEAST_RECOVERED,
                dressed.high() * hanging.high() * lean.high(),
            )?),
            Weighed::Girth(length) => {
                let girth = tables::girth(species, age).ok_or(AnimalError::NoGirthTable)?;
                let (least, most) = girth.range;
                if !(length.to_mm().is_finite() && length.to_mm() > 0.0) {
                    return Err(AnimalError::NotPositive);
                }
                if length < least || length > most {
                    return Err(AnimalError::GirthOutOfRange { least, most });
                }
                Weighed::Girth(Length::mm((length.to_mm() * 10.0).round() / 10.0))
            }
        };
        Ok(Animal { species, sex, age, condition, weighed })
    }

    /// Its species.
    pub fn species(&self) -> Species {
        self.species
    }
    /// Its sex.
    pub fn sex(&self) -> Sex {
        self.sex
    }
    /// Its age class.
    pub fn age(&self) -> Age {
        self.age
    }
    /// What the season did to it.
    pub fn condition(&self) -> Condition {
        self.condition
    }
    /// What is known of its size.
    pub fn weighed(&self) -> Weighed {
        self.weighed
    }

    /// The example the page opens on, marked as an example there: an invented white-tailed doe.
    pub fn example() -> Animal {
        Animal {
            species: Species::WhiteTailed,
            sex: Sex::Doe,
            age: Age::Adult,
            condition: Condition::Ordinary,
            weighed: Weighed::FieldDressed(Mass::grams(43_545.0), Legs::On),
        }
    }
}

/// Least part of the careful lean that a table of deboned meat may hold and still be believed (judgement).
const LEAST_RECOVERED: f64 = 0.3;

fn believed(mass: Mass, least: Mass, most: Mass) -> Result<Mass, AnimalError> {
    if !(mass.to_grams().is_finite() && mass.to_grams() > 0.0) {
        return Err(AnimalError::NotPositive);
    }
    let kept = Mass::grams(mass.to_grams().round());
    if kept < least || kept > most {
        return Err(AnimalError::WeightOutOfRange { least, most });
    }
    Ok(kept)
}
