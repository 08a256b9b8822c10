//! The tally as rows.

use hindsaddle_model::forecast::{Forecast, Line, Tally};
use hindsaddle_model::product::Product;

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
    /// "12 lb".
    pub mass: String,
    /// "9 to 13 lb".
    pub mass_ends: String,
    /// What a pack is, and the short last one: "1 lb each, 5 oz in the last".
    pub each: String,
}

/// The products of a forecast that give packages.
pub fn products(forecast: &Forecast, units: Units) -> Vec<ProductRow> {
    forecast
        .tallies
        .iter()
        .filter(|tally| tally.packs.high() > 0)
        .map(|tally| ProductRow {
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
}

/// The ledger, without lines that are empty in every scenario.
pub fn ledger(forecast: &Forecast, units: Units) -> Vec<LedgerRow> {
    let live = forecast.live.likely();
    forecast
        .ledger
        .iter()
        .filter(|(_, mass)| mass.high().to_grams() > 0.5)
        .map(|(line, mass)| LedgerRow {
            line: *line,
            mass: text::mass_likely(*mass, units),
            ends: text::mass_ends(*mass, units).unwrap_or_default(),
            part: mass.likely() / live,
        })
        .collect()
}
