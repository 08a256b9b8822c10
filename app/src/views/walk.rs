//! The first deer: ten steps from the hanging animal to the labelled box, in the order that the planner itself works.

use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::order::Why;

use crate::caution::Caution;
use crate::text;

/// A step of it.
pub struct WalkStep {
    /// The side of the plate that shows it.
    pub view: View,
    /// The muscles that are worked on; empty for the whole animal.
    pub muscles: &'static [Muscle],
    /// The reasons of the working order that this step is about, in their order.
    pub order: &'static [Why],
    /// The cautions that belong to it.
    pub cautions: &'static [Caution],
    /// Whether the hand that holds the meat is in the way of the knife.
    pub knife: bool,
}

/// Every step, as many as [`text::WALK`] has words for.
pub static STEPS: [WalkStep; 10] = [
    WalkStep {
        view: View::Outer,
        muscles: &[],
        order: &[],
        cautions: &[Caution::Testing, Caution::Tag, Caution::Cold],
        knife: false,
    },
    WalkStep {
        view: View::Inner,
        muscles: &[Muscle::Tenderloin, Muscle::Skirt],
        order: &[Why::DriesFirst],
        cautions: &[Caution::Gut],
        knife: false,
    },
    WalkStep {
        view: View::Outer,
        muscles: &[
            Muscle::FlatIron,
            Muscle::MockTender,
            Muscle::Clod,
            Muscle::Arm,
            Muscle::ForeShank,
            Muscle::Cape,
        ],
        order: &[],
        cautions: &[],
        knife: true,
    },
    WalkStep {
        view: View::Above,
        muscles: &[Muscle::Backstrap],
        order: &[],
        cautions: &[Caution::PartsLeftOut],
        knife: false,
    },
    WalkStep {
        view: View::Outer,
        muscles: &[
            Muscle::Neck,
            Muscle::NeckStraps,
            Muscle::Brisket,
            Muscle::RibMeat,
            Muscle::FlankSteak,
            Muscle::FlankSheets,
        ],
        order: &[],
        cautions: &[Caution::BulletPath, Caution::Gut, Caution::PartsLeftOut],
        knife: false,
    },
    WalkStep { view: View::Outer, muscles: &HIND_LEG, order: &[], cautions: &[], knife: true },
    WalkStep {
        view: View::Outer,
        muscles: &HIND_LEG,
        order: &[],
        cautions: &[Caution::PartsLeftOut],
        knife: true,
    },
    WalkStep {
        view: View::Above,
        muscles: &[Muscle::Backstrap, Muscle::Sirloin],
        order: &[Why::ChoiceWhileFresh, Why::SlicesNext, Why::RoastsNext, Why::CubesNext],
        cautions: &[],
        knife: true,
    },
    WalkStep {
        view: View::Outer,
        muscles: &[Muscle::Cape, Muscle::Brisket, Muscle::RibMeat, Muscle::FlankSteak, Muscle::FlankSheets],
        order: &[Why::TrimToTheTub, Why::GrindLast],
        cautions: &[Caution::GrinderAndKnife, Caution::BulletPath],
        knife: false,
    },
    WalkStep {
        view: View::Outer,
        muscles: &[],
        order: &[],
        cautions: &[Caution::Freezing, Caution::OneAnimal, Caution::Cooking],
        knife: false,
    },
];

const HIND_LEG: [Muscle; 6] = [
    Muscle::BottomRound,
    Muscle::EyeRound,
    Muscle::Knuckle,
    Muscle::Sirloin,
    Muscle::TriTip,
    Muscle::HindShank,
];

/// What can hurt at a step, and what is asked of the agencies: about what, and what is said.
pub fn cautions(step: &WalkStep) -> Vec<(&'static str, &'static str)> {
    // At the grinder and at the knife there are shorter words.
    let caution = |caution: &Caution| match (*caution, text::caution(*caution)) {
        (Caution::GrinderAndKnife, (about, _)) => (about, text::GRIND_CAUTION),
        (_, whole) => whole,
    };
    let knife = step.knife.then_some((text::KNIFE, text::HAND_CAUTION));
    step.cautions.iter().map(caution).chain(knife).collect()
}

/// The step a device remembers: none of its text is a step of nothing.
pub fn remembered(text: Option<&str>) -> usize {
    text.and_then(|text| text.parse().ok()).filter(|at| *at < STEPS.len()).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::animal::{Animal, Species};
    use hindsaddle_model::order::{Task, working_order};
    use hindsaddle_model::plan::Plan;

    use super::*;
    use crate::plate::figure::plate;

    /// At the table the walk goes through the reasons of the working order one by one, and leaves none out.
    #[test]
    fn the_walk_has_the_order_of_the_table() {
        let order: Vec<Why> = STEPS.iter().flat_map(|step| step.order.iter().copied()).collect();
        assert_eq!(order, Why::ALL);
        let worked = working_order(&Plan::new(Animal::example()));
        let step_of = |why: Why| STEPS.iter().position(|step| step.order.contains(&why)).unwrap();
        let steps: Vec<usize> = worked.iter().map(|step| step_of(step.why)).collect();
        assert!(steps.is_sorted(), "{steps:?}");
        // What lies bare is taken in the step that says so.
        for step in worked.iter().filter(|step| step.why == Why::DriesFirst) {
            let Task::Muscle(muscle) = step.task else { panic!("the tub dries") };
            assert!(STEPS[step_of(step.why)].muscles.contains(&muscle), "{muscle:?}");
        }
    }

    #[test]
    fn what_is_marked_is_seen_and_every_step_warns_of_what_the_kitchen_warns_of() {
        assert_eq!(STEPS.len(), text::WALK.len());
        for step in &STEPS {
            let plate = plate(step.view, Species::WhiteTailed);
            for muscle in step.muscles {
                assert!(plate.shows(*muscle), "{muscle:?}");
            }
            let said = cautions(step);
            assert!(!said.is_empty());
            for (about, _) in said.iter().filter(|(about, _)| *about != text::KNIFE) {
                assert!(Caution::ALL.into_iter().any(|other| text::caution(other).0 == *about), "{about}");
            }
        }
        let all: Vec<&str> = STEPS.iter().flat_map(cautions).map(|(_, says)| says).collect();
        for caution in [
            Caution::Testing,
            Caution::PartsLeftOut,
            Caution::OneAnimal,
            Caution::Tag,
            Caution::BulletPath,
            Caution::Gut,
            Caution::Cold,
            Caution::Cooking,
            Caution::Freezing,
        ] {
            assert!(all.contains(&text::caution(caution).1), "{caution:?}");
        }
        assert!(all.contains(&text::HAND_CAUTION) && all.contains(&text::GRIND_CAUTION));
    }

    #[test]
    fn nonsense_begins_at_the_first_step() {
        assert_eq!(
            [None, Some(""), Some("x"), Some("10"), Some("-1"), Some("3")].map(remembered),
            [0, 0, 0, 0, 0, 3]
        );
    }
}
