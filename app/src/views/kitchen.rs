//! The packages of a plan, their labels and their supplies, as plain values.

use hindsaddle_model::dates::{Date, Keeps, best_by};
use hindsaddle_model::forecast::Forecast;
use hindsaddle_model::grind::{GrindError, Grinding, Ground, grind};
use hindsaddle_model::packages::{Contents, Package, packages};
use hindsaddle_model::plan::Plan;
use hindsaddle_model::product::Product;
use hindsaddle_model::tables::COOK_TO;
use hindsaddle_model::units::Length;
use hindsaddle_model::wrap::{Supplies, Wrapped, wrapped};

use crate::text::{self, Units};

/// Everything that goes to the freezer.
#[derive(Clone, Debug, PartialEq)]
pub struct Packed {
    /// What the grinder gives.
    pub ground: Result<Ground, GrindError>,
    /// Every package, in working order.
    pub packages: Vec<Package>,
    /// Each with its wrap.
    pub wrapped: Vec<Wrapped>,
    /// Paper, tape, bags and rolls.
    pub supplies: Supplies,
}

/// The packages of a plan.
pub fn packed(plan: &Plan, forecast: &Forecast) -> Packed {
    let ground = ground(forecast, &plan.kitchen().grinder.grinding(plan.packing(), None));
    let packages = packages(forecast, ground.as_ref().ok());
    let wrapping = plan.kitchen().wrapping;
    let wrapped: Vec<Wrapped> =
        packages.iter().map(|package| wrapped(forecast, package, &wrapping)).collect();
    Packed { ground, supplies: Supplies::of(&wrapped, &wrapping), packages, wrapped }
}

/// The tub through the grinder.
///
/// # Errors
/// What the grinder cannot do.
pub fn ground(forecast: &Forecast, grinding: &Grinding) -> Result<Ground, GrindError> {
    grind(forecast.tallies[Product::Grind as usize].mass.likely(), grinding)
}

impl Packed {
    /// How a package keeps.
    pub fn keeps(&self, package: &Package) -> Keeps {
        let fat = self.ground.as_ref().is_ok_and(Ground::has_added_fat);
        Keeps::of(package.product, fat)
    }

    /// The forms that are frozen, each once.
    pub fn forms(&self) -> Vec<Keeps> {
        let mut forms = Vec::new();
        for package in &self.packages {
            let form = self.keeps(package);
            if !forms.contains(&form) {
                forms.push(form);
            }
        }
        forms
    }

    /// The date for the label of a package; None without a day of packing.
    pub fn best_by(&self, plan: &Plan, package: &Package) -> Option<Date> {
        let kitchen = plan.kitchen();
        best_by(self.keeps(package), kitchen.packed?, kitchen.harvested).ok().map(|until| until.label)
    }

    /// The lines of a label, the first the most important.
    pub fn label(&self, plan: &Plan, package: &Package, units: Units, blank_weight: bool) -> Vec<String> {
        let kitchen = plan.kitchen();
        let weight = (!blank_weight).then(|| text::mass(package.mass, units));
        let joined = |parts: Vec<String>| {
            parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" \u{b7} ")
        };
        let dates = [kitchen.packed.map(text::packed_on), kitchen.harvested.map(text::killed_on)];
        let lines = vec![
            text::package_name(package),
            joined(vec![text::package_pieces(package), text::label_weight(weight)]),
            joined(dates.into_iter().flatten().collect()),
            self.best_by(plan, package).map(text::best_by).unwrap_or_default(),
            joined(vec![
                text::species(plan.animal().species()).to_owned(),
                text::number_of(package.number, package.of),
                kitchen.owner.clone(),
                kitchen.tag.clone(),
            ]),
            text::cook_to(COOK_TO[0].value, COOK_TO[2].value),
            text::NOT_FOR_SALE.to_owned(),
        ];
        lines.into_iter().filter(|line| !line.is_empty()).collect()
    }

    /// The packages as rows of a table, its head first; names are the plan's.
    pub fn rows(&self, plan: &Plan) -> Vec<Vec<String>> {
        let kitchen = plan.kitchen();
        let date = |date: Option<Date>| date.map(iso).unwrap_or_default();
        let mut rows = vec![text::CSV_HEAD.map(str::to_owned).to_vec()];
        rows.extend(self.packages.iter().enumerate().map(|(index, package)| {
            let pieces = match package.contents {
                Contents::Pieces { pieces, .. } | Contents::Patties(pieces) => pieces.to_string(),
                Contents::Pooled => String::new(),
            };
            vec![
                (index + 1).to_string(),
                package.product.id().to_owned(),
                package.muscle().map(|muscle| muscle.id().to_owned()).unwrap_or_default(),
                pieces,
                (package.mass.to_grams().round() as i64).to_string(),
                package.number.to_string(),
                package.of.to_string(),
                date(kitchen.packed),
                date(self.best_by(plan, package)),
                kitchen.owner.clone(),
                kitchen.tag.clone(),
                plan.animal().species().id().to_owned(),
            ]
        }));
        rows
    }
}

/// A date as files and fields have it: 2026-11-25 (ISO 8601).
pub fn iso(date: Date) -> String {
    format!("{}-{:02}-{:02}", date.year(), date.month(), date.day())
}

/// A date as a field gives it.
pub fn typed_date(text: &str) -> Option<Date> {
    let mut parts = text.split('-');
    let year = parts.next()?.parse().ok()?;
    let month = parts.next()?.parse().ok()?;
    Date::new(year, month, parts.next()?.parse().ok()?).ok()
}

/// A supply, its amount to buy and how that is said.
#[derive(Clone, Debug, PartialEq)]
pub struct SupplyRow {
    /// Its place in [`text::SUPPLY_NAMES`].
    pub place: usize,
    /// "38 ft".
    pub needed: String,
    /// The unit in which what is there is typed; empty for pieces.
    pub unit: &'static str,
    /// "26 ft".
    pub to_buy: String,
}

/// The shopping list. `have` are amounts in the reader's units, in the order of [`text::SUPPLY_NAMES`].
pub fn shopping(supplies: &Supplies, have: &[f64; 8], units: Units) -> Vec<SupplyRow> {
    let metre = match units {
        Units::Pounds => Length::inches(12.0),
        Units::Kilograms => Length::mm(1000.0),
    };
    let there = Supplies {
        paper: metre * have[0],
        tape: metre * have[1],
        between: have[2] as u32,
        bags: [have[3] as u32, have[4] as u32],
        vacuum: [metre * have[5], metre * have[6]],
        labels: have[7] as u32,
    };
    let (needed, to_buy) = (said(supplies, units), said(&supplies.without(&there), units));
    let nothing = said(&Supplies::default(), units);
    (0..needed.len())
        .filter(|place| needed[*place] != nothing[*place])
        .map(|place| SupplyRow {
            place,
            needed: needed[place].clone(),
            unit: match (place, units) {
                (0 | 1 | 5 | 6, Units::Pounds) => "ft",
                (0 | 1 | 5 | 6, Units::Kilograms) => "m",
                _ => "",
            },
            to_buy: to_buy[place].clone(),
        })
        .collect()
}

fn said(supplies: &Supplies, units: Units) -> [String; 8] {
    let roll = |length| text::roll_length(length, units);
    [
        roll(supplies.paper),
        roll(supplies.tape),
        supplies.between.to_string(),
        supplies.bags[0].to_string(),
        supplies.bags[1].to_string(),
        roll(supplies.vacuum[0]),
        roll(supplies.vacuum[1]),
        supplies.labels.to_string(),
    ]
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::forecast::forecast;
    use hindsaddle_model::kitchen::Kitchen;
    use hindsaddle_model::plan::Action;

    use super::*;

    fn example() -> (Plan, Packed) {
        let day = |day| Date::new(2026, 11, day).unwrap();
        let kitchen = Kitchen {
            harvested: Some(day(21)),
            packed: Some(day(25)),
            owner: "Ann".into(),
            ..Kitchen::default()
        };
        let plan = Plan::new(Animal::example()).apply(Action::SetKitchen(Box::new(kitchen))).unwrap().plan;
        let packed = packed(&plan, &forecast(&plan));
        (plan, packed)
    }

    #[test]
    fn there_are_as_many_packages_as_the_tally_says() {
        let (plan, packed) = example();
        assert_eq!(packed.packages.len() as u32, forecast(&plan).packs.likely());
        assert_eq!(packed.supplies.labels as usize, packed.packages.len());
    }

    #[test]
    fn a_label_says_what_when_until_when_and_whose() {
        let (plan, packed) = example();
        let first = packed.label(&plan, &packed.packages[0], Units::Pounds, false).join("|");
        for words in ["25 Nov 2026", "killed 21 Nov 2026", "Best by 25 May 2027", "Ann", "1 of ", "160 °F"] {
            assert!(first.contains(words), "{first}: {words}");
        }
        let blank = packed.label(&plan, &packed.packages[0], Units::Pounds, true).join("|");
        assert!(blank.contains("____") && !blank.contains(" lb"), "{blank}");
    }

    #[test]
    fn what_is_there_need_not_be_bought() {
        let (_, packed) = example();
        let none = shopping(&packed.supplies, &[0.0; 8], Units::Pounds);
        assert!(none.iter().all(|row| row.needed == row.to_buy), "{none:?}");
        let all = shopping(&packed.supplies, &[1000.0; 8], Units::Pounds);
        assert!(all.iter().all(|row| row.to_buy == "0" || row.to_buy == "0 ft"), "{all:?}");
    }

    #[test]
    fn a_date_comes_back_from_its_field() {
        let day = Date::new(2026, 2, 28).unwrap();
        assert_eq!(typed_date(&iso(day)), Some(day));
        for wrong in ["", "2026-02-30", "2026-13-01", "tomorrow"] {
            assert_eq!(typed_date(wrong), None, "{wrong}");
        }
    }
}
