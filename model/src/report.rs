//! The forecast as plain rows for scripts: what the `forecast` example prints as JSON.
//!
//! Grams are whole; the likely column of the ledger is rounded so that it still adds up to the gram.

use serde::ser::{Serialize, SerializeMap, Serializer};

use crate::estimate::Estimate;
use crate::forecast::{Forecast, Line, MuscleForecast, PackRow, Tally};
use crate::link::{self, Names};
use crate::plan::Plan;
use crate::units::Mass;

/// Low, likely and high of a whole number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
pub struct Whole {
    /// Lower end of the middle 80 %.
    pub low: u32,
    /// Middle case.
    pub likely: u32,
    /// Upper end of the middle 80 %.
    pub high: u32,
}

impl From<Estimate<u32>> for Whole {
    fn from(count: Estimate<u32>) -> Self {
        Self { low: count.low(), likely: count.likely(), high: count.high() }
    }
}

impl From<Estimate<Mass>> for Whole {
    fn from(mass: Estimate<Mass>) -> Self {
        let grams = |mass: Mass| mass.to_grams().round() as u32;
        Self { low: grams(mass.low()), likely: grams(mass.likely()), high: grams(mass.high()) }
    }
}

/// Named rows that keep their order.
#[derive(Clone, Debug, PartialEq)]
pub struct Rows<T>(pub Vec<(&'static str, T)>);

impl<T: Serialize> Serialize for Rows<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for (name, row) in &self.0 {
            map.serialize_entry(name, row)?;
        }
        map.end()
    }
}

/// Packages of one product.
#[derive(Clone, Debug, PartialEq, serde::Serialize)]
pub struct ProductReport {
    /// Packages.
    pub count: Whole,
    /// All of them together, grams.
    pub grams: Whole,
}

/// One muscle group, both sides.
#[derive(Clone, Debug, PartialEq, serde::Serialize)]
pub struct MuscleReport {
    /// Before it is cut, grams.
    #[serde(flatten)]
    pub grams: Whole,
    /// Its packages; stew and grind are pooled and not here.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub packs: Vec<PackReport>,
}

/// Packages of one cut of one muscle.
#[derive(Clone, Debug, PartialEq, serde::Serialize)]
pub struct PackReport {
    /// Which product.
    pub product: &'static str,
    /// Pieces.
    pub pieces: Whole,
    /// Packages.
    pub count: Whole,
    /// All of them together, grams.
    pub grams: Whole,
    /// Pieces in a full package.
    pub a_pack: u32,
    /// Pieces in a short last package; 0 if none is short.
    pub short: u32,
}

/// Everything.
#[derive(Clone, Debug, PartialEq, serde::Serialize)]
pub struct Report {
    /// What low and high mean.
    pub range: &'static str,
    /// The plan as a link, title left out.
    pub link: String,
    /// Live weight, grams.
    pub live_g: Whole,
    /// Field-dressed, lower legs on.
    pub field_dressed_g: Whole,
    /// Hanging.
    pub hanging_g: Whole,
    /// Careful boneless, before shot, hurry and hanging.
    pub careful_boneless_g: Whole,
    /// What goes into packages.
    pub take_home_g: Whole,
    /// From live to take-home; the likely column adds up to live.
    pub ledger: Rows<Whole>,
    /// By group, both sides, before cutting.
    pub muscles: Rows<MuscleReport>,
    /// By product.
    pub packages: Rows<ProductReport>,
    /// All packages.
    pub all_packages: Whole,
}

/// The report of a plan and its forecast.
pub fn report(plan: &Plan, forecast: &Forecast) -> Report {
    let ledger = ledger(forecast);
    let take_home_g = ledger
        .iter()
        .find(|(line, _)| *line == Line::TakeHome)
        .map_or(forecast.take_home.into(), |(_, row)| *row);
    Report {
        range: "low to high holds 80 % of 1000 scenarios; likely is the middle case",
        link: link::write(&plan.clone().into(), Names::LeftOut),
        live_g: forecast.live.into(),
        field_dressed_g: forecast.dressed.into(),
        hanging_g: forecast.hanging.into(),
        careful_boneless_g: forecast.lean.into(),
        take_home_g,
        ledger: Rows(ledger.into_iter().map(|(line, row)| (line.id(), row)).collect()),
        muscles: Rows(
            forecast.muscles.iter().map(|muscle| (muscle.muscle.id(), muscle_report(muscle))).collect(),
        ),
        packages: Rows(
            forecast.tallies.iter().map(|tally| (tally.product.id(), product_report(tally))).collect(),
        ),
        all_packages: forecast.packs.into(),
    }
}

/// The ledger in whole grams, its likely column rounded by largest remainder so that it adds up to live.
pub fn ledger(forecast: &Forecast) -> Vec<(Line, Whole)> {
    let mut rows: Vec<(Line, Whole)> =
        forecast.ledger.iter().map(|(line, mass)| (*line, (*mass).into())).collect();
    let live = rows[0].1.likely;
    for (row, (_, mass)) in rows.iter_mut().zip(&forecast.ledger).skip(1) {
        row.1.likely = mass.likely().to_grams() as u32;
    }
    let mut by_remainder: Vec<usize> = (1..rows.len()).collect();
    let remainder = |index: usize| forecast.ledger[index].1.likely().to_grams().fract();
    by_remainder.sort_by(|a, b| remainder(*b).total_cmp(&remainder(*a)));
    let short = live.saturating_sub(rows[1..].iter().map(|(_, row)| row.likely).sum());
    for index in by_remainder.into_iter().take(short as usize) {
        rows[index].1.likely += 1;
    }
    for (_, row) in &mut rows {
        row.low = row.low.min(row.likely);
        row.high = row.high.max(row.likely);
    }
    rows
}

fn muscle_report(muscle: &MuscleForecast) -> MuscleReport {
    MuscleReport { grams: muscle.mass.into(), packs: muscle.packs.iter().filter_map(pack_report).collect() }
}

fn pack_report(row: &PackRow) -> Option<PackReport> {
    Some(PackReport {
        product: row.cut.product()?.id(),
        pieces: row.pieces.into(),
        count: row.packs.into(),
        grams: row.mass.into(),
        a_pack: row.a_pack,
        short: row.short.unwrap_or(0),
    })
}

fn product_report(tally: &Tally) -> ProductReport {
    ProductReport { count: tally.packs.into(), grams: tally.mass.into() }
}
