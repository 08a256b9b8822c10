//! Independent judges of what the model computes for itself: a library, and the slow way.

use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species, Weighed};
use hindsaddle_model::carcass::carcass;
use hindsaddle_model::ensemble::{Draw, SCENARIOS};
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::packing::Appetite;
use hindsaddle_model::plan::Plan;
use hindsaddle_model::tables;
use hindsaddle_model::units::Mass;
use statrs::distribution::{ContinuousCDF, Normal};

/// `statrs` inverts the normal distribution by another method.
#[test]
fn the_strata_are_normal_quantiles() {
    let normal = Normal::new(0.0, 1.0).unwrap();
    let mut drawn = Draw::Lean.values()[1..].to_vec();
    drawn.sort_by(f64::total_cmp);
    let strata = SCENARIOS - 1;
    for (index, value) in drawn.iter().enumerate() {
        let exact = normal.inverse_cdf((index as f64 + 0.5) / strata as f64).max(-2.5).min(2.5);
        assert!((value - exact).abs() < 1e-9, "stratum {index}: {value} against {exact}");
    }
}

/// A drawn yield has the spread of its row: 90 % of animals lie between low and high. The 50th and 51st of a
/// thousand strata lie on both sides of the 5th percentile, so their middle is the row's low end, but for the
/// width of a stratum there.
#[test]
fn drawn_yields_have_the_spread_of_their_row() {
    for species in Species::ALL {
        for sex in Sex::ALL {
            let (live, _) = tables::typical_live(species, sex, Age::Adult);
            let weighed = Weighed::Live(live);
            let animal = Animal::new(species, sex, Age::Adult, Condition::Ordinary, weighed).unwrap();
            let carcass = carcass(&Plan::new(animal));
            let row = tables::yields(species, sex);
            for (whole, part, spread) in [
                (&carcass.live, &carcass.dressed, row.dressed.spread),
                (&carcass.dressed, &carcass.hanging, row.hanging.spread),
                (&carcass.hanging, &carcass.lean, row.lean.spread),
            ] {
                assert!((part[0] / whole[0] - spread.likely()).abs() < 1e-12);
                let mut drawn: Vec<f64> = part.iter().zip(whole).skip(1).map(|(a, b)| *a / *b).collect();
                drawn.sort_by(f64::total_cmp);
                let ends = [f64::midpoint(drawn[49], drawn[50]), f64::midpoint(drawn[949], drawn[950])];
                let off =
                    [(ends[0] - spread.low()) / spread.low(), (ends[1] - spread.high()) / spread.high()];
                assert!(
                    off.iter().all(|off| off.abs() < 1e-4),
                    "{species:?} {sex:?}: {ends:?} of {spread:?}"
                );
            }
        }
    }
}

/// Low and high of a forecast, found the slow way: of the thousand draws, a hundred lie below the low end and
/// a hundred above the high end.
#[test]
fn low_and_high_leave_a_tenth_of_the_draws_on_each_side() {
    for seed in 0..30 {
        let plan = hindsaddle_tests::random_plan(seed);
        let (carcass, forecast) = (carcass(&plan), forecast(&plan));
        for (drawn, estimate) in [
            (&carcass.live, forecast.live),
            (&carcass.dressed, forecast.dressed),
            (&carcass.hanging, forecast.hanging),
            (&carcass.lean, forecast.lean),
        ] {
            assert_eq!(estimate.likely(), drawn[0]);
            let mut sorted: Vec<Mass> = drawn[1..].to_vec();
            sorted.sort_by(|a, b| a.partial_cmp(b).unwrap());
            let (low, high) = (sorted[100], sorted[899]);
            assert_eq!(estimate.low(), if low < drawn[0] { low } else { drawn[0] }, "seed {seed}");
            assert_eq!(estimate.high(), if high > drawn[0] { high } else { drawn[0] }, "seed {seed}");
        }
    }
}

/// Iowa State University, portion control: 1 lb of boneless meat serves four (K10, exact).
#[test]
fn a_pound_serves_four() {
    let portion = tables::portion(Appetite::Light).raw;
    assert_eq!(Mass::pounds(1.0) / portion, 4.0);
}
