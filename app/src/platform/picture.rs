//! The plate as a file, and pages on paper.

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{
    CssStyleRule, CssStyleSheet, Document, Event, HtmlCanvasElement, HtmlImageElement, Url, XmlSerializer,
};

use super::{files, window};

/// Width of a saved bitmap in pixels: sharp on a printed page.
const BITMAP_WIDTH: f64 = 2400.0;
/// Parts of the drawing that are for hands and not for eyes.
const NOT_DRAWN: &str = ".touch, .aim, .handle";

/// A kind of picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Scalable Vector Graphics.
    Svg,
    /// Portable Network Graphics.
    Png,
}

/// Makes printed pages of this size, in hundredths of a millimetre, without margins; None makes them the
/// reader's own again. A rule of the page's style sheet, because no sheet of ours knows the size before.
pub fn set_page(size: Option<(u32, u32)>) {
    let Some(document) = window().and_then(|window| window.document()) else { return };
    let sheet = document.style_sheets().get(0).and_then(|sheet| sheet.dyn_into::<CssStyleSheet>().ok());
    let Some(sheet) = sheet else { return };
    let rules = sheet.css_rules().map_or(0, |rules| rules.length());
    // The rule is always the last one.
    if rules > 0
        && let Ok(all) = sheet.css_rules()
        && all.get(rules - 1).is_some_and(|rule| rule.css_text().starts_with("@page"))
    {
        let _ = sheet.delete_rule(rules - 1);
    }
    if let Some((width, height)) = size {
        let mm = |size: u32| format!("{}.{:02}mm", size / 100, size % 100);
        let rule = format!("@page {{ size: {} {}; margin: 0; }}", mm(width), mm(height));
        let last = sheet.css_rules().map_or(0, |rules| rules.length());
        let _ = sheet.insert_rule_with_index(&rule, last);
    }
}

/// Opens the browser's print dialog.
pub fn print() {
    if let Some(window) = window() {
        let _ = window.print();
    }
}

/// Saves the drawing with this id under `name` and the kind's ending; `then` learns whether it worked.
pub fn save(id: &str, name: &str, kind: Kind, then: impl FnOnce(bool) + 'static) {
    let Some(document) = window().and_then(|window| window.document()) else { return then(false) };
    let Some((text, aspect)) = standalone(&document, id) else { return then(false) };
    let Some(address) = files::address_of(&text, "image/svg+xml") else { return then(false) };
    match kind {
        Kind::Svg => {
            let saved = files::download(&document, &address, &format!("{name}.svg"));
            let _ = Url::revoke_object_url(&address);
            then(saved);
        }
        Kind::Png => bitmap(document, &address, aspect, format!("{name}.png"), then),
    }
}

/// The drawing as a document of its own, with the rules that colour it, and its height over its width.
fn standalone(document: &Document, id: &str) -> Option<(String, f64)> {
    let drawing = document.get_element_by_id(id)?.clone_node_with_deep(true).ok()?;
    let drawing = drawing.dyn_into::<web_sys::Element>().ok()?;
    let hands = drawing.query_selector_all(NOT_DRAWN).ok()?;
    for index in 0..hands.length() {
        if let Some(hand) = hands.get(index).and_then(|node| node.dyn_into::<web_sys::Element>().ok()) {
            hand.remove();
        }
    }
    let view_box: Vec<f64> = drawing
        .get_attribute("viewBox")?
        .split(' ')
        .filter_map(|number| number.parse::<i32>().ok())
        .map(f64::from)
        .collect();
    let [_, _, width, height] = view_box[..] else { return None };
    drawing.set_attribute("xmlns", "http://www.w3.org/2000/svg").ok()?;
    drawing.set_attribute("width", &(width.round() as i32).to_string()).ok()?;
    drawing.set_attribute("height", &(height.round() as i32).to_string()).ok()?;
    let style = document.create_element_ns(Some("http://www.w3.org/2000/svg"), "style").ok()?;
    style.set_text_content(Some(&rules(document)));
    drawing.insert_before(&style, drawing.first_child().as_ref()).ok()?;
    Some((XmlSerializer::new().ok()?.serialize_to_string(&drawing).ok()?, height / width))
}

/// The rules of the page that a picture needs: its tokens, and what the drawing's own classes look like.
fn rules(document: &Document) -> String {
    let mut text = String::new();
    let sheets = document.style_sheets();
    for index in 0..sheets.length() {
        let Some(sheet) = sheets.get(index).and_then(|sheet| sheet.dyn_into::<CssStyleSheet>().ok()) else {
            continue;
        };
        // A sheet for print alone is not what is seen.
        let for_print = sheet.media().media_text() == "print";
        let Ok(rules) = sheet.css_rules() else { continue };
        for index in 0..rules.length() {
            let Some(rule) = rules.get(index).and_then(|rule| rule.dyn_into::<CssStyleRule>().ok()) else {
                continue;
            };
            if !for_print {
                text.push_str(&rule.css_text());
                text.push('\n');
            }
        }
    }
    text
}

/// Draws the picture on a canvas and saves that.
fn bitmap(document: Document, address: &str, aspect: f64, name: String, then: impl FnOnce(bool) + 'static) {
    let Ok(image) = HtmlImageElement::new() else { return then(false) };
    let drawn = image.clone();
    // One for both ends, of which one comes: it is freed when it is called.
    let ended = Closure::once_into_js(move |event: Event| {
        let painted = (event.type_() == "load").then(|| paint(&document, &drawn, aspect)).flatten();
        let saved = painted.is_some_and(|data| files::download(&document, &data, &name));
        let _ = Url::revoke_object_url(&drawn.src());
        then(saved);
    });
    image.set_onload(Some(ended.unchecked_ref()));
    image.set_onerror(Some(ended.unchecked_ref()));
    image.set_src(address);
}

fn paint(document: &Document, image: &HtmlImageElement, aspect: f64) -> Option<String> {
    let canvas = document.create_element("canvas").ok()?.dyn_into::<HtmlCanvasElement>().ok()?;
    canvas.set_width(BITMAP_WIDTH as u32);
    canvas.set_height((BITMAP_WIDTH * aspect) as u32);
    let context = canvas.get_context("2d").ok()??;
    let context = context.dyn_into::<web_sys::CanvasRenderingContext2d>().ok()?;
    context
        .draw_image_with_html_image_element_and_dw_and_dh(
            image,
            0.0,
            0.0,
            BITMAP_WIDTH,
            BITMAP_WIDTH * aspect,
        )
        .ok()?;
    canvas.to_data_url().ok()
}
