//! The page put together: one store, and its effects on the address and the storage.

use std::rc::Rc;

use gloo::timers::callback::Timeout;
use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::Animal;
use hindsaddle_model::link::{self, LinkError, Names};
use hindsaddle_model::plan::Plan;
use hindsaddle_model::season::Season;
use yew::prelude::*;

use crate::components::{
    AnimalCard, PlateStage, Tally, class_sheets, explanation, header, losses_card, muscle_list, muscle_sheet,
    notice_bar, packing_card,
};
use crate::kept;
use crate::platform::keys::Key;
use crate::platform::{address, clock, keys, screen, storage, updates};
use crate::store::{Msg, Notice, State, Tool, link_of};
use crate::text::{self, Units};

/// How long the address waits for the next change, in milliseconds: browsers limit how often it is written.
const ADDRESS_DELAY: u32 = 300;

/// From this width, in CSS pixels, everything stands side by side.
const ROOMY: f64 = 1100.0;

/// The state the page opens with: a link first, then what was remembered, then the example.
fn opening() -> State {
    let state = opened();
    let at = storage::read_for_now(storage::AT).and_then(|at| at.parse().ok()).unwrap_or(0);
    // Steps back and the animal that was shown belong to the season that was open in this window: another begins
    // its own.
    match storage::read_for_now(storage::STEPS).as_deref().and_then(|text| text.split_once('\n')) {
        Some((season, steps)) if season == link::write(&state.season, Names::Included) => {
            let mut shown = state.on(state.season.clone(), at);
            shown.notice = state.notice;
            shown.with_steps(steps)
        }
        Some(_) | None => state,
    }
}

/// The plan of the address, of the memory or of the example.
fn opened() -> State {
    let (remembered, unreadable) = match remembered() {
        None => (None, None),
        Some(Ok(season)) => (Some(season), None),
        Some(Err((error, _))) => (None, Some(Notice::MemoryRefused(error))),
    };
    let units = units();
    let fragment = address::fragment();
    if let Some(latest) = latest_here(&fragment) {
        return State::new(latest, None, units, unreadable);
    }
    storage::write_for_now(storage::ADDRESS, &fragment);
    match link::read(&fragment) {
        // The address of one's own season leaves out its names: the remembered one is the same and more.
        Ok(season) => match remembered {
            Some(mine) if link::write(&mine, Names::LeftOut) == link::write(&season, Names::LeftOut) => {
                State::new(mine, None, units, None)
            }
            Some(mine) => State::new(season, Some(mine), units, Some(Notice::LinkOpened)),
            None => State::new(season, None, units, unreadable),
        },
        Err(_) if fragment.is_empty() => {
            State::new(remembered.unwrap_or_else(example), None, units, unreadable)
        }
        Err(error) => {
            let notice = Notice::of_link(error, &fragment);
            State::new(remembered.unwrap_or_else(example), None, units, Some(notice))
        }
    }
}

/// The plan that this browser remembers, or why it cannot be read and its text. None if there is none.
fn remembered() -> Option<Result<Season, (LinkError, String)>> {
    let text = storage::read(storage::PLAN)?;
    Some(link::read(&text).map_err(|error| (error, text)))
}

/// The reader's units.
fn units() -> Units {
    match storage::read(storage::UNITS).as_deref() {
        Some("kg") => Units::Kilograms,
        _ => Units::Pounds,
    }
}

/// What somebody's link says, to be read; nothing that is remembered here changes by it.
pub(crate) fn received() -> Result<State, Notice> {
    let fragment = address::fragment();
    let season = link::read(&fragment).map_err(|error| Notice::of_link(error, &fragment))?;
    Ok(State::new(season, None, units(), None))
}

/// The reader's own plan, if this browser remembers one that can be read.
pub(crate) fn own() -> Option<Season> {
    remembered()?.ok()
}

/// Makes a plan that was received the one that is worked on; one's own is put aside before.
///
/// # Errors
/// What is to be said: the list is full, or the browser refuses to remember. Then nothing has changed.
pub(crate) fn adopt(theirs: &Season) -> Result<(), Notice> {
    if let Some(Ok(mine)) = remembered() {
        make_room(&mine)?;
    }
    if remember_plan(&link::write(theirs, Names::Included)) { Ok(()) } else { Err(Notice::NotRemembered) }
}

/// Remembers the plan. What stands there and cannot be read is set aside before, and where that is refused it is not
/// written over. False if the browser refuses either.
fn remember_plan(text: &str) -> bool {
    let is_free = match remembered() {
        Some(Err((_, unreadable))) => storage::write(storage::SET_ASIDE, &unreadable),
        Some(Ok(_)) | None => true,
    };
    is_free && storage::write(storage::PLAN, text)
}

/// Remembers a text under a name, or says that the browser refuses; false then.
pub(crate) fn remember(name: &'static str, text: &str, send: &Callback<Msg>) -> bool {
    let agreed = storage::write(name, text);
    if !agreed {
        send.emit(Msg::Say(Notice::NotRemembered));
    }
    agreed
}

/// What this window itself had last, if the address is what it wrote or read: an edit reaches the address a moment later
/// than the memory, and another window may have written over what the browser remembers. The address before that counts,
/// too: a page that is being loaded again has it, if its last edit reached the address after that had begun.
fn latest_here(fragment: &str) -> Option<Season> {
    let written = storage::read_for_now(storage::ADDRESS)?;
    let steps = storage::read_for_now(storage::STEPS)?;
    written.split('\n').any(|written| written == fragment).then_some(())?;
    link::read(steps.lines().next()?).ok()
}

/// The season that stands there before anybody decides anything.
fn example() -> Season {
    Plan::new(Animal::example()).into()
}

/// Puts a season among those that are kept.
///
/// # Errors
/// What is to be said: there is no room, or the browser refuses.
pub(crate) fn put_aside(season: &Season) -> Result<(), Notice> {
    let list = storage::read(storage::KEPT).unwrap_or_default();
    let link = link::write(season, Names::Included);
    kept::put(&list, &clock::day(), &link, |list| storage::write(storage::KEPT, list))
}

/// Puts aside what another season takes the place of, if anybody decided anything in it.
///
/// # Errors
/// As [`put_aside`].
fn make_room(season: &Season) -> Result<(), Notice> {
    if *season == example() { Ok(()) } else { put_aside(season) }
}

/// The season that this page opens with, as it changes, and whom to tell of changes. The address and the storage follow it;
/// the address is a lesson's instead, while one is open.
#[hook]
pub(crate) fn use_season(lesson: Option<String>) -> (Rc<State>, Callback<Msg>) {
    let state = use_reducer(opening);
    use_memory(&state, lesson);
    use_listeners(&state);
    use_shared(&state)
}

/// What is handed to the parts of a page: its state, and whom to tell of changes.
#[hook]
pub(crate) fn use_shared(state: &UseReducerHandle<State>) -> (Rc<State>, Callback<Msg>) {
    let dispatch = state.dispatcher();
    let send = use_callback((), move |message: Msg, ()| dispatch.dispatch(message));
    (Rc::new((**state).clone()), send)
}

/// Keeps the address and the storage at the plan; the address at a lesson instead, while one is open.
#[hook]
fn use_memory(state: &UseReducerHandle<State>, lesson: Option<String>) {
    let dispatch = state.dispatcher();
    let now = state.clone();
    use_effect_with(state.season.clone(), move |season| {
        let season = season.clone();
        storage::soon(storage::PLAN, move || {
            let text = link::write(&season, Names::Included);
            storage::write_for_now(storage::STEPS, &format!("{text}\n{}", now.steps()));
            if !remember_plan(&text) {
                dispatch.dispatch(Msg::Say(Notice::NotRemembered));
            }
        });
    });
    use_effect_with(state.at, |at| storage::write_for_now(storage::AT, &at.to_string()));
    use_effect_with(
        (state.season.clone(), state.names_travel, lesson),
        move |(season, names_travel, lesson)| {
            let (season, names_travel, lesson) = (season.clone(), *names_travel, lesson.clone());
            let waiting = Timeout::new(ADDRESS_DELAY, move || {
                let text = lesson.unwrap_or_else(|| link_of(&season, names_travel));
                let before = storage::read_for_now(storage::ADDRESS).unwrap_or_default();
                let before = before.split('\n').next().unwrap_or_default();
                address::replace_fragment(&text);
                storage::write_for_now(storage::ADDRESS, &format!("{text}\n{before}"));
            });
            move || drop(waiting)
        },
    );
    let dispatch = state.dispatcher();
    use_effect_with(state.units, move |units| {
        let name = match units {
            Units::Pounds => "lb",
            Units::Kilograms => "kg",
        };
        remember(storage::UNITS, name, &Callback::from(move |message| dispatch.dispatch(message)));
    });
    // The last one: that a plan could not be put aside is said over everything else that was refused.
    let dispatch = state.dispatcher();
    use_effect_with(state.aside.clone(), move |aside| {
        if let Some(Err(why)) = aside.as_deref().map(make_room) {
            dispatch.dispatch(Msg::NotAside(why));
        }
    });
}

/// Listens to the address and to the keys that mean something everywhere.
#[hook]
fn use_listeners(state: &UseReducerHandle<State>) {
    let dispatch = state.dispatcher();
    use_effect_with((), move |()| {
        let opened = dispatch.clone();
        let address = address::on_change(move |fragment| {
            storage::write_for_now(storage::ADDRESS, &fragment);
            opened.dispatch(match link::read(&fragment) {
                Ok(season) => Msg::Open(Rc::new(season)),
                Err(error) => Msg::Say(Notice::of_link(error, &fragment)),
            });
        });
        let leaving = storage::before_leaving();
        let told = dispatch.clone();
        let newer = updates::on_newer(move || told.dispatch(Msg::Say(Notice::Newer)));
        let keys = keys::on_key(move |key| match key {
            Key::Undo => dispatch.dispatch(Msg::Undo),
            Key::Redo => dispatch.dispatch(Msg::Redo),
            Key::Escape => {
                dispatch.dispatch(Msg::Explain(None));
                dispatch.dispatch(Msg::Pick(None));
                dispatch.dispatch(Msg::Take(Tool::Decide));
                dispatch.dispatch(Msg::ClassSheets(false));
            }
        });
        move || drop((address, keys, newer, leaving))
    });
}

/// The width of the window, as it changes.
#[hook]
pub(crate) fn use_width() -> f64 {
    let width = use_state(screen::width);
    let setter = width.setter();
    use_effect_with((), move |()| {
        let listener = screen::on_resize(move |now| setter.set(now));
        move || drop(listener)
    });
    *width
}

/// The whole page.
#[component]
pub fn App() -> Html {
    let (state, send) = use_season(None);
    let width = use_width();
    if state.class_sheets {
        return class_sheets(&state, &[(state.look.view, Muscle::ALL.to_vec())], &send);
    }
    html! {
        <div class="page">
            { header(&state, &send) }
            { notice_bar(state.notice.as_ref(), state.units, &send) }
            <main class="columns">
                <div class="column-plan">
                    <AnimalCard animal={*state.plan.animal()} line={text::animal_line(&state.plan, state.units)} title={state.plan.title().to_owned()} units={state.units} roomy={width >= ROOMY} names_travel={state.names_travel} send={send.clone()} />
                    { losses_card(&state, &send) }
                    { packing_card(&state, &send) }
                </div>
                <PlateStage state={state.clone()} {width} send={send.clone()} />
                { muscle_list(&state, &send) }
                <div class="column-answer">
                    <Tally plan={state.plan.clone()} forecast={state.forecast.clone()} units={state.units} send={send.clone()} />
                    if let Some(muscle) = state.muscle {
                        { muscle_sheet(&state, muscle, &send) }
                    }
                </div>
            </main>
            if let Some(topic) = state.topic {
                { explanation(&state, topic, &send) }
            }
        </div>
    }
}
