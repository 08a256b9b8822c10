//! The facts, as rows. A better figure is a change to one row and its source.

mod adjustments;
mod losses;
mod muscles;
mod neighbours;
mod portions;
mod territory;
mod yields;

pub use adjustments::{Adjustment, ShareRow, Shifts, hind_leg, season_weight, share_row, shifts};
pub use losses::{dried, left_behind, legs_on_per_legs_off, shot_loss};
pub use muscles::{MUSCLES, MuscleRow, REFERENCE_HANGING, Size, muscle};
pub use neighbours::{neighbours, touching};
pub use portions::{PORTIONS, PortionRow, portion};
pub use territory::{Territory, territory};
pub use yields::{
    Figure, GIRTH_SPREAD, GirthRow, NonLean, TYPICAL_SPREAD, TypicalRow, WEIGHT_LIMITS, YieldRow, girth,
    non_lean, typical_live, weight_limits, yields,
};
