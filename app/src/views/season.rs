//! The animals of a season and two plans side by side, as plain values.

use hindsaddle_model::compare::sketch;
use hindsaddle_model::estimate::Estimate;
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::plan::Plan;
use hindsaddle_model::product::Product;
use hindsaddle_model::season::Season;
use hindsaddle_model::units::Mass;

use crate::text::{self, Units};

/// One animal.
#[derive(Clone, Debug, PartialEq)]
pub struct AnimalRow {
    /// "2 Doe".
    pub name: String,
    /// What it is and what was weighed.
    pub line: String,
    /// What it gives.
    pub gives: String,
    /// Whether its meat is counted with the rest.
    counts: bool,
    forecast: Forecast,
}

/// The animals of a season.
pub fn rows(season: &Season, units: Units) -> Vec<AnimalRow> {
    let of = |(place, plan): (usize, &Plan)| {
        let forecast = forecast(plan);
        AnimalRow {
            name: text::animal_name(plan, place),
            line: text::animal_line(plan, units),
            gives: text::tally(&forecast, units),
            counts: season.counts(place),
            forecast,
        }
    };
    season.animals().iter().enumerate().map(of).collect()
}

/// What the animals that count come to together: a name and a range.
pub fn together(rows: &[AnimalRow], units: Units) -> Vec<(&'static str, String)> {
    let counted: Vec<&Forecast> = rows.iter().filter(|row| row.counts).map(|row| &row.forecast).collect();
    let mut lines = vec![
        (text::ALL_PACKAGES, text::count_range(count(counted.iter().map(|forecast| forecast.packs)))),
        (text::TAKE_HOME, text::mass_range(total(counted.iter().map(|forecast| forecast.take_home)), units)),
    ];
    for product in Product::ALL {
        let of = || counted.iter().map(|forecast| &forecast.tallies[product as usize]);
        let packs = count(of().map(|tally| tally.packs));
        if packs.high() > 0 {
            let mass = text::mass_range(total(of().map(|tally| tally.mass)), units);
            lines.push((text::product(product), text::packs_and_mass(&text::count_range(packs), &mass)));
        }
    }
    lines
}

/// Low to low and high to high, as if the animals turned out alike.
fn total(parts: impl Iterator<Item = Estimate<Mass>>) -> Estimate<Mass> {
    parts.fold(Estimate::exact(Mass::ZERO), Estimate::sum_if_alike)
}

fn count(parts: impl Iterator<Item = Estimate<u32>>) -> Estimate<u32> {
    parts.fold(Estimate::exact(0), Estimate::sum_if_alike)
}

/// What a link of the season carries, line by line.
pub fn what_travels(season: &Season, named: bool, units: Units) -> Vec<String> {
    let mut lines: Vec<String> =
        season.animals().iter().map(|plan| text::travels(plan, named, units)).collect();
    let partners = season.partners().all().len();
    if partners > 0 {
        lines.push(text::partners_travel(partners, named));
    }
    lines.push(if named { text::NAMES_GO } else { text::NAMES_STAY }.to_owned());
    lines.push(text::STAYS.to_owned());
    lines
}

/// A line of the comparison: what it is about, then of one plan and of the other.
#[derive(Clone, Debug, PartialEq)]
pub struct CompareRow {
    /// What it is about.
    pub name: &'static str,
    /// Of each plan: packages, and what they weigh where that is said too.
    pub of: [(String, String); 2],
}

/// Two plans by what they come to.
pub fn compared(plans: [&Plan; 2], units: Units) -> Vec<CompareRow> {
    let forecasts = plans.map(forecast);
    let sketches = [sketch(&forecasts[0]), sketch(&forecasts[1])];
    let row = |name, of: &dyn Fn(usize) -> (String, String)| CompareRow { name, of: [of(0), of(1)] };
    let mut rows = vec![
        row(text::ALL_PACKAGES, &|plan| alone(text::count_range(forecasts[plan].packs))),
        row(text::TAKE_HOME, &|plan| alone(text::mass_range(forecasts[plan].take_home, units))),
    ];
    for product in Product::ALL {
        let tally = |plan: usize| &sketches[plan].tallies[product as usize];
        if tally(0).packs.high() + tally(1).packs.high() > 0 {
            rows.push(row(text::product(product), &|plan| {
                (text::count_range(tally(plan).packs), text::mass_range(tally(plan).mass, units))
            }));
        }
    }
    rows.push(row(text::TENDER_USE, &|plan| alone(text::part_of_tender(sketches[plan].tender_use))));
    rows.push(row(text::KNIFE_WORK, &|plan| {
        (text::knife_pieces(sketches[plan].pieces), text::knife_cubes(sketches[plan].cubes))
    }));
    rows
}

/// Only one thing to say.
fn alone(says: String) -> (String, String) {
    (says, String::new())
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::plan::{Action, Tested};
    use hindsaddle_model::season::Change;

    use super::*;

    fn two() -> Season {
        let one = Season::from(Plan::new(Animal::example()));
        one.apply(Change::AddLike(0)).unwrap().season
    }

    #[test]
    fn two_of_a_kind_come_to_twice_one() {
        let rows = rows(&two(), Units::Pounds);
        let one = &rows[0].forecast;
        let both = together(&rows, Units::Pounds);
        let packs = Estimate::sum_if_alike(one.packs, one.packs);
        assert_eq!(both[0], (text::ALL_PACKAGES, text::count_range(packs)));
        assert_eq!(packs.likely(), 2 * one.packs.likely());
    }

    #[test]
    fn meat_that_must_not_be_eaten_is_not_counted() {
        let act = Change::Act(1, Action::SetTested(Tested::DoNotEat));
        let rows = rows(&two().apply(act).unwrap().season, Units::Pounds);
        let alone = together(&rows[..1], Units::Pounds);
        assert_eq!(together(&rows, Units::Pounds), alone);
    }

    #[test]
    fn a_plan_compared_with_itself_is_the_same_in_every_line() {
        let plan = Plan::new(Animal::example());
        let rows = compared([&plan, &plan], Units::Pounds);
        assert!(rows.len() > 6);
        assert!(rows.iter().all(|row| row.of[0] == row.of[1]));
    }
}
