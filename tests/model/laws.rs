//! Laws that hold whatever the figures are.

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::{Animal, Weighed};
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::plan::{Action, Losses, Plan, Shot};
use hindsaddle_model::product::Cut;
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_model::wounds::share;
use hindsaddle_tests::{digest, random_plan, with};

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
fn deboned_meat_weighs_what_the_taken_muscles_weigh() {
    for seed in 0..200 {
        let plan = random_plan(seed);
        if let Weighed::Deboned(meat) = plan.animal().weighed() {
            let forecast = forecast(&plan);
            let taken: Mass = Muscle::ALL
                .into_iter()
                .filter(|muscle| plan.is_recovered(*muscle))
                .map(|muscle| {
                    let spoiled = Side::ALL.map(|side| share(plan.wounds(), muscle, side));
                    forecast.muscles[muscle.index()].mass.likely()
                        * (1.0 - f64::midpoint(spoiled[0], spoiled[1]))
                })
                .sum();
            assert!((taken - meat).to_grams().abs() < 1e-6, "seed {seed}");
        }
    }
}

#[test]
fn the_same_plan_gives_the_same_forecast() {
    for seed in 0..5 {
        assert_eq!(digest(&forecast(&random_plan(seed))), digest(&forecast(&random_plan(seed))));
    }
}
