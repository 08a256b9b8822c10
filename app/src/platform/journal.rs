//! A second memory, for a browser that is killed. Chromium writes what [`super::storage`] is told to the disk seconds
//! later (up to twelve were seen), a response that is kept in a cache at once. Each entry begins with the count of the
//! write it belongs to; `assets/boot.js` puts back what is newer than the first memory has.

use std::cell::{Cell, RefCell};
use std::pin::Pin;

use gloo::timers::callback::Timeout;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Cache, CacheStorage, Response};

use super::window;

/// The name of the cache; `assets/boot.js` knows it, too.
const JOURNAL: &str = "hindsaddle.journal";

/// How long it waits, in milliseconds, so that what was tapped is painted first: handing a response over takes a tenth of
/// a frame.
const AFTER_PAINTING: u32 = 30;

thread_local! {
    /// What is still to be written, the latest of each name.
    static WAITING: RefCell<Vec<(&'static str, String)>> = const { RefCell::new(Vec::new()) };
    /// Whether it is being written.
    static WRITING: Cell<bool> = const { Cell::new(false) };
    /// Whether all of it is being forgotten: nothing is written until it is gone.
    static FORGOTTEN: Cell<bool> = const { Cell::new(false) };
    /// What forgets it once the writer has ended.
    static AFTER_WRITING: RefCell<Option<Pin<Box<dyn Future<Output = ()>>>>> = const { RefCell::new(None) };
}

/// Where there is one: pages of an insecure address have none.
fn caches() -> Option<CacheStorage> {
    window()?.caches().ok().filter(|caches| !caches.is_undefined())
}

/// Writes a text under a name, after what waits already. A browser that refuses has the first memory.
pub(super) fn write(name: &'static str, text: String) {
    let Some(caches) = caches().filter(|_| !FORGOTTEN.get()) else { return };
    WAITING.with_borrow_mut(|waiting| {
        waiting.retain(|(other, _)| *other != name);
        waiting.push((name, text));
    });
    if WRITING.replace(true) {
        return;
    }
    let all = async move {
        while let Some((name, text)) =
            WAITING.with_borrow_mut(|waiting| (!waiting.is_empty()).then(|| waiting.remove(0)))
        {
            let _ = put(&caches, name, &text).await;
        }
        WRITING.set(false);
        if let Some(forgetting) = AFTER_WRITING.take() {
            forgetting.await;
        }
    };
    Timeout::new(AFTER_PAINTING, || spawn_local(all)).forget();
}

async fn put(caches: &CacheStorage, name: &str, text: &str) -> Result<(), JsValue> {
    let cache: Cache = JsFuture::from(caches.open(JOURNAL)).await?.unchecked_into();
    if FORGOTTEN.get() {
        return Ok(());
    }
    JsFuture::from(cache.put_with_str(name, &Response::new_with_opt_str(Some(text))?)).await?;
    Ok(())
}

/// Forgets all of it; calls `then` when it is gone, or at once where there is none.
pub(super) fn forget(then: impl FnOnce() + 'static) {
    FORGOTTEN.set(true);
    WAITING.with_borrow_mut(Vec::clear);
    let forgetting = async move {
        if let Some(caches) = caches() {
            let _ = JsFuture::from(caches.delete(JOURNAL)).await;
        }
        FORGOTTEN.set(false);
        then();
    };
    // What the writer has handed over already would come back after the deletion, so that waits for it.
    if WRITING.get() {
        AFTER_WRITING.set(Some(Box::pin(forgetting)));
    } else {
        spawn_local(forgetting);
    }
}
