//! Exact choice of one option for each group: the cheapest by whole-number costs, where amounts that the options
//! give are to come near targets and a limit holds. It knows nothing of deer.
//!
//! Cost of a choice: the options' own costs, and for each amount with a target [`SHORT`] for every unit that is
//! missing and [`OVER`] for every unit too many. Branch and bound, depth first. A branch is cut by the larger of
//! two bounds. One is Lagrangian: each target gets a price, found once by subgradients, so that what is left is the
//! cheapest option of each group by itself. The other asks how near to its target an amount can still come. Both
//! are exact in whole numbers, so what is cut is proven to hold nothing cheaper.

use crate::short;

/// Cost of a unit that is missing from a target.
pub const SHORT: i64 = 30;
/// Cost of a unit beyond a target.
pub const OVER: i64 = 2;
/// How many amounts there are.
pub const AMOUNTS: usize = 5;

/// One way for a group.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Choice {
    /// Its own cost.
    pub cost: i64,
    /// What it gives of each amount.
    pub amounts: [i64; AMOUNTS],
    /// What it takes of the limit.
    pub work: i64,
}

/// A problem. Groups are not empty.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Problem {
    /// The options of each group.
    pub groups: Vec<Vec<Choice>>,
    /// What is wanted of each amount; None where any amount will do.
    pub targets: [Option<i64>; AMOUNTS],
    /// The most work of all choices together.
    pub most_work: Option<i64>,
}

impl Problem {
    /// What a choice of options costs, by their places in the groups; None if it is too much work.
    pub fn cost(&self, chosen: &[usize]) -> Option<i64> {
        let mut all = Level::default();
        for (group, place) in self.groups.iter().zip(chosen) {
            all.take(&group[*place]);
        }
        if self.most_work.is_some_and(|most| all.work > most) {
            return None;
        }
        let amounts = self.targets.iter().zip(all.amounts);
        Some(all.cost + amounts.map(|(target, amount)| missed(*target, amount, amount)).sum::<i64>())
    }
}

/// The least cost of missing a target with an amount somewhere between `least` and `most`.
fn missed(target: Option<i64>, least: i64, most: i64) -> i64 {
    match target {
        Some(target) if most < target => (target - most) * SHORT,
        Some(target) if least > target => (least - target) * OVER,
        Some(_) | None => 0,
    }
}

/// Prices are multiples of one part in so many.
const GRAIN: i64 = 64;
/// Rounds of the subgradient method. More find no better prices on problems of this size.
const ROUNDS: u32 = 400;

/// How far a search has come.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// The best choice so far, by places in the groups; None if every choice is too much work, or none was found
    /// yet.
    pub best: Option<Vec<usize>>,
    /// What it costs.
    pub cost: i64,
    /// No choice costs less than this.
    pub bound: i64,
    /// Branches that were looked into.
    pub nodes: u64,
    /// Whether the search is through: the best is the best there is.
    pub is_proven: bool,
}

/// A search that can be taken in steps.
#[derive(Clone, Debug)]
pub struct Search {
    problem: Problem,
    /// The groups in the order they are decided, largest first.
    order: Vec<usize>,
    /// For each of them its options' places, cheapest by the prices first, with their priced costs in grains.
    priced: Vec<Vec<(usize, i64)>>,
    /// What the groups from each depth on cost and give at least and at most.
    rest: Vec<Rest>,
    /// What the targets take off by their prices, in grains.
    fixed: i64,
    /// Where the search stands: the next option of each decided depth.
    stack: Vec<Level>,
    best: Option<Vec<usize>>,
    cost: i64,
    nodes: u64,
}

#[derive(Clone, Copy, Debug, Default)]
struct Rest {
    priced: i64,
    cost: i64,
    work: i64,
    least: [i64; AMOUNTS],
    most: [i64; AMOUNTS],
}

#[derive(Clone, Copy, Debug, Default)]
struct Level {
    next: usize,
    priced: i64,
    cost: i64,
    work: i64,
    amounts: [i64; AMOUNTS],
}

impl Level {
    fn take(&mut self, choice: &Choice) {
        self.cost += choice.cost;
        self.work += choice.work;
        for (amount, more) in self.amounts.iter_mut().zip(choice.amounts) {
            *amount += more;
        }
    }
}

/// Prices of the amounts and of work, in grains.
#[derive(Clone, Copy, Debug, Default)]
struct Prices {
    amounts: [i64; AMOUNTS],
    work: i64,
}

impl Prices {
    fn of(&self, choice: &Choice) -> i64 {
        let amounts: i64 =
            self.amounts.iter().zip(choice.amounts).map(|(price, amount)| price * amount).sum();
        choice.cost * GRAIN + amounts + self.work * choice.work
    }

    /// What is taken off for the targets and the limit.
    fn fixed(&self, problem: &Problem) -> i64 {
        let targets: i64 =
            self.amounts.iter().zip(problem.targets).map(|(price, target)| price * target.unwrap_or(0)).sum();
        -targets - self.work * problem.most_work.unwrap_or(0)
    }
}

impl Search {
    /// A search that has not begun.
    pub fn new(problem: Problem) -> Self {
        let (paid, start) = prices(&problem);
        let size = |group: &usize| {
            let all = problem.groups[*group].iter();
            all.map(|choice| choice.amounts.iter().sum::<i64>()).max().unwrap_or(0)
        };
        let mut order: Vec<usize> = (0..problem.groups.len()).collect();
        short::sort(&mut order, |one, other| size(one) > size(other));
        let priced: Vec<Vec<(usize, i64)>> = order
            .iter()
            .map(|group| {
                let mut options: Vec<(usize, i64)> =
                    problem.groups[*group].iter().map(|choice| paid.of(choice)).enumerate().collect();
                short::sort(&mut options, |one, other| one.1 < other.1);
                options
            })
            .collect();
        let rest = rest(&problem, &order, &priced);
        let cost = start.as_ref().and_then(|start| problem.cost(start)).unwrap_or(i64::MAX);
        let fixed = paid.fixed(&problem);
        let stack = vec![Level::default()];
        let mut search = Self { problem, order, priced, rest, fixed, stack, best: start, cost, nodes: 0 };
        search.improve();
        search
    }

    /// Looks into so many branches more.
    pub fn step(&mut self, nodes: u64) -> Found {
        let until = self.nodes.saturating_add(nodes);
        while self.nodes < until && !self.stack.is_empty() {
            self.advance();
        }
        self.found()
    }

    /// The next branch.
    fn advance(&mut self) {
        let depth = self.stack.len() - 1;
        let level = self.stack[depth];
        if depth == self.order.len() {
            self.leaf();
            return;
        }
        let Some((place, priced)) = self.priced[depth].get(level.next).copied() else {
            self.stack.pop();
            return;
        };
        self.nodes += 1;
        self.stack[depth].next += 1;
        // Options come cheapest first, so when one is cut by the prices, so are all behind it.
        if self.by_prices(level.priced + priced, depth + 1) >= self.cost {
            self.stack.pop();
            return;
        }
        let choice = self.problem.groups[self.order[depth]][place];
        let mut next = Level { next: 0, priced: level.priced + priced, ..level };
        next.take(&choice);
        if self.by_reach(&next, depth + 1) < self.cost {
            self.stack.push(next);
        }
    }

    /// No way to finish from here costs less, by the prices.
    fn by_prices(&self, priced: i64, depth: usize) -> i64 {
        let grains = priced + self.rest[depth].priced + self.fixed;
        // Costs are whole, so the bound may be rounded up.
        grains.div_euclid(GRAIN) + i64::from(grains.rem_euclid(GRAIN) > 0)
    }

    /// No way to finish from here costs less, by what can still be reached; more than anything if the work cannot
    /// be done.
    fn by_reach(&self, level: &Level, depth: usize) -> i64 {
        let rest = &self.rest[depth];
        if self.problem.most_work.is_some_and(|most| level.work + rest.work > most) {
            return i64::MAX;
        }
        let mut cost = level.cost + rest.cost;
        for amount in 0..AMOUNTS {
            let (least, most) = (rest.least[amount], rest.most[amount]);
            let have = level.amounts[amount];
            cost += missed(self.problem.targets[amount], have + least, have + most);
        }
        cost
    }

    fn leaf(&mut self) {
        self.stack.pop();
        let mut chosen = vec![0; self.order.len()];
        for (depth, level) in self.stack.iter().enumerate() {
            chosen[self.order[depth]] = self.priced[depth][level.next - 1].0;
        }
        if let Some(cost) = self.problem.cost(&chosen)
            && cost < self.cost
        {
            (self.cost, self.best) = (cost, Some(chosen));
        }
    }

    /// Makes the start better by changing one group or two at a time, so that the search has less to prove.
    fn improve(&mut self) {
        let Some(mut best) = self.best.clone() else { return };
        let groups = self.problem.groups.len();
        let mut is_better = true;
        while is_better {
            is_better = false;
            for one in 0..groups {
                for other in one..groups {
                    is_better |= self.exchange(&mut best, one, other);
                }
            }
        }
        self.best = Some(best);
    }

    /// The best options of two groups while the others stay.
    fn exchange(&mut self, best: &mut [usize], one: usize, other: usize) -> bool {
        let before = self.cost;
        let mut others = Level::default();
        for (group, place) in best.iter().enumerate().filter(|(group, _)| *group != one && *group != other) {
            others.take(&self.problem.groups[group][*place]);
        }
        for first in 0..self.problem.groups[one].len() {
            let mut with_first = others;
            with_first.take(&self.problem.groups[one][first]);
            let second_too = if one == other { 1 } else { self.problem.groups[other].len() };
            for second in 0..second_too {
                let mut all = with_first;
                if one != other {
                    all.take(&self.problem.groups[other][second]);
                }
                let cost = self.by_reach(&all, self.order.len());
                if cost < self.cost {
                    self.cost = cost;
                    best[one] = first;
                    if one != other {
                        best[other] = second;
                    }
                }
            }
        }
        self.cost < before
    }

    /// What is found by now.
    pub fn found(&self) -> Found {
        let mut bound = self.cost;
        for (depth, level) in self.stack.iter().enumerate() {
            // The cheapest option of this depth that was not looked into yet.
            let open = self.priced.get(depth).and_then(|options| options.get(level.next));
            if let Some((_, priced)) = open {
                bound = bound.min(self.by_prices(level.priced + priced, depth + 1));
            } else if depth == self.order.len() {
                bound = bound.min(self.by_reach(level, depth));
            }
        }
        Found {
            best: self.best.clone(),
            cost: self.cost,
            bound,
            nodes: self.nodes,
            is_proven: self.stack.is_empty() || bound >= self.cost,
        }
    }
}

/// What the groups from each depth on cost and give.
fn rest(problem: &Problem, order: &[usize], priced: &[Vec<(usize, i64)>]) -> Vec<Rest> {
    let mut rest = vec![Rest::default(); order.len() + 1];
    for depth in (0..order.len()).rev() {
        let group = &problem.groups[order[depth]];
        let mut here = rest[depth + 1];
        here.priced += priced[depth].first().map_or(0, |option| option.1);
        here.cost += group.iter().map(|choice| choice.cost).min().unwrap_or(0);
        here.work += group.iter().map(|choice| choice.work).min().unwrap_or(0);
        for amount in 0..AMOUNTS {
            here.least[amount] += group.iter().map(|choice| choice.amounts[amount]).min().unwrap_or(0);
            here.most[amount] += group.iter().map(|choice| choice.amounts[amount]).max().unwrap_or(0);
        }
        rest[depth] = here;
    }
    rest
}

/// The cheapest choice by prices, and its cost in grains.
fn cheapest(problem: &Problem, prices: &Prices) -> (Vec<usize>, i64) {
    let mut total = 0;
    let chosen = problem
        .groups
        .iter()
        .map(|group| {
            let (mut best, mut cost) = (0, i64::MAX);
            for (place, choice) in group.iter().enumerate() {
                let grains = prices.of(choice);
                if grains < cost {
                    (best, cost) = (place, grains);
                }
            }
            total += cost;
            best
        })
        .collect();
    (chosen, total)
}

/// Good prices by subgradients, and the best choice that was met on the way. Sums and products of `f64` are the
/// same on every device.
fn prices(problem: &Problem) -> (Prices, Option<Vec<usize>>) {
    let mut now = [0.0; AMOUNTS + 1];
    let (mut best, mut bound) = (Prices::default(), i64::MIN);
    let (mut start, mut cost) = (None, i64::MAX);
    let mut try_start = |chosen: Vec<usize>| {
        if let Some(less) = problem.cost(&chosen).filter(|found| *found < cost) {
            (start, cost) = (Some(chosen), less);
        }
        cost
    };
    // The least work, in case every other choice is too much.
    try_start(problem.groups.iter().map(|group| least_work(group)).collect());
    for round in 0..ROUNDS {
        let grains = now.map(|price: f64| (price * GRAIN as f64).round() as i64);
        let [roast, steak, chop, stew, grind, work] = grains;
        let tried = Prices { amounts: [roast, steak, chop, stew, grind], work };
        let (chosen, total) = cheapest(problem, &tried);
        let below = total + tried.fixed(problem);
        if below > bound {
            (best, bound) = (tried, below);
        }
        let slope = slope(problem, &chosen);
        let upper = try_start(chosen);
        let length: f64 = slope.iter().map(|part| part * part).sum();
        if length <= 0.0 {
            break;
        }
        let gap = if upper == i64::MAX { FAR } else { (upper as f64 - bound as f64 / GRAIN as f64).max(1.0) };
        // Strides shrink as the rounds go by.
        let stride = 1.5 * gap / length / (1.0 + f64::from(round) / 40.0);
        for (price, slope) in now.iter_mut().zip(slope) {
            *price += stride * slope;
        }
        for price in &mut now[..AMOUNTS] {
            // A price beyond these would let a target be missed without end.
            *price = price.max(-(SHORT as f64)).min(OVER as f64);
        }
        now[AMOUNTS] = now[AMOUNTS].max(0.0);
    }
    (best, start)
}

/// A gap to begin with while no choice is known that is not too much work.
const FAR: f64 = 1e5;

fn least_work(group: &[Choice]) -> usize {
    let least = group.iter().map(|choice| choice.work).min();
    group.iter().position(|choice| Some(choice.work) == least).unwrap_or(0)
}

/// How far a choice is beyond each target, and beyond the limit of work.
fn slope(problem: &Problem, chosen: &[usize]) -> [f64; AMOUNTS + 1] {
    let mut all = Level::default();
    for (group, place) in problem.groups.iter().zip(chosen) {
        all.take(&group[*place]);
    }
    let beyond = |have: i64, wanted: Option<i64>| wanted.map_or(0.0, |wanted| (have - wanted) as f64);
    std::array::from_fn(|part| match problem.targets.get(part) {
        Some(target) => beyond(all.amounts[part], *target),
        None => beyond(all.work, problem.most_work),
    })
}
