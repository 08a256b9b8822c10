//! A quantity with its uncertainty: low, likely, high.
//!
//! `low` and `high` bound the middle 80 % of the ensemble in a forecast, and about 90 % of individuals in a
//! table row. There is no `Display`: a reader never gets the middle alone.

/// Three values in order: low ≤ likely ≤ high.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate<T> {
    low: T,
    likely: T,
    high: T,
}

impl<T: Copy + PartialOrd> Estimate<T> {
    /// Takes a middle case and the two ends of its spread; an end on the wrong side of the middle is
    /// moved to the middle, so that the order always holds.
    pub fn around(likely: T, low: T, high: T) -> Self {
        Self {
            low: if low < likely { low } else { likely },
            likely,
            high: if high > likely { high } else { likely },
        }
    }

    /// A value known exactly.
    pub fn exact(value: T) -> Self {
        Self { low: value, likely: value, high: value }
    }

    /// The low end.
    pub fn low(self) -> T {
        self.low
    }
    /// The middle case.
    pub fn likely(self) -> T {
        self.likely
    }
    /// The high end.
    pub fn high(self) -> T {
        self.high
    }

    /// The same estimate in another unit or type; `f` must keep the order.
    pub fn map<U: Copy + PartialOrd>(self, f: impl Fn(T) -> U) -> Estimate<U> {
        Estimate::around(f(self.likely), f(self.low), f(self.high))
    }
}

impl<T: Copy + PartialOrd + std::ops::Add<Output = T>> Estimate<T> {
    /// Both together, as if they turned out low together and high together: the widest that the sum can be.
    #[must_use]
    pub fn sum_if_alike(self, other: Self) -> Self {
        Self { low: self.low + other.low, likely: self.likely + other.likely, high: self.high + other.high }
    }
}

/// How many standard deviations from the middle the ends of a 90 % range of a normal variable lie.
pub(crate) const Z_90: f64 = 1.645;

impl Estimate<f64> {
    /// A table row's spread, checked when the table is compiled.
    ///
    /// # Panics
    /// If the three are not in order; in a constant, that fails the build.
    pub const fn row(low: f64, likely: f64, high: f64) -> Self {
        assert!(low <= likely && likely <= high, "a spread must be in order");
        Self { low, likely, high }
    }

    /// The value `z` standard deviations from the middle, with each half of the spread a normal half of its
    /// own width and `low`, `high` read as the ends of a 90 % range.
    pub fn at(self, z: f64) -> f64 {
        let half = if z < 0.0 { self.likely - self.low } else { self.high - self.likely };
        self.likely + half * z / Z_90
    }

    /// The spread moved by `shift`, as for an adjustment by sex or season.
    #[must_use]
    pub fn shifted(self, shift: f64) -> Self {
        Self { low: self.low + shift, likely: self.likely + shift, high: self.high + shift }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_order_always_holds() {
        let estimate = Estimate::around(5, 7, 3);
        assert_eq!((estimate.low(), estimate.likely(), estimate.high()), (5, 5, 5));
    }

    #[test]
    fn a_row_is_read_as_a_90_percent_range() {
        let spread = Estimate::row(1.0, 2.0, 4.0);
        assert_eq!(spread.at(0.0), 2.0);
        assert!((spread.at(Z_90) - 4.0).abs() < 1e-12);
        assert!((spread.at(-Z_90) - 1.0).abs() < 1e-12);
    }
}
