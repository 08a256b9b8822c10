//! What sex, age and season add to the yields and to the shares of the muscles.

use super::muscles::MuscleRow;
use crate::anatomy::{Muscle, Region};
use crate::animal::{Age, Animal, Condition, Sex, Species};
use crate::sources::{Grade, Source};

/// A number that stands beside a measured one, with its grade and its source.
#[derive(Clone, Copy, Debug)]
pub struct Adjustment {
    /// Added to a fraction, or multiplied with a mass.
    pub by: f64,
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

const fn judged(by: f64) -> Adjustment {
    Adjustment { by, grade: Grade::D, source: Source::Judgement }
}

/// What an animal's sex, age and season add to the three fractions.
#[derive(Clone, Copy, Debug)]
pub struct Shifts {
    /// To field-dressed over live.
    pub dressed: Adjustment,
    /// To hanging over field-dressed.
    pub hanging: Adjustment,
    /// To careful boneless over hanging.
    pub lean: Adjustment,
}

/// The shifts of an animal. All are judgement; published studies support their directions: a buck before the
/// rut is fuller, at its end his gut is empty; a doe in milk or carrying, and a fawn, dress out lower; a fawn has
/// more bone; an old buck's cape and antlers weigh.
pub fn shifts(animal: &Animal) -> Shifts {
    let is_fawn = animal.age() == Age::Fawn;
    let is_old_buck = animal.sex() == Sex::Buck && animal.age() == Age::Old;
    Shifts {
        dressed: judged(match animal.condition() {
            Condition::Ordinary if is_fawn => -0.015,
            Condition::Ordinary => 0.0,
            Condition::PreRut => 0.01,
            Condition::LateRut => 0.02,
            Condition::Nursing => -0.02,
        }),
        hanging: judged(if is_old_buck { -0.01 } else { 0.0 }),
        lean: judged(if is_fawn { -0.02 } else { 0.0 }),
    }
}

/// What multiplies the typical weight of an animal that was not weighed. A buck weighs up to 13.8 % less by the
/// end of the season than at its peak; half of that is taken off the typical.
pub fn season_weight(condition: Condition) -> Adjustment {
    let by = match condition {
        Condition::Ordinary | Condition::PreRut | Condition::Nursing => 1.0,
        Condition::LateRut => 0.93,
    };
    Adjustment { by, grade: Grade::C, source: Source::RutWeights }
}

/// What multiplies the shares of some muscles, by sex and season.
#[derive(Debug)]
pub struct ShareRow {
    /// The neck.
    pub neck: f64,
    /// The neck straps.
    pub neck_straps: f64,
    /// The chuck.
    pub chuck: f64,
    /// Every muscle of the hind leg.
    pub hind_leg: f64,
    /// How good the row is.
    pub grade: Grade,
    /// Where it is from; fitted in the muscle catalogue.
    pub source: Source,
}

static DOE: ShareRow = ShareRow {
    neck: 0.90,
    neck_straps: 0.95,
    chuck: 0.97,
    hind_leg: 1.03,
    grade: Grade::C,
    source: Source::SheepSexShares,
};
static BUCK: ShareRow = ShareRow {
    neck: 1.05,
    neck_straps: 1.05,
    chuck: 1.0,
    hind_leg: 1.0,
    grade: Grade::D,
    source: Source::Judgement,
};
static BUCK_IN_RUT: ShareRow = ShareRow {
    neck: 1.35,
    neck_straps: 1.25,
    chuck: 1.08,
    hind_leg: 0.97,
    grade: Grade::C,
    source: Source::ImpalaShares,
};

/// The share row of an animal.
pub fn share_row(animal: &Animal) -> &'static ShareRow {
    let is_in_rut = matches!(animal.condition(), Condition::PreRut | Condition::LateRut)
        && matches!(animal.age(), Age::Adult | Age::Old);
    match (animal.sex(), is_in_rut) {
        (Sex::Doe, _) => &DOE,
        (Sex::Buck, false) => &BUCK,
        (Sex::Buck, true) => &BUCK_IN_RUT,
    }
}

impl ShareRow {
    /// What multiplies the share of a muscle.
    pub fn factor(&self, row: &MuscleRow) -> f64 {
        if row.region == Region::HindLeg {
            self.hind_leg
        } else if row.muscle == Muscle::Neck {
            self.neck
        } else if row.muscle == Muscle::NeckStraps {
            self.neck_straps
        } else if row.muscle == Muscle::Chuck {
            self.chuck
        } else {
            1.0
        }
    }
}

/// What multiplies the shares of the hind leg in a species. Small leaping deer carry more of their meat behind:
/// one published roe had 51 % in the legs, the mean of all species is 46; calibrated between the two.
pub fn hind_leg(species: Species) -> Adjustment {
    let by = if species == Species::Roe { 1.25 } else { 1.0 };
    Adjustment { by, grade: Grade::C, source: Source::GermanRoe }
}
