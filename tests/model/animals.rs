//! Weights that can and cannot be believed.

use hindsaddle_model::animal::{Age, Animal, AnimalError, Condition, Legs, Sex, Species, Weighed};
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::plan::Plan;
use hindsaddle_model::tables;
use hindsaddle_model::units::{Length, Mass};

fn animal(species: Species, age: Age, weighed: Weighed) -> Result<Animal, AnimalError> {
    Animal::new(species, Sex::Doe, age, Condition::Ordinary, weighed)
}

#[test]
fn no_number_above_zero_is_no_animal() {
    for grams in [0.0, -50_000.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let mass = Mass::grams(grams);
        for weighed in [
            Weighed::Live(mass),
            Weighed::FieldDressed(mass, Legs::On),
            Weighed::Hanging(mass),
            Weighed::Deboned(mass),
        ] {
            assert_eq!(
                animal(Species::Roe, Age::Adult, weighed),
                Err(AnimalError::NotPositive),
                "{weighed:?}"
            );
        }
        let girth = Weighed::Girth(Length::mm(grams));
        assert_eq!(animal(Species::Elk, Age::Adult, girth), Err(AnimalError::NotPositive), "{girth:?}");
    }
}

#[test]
fn a_roe_of_900_pounds_is_told_what_roe_weigh() {
    let error = animal(Species::Roe, Age::Adult, Weighed::Live(Mass::pounds(900.0))).unwrap_err();
    let AnimalError::WeightOutOfRange { least, most } = error else { panic!("{error:?}") };
    assert!(least < most && most < Mass::pounds(200.0));
}

#[test]
fn every_typical_animal_is_believed_at_every_stage() {
    for species in Species::ALL {
        for sex in Sex::ALL {
            for age in Age::ALL {
                let (live, _) = tables::typical_live(species, sex, age);
                for weighed in [
                    Weighed::Typical,
                    Weighed::Live(live),
                    Weighed::FieldDressed(live * 0.73, Legs::On),
                    Weighed::FieldDressed(live * 0.70, Legs::Off),
                    Weighed::Hanging(live * 0.55),
                    Weighed::Deboned(live * 0.3),
                ] {
                    let believed = Animal::new(species, sex, age, Condition::Ordinary, weighed);
                    assert!(believed.is_ok(), "{species:?} {sex:?} {age:?} {weighed:?}: {believed:?}");
                }
            }
        }
    }
}

#[test]
fn a_girth_needs_a_published_table_and_its_range() {
    let girth = |inches: f64| Weighed::Girth(Length::inches(inches));
    assert_eq!(animal(Species::Axis, Age::Adult, girth(36.0)), Err(AnimalError::NoGirthTable));
    assert_eq!(animal(Species::Elk, Age::Fawn, girth(40.0)), Err(AnimalError::NoGirthTable));
    assert!(matches!(
        animal(Species::WhiteTailed, Age::Adult, girth(99.0)),
        Err(AnimalError::GirthOutOfRange { .. })
    ));
    assert!(animal(Species::WhiteTailed, Age::Adult, girth(36.0)).is_ok());
}

#[test]
fn a_condition_suits_its_sex_and_age() {
    let try_one = |sex, age, condition| Animal::new(Species::Mule, sex, age, condition, Weighed::Typical);
    assert_eq!(try_one(Sex::Doe, Age::Adult, Condition::LateRut), Err(AnimalError::ConditionDoesNotSuit));
    assert_eq!(try_one(Sex::Buck, Age::Adult, Condition::Nursing), Err(AnimalError::ConditionDoesNotSuit));
    assert_eq!(try_one(Sex::Buck, Age::Fawn, Condition::PreRut), Err(AnimalError::ConditionDoesNotSuit));
    assert!(try_one(Sex::Buck, Age::Old, Condition::PreRut).is_ok());
}

/// Legs are about 4 % of the dressed weight (judgement).
#[test]
fn legs_off_is_the_same_animal_four_percent_lighter() {
    let weigh = |kilograms: f64, legs| {
        let weighed = Weighed::FieldDressed(Mass::kilograms(kilograms), legs);
        forecast(&Plan::new(animal(Species::Red, Age::Adult, weighed).unwrap())).take_home.likely()
    };
    assert!((weigh(50.0, Legs::On) / weigh(48.0, Legs::Off) - 1.0).abs() < 1e-9);
}
