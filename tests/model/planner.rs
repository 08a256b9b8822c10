//! From wishes to a plan, on real animals.

use hindsaddle_model::anatomy::{Muscle, Side};
use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species, Weighed};
use hindsaddle_model::forecast::forecast;
use hindsaddle_model::link::Names;
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::planner::{Lack, MOST_NODES, Planner, Proposal, TooMuchWork, Why};
use hindsaddle_model::product::Product;
use hindsaddle_model::rules::{self, Refusal, Verdict};
use hindsaddle_model::wishes::{Demand, Wish, WishError, Wishes};
use hindsaddle_tests::{read, with, write};

fn animal(species: Species) -> Plan {
    let animal = Animal::new(species, Sex::Buck, Age::Adult, Condition::Ordinary, Weighed::Typical);
    Plan::new(animal.unwrap())
}

/// Eight roast dinners, twenty burger nights, the rest steaks and stew; never grind the backstrap.
fn family() -> Wishes {
    let mut wishes = Wishes::default();
    wishes.by[Product::Roast as usize] = Wish::Dinners(8);
    wishes.by[Product::Grind as usize] = Wish::Dinners(20);
    wishes.by[Product::Chop as usize] = Wish::Dinners(0);
    wishes.demands = vec![
        (Muscle::Backstrap, Demand::Never(Product::Grind)),
        (Muscle::Tenderloin, Demand::Whole),
        (Muscle::Neck, Demand::Must(Product::Roast)),
    ];
    wishes
}

fn wishing(plan: &Plan, wishes: Wishes) -> Plan {
    with(plan, Action::SetWishes(Box::new(wishes)))
}

fn proposed(plan: &Plan) -> Proposal {
    let mut planner = Planner::new(plan).unwrap();
    while !planner.is_done() {
        planner.step(5000);
    }
    planner.proposal()
}

/// Dinners of a product as the tally of the plan has them: its weight over that of a meal for the table.
fn dinners(plan: &Plan, product: Product) -> f64 {
    forecast(plan).tallies[product as usize].mass.likely() / plan.packing().table()
}

#[test]
fn a_family_gets_its_dinners_of_an_elk_and_is_told_what_a_deer_cannot_give() {
    let elk = proposed(&wishing(&animal(Species::Elk), family()));
    assert!(elk.found.is_proven && elk.unmet.is_empty(), "{:?} {:?}", elk.found, elk.unmet);
    assert!(dinners(&elk.plan, Product::Roast) >= 7.9, "{}", dinners(&elk.plan, Product::Roast));
    assert!(dinners(&elk.plan, Product::Grind) >= 19.9, "{}", dinners(&elk.plan, Product::Grind));
    let roe = proposed(&wishing(&animal(Species::Roe), family()));
    assert!(roe.found.is_proven);
    assert!(!roe.unmet.is_empty());
    for unmet in &roe.unmet {
        let had = dinners(&roe.plan, unmet.product);
        let wished = if unmet.product == Product::Roast { 8.0 } else { 20.0 };
        assert!((had + unmet.dinners - wished).abs() < 0.02, "{had} and {}", unmet.dinners);
    }
    for proposal in [&elk, &roe] {
        let backstrap = proposal.plan.division(Muscle::Backstrap, Side::Left).single().unwrap();
        assert_ne!(backstrap.product(), Some(Product::Grind));
        let neck = proposal.muscles.iter().find(|row| row.muscle == Muscle::Neck).unwrap();
        assert_eq!(neck.why, Why::Demanded(Demand::Must(Product::Roast)));
    }
}

/// What is promised is what the tally shows, no rule is broken, and nothing but the cuts is changed.
#[test]
fn a_proposal_keeps_the_rules_and_every_demand() {
    for species in Species::ALL {
        let plan = wishing(&animal(species), family());
        let proposal = proposed(&plan);
        assert!(proposal.found.is_proven || proposal.found.nodes >= MOST_NODES, "{species:?}");
        for muscle in Muscle::ALL {
            for side in Side::ALL {
                let cut = proposal.plan.division(muscle, side).single().unwrap();
                let product = cut.product().unwrap();
                assert!(!matches!(rules::verdict(muscle, product), Verdict::Impossible(_)));
                if plan.is_recovered(muscle) {
                    assert!(plan.wishes().allow(muscle, product), "{species:?} {muscle:?} {product:?}");
                }
            }
        }
        assert_eq!(plan.cut_like(&proposal.plan), proposal.plan);
    }
}

/// With no wishes at all every muscle goes to its usual use.
#[test]
fn without_wishes_the_best_plan_is_the_usual_one() {
    let plan = animal(Species::WhiteTailed);
    let proposal = proposed(&plan);
    assert_eq!(proposal.plan, plan);
    assert!(proposal.muscles.iter().all(|row| row.why == Why::BestUse));
}

#[test]
fn more_than_there_is_says_why_it_cannot_be() {
    let mut wishes = Wishes::default();
    wishes.by[Product::Chop as usize] = Wish::Dinners(90);
    let chops = proposed(&wishing(&animal(Species::WhiteTailed), wishes.clone()));
    assert_eq!(chops.unmet[0].lack, Lack::NothingLeft);
    wishes.most_knife_work = Some(20);
    let lazy = proposed(&wishing(&animal(Species::WhiteTailed), wishes.clone()));
    assert_eq!(lazy.unmet[0].lack, Lack::KnifeWork);
    let pieces: u32 = hindsaddle_model::compare::sketch(&forecast(&lazy.plan)).pieces;
    assert!(pieces <= 20, "{pieces}");
    wishes.most_knife_work = Some(1);
    wishes.demands = vec![(Muscle::Backstrap, Demand::Must(Product::Chop))];
    let refused = Planner::new(&wishing(&animal(Species::WhiteTailed), wishes)).unwrap_err();
    assert!(matches!(refused, TooMuchWork { least } if least > 1));
}

#[test]
fn wishes_that_cannot_be_are_named() {
    let refused = |change: &dyn Fn(&mut Wishes)| {
        let mut wishes = Wishes::default();
        change(&mut wishes);
        match animal(Species::WhiteTailed).apply(Action::SetWishes(Box::new(wishes))) {
            Err(Refusal::Wishes(error)) => error,
            other => panic!("{other:?}"),
        }
    };
    let both = [Demand::Must(Product::Roast), Demand::Never(Product::Roast)];
    assert_eq!(
        refused(&|wishes| wishes.demands = both.map(|demand| (Muscle::Tenderloin, demand)).to_vec()),
        WishError::Contradiction { muscle: Muscle::Tenderloin, one: both[0], other: both[1] }
    );
    assert_eq!(
        refused(&|wishes| {
            wishes.by[0] = Wish::Share(60);
            wishes.by[1] = Wish::Share(50);
        }),
        WishError::SharesOverAll { total: 110 }
    );
    assert!(matches!(
        refused(&|wishes| wishes.demands = vec![(Muscle::Neck, Demand::Must(Product::Chop))]),
        WishError::Impossible { muscle: Muscle::Neck, product: Product::Chop, .. }
    ));
    assert!(matches!(
        refused(&|wishes| wishes.by[4] = Wish::Dinners(5000)),
        WishError::TooManyDinners { .. }
    ));
    assert!(matches!(
        refused(&|wishes| {
            wishes.by[0] = Wish::Dinners(0);
            wishes.demands = vec![(Muscle::Neck, Demand::Must(Product::Roast))];
        }),
        WishError::NoneOfIt { muscle: Muscle::Neck, .. }
    ));
}

#[test]
fn wishes_travel_with_the_plan() {
    let mut wishes = family();
    wishes.by[Product::Stew as usize] = Wish::Share(17);
    wishes.most_knife_work = Some(120);
    let plan = wishing(&animal(Species::Red), wishes);
    let text = write(&plan, Names::LeftOut);
    assert_eq!(read(&text), Ok(plan));
    assert!(text.len() < 100, "{}", text.len());
}
