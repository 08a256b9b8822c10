//! Where the keyboard and the eye are.

use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, SvgElement};

use super::{screen, window};

/// What begins below this part of the window may be hidden by a sheet.
const HIDDEN_FROM: f64 = 0.1;

fn element(id: &str) -> Option<Element> {
    window()?.document()?.get_element_by_id(id)
}

/// Scrolls so that the element with this id begins at the top, unless it begins there already.
pub fn reveal(id: &str) {
    if let Some(element) = element(id) {
        let top = element.get_bounding_client_rect().top();
        if top < 0.0 || top > screen::height() * HIDDEN_FROM {
            element.scroll_into_view();
        }
    }
}

/// Moves the keyboard to the element with this id, if there is one.
pub fn focus(id: &str) {
    let Some(element) = element(id) else { return };
    if let Some(html) = element.dyn_ref::<HtmlElement>() {
        let _ = html.focus();
    } else if let Some(svg) = element.dyn_ref::<SvgElement>() {
        let _ = svg.focus();
    }
}
