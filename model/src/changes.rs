//! What a change of the plan does to what a person has to fetch and do: a short list, not every number.

use crate::forecast::Forecast;
use crate::packages::Package;
use crate::product::Product;
use crate::units::{Length, Mass};
use crate::wrap::{Bag, Supplies};

/// Everything that is compared.
#[derive(Clone, Copy, Debug)]
pub struct Outcome<'a> {
    /// What the plan gives.
    pub forecast: &'a Forecast,
    /// Package by package.
    pub packages: &'a [Package],
    /// What they are wrapped in.
    pub supplies: &'a Supplies,
}

/// Something there is more of, or less if it is below zero.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Change {
    /// Meat to take home.
    TakeHome(Mass),
    /// Packages of a product.
    Packs(Product, i32),
    /// Freezer paper.
    Paper(Length),
    /// Zip bags.
    Bags(Bag, i32),
    /// Vacuum roll, by its place in [`crate::tables::VACUUM_ROLLS`].
    Vacuum(usize, Length),
}

/// Less than this is not worth telling. Judgement.
const LEAST_MASS: Mass = Mass::grams(50.0);
/// See [`LEAST_MASS`].
const LEAST_LENGTH: Length = Length::mm(150.0);

/// What there is more or less of afterwards. Labels, tape and sheets follow the packages and are not listed.
pub fn changes(before: Outcome, after: Outcome) -> Vec<Change> {
    let mut changes = Vec::new();
    let meat = after.forecast.take_home.likely() - before.forecast.take_home.likely();
    if meat > LEAST_MASS || Mass::ZERO - meat > LEAST_MASS {
        changes.push(Change::TakeHome(meat));
    }
    for product in Product::ALL {
        let of = |outcome: &Outcome| {
            outcome.packages.iter().filter(|package| package.product == product).count() as u32
        };
        let count = |outcome: &Outcome| of(outcome).cast_signed();
        let more = count(&after) - count(&before);
        if more != 0 {
            changes.push(Change::Packs(product, more));
        }
    }
    let (had, has) = (before.supplies, after.supplies);
    let length = |had: Length, has: Length| {
        let more = has - had;
        (more > LEAST_LENGTH || Length::ZERO - more > LEAST_LENGTH).then_some(more)
    };
    changes.extend(length(had.paper, has.paper).map(Change::Paper));
    for bag in Bag::ALL {
        let more = has.bags[bag as usize].cast_signed() - had.bags[bag as usize].cast_signed();
        if more != 0 {
            changes.push(Change::Bags(bag, more));
        }
    }
    for roll in [0, 1] {
        changes.extend(length(had.vacuum[roll], has.vacuum[roll]).map(|more| Change::Vacuum(roll, more)));
    }
    changes
}
