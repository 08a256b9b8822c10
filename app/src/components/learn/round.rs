//! One question after another, each explained as soon as it is answered.

use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::lesson::{Game, Question};
use hindsaddle_model::product::Product;
use yew::prelude::*;

use super::PartProps;
use super::learn_plate::LearnPlate;
use super::picture::{Marking, picture};
use super::practice::sign;
use crate::components::controls::{Choosable, choice};
use crate::components::opened::Opened;
use crate::plate::figure::plate;
use crate::plate::{Area, whole};
use crate::text;
use crate::views::lesson_plate::{Called, areas_of, close_to, stroke};
use crate::views::practice::{Answer, Outcome, Round, explained, places, right_stroke, strokes};

/// A round, and whom to tell.
pub(super) struct RoundView {
    /// See there.
    pub part: PartProps,
    /// The round.
    pub round: Round,
    /// Whether a teacher chose its questions.
    pub is_lesson: bool,
    /// Told the round after what was done; None to leave it.
    pub on_round: Callback<Option<Round>>,
    /// Asked for another round.
    pub on_again: Callback<()>,
}

const HEADING: &str = "question";
const VERDICT: &str = "verdict";

/// The round.
pub(super) fn round_view(props: &RoundView) -> Html {
    let round = &props.round;
    let (Some(question), Some(at)) = (round.question(), round.at()) else { return end(props) };
    let on_answer = {
        let (round, on_round) = (round.clone(), props.on_round.clone());
        Callback::from(move |answer: Answer| on_round.emit(Some(round.answered(answer))))
    };
    let on_next = {
        let (round, on_round) = (round.clone(), props.on_round.clone());
        Callback::from(move |_: MouseEvent| on_round.emit(Some(round.read())))
    };
    let given = round.given();
    html! {
        <section key="question" class="card question" aria-label={text::PRACTICE}>
            // What was pressed is not to be pressed any more, so the keyboard goes on to what is said.
            <Opened focus={if given.is_some() { VERDICT } else { HEADING }} />
            <div class="question-head">
                <p class="hint">{ text::question_of(at + 1, round.len()) }</p>
                <button type="button" class="tool" onclick={props.on_round.reform(|_: MouseEvent| None)}>{ text::LEAVE_ROUND }</button>
            </div>
            <h2 id={HEADING} tabindex="-1">{ text::asked(question.game, question.muscle) }</h2>
            { match question.game {
                Game::Find => find(props, question, given, &on_answer),
                Game::Cut => cut(props, question, given, &on_answer),
                Game::Knife => knife(props, question, given, &on_answer),
            } }
            <div class="explained">
                if let Some((answer, outcome)) = given {
                    <p id={VERDICT} tabindex="-1" class={classes!("verdict", class_of(outcome))}><b aria-hidden="true">{ sign(outcome) }{ " " }</b>{ explained(question, answer) }</p>
                    <button type="button" class="tool main-action wide next" onclick={on_next}>{ if round.is_last() { text::SEE_RESULT } else { text::NEXT_QUESTION } }</button>
                }
            </div>
        </section>
    }
}

const fn class_of(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Right => "is-right",
        Outcome::WorksToo => "is-good",
        Outcome::Wrong => "is-other",
    }
}

type Given = Option<(Answer, Outcome)>;

fn find(props: &RoundView, question: Question, given: Given, on_answer: &Callback<Answer>) -> Html {
    let plan = &props.part.state.plan;
    let species = plan.animal().species();
    let view = props.round.side(question);
    let lit: Vec<Muscle> = given.map(|_| question.muscle).into_iter().collect();
    let places = places(view, species);
    let options: Vec<Choosable> = std::iter::once(Choosable::new(text::WHERE_IS_IT))
        .chain(places.iter().map(|muscle| Choosable::new(text::place_name(*muscle))))
        .collect();
    let on_muscle = on_answer.reform(Answer::Muscle);
    let on_choose = {
        let (places, on_muscle) = (places, on_muscle.clone());
        Callback::from(move |place: usize| {
            if let Some(muscle) = place.checked_sub(1).and_then(|place| places.get(place)) {
                on_muscle.emit(*muscle);
            }
        })
    };
    // What was looked for may lie elsewhere: the whole animal is shown again.
    let wrong = given.is_some_and(|(_, outcome)| outcome == Outcome::Wrong);
    let called = if given.is_some() { Called::Names } else { Called::Places };
    html! {
        <>
            <LearnPlate key={format!("{} {}", props.round.at().unwrap_or(0), wrong)} plan={plan.clone()} {view} width={props.part.width} {called} {lit}
                marking={Marking::default()} summary={text::plate_of(text::species(species), None)} {on_muscle} />
            if given.is_none() { <key={props.round.at().unwrap_or(0)}>{ choice(text::BY_WORDS, options, Some(0), &on_choose) }</> }
        </>
    }
}

fn cut(props: &RoundView, question: Question, given: Given, on_answer: &Callback<Answer>) -> Html {
    let plate = plate(props.round.side(question), props.part.state.plan.animal().species());
    let picture = picture(
        &plate,
        None,
        &[question.muscle],
        Marking::default(),
        Html::default(),
        text::muscle(question.muscle).to_owned(),
    );
    html! {
        <>
            { picture }
            <div class="answers" role="group" aria-label={text::asked(question.game, question.muscle)}>
                { for Product::ALL.into_iter().map(|product| {
                    let chosen = given.is_some_and(|(answer, _)| answer == Answer::Product(product));
                    html! {
                        <button key={product.id()} type="button" class={classes!("tool", "answer-button", chosen.then_some("chosen"))} disabled={given.is_some()}
                            onclick={on_answer.reform(move |_: MouseEvent| Answer::Product(product))}>
                            <span class={classes!("swatch", format!("is-{}", product.id()))} aria-hidden="true">{ text::product_mark(product) }</span>{ text::product(product) }
                        </button>
                    }
                }) }
            </div>
        </>
    }
}

fn knife(props: &RoundView, question: Question, given: Given, on_answer: &Callback<Answer>) -> Html {
    let view: View = props.round.side(question);
    let plate = plate(view, props.part.state.plan.animal().species());
    let Some(area) = areas_of(&plate, question.muscle).next().cloned() else { return Html::default() };
    let marking = Marking { numbered: false, flows: true };
    let over = drawn(&area, question, given);
    let says = text::stroke_picture(question.muscle);
    html! {
        <>
            { picture(&plate, close_to(&plate, question.muscle), &[question.muscle], marking, over, says) }
            <div class="answers three" role="group" aria-label={text::STROKES}>
                { for strokes(question).into_iter().enumerate().map(|(place, turn)| {
                    let letter = text::STROKE_LETTERS[place];
                    let name = text::stroke(letter, text::stroke_lies(stroke(&area, turn).run()));
                    let chosen = given.is_some_and(|(answer, _)| answer == Answer::Stroke(place));
                    html! {
                        <button key={letter} type="button" class={classes!("tool", "answer-button", chosen.then_some("chosen"))} disabled={given.is_some()}
                            onclick={on_answer.reform(move |_: MouseEvent| Answer::Stroke(place))}>{ name }</button>
                    }
                }) }
            </div>
        </>
    }
}

/// The strokes; once there is an answer, the right one stands out.
fn drawn(area: &Area, question: Question, given: Given) -> Html {
    let right = right_stroke(question);
    html! {
        <g class="strokes" aria-hidden="true">
            { for strokes(question).into_iter().enumerate().map(|(place, turn)| {
                let line = stroke(area, turn);
                let path = format!("M{} {}L{} {}", whole(line.from.0), whole(line.from.1), whole(line.to.0), whole(line.to.1));
                let class = given.map(|_| if place == right { "right-stroke" } else { "faded" });
                html! {
                    <g key={place} class={classes!(class)}>
                        <path class="stroke-halo" d={path.clone()} />
                        <path class="stroke-line" d={path} />
                        <text class="order-letter" x={whole(line.letter.0)} y={whole(line.letter.1 + 14.0)} font-size="40" text-anchor="middle">{ text::STROKE_LETTERS[place] }</text>
                    </g>
                }
            }) }
        </g>
    }
}

/// All are answered.
fn end(props: &RoundView) -> Html {
    let round = &props.round;
    let missed = round.missed();
    let again = props.on_again.reform(|_: MouseEvent| ());
    html! {
        <section key="end" class="card question" aria-label={text::PRACTICE}>
            <Opened focus={HEADING} />
            <h2 id={HEADING} tabindex="-1">{ text::result(round.count(Outcome::Right), round.count(Outcome::WorksToo), round.len()) }</h2>
            if missed.is_empty() {
                <p class="becomes">{ text::ALL_KNOWN }</p>
            } else {
                <h3>{ text::LOOK_AGAIN }</h3>
                <ul class="plain-list">{ for missed.into_iter().map(|muscle| html! { <li key={muscle.id()}><b>{ text::muscle(muscle) }</b>{ ": " }{ text::teach(muscle) }</li> }) }</ul>
            }
            <button type="button" class="tool main-action wide" onclick={again}>{ if props.is_lesson { text::LESSON_AGAIN } else { text::ANOTHER_ROUND } }</button>
            <button type="button" class="tool wide" onclick={props.on_round.reform(|_: MouseEvent| None)}>{ text::LEAVE_ROUND }</button>
        </section>
    }
}
