//! How numbers are written: masses, lengths, counts and their ranges.

use hindsaddle_model::estimate::Estimate;
use hindsaddle_model::units::{Length, Mass};

use super::{INCHES, TO};

/// Which units the reader thinks in. It is the reader's, not the plan's: a link carries none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Units {
    /// Pounds, ounces, inches.
    Pounds,
    /// Kilograms, grams, millimetres.
    Kilograms,
}

impl Units {
    /// Both.
    pub const ALL: [Units; 2] = [Units::Pounds, Units::Kilograms];
}

/// A number of tenths as text: 45 is "4.5", 40 is "4".
fn tenths(value: i64) -> String {
    match value % 10 {
        0 => (value / 10).to_string(),
        rest => format!("{}.{rest}", value / 10),
    }
}

/// A number to a tenth: "1.4", "-0.5", "12".
pub fn one_decimal(value: f64) -> String {
    let all = rounded(value.abs() * 10.0);
    let sign = if value < 0.0 && all > 0 { "\u{2212}" } else { "" };
    format!("{sign}{}", tenths(all))
}

fn rounded(value: f64) -> i64 {
    (value + 0.5).floor() as i64
}

/// A mass with its unit: "13 oz", "4.2 lb", "45 lb"; "450 g", "4.2 kg", "20.5 kg".
pub fn mass(mass: Mass, units: Units) -> String {
    let (number, unit) = mass_parts(mass, units, mass);
    format!("{number} {unit}")
}

/// A mass as number and unit, as precise as suits a mass of the size of `like`, so that the ends of a range
/// are written alike.
fn mass_parts(mass: Mass, units: Units, like: Mass) -> (String, &'static str) {
    match units {
        Units::Pounds if like < Mass::ounces(4.0) => (tenths(rounded(mass.to_ounces() * 10.0)), "oz"),
        Units::Pounds if like < Mass::pounds(1.0) => (rounded(mass.to_ounces()).to_string(), "oz"),
        Units::Pounds if like < Mass::pounds(10.0) => (tenths(rounded(mass.to_pounds() * 10.0)), "lb"),
        Units::Pounds => (rounded(mass.to_pounds()).to_string(), "lb"),
        Units::Kilograms if like < Mass::grams(100.0) => (rounded(mass.to_grams()).to_string(), "g"),
        Units::Kilograms if like < Mass::kilograms(1.0) => {
            ((rounded(mass.to_grams() / 10.0) * 10).to_string(), "g")
        }
        Units::Kilograms if like < Mass::kilograms(10.0) => {
            (tenths(rounded(mass.to_kilograms() * 10.0)), "kg")
        }
        Units::Kilograms => (tenths(rounded(mass.to_kilograms() * 2.0) * 5), "kg"),
    }
}

/// The middle of a mass: "45 lb".
pub fn mass_likely(estimate: Estimate<Mass>, units: Units) -> String {
    mass(estimate.likely(), units)
}

/// The ends of a mass in the unit of its middle: "37 to 49 lb". None where the ends are written alike.
pub fn mass_ends(estimate: Estimate<Mass>, units: Units) -> Option<String> {
    let (low, unit) = mass_parts(estimate.low(), units, estimate.likely());
    let (high, _) = mass_parts(estimate.high(), units, estimate.likely());
    (low != high).then(|| format!("{low} {TO} {high} {unit}"))
}

/// A mass with its range: "45 lb, 37 to 49 lb".
pub fn mass_range(estimate: Estimate<Mass>, units: Units) -> String {
    match mass_ends(estimate, units) {
        Some(ends) => format!("{}, {ends}", mass_likely(estimate, units)),
        None => mass_likely(estimate, units),
    }
}

/// A count with its range: "41, 38 to 45".
pub fn count_range(estimate: Estimate<u32>) -> String {
    match count_ends(estimate) {
        Some(ends) => format!("{}, {ends}", estimate.likely()),
        None => estimate.likely().to_string(),
    }
}

/// The ends of a count: "38 to 45". None where they are the same.
pub fn count_ends(estimate: Estimate<u32>) -> Option<String> {
    (estimate.low() != estimate.high()).then(|| format!("{} {TO} {}", estimate.low(), estimate.high()))
}

/// A length with its unit: "3/8 in", "1 1/2 in", "24 in"; "13 mm", "61 cm".
pub fn length(length: Length, units: Units) -> String {
    match units {
        Units::Pounds => format!("{} {INCHES}", sixteenths(length.to_inches())),
        Units::Kilograms if length < Length::cm(10.0) => format!("{} mm", rounded(length.to_mm())),
        Units::Kilograms => format!("{} cm", rounded(length.to_cm())),
    }
}

/// A length that is only roughly known, to the whole inch or centimetre.
pub fn rough_length(length: Length, units: Units) -> String {
    match units {
        Units::Pounds => format!("{} {INCHES}", rounded(length.to_inches())),
        Units::Kilograms => format!("{} cm", rounded(length.to_cm())),
    }
}

/// Inches to the nearest sixteenth below 12 in, to the nearest whole inch above.
fn sixteenths(inches: f64) -> String {
    if inches >= 12.0 {
        return rounded(inches).to_string();
    }
    let all = rounded(inches * 16.0);
    let (whole, mut part, mut of) = (all / 16, all % 16, 16);
    while part % 2 == 0 && part > 0 {
        (part, of) = (part / 2, of / 2);
    }
    match (whole, part) {
        (whole, 0) => whole.to_string(),
        (0, part) => format!("{part}/{of}"),
        (whole, part) => format!("{whole} {part}/{of}"),
    }
}

/// What stands in a weight field: the number alone, to a tenth.
pub fn weight_field(mass: Mass, units: Units) -> String {
    match units {
        Units::Pounds => tenths(rounded(mass.to_pounds() * 10.0)),
        Units::Kilograms => tenths(rounded(mass.to_kilograms() * 10.0)),
    }
}

/// What stands in a girth field: the number alone, to a tenth.
pub fn girth_field(girth: Length, units: Units) -> String {
    match units {
        Units::Pounds => tenths(rounded(girth.to_inches() * 10.0)),
        Units::Kilograms => tenths(rounded(girth.to_cm() * 10.0)),
    }
}

/// The most digits of a typed number.
const MOST_DIGITS: usize = 12;

/// A number as a person types it, with a point or a comma.
pub fn typed(text: &str) -> Option<f64> {
    let text = text.trim();
    let (text, sign) = text.strip_prefix('-').map_or((text, 1.0), |rest| (rest, -1.0));
    let (whole, part) = text.split_once(['.', ',']).unwrap_or((text, ""));
    let all = format!("{whole}{part}");
    let digits = all.bytes().all(|byte| byte.is_ascii_digit());
    // More digits than this are no weight, and would not be exact.
    if all.is_empty() || all.len() > MOST_DIGITS || !digits {
        return None;
    }
    let scale = part.bytes().fold(1.0, |scale, _| scale * 10.0);
    all.parse::<u64>().ok().map(|number| sign * number as f64 / scale)
}

/// The unit of big weights.
pub fn weight_unit(units: Units) -> &'static str {
    match units {
        Units::Pounds => "lb",
        Units::Kilograms => "kg",
    }
}

/// The unit of girth.
pub fn girth_unit(units: Units) -> &'static str {
    match units {
        Units::Pounds => INCHES,
        Units::Kilograms => "cm",
    }
}

/// A typed weight.
pub fn typed_mass(number: f64, units: Units) -> Mass {
    match units {
        Units::Pounds => Mass::pounds(number),
        Units::Kilograms => Mass::kilograms(number),
    }
}

/// A typed girth.
pub fn typed_girth(number: f64, units: Units) -> Length {
    match units {
        Units::Pounds => Length::inches(number),
        Units::Kilograms => Length::cm(number),
    }
}

/// A fraction as percent: 0.76 is "76 %".
pub fn percent(fraction: f64) -> String {
    format!("{} %", tenths(rounded(fraction * 1000.0)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn masses_are_written_as_fine_as_they_are_known() {
        for (grams, pounds, kilograms) in [
            (45.0, "1.6 oz", "45 g"),
            (200.0, "7 oz", "200 g"),
            (454.0, "1 lb", "450 g"),
            (1905.0, "4.2 lb", "1.9 kg"),
            (20_412.0, "45 lb", "20.5 kg"),
        ] {
            assert_eq!(mass(Mass::grams(grams), Units::Pounds), pounds);
            assert_eq!(mass(Mass::grams(grams), Units::Kilograms), kilograms);
        }
    }

    #[test]
    fn inches_are_fractions() {
        for (mm, inches) in
            [(9.5, "3/8"), (12.7, "1/2"), (19.1, "3/4"), (25.4, "1"), (38.1, "1 1/2"), (610.0, "24")]
        {
            assert_eq!(length(Length::mm(mm), Units::Pounds), format!("{inches} {INCHES}"));
        }
    }

    #[test]
    fn a_range_is_written_in_the_unit_of_its_middle() {
        let estimate = Estimate::around(Mass::pounds(1.2), Mass::ounces(12.0), Mass::pounds(2.0));
        assert_eq!(mass_range(estimate, Units::Pounds), format!("1.2 lb, 0.8 {TO} 2 lb"));
        assert_eq!(mass_range(Estimate::exact(Mass::pounds(3.0)), Units::Pounds), "3 lb");
    }

    #[test]
    fn a_comma_is_a_point_and_nonsense_is_nothing() {
        assert_eq!(typed(" 49,9 "), Some(49.9));
        assert_eq!(typed("heavy"), None);
        assert_eq!(typed("inf"), None);
        assert_eq!(typed("-3"), Some(-3.0));
        assert_eq!(typed(".5"), Some(0.5));
        assert_eq!(typed("1.2.3"), None);
        assert_eq!(typed(""), None);
    }
}
