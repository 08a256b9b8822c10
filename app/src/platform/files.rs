//! Files: saved among the reader's downloads, or opened by the reader.

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, BlobPropertyBag, Document, Event, HtmlAnchorElement, HtmlInputElement, Url};

use super::window;

/// Saves a text under a name; false if the browser refuses.
pub fn save(name: &str, kind: &str, text: &str) -> bool {
    let Some(document) = window().and_then(|window| window.document()) else { return false };
    let Some(address) = address_of(text, kind) else { return false };
    let saved = download(&document, &address, name);
    let _ = Url::revoke_object_url(&address);
    saved
}

/// An address of this page alone, behind which the text lies.
pub(super) fn address_of(text: &str, kind: &str) -> Option<String> {
    let parts = web_sys::js_sys::Array::of1(&JsValue::from_str(text));
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options).ok()?;
    Url::create_object_url_with_blob(&blob).ok()
}

pub(super) fn download(document: &Document, address: &str, name: &str) -> bool {
    let link = document.create_element("a").ok().and_then(|link| link.dyn_into::<HtmlAnchorElement>().ok());
    let Some(link) = link else { return false };
    link.set_href(address);
    link.set_download(name);
    link.click();
    true
}

/// Reads the file that was chosen in a field, if it is no longer than `most` bytes; `then` gets its text, or None
/// if it is too long or cannot be read.
pub fn opened(event: &Event, most: u32, then: impl FnOnce(Option<String>) + 'static) {
    let field = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
    let file = field.as_ref().and_then(HtmlInputElement::files).and_then(|files| files.get(0));
    let Some(file) = file else { return };
    if file.size() > f64::from(most) {
        return then(None);
    }
    let text = file.text();
    spawn_local(async move { then(JsFuture::from(text).await.ok().and_then(|text| text.as_string())) });
}
