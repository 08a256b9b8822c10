//! A lesson that a teacher is putting together; not every one of them can be asked yet.

use hindsaddle_model::anatomy::{Muscle, Region, View};
use hindsaddle_model::lesson::{Game, Lesson, LessonError};
use hindsaddle_model::tables;

/// What is ticked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// The side; None for wherever a muscle shows.
    pub view: Option<View>,
    /// The games, in the order of [`Game::ALL`].
    pub games: [bool; 3],
    /// The muscles, in the order of [`Muscle::ALL`].
    pub muscles: [bool; Muscle::COUNT],
    /// Which shuffle.
    pub order: u8,
}

impl Draft {
    /// To begin with: where are the muscles of the hind leg, and what do they want to be?
    pub fn beginning() -> Self {
        Self {
            view: None,
            games: [true, true, false],
            muscles: Muscle::ALL.map(|muscle| tables::muscle(muscle).region == Region::HindLeg),
            order: 0,
        }
    }

    /// The lesson it makes.
    ///
    /// # Errors
    /// See [`LessonError`].
    pub fn lesson(&self) -> Result<Lesson, LessonError> {
        let games: Vec<Game> = Game::ALL.into_iter().filter(|game| self.games[game.index()]).collect();
        let muscles: Vec<Muscle> =
            Muscle::ALL.into_iter().filter(|muscle| self.muscles[muscle.index()]).collect();
        Lesson::new(self.view, &games, &muscles, self.order)
    }

    /// Whether a muscle can be ticked: it is seen from the side that was chosen.
    pub fn can_tick(&self, muscle: Muscle) -> bool {
        self.view.is_none_or(|view| tables::muscle(muscle).views.contains(&view))
    }

    /// With a muscle ticked or not.
    #[must_use]
    pub fn ticked(mut self, muscle: Muscle, on: bool) -> Self {
        self.muscles[muscle.index()] = on && self.can_tick(muscle);
        self
    }

    /// With every muscle of a region ticked or not.
    #[must_use]
    pub fn region(self, region: Region, on: bool) -> Self {
        region.muscles().fold(self, |draft, muscle| draft.ticked(muscle, on))
    }

    /// Seen from another side; what is not seen from there is unticked.
    #[must_use]
    pub fn seen_from(mut self, view: Option<View>) -> Self {
        self.view = view;
        for muscle in Muscle::ALL {
            self.muscles[muscle.index()] &= self.can_tick(muscle);
        }
        self
    }

    /// With another order: the next, or the one before.
    #[must_use]
    pub fn stepped(mut self, by: i32) -> Self {
        self.order = if by < 0 { self.order.wrapping_sub(1) } else { self.order.wrapping_add(1) };
        self
    }
}

/// The sides on which the muscles of a lesson are asked, each with those muscles.
pub fn sides(lesson: &Lesson) -> Vec<(View, Vec<Muscle>)> {
    View::ALL
        .into_iter()
        .map(|view| (view, lesson.muscles().filter(|muscle| lesson.side_of(*muscle) == view).collect()))
        .filter(|(_, muscles): &(View, Vec<Muscle>)| !muscles.is_empty())
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_draft_begins_as_a_lesson_and_follows_the_side() {
        let draft = Draft::beginning();
        let lesson = draft.lesson().unwrap();
        assert_eq!(lesson.questions().len(), 16);
        assert_eq!(sides(&lesson).iter().map(|(_, muscles)| muscles.len()).sum::<usize>(), 8);
        let above = draft.clone().seen_from(Some(View::Above)).region(Region::Back, true);
        let muscles: Vec<Muscle> = above.lesson().unwrap().muscles().collect();
        assert_eq!(muscles, [Muscle::EyeRound, Muscle::Sirloin, Muscle::Backstrap]);
        let nothing = Region::ALL.into_iter().fold(above, |draft, region| draft.region(region, false));
        assert_eq!(nothing.lesson(), Err(LessonError::NoMuscle));
        assert_eq!(draft.clone().stepped(-1).stepped(1), draft);
    }
}
