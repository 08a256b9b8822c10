//! The packages of a plan, their labels and their supplies, as plain values.

use hindsaddle_model::dates::{Date, DateError, Keeps, best_by};
use hindsaddle_model::deal::deal;
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::freezer::Arrival;
use hindsaddle_model::grind::{GrindError, Grinding, Ground, grind};
use hindsaddle_model::packages::{Contents, Package, packages};
use hindsaddle_model::plan::{Plan, Tested};
use hindsaddle_model::product::Product;
use hindsaddle_model::season::Season;
use hindsaddle_model::tables::COOK_TO;
use hindsaddle_model::units::{Length, Temperature};
use hindsaddle_model::wrap::{Supplies, Wrapped, wrapped};

use crate::text::{self, Units};

/// Everything of one animal that goes to the freezer.
#[derive(Clone, Debug, PartialEq)]
pub struct Packed {
    /// Its plan.
    pub plan: Plan,
    /// Its name, where there are several animals.
    pub name: Option<String>,
    /// Whose each package is, where the meat is shared; empty where it is not.
    pub owners: Vec<String>,
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
    let supplies = Supplies::of(&wrapped, &wrapping);
    Packed { plan: plan.clone(), name: None, owners: Vec::new(), ground, supplies, packages, wrapped }
}

/// Every animal of a season, in order.
pub fn all_packed(season: &Season) -> Vec<Packed> {
    let several = season.animals().len() > 1;
    let of = |(place, plan): (usize, &Plan)| Packed {
        name: several.then(|| text::animal_name(plan, place)),
        ..packed(plan, &forecast(plan))
    };
    let mut all: Vec<Packed> = season.animals().iter().enumerate().map(of).collect();
    if let Some(deal) = deal(&packages_of(&all), season.partners()) {
        let mut owners = deal.owners.iter().map(|owner| text::partner(season.partners(), *owner));
        for packed in all.iter_mut().filter(|packed| packed.plan.tested() != Tested::DoNotEat) {
            packed.owners = owners.by_ref().take(packed.packages.len()).collect();
        }
    }
    all
}

/// The packages of the animals that count, in the order of [`counted`].
pub fn packages_of(all: &[Packed]) -> Vec<Package> {
    counted(all).flat_map(|packed| packed.packages.iter().copied()).collect()
}

/// The animals whose meat is eaten.
pub fn counted(all: &[Packed]) -> impl Iterator<Item = &Packed> {
    all.iter().filter(|packed| packed.plan.tested() != Tested::DoNotEat)
}

/// What all animals that count take together.
pub fn all_supplies(all: &[Packed]) -> Supplies {
    counted(all).fold(Supplies::default(), |sum, packed| sum.with(&packed.supplies))
}

/// The packages of all animals that count. An animal whose day is not said is packed on the first.
pub fn arrivals(all: &[Packed]) -> Vec<Arrival> {
    let first = first_day(all);
    let day = |packed: &Packed| match (packed.plan.kitchen().packed, first) {
        // Days that are further apart than a schedule counts are as far as it does.
        (Some(day), Some(first)) => day.days_after(first).clamp(0, i32::from(u16::MAX)) as u16,
        (None, _) | (_, None) => 0,
    };
    let mut arrivals = Vec::new();
    for packed in counted(all) {
        let day = day(packed);
        arrivals.extend(packed.packages.iter().map(|package| Arrival { package: *package, day }));
    }
    arrivals
}

/// The first day of packing of the animals that count, if one is said.
pub fn first_day(all: &[Packed]) -> Option<Date> {
    counted(all)
        .filter_map(|packed| packed.plan.kitchen().packed)
        .reduce(|first, day| if day < first { day } else { first })
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
    pub fn best_by(&self, package: &Package) -> Option<Date> {
        let kitchen = self.plan.kitchen();
        best_by(self.keeps(package), kitchen.packed?, kitchen.harvested).ok().map(|until| until.label)
    }

    /// Whose a package is: the partner's it was dealt to, else the owner's of the plan.
    pub fn owner(&self, place: usize) -> &str {
        self.owners.get(place).map_or(&self.plan.kitchen().owner, |owner| owner)
    }

    /// The lines of the label of a package, by its place; the first the most important.
    pub fn label(&self, place: usize, units: Units, blank_weight: bool) -> Vec<String> {
        let (plan, kitchen, package) = (&self.plan, self.plan.kitchen(), &self.packages[place]);
        let weight = (!blank_weight).then(|| text::mass(package.mass, units));
        let joined = |parts: Vec<String>| {
            parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" \u{b7} ")
        };
        let dates = [kitchen.packed.map(text::packed_on), kitchen.harvested.map(text::killed_on)];
        let lines = vec![
            text::tested_label(plan.tested()).to_owned(),
            text::package_name(package),
            joined(vec![text::package_pieces(package), text::label_weight(weight)]),
            joined(dates.into_iter().flatten().collect()),
            self.best_by(package).map(text::best_by).unwrap_or_default(),
            joined(vec![
                text::species(plan.animal().species()).to_owned(),
                self.name.clone().unwrap_or_default(),
                text::number_of(package.number, package.of),
                self.owner(place).to_owned(),
                kitchen.tag.clone(),
            ]),
            cook_to(),
            text::NOT_FOR_SALE.to_owned(),
        ];
        lines.into_iter().filter(|line| !line.is_empty()).collect()
    }

    /// The packages as rows of a table.
    fn rows(&self) -> impl Iterator<Item = Vec<String>> {
        let kitchen = self.plan.kitchen();
        let date = |date: Option<Date>| date.map(iso).unwrap_or_default();
        self.packages.iter().enumerate().map(move |(index, package)| {
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
                date(self.best_by(package)),
                self.owner(index).to_owned(),
                kitchen.tag.clone(),
                self.plan.animal().species().id().to_owned(),
                self.name.clone().unwrap_or_default(),
                text::tested_label(self.plan.tested()).to_owned(),
            ]
        })
    }
}

/// The default, and the most that anybody asks for.
fn cook_to() -> String {
    let [default, others @ ..] = &COOK_TO;
    let higher = |most: Temperature, other: Temperature| if other > most { other } else { most };
    text::cook_to(default.value, others.iter().map(|fact| fact.value).fold(default.value, higher))
}

/// The packages of all animals as rows of a table, its head first; names are the plan's.
pub fn rows(all: &[Packed]) -> Vec<Vec<String>> {
    let mut rows = vec![text::CSV_HEAD.map(str::to_owned).to_vec()];
    rows.extend(all.iter().flat_map(Packed::rows));
    rows
}

/// A date as files and fields have it: 2026-11-25 (ISO 8601).
pub fn iso(date: Date) -> String {
    format!("{}-{:02}-{:02}", date.year(), date.month(), date.day())
}

/// A date as a field gives it; none if it is empty, or its year has not four digits yet.
///
/// # Errors
/// A date that no plan may name.
pub fn typed_date(text: &str) -> Result<Option<Date>, DateError> {
    let mut parts = text.splitn(3, '-');
    let year = parts.next().and_then(|part| part.parse().ok()).filter(|year| *year >= 1000);
    let mut next = || parts.next().and_then(|part| part.parse().ok());
    match (year, next(), next()) {
        (Some(year), Some(month), Some(day)) => Date::new(year, month, day).map(Some),
        _ => Ok(None),
    }
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
    use hindsaddle_model::dates::YEARS;
    use hindsaddle_model::kitchen::Kitchen;
    use hindsaddle_model::plan::Action;
    use hindsaddle_model::season::Change;

    use super::*;

    fn example() -> Packed {
        let day = |day| Date::new(2026, 11, day).unwrap();
        let kitchen = Kitchen {
            harvested: Some(day(21)),
            packed: Some(day(25)),
            owner: "Ann".into(),
            ..Kitchen::default()
        };
        let plan = Plan::new(Animal::example()).apply(Action::SetKitchen(Box::new(kitchen))).unwrap().plan;
        packed(&plan, &forecast(&plan))
    }

    #[test]
    fn there_are_as_many_packages_as_the_tally_says() {
        let packed = example();
        assert_eq!(packed.packages.len() as u32, forecast(&packed.plan).packs.likely());
        assert_eq!(packed.supplies.labels as usize, packed.packages.len());
    }

    #[test]
    fn a_label_says_what_when_until_when_and_whose() {
        let packed = example();
        let first = packed.label(0, Units::Pounds, false).join("|");
        for words in ["25 Nov 2026", "killed 21 Nov 2026", "Best by 25 May 2027", "Ann", "1 of ", "160 °F"] {
            assert!(first.contains(words), "{first}: {words}");
        }
        let blank = packed.label(0, Units::Pounds, true).join("|");
        assert!(blank.contains("____") && !blank.contains(" lb"), "{blank}");
    }

    /// Two animals packed four days apart: supplies add up, and each label has its own animal and test.
    #[test]
    fn animals_of_a_season_are_packed_apart_and_counted_together() {
        let one = Season::from(example().plan);
        let act = |season: &Season, action| season.apply(Change::Act(1, action)).unwrap().season;
        let two = one.apply(Change::AddLike(0)).unwrap().season;
        let kitchen = Kitchen { packed: Date::new(2026, 11, 29).ok(), ..two.animal(1).kitchen().clone() };
        let two = act(&two, Action::SetKitchen(Box::new(kitchen)));
        let awaited = all_packed(&act(&two, Action::SetTested(Tested::Awaited)));
        let each = awaited[0].packages.len();
        assert_eq!(all_supplies(&awaited).labels as usize, 2 * each);
        assert_eq!(arrivals(&awaited).iter().map(|arrival| arrival.day).max(), Some(4));
        assert_eq!(rows(&awaited).len(), 1 + 2 * each);
        let label = awaited[1].label(0, Units::Pounds, false);
        assert_eq!(label[0], "HOLD: test result awaited");
        assert!(label.iter().any(|line| line.contains("2 Doe")), "{label:?}");
        let spoiled = all_packed(&act(&two, Action::SetTested(Tested::DoNotEat)));
        assert_eq!(all_supplies(&spoiled), spoiled[0].supplies);
        assert_eq!(arrivals(&spoiled).len(), each);
    }

    /// The first and the last day that a plan may name are more days apart than a schedule counts.
    #[test]
    fn days_that_are_ages_apart_come_one_after_the_other() {
        let one = Season::from(example().plan);
        let on = |season: &Season, place, packed| {
            let kitchen = Kitchen { harvested: None, packed, ..season.animal(place).kitchen().clone() };
            season.apply(Change::Act(place, Action::SetKitchen(Box::new(kitchen)))).unwrap().season
        };
        let two = one.apply(Change::AddLike(0)).unwrap().season;
        let two = on(&on(&two, 0, Date::new(2000, 1, 1).ok()), 1, Date::new(2200, 12, 31).ok());
        let all = arrivals(&all_packed(&two));
        let first = all.iter().filter(|arrival| arrival.day == 0).count();
        assert_eq!((first * 2, all[first].day), (all.len(), u16::MAX));
    }

    #[test]
    fn what_is_there_need_not_be_bought() {
        let packed = example();
        let none = shopping(&packed.supplies, &[0.0; 8], Units::Pounds);
        assert!(none.iter().all(|row| row.needed == row.to_buy), "{none:?}");
        let all = shopping(&packed.supplies, &[1000.0; 8], Units::Pounds);
        assert!(all.iter().all(|row| row.to_buy == "0" || row.to_buy == "0 ft"), "{all:?}");
    }

    #[test]
    fn a_date_comes_back_from_its_field() {
        let day = Date::new(2026, 2, 28).unwrap();
        assert_eq!(typed_date(&iso(day)), Ok(Some(day)));
        for unfinished in ["", "tomorrow", "0202-11-01"] {
            assert_eq!(typed_date(unfinished), Ok(None), "{unfinished}");
        }
        let (first, last) = YEARS;
        let out_of_range = Err(DateError::YearOutOfRange { first, last });
        assert_eq!(typed_date("1995-11-01"), out_of_range);
        assert_eq!(typed_date("2201-11-01"), out_of_range);
        assert_eq!(typed_date("2026-13-01"), Err(DateError::NoSuchMonth));
        assert_eq!(typed_date("2026-02-30"), Err(DateError::NoSuchDay { last: 28 }));
    }
}
