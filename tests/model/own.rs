//! A household's own figures: what is compared, how far few animals are believed, and what a plan makes of them.

use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species, Weighed};
use hindsaddle_model::carcass::carcass;
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::own::{self, FARTHEST, MOST_ANIMALS, Own, TooLittle, compared, figures};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::scale::OnScale;
use hindsaddle_model::units::Mass;
use hindsaddle_tests::{digest, random_plan, with};
use proptest::prelude::*;

fn hanging(kilograms: f64) -> Plan {
    let weighed = Weighed::Hanging(Mass::kilograms(kilograms));
    let doe = Animal::new(Species::WhiteTailed, Sex::Doe, Age::Adult, Condition::Ordinary, weighed);
    with(&Plan::new(doe.unwrap()), Action::Recover { muscle: Muscle::Skirt, taken: true })
}

/// A household that leaves more on the bones than the table thinks, and seams generous backstraps.
fn household(muscle: Muscle) -> f64 {
    if muscle == Muscle::Backstrap { 1.15 } else { 0.9 }
}

/// The plan with muscles weighed as that household would find them.
fn weighed(plan: &Plan, muscles: impl IntoIterator<Item = Muscle>) -> Plan {
    let table = forecast(plan);
    muscles.into_iter().fold(plan.clone(), |plan, muscle| {
        let mass = table.muscles[muscle.index()].mass.likely() * household(muscle);
        with(&plan, Action::Weigh { target: OnScale::Muscle(muscle, Sides::Both), mass: Some(mass) })
    })
}

#[test]
fn weights_are_compared_with_the_table() {
    let plan = hanging(30.0);
    let table = forecast(&plan);
    let mass = |muscle: Muscle| table.muscles[muscle.index()].mass.likely();
    let all = Muscle::ALL.into_iter().map(mass).sum::<Mass>();
    let found = Muscle::ALL.into_iter().map(|muscle| mass(muscle) * household(muscle)).sum::<Mass>();
    let animal = compared(&weighed(&plan, Muscle::ALL)).unwrap();
    assert!((animal.meat.unwrap() - found / all).abs() < 1e-3);
    assert_eq!(animal.shares.len(), Muscle::COUNT);
    for (muscle, ratio) in &animal.shares {
        let expected = household(*muscle) * (all / found);
        // Weights are kept to the gram.
        assert!((ratio / expected - 1.0).abs() < 0.02, "{muscle:?} {ratio} {expected}");
    }
    // The figures that a plan starts from are the table's, whatever is in it.
    let biased = with(&plan, Action::UseOwn(Own::new(-10, [7; Muscle::COUNT])));
    let again = Muscle::ALL.into_iter().fold(biased, |plan, muscle| {
        let mass = Some(mass(muscle) * household(muscle));
        with(&plan, Action::Weigh { target: OnScale::Muscle(muscle, Sides::Both), mass })
    });
    assert_eq!(compared(&again).unwrap(), animal);
    // The whole lot says more of all meat than its muscles do; without the hanging weight nothing is said of it.
    let lot = Action::Weigh { target: OnScale::Lot, mass: Some(all * 0.8) };
    assert!((compared(&with(&again, lot)).unwrap().meat.unwrap() - 0.8).abs() < 1e-3);
    let live = with(&plan, Action::SetAnimal(Animal::example()));
    assert_eq!(compared(&weighed(&live, Muscle::ALL)).unwrap().meat, None);
}

#[test]
fn half_of_the_meat_is_enough_and_less_is_not() {
    let plan = hanging(30.0);
    let table = forecast(&plan);
    let part = |muscles: &[Muscle]| {
        let mass = |muscle: &Muscle| table.muscles[muscle.index()].mass.likely();
        muscles.iter().map(mass).sum::<Mass>() / Muscle::ALL.iter().map(mass).sum::<Mass>()
    };
    for count in 0..=Muscle::COUNT {
        let muscles = &Muscle::ALL[..count];
        match compared(&weighed(&plan, muscles.iter().copied())) {
            Ok(_) => assert!(part(muscles) >= 0.5, "{count}"),
            Err(TooLittle { weighed }) => {
                assert!((weighed - part(muscles)).abs() < 1e-9 && weighed < 0.5, "{count}");
            }
        }
    }
}

/// n of them go n / (n + 3) of the way: by hand, of 20 % it is 5, 8, 10, 11, 13 (12.5 rounds away from zero).
#[test]
fn few_animals_are_believed_a_little() {
    let animal = |name: &str, ratio: f64| own::Animal {
        name: name.to_owned(),
        species: Species::WhiteTailed,
        meat: Some(ratio),
        shares: vec![(Muscle::Neck, 2.0 - ratio)],
    };
    for (count, percent) in [(1, 5), (2, 8), (3, 10), (4, 11), (5, 13)] {
        let animals: Vec<own::Animal> = (0..count).map(|name| animal(&name.to_string(), 1.2)).collect();
        let (own, from) = figures(&animals, Species::WhiteTailed, "another");
        assert_eq!((own.meat_percent(), from), (percent, count), "{count}");
        assert_eq!(own.share_percent(Muscle::Neck), -percent);
        assert_eq!(own.share_percent(Muscle::Clod), 0);
        let (without, from) = figures(&animals, Species::WhiteTailed, "0");
        assert_eq!(from, count - 1);
        assert!(without.meat_percent() < own.meat_percent());
        assert_eq!(figures(&animals, Species::Moose, "another"), (Own::default(), 0));
    }
    let wild = vec![animal("odd", 9.0); 30];
    assert_eq!(figures(&wild, Species::WhiteTailed, "").0.meat_percent(), FARTHEST);
}

#[test]
fn next_year_starts_nearer() {
    let animals: Vec<own::Animal> =
        [24.0, 31.0, 38.0].map(|hung| compared(&weighed(&hanging(hung), Muscle::ALL)).unwrap()).to_vec();
    let plan = hanging(28.0);
    let table = forecast(&plan);
    let (own, _) = figures(&animals, Species::WhiteTailed, &own::name(&plan));
    let nearer = forecast(&with(&plan, Action::UseOwn(own)));
    for muscle in Muscle::ALL {
        let of = |forecast: &Forecast| forecast.muscles[muscle.index()].mass.likely();
        let truth = of(&table) * household(muscle);
        let off = |mass: Mass| (mass / truth - 1.0).abs();
        assert!(off(of(&nearer)) < off(of(&table)) * 0.75, "{muscle:?}");
    }
    assert_eq!(nearer.live, forecast(&with(&plan, Action::UseOwn(Own::default()))).live);
    let back = with(&with(&plan, Action::UseOwn(own)), Action::UseOwn(Own::default()));
    assert_eq!(digest(&forecast(&back)), digest(&table));
}

#[test]
fn mass_closes_with_own_figures_in_it() {
    for seed in 0..60 {
        for percent in [-FARTHEST, FARTHEST, 17] {
            let mut shares = [percent; Muscle::COUNT];
            shares[seed as usize % Muscle::COUNT] = -percent;
            let own = Own::new(percent, shares);
            let plan = with(&random_plan(seed), Action::UseOwn(own));
            let carcass = carcass(&plan);
            for masses in [&carcass.bone, &carcass.trim, &carcass.drying] {
                assert!(masses.iter().all(|mass| *mass > Mass::ZERO), "seed {seed}");
            }
            let forecast = forecast(&plan);
            let sum: Mass = forecast.ledger[1..].iter().map(|(_, mass)| mass.likely()).sum();
            assert!((sum - forecast.live.likely()).to_grams().abs() < 1e-6, "seed {seed}");
            assert!(forecast.ledger.iter().all(|(_, mass)| mass.low().to_grams() > -1e-6), "seed {seed}");
        }
    }
}

#[test]
fn the_animals_come_back_from_their_text() {
    let animals: Vec<own::Animal> = [24.0, 31.0]
        .map(|hung| {
            let mut animal = compared(&weighed(&hanging(hung), Muscle::ALL)).unwrap();
            animal.meat = animal.meat.map(|ratio| (ratio * 1000.0).round() / 1000.0);
            for (_, ratio) in &mut animal.shares {
                *ratio = (*ratio * 1000.0).round() / 1000.0;
            }
            animal
        })
        .to_vec();
    assert_eq!(own::read(&own::write(&animals)), animals);
    let many = vec![own::write(&animals[..1]); 3 * MOST_ANIMALS].join("\n");
    assert_eq!(own::read(&many).len(), MOST_ANIMALS);
    for wrong in ["", "dear diary", "white_tailed doe\tneck 99999\tmeat -3\thoof 900\tneck"] {
        assert!(own::read(wrong).iter().all(|animal| animal.meat.is_none() && animal.shares.is_empty()));
    }
}

proptest! {
    #[test]
    fn any_text_of_animals_returns(text in ".{0,300}", name in "[a-z_ ]{0,20}", ratio: u64) {
        let _ = own::read(&text);
        let _ = own::read(&format!("white_tailed {name}\tneck {ratio}\t{text}"));
    }
}
