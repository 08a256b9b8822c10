//! The tub to the grinder: what is added, in which batches, in what packs.

use hindsaddle_model::fat::{Added, FatContent, NamedFat};
use hindsaddle_model::grind::{Mix, Patty, Price, Target, Vessel};
use hindsaddle_model::tables::{BURGER_FAT, SAUSAGE_FAT};
use hindsaddle_model::units::Mass;
use yew::prelude::*;

use super::{PartProps, field};
use crate::caution::Caution;
use crate::components::controls::{Choosable, choice};
use crate::text::{self, Units};
use crate::views::kitchen::ground;

/// What pork trim holds until its seller's figure is typed: judgement.
const TRIM: FatContent = FatContent::percent(50.0);

fn target_of(mix: Mix, usual: f64) -> Target {
    mix.target()
        .unwrap_or(Target { fat: FatContent::percent(usual), added: Added::Fat(NamedFat::PorkBackFat) })
}

/// The mix at a place of [`text::MIXES`], keeping the target there was.
fn mix_at(place: usize, now: Mix) -> Mix {
    match place {
        1 => Mix::Burger(target_of(now, BURGER_FAT.spread.likely())),
        2 => Mix::SausageLean(Some(target_of(now, SAUSAGE_FAT.spread.likely()))),
        3 => Mix::SausageLean(None),
        _ => Mix::Plain,
    }
}

fn with_target(mix: Mix, change: impl Fn(&mut Target)) -> Mix {
    let changed = |mut target: Target| {
        change(&mut target);
        target
    };
    match mix {
        Mix::Burger(target) => Mix::Burger(changed(target)),
        Mix::SausageLean(Some(target)) => Mix::SausageLean(Some(changed(target))),
        Mix::Plain | Mix::SausageLean(None) => mix,
    }
}

/// The card.
#[component]
pub(super) fn Grinder(props: &PartProps) -> Html {
    let price = use_state(String::new);
    let (plan, units) = (&props.state.plan, props.state.units);
    let grinder = plan.kitchen().grinder;
    let mixes = text::MIXES.map(Choosable::new).to_vec();
    let on_mix = props.on(|kitchen, place: usize| kitchen.grinder.mix = mix_at(place, kitchen.grinder.mix));
    let on_vessel = props.on(move |kitchen, typed: String| {
        if let Some(number) = text::typed(&typed) {
            kitchen.grinder.vessel = Vessel::Takes(text::typed_mass(number, units));
        }
    });
    let packs: Vec<Choosable> = std::iter::once(Choosable::new(text::BY_WEIGHT))
        .chain(Patty::ALL.map(|patty| Choosable::new(text::patty(patty))))
        .collect();
    let packed_as = match grinder.patties {
        None => 0,
        Some((patty, _)) => 1 + patty as usize,
    };
    let on_packs = props.on(|kitchen, place: usize| {
        let a_pack = kitchen.grinder.patties.map_or(4, |(_, a_pack)| a_pack);
        kitchen.grinder.patties = place.checked_sub(1).map(|place| (Patty::ALL[place], a_pack));
    });
    let on_a_pack = props.on(|kitchen, typed: String| {
        if let (Some((_, a_pack)), Some(number)) = (&mut kitchen.grinder.patties, text::typed(&typed)) {
            *a_pack = number.max(0.0).min(200.0) as u8;
        }
    });
    let on_price = {
        let price = price.clone();
        Callback::from(move |typed: String| price.set(typed))
    };
    html! {
        <section class="card" aria-label={text::GRINDER}>
            <h2>{ text::GRINDER }</h2>
            <div class="fields">
                { choice(text::MIX, mixes, Some(text::mix_place(grinder.mix)), &on_mix) }
                { target(props, grinder.mix) }
                { field(text::VESSEL, "number", text::weight_field(grinder.vessel.most(), units), text::weight_unit(units), &on_vessel) }
                { choice(text::GROUND_PACKS, packs, Some(packed_as), &on_packs) }
                if let Some((_, a_pack)) = grinder.patties { { field(text::PATTIES_A_PACK, "number", a_pack.to_string(), "", &on_a_pack) } }
                if grinder.mix.target().is_some() { { field(text::PRICE, "number", (*price).clone(), text::price_unit(units), &on_price) } }
            </div>
            { result(props, &price) }
            <p class="caution">{ text::GRIND_CAUTION }</p>
            <p class="hint">{ text::caution(Caution::Cooking).1 }</p>
            <p class="hint">{ text::NO_CURE }</p>
        </section>
    }
}

fn target(props: &PartProps, mix: Mix) -> Html {
    let Some(target) = mix.target() else { return Html::default() };
    let percent = |content: FatContent| text::one_decimal(content.to_percent());
    let on_fat = props.on(|kitchen, typed: String| {
        if let Some(number) = text::typed(&typed) {
            kitchen.grinder.mix =
                with_target(kitchen.grinder.mix, |target| target.fat = FatContent::percent(number));
        }
    });
    let on_added = props.on(|kitchen, place: usize| {
        let added = match place {
            0 => Added::Fat(NamedFat::PorkBackFat),
            1 => Added::Fat(NamedFat::BeefFat),
            _ => Added::PorkTrim(TRIM),
        };
        kitchen.grinder.mix = with_target(kitchen.grinder.mix, |target| target.added = added);
    });
    let on_trim = props.on(|kitchen, typed: String| {
        if let Some(number) = text::typed(&typed) {
            let added = Added::PorkTrim(FatContent::percent(number));
            kitchen.grinder.mix = with_target(kitchen.grinder.mix, |target| target.added = added);
        }
    });
    html! {
        <>
            { field(text::TARGET_FAT, "number", percent(target.fat), "%", &on_fat) }
            { choice(text::ADDED_FAT, text::FATS.map(Choosable::new).to_vec(), Some(text::added_place(target.added)), &on_added) }
            if let Added::PorkTrim(content) = target.added { { field(text::TRIM_FAT, "number", percent(content), "%", &on_trim) } }
        </>
    }
}

fn result(props: &PartProps, price: &str) -> Html {
    let (plan, units) = (&props.state.plan, props.state.units);
    let price = text::typed(price).map(|amount| match units {
        Units::Pounds => Price::per_pound(amount),
        Units::Kilograms => Price::per_kilogram(amount),
    });
    let grinding = plan.kitchen().grinder.grinding(plan.packing(), price);
    let ground = match ground(&props.state.forecast, &grinding) {
        Ok(ground) => ground,
        Err(error) => {
            return html! { <p class="caution" role="alert">{ text::grind_error(&error, units) }</p> };
        }
    };
    let what = grinding.mix.target().map(|target| text::FATS[text::added_place(target.added)]);
    let batch = ground.batches.first().copied();
    let packs = ground.packages().len();
    html! {
        <div aria-live="polite">
            <h3>{ text::GRIND_RESULT }</h3>
            <p class="answer">{ text::mixed(ground.lean, ground.added, what.filter(|_| ground.added > Mass::ZERO), ground.fat, units) }</p>
            if let Some(batch) = batch { <p>{ text::batches(ground.batches.len(), batch.lean, batch.added, units) }</p> }
            <p>{ text::plates(ground.plates) }</p>
            <p>{ text::ground_packs(packs, ground.left, units) }</p>
            if let Some(cost) = ground.cost { <p>{ text::cost(cost.amount()) }</p> }
            if ground.is_fatty { <p class="caution">{ text::FATTY }</p> }
        </div>
    }
}
