//! Laws that hold whatever the figures are.

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::{Animal, Weighed};
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::packing;
use hindsaddle_model::plan::{Action, Division, Losses, Part, Plan, Shot};
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_tests::{digest, random_plan};

fn with(plan: &Plan, action: Action) -> Plan {
    plan.apply(action).unwrap().plan
}

#[test]
fn a_mirrored_animal_gives_the_same_forecast() {
    for seed in 0..40 {
        let plan = random_plan(seed);
        let mut mirrored = plan.clone();
        for muscle in Muscle::ALL {
            let turned = |from: Side, to: Side, plan_now: &Plan| {
                let division = plan.division(muscle, from).clone();
                plan_now
                    .apply(Action::Divide { muscle, sides: Sides::One(to), division })
                    .map(|applied| applied.plan)
            };
            // A size that the rules refuse by now cannot be copied; then both sides stay as they were.
            if let Ok(both) = turned(Side::Left, Side::Right, &mirrored)
                .and_then(|half| turned(Side::Right, Side::Left, &half))
            {
                mirrored = both;
            }
        }
        let (here, there) = (forecast(&plan), forecast(&mirrored));
        assert_eq!(here.packs, there.packs, "seed {seed}");
        assert!((here.take_home.likely() - there.take_home.likely()).to_grams().abs() < 1e-6, "seed {seed}");
    }
}

#[test]
fn a_worse_shot_never_adds_meat_and_thicker_steaks_never_add_pieces() {
    let plan = Plan::new(Animal::example());
    let take_home = |shot: Shot| {
        let losses = Losses { shot, ..plan.losses() };
        forecast(&with(&plan, Action::SetLosses(losses))).take_home.likely()
    };
    assert!(take_home(Shot::Clean) > take_home(Shot::Usual) && take_home(Shot::Usual) > take_home(Shot::Bad));
    let mut before = u32::MAX;
    for mm in 5..60 {
        let cut = Cut::Steak(Length::mm(f64::from(mm)));
        let steaks = with(&plan, Action::Assign { muscle: Muscle::Backstrap, sides: Sides::Both, cut });
        let pieces = forecast(&steaks).muscles[Muscle::Backstrap.index()].packs[0].pieces.likely();
        assert!(pieces <= before, "{mm} mm");
        before = pieces;
    }
}

#[test]
fn an_edit_of_one_muscle_leaves_the_numbers_of_every_other_alone() {
    for seed in 0..40 {
        let plan = random_plan(seed);
        // On a table of deboned meat one muscle more or less changes what the others must weigh.
        if matches!(plan.animal().weighed(), Weighed::Deboned(_)) {
            continue;
        }
        let edited =
            with(&plan, Action::Assign { muscle: Muscle::Knuckle, sides: Sides::Both, cut: Cut::Grind });
        let (before, after) = (forecast(&plan), forecast(&edited));
        for muscle in Muscle::ALL.into_iter().filter(|muscle| *muscle != Muscle::Knuckle) {
            assert_eq!(before.muscles[muscle.index()], after.muscles[muscle.index()], "seed {seed}");
        }
    }
}

#[test]
fn a_group_not_taken_is_missing_by_its_own_weight() {
    let plan = Plan::new(Animal::example());
    let left = with(&plan, Action::Recover { muscle: Muscle::RibMeat, taken: false });
    let (before, after) = (forecast(&plan), forecast(&left));
    let ribs = before.muscles[Muscle::RibMeat.index()].mass.likely();
    assert!((before.take_home.likely() - after.take_home.likely() - ribs).to_grams().abs() < 1e-6);
}

#[test]
fn grind_in_parts_is_grind() {
    let plan = Plan::new(Animal::example());
    let parts = [30, 70].map(|percent| Part { percent, cut: Cut::Grind }).to_vec();
    let whole = Action::Assign { muscle: Muscle::TopRound, sides: Sides::Both, cut: Cut::Grind };
    let split = Action::Divide {
        muscle: Muscle::TopRound,
        sides: Sides::Both,
        division: Division::new(parts).unwrap(),
    };
    let (whole, split) = (forecast(&with(&plan, whole)), forecast(&with(&plan, split)));
    let grind = |forecast: &hindsaddle_model::forecast::Forecast| forecast.tallies[Product::Grind as usize];
    assert_eq!(grind(&whole).packs, grind(&split).packs);
    assert!((grind(&whole).mass.likely() - grind(&split).mass.likely()).to_grams().abs() < 1e-6);
}

#[test]
fn deboned_meat_weighs_what_the_taken_muscles_weigh() {
    for seed in 0..200 {
        let plan = random_plan(seed);
        if let Weighed::Deboned(meat) = plan.animal().weighed() {
            let forecast = forecast(&plan);
            let taken: Mass = Muscle::ALL
                .into_iter()
                .filter(|muscle| plan.is_recovered(*muscle))
                .map(|muscle| forecast.muscles[muscle.index()].mass.likely())
                .sum();
            assert!((taken - meat).to_grams().abs() < 1e-6, "seed {seed}");
        }
    }
}

#[test]
fn a_packer_who_takes_one_gram_at_a_time_agrees() {
    for grams in (1..6000_u32).step_by(37) {
        for pack in [100_u32, 454, 907] {
            // A pack is closed when it is full; a last one under a tenth goes into the others.
            let (full, rest) = (grams / pack, grams % pack);
            let slow = if rest * 10 > pack || full == 0 { full + 1 } else { full };
            let fast = packing::packs_of_loose(Mass::grams(f64::from(grams)), Mass::grams(f64::from(pack)));
            assert_eq!(fast, slow, "{grams} g in packs of {pack} g");
        }
    }
}

#[test]
fn the_same_plan_gives_the_same_forecast() {
    for seed in 0..5 {
        assert_eq!(digest(&forecast(&random_plan(seed))), digest(&forecast(&random_plan(seed))));
    }
}
