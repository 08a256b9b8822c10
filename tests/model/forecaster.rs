//! What is kept from one forecast to the next changes no bit of what comes out.

use hindsaddle_model::ensemble::SplitMix;
use hindsaddle_model::forecast::{Forecaster, forecast};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_tests::{digest, random_actions, random_animal, random_plan, weighed_plan};

#[track_caller]
fn as_from_scratch(forecaster: &mut Forecaster, plan: &Plan) {
    let (kept, anew) = (forecaster.forecast(plan), forecast(plan));
    assert_eq!(digest(&kept), digest(&anew));
    assert_eq!(kept, anew);
}

/// Cuts, losses, wounds, packing and all else edited one after another, forth and back, and the animal now and then.
#[test]
fn edits_one_after_another_are_as_from_scratch() {
    let mut edits = 0;
    for seed in 0..12 {
        let dice = &mut SplitMix::new(1000 + seed);
        let (mut forecaster, mut plan) = (Forecaster::default(), random_plan(seed));
        let mut actions = random_actions(dice);
        actions.push(Action::SetAnimal(random_animal(dice)));
        actions.extend(random_actions(dice));
        actions.push(Action::ResetCuts);
        for action in actions {
            let Ok(applied) = plan.apply(action) else { continue };
            edits += usize::from(applied.plan != plan);
            as_from_scratch(&mut forecaster, &applied.plan);
            if edits % 7 == 0 {
                as_from_scratch(&mut forecaster, &plan);
            }
            plan = applied.plan;
        }
    }
    assert!(edits > 300, "{edits} edits changed something");
}

/// What was weighed in the tub depends on the cuts, so that a weighed animal is another one after an edit.
#[test]
fn a_weighed_animal_is_as_from_scratch() {
    let mut forecaster = Forecaster::default();
    for seed in 0..6 {
        let mut plan = weighed_plan(seed);
        as_from_scratch(&mut forecaster, &plan);
        for action in random_actions(&mut SplitMix::new(2000 + seed)).into_iter().step_by(3) {
            let Ok(applied) = plan.apply(action) else { continue };
            plan = applied.plan;
            as_from_scratch(&mut forecaster, &plan);
        }
    }
}
