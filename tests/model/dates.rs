//! Dates against another calendar, and best-by dates against the sources' own words.

use hindsaddle_model::dates::{BestBy, Date, DateError, Keeps, best_by, cautious_months, keeping};
use hindsaddle_model::product::Product;
use hindsaddle_model::sources::Source;

#[track_caller]
fn day(year: i32, month: u8, day: u8) -> Date {
    Date::new(year, month, day).unwrap()
}

fn parts(date: Date) -> (i32, u8, u8) {
    (date.year(), date.month(), date.day())
}

/// Every day that a plan may name, against jiff: the day after, and 0 to 14 months on.
#[test]
fn the_calendar_agrees_with_another_one() {
    let theirs = |date: jiff::civil::Date| {
        (i32::from(date.year()), date.month().unsigned_abs(), date.day().unsigned_abs())
    };
    let (mut ours, mut other) = (day(2000, 1, 1), jiff::civil::date(2000, 1, 1));
    for count in 0..73_414 {
        assert_eq!(parts(ours), theirs(other));
        assert_eq!(ours.days_after(day(2000, 1, 1)), count);
        for months in 0..15_u8 {
            let span = jiff::Span::new().months(i64::from(months));
            assert_eq!(parts(ours.plus_months(months)), theirs(other.checked_add(span).unwrap()));
        }
        ours = ours.plus_days(1);
        other = other.tomorrow().unwrap();
    }
    assert_eq!(parts(ours), (2201, 1, 1));
}

#[test]
fn what_is_no_date_says_what_would_be() {
    let years = DateError::YearOutOfRange { first: 2000, last: 2200 };
    for (date, error) in [
        ((1999, 12, 31), years),
        ((2201, 1, 1), years),
        ((2026, 0, 1), DateError::NoSuchMonth),
        ((2026, 13, 1), DateError::NoSuchMonth),
        ((2026, 2, 29), DateError::NoSuchDay { last: 28 }),
        ((2028, 2, 30), DateError::NoSuchDay { last: 29 }),
        ((2026, 4, 0), DateError::NoSuchDay { last: 30 }),
    ] {
        assert_eq!(Date::new(date.0, date.1, date.2), Err(error));
    }
    assert_eq!(parts(day(2026, 1, 31).plus_months(1)), (2026, 2, 28));
    assert_eq!(parts(day(2200, 12, 31).plus_months(12)), (2201, 12, 31));
}

#[track_caller]
fn best(form: Keeps) -> BestBy {
    best_by(form, day(2026, 11, 25), Some(day(2026, 11, 20))).unwrap()
}

fn says(form: Keeps, source: Source) -> (u8, u8) {
    let mut rows = keeping(form).filter(|row| row.source == source);
    let row = rows.next().unwrap_or_else(|| panic!("{source:?} on {form:?}"));
    assert!(rows.next().is_none(), "{source:?} twice on {form:?}");
    row.months
}

/// The months as each source prints them.
#[test]
fn the_sources_are_kept_with_their_disagreement() {
    for (form, source, months) in [
        (Keeps::Steak, Source::UmnGame, (8, 12)),
        (Keeps::Roast, Source::UmnGame, (8, 12)),
        (Keeps::Ground, Source::UmnGame, (2, 3)),
        (Keeps::Stew, Source::UmnGame, (2, 3)),
        (Keeps::Steak, Source::MsuGame, (8, 12)),
        (Keeps::Roast, Source::PennGame, (9, 12)),
        (Keeps::Ground, Source::CsuGame, (6, 6)),
        (Keeps::Chop, Source::CsuGame, (6, 6)),
        (Keeps::Steak, Source::GarrettColumn, (6, 9)),
        (Keeps::Ground, Source::GarrettColumn, (3, 3)),
        (Keeps::Ground, Source::ApplianceMonths, (3, 4)),
        (Keeps::Steak, Source::FdaStorage, (6, 12)),
        (Keeps::Chop, Source::FdaStorage, (4, 6)),
        (Keeps::Ground, Source::FdaStorage, (3, 4)),
        (Keeps::Sausage, Source::FdaStorage, (1, 2)),
        (Keeps::Organs, Source::FdaStorage, (3, 4)),
        (Keeps::Roast, Source::FoodSafetyGov, (4, 12)),
        (Keeps::Chop, Source::FoodKeeper, (4, 12)),
        (Keeps::Stew, Source::FoodKeeper, (4, 12)),
        (Keeps::Organs, Source::ColumbiaText, (3, 4)),
    ] {
        assert_eq!(says(form, source), months, "{source:?} on {form:?}");
    }
}

/// The label has the first date at which a source's range has run out; added fat, the first at which one begins.
#[test]
fn the_label_has_the_cautious_end() {
    for (form, months) in [
        (Keeps::Roast, 6),
        (Keeps::Steak, 6),
        (Keeps::Chop, 6),
        (Keeps::Stew, 3),
        (Keeps::Ground, 3),
        (Keeps::GroundWithFat, 2),
        (Keeps::Sausage, 2),
        (Keeps::Organs, 4),
    ] {
        assert_eq!(cautious_months(form), months, "{form:?}");
        let best = best(form);
        assert_eq!(best.label, day(2026, 11, 25).plus_months(months));
        assert!(best.range.0 <= best.label && best.label <= best.range.1, "{form:?}");
        assert!(best.sources.iter().all(|row| row.range.0 >= best.range.0 && row.range.1 <= best.range.1));
    }
    let ground = best(Keeps::Ground);
    assert_eq!((parts(ground.range.0), parts(ground.range.1)), ((2027, 1, 25), (2027, 5, 25)));
    assert_eq!(parts(ground.label), (2027, 2, 25));
    assert_eq!(Keeps::of(Product::Grind, true), Keeps::GroundWithFat);
    assert_eq!(Keeps::of(Product::Grind, false), Keeps::Ground);
}

#[test]
fn packing_before_the_harvest_is_refused() {
    let (packed, harvested) = (day(2026, 11, 19), day(2026, 11, 20));
    let error = DateError::PackedBeforeHarvest { harvested, packed };
    assert_eq!(best_by(Keeps::Steak, packed, Some(harvested)), Err(error));
    assert!(best_by(Keeps::Steak, harvested, Some(harvested)).is_ok());
    assert!(best_by(Keeps::Steak, packed, None).is_ok());
}
