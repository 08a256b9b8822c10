//! How many eat, and how each product is divided into packages.

use hindsaddle_model::packing::{Appetite, MOST_PEOPLE, PackBy, Packing};
use hindsaddle_model::plan::Action;
use hindsaddle_model::product::Product;
use hindsaddle_model::units::Mass;
use yew::prelude::*;

use super::controls::{Choosable, choice, choice_of, stepper};
use super::still::{Still, still};
use crate::store::{Msg, State};
use crate::text::{self, Units};
use crate::views::explain::pack_rule;

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
pub fn packing_card(state: &State, send: &Callback<Msg>) -> Html {
    let (packing, units) = (*state.plan.packing(), state.units);
    still(text::PACKING, Card { packing, units, send: send.clone() })
}

#[derive(PartialEq)]
struct Card {
    packing: Packing,
    units: Units,
    send: Callback<Msg>,
}

impl Still for Card {
    fn draw(&self) -> Html {
        let (packing, units) = (self.packing, self.units);
        let on_people = {
            let send = self.send.clone();
            Callback::from(move |by: i32| {
                let people = (i32::from(packing.people) + by).clamp(1, i32::from(MOST_PEOPLE)) as u8;
                send.emit(Msg::Act(Action::SetTable { people, appetite: packing.appetite }));
            })
        };
        let on_appetite = {
            let send = self.send.clone();
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
                        let send = self.send.clone();
                        let on_choose = Callback::from(move |place: usize| {
                            send.emit(Msg::Act(Action::SetPack { product, by: rules[place] }));
                        });
                        html! { <key={product.id()}>{ choice(text::packed(text::product(product)), options, chosen, &on_choose) }</> }
                    }) }
                </div>
            </details>
        }
    }
}
