//! What this browser remembers. Every call can be refused: private windows, full disks, closed settings.

use std::cell::RefCell;

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use web_sys::Storage;

use super::{journal, window};

/// The season, as the text of a link with its names.
pub const PLAN: &str = "hindsaddle.plan";
/// What was remembered and could not be read.
pub const SET_ASIDE: &str = "hindsaddle.set_aside";
/// What is done at the table.
pub const TABLE: &str = "hindsaddle.table";
/// The sheet of labels and how it is printed.
pub const LABELS: &str = "hindsaddle.labels";
/// Paper, bags and tape that are there already.
pub const HAVE: &str = "hindsaddle.have";
/// Plans that were kept: see [`crate::kept`].
pub const KEPT: &str = "hindsaddle.kept";
/// How the household's own animals weighed against the table.
pub const OWN: &str = "hindsaddle.own";
/// The step of the first deer.
pub const WALK: &str = "hindsaddle.walk";
/// How practice went.
pub const PRACTICE: &str = "hindsaddle.practice";
/// The reader's units.
pub const UNITS: &str = "hindsaddle.units";
/// The language that was chosen; `assets/boot.js` reads it.
pub const LANGUAGE: &str = "hindsaddle.language";
/// How often something was remembered: see [`super::journal`].
const COUNT: &str = "hindsaddle.count";
/// What all names begin with.
const OURS: &str = "hindsaddle.";

/// Weights that were asked about and stay, for as long as the window is open.
pub const SURE: &str = "hindsaddle.sure";
/// What this window last wrote to the address, or read in it, for as long as it is open.
pub const ADDRESS: &str = "hindsaddle.address";
/// The place of the animal that is shown, for as long as the window is open.
pub const AT: &str = "hindsaddle.at";
/// The steps before the plan, for as long as the window is open.
pub const STEPS: &str = "hindsaddle.steps";

/// How long what can wait does, in milliseconds, so that what was tapped is painted first, on a slow phone, too.
const AFTER_PAINTING: u32 = 120;

/// Something to be done.
type Work = Box<dyn FnOnce()>;

thread_local! {
    /// What is soon done, the latest of each name.
    static SOON: RefCell<Vec<(&'static str, Work)>> = const { RefCell::new(Vec::new()) };
    /// When.
    static DUE: RefCell<Option<Timeout>> = const { RefCell::new(None) };
}

fn storage() -> Option<Storage> {
    window()?.local_storage().ok()?
}

/// What was remembered under a name.
pub fn read(name: &str) -> Option<String> {
    storage()?.get_item(name).ok()?
}

/// What was remembered under a name for as long as the window is open.
pub fn read_for_now(name: &str) -> Option<String> {
    window()?.session_storage().ok()??.get_item(name).ok()?
}

/// Remembers a text under a name for as long as the window is open, if the browser agrees.
pub fn write_for_now(name: &str, text: &str) {
    if let Some(storage) = window().and_then(|window| window.session_storage().ok()?) {
        let _ = storage.set_item(name, text);
    }
}

/// Does something when what was tapped is painted, or at the latest when the page is left or hidden: see
/// [`before_leaving`]. What still waits under the same name is not done.
pub fn soon(name: &'static str, work: impl FnOnce() + 'static) {
    SOON.with_borrow_mut(|soon| put_latest(soon, name, Box::new(work) as Work));
    DUE.with_borrow_mut(|due| {
        due.get_or_insert_with(|| Timeout::new(AFTER_PAINTING, do_now));
    });
}

/// Puts something last in line, and takes out what waited under the same name.
pub(super) fn put_latest<T>(waiting: &mut Vec<(&'static str, T)>, name: &'static str, what: T) {
    waiting.retain(|(other, _)| *other != name);
    waiting.push((name, what));
}

/// Does all that waits, and what comes of it.
fn do_now() {
    let next = || SOON.with_borrow_mut(|soon| (!soon.is_empty()).then(|| soon.remove(0)));
    while let Some((_, work)) = next() {
        work();
    }
    DUE.take();
}

/// Sees to it that nothing still waits when the page is left, or is hidden: a phone may stop a hidden page for good.
pub fn before_leaving() -> Option<[EventListener; 2]> {
    let window = window()?;
    let document = window.document()?;
    Some([
        EventListener::new(&window.into(), "pagehide", |_| do_now()),
        EventListener::new(&document.into(), "visibilitychange", |_| do_now()),
    ])
}

/// Remembers a text under a name; false if the browser refuses.
pub fn write(name: &'static str, text: &str) -> bool {
    let Some(storage) = storage() else { return false };
    if storage.set_item(name, text).is_err() {
        return false;
    }
    journal::write(name, text.to_owned());
    true
}

/// Counts one more write, for [`super::journal`]. None if the browser refuses: what is kept there would not be newer.
pub(super) fn counted() -> Option<u32> {
    let count = read(COUNT).and_then(|count| count.parse::<u32>().ok()).unwrap_or(0).wrapping_add(1);
    storage()?.set_item(COUNT, &count.to_string()).ok()?;
    Some(count)
}

/// What is remembered: each name, and how many characters stand under it.
pub fn held() -> Vec<(String, usize)> {
    let Some(storage) = storage() else { return Vec::new() };
    let name = |place| storage.key(place).ok()?.filter(|name| name.starts_with(OURS));
    let names = (0..storage.length().unwrap_or(0)).filter_map(name);
    names.map(|name| (name.clone(), read(&name).map_or(0, |text| text.len()))).collect()
}

/// Forgets everything, in this window and for good; calls `then` when it is done.
pub fn forget(then: impl FnOnce() + 'static) {
    for (name, _) in held() {
        if let Some(storage) = storage() {
            let _ = storage.remove_item(&name);
        }
    }
    SOON.take();
    if let Some(storage) = window().and_then(|window| window.session_storage().ok()?) {
        let _ = storage.clear();
    }
    journal::forget(then);
}

/// Asks the browser not to clear what is remembered; `then` gets its answer.
pub fn persist(then: impl FnOnce(bool) + 'static) {
    let asked = window().and_then(|window| window.navigator().storage().persist().ok());
    wasm_bindgen_futures::spawn_local(async move {
        let agreed = match asked {
            Some(asked) => wasm_bindgen_futures::JsFuture::from(asked).await.is_ok_and(|yes| yes.is_truthy()),
            None => false,
        };
        then(agreed);
    });
}
