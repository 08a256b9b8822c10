//! The search for the best deal: branch and bound over how many packages of each stack everyone gets.
//!
//! A product's difference can only be what its packages add up to: that bounds what the packages not yet dealt
//! can mend. Each product is also searched alone first; no deal of all of them is better than those together.

use super::table::{Hands, Row, Score, Stacks, Table};
use crate::short;

/// How many nodes a pass looks at, and a pass over one product alone.
const NODES: u32 = 30_000;
const NODES_ALONE: u32 = 5_000;
/// The first step of the limit between two passes, in grams.
const FIRST_STEP: i64 = 8;

/// The best deal that was found.
pub(super) struct Found {
    /// For each kind of the table, how many everyone gets.
    pub(super) counts: Vec<Vec<u32>>,
    pub(super) score: Score,
    /// No deal is better than this.
    pub(super) least: Score,
}

/// Deals the table.
pub(super) fn search(table: &Table) -> Found {
    let mut search = Search::new(table);
    search.best = search.best.exchanged(&search.stacks);
    let products = search.stacks.groups.iter().map(|group| group.product);
    let mut alone: Vec<Search> = products.map(|product| Search::new(&table.only(product))).collect();
    let floor = alone.iter_mut().map(|one| one.prove_worst(0, NODES_ALONE)).fold(0, i64::max);
    let worst = search.prove_worst(floor, NODES);
    let cap = search.best.score.worst;
    // One product alone is its own total too, which counts its differences twice.
    let sums: Vec<i64> = alone.iter_mut().map(|one| one.prove_sum(cap, 0, NODES_ALONE) / 2).collect();
    search.rest = (1..=sums.len()).map(|behind| sums[behind..].iter().sum()).collect();
    let sum = search.prove_sum(cap, sums.iter().sum(), NODES);
    let mut counts = vec![Vec::new(); table.kinds.len()];
    for (stack, of_stack) in search.stacks.all.iter().zip(&search.best.counts) {
        counts[stack.place].clone_from(of_stack);
    }
    Found { counts, score: search.best.score, least: Score { worst, sum } }
}

/// One stack offered to one partner: how many can still be right, the best last.
struct Offer {
    /// The bound on the sum, how far from even it is, and how many.
    options: Vec<(i64, i64, u32)>,
    taken: u32,
}

/// What can still become of one partner's row.
struct Outlook {
    worst: i64,
    /// Bound on the differences of the row and its total.
    sum: i64,
    /// Bound on those of the groups up to the present one.
    known: i64,
}

struct Search {
    stacks: Stacks,
    /// For each group, the least all differences of the groups behind it can add up to.
    rest: Vec<i64>,
    now: Hands,
    best: Hands,
    /// Deals farther from the shares than this are not looked for.
    limit: Score,
    offers: Vec<Offer>,
}

impl Search {
    fn new(table: &Table) -> Self {
        let stacks = Stacks::of(table);
        let now = Hands::empty(table, &stacks);
        let best = now.clone().dealt_by_hand(&stacks);
        let limit = Score { worst: i64::MAX, sum: i64::MAX };
        Self { rest: vec![0; stacks.groups.len()], stacks, now, best, limit, offers: Vec::new() }
    }

    /// The least the worst difference can be, known to be `least` or more; finds a deal that has it.
    fn prove_worst(&mut self, least: i64, nodes: u32) -> i64 {
        self.limit.sum = i64::MAX;
        self.prove(|score| &mut score.worst, least, nodes)
    }

    /// The same of the sum, among the deals whose worst difference is at most `cap`.
    fn prove_sum(&mut self, cap: i64, least: i64, nodes: u32) -> i64 {
        self.limit.worst = cap;
        self.prove(|score| &mut score.sum, least, nodes)
    }

    /// Looks for deals under a limit that is raised from `least`, so that the first one found is near the best.
    /// When a pass runs out of nodes the later ones still look for better deals, but prove nothing.
    fn prove(&mut self, aim: fn(&mut Score) -> &mut i64, mut least: i64, nodes: u32) -> i64 {
        let mut limit = least;
        let mut step = FIRST_STEP * self.stacks.unit;
        let mut is_sure = true;
        while least < *aim(&mut self.best.score) {
            limit = limit.min(*aim(&mut self.best.score) - 1);
            *aim(&mut self.limit) = limit;
            is_sure &= self.pass(aim, least, nodes);
            let best = *aim(&mut self.best.score);
            if is_sure {
                least = best.min(limit + 1);
            }
            if limit + 1 >= best {
                break;
            }
            limit += step;
            step *= 2;
        }
        least
    }

    /// Goes through all deals under the limit, lowering it to the best one found; false if the nodes ran out.
    fn pass(&mut self, aim: fn(&mut Score) -> &mut i64, least: i64, nodes: u32) -> bool {
        let mut left = nodes;
        loop {
            if self.offers.len() == self.stacks.all.len() * self.stacks.parts.len() {
                self.now.score = Score::of(&self.now.rows);
                if self.now.score.worst <= self.limit.worst && self.now.score.sum <= self.limit.sum {
                    self.best.clone_from(&self.now);
                    *aim(&mut self.limit) = *aim(&mut self.best.score) - 1;
                }
                if *aim(&mut self.limit) < least {
                    self.take_all_back();
                    return true;
                }
            } else if left == 0 {
                self.take_all_back();
                return false;
            } else {
                let offer = self.offer();
                left = left.saturating_sub(1 + offer.options.len() as u32);
                self.offers.push(offer);
            }
            if !self.take_next() {
                return true;
            }
        }
    }

    /// The next way not yet tried, the latest offer first; false if there is none.
    fn take_next(&mut self) -> bool {
        while !self.offers.is_empty() {
            self.take_back();
            let (at, partner) = self.turn();
            while let Some((bound, _, number)) = self.offers.last_mut().and_then(|offer| offer.options.pop())
            {
                if bound <= self.limit.sum {
                    self.now.give(&self.stacks, at, partner, i64::from(number));
                    if let Some(offer) = self.offers.last_mut() {
                        offer.taken = number;
                    }
                    return true;
                }
            }
            self.offers.pop();
        }
        false
    }

    /// Which stack the latest offer is of, and to whom.
    fn turn(&self) -> (usize, usize) {
        let latest = self.offers.len() - 1;
        (latest / self.stacks.parts.len(), latest % self.stacks.parts.len())
    }

    fn take_back(&mut self) {
        let (at, partner) = self.turn();
        if let Some(offer) = self.offers.last_mut() {
            self.now.give(&self.stacks, at, partner, -i64::from(offer.taken));
            offer.taken = 0;
        }
    }

    fn take_all_back(&mut self) {
        while !self.offers.is_empty() {
            self.take_back();
            self.offers.pop();
        }
    }

    /// The next offer: every number that can still lead to a deal under the limit.
    fn offer(&self) -> Offer {
        let partners = self.stacks.parts.len();
        let (at, partner) = (self.offers.len() / partners, self.offers.len() % partners);
        let stack = &self.stacks.all[at];
        let (mut worst, mut sum, mut known) = (0, 0, self.rest[stack.group]);
        for other in (0..partners).filter(|other| *other != partner) {
            let outlook = self.outlook(at, other, &self.now.rows[other], other < partner);
            worst = worst.max(outlook.worst);
            sum += outlook.sum;
            known += outlook.known;
        }
        let left = stack.number - self.now.counts[at][..partner].iter().sum::<u32>();
        let least = if partner + 1 == partners { left } else { 0 };
        let mut options: Vec<(i64, i64, u32)> = Vec::new();
        for number in least..=left.min(self.most_of_equals(at, partner)) {
            let mut row = self.now.rows[partner];
            row[stack.product] += stack.weight * i64::from(number);
            let outlook = self.outlook(at, partner, &row, true);
            let bound = (sum + outlook.sum).max(known + outlook.known);
            if worst.max(outlook.worst) <= self.limit.worst && bound <= self.limit.sum {
                let uneven = (row[stack.product] + self.stacks.parts[partner] * stack.later).abs();
                let option = (bound, uneven, number);
                short::put(&mut options, option, |other| *other < option);
            }
        }
        Offer { options, taken: 0 }
    }

    /// Of two who have had the same so far, the second need not get more: that deal has been seen with the two
    /// exchanged.
    fn most_of_equals(&self, at: usize, partner: usize) -> u32 {
        let Some(first) = partner.checked_sub(1) else { return u32::MAX };
        let (stack, number) = (&self.stacks.all[at], self.now.counts[at][first]);
        let mut before = self.now.rows[first];
        before[stack.product] -= stack.weight * i64::from(number);
        let are_equals =
            self.stacks.parts[first] == self.stacks.parts[partner] && before == self.now.rows[partner];
        if are_equals { number } else { u32::MAX }
    }

    /// What can still become of a row while stack `at` is dealt; `has` if the partner has had of it.
    fn outlook(&self, at: usize, partner: usize, row: &Row, has: bool) -> Outlook {
        let stack = &self.stacks.all[at];
        let (mut worst, mut settled, mut total) = (0, 0, 0_i64);
        for group in &self.stacks.groups[..stack.group] {
            let difference = row[group.product as usize];
            worst = worst.max(difference.abs());
            settled += difference.abs();
            total += difference;
        }
        let wanted = -row[stack.product];
        let distance = |low: i64, high: i64| {
            if !has {
                self.stacks.distance(at, low, high)
            } else if self.stacks.goes_on(at) {
                self.stacks.distance(at + 1, low, high)
            } else {
                low.max(-high).max(0)
            }
        };
        let nearest = distance(wanted, wanted);
        // A difference that makes up for the total so far costs nothing more; beyond that it counts twice.
        let beyond = distance(wanted - total.max(0), wanted - total.min(0));
        let behind = self.stacks.groups[stack.group].behind[partner];
        let sum = (total.abs() + 2 * beyond).max(nearest + behind);
        Outlook { worst: worst.max(nearest), sum: settled + sum, known: settled + nearest }
    }
}
