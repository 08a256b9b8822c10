//! A weight on its way into the plan: what is typed, what it changes, and the question if it is hard to believe.

use std::num::NonZeroU8;

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::plan::Action;
use hindsaddle_model::product::Product;
use hindsaddle_model::scale::{OnScale, Weighing};
use yew::prelude::*;

use super::{PartProps, button, field};
use crate::components::controls::{Choosable, choice};
use crate::platform::storage;
use crate::store::Msg;
use crate::text;
use crate::views::scale::{entry, key, of_muscle};

/// What a box is for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Weighs {
    /// A muscle, on one side or both.
    Muscle(Muscle),
    /// The tub.
    Tub,
    /// All boneless meat.
    Lot,
    /// Finished packages.
    Packages,
}

/// Properties of [`WeighBox`].
#[derive(Clone, PartialEq, Properties)]
pub(super) struct WeighBoxProps {
    /// Of its part of the page.
    pub part: PartProps,
    /// What it is for.
    pub weighs: Weighs,
}

const SIDES: [Sides; 3] = [Sides::Both, Sides::One(Side::Left), Sides::One(Side::Right)];

/// The box.
#[component]
pub(super) fn WeighBox(props: &WeighBoxProps) -> Html {
    let sides = use_state(|| 0_usize);
    let product = use_state(|| 0_usize);
    let count = use_state(String::new);
    let wrong = use_state(|| None::<(String, &'static str)>);
    let part = &props.part;
    let (plan, units) = (&part.state.plan, part.state.units);
    let products: Vec<Product> = Product::ALL
        .into_iter()
        .filter(|product| part.packed().packages.iter().any(|package| package.product == *product))
        .collect();
    let target = match props.weighs {
        Weighs::Muscle(muscle) => Some(OnScale::Muscle(muscle, SIDES[*sides])),
        Weighs::Tub => Some(OnScale::Tub),
        Weighs::Lot => Some(OnScale::Lot),
        Weighs::Packages => products
            .get(*product)
            .map(|product| OnScale::Packages(*product, text::typed(&count).and_then(whole))),
    };
    let Some(target) = target else { return Html::default() };
    let weighed = plan.weighings().iter().find(|weighing| weighing.target == target);
    let value = match &*wrong {
        Some((typed, _)) => typed.clone(),
        None => weighed.map(|weighing| text::weight(weighing.mass, units)).unwrap_or_default(),
    };
    let on_weight = {
        let (send, wrong, count) = (part.send.clone(), wrong.clone(), count.clone());
        Callback::from(move |typed: String| {
            let is_counted = count.is_empty() || text::typed(&count).and_then(whole).is_some();
            let mass = text::typed_weight(&typed, units);
            if mass.is_none() && !typed.trim().is_empty() {
                wrong.set(Some((typed, text::NOT_A_WEIGHT)));
            } else if !is_counted {
                wrong.set(Some((typed, text::NOT_A_COUNT)));
            } else {
                wrong.set(None);
                send.emit(Msg::Act(Action::Weigh { target, mass }));
            }
        })
    };
    let choose = |state: &UseStateHandle<usize>| {
        let (state, wrong) = (state.clone(), wrong.clone());
        Callback::from(move |place: usize| {
            wrong.set(None);
            state.set(place);
        })
    };
    let on_count = {
        let (count, wrong) = (count.clone(), wrong.clone());
        Callback::from(move |typed: String| {
            wrong.set(None);
            count.set(typed.trim().to_owned());
        })
    };
    let label = match props.weighs {
        Weighs::Muscle(_) => text::WEIGHED_NOW,
        Weighs::Packages => text::THEY_WEIGH,
        Weighs::Tub => text::TUB,
        Weighs::Lot => text::LOT,
    };
    html! {
        <div class="weigh">
            <div class="fields">
                if props.weighs == Weighs::Packages {
                    { choice(text::WHICH_PACKAGES, products.iter().map(|product| Choosable::new(text::product(*product))).collect::<Vec<_>>(), Some(*product), &choose(&product)) }
                    { field(text::HOW_MANY, "number", (*count).clone(), "", &on_count) }
                }
                // Keyed, so that nothing typed for another side or product stays behind.
                <span key={*sides + 3 * *product}>{ field(label, "text", value.clone(), text::weight_unit(units), &on_weight) }</span>
                if matches!(props.weighs, Weighs::Muscle(_)) {
                    { choice(text::WHICH_SIDES, SIDES.map(|sides| Choosable::new(text::sides(sides))).to_vec(), Some(*sides), &choose(&sides)) }
                }
            </div>
            if matches!(props.weighs, Weighs::Muscle(_)) { <p class="hint">{ text::WEIGH_HINT }</p> }
            <div aria-live="polite">
                if let Some((_, why)) = &*wrong { <p class="wrong">{ *why }</p> }
                { for entries(props, target).into_iter().map(|weighing| html! { <Said key={key(weighing)} part={part.clone()} {weighing} /> }) }
            </div>
        </div>
    }
}

/// A whole number of packages.
fn whole(number: f64) -> Option<NonZeroU8> {
    let is_whole = number.fract() == 0.0 && number >= 1.0 && number <= f64::from(u8::MAX);
    NonZeroU8::new(number as u8).filter(|_| is_whole)
}

/// The weights that a box shows.
fn entries(props: &WeighBoxProps, target: OnScale) -> Vec<Weighing> {
    let plan = &props.part.state.plan;
    match props.weighs {
        Weighs::Muscle(muscle) => of_muscle(plan, muscle),
        Weighs::Tub | Weighs::Lot | Weighs::Packages => {
            plan.weighings().iter().copied().filter(|weighing| weighing.target == target).collect()
        }
    }
}

/// Properties of [`Said`].
#[derive(Clone, PartialEq, Properties)]
struct SaidProps {
    part: PartProps,
    weighing: Weighing,
}

/// Whether the reader was asked about a weight, by its [`key`], and keeps it.
pub(super) fn is_sure(key: &str) -> bool {
    storage::read_for_now(storage::SURE).unwrap_or_default().lines().any(|line| line == key)
}

/// A weight with what it changes, its question, and the way to take it back.
#[component]
fn Said(props: &SaidProps) -> Html {
    let (part, weighing) = (&props.part, props.weighing);
    let sure = use_state(|| is_sure(&key(weighing)));
    let state = &part.state;
    let entry = use_memo((state.plan.clone(), weighing, state.units), |(plan, weighing, units)| {
        entry(plan, (&state.forecast, part.packed()), *weighing, *units)
    });
    let take_back = part
        .send
        .reform(move |_: MouseEvent| Msg::Act(Action::Weigh { target: weighing.target, mass: None }));
    let keep = {
        let sure = sure.clone();
        Callback::from(move |_: MouseEvent| {
            let before = storage::read_for_now(storage::SURE).unwrap_or_default();
            storage::write_for_now(storage::SURE, &format!("{before}{}\n", key(weighing)));
            sure.set(true);
        })
    };
    let question = entry.question.clone().filter(|_| !*sure);
    html! {
        <div class="weighed">
            <p><b>{ &entry.said }</b></p>
            if let Some(question) = question {
                <p class="caution">{ question }</p>
                { button(text::KEEP, keep) }
            } else {
                <p class="hint">{ &entry.changed }</p>
            }
            <button type="button" class="tool" aria-label={text::named(text::TAKE_BACK, &entry.said)} onclick={take_back}>{ text::TAKE_BACK }</button>
        </div>
    }
}
