//! The fragment of the address, where the plan lives.

use gloo::events::EventListener;
use wasm_bindgen::JsValue;

use super::window;

/// The fragment without its `#`; empty if there is none.
pub fn fragment() -> String {
    let hash = window().and_then(|window| window.location().hash().ok()).unwrap_or_default();
    hash.trim_start_matches('#').to_owned()
}

/// Writes the fragment without a new entry in the history. A browser that refuses (too often, or a page
/// opened from a file) is asked again at the next change.
pub fn replace_fragment(fragment: &str) {
    if let Some(history) = window().and_then(|window| window.history().ok()) {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&format!("#{fragment}")));
    }
}

/// The whole address.
pub fn whole() -> String {
    window().and_then(|window| window.location().href().ok()).unwrap_or_default()
}

/// The address of the plan's page, which stands in the same folder as every other, with a fragment.
pub fn of_plan(fragment: &str) -> String {
    of_page("", fragment)
}

/// The address of another page of the same folder, with a fragment.
pub fn of_page(name: &str, fragment: &str) -> String {
    let page = whole();
    let page = page.split(['?', '#']).next().unwrap_or_default();
    let folder = page.rsplit_once('/').map_or("", |(folder, _)| folder);
    format!("{folder}/{name}#{fragment}")
}

/// Calls `then` with the new fragment when somebody changes it: a pasted link, the back button.
pub fn on_change(then: impl Fn(String) + 'static) -> Option<EventListener> {
    let window = window()?;
    Some(EventListener::new(&window, "hashchange", move |_| then(fragment())))
}
