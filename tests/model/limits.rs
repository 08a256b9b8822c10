//! The lightest and the heaviest animal that is believed: the limits are sharp, and at both of them the whole
//! chain still makes sense.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::{Age, Animal, AnimalError, Condition, Legs, Sex, Species, Weighed};
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::link::Names;
use hindsaddle_model::plan::Plan;
use hindsaddle_model::tables;
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_tests::{read, write};

type Scale = fn(Mass) -> Weighed;

const SCALES: [Scale; 5] = [
    Weighed::Live,
    |mass| Weighed::FieldDressed(mass, Legs::On),
    |mass| Weighed::FieldDressed(mass, Legs::Off),
    Weighed::Hanging,
    Weighed::Deboned,
];

fn animal(species: Species, sex: Sex, age: Age, weighed: Weighed) -> Result<Animal, AnimalError> {
    Animal::new(species, sex, age, Condition::Ordinary, weighed)
}

#[track_caller]
fn makes_sense(plan: &Plan) -> Forecast {
    let forecast = forecast(plan);
    let sum: Mass = forecast.ledger[1..].iter().map(|(_, mass)| mass.likely()).sum();
    assert!((sum - forecast.live.likely()).to_grams().abs() < 1e-6, "{plan:?}");
    for (line, mass) in &forecast.ledger {
        assert!(mass.low().to_grams() > -1e-6 && mass.high().to_grams().is_finite(), "{line:?} of {plan:?}");
    }
    assert!(forecast.lean.high() < forecast.hanging.high(), "{plan:?}");
    assert!(forecast.take_home.low() > Mass::ZERO && forecast.packs.likely() > 0, "{plan:?}");
    forecast
}

#[test]
fn the_limits_are_sharp_and_the_chain_holds_at_them() {
    for species in Species::ALL {
        for sex in Sex::ALL {
            for scale in SCALES {
                let error = animal(species, sex, Age::Adult, scale(Mass::kilograms(1e6))).unwrap_err();
                let AnimalError::WeightOutOfRange { least, most } = error else { panic!("{error:?}") };
                let (least, most) = (least.to_grams().ceil(), most.to_grams().floor());
                for grams in [least, most] {
                    let believed = animal(species, sex, Age::Adult, scale(Mass::grams(grams))).unwrap();
                    let plan = Plan::new(believed);
                    makes_sense(&plan);
                    assert_eq!(read(&write(&plan, Names::LeftOut)), Ok(plan));
                }
                for grams in [least - 1.0, most + 1.0] {
                    let refused = animal(species, sex, Age::Adult, scale(Mass::grams(grams)));
                    assert!(matches!(refused, Err(AnimalError::WeightOutOfRange { .. })), "{refused:?}");
                }
            }
        }
    }
}

#[test]
fn girths_are_sharp_at_their_limits_and_the_chain_holds_at_them() {
    let mut tables_found = 0;
    for species in Species::ALL {
        for age in Age::ALL {
            let Some(row) = tables::girth(species, age) else {
                let refused = animal(species, Sex::Doe, age, Weighed::Girth(Length::cm(100.0)));
                assert_eq!(refused, Err(AnimalError::NoGirthTable));
                continue;
            };
            tables_found += 1;
            for (girth, beyond) in [(row.range.0, -1.0), (row.range.1, 1.0)] {
                let plan = Plan::new(animal(species, Sex::Doe, age, Weighed::Girth(girth)).unwrap());
                let forecast = makes_sense(&plan);
                let (lightest, heaviest) = tables::weight_limits(species);
                let live = forecast.live.likely();
                assert!(live > lightest && live < heaviest, "{species:?} {age:?} {live:?}");
                let beyond = Weighed::Girth(girth + Length::mm(beyond));
                let refused = animal(species, Sex::Doe, age, beyond);
                assert!(matches!(refused, Err(AnimalError::GirthOutOfRange { .. })), "{refused:?}");
            }
        }
    }
    assert_eq!(tables_found, 10, "white-tailed of every age, elk and moose from yearlings up");
}

/// A weight is kept to the gram and a girth to a tenth of a millimetre, so that a link says what was entered.
#[test]
fn what_was_weighed_is_kept_on_its_grid() {
    let weighed = animal(Species::Mule, Sex::Buck, Age::Adult, Weighed::Live(Mass::pounds(201.3))).unwrap();
    assert_eq!(weighed.weighed(), Weighed::Live(Mass::grams(91_308.0)));
    let girth = Weighed::Girth(Length::inches(36.1));
    let measured = animal(Species::WhiteTailed, Sex::Buck, Age::Adult, girth).unwrap();
    assert_eq!(measured.weighed(), Weighed::Girth(Length::mm(916.9)));
}

/// A bigger animal of its kind is not smaller in any muscle.
#[test]
fn every_muscle_grows_with_the_animal() {
    for species in Species::ALL {
        let (typical, _) = tables::typical_live(species, Sex::Buck, Age::Adult);
        let mut before: Option<Forecast> = None;
        for part in [0.5, 0.7, 0.9, 1.1, 1.3] {
            let weighed = Weighed::Live(typical * part);
            let now = forecast(&Plan::new(animal(species, Sex::Buck, Age::Adult, weighed).unwrap()));
            if let Some(before) = before {
                for muscle in Muscle::ALL {
                    let (small, large) = (&before.muscles[muscle.index()], &now.muscles[muscle.index()]);
                    assert!(small.mass.likely() < large.mass.likely(), "{species:?} {muscle:?} at {part}");
                    assert!(small.length <= large.length, "{species:?} {muscle:?} at {part}");
                }
            }
            before = Some(now);
        }
    }
}
