//! The size of the window.

use gloo::events::EventListener;

use super::window;

/// Width of the window in CSS pixels; a phone's if it cannot be known.
pub fn width() -> f64 {
    window().and_then(|window| window.inner_width().ok()).and_then(|width| width.as_f64()).unwrap_or(360.0)
}

/// Calls `then` with the new width when it changes.
pub fn on_resize(then: impl Fn(f64) + 'static) -> Option<EventListener> {
    let window = window()?;
    Some(EventListener::new(&window, "resize", move |_| then(width())))
}

/// Height of the window in CSS pixels; a phone's if it cannot be known.
pub fn height() -> f64 {
    window().and_then(|window| window.inner_height().ok()).and_then(|height| height.as_f64()).unwrap_or(740.0)
}

/// Fills the screen with an element of the page, or leaves it again.
pub fn fill(id: &str) {
    let Some(document) = window().and_then(|window| window.document()) else { return };
    if document.fullscreen_element().is_some() {
        document.exit_fullscreen();
    } else if let Some(element) = document.get_element_by_id(id) {
        let _ = element.request_fullscreen();
    }
}
