//! A household's own figures: how its weights compare with the table's, animal by animal, and what a plan that
//! uses them starts from.
//!
//! The figures are part of the plan that uses them, so that it says the same on every device. The animals they
//! come from are a text for whoever keeps it; the model keeps nothing.

use crate::anatomy::Muscle;
use crate::animal::{Species, Weighed};
use crate::carcass;
use crate::plan::{Action, Plan};
use crate::scale::{self, OnScale};
use crate::units::Mass;

/// How far a figure may lie from the table's, in percent. Judgement.
pub const FARTHEST: i8 = 30;
/// This many animals of one's own weigh as much as the table: with n of them a figure goes n / (n + 3) of the
/// way from the table to their mean. Judgement.
const TABLE_WEIGHS: f64 = 3.0;
/// The muscles weighed on both sides are this part of the meat before they are compared. Judgement.
pub const ENOUGH: f64 = 0.5;
/// The most animals that are remembered; the oldest go first.
pub const MOST_ANIMALS: usize = 40;

/// By how much a household's meat differs from the table, in whole percent.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Own {
    meat: i8,
    shares: [i8; Muscle::COUNT],
}

impl Own {
    /// From percents above or below the table: of boneless meat in the hanging weight, and of each muscle in the
    /// meat. None goes farther than [`FARTHEST`].
    pub fn new(meat: i8, shares: [i8; Muscle::COUNT]) -> Self {
        let within = |percent: i8| percent.max(-FARTHEST).min(FARTHEST);
        Self { meat: within(meat), shares: shares.map(within) }
    }

    /// Whether it says nothing, so that the table holds.
    pub fn is_table(&self) -> bool {
        *self == Self::default()
    }

    /// Percent above or below the table's meat in the hanging weight.
    pub fn meat_percent(&self) -> i8 {
        self.meat
    }
    /// Percent above or below the table's share of a muscle.
    pub fn share_percent(&self, muscle: Muscle) -> i8 {
        self.shares[muscle.index()]
    }

    /// What multiplies the table's meat.
    pub(crate) fn meat(&self) -> f64 {
        1.0 + f64::from(self.meat) / 100.0
    }
    /// What multiplies the table's share.
    pub(crate) fn share(&self, muscle: Muscle) -> f64 {
        1.0 + f64::from(self.shares[muscle.index()]) / 100.0
    }
}

/// What one animal weighed over what the table expected of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Animal {
    /// What it was, to know it by: species, sex, age, what was weighed, and the day it was killed if that is known.
    pub name: String,
    /// Its species.
    pub species: Species,
    /// Boneless meat, where the hanging weight was entered.
    pub meat: Option<f64>,
    /// Each muscle that was weighed on both sides: its part of them over the table's.
    pub shares: Vec<(Muscle, f64)>,
}

/// Too little was weighed to compare.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TooLittle {
    /// The part of the meat that was weighed, muscle by muscle, on both sides.
    pub weighed: f64,
}

/// What a plan's animal is known by.
pub fn name(plan: &Plan) -> String {
    let animal = plan.animal();
    let weighed = match animal.weighed() {
        Weighed::Typical => String::new(),
        Weighed::Girth(girth) => format!(" {} mm", girth.to_mm().round() as u32),
        Weighed::Live(mass)
        | Weighed::FieldDressed(mass, _)
        | Weighed::Hanging(mass)
        | Weighed::Deboned(mass) => {
            format!(" {} g", mass.to_grams().round() as u32)
        }
    };
    let killed = plan.kitchen().harvested.map(|day| format!(" {}-{}-{}", day.year(), day.month(), day.day()));
    let (species, sex, age) = (animal.species().id(), animal.sex().id(), animal.age().id());
    let stage = animal.weighed().stage().id();
    format!("{species} {sex} {age} {stage}{weighed}{}", killed.unwrap_or_default())
}

/// How a plan's weights compare with the table.
///
/// # Errors
/// Less than [`ENOUGH`] of the meat was weighed.
pub fn compared(plan: &Plan) -> Result<Animal, TooLittle> {
    let table =
        plan.apply(Action::UseOwn(Own::default())).map_or_else(|_| plan.clone(), |applied| applied.plan);
    let (carcass, taken) = (carcass::carcass(&table), carcass::parts_taken(plan));
    let expected = |muscle: Muscle| carcass.muscles[muscle.index()][0] * (2.0 * taken[muscle.index()]);
    let all: Mass = Muscle::ALL.into_iter().map(expected).sum();
    let seen = scale::seen(plan.weighings());
    let pairs: Vec<(Muscle, Mass)> = seen
        .iter()
        .filter_map(|seen| match seen.target {
            OnScale::Muscle(muscle, crate::anatomy::Sides::Both) if expected(muscle) > Mass::ZERO => {
                Some((muscle, seen.mass))
            }
            OnScale::Muscle(..) | OnScale::Lot | OnScale::Tub | OnScale::Packages(..) => None,
        })
        .collect();
    let theirs: Mass = pairs.iter().map(|(muscle, _)| expected(*muscle)).sum();
    if theirs < all * ENOUGH {
        return Err(TooLittle { weighed: theirs / all });
    }
    let together = pairs.iter().map(|(_, mass)| *mass).sum::<Mass>() / theirs;
    let lot = seen.iter().find(|seen| seen.target == OnScale::Lot).map(|seen| seen.mass / all);
    let hung = matches!(plan.animal().weighed(), Weighed::Hanging(_));
    Ok(Animal {
        name: name(plan),
        species: plan.animal().species(),
        meat: hung.then(|| lot.unwrap_or(together)),
        shares: pairs
            .into_iter()
            .map(|(muscle, mass)| (muscle, mass / expected(muscle) / together))
            .collect(),
    })
}

/// The figures of a household by the animals it weighed, of one species, but for the one called `except`: an
/// animal's own weights say nothing new about it. Also how many animals there were.
pub fn figures(animals: &[Animal], species: Species, except: &str) -> (Own, usize) {
    let of: Vec<&Animal> =
        animals.iter().filter(|animal| animal.species == species && animal.name != except).collect();
    let meat = shrunk(of.iter().filter_map(|animal| animal.meat));
    let share = |muscle: Muscle| {
        let ratios = of.iter().flat_map(|animal| &animal.shares);
        shrunk(ratios.filter(|(other, _)| *other == muscle).map(|(_, ratio)| *ratio))
    };
    (Own::new(meat, Muscle::ALL.map(share)), of.len())
}

/// The mean of some ratios, drawn toward 1 by [`TABLE_WEIGHS`], in percent above it.
fn shrunk(ratios: impl Iterator<Item = f64>) -> i8 {
    let (count, sum) = ratios.fold((0.0, 0.0), |(count, sum), ratio| (count + 1.0, sum + ratio));
    ((sum - count) / (count + TABLE_WEIGHS) * 100.0).round() as i8
}

/// The animals as a text: a line each, its name and its ratios in thousandths behind tabs.
pub fn write(animals: &[Animal]) -> String {
    let thousandths = |ratio: f64| (ratio * 1000.0).round() as u32;
    let line = |animal: &Animal| {
        let meat = animal.meat.map(|ratio| ("meat", ratio));
        let ratios =
            meat.into_iter().chain(animal.shares.iter().map(|(muscle, ratio)| (muscle.id(), *ratio)));
        let ratios = ratios.map(|(what, ratio)| format!("{what} {}", thousandths(ratio)));
        std::iter::once(animal.name.clone()).chain(ratios).collect::<Vec<_>>().join("\t")
    };
    animals.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// The animals of such a text. A line or a ratio that says nothing is left out.
pub fn read(text: &str) -> Vec<Animal> {
    let mut animals: Vec<Animal> = text.lines().filter_map(read_line).collect();
    let excess = animals.len().saturating_sub(MOST_ANIMALS);
    animals.drain(..excess);
    animals
}

/// The ratios that are believed; others were not written here.
const BELIEVED: std::ops::RangeInclusive<u32> = 100..=10_000;

fn read_line(line: &str) -> Option<Animal> {
    let mut parts = line.split('\t');
    let name = parts.next()?.to_owned();
    let species = name.split(' ').next()?;
    let species = Species::ALL.into_iter().find(|other| other.id() == species)?;
    let mut animal = Animal { name, species, meat: None, shares: Vec::new() };
    for part in parts {
        let Some((what, number)) = part.split_once(' ') else { continue };
        let Some(number) = number.parse::<u32>().ok().filter(|number| BELIEVED.contains(number)) else {
            continue;
        };
        let ratio = f64::from(number) / 1000.0;
        match Muscle::from_id(what) {
            Some(muscle) => animal.shares.push((muscle, ratio)),
            None if what == "meat" => animal.meat = Some(ratio),
            None => {}
        }
    }
    Some(animal)
}
