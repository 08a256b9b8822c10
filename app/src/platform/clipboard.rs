//! The clipboard.

use wasm_bindgen_futures::{JsFuture, spawn_local};

use super::window;

/// Copies a text and calls `then` with whether it worked. To be called from a click.
pub fn copy(text: &str, then: impl FnOnce(bool) + 'static) {
    let Some(window) = window() else { return then(false) };
    // Without a secure context there is no clipboard at all.
    if !window.is_secure_context() {
        return then(false);
    }
    let copied = window.navigator().clipboard().write_text(text);
    spawn_local(async move { then(JsFuture::from(copied).await.is_ok()) });
}
