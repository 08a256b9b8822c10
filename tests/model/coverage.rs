//! The random plans themselves: whatever a plan can hold, some of the first 500 hold it. A property checked
//! over plans that never leave the usual would prove little.

use std::collections::BTreeSet;

use hindsaddle_model::anatomy::{Muscle, Side};
use hindsaddle_model::animal::{Age, Condition, Legs, Sex, Species, Stage, Weighed};
use hindsaddle_model::packing::{Appetite, PackBy};
use hindsaddle_model::plan::{Care, MOST_HUNG_DAYS, MOST_PARTS, Plan, Shot};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::{Verdict, verdict};
use hindsaddle_tests::random_plan;

fn kind(cut: Cut) -> &'static str {
    match cut {
        Cut::Roast(RoastSize::Whole) => "whole roast",
        Cut::Roast(RoastSize::Weight(_)) => "roast by weight",
        Cut::Roast(RoastSize::Length(_)) => "roast by length",
        Cut::Steak(_) => "steak",
        Cut::Chop(_) => "chop",
        Cut::Stew(_) => "stew",
        Cut::Grind => "grind",
        Cut::Discard => "discard",
    }
}

/// Everything a plan holds, as words.
fn traits(plan: &Plan) -> Vec<String> {
    let (animal, losses) = (plan.animal(), plan.losses());
    let mut traits = vec![
        animal.species().id().to_owned(),
        animal.sex().id().to_owned(),
        animal.age().id().to_owned(),
        animal.condition().id().to_owned(),
        animal.weighed().stage().id().to_owned(),
        format!("{:?}", losses.shot),
        format!("{:?}", losses.care),
        format!("{} days", losses.hung_days),
        format!("{:?}", plan.packing().appetite),
        format!("title of ASCII {}, empty {}", plan.title().is_ascii(), plan.title().is_empty()),
    ];
    if let Weighed::FieldDressed(_, legs) = animal.weighed() {
        traits.push(format!("legs {legs:?}"));
    }
    for product in Product::ALL {
        traits.push(match plan.packing().rule(product) {
            PackBy::Table => "packed by table".to_owned(),
            PackBy::Pieces(_) => "packed by pieces".to_owned(),
            PackBy::Weight(_) => "packed by weight".to_owned(),
        });
    }
    for muscle in Muscle::ALL {
        let taken = if plan.is_recovered(muscle) { "taken" } else { "left" };
        traits.push(format!("{} {taken}", muscle.id()));
        traits.push(format!("{} even {}", muscle.id(), plan.is_even(muscle)));
        for side in Side::ALL {
            let parts = plan.division(muscle, side).parts();
            traits.push(format!("{} parts", parts.len()));
            for part in parts {
                traits.push(kind(part.cut).to_owned());
                traits.push(format!("{} as {:?}", muscle.id(), part.cut.product()));
            }
        }
    }
    traits
}

#[test]
fn random_plans_hold_everything_a_plan_can_hold() {
    let seen: BTreeSet<String> = (0..500).flat_map(|seed| traits(&random_plan(seed))).collect();
    let mut wanted: Vec<String> = Vec::new();
    wanted.extend(Species::ALL.map(|species| species.id().to_owned()));
    wanted.extend(Sex::ALL.map(|sex| sex.id().to_owned()));
    wanted.extend(Age::ALL.map(|age| age.id().to_owned()));
    wanted.extend(Condition::ALL.map(|condition| condition.id().to_owned()));
    wanted.extend(Stage::ALL.map(|stage| stage.id().to_owned()));
    wanted.extend([Legs::On, Legs::Off].map(|legs| format!("legs {legs:?}")));
    wanted.extend(Shot::ALL.map(|shot| format!("{shot:?}")));
    wanted.extend(Care::ALL.map(|care| format!("{care:?}")));
    wanted.extend(Appetite::ALL.map(|appetite| format!("{appetite:?}")));
    wanted.extend((0..=MOST_HUNG_DAYS).map(|days| format!("{days} days")));
    wanted.extend((1..=MOST_PARTS).map(|parts| format!("{parts} parts")));
    wanted.extend(["table", "pieces", "weight"].map(|by| format!("packed by {by}")));
    wanted.extend(
        [(true, true), (true, false), (false, false)]
            .map(|(is_ascii, is_empty)| format!("title of ASCII {is_ascii}, empty {is_empty}")),
    );
    let cuts =
        ["whole roast", "roast by weight", "roast by length", "steak", "chop", "stew", "grind", "discard"];
    wanted.extend(cuts.map(str::to_owned));
    for muscle in Muscle::ALL {
        wanted.extend(["taken", "left"].map(|taken| format!("{} {taken}", muscle.id())));
        wanted.extend([true, false].map(|even| format!("{} even {even}", muscle.id())));
        wanted.push(format!("{} as None", muscle.id()));
        for product in Product::ALL {
            if !matches!(verdict(muscle, product), Verdict::Impossible(_)) {
                wanted.push(format!("{} as {:?}", muscle.id(), Some(product)));
            }
        }
    }
    let missing: Vec<String> = wanted.into_iter().filter(|each| !seen.contains(each)).collect();
    assert!(missing.is_empty(), "never seen: {missing:?}");
}
