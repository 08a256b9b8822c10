//! A muscle divided along its length into parts, each with what it becomes.

use crate::product::Cut;
use crate::rules::Refusal;

/// The most parts of one muscle.
pub const MOST_PARTS: usize = 4;
/// A part of a muscle: how much of its length, and what it becomes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Percent of the muscle's length: 1 to 100.
    pub percent: u8,
    /// What it becomes.
    pub cut: Cut,
}

/// The parts of one muscle of one side, from the end where its axis starts; they add to 100 %.
#[derive(Clone, Debug, PartialEq)]
pub struct Division(Vec<Part>);

impl Division {
    /// The whole muscle as one part.
    pub fn whole(cut: Cut) -> Self {
        Self(vec![Part { percent: 100, cut: cut.on_grid() }])
    }

    /// Several parts.
    ///
    /// # Errors
    /// Too many parts, an empty one, or percents that do not add up to 100.
    pub fn new(mut parts: Vec<Part>) -> Result<Self, Refusal> {
        for part in &mut parts {
            part.cut = part.cut.on_grid();
        }
        if parts.len() > MOST_PARTS {
            return Err(Refusal::TooManyParts { most: MOST_PARTS });
        }
        if parts.iter().any(|part| part.percent == 0) {
            return Err(Refusal::EmptyPart);
        }
        let total: u32 = parts.iter().map(|part| u32::from(part.percent)).sum();
        if total == 100 { Ok(Self(parts)) } else { Err(Refusal::PartsDoNotAddUp { total }) }
    }

    /// The parts in order.
    pub fn parts(&self) -> &[Part] {
        &self.0
    }

    /// Each part with where it begins and ends, as fractions of the muscle's length.
    pub fn spans(&self) -> impl Iterator<Item = (f64, f64, Cut)> {
        let mut start = 0_u32;
        self.0.iter().map(move |part| {
            let from = start;
            start += u32::from(part.percent);
            (f64::from(from) / 100.0, f64::from(start) / 100.0, part.cut)
        })
    }

    /// What the whole muscle becomes, where it is one part.
    pub fn single(&self) -> Option<Cut> {
        match self.0.as_slice() {
            [part] => Some(part.cut),
            _ => None,
        }
    }
}
