//! What one part of a muscle becomes: the product as large choices, then its size.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::{self, Verdict};
use hindsaddle_model::units::{Length, Mass};
use yew::prelude::*;

use super::controls::{Choosable, segments, stepper};
use crate::text::{self, Units};
use crate::views::sizes;

/// One part of a muscle, to be decided.
pub(super) struct Part {
    /// Whose part.
    pub muscle: Muscle,
    /// What it becomes now.
    pub cut: Cut,
    /// A name for the group of choices, one for each part on the page.
    pub name: AttrValue,
    /// The reader's units.
    pub units: Units,
    /// Told the new cut.
    pub on_cut: Callback<Cut>,
}

/// The editor.
pub(super) fn part_editor(part: &Part) -> Html {
    html! {
        <>
            <fieldset class="choices">
                <legend>{ text::WHAT_BECOMES }</legend>
                { for Product::ALL.into_iter().map(|product| becomes(part, Some(product))) }
                { becomes(part, None) }
            </fieldset>
            { size(part) }
        </>
    }
}

fn becomes(part: &Part, product: Option<Product>) -> Html {
    let verdict = product.map_or(Verdict::Allowed(None), |product| rules::verdict(part.muscle, product));
    let impossible = matches!(verdict, Verdict::Impossible(_));
    let label = product.map_or(text::DISCARD, text::product);
    let id = product.map_or("discard", Product::id);
    let mark = product.map_or(text::DISCARD_MARK, text::product_mark);
    let on_choose = {
        let on_cut = part.on_cut.clone();
        Callback::from(move |_: Event| on_cut.emit(product.map_or(Cut::Discard, Cut::usual)))
    };
    html! {
        <label key={id} class={classes!("choice", format!("is-{id}"), impossible.then_some("impossible"))}>
            <input type="radio" name={part.name.clone()} checked={part.cut.product() == product} disabled={impossible} onchange={on_choose} />
            <span class="choice-mark" aria-hidden="true">{ mark }</span>
            <span>{ label }</span>
            if let Verdict::Discouraged(_) = verdict { <span class="choice-note">{ text::POOR }</span> }
            if impossible { <span class="choice-note">{ text::NOT_POSSIBLE }</span> }
        </label>
    }
}

fn size(part: &Part) -> Html {
    let (cut, units) = (part.cut, part.units);
    let on_step = {
        let on_cut = part.on_cut.clone();
        Callback::from(move |by: i32| on_cut.emit(sizes::step(cut, by, units)))
    };
    let sized =
        |label: &'static str, value: String| stepper(label, value, &on_step, (text::LESS, text::MORE));
    match cut {
        Cut::Steak(thick) | Cut::Chop(thick) => sized(text::THICKNESS, text::length(thick, units)),
        Cut::Stew(edge) => sized(text::CUBE, text::length(edge, units)),
        Cut::Roast(size) => html! {
            <>
                { roast_size(part, size) }
                { match size {
                    RoastSize::Whole => Html::default(),
                    RoastSize::Weight(weight) => sized(text::EACH_WEIGHS, text::mass(weight, units)),
                    RoastSize::Length(length) => sized(text::EACH_IS_LONG, text::length(length, units)),
                } }
            </>
        },
        Cut::Grind | Cut::Discard => Html::default(),
    }
}

fn roast_size(part: &Part, size: RoastSize) -> Html {
    let options = vec![
        Choosable::new(text::ROAST_WHOLE),
        Choosable::new(text::ROAST_WEIGHT),
        Choosable::new(text::ROAST_LENGTH),
    ];
    let chosen = match size {
        RoastSize::Whole => 0,
        RoastSize::Weight(_) => 1,
        RoastSize::Length(_) => 2,
    };
    let on_choose = part.on_cut.reform(move |place: usize| {
        Cut::Roast(match place {
            0 => RoastSize::Whole,
            1 => RoastSize::Weight(Mass::grams(1130.0)),
            // Common practice, no source: roasts of 8 to 10 in.
            _ => RoastSize::Length(Length::inches(8.0)),
        })
    });
    segments(text::ROAST_SIZE, options, Some(chosen), &on_choose)
}
