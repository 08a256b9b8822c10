//! Keeping the screen on while hands are busy.

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::js_sys::{Function, Promise, Reflect};

use super::window;

/// Whether this browser can.
pub fn is_possible() -> bool {
    lock().is_some()
}

/// Its `navigator.wakeLock`, which web-sys does not offer without its unstable interfaces.
fn lock() -> Option<JsValue> {
    let lock = Reflect::get(&window()?.navigator(), &"wakeLock".into()).ok()?;
    lock.is_object().then_some(lock)
}

/// Keeps the screen on until the page is left or hidden; `then` learns whether the browser agreed.
pub fn keep(then: impl FnOnce(bool) + 'static) {
    let asked = lock().and_then(|lock| {
        let request = Reflect::get(&lock, &"request".into()).ok()?.dyn_into::<Function>().ok()?;
        request.call1(&lock, &"screen".into()).ok()?.dyn_into::<Promise>().ok()
    });
    match asked {
        Some(asked) => spawn_local(async move { then(JsFuture::from(asked).await.is_ok()) }),
        None => then(false),
    }
}
