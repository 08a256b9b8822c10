//! The working order at the table: what dries first, choice cuts while hands are fresh, trim to the tub,
//! grind last and cold. Common practice, no source; where it had to be made exact it is judgement.

use crate::anatomy::{Muscle, Side};
use crate::plan::Plan;
use crate::product::{Cut, Product};
use crate::short;
use crate::tables;

/// Why a muscle is worked on when it is. The order of the kinds is the order of the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// It lies bare in the body cavity and dries first.
    DriesFirst,
    /// A choice cut, sliced thin and square: while the hands are fresh.
    ChoiceWhileFresh,
    /// Other slices, while the knife is sharp.
    SlicesNext,
    /// Whole pieces: few strokes of the knife.
    RoastsNext,
    /// Cubes need no straight edge.
    CubesNext,
    /// All of it is trim: to the tub, and the tub to the cold.
    TrimToTheTub,
    /// Ground last, when the tub is full and near freezing.
    GrindLast,
}

impl Why {
    /// Every reason, in working order.
    pub const ALL: [Why; 7] = [
        Why::DriesFirst,
        Why::ChoiceWhileFresh,
        Why::SlicesNext,
        Why::RoastsNext,
        Why::CubesNext,
        Why::TrimToTheTub,
        Why::GrindLast,
    ];
}

/// What is on the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Task {
    /// One muscle, both sides.
    Muscle(Muscle),
    /// The tub, through the grinder.
    Tub,
}

/// One step of the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// What is on the table.
    pub task: Task,
    /// Why now.
    pub why: Why,
}

/// Muscles that lie bare in the body cavity, with neither hide nor fat over them. Judgement.
const BARE: [Muscle; 2] = [Muscle::Tenderloin, Muscle::Skirt];

/// Every step, in order: each muscle that is taken, once, and the tub at the end. A muscle that is all thrown
/// away has no step.
pub fn working_order(plan: &Plan) -> Vec<Step> {
    let taken = Muscle::ALL.into_iter().filter(|muscle| plan.is_recovered(*muscle));
    let cuts = |muscle| Side::ALL.into_iter().flat_map(move |side| plan.division(muscle, side).spans());
    let muscles =
        taken.filter_map(|muscle| Some((why(muscle, cuts(muscle).map(|(_, _, cut)| cut))?, muscle)));
    let mut steps: Vec<Step> =
        in_order(muscles).into_iter().map(|(why, muscle)| Step { task: Task::Muscle(muscle), why }).collect();
    // Squaring-up and ends fall into the tub from any cut, so there is a tub as soon as there is a muscle.
    if !steps.is_empty() {
        steps.push(Step { task: Task::Tub, why: Why::GrindLast });
    }
    steps
}

/// Muscles in working order: by why, then by rank, then as they come.
pub(crate) fn in_order(muscles: impl Iterator<Item = (Why, Muscle)>) -> Vec<(Why, Muscle)> {
    let key = |(why, muscle): (Why, Muscle)| (why, rank(muscle, why));
    let mut ordered: Vec<(Why, Muscle)> = Vec::with_capacity(Muscle::COUNT);
    for entry in muscles {
        short::put(&mut ordered, entry, |other| key(*other) > key(entry));
    }
    ordered
}

/// When a muscle with these cuts is worked on: as early as the most pressing of them. None for one that is
/// all thrown away.
pub fn why(muscle: Muscle, cuts: impl IntoIterator<Item = Cut>) -> Option<Why> {
    let first =
        cuts.into_iter().filter_map(Cut::product).map(|product| why_product(muscle, product)).min()?;
    Some(if first < Why::TrimToTheTub && BARE.contains(&muscle) { Why::DriesFirst } else { first })
}

fn why_product(muscle: Muscle, product: Product) -> Why {
    match product {
        Product::Steak | Product::Chop => {
            if tables::muscle(muscle).tenderness >= tables::TENDER {
                Why::ChoiceWhileFresh
            } else {
                Why::SlicesNext
            }
        }
        Product::Roast => Why::RoastsNext,
        Product::Stew => Why::CubesNext,
        Product::Grind => Why::TrimToTheTub,
    }
}

/// Inside one reason: tender before tough; trim from clean to sinewy, so that the slow cleaning comes last.
fn rank(muscle: Muscle, why: Why) -> u8 {
    let row = tables::muscle(muscle);
    match why {
        Why::TrimToTheTub | Why::GrindLast => row.silverskin,
        Why::DriesFirst | Why::ChoiceWhileFresh | Why::SlicesNext | Why::RoastsNext | Why::CubesNext => {
            u8::MAX - row.tenderness
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Length;

    #[test]
    fn a_muscle_comes_as_early_as_its_most_pressing_cut() {
        let chop = Cut::Chop(Length::mm(12.0));
        assert_eq!(why(Muscle::Backstrap, [Cut::Grind, chop]), Some(Why::ChoiceWhileFresh));
        assert_eq!(why(Muscle::Backstrap, [Cut::Grind, Cut::Discard]), Some(Why::TrimToTheTub));
        assert_eq!(why(Muscle::Backstrap, [Cut::Discard]), None);
        assert_eq!(why(Muscle::Tenderloin, [chop]), Some(Why::DriesFirst));
        assert_eq!(why(Muscle::Skirt, [Cut::Grind]), Some(Why::TrimToTheTub));
    }
}
