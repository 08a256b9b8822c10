//! Mass balance: everything that went in comes out under a name.

use hindsaddle_model::carcass::carcass;
use hindsaddle_model::ensemble::SCENARIOS;
use hindsaddle_model::forecast::{Line, forecast};
use hindsaddle_model::report;
use hindsaddle_model::units::Mass;
use hindsaddle_tests::random_plan;
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn the_carcass_closes_in_every_scenario(seed: u64) {
        let carcass = carcass(&random_plan(seed));
        for i in 0..SCENARIOS {
            let muscles: Mass = carcass.muscles.iter().map(|masses| masses[i] * 2.0).sum();
            let lost = carcass.bone[i] + carcass.trim[i] + carcass.drying[i] + carcass.wound[i] + carcass.left_behind[i];
            let offal = carcass.live[i] - carcass.hanging[i];
            let left = carcass.live[i] - offal - lost - muscles;
            prop_assert!(left.to_grams().abs() < 1e-6, "scenario {i}: {left:?}");
            prop_assert!(carcass.muscles.iter().all(|masses| masses[i] > Mass::ZERO));
        }
    }

    #[test]
    fn the_ledger_closes_to_the_gram(seed: u64) {
        let forecast = forecast(&random_plan(seed));
        let exact: Mass = forecast.ledger[1..].iter().map(|(_, mass)| mass.likely()).sum();
        prop_assert!((exact - forecast.live.likely()).to_grams().abs() < 1e-6);
        let rows = report::ledger(&forecast);
        prop_assert_eq!(rows[0].0, Line::Live);
        let total: u32 = rows[1..].iter().map(|(_, row)| row.likely).sum();
        prop_assert_eq!(total, rows[0].1.likely);
        let packed: Mass = forecast.tallies.iter().map(|tally| tally.mass.likely()).sum();
        prop_assert!((packed - forecast.take_home.likely()).to_grams().abs() < 1e-6);
        prop_assert!(forecast.ledger.iter().all(|(_, mass)| mass.low().to_grams() > -1e-6));
    }
}
