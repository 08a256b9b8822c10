//! A field and a tick box, as the second and the third page use them.

use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A field with its label; `on_text` is told what was typed when it is left.
pub(in crate::components) fn field(
    label: impl Into<AttrValue>,
    kind: &'static str,
    value: String,
    unit: &'static str,
    on_text: &Callback<String>,
) -> Html {
    let label: AttrValue = label.into();
    let onchange = on_text.reform(|event: Event| event.target_unchecked_into::<HtmlInputElement>().value());
    // Numbers are typed as text, so that a comma does as well as a point.
    let (kind, mode) = if kind == "number" { ("text", "decimal") } else { (kind, "text") };
    html! {
        <label class="field">
            <span class="field-label">{ &label }</span>
            <span class="with-unit"><input type={kind} inputmode={mode} aria-label={label.clone()} {value} {onchange} />
            if !unit.is_empty() { <span class="unit">{ unit }</span> }</span>
        </label>
    }
}

/// A box to tick.
pub(in crate::components) fn tick(label: &'static str, checked: bool, on_tick: &Callback<bool>) -> Html {
    let onchange = on_tick.reform(|event: Event| event.target_unchecked_into::<HtmlInputElement>().checked());
    html! { <label class="tick"><input type="checkbox" {checked} {onchange} />{ label }</label> }
}
