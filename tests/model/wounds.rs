//! Wounds: what they take is thrown away on that side and nowhere else, and never reaches the grinder.

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::Animal;
use hindsaddle_model::forecast::{Forecast, Line, forecast};
use hindsaddle_model::plan::{Action, Care, Losses, Plan, Shot};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::Refusal;
use hindsaddle_model::units::Mass;
use hindsaddle_model::wounds::{MOST_WOUNDS, Wound, share};
use hindsaddle_tests::{random_plan, with};

/// Behind the shoulder, where most shots go.
const RIBS: Wound = Wound { side: Side::Left, x: 20, y: 38, radius: 5 };
/// In the middle of the thigh.
const THIGH: Wound = Wound { side: Side::Right, x: 46, y: 41, radius: 4 };

fn clean() -> Plan {
    let plan = Plan::new(Animal::example());
    with(&plan, Action::SetLosses(Losses { shot: Shot::Clean, care: Care::Usual, hung_days: 0 }))
}

fn mass_of(forecast: &Forecast, wanted: Line) -> Mass {
    let (_, mass) = forecast.ledger.iter().find(|(line, _)| *line == wanted).unwrap();
    mass.likely()
}

#[test]
fn a_wound_takes_the_overlapped_share_of_each_muscle_on_its_side() {
    let plan = with(&clean(), Action::AddWound(THIGH));
    let forecast = forecast(&plan);
    let mut expected = Mass::ZERO;
    for muscle in &forecast.muscles {
        let taken = share(plan.wounds(), muscle.muscle, Side::Right);
        let a_side = muscle.mass.likely() / 2.0;
        let drawn: Mass =
            muscle.sides[1].iter().filter(|part| part.spoiled).map(|part| part.pieces.discarded).sum();
        assert!((drawn - a_side * taken).to_grams().abs() < 1e-6, "{:?}", muscle.muscle);
        assert!(muscle.sides[0].iter().all(|part| !part.spoiled), "{:?}, other side", muscle.muscle);
        if plan.is_recovered(muscle.muscle) {
            expected += drawn;
        }
    }
    assert!(expected > Mass::grams(100.0), "{:.0} g", expected.to_grams());
    assert!((mass_of(&forecast, Line::Wound) - expected).to_grams().abs() < 1e-6);
    assert_eq!(mass_of(&forecast, Line::Discarded), Mass::ZERO);
}

/// All of the animal to grind: what the wound took is missing from the tub, to the gram.
#[test]
fn spoiled_meat_never_goes_to_grind() {
    let mut plan = clean();
    for muscle in Muscle::ALL {
        plan = with(&plan, Action::Assign { muscle, sides: Sides::Both, cut: Cut::Grind });
    }
    for wounds in [vec![RIBS], vec![THIGH], vec![RIBS, THIGH, Wound { side: Side::Right, ..RIBS }]] {
        let mut wounded = plan.clone();
        for wound in wounds {
            wounded = with(&wounded, Action::AddWound(wound));
        }
        let forecast = forecast(&wounded);
        let meat: Mass = forecast
            .muscles
            .iter()
            .filter(|muscle| wounded.is_recovered(muscle.muscle))
            .map(|muscle| muscle.mass.likely())
            .sum();
        let ground = forecast.tallies[Product::Grind as usize].mass.likely();
        let lost = mass_of(&forecast, Line::Wound);
        assert!(lost > Mass::ZERO);
        assert!((meat - ground - lost).to_grams().abs() < 1e-6);
    }
}

/// The average loss of a shot and a marked wound are the same meat: only one of them is taken off.
#[test]
fn a_marked_wound_stands_in_for_the_average() {
    let beside = Wound { side: Side::Left, x: -20, y: 0, radius: 1 };
    for shot in Shot::ALL {
        let plan = with(&clean(), Action::SetLosses(Losses { shot, care: Care::Usual, hung_days: 0 }));
        let marked = forecast(&with(&plan, Action::AddWound(beside)));
        assert_eq!(mass_of(&marked, Line::Wound), Mass::ZERO, "{shot:?}");
    }
}

#[test]
fn a_wound_across_a_strap_divides_it_and_a_bite_does_not() {
    let whole =
        Action::Assign { muscle: Muscle::Backstrap, sides: Sides::Both, cut: Cut::Roast(RoastSize::Whole) };
    let plan = with(&clean(), whole);
    let roasts = |plan: &Plan, side: usize| -> u32 {
        forecast(plan).muscles[Muscle::Backstrap.index()].sides[side]
            .iter()
            .map(|part| part.pieces.count)
            .sum()
    };
    assert_eq!(roasts(&plan, 0), 1);
    let across = with(&plan, Action::AddWound(Wound { side: Side::Left, x: 26, y: 48, radius: 3 }));
    assert_eq!((roasts(&across, 0), roasts(&across, 1)), (2, 1));
    let bite = with(&plan, Action::AddWound(Wound { side: Side::Left, x: 26, y: 44, radius: 2 }));
    assert!(share(bite.wounds(), Muscle::Backstrap, Side::Left) < 0.1);
    assert_eq!(roasts(&bite, 0), 1);
}

#[test]
fn the_ledger_closes_with_wounds_in_it() {
    let mut wounded = 0;
    for seed in 0..300 {
        let plan = random_plan(seed);
        wounded += u32::from(!plan.wounds().is_empty());
        let forecast = forecast(&plan);
        let out: Mass = forecast.ledger[1..].iter().map(|(_, mass)| mass.likely()).sum();
        assert!((out - forecast.live.likely()).to_grams().abs() < 1e-6, "seed {seed}");
    }
    assert!(wounded > 150, "{wounded}");
}

/// Meat weighed after deboning has the wound cut out already: it is all there to take home.
#[test]
fn deboned_meat_was_weighed_without_the_wound() {
    use hindsaddle_model::animal::{Age, Condition, Sex, Species, Weighed};
    let meat = Mass::kilograms(18.0);
    let doe =
        Animal::new(Species::WhiteTailed, Sex::Doe, Age::Adult, Condition::Ordinary, Weighed::Deboned(meat));
    let plan = with(&Plan::new(doe.unwrap()), Action::AddWound(THIGH));
    let home = forecast(&plan).take_home.likely();
    assert!((home - meat).to_grams().abs() < 1e-6, "{:.3} kg", home.to_kilograms());
}

#[test]
fn impossible_wounds_are_refused_with_the_reason() {
    let mut plan = clean();
    for (x, y, radius) in [(-21, 0, 1), (61, 0, 1), (0, -1, 1), (0, 76, 1), (0, 0, 0), (0, 0, 13)] {
        let wound = Wound { side: Side::Left, x, y, radius };
        assert_eq!(plan.apply(Action::AddWound(wound)), Err(Refusal::WoundOffThePlate), "{x} {y} {radius}");
    }
    for _ in 0..MOST_WOUNDS {
        plan = with(&plan, Action::AddWound(RIBS));
    }
    assert_eq!(plan.apply(Action::AddWound(RIBS)), Err(Refusal::TooManyWounds { most: MOST_WOUNDS }));
    let moved = with(&plan, Action::ChangeWound { place: 3, wound: THIGH });
    assert_eq!(moved.wounds()[3], THIGH);
    assert_eq!(with(&moved, Action::RemoveWound(3)).wounds().len(), MOST_WOUNDS - 1);
}
