//! A second memory, for a browser that is killed. Chromium writes what [`super::storage`] is told to the disk seconds
//! later (up to twelve were seen), a response that is kept in a cache at once. Each entry begins with the count of the
//! write it belongs to; `assets/boot.js` puts back what is newer than the first memory has.

use std::cell::{Cell, RefCell};

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Cache, CacheStorage, Response};

use super::{storage, window};

/// The name of the cache; `assets/boot.js` knows it, too.
const JOURNAL: &str = "hindsaddle.journal";

thread_local! {
    /// What is still to be written, the latest of each name.
    static WAITING: RefCell<Vec<(&'static str, String)>> = const { RefCell::new(Vec::new()) };
    /// What is done when all of it is forgotten, from when that was asked for: until then nothing more is written.
    static FORGETTING: RefCell<Option<Box<dyn FnOnce()>>> = const { RefCell::new(None) };
    /// Whether it is at work.
    static WORKING: Cell<bool> = const { Cell::new(false) };
}

/// Where there is one: pages of an insecure address have none.
fn caches() -> Option<CacheStorage> {
    window()?.caches().ok().filter(|caches| !caches.is_undefined())
}

/// Writes a text under a name, after what waits already. A browser that refuses has the first memory.
pub(super) fn write(name: &'static str, text: String) {
    if FORGETTING.with_borrow(Option::is_some) {
        return;
    }
    WAITING.with_borrow_mut(|waiting| storage::put_latest(waiting, name, text));
    work_soon();
}

/// Forgets all of it, after what is being written just now: that would come back otherwise. Calls `then` when it is gone.
pub(super) fn forget(then: impl FnOnce() + 'static) {
    WAITING.with_borrow_mut(Vec::clear);
    FORGETTING.set(Some(Box::new(then)));
    work_soon();
}

fn work_soon() {
    // Handing a response over takes a tenth of a frame.
    storage::soon(JOURNAL, || {
        if !WORKING.replace(true) {
            spawn_local(work());
        }
    });
}

/// Does one thing after the other until nothing is left to do.
async fn work() {
    let caches = caches();
    let next = || WAITING.with_borrow_mut(|waiting| (!waiting.is_empty()).then(|| waiting.remove(0)));
    while let Some((name, text)) = next() {
        if let Some(caches) = &caches {
            let _ = put(caches, name, &text).await;
        }
    }
    if FORGETTING.with_borrow(Option::is_some) {
        if let Some(caches) = &caches {
            let _ = JsFuture::from(caches.delete(JOURNAL)).await;
        }
        if let Some(then) = FORGETTING.take() {
            then();
        }
    }
    WORKING.set(false);
}

async fn put(caches: &CacheStorage, name: &str, text: &str) -> Result<(), JsValue> {
    let Some(count) = storage::counted() else { return Ok(()) };
    let cache: Cache = JsFuture::from(caches.open(JOURNAL)).await?.unchecked_into();
    let entry = Response::new_with_opt_str(Some(&format!("{count}\n{text}")))?;
    JsFuture::from(cache.put_with_str(name, &entry)).await?;
    Ok(())
}
