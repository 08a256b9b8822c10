//! The facts, as rows. A better figure is a change to one row and its source.

mod adjustments;
mod cooking;
mod fact;
mod fats;
mod freezing;
mod grids;
mod keeping;
mod losses;
mod muscles;
mod neighbours;
mod portions;
mod scale;
mod territory;
mod territory_rows;
mod wraps;
mod yields;

pub use adjustments::{Adjustment, ShareRow, Shifts, hind_leg, season_weight, share_row, shifts};
pub use cooking::{COOK_TO, COOKED_YIELD, THAW, ThawRow};
pub use fact::Fact;
pub use fats::{
    BURGER_FAT, DEER_FAT, FAT_LIMIT, FATS, FatRow, GRIND_BEST, GRIND_WARMEST, PLATES, PlateRow, SAUSAGE_FAT,
};
pub use freezing::{HEAT, HOLDING, HeatRows, HoldRow, LOADS, LoadRow, SPACE, THICKEST_PACK};
pub use grids::GRIDS;
pub use keeping::{KEEPING, KeepRow};
pub use losses::{dried, left_behind, legs_on_per_legs_off, shot_loss};
pub use muscles::{MUSCLES, MuscleRow, REFERENCE_HANGING, Size, TENDER, muscle};
pub use neighbours::{neighbours, touching};
pub use portions::{PORTIONS, PortionRow, portion};
pub use scale::{FAR, SCALE_PART, SCALE_STEP, SIDE_DIFFERENCE, TRIM_DIFFERENCE};
pub use territory::{Territory, territory};
pub use wraps::{BAGS, BagRow, FLAT_PACK, PAPER_ROLLS, TURNS, TurnRow, VACUUM_ALLOWANCE, VACUUM_ROLLS};
pub use yields::{
    Figure, GIRTH_SPREAD, GirthRow, NonLean, TYPICAL_SPREAD, TypicalRow, WEIGHT_LIMITS, YieldRow, girth,
    non_lean, typical_live, weight_limits, yields,
};
