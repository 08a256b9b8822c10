//! How far a scale and a cutter's hand are to be trusted.

use super::fact::{Fact, fact};
use crate::sources::{Grade, Source};
use crate::units::Mass;

/// The step in which a kitchen or hanging scale is read; half of it counts as one standard deviation.
pub const SCALE_STEP: Fact<Mass> = fact(Mass::grams(10.0), Grade::D, Source::Judgement);
/// The part of the weight by which such a scale is off besides, one standard deviation.
pub const SCALE_PART: Fact<f64> = fact(0.01, Grade::D, Source::Judgement);
/// How far the left and the right muscle of one animal lie from their mean, one standard deviation. It counts
/// while only one of them was weighed.
pub const SIDE_DIFFERENCE: Fact<f64> = fact(0.03, Grade::D, Source::Judgement);
/// How far what a hand squares off and trims away lies from what is computed, one standard deviation of what
/// lands in the tub or in packages.
pub const TRIM_DIFFERENCE: Fact<f64> = fact(0.03, Grade::D, Source::Judgement);
/// From so many standard deviations on a weight is questioned: of a normal variable, one in 370 lies there.
pub const FAR: Fact<f64> = fact(3.0, Grade::D, Source::Judgement);
