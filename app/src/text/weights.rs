//! Weights as they are typed and as they were read off a scale, to the gram or the tenth of an ounce.

use hindsaddle_model::units::Mass;

use super::numbers::{self, Units};

/// A weight as a person types it: "1 lb 4 oz", "570g", "0,8 kg"; a number alone is in the reader's big unit.
pub fn typed_weight(text: &str, units: Units) -> Option<Mass> {
    let mut total = Mass::ZERO;
    let mut rest = text.trim();
    if rest.is_empty() {
        return None;
    }
    while !rest.is_empty() {
        let is_number = |letter: char| letter.is_ascii_digit() || letter == '.' || letter == ',';
        let (number, behind) = rest.split_at(rest.find(|letter| !is_number(letter)).unwrap_or(rest.len()));
        let behind = behind.trim_start();
        let (unit, left) = behind
            .split_at(behind.find(|letter: char| !letter.is_ascii_alphabetic()).unwrap_or(behind.len()));
        let value = numbers::typed(number)?;
        let is = |name: &str| unit.eq_ignore_ascii_case(name);
        total += if is("lb") || is("lbs") {
            Mass::pounds(value)
        } else if is("oz") {
            Mass::ounces(value)
        } else if is("kg") {
            Mass::kilograms(value)
        } else if is("g") {
            Mass::grams(value)
        } else if unit.is_empty() && left.is_empty() && number.len() == text.trim().len() {
            numbers::typed_mass(value, units)
        } else {
            return None;
        };
        rest = left.trim_start();
    }
    Some(total)
}

/// A weight as it was read off: "1 lb 4 oz", "12.8 oz"; "362 g", "1.325 kg".
pub fn weight(mass: Mass, units: Units) -> String {
    let tenths = |value: f64| numbers::one_decimal(value);
    match units {
        Units::Kilograms if mass < Mass::kilograms(1.0) => format!("{} g", mass.to_grams().round() as u32),
        Units::Kilograms => {
            let grams = mass.to_grams().round() as u32;
            let part = format!("{:03}", grams % 1000);
            let part = part.trim_end_matches('0');
            let point = if part.is_empty() { "" } else { "." };
            format!("{}{point}{part} kg", grams / 1000)
        }
        Units::Pounds => {
            let all = (mass.to_ounces() * 10.0).round();
            let pounds = (all / 160.0).floor();
            match (pounds as u32, (all - pounds * 160.0) / 10.0) {
                (0, ounces) => format!("{} oz", tenths(ounces)),
                (pounds, 0.0) => format!("{pounds} lb"),
                (pounds, ounces) => format!("{pounds} lb {} oz", tenths(ounces)),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weights_are_read_as_people_write_them() {
        for (text, grams) in [
            ("1 lb 4 oz", 566.99),
            ("1lb4oz", 566.99),
            ("12.5 oz", 354.37),
            ("12,5 OZ", 354.37),
            ("570 g", 570.0),
            ("570g", 570.0),
            (" 0,8 kg ", 800.0),
            ("2 lbs", 907.18),
            ("1.25", 566.99),
        ] {
            let mass = typed_weight(text, Units::Pounds).unwrap();
            assert!((mass.to_grams() - grams).abs() < 0.01, "{text}: {mass:?}");
        }
        assert_eq!(typed_weight("1.25", Units::Kilograms), Some(Mass::kilograms(1.25)));
        for wrong in ["", "heavy", "lb", "1 lb 4", "4 1 lb", "1 stone", "1.2.3 lb", "-3 lb", "1 lb!"] {
            assert_eq!(typed_weight(wrong, Units::Pounds), None, "{wrong}");
        }
    }

    #[test]
    fn a_weight_is_said_as_it_was_read_off() {
        for (grams, pounds, kilograms) in [
            (340.0, "12 oz", "340 g"),
            (567.0, "1 lb 4 oz", "567 g"),
            (454.0, "1 lb", "454 g"),
            (453.4, "1 lb", "453 g"),
            (1325.0, "2 lb 14.7 oz", "1.325 kg"),
            (8200.0, "18 lb 1.2 oz", "8.2 kg"),
            (5000.0, "11 lb 0.4 oz", "5 kg"),
        ] {
            assert_eq!(weight(Mass::grams(grams), Units::Pounds), pounds);
            assert_eq!(weight(Mass::grams(grams), Units::Kilograms), kilograms);
        }
    }

    #[test]
    fn what_is_said_can_be_typed_again() {
        for grams in (1..20_000).step_by(37) {
            let mass = Mass::grams(f64::from(grams));
            for units in [Units::Pounds, Units::Kilograms] {
                let again = typed_weight(&weight(mass, units), units).unwrap();
                assert!((again - mass).to_grams().abs() < 1.5, "{}", weight(mass, units));
            }
        }
    }
}
