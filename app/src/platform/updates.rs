//! A newer build of the page that waits for its turn: see assets/offline.js and assets/boot.js.

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::ServiceWorkerRegistration;

use super::window;

/// Calls `then` when a newer build is ready.
pub fn on_newer(then: impl Fn() + 'static) -> Option<EventListener> {
    let window = window()?;
    Some(EventListener::new(&window, "newer", move |_| then()))
}

/// Lets the newer build take over, and opens the page again with it.
pub fn take_over() {
    let Some(window) = window() else { return };
    let workers = window.navigator().service_worker();
    let page = window.location();
    // It lives until the page is left, a moment later.
    EventListener::once(&workers, "controllerchange", move |_| {
        let _ = page.reload();
    })
    .forget();
    spawn_local(async move {
        let kept = JsFuture::from(workers.get_registration()).await.ok();
        let kept = kept.and_then(|kept| kept.dyn_into::<ServiceWorkerRegistration>().ok());
        if let Some(waiting) = kept.and_then(|kept| kept.waiting()) {
            let _ = waiting.post_message(&"take over".into());
        }
    });
}
