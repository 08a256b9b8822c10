//! Small controls that several components use: a native select, a stepper, a row of choices. They keep nothing,
//! so they are functions: a component is what has a state, an effect, or properties that seldom change.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// One choice of a [`choice`] or of [`segments`].
#[derive(Clone, Debug, PartialEq)]
pub(in crate::components) struct Choosable {
    /// What it is called.
    pub label: AttrValue,
    /// Whether it is not to be had.
    pub disabled: bool,
}

impl Choosable {
    /// One that can be had.
    pub(in crate::components) fn new(label: impl Into<AttrValue>) -> Self {
        Self { label: label.into(), disabled: false }
    }
}

/// A native select.
pub(in crate::components) fn choice(
    label: impl Into<AttrValue>,
    options: Vec<Choosable>,
    chosen: Option<usize>,
    on_choose: &Callback<usize>,
) -> Html {
    let label = label.into();
    html! {
        <label class="field">
            <span class="field-label">{ &label }</span>
            { bare_choice(label, options, chosen, on_choose) }
        </label>
    }
}

/// A native select whose label is spoken and not shown.
pub(in crate::components) fn bare_choice(
    label: AttrValue,
    options: Vec<Choosable>,
    chosen: Option<usize>,
    on_choose: &Callback<usize>,
) -> Html {
    let on_choose = on_choose.clone();
    let onchange = Callback::from(move |event: Event| {
        if let Ok(place) = event.target_unchecked_into::<HtmlSelectElement>().value().parse() {
            on_choose.emit(place);
        }
    });
    html! {
        <select aria-label={label} {onchange}>
            { for options.into_iter().enumerate().map(|(place, option)| html! {
                <option key={place} value={place.to_string()} selected={chosen == Some(place)} disabled={option.disabled}>
                    { option.label }
                </option>
            }) }
        </select>
    }
}

/// A native select over all there is of something.
pub(in crate::components) fn choice_of<T: Copy + PartialEq + 'static>(
    label: impl Into<AttrValue>,
    all: &'static [T],
    name: impl Fn(T) -> &'static str,
    now: T,
    on_choose: &Callback<T>,
) -> Html {
    choice(label, named(all, name), place(all, &now), &on_choose.reform(|place: usize| all[place]))
}

/// A row of buttons over all there is of something.
pub(in crate::components) fn segments_of<T: Copy + PartialEq + 'static>(
    label: &'static str,
    all: &'static [T],
    name: impl Fn(T) -> &'static str,
    now: T,
    on_choose: &Callback<T>,
) -> Html {
    segments(label, named(all, name), place(all, &now), &on_choose.reform(|place: usize| all[place]))
}

fn named<T: Copy>(all: &[T], name: impl Fn(T) -> &'static str) -> Vec<Choosable> {
    all.iter().map(|one| Choosable::new(name(*one))).collect()
}

fn place<T: PartialEq>(all: &[T], now: &T) -> Option<usize> {
    all.iter().position(|one| one == now)
}

/// A row of buttons of which one is pressed.
pub(in crate::components) fn segments(
    label: &'static str,
    options: Vec<Choosable>,
    chosen: Option<usize>,
    on_choose: &Callback<usize>,
) -> Html {
    html! {
        <div class="segments" role="group" aria-label={label}>
            { for options.into_iter().enumerate().map(|(place, option)| {
                let on_choose = on_choose.clone();
                let pressed = chosen == Some(place);
                html! {
                    <button key={place} type="button" class="segment" aria-pressed={pressed.to_string()}
                        disabled={option.disabled} onclick={move |_| on_choose.emit(place)}>
                        { option.label }
                    </button>
                }
            }) }
        </div>
    }
}

/// A value, with its unit, between two large buttons, which are called less and more and tell -1 and 1.
pub(in crate::components) fn stepper(
    label: &'static str,
    value: impl Into<AttrValue>,
    on_step: &Callback<i32>,
    (less, more): (&'static str, &'static str),
) -> Html {
    let button = |by: i32, name: &'static str, sign: &'static str| {
        let onclick = on_step.reform(move |_: MouseEvent| by);
        html! { <button type="button" class="step" aria-label={format!("{label}: {name}")} {onclick}>{ sign }</button> }
    };
    html! {
        <div class="stepper" role="group" aria-label={label}>
            <span class="field-label">{ label }</span>
            <span class="stepper-row">
                { button(-1, less, "−") }
                <output class="stepper-value">{ value.into() }</output>
                { button(1, more, "+") }
            </span>
        </div>
    }
}
