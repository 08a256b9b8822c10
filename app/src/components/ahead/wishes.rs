//! Planning backwards: what is wished, the best plan for it beside the one there is, and why.

use std::rc::Rc;

use gloo::timers::callback::Timeout;
use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::plan::Action;
use hindsaddle_model::planner::{Planner, Proposal, TooMuchWork};
use hindsaddle_model::product::Product;
use hindsaddle_model::season::Change;
use hindsaddle_model::wishes::{Demand, Wish, Wishes};
use yew::prelude::*;

use super::PartProps;
use super::compare::table;
use crate::components::controls::{Choosable, choice};
use crate::components::field::field;
use crate::store::Msg;
use crate::text;

/// Branches looked into between two moments in which the page answers.
const SLICE: u64 = 20_000;

/// How far planning is.
#[derive(Clone)]
enum Work {
    Nothing,
    Busy(Box<Planner>),
    Refused(TooMuchWork),
    Done(Rc<Proposal>),
}

/// The card.
#[component]
pub(super) fn WishesCard(props: &PartProps) -> Html {
    let plan = &props.state.plan;
    let work = use_state(|| Work::Nothing);
    {
        // A slice at a time, so that the page stays awake.
        let work = work.clone();
        use_effect(move || {
            let next = match &*work {
                Work::Busy(planner) => {
                    let mut planner = planner.clone();
                    Some(Timeout::new(0, move || {
                        planner.step(SLICE);
                        work.set(if planner.is_done() {
                            Work::Done(Rc::new(planner.proposal()))
                        } else {
                            Work::Busy(planner)
                        });
                    }))
                }
                Work::Nothing | Work::Refused(_) | Work::Done(_) => None,
            };
            move || drop(next)
        });
    }
    {
        // A proposal is for the wishes and the animal it was asked for.
        let work = work.clone();
        use_effect_with(plan.clone(), move |_| work.set(Work::Nothing));
    }
    let on_plan = {
        let (work, plan) = (work.clone(), plan.clone());
        Callback::from(move |_: MouseEvent| {
            work.set(match Planner::new(&plan) {
                Ok(planner) => Work::Busy(Box::new(planner)),
                Err(error) => Work::Refused(error),
            });
        })
    };
    let wishes = plan.wishes();
    let set = on_wishes(props);
    let example = {
        let set = set.clone();
        Callback::from(move |_: MouseEvent| set.emit(example()))
    };
    html! {
        <>
            <section class="card" aria-label={text::WISHES}>
                <h2>{ text::WISHES }</h2>
                <p>{ text::dinner(plan.packing().people, &text::mass(plan.packing().table(), props.state.units)) }</p>
                if *wishes == Wishes::default() {
                    <p>{ text::NO_WISHES }</p>
                    <button type="button" class="tool wide" onclick={example}>{ text::EXAMPLE_WISHES }</button>
                }
                <div class="fields wishes">{ for Product::ALL.map(|product| wish(wishes, product, &set)) }</div>
                { demands(wishes, &set) }
                { field(text::MOST_PIECES, "number", wishes.most_knife_work.map(|most| most.to_string()).unwrap_or_default(), "", &knife_work(wishes, &set)) }
                <button type="button" class="tool wide main-action" disabled={matches!(*work, Work::Busy(_))} onclick={on_plan}>{ text::PLAN_WISHES }</button>
            </section>
            { match &*work {
                Work::Nothing => Html::default(),
                Work::Busy(planner) => html! { <p role="status">{ text::planning(planner.proposal().found.nodes) }</p> },
                Work::Refused(error) => html! { <p class="caution" role="alert">{ text::too_much_work(error.least) }</p> },
                Work::Done(proposal) => {
                    let work = work.clone();
                    answer(props, proposal, &Callback::from(move |_: MouseEvent| work.set(Work::Nothing)))
                },
            } }
        </>
    }
}

/// Four friends, invented.
fn example() -> Wishes {
    let mut wishes = Wishes::default();
    wishes.by[Product::Roast as usize] = Wish::Dinners(8);
    wishes.by[Product::Grind as usize] = Wish::Dinners(20);
    wishes.demands =
        vec![(Muscle::Backstrap, Demand::Never(Product::Grind)), (Muscle::Tenderloin, Demand::Whole)];
    wishes
}

fn on_wishes(props: &PartProps) -> Callback<Wishes> {
    props.send.reform(|wishes: Wishes| Msg::Act(Action::SetWishes(Box::new(wishes))))
}

/// How much of a product.
fn wish(wishes: &Wishes, product: Product, set: &Callback<Wishes>) -> Html {
    let now = wishes.wish(product);
    let changed = {
        let (wishes, set) = (wishes.clone(), set.clone());
        move |wish: Wish| {
            let mut wishes = wishes.clone();
            wishes.by[product as usize] = wish;
            set.emit(wishes);
        }
    };
    let on_kind = {
        let changed = changed.clone();
        Callback::from(move |kind: usize| {
            changed([Wish::Rest, Wish::Dinners(4), Wish::Share(20), Wish::Dinners(0)][kind]);
        })
    };
    let on_number = Callback::from(move |typed: String| {
        if let Some(number) = text::typed(&typed) {
            let number = number.max(0.0).min(9999.0) as u16;
            changed(match now {
                Wish::Share(_) => Wish::Share(number.min(101) as u8),
                Wish::Rest | Wish::Dinners(_) => Wish::Dinners(number),
            });
        }
    });
    let (kind, number) = match now {
        Wish::Rest => (0, None),
        Wish::Dinners(0) => (3, None),
        Wish::Dinners(dinners) => (1, Some((text::WISH_KINDS[1], u32::from(dinners), ""))),
        Wish::Share(percent) => (2, Some((text::WISH_KINDS[2], u32::from(percent), "%"))),
    };
    let options = text::WISH_KINDS.map(Choosable::new).to_vec();
    html! {
        <div key={product.id()} class="wrap-choice">
            { choice(text::product(product), options, Some(kind), &on_kind) }
            if let Some((name, number, unit)) = number { { field(text::product_wish(product, name), "number", number.to_string(), unit, &on_number) } }
        </div>
    }
}

/// What muscles must and must not become.
fn demands(wishes: &Wishes, set: &Callback<Wishes>) -> Html {
    let changed = |change: &dyn Fn(&mut Wishes)| {
        let mut wishes = wishes.clone();
        change(&mut wishes);
        wishes
    };
    let row = |(place, (muscle, demand)): (usize, &(Muscle, Demand))| {
        let (set, less) = (
            set.clone(),
            changed(&|wishes| {
                wishes.demands.remove(place);
            }),
        );
        let says = text::demand_on(*muscle, *demand);
        html! { <li key={says.clone()}>{ &says }{ " " }<button type="button" class="tool" aria-label={text::of_animal(text::REMOVE, &says)} onclick={move |_| set.emit(less.clone())}>{ text::REMOVE }</button></li> }
    };
    let options: Vec<Choosable> = std::iter::once(Choosable::new(text::NEW_DEMAND))
        .chain(Muscle::ALL.into_iter().map(|muscle| Choosable::new(text::muscle(muscle))))
        .collect();
    html! {
        <>
            <h3>{ text::DEMANDS }</h3>
            <ul class="plain-list demands">{ for wishes.demands.iter().enumerate().map(row) }</ul>
            <NewDemand {options} wishes={wishes.clone()} set={set.clone()} />
        </>
    }
}

#[derive(PartialEq, Properties)]
struct NewDemandProps {
    options: Vec<Choosable>,
    wishes: Wishes,
    set: Callback<Wishes>,
}

/// A muscle, then what it must be.
#[component]
fn NewDemand(props: &NewDemandProps) -> Html {
    let muscle = use_state(|| 0_usize);
    let on_muscle = {
        let muscle = muscle.clone();
        Callback::from(move |place: usize| muscle.set(place))
    };
    let chosen = muscle.checked_sub(1).and_then(|place| Muscle::ALL.get(place).copied());
    let on_demand = {
        let (muscle, wishes, set) = (muscle.clone(), props.wishes.clone(), props.set.clone());
        Callback::from(move |place: usize| {
            if let (Some(of), Some(demand)) =
                (chosen, place.checked_sub(1).and_then(|place| Demand::ALL.get(place)))
            {
                let mut wishes = wishes.clone();
                wishes.demands.push((of, *demand));
                set.emit(wishes);
                muscle.set(0);
            }
        })
    };
    let demands: Vec<Choosable> = std::iter::once(Choosable::new(text::WHICH_DEMAND))
        .chain(Demand::ALL.into_iter().map(|demand| Choosable::new(text::demand(demand))))
        .collect();
    html! {
        <div class="fields">
            { choice(text::DEMAND_MUSCLE, props.options.clone(), Some(*muscle), &on_muscle) }
            if chosen.is_some() { { choice(text::DEMAND_WHAT, demands, Some(0), &on_demand) } }
        </div>
    }
}

fn knife_work(wishes: &Wishes, set: &Callback<Wishes>) -> Callback<String> {
    let (wishes, set) = (wishes.clone(), set.clone());
    Callback::from(move |typed: String| {
        let most_knife_work = text::typed(&typed).map(|number| number.max(0.0).min(9999.0) as u16);
        set.emit(Wishes { most_knife_work, ..wishes.clone() });
    })
}

/// The best plan that was found, beside the one there is.
fn answer(props: &PartProps, proposal: &Rc<Proposal>, on_leave: &Callback<MouseEvent>) -> Html {
    let (state, units) = (&props.state, props.state.units);
    let on_use = {
        let (proposal, at) = (proposal.clone(), state.at);
        props
            .send
            .reform(move |_: MouseEvent| Msg::Season(Change::TakeCuts(at, Box::new(proposal.plan.clone()))))
    };
    let (now, then) =
        ((text::AS_IT_IS.to_owned(), &*state.plan), (text::AS_WISHED.to_owned(), &proposal.plan));
    let gives = forecast(&proposal.plan);
    html! {
        <section class="card" aria-label={text::PROPOSAL}>
            <h2>{ text::PROPOSAL }</h2>
            <p role="status">{ text::tally(&gives, units) }</p>
            { for proposal.unmet.iter().map(|unmet| html! { <p key={unmet.product.id()} class="caution">{ text::unmet(unmet, units) }</p> }) }
            if proposal.unmet.is_empty() { <p>{ text::ALL_MET }</p> }
            <p class="hint">{ text::how_sure(&proposal.found, units) }</p>
            <div class="row-tools">
                <button type="button" class="tool main-action" onclick={on_use}>{ text::USE_PROPOSAL }</button>
                <button type="button" class="tool" onclick={on_leave}>{ text::LEAVE_PROPOSAL }</button>
            </div>
            { table(props, [&now, &then]) }
            <h3>{ text::WHY_SO }</h3>
            <ul class="plain-list">
                { for proposal.muscles.iter().map(|row| html! { <li key={row.muscle.id()}>{ text::proposed(row) }</li> }) }
            </ul>
        </section>
    }
}
