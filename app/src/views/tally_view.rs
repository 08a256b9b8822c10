//! The tally as rows.

use hindsaddle_model::estimate::Estimate;
use hindsaddle_model::forecast::{Forecast, Line, Tally};
use hindsaddle_model::product::Product;
use hindsaddle_model::units::Mass;

use crate::text::{self, Units};

/// One product with something in it.
#[derive(Clone, Debug, PartialEq)]
pub struct ProductRow {
    /// Which product.
    pub product: Product,
    /// "10".
    pub packs: String,
    /// "9 to 12".
    pub pack_ends: String,
    /// Low, likely and high count of packages, as parts of the highest count of any product, 0 to 1.
    pub span: [f64; 3],
    /// "12 lb".
    pub mass: String,
    /// "9 to 13 lb".
    pub mass_ends: String,
    /// What a pack is, and the short last one: "1 lb each, 5 oz in the last".
    pub each: String,
}

/// The products of a forecast that give packages.
pub fn products(forecast: &Forecast, units: Units) -> Vec<ProductRow> {
    let most = forecast.tallies.iter().map(|tally| tally.packs.high()).max().unwrap_or(0);
    let part = |count: u32| f64::from(count) / f64::from(most);
    forecast
        .tallies
        .iter()
        .filter(|tally| tally.packs.high() > 0)
        .map(|tally| ProductRow {
            span: [tally.packs.low(), tally.packs.likely(), tally.packs.high()].map(part),
            product: tally.product,
            packs: tally.packs.likely().to_string(),
            pack_ends: text::count_ends(tally.packs).unwrap_or_default(),
            mass: text::mass_likely(tally.mass, units),
            mass_ends: text::mass_ends(tally.mass, units).unwrap_or_default(),
            each: each(tally, units),
        })
        .collect()
}

fn each(tally: &Tally, units: Units) -> String {
    match tally.loose {
        Some((pack, Some(last))) => {
            text::loose_pack(&text::mass(pack, units), Some(&text::mass(last, units)))
        }
        Some((pack, None)) => text::loose_pack(&text::mass(pack, units), None),
        None if tally.packs.likely() > 0 => {
            text::whole_pack(&text::mass(tally.mass.likely() / f64::from(tally.packs.likely()), units))
        }
        None => String::new(),
    }
}

/// One line of the ledger.
#[derive(Clone, Debug, PartialEq)]
pub struct LedgerRow {
    /// Which line.
    pub line: Line,
    /// "16 lb".
    pub mass: String,
    /// "13 to 19 lb".
    pub ends: String,
    /// Part of the live weight, middle case, 0 to 1.
    pub part: f64,
    /// What of the live weight is left after it, 0 to 1: what flows on to the next line.
    pub left: f64,
}

/// The ledger, without lines that are empty in every scenario.
pub fn ledger(forecast: &Forecast, units: Units) -> Vec<LedgerRow> {
    let live = forecast.live.likely();
    let mut left = 1.0;
    let row = |(line, mass): &(Line, Estimate<Mass>)| {
        let part = mass.likely() / live;
        if !matches!(line, Line::Live | Line::TakeHome) {
            left -= part;
        }
        LedgerRow {
            line: *line,
            mass: text::mass_likely(*mass, units),
            ends: text::mass_ends(*mass, units).unwrap_or_default(),
            part,
            left,
        }
    };
    forecast.ledger.iter().filter(|(_, mass)| mass.high().to_grams() > 0.5).map(row).collect()
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::forecast::forecast;
    use hindsaddle_model::plan::Plan;

    use super::*;

    /// What flows down the lines arrives as what is taken home.
    #[test]
    fn the_flow_closes() {
        let rows = ledger(&forecast(&Plan::new(Animal::example())), Units::Pounds);
        assert_eq!((rows[0].line, rows[0].part), (Line::Live, 1.0));
        let last = rows.last().unwrap();
        assert_eq!(last.line, Line::TakeHome);
        // Lines that are left out weigh less than half a gram.
        assert!((last.left - last.part).abs() < 1e-4, "{last:?}");
        assert!(rows.windows(2).all(|two| two[1].left <= two[0].left));
    }

    #[test]
    fn a_span_holds_its_likely_count_and_one_reaches_the_end() {
        let rows = products(&forecast(&Plan::new(Animal::example())), Units::Pounds);
        assert!(
            rows.iter().all(|ProductRow { span: [low, likely, high], .. }| low <= likely && likely <= high)
        );
        assert!(rows.iter().any(|row| row.span[2] == 1.0));
    }
}
