//! Keys pressed anywhere on the page.

use gloo::events::{EventListener, EventListenerOptions};
use wasm_bindgen::JsCast;
use web_sys::KeyboardEvent;

use super::window;

/// A key that means something everywhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Key {
    /// Control or command with Z.
    Undo,
    /// The same with shift, or control with Y.
    Redo,
    /// Escape.
    Escape,
}

fn meaning(event: &KeyboardEvent) -> Option<Key> {
    let command = event.ctrl_key() || event.meta_key();
    match (command, event.shift_key(), event.key().to_ascii_lowercase().as_str()) {
        (true, false, "z") => Some(Key::Undo),
        (true, true, "z") | (true, false, "y") => Some(Key::Redo),
        (false, _, "escape") => Some(Key::Escape),
        _ => None,
    }
}

/// Whether the key is meant for the field the reader types in.
fn is_typing(event: &KeyboardEvent) -> bool {
    event
        .target()
        .and_then(|target| target.dyn_into::<web_sys::HtmlInputElement>().ok())
        .is_some_and(|input| matches!(input.type_().as_str(), "text" | "number" | "search"))
}

/// Calls `then` for every key that means something.
pub fn on_key(then: impl Fn(Key) + 'static) -> Option<EventListener> {
    let window = window()?;
    let options = EventListenerOptions::enable_prevent_default();
    Some(EventListener::new_with_options(&window, "keydown", options, move |event| {
        let Some(event) = event.dyn_ref::<KeyboardEvent>() else { return };
        let Some(key) = meaning(event) else { return };
        if key != Key::Escape {
            if is_typing(event) {
                return;
            }
            event.prevent_default();
        }
        then(key);
    }))
}
