//! Practice: the questions of a lesson with their answers, what is said to each, and the score.

use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::animal::Species;
use hindsaddle_model::lesson::{Game, Lesson, Question};
use hindsaddle_model::product::Product;
use hindsaddle_model::rules::{Verdict, verdict};
use hindsaddle_model::tables;

use super::lesson_plate::Turn;
use crate::plate::figure::plate;
use crate::text;

/// How many questions a round has that nobody chose.
const ROUND: usize = 10;

/// An answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answer {
    /// It is this muscle.
    Muscle(Muscle),
    /// It wants to be this.
    Product(Product),
    /// It is the stroke at this place.
    Stroke(usize),
}

/// How an answer was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Right.
    Right,
    /// Not the usual use, but a good one.
    WorksToo,
    /// Not right.
    Wrong,
}

/// The three strokes of a question, in the order of their letters.
pub fn strokes(question: Question) -> [Turn; 3] {
    let slant = if question.chance.is_multiple_of(2) { Turn::Aslant } else { Turn::AslantBack };
    let (a, b, c) = (Turn::Across, Turn::Along, slant);
    match question.chance / 2 % 6 {
        0 => [a, b, c],
        1 => [a, c, b],
        2 => [b, a, c],
        3 => [b, c, a],
        4 => [c, a, b],
        _ => [c, b, a],
    }
}

/// The place of the stroke that crosses the fibres.
pub fn right_stroke(question: Question) -> usize {
    strokes(question).iter().position(|turn| *turn == Turn::Across).unwrap_or(0)
}

/// How an answer to a question is. None if it answers another game.
pub fn outcome(question: Question, answer: Answer) -> Option<Outcome> {
    let right = |is_right: bool| if is_right { Outcome::Right } else { Outcome::Wrong };
    match (question.game, answer) {
        (Game::Find, Answer::Muscle(muscle)) => Some(right(muscle == question.muscle)),
        (Game::Cut, Answer::Product(product)) => Some(match verdict(question.muscle, product) {
            Verdict::Allowed(_) if product == tables::muscle(question.muscle).usual => Outcome::Right,
            Verdict::Allowed(_) => Outcome::WorksToo,
            Verdict::Discouraged(_) | Verdict::Impossible(_) => Outcome::Wrong,
        }),
        (Game::Knife, Answer::Stroke(place)) => {
            strokes(question).get(place).map(|turn| right(*turn == Turn::Across))
        }
        (Game::Find | Game::Cut | Game::Knife, _) => None,
    }
}

/// What is said to an answer.
pub fn explained(question: Question, answer: Answer) -> String {
    let muscle = question.muscle;
    match answer {
        Answer::Muscle(tapped) if tapped == muscle => text::found(muscle),
        Answer::Muscle(tapped) => text::found_other(tapped, muscle),
        Answer::Product(product) => match verdict(muscle, product) {
            Verdict::Allowed(_) if product == tables::muscle(muscle).usual => text::usual_cut(muscle),
            Verdict::Allowed(mind) => text::works_too(product, muscle, mind.map(text::reason)),
            Verdict::Discouraged(reason) | Verdict::Impossible(reason) => {
                text::poor_cut(product, muscle, text::reason(reason))
            }
        },
        Answer::Stroke(place) => {
            let right = right_stroke(question);
            if place == right {
                return text::right_stroke(muscle);
            }
            let along = strokes(question).get(place) == Some(&Turn::Along);
            text::wrong_stroke(along, text::STROKE_LETTERS[right], muscle)
        }
    }
}

/// Questions that are being answered.
#[derive(Clone, Debug, PartialEq)]
pub struct Round {
    lesson: Lesson,
    questions: Vec<Question>,
    answers: Vec<(Answer, Outcome)>,
    /// Whether the latest answer is still being read.
    reading: bool,
}

impl Round {
    /// Every question of a lesson.
    pub fn of(lesson: &Lesson) -> Self {
        let questions = lesson.questions();
        Self { lesson: lesson.clone(), questions, answers: Vec::new(), reading: false }
    }

    /// Ten questions of one game, about all muscles.
    pub fn short(game: Game, order: u8) -> Option<Self> {
        let lesson = Lesson::new(None, &[game], &Muscle::ALL, order).ok()?;
        let mut round = Self::of(&lesson);
        round.questions.truncate(ROUND);
        Some(round)
    }

    /// How many questions.
    pub fn len(&self) -> usize {
        self.questions.len()
    }

    /// Whether there is none, which no lesson allows.
    pub fn is_empty(&self) -> bool {
        self.questions.is_empty()
    }

    /// The place of the question that is shown; None when all are answered and read.
    pub fn at(&self) -> Option<usize> {
        let at = self.answers.len() - usize::from(self.reading);
        (at < self.questions.len()).then_some(at)
    }

    /// The question that is shown.
    pub fn question(&self) -> Option<Question> {
        self.at().map(|at| self.questions[at])
    }

    /// The answer that was given to it.
    pub fn given(&self) -> Option<(Answer, Outcome)> {
        self.answers.last().copied().filter(|_| self.reading)
    }

    /// Whether the question that is shown is the last one.
    pub fn is_last(&self) -> bool {
        self.at().is_some_and(|at| at + 1 == self.questions.len())
    }

    /// The round with an answer. It stays the same if there is one already, or if it answers another game.
    #[must_use]
    pub fn answered(&self, answer: Answer) -> Self {
        let mut round = self.clone();
        if let Some(question) = self.question()
            && !self.reading
            && let Some(outcome) = outcome(question, answer)
        {
            round.answers.push((answer, outcome));
            round.reading = true;
        }
        round
    }

    /// The round at its next question.
    #[must_use]
    pub fn read(&self) -> Self {
        Self { reading: false, ..self.clone() }
    }

    /// How many answers were like this.
    pub fn count(&self, outcome: Outcome) -> usize {
        self.answers.iter().filter(|(_, other)| *other == outcome).count()
    }

    /// Muscles whose answer was wrong, each once.
    pub fn missed(&self) -> Vec<Muscle> {
        let mut missed = Vec::new();
        for (question, (_, outcome)) in self.questions.iter().zip(&self.answers) {
            if *outcome == Outcome::Wrong && !missed.contains(&question.muscle) {
                missed.push(question.muscle);
            }
        }
        missed
    }

    /// The side of the animal that the question is asked on.
    pub fn side(&self, question: Question) -> View {
        self.lesson.side_of(question.muscle)
    }
}

/// The places to choose from in words: every muscle that the view shows, each once, in the order of the animal.
pub fn places(view: View, species: Species) -> Vec<Muscle> {
    let plate = plate(view, species);
    Muscle::ALL.into_iter().filter(|muscle| plate.shows(*muscle)).collect()
}

/// What was answered on this device, by game, and which round comes next.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Score {
    /// For each game: asked, right, would work, too.
    pub games: [[u32; 3]; 3],
    /// The order of the next round.
    pub order: u8,
}

impl Score {
    /// The score in a text; what is not understood counts as nothing.
    pub fn read(text: &str) -> Self {
        let mut score = Score::default();
        let mut lines = text.lines();
        score.order = lines.next().and_then(|line| line.parse().ok()).unwrap_or(0);
        for (game, line) in score.games.iter_mut().zip(lines) {
            let numbers: Vec<u32> = line.split(' ').filter_map(|number| number.parse().ok()).collect();
            if let [asked, right, too] = numbers[..]
                && right.checked_add(too).is_some_and(|both| both <= asked)
            {
                *game = [asked, right, too];
            }
        }
        score
    }

    /// The text of it.
    pub fn write(&self) -> String {
        let line = |game: &[u32; 3]| format!("{} {} {}", game[0], game[1], game[2]);
        let games: Vec<String> = self.games.iter().map(line).collect();
        format!("{}\n{}", self.order, games.join("\n"))
    }

    /// With one answer more.
    #[must_use]
    pub fn with(mut self, game: Game, outcome: Outcome) -> Self {
        let [asked, right, too] = &mut self.games[game.index()];
        *asked = asked.saturating_add(1);
        match outcome {
            Outcome::Right => *right = right.saturating_add(1),
            Outcome::WorksToo => *too = too.saturating_add(1),
            Outcome::Wrong => {}
        }
        self
    }

    /// Whether nothing was answered.
    pub fn is_empty(&self) -> bool {
        self.games.iter().all(|game| game[0] == 0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn everything(order: u8) -> Round {
        Round::of(&Lesson::new(None, &Game::ALL, &Muscle::ALL, order).unwrap())
    }

    /// Every muscle as every product: right is what the catalogue usually makes of it, good is what it allows, and
    /// nothing else.
    #[test]
    fn which_cut_is_right_is_what_the_catalogue_says() {
        for muscle in Muscle::ALL {
            let question = Question { game: Game::Cut, muscle, chance: 0 };
            let outcomes = Product::ALL.map(|product| outcome(question, Answer::Product(product)).unwrap());
            assert_eq!(outcomes.iter().filter(|one| **one == Outcome::Right).count(), 1, "{muscle:?}");
            for (product, outcome) in Product::ALL.into_iter().zip(outcomes) {
                let allowed = matches!(verdict(muscle, product), Verdict::Allowed(_));
                assert_eq!(outcome != Outcome::Wrong, allowed, "{muscle:?} {product:?}");
                assert_eq!(outcome == Outcome::Right, product == tables::muscle(muscle).usual);
                let said = explained(question, Answer::Product(product));
                assert_eq!(said.starts_with("Yes"), outcome == Outcome::Right, "{said}");
                assert_eq!(said.starts_with("Not "), outcome == Outcome::Wrong, "{said}");
            }
        }
    }

    #[test]
    fn one_of_three_strokes_is_right_and_its_letter_is_no_habit() {
        let mut letters = [0_u32; 3];
        for order in 0..20 {
            let questions = everything(order).questions;
            for question in questions.into_iter().filter(|question| question.game == Game::Knife) {
                let outcomes = [0, 1, 2].map(|place| outcome(question, Answer::Stroke(place)).unwrap());
                assert_eq!(outcomes.iter().filter(|one| **one == Outcome::Right).count(), 1);
                assert_eq!(outcomes[right_stroke(question)], Outcome::Right);
                letters[right_stroke(question)] += 1;
                assert_eq!(outcome(question, Answer::Stroke(3)), None);
                assert_eq!(outcome(question, Answer::Muscle(question.muscle)), None);
            }
        }
        let all: u32 = letters.iter().sum();
        for count in letters {
            assert!(count * 4 > all && count * 5 < all * 2, "{letters:?}");
        }
    }

    #[test]
    fn a_round_asks_explains_goes_on_and_ends() {
        let mut round = Round::short(Game::Find, 3).unwrap();
        assert_eq!((round.len(), round.is_empty()), (10, false));
        for at in 0..10 {
            assert_eq!(round.at(), Some(at));
            let question = round.question().unwrap();
            assert!(places(round.side(question), Species::WhiteTailed).contains(&question.muscle));
            assert_eq!(round.answered(Answer::Stroke(0)), round, "an answer to another game is none");
            let wrong = Muscle::ALL.into_iter().find(|muscle| *muscle != question.muscle).unwrap();
            let first = if at == 4 { wrong } else { question.muscle };
            round = round.answered(Answer::Muscle(first));
            assert_eq!(round.answered(Answer::Muscle(question.muscle)), round, "the first answer counts");
            assert_eq!(round.at(), Some(at), "it is still shown");
            round = round.read();
        }
        assert_eq!((round.at(), round.question(), round.given()), (None, None, None));
        assert_eq!((round.count(Outcome::Right), round.missed().len()), (9, 1));
    }

    #[test]
    fn a_score_comes_back_and_nonsense_is_nothing() {
        let mut score = Score { order: 7, ..Score::default() };
        assert!(score.is_empty());
        for outcome in [Outcome::Right, Outcome::WorksToo, Outcome::Wrong] {
            score = score.with(Game::Cut, outcome);
        }
        assert_eq!(score.games, [[0; 3], [3, 1, 1], [0; 3]]);
        assert_eq!(Score::read(&score.write()), score);
        for text in ["", "x", "7\n1 2 3\n1 1", "300\n-1 0 0", "\n\n4294967295 4294967295 4294967295"] {
            assert!(Score::read(text).is_empty(), "{text}");
        }
    }
}
