//! What the scale said: which weights can be entered, and how far each is to be trusted.
//!
//! A muscle is weighed cleaned, and without what a wound spoiled: as it lies on the table before it is cut.

use std::num::NonZeroU8;

use crate::anatomy::{Muscle, Side, Sides};
use crate::kalman;
use crate::plan::Plan;
use crate::product::Product;
use crate::rules::Refusal;
use crate::short;
use crate::tables::{FAR, SCALE_PART, SCALE_STEP, SIDE_DIFFERENCE, TRIM_DIFFERENCE};
use crate::units::Mass;
use crate::weighed;

/// What lay on the scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OnScale {
    /// A muscle, of one side or of both together.
    Muscle(Muscle, Sides),
    /// All boneless meat that is taken, before it is cut up.
    Lot,
    /// The tub, before it is ground.
    Tub,
    /// Finished packages of a product: so many of them, or all there are.
    Packages(Product, Option<NonZeroU8>),
}

impl OnScale {
    /// Its place among the weighings of a plan, which has one for each place.
    fn place(self) -> usize {
        match self {
            OnScale::Muscle(muscle, Sides::Both) => muscle.index() * 3,
            OnScale::Muscle(muscle, Sides::One(side)) => muscle.index() * 3 + 1 + side.index(),
            OnScale::Lot => Muscle::COUNT * 3,
            OnScale::Tub => Muscle::COUNT * 3 + 1,
            OnScale::Packages(product, _) => Muscle::COUNT * 3 + 2 + product as usize,
        }
    }

    /// Whether a weight of one takes the place of a weight of the other: both sides together say what each of
    /// them says.
    fn replaces(self, other: OnScale) -> bool {
        match (self, other) {
            (OnScale::Muscle(muscle, sides), OnScale::Muscle(of, others)) => {
                muscle == of && (sides == others || sides == Sides::Both || others == Sides::Both)
            }
            _ => self.place() == other.place(),
        }
    }
}

/// A weight that was read off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weighing {
    /// What lay on the scale.
    pub target: OnScale,
    /// What it said, to the gram.
    pub mass: Mass,
}

/// The heaviest weight that is taken. Judgement: more than all the meat of the largest moose.
pub const HEAVIEST: Mass = Mass::kilograms(500.0);
/// The lightest.
pub const LIGHTEST: Mass = Mass::grams(1.0);

/// The weighings with another one in its place, or without it if there is no mass.
///
/// # Errors
/// A weight that is none.
pub(crate) fn set(weighings: &mut Vec<Weighing>, target: OnScale, mass: Option<Mass>) -> Result<(), Refusal> {
    let Some(mass) = mass else {
        weighings.retain(|other| other.target.place() != target.place());
        return Ok(());
    };
    let mass = Mass::grams(mass.to_grams().round());
    if !(mass >= LIGHTEST && mass <= HEAVIEST) {
        return Err(Refusal::WeighingOutOfRange { least: LIGHTEST, most: HEAVIEST });
    }
    weighings.retain(|other| !target.replaces(other.target));
    short::put(weighings, Weighing { target, mass }, |other| other.target.place() > target.place());
    Ok(())
}

/// What the scale taught of one quantity.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Seen {
    pub(crate) target: OnScale,
    pub(crate) mass: Mass,
    /// The square of the scale's error, in grams.
    square: f64,
}

impl Seen {
    pub(crate) fn of(Weighing { target, mass }: Weighing) -> Self {
        let error = (SCALE_STEP.value / 2.0 + mass * SCALE_PART.value).to_grams();
        Self { target, mass, square: error * error }
    }

    /// The square of the standard error of the logarithm.
    pub(crate) fn variance(&self) -> f64 {
        let besides = match self.target {
            OnScale::Muscle(_, Sides::Both) | OnScale::Lot => 0.0,
            OnScale::Muscle(_, Sides::One(_)) => SIDE_DIFFERENCE.value,
            OnScale::Tub | OnScale::Packages(..) => TRIM_DIFFERENCE.value,
        };
        let grams = self.mass.to_grams();
        self.square / (grams * grams) + besides * besides
    }
}

/// What the weighings teach, in their order. Both sides of a muscle weighed one by one are the two together, so
/// that it does not matter how they differ; unless one of them alone says more, as when the other is a scrap.
pub(crate) fn seen(weighings: &[Weighing]) -> Vec<Seen> {
    let mut all: Vec<Seen> = Vec::new();
    for weighing in weighings {
        let now = Seen::of(*weighing);
        match (all.last_mut(), now.target) {
            (Some(last), OnScale::Muscle(muscle, Sides::One(_)))
                if last.target == OnScale::Muscle(muscle, Sides::One(Side::Left)) =>
            {
                let target = OnScale::Muscle(muscle, Sides::Both);
                let both = Seen { target, mass: last.mass + now.mass, square: last.square + now.square };
                for other in [now, both] {
                    if other.variance() < last.variance() {
                        *last = other;
                    }
                }
            }
            _ => all.push(now),
        }
    }
    all
}

/// Why a weight is hard to believe. It is asked about, never refused.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// It is heavier than all the meat that is expected.
    MoreThanAllMeat {
        /// All of it.
        meat: Mass,
    },
    /// It lies farther from what is expected than [`FAR`] standard deviations.
    Far {
        /// What is expected.
        expected: Mass,
        /// How many standard deviations away it lies, of the logarithm.
        off: f64,
    },
}

/// What is hard to believe about a weight, by everything else that the plan says and by the other weights. None
/// if nothing is, or if nothing is expected there.
pub fn doubt(plan: &Plan, weighing: Weighing) -> Option<Doubt> {
    let Weighing { target, mass } = weighing;
    let others: Vec<Weighing> =
        plan.weighings().iter().copied().filter(|other| !target.replaces(other.target)).collect();
    let exp = |column: &[f64]| Mass::grams(libm::exp(column[0]));
    let meat = weighed::expected(plan, &others, OnScale::Lot).map(|column| exp(&column));
    if let Some(meat) = meat
        && target != OnScale::Lot
        && mass > meat
    {
        return Some(Doubt::MoreThanAllMeat { meat });
    }
    let expected = weighed::expected(plan, &others, target)?;
    let spread = kalman::deviation(&expected);
    let error = (spread * spread + Seen::of(weighing).variance()).sqrt();
    let off = (libm::log(mass.to_grams()) - expected[0]) / error;
    (off.abs() > FAR.value).then(|| Doubt::Far { expected: exp(&expected), off })
}
