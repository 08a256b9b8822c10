//! The short list of what changed, against the packages and supplies it is made of.

use hindsaddle_model::animal::Animal;
use hindsaddle_model::changes::{Change, Outcome, changes};
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::packages::{Package, packages};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::product::Product;
use hindsaddle_model::scale::OnScale;
use hindsaddle_model::wrap::{Supplies, wrapped};
use hindsaddle_tests::{expected_on_scale, with};

struct Packed {
    forecast: Forecast,
    packages: Vec<Package>,
    supplies: Supplies,
}

impl Packed {
    fn of(plan: &Plan) -> Self {
        let forecast = forecast(plan);
        let packages = packages(&forecast, None);
        let wrapping = plan.kitchen().wrapping;
        let all: Vec<_> = packages.iter().map(|package| wrapped(&forecast, package, &wrapping)).collect();
        Self { forecast, packages, supplies: Supplies::of(&all, &wrapping) }
    }

    fn outcome(&self) -> Outcome<'_> {
        Outcome { forecast: &self.forecast, packages: &self.packages, supplies: &self.supplies }
    }
}

#[test]
fn what_changed_is_the_difference_of_the_packages_and_supplies() {
    let doe = Plan::new(Animal::example());
    let mass = Some(expected_on_scale(&doe, OnScale::Lot).unwrap() * 1.15);
    let heavy = with(&doe, Action::Weigh { target: OnScale::Lot, mass });
    let (before, after) = (Packed::of(&doe), Packed::of(&heavy));
    assert_eq!(changes(before.outcome(), before.outcome()), []);
    let there = changes(before.outcome(), after.outcome());
    for product in Product::ALL {
        let packs = |packed: &Packed| i64::from(packed.forecast.tallies[product as usize].packs.likely());
        let listed = there.iter().find_map(|change| match change {
            Change::Packs(other, more) if *other == product => Some(i64::from(*more)),
            Change::Packs(..)
            | Change::TakeHome(_)
            | Change::Paper(_)
            | Change::Bags(..)
            | Change::Vacuum(..) => None,
        });
        assert_eq!(listed.unwrap_or(0), packs(&after) - packs(&before), "{product:?}");
    }
    assert!(there.iter().any(|change| matches!(change, Change::Packs(Product::Grind, more) if *more > 0)));
    assert!(there.contains(&Change::Paper(after.supplies.paper - before.supplies.paper)), "{there:?}");
    // And back: the same list with the signs turned.
    let back = changes(after.outcome(), before.outcome());
    assert_eq!(back.len(), there.len());
    let less = before.forecast.take_home.likely() - after.forecast.take_home.likely();
    assert!(back.contains(&Change::TakeHome(less)));
}
