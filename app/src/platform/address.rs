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

/// The address of another page, with a fragment: of the same folder, or in the one file, where the name of a page stands
/// behind the question mark.
pub fn of_page(name: &str, fragment: &str) -> String {
    let page = whole();
    let page = page.split(['?', '#']).next().unwrap_or_default();
    if is_one_file() {
        let name = name.trim_end_matches(".html");
        let asked = if name.is_empty() { "" } else { "?" };
        return format!("{page}{asked}{name}#{fragment}");
    }
    let folder = page.rsplit_once('/').map_or("", |(folder, _)| folder);
    format!("{folder}/{name}#{fragment}")
}

/// Whether this is the one file from a disk, which has no address that another device could open.
pub fn is_one_file() -> bool {
    window().and_then(|window| window.location().protocol().ok()).is_some_and(|protocol| protocol == "file:")
}

/// Whether the page of this name is open.
pub fn is_page(name: &str) -> bool {
    let Some(place) = window().map(|window| window.location()) else { return false };
    let (path, asked) = (place.pathname().unwrap_or_default(), place.search().unwrap_or_default());
    is_called(name, &path, &asked)
}

/// Whether a path, or what stands behind its question mark, is the page of this name. Some hosts leave its ending out.
fn is_called(name: &str, path: &str, asked: &str) -> bool {
    let plain = |name: &str| name.trim_end_matches(".html").to_owned();
    path.rsplit('/').next().map(plain) == Some(plain(name)) || asked.strip_prefix('?') == Some(&*plain(name))
}

/// Goes to an address.
pub fn go(address: &str) {
    if let Some(window) = window() {
        let _ = window.location().set_href(address);
    }
}

/// Opens the page again, at the address as it is now.
pub fn reload() {
    if let Some(window) = window() {
        let _ = window.location().reload();
    }
}

/// Calls `then` with the new fragment when somebody changes it: a pasted link, the back button.
pub fn on_change(then: impl Fn(String) + 'static) -> Option<EventListener> {
    let window = window()?;
    Some(EventListener::new(&window, "hashchange", move |_| then(fragment())))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_page_is_known_with_its_ending_and_without() {
        let is_read = |path, asked| is_called("read.html", path, asked);
        assert!(is_read("/read.html", "") && is_read("/deer/read", "") && is_read("/single.html", "?read"));
        assert!(
            !is_read("/", "") && !is_read("/read/kitchen.html", "") && !is_read("/kitchen.html", "?learn")
        );
    }
}
