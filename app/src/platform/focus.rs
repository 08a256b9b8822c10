//! Where the keyboard is.

use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use super::window;

/// Moves the keyboard to the element with this id, if there is one.
pub fn focus(id: &str) {
    let element =
        window().and_then(|window| window.document()).and_then(|document| document.get_element_by_id(id));
    if let Some(element) = element {
        if let Some(html) = element.dyn_ref::<HtmlElement>() {
            let _ = html.focus();
        } else if let Some(svg) = element.dyn_ref::<web_sys::SvgElement>() {
            let _ = svg.focus();
        }
    }
}
