//! The scale against the closed form: what a normal distribution with the ensemble's mean and covariance becomes
//! once something is known, computed here by dense matrices. Then the laws: nothing widens, mass closes, order and
//! taking back leave no trace.

#![expect(clippy::disallowed_methods, reason = "another machine's logarithms would be as good a judge")]

use std::num::NonZeroU8;

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::{Animal, Weighed};
use hindsaddle_model::carcass::{Carcass, carcass};
use hindsaddle_model::ensemble::SCENARIOS;
use hindsaddle_model::estimate::Estimate;
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::Refusal;
use hindsaddle_model::scale::{HEAVIEST, LIGHTEST, OnScale, Weighing};
use hindsaddle_model::units::Mass;
use hindsaddle_model::weighed;
use hindsaddle_tests::{digest, expected_on_scale, named_plans, weighed_plan, with};
use proptest::prelude::*;

/// The scale as documented: half of a step of 10 g, and one percent.
fn scale_error(grams: f64) -> f64 {
    5.0 + 0.01 * grams
}
/// One side against the other, and what a hand trims: three percent, as documented.
const BESIDES: f64 = 0.03;

fn weigh(plan: &Plan, target: OnScale, mass: Mass) -> Plan {
    with(plan, Action::Weigh { target, mass: Some(mass) })
}

fn take_back(plan: &Plan, target: OnScale) -> Plan {
    with(plan, Action::Weigh { target, mass: None })
}

fn both(muscle: Muscle) -> OnScale {
    OnScale::Muscle(muscle, Sides::Both)
}

fn one(muscle: Muscle, side: Side) -> OnScale {
    OnScale::Muscle(muscle, Sides::One(side))
}

fn bare(plan: &Plan) -> Plan {
    plan.weighings().iter().fold(plan.clone(), |plan, weighing| take_back(&plan, weighing.target))
}

/// Logarithms of the grams of a column.
fn logs(masses: &[Mass]) -> Vec<f64> {
    masses.iter().map(|mass| mass.to_grams().ln()).collect()
}

fn mean(column: &[f64]) -> f64 {
    column[1..].iter().sum::<f64>() / (SCENARIOS - 1) as f64
}

fn covariance(a: &[f64], b: &[f64]) -> f64 {
    let (mean_a, mean_b) = (mean(a), mean(b));
    let products = a[1..].iter().zip(&b[1..]).map(|(a, b)| (a - mean_a) * (b - mean_b));
    products.sum::<f64>() / (SCENARIOS - 2) as f64
}

/// Everything that is taken, both sides, scenario by scenario.
fn lot(plan: &Plan, carcass: &Carcass) -> Vec<Mass> {
    let taken = Muscle::ALL.into_iter().filter(|muscle| plan.is_recovered(*muscle));
    let taken: Vec<&Vec<Mass>> = taken.map(|muscle| &carcass.muscles[muscle.index()]).collect();
    (0..SCENARIOS).map(|scenario| taken.iter().map(|masses| masses[scenario] * 2.0).sum()).collect()
}

/// Solves `matrix` times x = `right` by Gauss with the largest pivot.
fn solve(mut matrix: Vec<Vec<f64>>, mut right: Vec<f64>) -> Vec<f64> {
    let n = right.len();
    for at in 0..n {
        let pivot = (at..n).max_by(|a, b| matrix[*a][at].abs().total_cmp(&matrix[*b][at].abs())).unwrap();
        matrix.swap(at, pivot);
        right.swap(at, pivot);
        for row in at + 1..n {
            let factor = matrix[row][at] / matrix[at][at];
            let pivot = matrix[at].clone();
            for (value, above) in matrix[row].iter_mut().zip(&pivot).skip(at) {
                *value -= factor * above;
            }
            right[row] -= factor * right[at];
        }
    }
    for at in (0..n).rev() {
        for column in at + 1..n {
            right[at] -= matrix[at][column] * right[column];
        }
        right[at] /= matrix[at][at];
    }
    right
}

/// Something weighed: what each scenario would show, what was seen, the square of its error.
type Seen = (Vec<f64>, f64, f64);

/// The muscles of a plan after its weighings must be the normal conditional of those before: mean, middle case
/// and covariance.
#[track_caller]
fn agrees(plan: &Plan, seen: &[Seen], what: &str) {
    let before: Vec<Vec<f64>> = carcass(plan).muscles.iter().map(|masses| logs(masses)).collect();
    let after: Vec<Vec<f64>> = weighed::carcass(plan).muscles.iter().map(|masses| logs(masses)).collect();
    let mut total: Vec<Vec<f64>> =
        seen.iter().map(|(a, ..)| seen.iter().map(|(b, ..)| covariance(a, b)).collect()).collect();
    for (index, (_, _, error)) in seen.iter().enumerate() {
        total[index][index] += error;
    }
    let surprise: Vec<f64> = seen.iter().map(|(expected, value, _)| value - mean(expected)).collect();
    let middle: Vec<f64> = seen.iter().map(|(expected, value, _)| value - expected[0]).collect();
    let learned = solve(total.clone(), surprise);
    let learned_middle = solve(total.clone(), middle);
    let with_seen =
        |column: &[f64]| seen.iter().map(|(expected, ..)| covariance(column, expected)).collect::<Vec<f64>>();
    let dot = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| a * b).sum::<f64>();
    for (muscle, (old, new)) in before.iter().zip(&after).enumerate() {
        let name = Muscle::ALL[muscle].id();
        let shared = with_seen(old);
        let expected = mean(old) + dot(&shared, &learned);
        assert!((mean(new) - expected).abs() < 1e-9, "{what} {name}: {} {expected}", mean(new));
        let expected = old[0] + dot(&shared, &learned_middle);
        assert!((new[0] - expected).abs() < 1e-9, "{what} {name}: {} {expected}", new[0]);
        let gain = solve(total.clone(), shared);
        for (other, other_new) in before.iter().zip(&after) {
            let expected = covariance(old, other) - dot(&gain, &with_seen(other));
            assert!((covariance(new, other_new) - expected).abs() < 1e-10, "{what} {name}");
        }
    }
}

/// Muscles, one side, one by one on both, and the lot, on animals weighed in every way.
#[test]
fn the_update_is_the_normal_conditional() {
    for (name, plan) in named_plans().into_iter().step_by(5) {
        let (prior, mut plan) = (carcass(&plan), plan);
        let mut seen: Vec<Seen> = Vec::new();
        let column = |muscle: Muscle, sides: f64| -> Vec<Mass> {
            prior.muscles[muscle.index()].iter().map(|mass| *mass * sides).collect()
        };
        for (muscle, factor) in [(Muscle::Backstrap, 1.06), (Muscle::Knuckle, 0.97), (Muscle::Neck, 1.1)] {
            let expected = column(muscle, 2.0);
            let mass = Mass::grams((expected[0].to_grams() * factor).round());
            plan = weigh(&plan, both(muscle), mass);
            let grams = mass.to_grams();
            seen.push((logs(&expected), grams.ln(), (scale_error(grams) / grams).powi(2)));
        }
        let expected = column(Muscle::Clod, 1.0);
        let grams = (expected[0].to_grams() * 0.95).round();
        plan = weigh(&plan, one(Muscle::Clod, Side::Right), Mass::grams(grams));
        let error = (scale_error(grams) / grams).powi(2) + BESIDES * BESIDES;
        seen.push((logs(&expected), grams.ln(), error));
        // Both sides one by one are the two together, with the errors of two weights.
        let expected = column(Muscle::Sirloin, 2.0);
        let sides = [0.49, 0.55].map(|part| (expected[0].to_grams() * part).round());
        plan = weigh(&plan, one(Muscle::Sirloin, Side::Right), Mass::grams(sides[1]));
        plan = weigh(&plan, one(Muscle::Sirloin, Side::Left), Mass::grams(sides[0]));
        let grams = sides[0] + sides[1];
        let error = (scale_error(sides[0]).powi(2) + scale_error(sides[1]).powi(2)) / grams.powi(2);
        seen.push((logs(&expected), grams.ln(), error));
        let expected = lot(&plan, &prior);
        let grams = (expected[0].to_grams() * 1.02).round();
        plan = weigh(&plan, OnScale::Lot, Mass::grams(grams));
        seen.push((logs(&expected), grams.ln(), (scale_error(grams) / grams).powi(2)));
        agrees(&plan, &seen, &name);
    }
}

/// Where all meat goes one way, the tub and the finished packages are the lot, but for what is trimmed off them:
/// 2 % of whole roasts and of stew goes to the tub (judgement of the model's own).
#[test]
fn the_tub_and_packages_teach_what_lands_in_them() {
    let roast = Cut::Roast(RoastSize::Whole);
    for (cut, target, part) in [
        (Cut::Grind, OnScale::Tub, 1.0),
        (Cut::Grind, OnScale::Packages(Product::Grind, None), 1.0),
        (Cut::usual(Product::Stew), OnScale::Packages(Product::Stew, None), 0.98),
        (roast, OnScale::Packages(Product::Roast, None), 0.98),
        // Roasts are packed one by one, so five of all are that part of them, in every scenario.
        (roast, OnScale::Packages(Product::Roast, NonZeroU8::new(5)), f64::NAN),
    ] {
        let mut plan = Plan::new(Animal::example());
        for muscle in Muscle::ALL {
            let possible = plan.apply(Action::Assign { muscle, sides: Sides::Both, cut });
            plan = match possible {
                Ok(applied) => applied.plan,
                Err(_) => with(&plan, Action::Recover { muscle, taken: false }),
            };
        }
        let roasts = f64::from(forecast(&plan).tallies[Product::Roast as usize].packs.likely());
        let part = if part.is_nan() { 0.98 * 5.0 / roasts } else { part };
        let expected: Vec<Mass> = lot(&plan, &carcass(&plan)).iter().map(|mass| *mass * part).collect();
        let grams = (expected[0].to_grams() * 1.07).round();
        let plan = weigh(&plan, target, Mass::grams(grams));
        let error = (scale_error(grams) / grams).powi(2) + BESIDES * BESIDES;
        agrees(&plan, &[(logs(&expected), grams.ln(), error)], &format!("{target:?}"));
    }
}

/// The spread of what each scenario says, as a part of itself.
fn spread(masses: &[Mass]) -> f64 {
    let logs = logs(masses);
    covariance(&logs, &logs).sqrt()
}

/// High over low.
fn reach(mass: Estimate<Mass>) -> f64 {
    (mass.high() / mass.low()).ln()
}

/// Takes the weighings of a random plan back one by one: each has to leave every muscle less certain.
#[track_caller]
fn narrows(seed: u64) {
    let plan = weighed_plan(seed);
    let mut fewer = plan.clone();
    for weighing in plan.weighings() {
        let more = fewer;
        fewer = take_back(&more, weighing.target);
        let (with, without) = (weighed::carcass(&more), weighed::carcass(&fewer));
        for muscle in Muscle::ALL {
            let (now, then) =
                (spread(&with.muscles[muscle.index()]), spread(&without.muscles[muscle.index()]));
            assert!(now < then * (1.0 + 1e-5), "{muscle:?} {then} {now} by {weighing:?}");
        }
    }
    let (after, before) = (forecast(&plan), forecast(&bare(&plan)));
    for muscle in Muscle::ALL {
        let (now, then) = (after.muscles[muscle.index()].mass, before.muscles[muscle.index()].mass);
        assert!(reach(now) < reach(then) * 1.08, "{muscle:?} {then:?} {now:?}");
    }
}

/// Two animals that chance found: a moose whose owners leave next to nothing on the bones, and a side so spoiled
/// that its scrap says less than the other side alone.
#[test]
fn not_even_a_scrap_widens_anything() {
    narrows(3_839_902_331_429_361_034);
    narrows(14_753_993_097_290_017_089);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(128))]

    /// As a part of itself no muscle and no sum of muscles gets less certain by a weighing. The ends that are shown
    /// are single draws, so that they may lie a little farther apart where next to nothing was learned. In a moose
    /// whose owners leave next to nothing on the bones, closing the ledger touches single scenarios: a hundred
    /// thousandth is let pass.
    #[test]
    fn nothing_widens(seed: u64) {
        narrows(seed);
    }

    /// Every scenario closes, no mass is below nothing, and the weight that was entered stays. Absurd weights too.
    #[test]
    fn mass_closes_with_weighings_in_it(seed: u64, absurd in 0.02_f64..50.0) {
        let mut plan = weighed_plan(seed);
        let wild = Muscle::ALL[seed as usize % Muscle::COUNT];
        if let (true, Some(expected)) = (seed.is_multiple_of(2), expected_on_scale(&plan, both(wild))) {
            let mass = Mass::grams((expected * absurd).to_grams().max(1.0).min(HEAVIEST.to_grams()));
            plan = weigh(&plan, both(wild), mass);
        }
        let carcass = weighed::carcass(&plan);
        for i in 0..SCENARIOS {
            let muscles: Mass = carcass.muscles.iter().map(|masses| masses[i] * 2.0).sum();
            let losses = [&carcass.bone, &carcass.trim, &carcass.drying, &carcass.wound, &carcass.left_behind];
            let lost: Mass = losses.iter().map(|masses| masses[i]).sum();
            prop_assert!((carcass.hanging[i] - lost - muscles).to_grams().abs() < 1e-6, "scenario {i}");
            prop_assert!(carcass.muscles.iter().all(|masses| masses[i] > Mass::ZERO));
            prop_assert!(losses.iter().all(|masses| masses[i] >= Mass::ZERO));
            prop_assert!(carcass.live[i] > carcass.dressed[i] && carcass.dressed[i] > carcass.hanging[i]);
            prop_assert!(carcass.lean[i] >= muscles * (1.0 - 1e-9) && carcass.lean[i] < carcass.hanging[i]);
            let entered = match plan.animal().weighed() {
                Weighed::Live(mass) => Some((mass, carcass.live[i])),
                Weighed::Hanging(mass) => Some((mass, carcass.hanging[i])),
                Weighed::FieldDressed(mass, hindsaddle_model::animal::Legs::On) => Some((mass, carcass.dressed[i])),
                Weighed::FieldDressed(..) | Weighed::Deboned(_) | Weighed::Typical | Weighed::Girth(_) => None,
            };
            if let Some((entered, now)) = entered {
                prop_assert!((entered - now).to_grams().abs() < 1e-6, "{entered:?} {now:?}");
            }
        }
        let forecast = forecast(&plan);
        let sum: Mass = forecast.ledger[1..].iter().map(|(_, mass)| mass.likely()).sum();
        prop_assert!((sum - forecast.live.likely()).to_grams().abs() < 1e-6);
    }
}

#[test]
fn order_and_taking_back_leave_no_trace() {
    for seed in 0..60 {
        let plan = weighed_plan(seed);
        let mut backwards = bare(&plan);
        for weighing in plan.weighings().iter().rev() {
            backwards = weigh(&backwards, weighing.target, weighing.mass);
        }
        assert_eq!(backwards, plan, "seed {seed}");
        assert_eq!(digest(&forecast(&backwards)), digest(&forecast(&plan)));
    }
    let plan = Plan::new(Animal::example());
    let there = weigh(&plan, OnScale::Tub, Mass::kilograms(5.0));
    assert_ne!(digest(&forecast(&there)), digest(&forecast(&plan)));
    assert_eq!(digest(&forecast(&take_back(&there, OnScale::Tub))), digest(&forecast(&plan)));
}

#[test]
fn a_weight_takes_the_place_of_another_of_the_same() {
    let plan = Plan::new(Animal::example());
    let neck = Muscle::Neck;
    let sides = weigh(
        &weigh(&plan, one(neck, Side::Right), Mass::grams(500.0)),
        one(neck, Side::Left),
        Mass::grams(490.4),
    );
    let grams = |plan: &Plan| plan.weighings().iter().map(|one| one.mass.to_grams()).collect::<Vec<f64>>();
    assert_eq!(grams(&sides), [490.0, 500.0]);
    assert_eq!(grams(&weigh(&sides, both(neck), Mass::grams(980.0))), [980.0]);
    assert_eq!(grams(&weigh(&sides, one(neck, Side::Left), Mass::grams(480.0))), [480.0, 500.0]);
    let back =
        weigh(&weigh(&sides, both(neck), Mass::grams(980.0)), one(neck, Side::Left), Mass::grams(480.0));
    assert_eq!(grams(&back), [480.0]);
    let packs = |count| OnScale::Packages(Product::Stew, NonZeroU8::new(count));
    let finished = weigh(&weigh(&plan, packs(3), Mass::grams(1360.0)), packs(0), Mass::grams(2700.0));
    assert_eq!(finished.weighings(), [Weighing { target: packs(0), mass: Mass::grams(2700.0) }]);
    for grams in [0.0, -3.0, 0.4, 1e9, f64::NAN] {
        let refused = plan.apply(Action::Weigh { target: OnScale::Lot, mass: Some(Mass::grams(grams)) });
        assert_eq!(
            refused.unwrap_err(),
            Refusal::WeighingOutOfRange { least: LIGHTEST, most: HEAVIEST },
            "{grams}"
        );
    }
}

/// At the likely value the middle case stays where it is, the muscle itself is known, the rest is known a little
/// better.
#[test]
fn a_muscle_as_heavy_as_expected_narrows_and_hardly_moves() {
    for (name, plan) in named_plans() {
        let before = forecast(&plan);
        for muscle in [Muscle::TopRound, Muscle::Tenderloin, Muscle::Brisket] {
            let expected = before.muscles[muscle.index()].mass;
            let after = forecast(&weigh(&plan, both(muscle), expected.likely()));
            let now = after.muscles[muscle.index()].mass;
            // The likely value of small muscles is rounded to the gram.
            assert!((now.likely() / expected.likely() - 1.0).abs() < 0.01, "{name} {muscle:?}");
            assert!(reach(now) < reach(expected) * 0.6, "{name} {muscle:?} {expected:?} {now:?}");
            for other in Muscle::ALL {
                let (then, now) = (before.muscles[other.index()].mass, after.muscles[other.index()].mass);
                assert!((now.likely() / then.likely() - 1.0).abs() < 0.01, "{name} {muscle:?} {other:?}");
            }
        }
    }
}

/// All 26 on the scale: what is left is the scale. Its errors add up as independent errors do, and 80 % of a
/// normal variable lie within 1.2816 standard deviations.
#[test]
fn with_every_muscle_weighed_only_the_scale_is_uncertain() {
    // Meat that was weighed as a whole was known before.
    let plans = named_plans().into_iter().filter(|(name, _)| !name.ends_with("deboned"));
    for (name, plan) in plans.step_by(3) {
        let before = forecast(&plan);
        let (mut all, mut square) = (plan.clone(), 0.0);
        for muscle in Muscle::ALL {
            let mass = before.muscles[muscle.index()].mass.likely();
            all = weigh(&all, both(muscle), mass);
            if plan.is_recovered(muscle) {
                square += scale_error(mass.to_grams()).powi(2);
            }
        }
        let take_home = forecast(&all).take_home;
        let width = (take_home.high() - take_home.low()).to_grams();
        let expected = 2.0 * 1.2816 * square.sqrt();
        assert!((width / expected - 1.0).abs() < 0.15, "{name}: {width} {expected}");
        let then = (before.take_home.high() - before.take_home.low()).to_grams();
        assert!(width < then * 0.25, "{name}: {then} {width}");
    }
}

/// An animal that was not weighed is as large as its meat says: its muscles are longer, and cuts may be.
#[test]
fn lengths_follow_the_size() {
    let (_, typical) = named_plans().into_iter().find(|(name, _)| name.ends_with("typical")).unwrap();
    let lot = expected_on_scale(&typical, OnScale::Lot).unwrap();
    let plan = weigh(&typical, OnScale::Lot, lot * 1.3);
    let (before, after) = (forecast(&typical), forecast(&plan));
    let hanging = after.hanging.likely() / before.hanging.likely();
    assert!((hanging - 1.3).abs() < 0.05, "{hanging}");
    for muscle in Muscle::ALL {
        let (then, now) = (before.muscles[muscle.index()].length, after.muscles[muscle.index()].length);
        assert_eq!(now, plan.middle_length(muscle), "{muscle:?}");
        if let (Some(then), Some(now)) = (then, now) {
            assert!((now / then - hanging.cbrt()).abs() < 1e-9, "{muscle:?}");
        }
    }
}
