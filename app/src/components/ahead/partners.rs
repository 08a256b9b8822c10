//! Who shares the meat, what they asked for, and who gets which package.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::deal::{Deal, deal};
use hindsaddle_model::partners::{Claim, FEWEST_PARTNERS, MOST_PARTNERS, Partner, Partners};
use hindsaddle_model::product::Product;
use hindsaddle_model::rules::Refusal;
use hindsaddle_model::season::Change;
use hindsaddle_model::units::Mass;
use yew::prelude::*;

use super::PartProps;
use crate::components::controls::{Choosable, choice};
use crate::components::field::field;
use crate::platform::{address, clipboard};
use crate::store::{Msg, Notice};
use crate::text;
use crate::views::kitchen::{Packed, all_packed, counted, packages_of};

/// Everyone and their claims, before they are checked.
type Typed = (Vec<Partner>, Vec<Claim>);

/// A callback that checks what was typed; what cannot be is said and changes nothing.
fn on_typed(props: &PartProps) -> Callback<Typed> {
    props.send.reform(|(partners, claims): Typed| match Partners::checked(partners, claims) {
        Ok(partners) => Msg::Season(Change::SetPartners(partners)),
        Err(error) => Msg::Say(Notice::Refused(Refusal::Partners(error))),
    })
}

fn typed(partners: &Partners) -> Typed {
    (partners.all().to_vec(), partners.claims().to_vec())
}

fn nameless(parts: u16) -> Partner {
    Partner { name: String::new(), parts }
}

/// Invented.
fn example() -> Typed {
    let partner = |name: &str, parts| Partner { name: name.to_owned(), parts };
    (vec![partner("Ann", 2), partner("Bo", 1)], vec![Claim { muscle: Muscle::Tenderloin, partner: 0 }])
}

/// The card.
#[component]
pub(super) fn PartnersCard(props: &PartProps) -> Html {
    let partners = props.state.season.partners();
    let set = on_typed(props);
    let press = |name: &'static str, typed: Typed| {
        let set = set.clone();
        html! { <button type="button" class="tool" onclick={move |_| set.emit(typed.clone())}>{ name }</button> }
    };
    let (all, claims) = typed(partners);
    let more = {
        let mut all = all.clone();
        all.push(nameless(all.last().map_or(1, |last| last.parts)));
        (all, claims.clone())
    };
    let equal = (all.iter().map(|partner| Partner { parts: 1, ..partner.clone() }).collect(), claims);
    html! {
        <>
            <section class="card" aria-label={text::PARTNERS}>
                <h2>{ text::PARTNERS }</h2>
                if partners.is_empty() {
                    <p>{ text::NOBODY_SHARES }</p>
                    <div class="row-tools">
                        { press(text::SHARE_BY_TWO, (vec![nameless(1), nameless(1)], Vec::new())) }
                        { press(text::EXAMPLE_PARTNERS, example()) }
                    </div>
                } else {
                    <p>{ text::shares(partners) }</p>
                    <ul class="animals-list">{ for (0..all.len()).map(|place| one(partners, place, &set)) }</ul>
                    <div class="row-tools">
                        if all.len() < MOST_PARTNERS { { press(text::ADD_PARTNER, more) } }
                        { press(text::EQUAL_SHARES, equal) }
                        { press(text::NOBODY, Typed::default()) }
                    </div>
                    { claimed(partners, &set) }
                }
            </section>
            if !partners.is_empty() { <Dealt ..props.clone() /> }
        </>
    }
}

/// One partner.
fn one(partners: &Partners, place: usize, set: &Callback<Typed>) -> Html {
    let name = text::partner(partners, place as u8);
    let changed = |change: fn(&mut Partner, String)| {
        let (now, set) = (typed(partners), set.clone());
        Callback::from(move |says: String| {
            let (mut all, claims) = now.clone();
            change(&mut all[place], says);
            set.emit((all, claims));
        })
    };
    let on_name = changed(|partner, says| partner.name = says);
    // What is no number is no part, which is refused with its reason.
    let on_parts = changed(|partner, says| {
        partner.parts = text::typed(&says).map_or(0, |number| number.max(0.0).min(60_000.0).round() as u16);
    });
    let less = {
        let (mut all, mut claims) = typed(partners);
        all.remove(place);
        claims.retain(|claim| usize::from(claim.partner) != place);
        for claim in claims.iter_mut().filter(|claim| usize::from(claim.partner) > place) {
            claim.partner -= 1;
        }
        (all, claims)
    };
    let on_less = {
        let set = set.clone();
        move |_: MouseEvent| set.emit(less.clone())
    };
    let partner = &partners.all()[place];
    html! {
        <li key={place} class="season-animal">
            <div class="fields">
                { field(text::of_animal(text::PARTNER_NAME, &text::nth_partner(place)), "text", partner.name.clone(), "", &on_name) }
                { field(text::of_animal(text::PARTNER_PARTS, &text::nth_partner(place)), "number", partner.parts.to_string(), "", &on_parts) }
            </div>
            if partners.all().len() > FEWEST_PARTNERS {
                <div class="row-tools"><button type="button" class="tool" aria-label={text::of_animal(text::REMOVE, &name)} onclick={on_less}>{ text::REMOVE }</button></div>
            }
        </li>
    }
}

/// The claims, and one more.
fn claimed(partners: &Partners, set: &Callback<Typed>) -> Html {
    let row = |(place, claim): (usize, &Claim)| {
        let says = text::claim(partners, *claim);
        let (mut less, set) = (typed(partners), set.clone());
        less.1.remove(place);
        html! { <li key={says.clone()}>{ &says }{ " " }<button type="button" class="tool" aria-label={text::of_animal(text::REMOVE, &says)} onclick={move |_| set.emit(less.clone())}>{ text::REMOVE }</button></li> }
    };
    html! {
        <>
            <h3>{ text::CLAIMS }</h3>
            <ul class="plain-list">{ for partners.claims().iter().enumerate().map(row) }</ul>
            <NewClaim partners={partners.clone()} set={set.clone()} />
        </>
    }
}

#[derive(PartialEq, Properties)]
struct NewClaimProps {
    partners: Partners,
    set: Callback<Typed>,
}

/// A muscle, then who asks for it.
#[component]
fn NewClaim(props: &NewClaimProps) -> Html {
    let muscle = use_state(|| 0_usize);
    let on_muscle = {
        let muscle = muscle.clone();
        Callback::from(move |place: usize| muscle.set(place))
    };
    let chosen = muscle.checked_sub(1).and_then(|place| Muscle::ALL.get(place).copied());
    let on_partner = {
        let (now, set, muscle) = (typed(&props.partners), props.set.clone(), muscle.clone());
        Callback::from(move |place: usize| {
            if let (Some(of), Some(partner)) = (chosen, place.checked_sub(1)) {
                let (all, mut claims) = now.clone();
                claims.push(Claim { muscle: of, partner: partner as u8 });
                set.emit((all, claims));
                muscle.set(0);
            }
        })
    };
    let first = |name: &'static str| std::iter::once(Choosable::new(name));
    let muscles: Vec<Choosable> = first(text::NEW_DEMAND)
        .chain(Muscle::ALL.into_iter().map(|muscle| Choosable::new(text::muscle(muscle))))
        .collect();
    let partners = first(text::WHICH_DEMAND)
        .chain(
            (0..props.partners.all().len())
                .map(|place| Choosable::new(text::partner(&props.partners, place as u8))),
        )
        .collect::<Vec<_>>();
    html! {
        <div class="fields">
            { choice(text::DEMAND_MUSCLE, muscles, Some(*muscle), &on_muscle) }
            if chosen.is_some() { { choice(text::DEAL_HEAD[0], partners, Some(0), &on_partner) } }
        </div>
    }
}

/// The packages dealt.
#[component]
fn Dealt(props: &PartProps) -> Html {
    let dealt = use_memo(props.state.season.clone(), |season| {
        let all = all_packed(season);
        let dealt = deal(&packages_of(&all), season.partners());
        (all, dealt)
    });
    let (all, Some(deal)) = &*dealt else { return Html::default() };
    let (partners, units) = (props.state.season.partners(), props.state.units);
    html! {
        <section class="card" aria-label={text::DEAL}>
            <h2>{ text::DEAL }</h2>
            if let Some(worst) = deal.worst() { <p>{ text::worst(partners, &worst, units) }</p> }
            <p class="hint">{ text::deal_proof(deal, units) }</p>
            <table class="plain">
                <thead><tr>{ for text::DEAL_HEAD.iter().map(|head| html! { <th key={*head} scope="col">{ *head }</th> }) }</tr></thead>
                <tbody>{ for deal.hands.iter().zip(0_u8..).map(|(hand, place)| html! {
                    <tr key={place}>
                        <th scope="row">{ text::partner(partners, place) }</th>
                        <td>{ hand.total.packages }</td>
                        <td>{ text::mass(hand.total.got, units) }</td>
                        <td>{ text::mass(hand.total.due, units) }</td>
                    </tr>
                }) }</tbody>
            </table>
            { for (0..partners.all().len() as u8).map(|place| list(props, all, deal, place)) }
        </section>
    }
}

/// One partner's packages, to read and to send.
fn list(props: &PartProps, all: &[Packed], deal: &Deal, place: u8) -> Html {
    let (state, name) = (&props.state, text::partner(props.state.season.partners(), place));
    let packages =
        counted(all).flat_map(|packed| packed.packages.iter().map(move |package| (packed, package)));
    let lines: Vec<String> = packages
        .zip(&deal.owners)
        .filter(|(_, owner)| **owner == place)
        .map(|((packed, package), _)| text::summary_line(package, packed.name.as_deref(), state.units))
        .collect();
    let words = text::summary(&name, &lines, &address::of_plan(&state.link()));
    let send = props.send.clone();
    let on_copy = move |_: MouseEvent| {
        let send = send.clone();
        clipboard::copy(&words, move |copied| {
            send.emit(Msg::Say(if copied { Notice::Copied } else { Notice::NotCopied }));
        });
    };
    html! {
        <details key={place}>
            <summary><b>{ &name }</b>{ ": " }{ text::packages_count(lines.len() as u32) }</summary>
            <p>{ for Product::ALL.into_iter().zip(deal.hands[usize::from(place)].of).filter(|(_, lot)| lot.due > Mass::grams(1.0)).map(|(product, lot)| html! {
                <span key={product.id()} class="each">{ text::lot(product, &text::mass(lot.got, state.units), &text::mass(lot.due, state.units)) }</span>
            }) }</p>
            <ul class="plain-list">{ for lines.iter().enumerate().map(|(place, line)| html! { <li key={place}>{ line }</li> }) }</ul>
            <button type="button" class="tool" aria-label={text::of_animal(text::COPY_SUMMARY, &name)} onclick={on_copy}>{ text::COPY_SUMMARY }</button>
        </details>
    }
}
