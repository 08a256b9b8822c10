//! The device's own way of sharing, where there is one.

use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::js_sys::Reflect;
use web_sys::{Navigator, ShareData};

use super::window;

fn navigator() -> Option<Navigator> {
    let navigator = window()?.navigator();
    Reflect::has(&navigator, &"share".into()).unwrap_or(false).then_some(navigator)
}

/// Whether there is one.
pub fn is_possible() -> bool {
    navigator().is_some()
}

/// Offers an address under a title. To be called from a click; a reader who changes their mind is no error.
pub fn offer(title: &str, address: &str) {
    let Some(navigator) = navigator() else { return };
    let data = ShareData::new();
    data.set_title(title);
    data.set_url(address);
    let offered = navigator.share_with_data(&data);
    spawn_local(async move {
        let _ = JsFuture::from(offered).await;
    });
}
