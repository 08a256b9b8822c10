//! Calendar dates, and until when a package is at its best: a range with every source, quality and not safety.

use crate::product::Product;
use crate::tables::{KEEPING, KeepRow};

/// First and last year a plan may name.
pub const YEARS: (i32, i32) = (2000, 2200);

/// A day of the calendar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Date(time::Date);

/// Why something is no date, or no date that fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DateError {
    /// Outside the years a plan may name.
    YearOutOfRange {
        /// First year.
        first: i32,
        /// Last year.
        last: i32,
    },
    /// Months are 1 to 12.
    NoSuchMonth,
    /// The month is shorter, or the day is 0.
    NoSuchDay {
        /// Last day of that month.
        last: u8,
    },
    /// Packed before the animal was taken: one of the two dates is wrong.
    PackedBeforeHarvest {
        /// When it was taken.
        harvested: Date,
        /// When it was packed.
        packed: Date,
    },
}

impl Date {
    /// A day by its year, month (1 to 12) and day of the month.
    ///
    /// # Errors
    /// A day that is not in the calendar, or a year outside [`YEARS`].
    pub fn new(year: i32, month: u8, day: u8) -> Result<Self, DateError> {
        let (first, last) = YEARS;
        if year < first || year > last {
            return Err(DateError::YearOutOfRange { first, last });
        }
        let month = time::Month::try_from(month).map_err(|_| DateError::NoSuchMonth)?;
        time::Date::from_calendar_date(year, month, day)
            .map(Self)
            .map_err(|_| DateError::NoSuchDay { last: month.length(year) })
    }

    /// The year.
    pub fn year(self) -> i32 {
        self.0.year()
    }
    /// The month, 1 to 12.
    pub fn month(self) -> u8 {
        u8::from(self.0.month())
    }
    /// The day of the month, from 1.
    pub fn day(self) -> u8 {
        self.0.day()
    }

    /// So many days later.
    #[must_use]
    pub fn plus_days(self, days: u16) -> Self {
        Self(self.0.saturating_add(time::Duration::days(i64::from(days))))
    }

    /// The same day so many months later, or the last of that month if it is shorter: 31 January and a month
    /// is 28 or 29 February.
    #[must_use]
    pub fn plus_months(self, months: u8) -> Self {
        let months = i32::from(self.month()) - 1 + i32::from(months);
        let year = self.year() + months / 12;
        // The year stays far inside the calendar's range, so the day always exists; were it not to, no date
        // is moved.
        time::Month::try_from((months % 12 + 1) as u8)
            .ok()
            .and_then(|month| {
                time::Date::from_calendar_date(year, month, self.day().min(month.length(year))).ok()
            })
            .map_or(self, Self)
    }

    /// How many days this is after `other`; below zero if before.
    pub fn days_after(self, other: Date) -> i32 {
        self.0.to_julian_day() - other.0.to_julian_day()
    }
}

/// What decides how long frozen meat keeps.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keeps {
    /// Roasts.
    Roast,
    /// Steaks.
    Steak,
    /// Chops.
    Chop,
    /// Cubes.
    Stew,
    /// Ground meat, nothing added.
    Ground,
    /// Ground meat with fat added; the fat turns first.
    GroundWithFat,
    /// Raw sausage.
    Sausage,
    /// Heart, liver and the like.
    Organs,
}

impl Keeps {
    /// Every one.
    pub const ALL: [Keeps; 8] = [
        Keeps::Roast,
        Keeps::Steak,
        Keeps::Chop,
        Keeps::Stew,
        Keeps::Ground,
        Keeps::GroundWithFat,
        Keeps::Sausage,
        Keeps::Organs,
    ];

    /// The name by which files know it, for ever.
    pub const fn id(self) -> &'static str {
        match self {
            Keeps::Roast => "roast",
            Keeps::Steak => "steak",
            Keeps::Chop => "chop",
            Keeps::Stew => "stew",
            Keeps::Ground => "ground",
            Keeps::GroundWithFat => "ground_with_fat",
            Keeps::Sausage => "sausage",
            Keeps::Organs => "organs",
        }
    }

    /// How a product keeps; ground meat by whether fat was added.
    pub fn of(product: Product, fat_added: bool) -> Keeps {
        match product {
            Product::Roast => Keeps::Roast,
            Product::Steak => Keeps::Steak,
            Product::Chop => Keeps::Chop,
            Product::Stew => Keeps::Stew,
            Product::Grind if fat_added => Keeps::GroundWithFat,
            Product::Grind => Keeps::Ground,
        }
    }
}

/// Until when a package is at its best. Kept at 0 °F it stays safe for longer; this is about taste.
#[derive(Clone, Debug, PartialEq)]
pub struct BestBy {
    /// The date for the label: the first at which any source's range has run out; with added fat, the first at
    /// which any has begun to (from memory: added fat turns first). That this is the cautious end is judgement.
    pub label: Date,
    /// The earliest any source begins, and the latest any ends.
    pub range: (Date, Date),
    /// Every source, as dates.
    pub sources: Vec<BestByRow>,
}

/// What one source says, as dates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BestByRow {
    /// From and to.
    pub range: (Date, Date),
    /// The row.
    pub row: &'static KeepRow,
}

/// What the sources say of one form.
pub fn keeping(form: Keeps) -> impl Iterator<Item = &'static KeepRow> {
    KEEPING.iter().filter(move |row| row.forms.contains(&form))
}

/// The cautious number of months: see [`BestBy::label`].
pub fn cautious_months(form: Keeps) -> u8 {
    let months = keeping(form).map(|row| match form {
        Keeps::GroundWithFat => row.months.0,
        Keeps::Roast
        | Keeps::Steak
        | Keeps::Chop
        | Keeps::Stew
        | Keeps::Ground
        | Keeps::Sausage
        | Keeps::Organs => row.months.1,
    });
    months.min().unwrap_or_default()
}

/// Until when a package of this form is at its best.
///
/// # Errors
/// Packed before the harvest.
pub fn best_by(form: Keeps, packed: Date, harvested: Option<Date>) -> Result<BestBy, DateError> {
    if let Some(harvested) = harvested.filter(|harvested| *harvested > packed) {
        return Err(DateError::PackedBeforeHarvest { harvested, packed });
    }
    let dated = |row: &'static KeepRow| BestByRow {
        range: (packed.plus_months(row.months.0), packed.plus_months(row.months.1)),
        row,
    };
    let sources: Vec<BestByRow> = keeping(form).map(dated).collect();
    let label = packed.plus_months(cautious_months(form));
    let earliest = sources.iter().map(|row| row.range.0).min().unwrap_or(label);
    let latest = sources.iter().map(|row| row.range.1).max().unwrap_or(label);
    Ok(BestBy { label, range: (earliest, latest), sources })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_form_has_a_source_and_a_month_count() {
        for form in Keeps::ALL {
            assert!(keeping(form).count() >= 1, "{form:?}");
            assert!((1..=12).contains(&cautious_months(form)), "{form:?}");
        }
        for row in &KEEPING {
            assert!(row.months.0 <= row.months.1);
        }
    }
}
