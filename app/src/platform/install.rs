//! Putting the page among the device's own programs. A browser that can do so says it before the page has started:
//! `assets/boot.js` keeps its offer in `installing`, and tells of it by `installable`.

use gloo::events::EventListener;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::js_sys::{Function, Reflect};

use super::window;

/// Where `assets/boot.js` keeps the offer.
const OFFER: &str = "installing";

fn offer() -> Option<JsValue> {
    Reflect::get(&window()?.into(), &OFFER.into()).ok().filter(JsValue::is_object)
}

/// Whether the browser offers it now.
pub fn is_offered() -> bool {
    offer().is_some()
}

/// Whether the page already runs as a program of its own.
pub fn is_installed() -> bool {
    let asked = window().and_then(|window| window.match_media("(display-mode: standalone)").ok()?);
    asked.is_some_and(|asked| asked.matches())
}

/// Lets the browser ask the reader. An offer is good for one time. To be called from a click.
pub fn ask() {
    let Some(offer) = offer() else { return };
    if let Ok(prompt) = Reflect::get(&offer, &"prompt".into()).and_then(JsCast::dyn_into::<Function>) {
        let _ = prompt.call0(&offer);
    }
    if let Some(window) = window() {
        let _ = Reflect::set(&window.into(), &OFFER.into(), &JsValue::UNDEFINED);
    }
}

/// Calls `then` when the browser offers it, or does no more.
pub fn on_offer(then: impl Fn() + 'static) -> Option<EventListener> {
    let window = window()?;
    Some(EventListener::new(&window, "installable", move |_| then()))
}
