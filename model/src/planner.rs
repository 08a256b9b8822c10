//! Plans backwards: from wishes to the best assignment of the muscles.
//!
//! Every taken muscle may become any product that the rules and the demands allow, each side for itself. What each
//! of that gives is read off forecasts, so what is promised is what the tally then shows. Costs are grams times a
//! misfit of a few points, all judgement: a missing gram of a wish costs [`assignment::SHORT`], one too many
//! [`assignment::OVER`]; a muscle put to its usual use costs nothing, to a poor use more, and more the more tender
//! it is. So wishes come first, then the best use of tender meat, then little knife work.

pub mod assignment;

use crate::anatomy::{Muscle, Side, Sides};
use crate::forecast::{Forecast, forecast};
use crate::plan::{Action, Plan};
use crate::product::{Cut, Product};
use crate::rules::{self, Verdict};
use crate::tables;
use crate::units::Mass;
use crate::wishes::{Demand, Wish};
use assignment::{Choice, Found, Problem, Search};

/// Points for a gram of a muscle that wants care in this use, of a poor use, and for each step of tenderness lost.
const CARE: i64 = 1;
const POOR: i64 = 10;
/// Points for every piece the knife makes, and for sides that are cut differently.
const PIECE: i64 = 2;
const UNEVEN: i64 = 100;

/// What one muscle is to become: left and right, or what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Use {
    Keep,
    Sides([Product; 2]),
}

/// Why a muscle is to become what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// It was to stay as it is.
    Kept,
    /// It was demanded.
    Demanded(Demand),
    /// Its usual, best use.
    BestUse,
    /// A wish needs it.
    Wished(Product),
    /// Of its usual product there is enough, or none is wished.
    Enough(Product),
    /// Less knife work, or a better use than its usual one is barred.
    Otherwise,
}

/// One muscle of a proposal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Proposed {
    /// Which muscle.
    pub muscle: Muscle,
    /// What left and right become; None where it stays as it is.
    pub sides: Option<[Product; 2]>,
    /// Why.
    pub why: Why,
}

/// What keeps a wish from being met.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lack {
    /// No muscle is left that can become it.
    NothingLeft,
    /// More of it would be more knife work than is wanted.
    KnifeWork,
    /// Other wishes and demands have what is left.
    OtherWishes,
}

/// A wish that is not met.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unmet {
    /// Of what.
    pub product: Product,
    /// How much is missing.
    pub missing: Mass,
    /// The same in dinners.
    pub dinners: f64,
    /// Why.
    pub lack: Lack,
}

/// The best that was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// The plan with it.
    pub plan: Plan,
    /// Muscle by muscle, those that are taken.
    pub muscles: Vec<Proposed>,
    /// What is not met, by more than a twentieth of a dinner.
    pub unmet: Vec<Unmet>,
    /// How the search went.
    pub found: Found,
}

/// Demands that no cutting meets within the knife work that is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooMuchWork {
    /// The least that they take.
    pub least: u32,
}

/// A search for the best plan, in steps.
#[derive(Clone, Debug)]
pub struct Planner {
    plan: Plan,
    muscles: Vec<Muscle>,
    uses: Vec<Vec<Use>>,
    problem: Problem,
    search: Search,
}

/// Branches that are looked into at most before the planner is content with what it has.
pub const MOST_NODES: u64 = 2_000_000;

impl Planner {
    /// A search for the best way to meet the plan's wishes.
    ///
    /// # Errors
    /// Demands that take more knife work than is wanted.
    pub fn new(plan: &Plan) -> Result<Self, TooMuchWork> {
        let all = Product::ALL.map(|product| all_as(plan, product));
        let now = forecast(plan);
        let table = plan.packing().table();
        let take_home = now.take_home.likely();
        let mut problem = Problem {
            targets: Product::ALL.map(|product| match plan.wishes().wish(product) {
                Wish::Rest => None,
                Wish::Dinners(dinners) => Some(grams(table * f64::from(dinners))),
                Wish::Share(percent) => Some(grams(take_home * (f64::from(percent) / 100.0))),
            }),
            most_work: plan.wishes().most_knife_work.map(i64::from),
            ..Problem::default()
        };
        let (mut muscles, mut uses) = (Vec::new(), Vec::new());
        for muscle in Muscle::ALL.into_iter().filter(|muscle| plan.is_recovered(*muscle)) {
            let ways = ways(plan, muscle, &all);
            problem.groups.push(ways.iter().map(|way| choice(muscle, *way, &all, &now)).collect());
            muscles.push(muscle);
            uses.push(ways);
        }
        let least: i64 =
            problem.groups.iter().filter_map(|group| group.iter().map(|choice| choice.work).min()).sum();
        if problem.most_work.is_some_and(|most| least > most) {
            return Err(TooMuchWork { least: least as u32 });
        }
        Ok(Self { plan: plan.clone(), muscles, uses, search: Search::new(problem.clone()), problem })
    }

    /// Looks into so many branches more.
    pub fn step(&mut self, nodes: u64) -> Found {
        self.search.step(nodes)
    }

    /// Whether there is nothing more to do: proven, or [`MOST_NODES`] looked into.
    pub fn is_done(&self) -> bool {
        let found = self.search.found();
        found.is_proven || found.nodes >= MOST_NODES
    }

    /// The best that is found by now.
    pub fn proposal(&self) -> Proposal {
        let found = self.search.found();
        let mut plan = self.plan.clone();
        let mut muscles = Vec::new();
        let chosen = found.best.clone().unwrap_or_default();
        for ((muscle, uses), place) in self.muscles.iter().zip(&self.uses).zip(&chosen) {
            let used = uses[*place];
            if let Use::Sides(products) = used {
                for (side, product) in Side::ALL.into_iter().zip(products) {
                    let cut = cut_as(&self.plan, *muscle, side, product);
                    let action = Action::Assign { muscle: *muscle, sides: Sides::One(side), cut };
                    // What was refused is no option.
                    if let Ok(applied) = plan.apply(action) {
                        plan = applied.plan;
                    }
                }
            }
            let sides = match used {
                Use::Keep => None,
                Use::Sides(products) => Some(products),
            };
            muscles.push(Proposed { muscle: *muscle, sides, why: self.why(*muscle, used) });
        }
        Proposal { unmet: self.unmet(&chosen), plan, muscles, found }
    }

    fn why(&self, muscle: Muscle, used: Use) -> Why {
        let wishes = self.plan.wishes();
        let Use::Sides(products) = used else { return Why::Kept };
        let usual = tables::muscle(muscle).usual;
        if let Some(demand) = wishes.demands_on(muscle).find(|demand| demand.product().is_some()) {
            return Why::Demanded(demand);
        }
        if products == [usual; 2] {
            return Why::BestUse;
        }
        let other = if products[0] == usual { products[1] } else { products[0] };
        if let Some(demand) = wishes.demands_on(muscle).find(|demand| !demand.allows(usual)) {
            return Why::Demanded(demand);
        }
        if !matches!(wishes.wish(other), Wish::Rest | Wish::Dinners(0) | Wish::Share(0)) {
            return Why::Wished(other);
        }
        match wishes.wish(usual) {
            Wish::Dinners(_) | Wish::Share(_) => Why::Enough(usual),
            Wish::Rest => Why::Otherwise,
        }
    }

    fn unmet(&self, chosen: &[usize]) -> Vec<Unmet> {
        let choices: Vec<&Choice> =
            self.problem.groups.iter().zip(chosen).map(|(group, place)| &group[*place]).collect();
        let work: i64 = choices.iter().map(|choice| choice.work).sum();
        let table = self.plan.packing().table();
        let mut unmet = Vec::new();
        for product in Product::ALL {
            let given: i64 = choices.iter().map(|choice| choice.amounts[product as usize]).sum();
            let Some(target) = self.problem.targets[product as usize] else { continue };
            let missing = Mass::grams((target - given) as f64);
            let dinners = missing / table;
            if dinners <= 0.05 {
                continue;
            }
            // Whether another use of some muscle would give more of it.
            let mut more = self.problem.groups.iter().zip(&choices).flat_map(|(group, now)| {
                group
                    .iter()
                    .filter(|other| other.amounts[product as usize] > now.amounts[product as usize])
                    .map(|other| other.work - now.work)
            });
            let least = more.next().map(|first| more.fold(first, i64::min));
            let lack = match (least, self.problem.most_work) {
                (None, _) => Lack::NothingLeft,
                (Some(extra), Some(most)) if work + extra > most => Lack::KnifeWork,
                (Some(_), _) => Lack::OtherWishes,
            };
            unmet.push(Unmet { product, missing, dinners, lack });
        }
        unmet
    }
}

fn grams(mass: Mass) -> i64 {
    mass.to_grams().round() as i64
}

/// The cut of a product: the plan's own where the whole side is that product already, else the usual one.
fn cut_as(plan: &Plan, muscle: Muscle, side: Side, product: Product) -> Cut {
    if product == Product::Roast && plan.wishes().demands_on(muscle).any(|demand| demand == Demand::Whole) {
        return Cut::Roast(crate::product::RoastSize::Whole);
    }
    let own = plan.division(muscle, side).single().filter(|cut| cut.product() == Some(product));
    own.unwrap_or(Cut::usual(product))
}

/// Every muscle as one product, where that is possible, and what it gives.
fn all_as(plan: &Plan, product: Product) -> ([bool; Muscle::COUNT], Forecast) {
    let mut all = plan.clone();
    let mut possible = [false; Muscle::COUNT];
    for muscle in Muscle::ALL {
        let mut both = all.clone();
        possible[muscle.index()] = Side::ALL.into_iter().all(|side| {
            let cut = cut_as(plan, muscle, side, product);
            match both.apply(Action::Assign { muscle, sides: Sides::One(side), cut }) {
                Ok(applied) => both = applied.plan,
                Err(_) => return false,
            }
            true
        });
        if possible[muscle.index()] {
            all = both;
        }
    }
    (possible, forecast(&all))
}

/// What a muscle may become.
fn ways(plan: &Plan, muscle: Muscle, all: &[([bool; Muscle::COUNT], Forecast); 5]) -> Vec<Use> {
    let wishes = plan.wishes();
    let allowed: Vec<Product> = Product::ALL
        .into_iter()
        .filter(|product| all[*product as usize].0[muscle.index()] && wishes.allow(muscle, *product))
        .collect();
    if wishes.keep(muscle) || allowed.is_empty() {
        return vec![Use::Keep];
    }
    // Both sides weigh the same; only wounds and a plan's own uneven sizes tell them apart.
    let sides_differ = all.iter().any(|(_, forecast)| {
        let [left, right] = &forecast.muscles[muscle.index()].sides;
        left != right
    });
    let mut ways = Vec::new();
    for (place, first) in allowed.iter().enumerate() {
        for second in &allowed[if sides_differ { 0 } else { place }..] {
            ways.push(Use::Sides([*first, *second]));
        }
    }
    ways
}

/// What a use costs and gives.
fn choice(muscle: Muscle, used: Use, all: &[([bool; Muscle::COUNT], Forecast); 5], now: &Forecast) -> Choice {
    let mut choice = Choice::default();
    for side in Side::ALL {
        let forecast = match used {
            Use::Keep => now,
            Use::Sides(products) => &all[products[side.index()] as usize].1,
        };
        for part in &forecast.muscles[muscle.index()].sides[side.index()] {
            let (mass, tub) = (grams(part.pieces.mass), grams(part.pieces.tub));
            choice.amounts[Product::Grind as usize] += tub;
            let Some(product) = part.cut.product() else { continue };
            choice.amounts[product as usize] += mass;
            if matches!(product, Product::Roast | Product::Steak | Product::Chop) {
                choice.work += i64::from(part.pieces.count);
            }
            choice.cost += misfit(muscle, product) * (mass + tub) / 10;
        }
    }
    if let Use::Sides([left, right]) = used
        && left != right
    {
        choice.cost += UNEVEN;
    }
    choice.cost += choice.work * PIECE;
    // A muscle that is kept was wanted so, whatever it costs.
    if used == Use::Keep { Choice { cost: 0, ..choice } } else { choice }
}

/// Points for ten grams: 0 for the usual use, more for one that wants care or is poor, and for slow wet heat and
/// the grinder more the more tender the muscle is. Judgement.
fn misfit(muscle: Muscle, product: Product) -> i64 {
    let row = tables::muscle(muscle);
    if product == row.usual {
        return 0;
    }
    let verdict = match rules::verdict(muscle, product) {
        Verdict::Allowed(None) => 0,
        Verdict::Allowed(Some(_)) => CARE,
        Verdict::Discouraged(_) | Verdict::Impossible(_) => POOR,
    };
    let tender = i64::from(row.tenderness);
    let heat = match product {
        Product::Steak | Product::Chop => 5 - tender,
        Product::Roast => 1,
        Product::Stew => tender,
        Product::Grind => 1 + 2 * tender,
    };
    verdict + 1 + heat
}
