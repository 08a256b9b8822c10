//! Where each muscle lies, on the lattice of the wounds.

use super::territory_rows::TERRITORIES;
use crate::anatomy::Muscle;

/// The lattice points of one muscle.
#[derive(Debug)]
pub struct Territory {
    /// Both ends of the drawn axis.
    pub axis: ((i8, i8), (i8, i8)),
    /// Height, first and last point: one row after the other, as often as the region is cut by the row.
    pub rows: &'static [(i8, i8, i8)],
}

/// The territory of a muscle.
pub fn territory(muscle: Muscle) -> &'static Territory {
    &TERRITORIES[muscle.index()]
}
