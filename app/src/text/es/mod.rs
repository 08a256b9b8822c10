//! Spanish, as hunters and butchers of Mexico and the south-west of the United States speak it; `en` has the same
//! items with the same signatures. The reader is addressed as tú, numbers have a decimal point.
//!
//! Words that are chosen and kept: lámina (plate), cuenta (tally), ficha de mesa (table card), tina (tub), orden de
//! trabajo (work order), telilla (silverskin), fibra (grain) and fibras (fibres); asado, bistec, chuleta, guiso, molida (the cuts); bola,
//! cara, contracara, cuete, aguayón, empuje, diezmillo, chamorro (muscles, by the trade's names of beef: common
//! practice, no source); what other countries say is in `muscle_also`.

mod ahead;
mod citations;
mod glossary;
mod kitchen;
mod labels;
mod learn;
mod lessons;
mod names;
mod plate;
mod scale;
mod sentences;

pub use ahead::*;
pub use citations::*;
pub use glossary::*;
pub use kitchen::*;
pub use labels::*;
pub use learn::*;
pub use lessons::*;
pub use names::*;
pub use plate::*;
pub use scale::*;
pub use sentences::*;

/// "unas 4 oz", "unos 900 g": about so much, in the gender of its unit; below two there is no plural, so "cerca de 1 lb".
fn around(measure: &str) -> String {
    let number = measure.split(' ').next().unwrap_or_default();
    let about = if number.parse::<f64>().map_or(true, |number| number < 2.0) {
        "cerca de"
    } else if ["lb", "oz", "pulg", "h"].iter().any(|unit| measure.ends_with(&format!(" {unit}"))) {
        "unas"
    } else {
        "unos"
    };
    format!("{about} {measure}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn about_so_much_agrees_with_its_unit() {
        for (measure, said) in [
            ("4 oz", "unas 4 oz"),
            ("2.5 lb", "unas 2.5 lb"),
            ("24 pulg", "unas 24 pulg"),
            ("8.2 h", "unas 8.2 h"),
            ("900 g", "unos 900 g"),
            ("61 cm", "unos 61 cm"),
            ("3 pies", "unos 3 pies"),
            ("1 lb", "cerca de 1 lb"),
            ("1.4 pies³", "cerca de 1.4 pies³"),
            ("3/8 pulg", "cerca de 3/8 pulg"),
            ("1 1/2 pulg", "cerca de 1 1/2 pulg"),
        ] {
            assert_eq!(around(measure), said);
        }
    }
}
