//! How many eat, and how each product is divided into packages.

use hindsaddle_model::packing::{Appetite, MOST_PEOPLE, PackBy, Packing};
use hindsaddle_model::plan::Action;
use hindsaddle_model::product::Product;
use hindsaddle_model::units::Mass;
use yew::prelude::*;

use super::controls::{Choosable, choice, choice_of, stepper};
use crate::store::Msg;
use crate::text::{self, Units};
use crate::views::explain::pack_rule;

/// Properties of [`PackingCard`].
#[derive(PartialEq, Properties)]
pub struct PackingCardProps {
    /// The rules.
    pub packing: Packing,
    /// The reader's units.
    pub units: Units,
    /// Told what happens.
    pub send: Callback<Msg>,
}

/// The rules offered for a product, and its own if it came by link and is another.
fn rules(product: Product, units: Units, own: PackBy) -> Vec<PackBy> {
    let weights: [Mass; 4] = match units {
        Units::Pounds => {
            [1.0, 1.5, 2.0, 3.0].map(|pounds| Mass::grams((Mass::pounds(pounds).to_grams()).round()))
        }
        Units::Kilograms => [500.0, 750.0, 1000.0, 1500.0].map(Mass::grams),
    };
    let mut rules = vec![PackBy::Table];
    if !matches!(product, Product::Stew | Product::Grind) {
        rules.extend([1, 2, 3, 4, 6, 8].map(PackBy::Pieces));
    }
    rules.extend(weights.map(PackBy::Weight));
    if !rules.contains(&own) {
        rules.push(own);
    }
    rules
}

/// The card.
#[component]
pub fn PackingCard(props: &PackingCardProps) -> Html {
    let (packing, units) = (props.packing, props.units);
    let on_people = {
        let send = props.send.clone();
        Callback::from(move |by: i32| {
            let people = (i32::from(packing.people) + by).clamp(1, i32::from(MOST_PEOPLE)) as u8;
            send.emit(Msg::Act(Action::SetTable { people, appetite: packing.appetite }));
        })
    };
    let on_appetite = {
        let send = props.send.clone();
        Callback::from(move |appetite: Appetite| {
            send.emit(Msg::Act(Action::SetTable { people: packing.people, appetite }));
        })
    };
    html! {
        <details class="card">
            <summary>{ text::PACKING }</summary>
            <div class="fields">
                { stepper(text::PEOPLE, packing.people.to_string(), &on_people, (text::LESS, text::MORE)) }
                { choice_of(text::APPETITE, &Appetite::ALL, text::appetite, packing.appetite, &on_appetite) }
                { for Product::ALL.into_iter().map(|product| {
                    let own = packing.rule(product);
                    let rules = rules(product, units, own);
                    let options = rules.iter().map(|rule| Choosable::new(pack_rule(*rule, units))).collect::<Vec<_>>();
                    let chosen = rules.iter().position(|rule| *rule == own);
                    let send = props.send.clone();
                    let on_choose = Callback::from(move |place: usize| {
                        send.emit(Msg::Act(Action::SetPack { product, by: rules[place] }));
                    });
                    html! { <key={product.id()}>{ choice(text::packed(text::product(product)), options, chosen, &on_choose) }</> }
                }) }
            </div>
        </details>
    }
}
