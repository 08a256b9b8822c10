//! How fat meat is, what is added to make it fatter, and Pearson's square.

use crate::tables::FATS;
use crate::units::Mass;

/// How much of meat or fat tissue is fat. Inside: percent.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct FatContent(f64);

impl FatContent {
    /// From percent.
    pub const fn percent(percent: f64) -> Self {
        Self(percent)
    }
    /// In percent.
    pub const fn to_percent(self) -> f64 {
        self.0
    }

    fn is_possible(self) -> bool {
        (0.0..=100.0).contains(&self.0)
    }
}

/// A fat that has a row in [`FATS`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NamedFat {
    /// From the back of a pig.
    PorkBackFat,
    /// Cut off beef.
    BeefFat,
}

impl NamedFat {
    /// Every one.
    pub const ALL: [NamedFat; 2] = [NamedFat::PorkBackFat, NamedFat::BeefFat];
}

/// What is added to the tub.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Added {
    /// A fat whose content is known.
    Fat(NamedFat),
    /// Pork trim, with the content its seller states.
    PorkTrim(FatContent),
}

impl Added {
    /// How much of it is fat.
    pub fn content(self) -> FatContent {
        match self {
            Added::Fat(fat) => FATS[fat as usize].content.value,
            Added::PorkTrim(content) => content,
        }
    }
}

/// Why two ingredients do not give a mix.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SquareError {
    /// A content that is not between 0 and 100 %.
    NotAPercentage,
    /// Both contents are alike: no mix of them has another.
    SameFat {
        /// What both have.
        both: FatContent,
    },
    /// Leaner than both.
    TargetBelowBoth {
        /// The leanest that is possible.
        least: FatContent,
    },
    /// Fatter than both.
    TargetAboveBoth {
        /// The fattest that is possible.
        most: FatContent,
    },
}

/// The two parts of a mix. They add up to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Square {
    /// The part of the mix that is the second ingredient.
    second: f64,
}

impl Square {
    /// Pearson's square: how much of each of two ingredients gives `target`. Their order does not matter.
    ///
    /// # Errors
    /// A target that no mix of the two has.
    pub fn new(first: FatContent, second: FatContent, target: FatContent) -> Result<Self, SquareError> {
        if ![first, second, target].iter().all(|content| content.is_possible()) {
            return Err(SquareError::NotAPercentage);
        }
        let (least, most) = if first < second { (first, second) } else { (second, first) };
        if target < least {
            Err(SquareError::TargetBelowBoth { least })
        } else if target > most {
            Err(SquareError::TargetAboveBoth { most })
        } else if first == second {
            Err(SquareError::SameFat { both: first })
        } else {
            Ok(Self { second: (target.0 - first.0) / (second.0 - first.0) })
        }
    }

    /// Both masses of a mix that weighs `total`. The page asks the other way round; published answers are given for a
    /// total, and the tests check the square by them.
    pub fn of_total(self, total: Mass) -> (Mass, Mass) {
        let second = total * self.second;
        (total - second, second)
    }

    /// How much of the second goes to `first` of the first; none if the target is that of the second alone.
    pub fn added_to(self, first: Mass) -> Option<Mass> {
        (self.second < 1.0).then(|| first * (self.second / (1.0 - self.second)))
    }
}
