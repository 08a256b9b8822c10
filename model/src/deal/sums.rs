//! The weights that a number of packages can add up to.

/// Whole grams that can be reached: one bit each.
#[derive(Clone)]
pub(super) struct Sums(Vec<u64>);

const BITS: u32 = u64::BITS;

impl Sums {
    /// No package, no weight.
    pub(super) fn of_nothing() -> Self {
        Self(vec![1])
    }

    /// The same with up to `number` more packages of `grams`.
    pub(super) fn with(&self, grams: i64, number: u32) -> Self {
        let mut sums = self.clone();
        // Bundles of 1, 2, 4 … and what is then left can make every number.
        let (mut left, mut bundle) = (number, 1);
        while left > 0 {
            let taken = bundle.min(left);
            sums.or_shifted((grams * i64::from(taken)) as usize);
            left -= taken;
            bundle *= 2;
        }
        sums
    }

    fn or_shifted(&mut self, by: usize) {
        let (words, bits) = (by / BITS as usize, by % BITS as usize);
        let before = self.0.clone();
        self.0.resize(before.len() + words + 1, 0);
        for (place, word) in before.into_iter().enumerate() {
            self.0[place + words] |= word << bits;
            if bits > 0 {
                self.0[place + words + 1] |= word >> (BITS as usize - bits);
            }
        }
    }

    /// How far the nearest sum is from the stretch `low` to `high`, all in parts of a gram of which `unit` are a
    /// gram.
    pub(super) fn distance(&self, low: i64, high: i64, unit: i64) -> i64 {
        // The first whole gram that is not below the stretch.
        let first = if low <= 0 { 0 } else { ((low + unit - 1) / unit) as u32 };
        let above = self.at_least(first).map(|sum| (i64::from(sum) * unit - high).max(0));
        let below = first.checked_sub(1).and_then(|last| self.at_most(last));
        let below = below.map(|sum| low - i64::from(sum) * unit);
        match (above, below) {
            (Some(above), Some(below)) => above.min(below),
            (Some(only), None) | (None, Some(only)) => only,
            (None, None) => 0,
        }
    }

    fn at_least(&self, grams: u32) -> Option<u32> {
        let mut word = (grams / BITS) as usize;
        let mut bits = self.0.get(word)? & u64::MAX << (grams % BITS);
        while bits == 0 {
            word += 1;
            bits = *self.0.get(word)?;
        }
        Some(word as u32 * BITS + bits.trailing_zeros())
    }

    fn at_most(&self, grams: u32) -> Option<u32> {
        let grams = grams.min(self.0.len() as u32 * BITS - 1);
        let mut word = (grams / BITS) as usize;
        let mut bits = self.0[word] & u64::MAX >> (BITS - 1 - grams % BITS);
        while bits == 0 {
            word = word.checked_sub(1)?;
            bits = self.0[word];
        }
        Some(word as u32 * BITS + BITS - 1 - bits.leading_zeros())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Against every number of packages, one by one.
    #[test]
    fn the_nearest_sum_is_the_nearest() {
        let sums = Sums::of_nothing().with(454, 5).with(131, 1).with(70, 2);
        let mut all = Vec::new();
        for a in 0..=5 {
            for b in 0..=1 {
                for c in 0..=2 {
                    all.push(454 * a + 131 * b + 70 * c);
                }
            }
        }
        for unit in [1, 7] {
            for low in -500..20_000 {
                for high in [low, low + 40] {
                    let away = |sum: &i64| (low - sum * unit).max(sum * unit - high).max(0);
                    let nearest = all.iter().map(away).min().unwrap();
                    assert_eq!(sums.distance(low, high, unit), nearest, "{low} {high} {unit}");
                }
            }
        }
    }
}
