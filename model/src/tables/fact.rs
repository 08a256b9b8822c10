//! A figure that stands alone, with how good it is and where it is from.

use crate::sources::{Grade, Source};

/// One figure, its grade and its source.
#[derive(Clone, Copy, Debug)]
pub struct Fact<T> {
    /// The figure.
    pub value: T,
    /// How good it is.
    pub grade: Grade,
    /// Where it is from.
    pub source: Source,
}

pub(super) const fn fact<T: Copy>(value: T, grade: Grade, source: Source) -> Fact<T> {
    Fact { value, grade, source }
}
