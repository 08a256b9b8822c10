//! The fixed ensemble: the same thousand scenarios on every device, for every plan.
//!
//! Each uncertain quantity owns one row of standard normal values, stratified (one value in each of a
//! thousand equally likely strata) and shuffled by a fixed generator that knows only the row's number. So no
//! edit makes an unrelated number jitter, and the same plan gives the same bits everywhere. Scenario 0 is the
//! middle case: everything at its likely value.

use std::sync::OnceLock;

use crate::anatomy::Muscle;
use crate::normal;

/// The middle case and a thousand draws.
pub const SCENARIOS: usize = 1001;

/// The part of the draws between the low and the high end of an estimate.
pub const COVERED: f64 = 0.80;

/// Standard deviations from the middle inside which that part of a normal distribution lies.
pub const COVERED_DEVIATIONS: f64 = 1.2816;

/// An uncertain quantity.
#[derive(Clone, Copy, Debug)]
pub enum Draw {
    /// Field-dressed over live.
    Dressed,
    /// Hanging over field-dressed.
    Hanging,
    /// Careful boneless over hanging.
    Lean,
    /// Bone in what is not lean.
    Bone,
    /// Loss around the wound.
    Shot,
    /// Meat left behind.
    LeftBehind,
    /// Drying while it hung.
    Drying,
    /// How far the animal is from what the girth or its kind says.
    Stage,
    /// How thick the hand really cuts.
    Hand,
    /// A muscle's share.
    Share(Muscle),
    /// A muscle's length.
    Length(Muscle),
}

const SINGLE_ROWS: usize = 9;
const ROWS: usize = SINGLE_ROWS + 2 * Muscle::COUNT;
/// No draw lies farther out than this many standard deviations.
const FARTHEST: f64 = 2.5;

impl Draw {
    fn row(self) -> usize {
        match self {
            Draw::Dressed => 0,
            Draw::Hanging => 1,
            Draw::Lean => 2,
            Draw::Bone => 3,
            Draw::Shot => 4,
            Draw::LeftBehind => 5,
            Draw::Drying => 6,
            Draw::Stage => 7,
            Draw::Hand => 8,
            Draw::Share(muscle) => SINGLE_ROWS + muscle.index(),
            Draw::Length(muscle) => SINGLE_ROWS + Muscle::COUNT + muscle.index(),
        }
    }

    /// Its standard normal value in every scenario.
    pub fn values(self) -> &'static [f64] {
        static ENSEMBLE: OnceLock<Vec<f64>> = OnceLock::new();
        let all = ENSEMBLE.get_or_init(ensemble);
        &all[self.row() * SCENARIOS..(self.row() + 1) * SCENARIOS]
    }
}

fn ensemble() -> Vec<f64> {
    let draws = SCENARIOS - 1;
    let strata: Vec<f64> = (0..draws)
        .map(|i| normal::quantile((i as f64 + 0.5) / draws as f64).max(-FARTHEST).min(FARTHEST))
        .collect();
    let mut all = Vec::with_capacity(ROWS * SCENARIOS);
    for row in 0..ROWS {
        let mut generator = SplitMix::new(row as u64);
        all.push(0.0);
        let start = all.len();
        all.extend_from_slice(&strata);
        let shuffled = &mut all[start..];
        for i in (1..draws).rev() {
            shuffled.swap(i, generator.below(i as u64 + 1) as usize);
        }
    }
    all
}

/// `SplitMix64` (Steele, Lea and Flood 2014): a fixed sequence for each seed; constants from the paper, from
/// memory and checked against its published first outputs.
#[derive(Clone, Debug)]
pub struct SplitMix(u64);

impl SplitMix {
    /// The sequence of a seed.
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next 64 bits.
    pub fn next_bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A whole number below `bound`, by the high bits of a product.
    pub fn below(&mut self, bound: u64) -> u64 {
        ((u128::from(self.next_bits()) * u128::from(bound)) >> 64) as u64
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_holds_the_middle_and_the_same_strata() {
        let mut first = Draw::Dressed.values().to_vec();
        let mut last = Draw::Length(Muscle::Skirt).values().to_vec();
        assert_eq!((first[0], last[0]), (0.0, 0.0));
        assert_ne!(first, last);
        first.sort_by(f64::total_cmp);
        last.sort_by(f64::total_cmp);
        assert_eq!(first, last);
    }

    #[test]
    fn the_covered_part_is_as_wide_as_is_said() {
        let exact = normal::quantile(0.5 + COVERED / 2.0);
        assert!((COVERED_DEVIATIONS - exact).abs() < 1e-4, "{exact}");
    }

    #[test]
    fn rows_are_nearly_uncorrelated() {
        let a = Draw::Dressed.values();
        let worst = Muscle::ALL
            .into_iter()
            .map(|muscle| {
                Draw::Share(muscle).values().iter().zip(a).map(|(x, y)| x * y).sum::<f64>().abs() / 1000.0
            })
            .fold(0.0, f64::max);
        assert!(worst < 0.12, "{worst}");
    }

    /// First outputs for seed 1234567, as printed with the reference implementation (from memory).
    #[test]
    fn splitmix_gives_its_published_sequence() {
        let mut generator = SplitMix::new(1_234_567);
        assert_eq!(generator.next_bits(), 6_457_827_717_110_365_317);
        assert_eq!(generator.next_bits(), 3_203_168_211_198_807_973);
    }
}
