//! Practice: choose a game or open a lesson, answer, see how it went. The score stays on the device.

use hindsaddle_model::lesson::{Game, Lesson};
use hindsaddle_model::link::LinkError;
use yew::prelude::*;

use super::PartProps;
use super::class_lesson::ClassLesson;
use super::field_guide::field_guide;
use super::round::{RoundView, round_view};
use crate::app::remember;
use crate::components::controls::segments_of;
use crate::components::still::still;
use crate::platform::{picture, storage};
use crate::text;
use crate::views::draft::Draft;
use crate::views::practice::{Outcome, Round, Score};

/// Properties of [`Practice`].
#[derive(PartialEq, Properties)]
pub(super) struct PracticeProps {
    /// See there.
    pub part: PartProps,
    /// The lesson of the address, or why it is none.
    pub lesson: Option<Result<Lesson, LinkError>>,
    /// Told which lesson is open.
    pub on_lesson: Callback<Option<Lesson>>,
    /// What a teacher has ticked.
    pub draft: UseStateHandle<Draft>,
    /// Told of which lesson sheets are wanted.
    pub on_sheets: Callback<Lesson>,
}

fn remembered() -> Score {
    Score::read(&storage::read(storage::PRACTICE).unwrap_or_default())
}

/// The part.
#[component]
pub(super) fn Practice(props: &PracticeProps) -> Html {
    let game = use_state(|| Game::Find);
    let round = use_state(|| None::<Round>);
    let score = use_state(remembered);
    let keep = {
        let (score, send) = (score.clone(), props.part.send.clone());
        move |now: Score| {
            remember(storage::PRACTICE, &now.write(), &send);
            score.set(now);
        }
    };
    let lesson = props.lesson.as_ref().and_then(|lesson| lesson.as_ref().ok());
    // Another lesson in the address is begun anew.
    {
        let round = round.clone();
        use_effect_with(props.lesson.clone(), move |_| round.set(None));
    }
    let start = {
        let (round, score, keep, lesson, game) =
            (round.clone(), score.clone(), keep.clone(), lesson.cloned(), *game);
        Callback::from(move |()| {
            round.set(match &lesson {
                Some(lesson) => Some(Round::of(lesson)),
                None => Round::short(game, score.order),
            });
            if lesson.is_none() {
                keep(Score { order: score.order.wrapping_add(1), ..remembered() });
            }
        })
    };
    if let Some(now) = &*round {
        let on_round = {
            let (round, keep) = (round.clone(), keep);
            let before = now.given();
            Callback::from(move |next: Option<Round>| {
                if let Some(next) = &next
                    && before.is_none()
                    && let (Some((_, outcome)), Some(question)) = (next.given(), next.question())
                {
                    keep(remembered().with(question.game, outcome));
                }
                round.set(next);
            })
        };
        return round_view(&RoundView {
            part: props.part.clone(),
            round: now.clone(),
            is_lesson: lesson.is_some(),
            on_round,
            on_again: start,
        });
    }
    let for_a_class = ClassLesson {
        draft: props.draft.clone(),
        on_open: props.on_lesson.clone(),
        on_sheets: props.on_sheets.clone(),
    };
    html! {
        <>
            { opening(props, lesson, &game, &start) }
            { so_far(&score, &keep) }
            { still(text::FOR_A_CLASS, for_a_class) }
            if let Some(lesson) = lesson { { field_guide(lesson, props.part.state.plan.animal().species()) } }
        </>
    }
}

/// What is asked, and the button that begins.
fn opening(
    props: &PracticeProps,
    lesson: Option<&Lesson>,
    game: &UseStateHandle<Game>,
    start: &Callback<()>,
) -> Html {
    let on_start = start.reform(|_: MouseEvent| ());
    if let Some(lesson) = lesson {
        let games: Vec<&str> = lesson.games().map(text::game).collect();
        let line = text::lesson_line(
            lesson.questions().len(),
            lesson.muscles().count(),
            &games.join(", "),
            lesson.view(),
        );
        let sheets = {
            let lesson = lesson.clone();
            props.on_sheets.reform(move |_: MouseEvent| lesson.clone())
        };
        return html! {
            <section class="card" aria-label={text::LESSON}>
                <h2>{ text::LESSON }</h2>
                <p class="becomes">{ line }</p>
                <button type="button" class="tool main-action wide" onclick={on_start}>{ text::START }</button>
                <div class="row-tools">
                    <button type="button" class="tool" onclick={sheets}>{ text::LESSON_SHEETS }</button>
                    <button type="button" class="tool" onclick={|_: MouseEvent| picture::print()}>{ text::PRINT_GUIDE }</button>
                    <button type="button" class="tool" onclick={props.on_lesson.reform(|_: MouseEvent| None)}>{ text::CLOSE_LESSON }</button>
                </div>
            </section>
        };
    }
    let on_choose = {
        let game = game.clone();
        Callback::from(move |to: Game| game.set(to))
    };
    html! {
        <section class="card" aria-label={text::PRACTICE}>
            <h2>{ text::PRACTICE }</h2>
            if let Some(Err(error)) = &props.lesson {
                <p class="wrong" role="alert">{ text::lesson_error(*error) }{ " " }{ text::WITHOUT_LESSON }</p>
            }
            { segments_of(text::GAMES, &Game::ALL, text::game, **game, &on_choose) }
            <p class="becomes">{ text::game_hint(**game) }</p>
            <button type="button" class="tool main-action wide" onclick={on_start}>{ text::START }</button>
            <p class="hint">{ text::ROUND_HINT }</p>
        </section>
    }
}

/// The score of this device.
fn so_far(score: &Score, keep: &(impl Fn(Score) + Clone + 'static)) -> Html {
    let forget = {
        let (keep, order) = (keep.clone(), score.order);
        Callback::from(move |_: MouseEvent| keep(Score { order, ..Score::default() }))
    };
    html! {
        <section class="card" aria-label={text::SCORE}>
            <h3>{ text::SCORE }</h3>
            if score.is_empty() {
                <p class="hint">{ text::NO_SCORE }</p>
            } else {
                <ul class="plain-list">
                    { for Game::ALL.into_iter().filter(|game| score.games[game.index()][0] > 0).map(|game| {
                        let [asked, right, too] = score.games[game.index()].map(|count| count as usize);
                        html! { <li key={text::game(game)}>{ text::named(text::game(game), &text::result(right, too, asked)) }</li> }
                    }) }
                </ul>
                <button type="button" class="tool" onclick={forget}>{ text::FORGET_SCORE }</button>
            }
        </section>
    }
}

/// How an answer is marked, beside its words.
pub(super) const fn sign(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Right => "\u{2713}",
        Outcome::WorksToo => "\u{2248}",
        Outcome::Wrong => "\u{2192}",
    }
}
