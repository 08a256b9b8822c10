//! From a column of scenarios to low, likely and high.

use crate::ensemble::{COVERED, SCENARIOS};
use crate::estimate::Estimate;
use crate::units::Mass;

/// Reads spreads off columns of scenarios, with one scratch column.
#[derive(Default)]
pub(crate) struct Spread {
    masses: Vec<f64>,
    counts: Vec<u32>,
}

/// The ranks of the low and high ends among the draws: as many draws lie below the low as above the high.
const LOW_RANK: usize = ((SCENARIOS - 1) as f64 * (1.0 - COVERED) / 2.0 + 0.5) as usize;
const HIGH_RANK: usize = SCENARIOS - 2 - LOW_RANK;

impl Spread {
    pub(crate) fn masses(&mut self, column: &[Mass]) -> Estimate<Mass> {
        self.masses.clear();
        self.masses.extend(column[1..].iter().map(|mass| mass.to_grams()));
        self.ends(column[0].to_grams())
    }

    pub(crate) fn differences(&mut self, more: &[Mass], less: &[Mass]) -> Estimate<Mass> {
        self.masses.clear();
        self.masses.extend(more[1..].iter().zip(&less[1..]).map(|(more, less)| (*more - *less).to_grams()));
        self.ends((more[0] - less[0]).to_grams())
    }

    fn ends(&mut self, likely: f64) -> Estimate<Mass> {
        let (_, low, above) = self.masses.select_nth_unstable_by(LOW_RANK, f64::total_cmp);
        let low = *low;
        let (_, high, _) = above.select_nth_unstable_by(HIGH_RANK - LOW_RANK - 1, f64::total_cmp);
        Estimate::around(Mass::grams(likely), Mass::grams(low), Mass::grams(*high))
    }

    pub(crate) fn counts(&mut self, column: &[u32]) -> Estimate<u32> {
        self.counts.clear();
        self.counts.extend_from_slice(&column[1..]);
        let (_, low, above) = self.counts.select_nth_unstable(LOW_RANK);
        let low = *low;
        let (_, high, _) = above.select_nth_unstable(HIGH_RANK - LOW_RANK - 1);
        Estimate::around(column[0], low, *high)
    }
}
