//! What is hard to believe on the scale is asked about, at the threshold that is documented, and does no harm.

#![expect(clippy::disallowed_methods, reason = "another machine's logarithms would be as good a judge")]

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::Animal;
use hindsaddle_model::carcass::carcass;
use hindsaddle_model::ensemble::SCENARIOS;
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::product::Product;
use hindsaddle_model::scale::{Doubt, OnScale, Weighing, doubt};
use hindsaddle_model::units::Mass;
use hindsaddle_tests::{digest, expected_on_scale, with};

fn weigh(plan: &Plan, target: OnScale, mass: Mass) -> Plan {
    with(plan, Action::Weigh { target, mass: Some(mass) })
}

fn both(muscle: Muscle) -> OnScale {
    OnScale::Muscle(muscle, Sides::Both)
}

/// The scale as documented: half of a step of 10 g, and one percent.
fn scale_error(grams: f64) -> f64 {
    5.0 + 0.01 * grams
}

fn ask(plan: &Plan, target: OnScale, mass: Mass) -> Option<Doubt> {
    doubt(plan, Weighing { target, mass })
}

/// Three standard deviations, by the draws and the scale's documented error; on either side.
#[test]
fn a_weight_is_questioned_from_three_standard_deviations_on() {
    let plan = Plan::new(Animal::example());
    let prior = carcass(&plan);
    for muscle in Muscle::ALL {
        let expected: Vec<f64> =
            prior.muscles[muscle.index()].iter().map(|mass| (mass.to_grams() * 2.0).ln()).collect();
        let mean = expected[1..].iter().sum::<f64>() / (SCENARIOS - 1) as f64;
        let squares = expected[1..].iter().map(|value| (value - mean) * (value - mean));
        let variance = squares.sum::<f64>() / (SCENARIOS - 2) as f64;
        for sign in [-1.0, 1.0] {
            // The error depends on the weight itself, so the threshold is looked for.
            let off = |grams: f64| {
                let error = variance + (scale_error(grams) / grams).powi(2);
                sign * (grams.ln() - expected[0]) / error.sqrt()
            };
            let mut grams = expected[0].exp().round();
            while off(grams) <= 3.0 {
                grams += sign;
            }
            let ask = |grams: f64| ask(&plan, both(muscle), Mass::grams(grams));
            assert_eq!(ask(grams - sign), None, "{muscle:?} {grams}");
            let Some(Doubt::Far { expected: mass, off: by }) = ask(grams) else {
                panic!("{muscle:?} {grams} {:?}", ask(grams))
            };
            assert!((mass.to_grams() / expected[0].exp() - 1.0).abs() < 1e-9);
            assert!((by - sign * off(grams)).abs() < 1e-9, "{by}");
        }
    }
}

#[test]
fn the_absurd_is_questioned_and_the_usual_slip_too() {
    let doe = Plan::new(Animal::example());
    let far = |doubt: Option<Doubt>| matches!(doubt, Some(Doubt::Far { .. }));
    assert!(far(ask(&doe, both(Muscle::Tenderloin), Mass::pounds(9.0))));
    let whole = ask(&doe, both(Muscle::Tenderloin), Mass::pounds(90.0));
    let Some(Doubt::MoreThanAllMeat { meat }) = whole else { panic!("{whole:?}") };
    assert!((meat / forecast(&doe).take_home.likely() - 1.0).abs() < 1e-9);
    for muscle in [Muscle::Backstrap, Muscle::TopRound, Muscle::Knuckle] {
        let expected = expected_on_scale(&doe, both(muscle)).unwrap();
        assert_eq!(ask(&doe, both(muscle), expected * 1.1), None, "{muscle:?}");
        assert!(far(ask(&doe, both(muscle), expected / 2.0)), "one side taken for both: {muscle:?}");
        assert!(
            far(ask(&doe, OnScale::Muscle(muscle, Sides::One(Side::Left)), expected)),
            "both taken for one side: {muscle:?}"
        );
    }
    let kilograms_for_pounds = expected_on_scale(&doe, OnScale::Lot).unwrap() * 2.2046;
    assert!(far(ask(&doe, OnScale::Lot, kilograms_for_pounds)));
    // What was weighed before counts, and the weight itself does not.
    let mass = expected_on_scale(&doe, both(Muscle::Neck)).unwrap() * 3.0;
    let kept = weigh(&doe, both(Muscle::Neck), mass);
    assert_eq!(ask(&kept, both(Muscle::Neck), mass), ask(&doe, both(Muscle::Neck), mass));
    // Where nothing is expected there is nothing to compare with, and nothing to learn.
    let chops = OnScale::Packages(Product::Chop, None);
    assert_eq!(ask(&doe, chops, Mass::kilograms(2.0)), None);
    let weighed = weigh(&doe, chops, Mass::kilograms(2.0));
    assert_eq!(digest(&forecast(&weighed)), digest(&forecast(&doe)));
}

/// A tenderloin of 9 lb is followed, but says no more of the other muscles than one that is barely believed.
#[test]
fn what_is_kept_against_all_odds_is_followed_alone() {
    let doe = Plan::new(Animal::example());
    let likely = expected_on_scale(&doe, both(Muscle::Tenderloin)).unwrap();
    let heavier = (1..1000).map(|grams| likely + Mass::grams(f64::from(grams)));
    let barely =
        heavier.into_iter().find(|mass| ask(&doe, both(Muscle::Tenderloin), *mass).is_some()).unwrap();
    let [odd, absurd] =
        [barely, Mass::pounds(9.0)].map(|mass| forecast(&weigh(&doe, both(Muscle::Tenderloin), mass)));
    let of = |forecast: &Forecast, muscle: Muscle| forecast.muscles[muscle.index()].mass;
    assert!((of(&absurd, Muscle::Tenderloin).likely() / Mass::pounds(9.0) - 1.0).abs() < 0.02);
    for muscle in Muscle::ALL.into_iter().filter(|muscle| *muscle != Muscle::Tenderloin) {
        // A heavier weight is read a little more exactly.
        let factor = of(&absurd, muscle).likely() / of(&odd, muscle).likely();
        assert!((factor - 1.0).abs() < 0.02, "{muscle:?} {factor}");
    }
}
