//! A lesson: which muscles are asked about, by which games, from which side, in which order. A teacher makes one and
//! gives it to a class, which sees the same questions in the same order on every device.

use crate::anatomy::{Muscle, View};
use crate::tables;

/// A way of asking about a muscle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Game {
    /// Its name is said; where is it?
    Find,
    /// It is marked; what does it want to be?
    Cut,
    /// Its fibres are shown; which stroke of the knife crosses them?
    Knife,
}

impl Game {
    /// Every game.
    pub const ALL: [Game; 3] = [Game::Find, Game::Cut, Game::Knife];

    /// Its place in [`Game::ALL`].
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Whether the game can be played with a muscle. Scraps, and sheets whose fibres cross each other, have no one
    /// grain to cut across.
    pub fn asks(self, muscle: Muscle) -> bool {
        match self {
            Game::Find | Game::Cut => true,
            Game::Knife => tables::muscle(muscle).size.is_some() && !CROSSED.contains(&muscle),
        }
    }
}

/// Muscles in layers whose fibres cross: the catalogue gives them two or three directions.
const CROSSED: [Muscle; 2] = [Muscle::RibMeat, Muscle::FlankSheets];

/// Why a choice is no lesson.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LessonError {
    /// No muscle.
    NoMuscle,
    /// No game.
    NoGame,
    /// The only game chosen can be played with none of the muscles.
    NothingToAsk,
    /// A muscle that is not seen from the side that was chosen.
    NotSeen(Muscle),
}

/// A question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Question {
    /// How it is asked.
    pub game: Game,
    /// About what.
    pub muscle: Muscle,
    /// A number of its own, the same on every device, for whoever has to put the answers in an order.
    pub chance: u32,
}

/// What a class is asked. Every value asks something.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lesson {
    view: Option<View>,
    games: [bool; 3],
    muscles: [bool; Muscle::COUNT],
    order: u8,
}

impl Lesson {
    /// A lesson of these muscles and games, seen from one side or, with None, from wherever a muscle shows. `order`
    /// shuffles the questions.
    ///
    /// # Errors
    /// See [`LessonError`].
    pub fn new(
        view: Option<View>,
        games: &[Game],
        muscles: &[Muscle],
        order: u8,
    ) -> Result<Self, LessonError> {
        if muscles.is_empty() {
            return Err(LessonError::NoMuscle);
        }
        if games.is_empty() {
            return Err(LessonError::NoGame);
        }
        let hidden =
            |muscle: &&Muscle| view.is_some_and(|view| !tables::muscle(**muscle).views.contains(&view));
        if let Some(muscle) = muscles.iter().find(hidden) {
            return Err(LessonError::NotSeen(*muscle));
        }
        if !games.iter().any(|game| muscles.iter().any(|muscle| game.asks(*muscle))) {
            return Err(LessonError::NothingToAsk);
        }
        Ok(Self {
            view,
            games: Game::ALL.map(|game| games.contains(&game)),
            muscles: Muscle::ALL.map(|muscle| muscles.contains(&muscle)),
            order,
        })
    }

    /// The side it is asked from; None for wherever a muscle shows.
    pub fn view(&self) -> Option<View> {
        self.view
    }

    /// The games, in the order of [`Game::ALL`].
    pub fn games(&self) -> impl Iterator<Item = Game> {
        Game::ALL.into_iter().filter(|game| self.games[game.index()])
    }

    /// The muscles, in the order of [`Muscle::ALL`].
    pub fn muscles(&self) -> impl Iterator<Item = Muscle> {
        Muscle::ALL.into_iter().filter(|muscle| self.muscles[muscle.index()])
    }

    /// Which shuffle.
    pub fn order(&self) -> u8 {
        self.order
    }

    /// Every question once: all of one game, then of the next, so that a class finds a muscle before it is asked what
    /// becomes of it; inside a game shuffled.
    pub fn questions(&self) -> Vec<Question> {
        let mut questions = Vec::new();
        for game in self.games() {
            let mut chance = Chance::new(self.order, game);
            let mut asked: Vec<Question> = self
                .muscles()
                .filter(|muscle| game.asks(*muscle))
                .map(|muscle| Question { game, muscle, chance: 0 })
                .collect();
            for last in (1..asked.len()).rev() {
                asked.swap(last, chance.next() as usize % (last + 1));
            }
            for question in &mut asked {
                question.chance = chance.next();
            }
            questions.extend(asked);
        }
        questions
    }

    /// The side on which a muscle of the lesson is shown: the lesson's own, else the outer one where it lies open there.
    pub fn side_of(&self, muscle: Muscle) -> View {
        self.view.unwrap_or_else(|| shown_from(muscle))
    }
}

/// The side from which a muscle is best seen.
pub fn shown_from(muscle: Muscle) -> View {
    let views = tables::muscle(muscle).views;
    [View::Outer, View::Inner, View::Above]
        .into_iter()
        .find(|view| views.contains(view))
        .unwrap_or(View::Outer)
}

/// Numbers without a pattern that a person would notice, the same everywhere: a linear congruential generator with the
/// constants of Numerical Recipes, of which the high half is used.
struct Chance(u32);

impl Chance {
    fn new(order: u8, game: Game) -> Self {
        let mut chance = Chance(u32::from(order) * 3 + game.index() as u32 + 1);
        // Neighbouring seeds begin alike.
        for _ in 0..4 {
            chance.next();
        }
        chance
    }

    fn next(&mut self) -> u32 {
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        self.0 >> 16
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_muscle_is_asked_once_by_every_game_that_can_and_orders_differ() {
        let lesson = |order| Lesson::new(None, &Game::ALL, &Muscle::ALL, order).unwrap();
        let mut orders = Vec::new();
        for order in 0..=u8::MAX {
            let questions = lesson(order).questions();
            for game in Game::ALL {
                for muscle in Muscle::ALL {
                    let asked = questions.iter().filter(|q| (q.game, q.muscle) == (game, muscle)).count();
                    assert_eq!(asked, usize::from(game.asks(muscle)), "{game:?} {muscle:?}");
                }
            }
            orders.push(questions);
        }
        for (place, one) in orders.iter().enumerate() {
            assert!(orders[..place].iter().all(|other| other != one), "{place}");
        }
        assert_eq!(lesson(7).questions(), lesson(7).questions());
    }

    #[test]
    fn what_cannot_be_asked_is_no_lesson() {
        let new = |view, games: &[Game], muscles: &[Muscle]| Lesson::new(view, games, muscles, 0).err();
        assert_eq!(new(None, &Game::ALL, &[]), Some(LessonError::NoMuscle));
        assert_eq!(new(None, &[], &[Muscle::Neck]), Some(LessonError::NoGame));
        assert_eq!(new(None, &[Game::Knife], &[Muscle::RibMeat]), Some(LessonError::NothingToAsk));
        let hidden = new(Some(View::Outer), &Game::ALL, &[Muscle::Neck, Muscle::Tenderloin]);
        assert_eq!(hidden, Some(LessonError::NotSeen(Muscle::Tenderloin)));
    }
}
