//! Small controls that several components use: a native select, a stepper, a row of choices.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// One choice of a [`Choice`] or a [`Segments`].
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

/// Properties of [`Choice`] and [`Segments`].
#[derive(PartialEq, Properties)]
pub(in crate::components) struct ChoiceProps {
    /// What is being chosen.
    pub label: AttrValue,
    /// What there is.
    pub options: Vec<Choosable>,
    /// Which is chosen, by its place; None if none.
    pub chosen: Option<usize>,
    /// Told the place of the new choice.
    pub on_choose: Callback<usize>,
    /// Whether the label is shown, not only spoken.
    #[prop_or(true)]
    pub labelled: bool,
}

/// A native select.
#[component]
pub(in crate::components) fn Choice(props: &ChoiceProps) -> Html {
    let onchange = {
        let on_choose = props.on_choose.clone();
        Callback::from(move |event: Event| {
            if let Ok(place) = event.target_unchecked_into::<HtmlSelectElement>().value().parse() {
                on_choose.emit(place);
            }
        })
    };
    let chosen = props.chosen;
    html! {
        <label class="field">
            if props.labelled { <span class="field-label">{ &props.label }</span> }
            <select aria-label={props.label.clone()} {onchange}>
                { for props.options.iter().enumerate().map(|(place, option)| html! {
                    <option key={place} value={place.to_string()} selected={chosen == Some(place)} disabled={option.disabled}>
                        { &option.label }
                    </option>
                }) }
            </select>
        </label>
    }
}

/// A row of buttons of which one is pressed.
#[component]
pub(in crate::components) fn Segments(props: &ChoiceProps) -> Html {
    html! {
        <div class="segments" role="group" aria-label={props.label.clone()}>
            { for props.options.iter().enumerate().map(|(place, option)| {
                let on_choose = props.on_choose.clone();
                let pressed = props.chosen == Some(place);
                html! {
                    <button key={place} type="button" class="segment" aria-pressed={pressed.to_string()}
                        disabled={option.disabled} onclick={move |_| on_choose.emit(place)}>
                        { &option.label }
                    </button>
                }
            }) }
        </div>
    }
}

/// Properties of [`Stepper`].
#[derive(PartialEq, Properties)]
pub(in crate::components) struct StepperProps {
    /// What is being set.
    pub label: AttrValue,
    /// What it is now, with its unit.
    pub value: AttrValue,
    /// Told -1 for less and 1 for more.
    pub on_step: Callback<i32>,
    /// What less and more are called.
    pub less: AttrValue,
    /// See `less`.
    pub more: AttrValue,
}

/// A value between two large buttons.
#[component]
pub(in crate::components) fn Stepper(props: &StepperProps) -> Html {
    let step = |by: i32| {
        let on_step = props.on_step.clone();
        Callback::from(move |_: MouseEvent| on_step.emit(by))
    };
    html! {
        <div class="stepper" role="group" aria-label={props.label.clone()}>
            <span class="field-label">{ &props.label }</span>
            <span class="stepper-row">
                <button type="button" class="step" aria-label={format!("{}: {}", props.label, props.less)} onclick={step(-1)}>{ "−" }</button>
                <output class="stepper-value">{ &props.value }</output>
                <button type="button" class="step" aria-label={format!("{}: {}", props.label, props.more)} onclick={step(1)}>{ "+" }</button>
            </span>
        </div>
    }
}
