//! A deal as one would make it by hand, made better package by package: where the search begins.

use super::table::{Hands, Score, Stacks};

/// How many exchanges are tried.
const MOST_EXCHANGES: u32 = 100_000;

impl Hands {
    /// Everything dealt: the heaviest packages first, each to whoever is farthest below their share of it and of
    /// all.
    pub(super) fn dealt_by_hand(mut self, stacks: &Stacks) -> Self {
        let mut open: Vec<usize> = (0..stacks.all.len()).collect();
        let weight = |at: usize| stacks.all[at].weight;
        while let Some(next) = (0..open.len())
            .reduce(|first, other| if weight(open[other]) > weight(open[first]) { other } else { first })
        {
            let at = open.swap_remove(next);
            for _ in 0..stacks.all[at].number {
                let wanting = |partner: usize| {
                    let row = &self.rows[partner];
                    let off = 2 * row[stacks.all[at].product] + row.iter().sum::<i64>();
                    off / stacks.parts[partner]
                };
                let neediest = (1..stacks.parts.len())
                    .fold(0, |first, other| if wanting(other) < wanting(first) { other } else { first });
                self.give(stacks, at, neediest, 1);
            }
        }
        self.score = Score::of(&self.rows);
        self
    }

    /// Single packages given to others, or two exchanged, as long as that makes it better.
    pub(super) fn exchanged(mut self, stacks: &Stacks) -> Self {
        let partners = stacks.parts.len();
        let mut left = MOST_EXCHANGES;
        loop {
            let before = self.score;
            for at in 0..stacks.all.len() {
                for (from, to) in (0..partners).flat_map(|from| (0..partners).map(move |to| (from, to))) {
                    // The place behind the last stack stands for nothing in return.
                    for back in (0..=stacks.all.len()).filter(|back| *back != at && from != to) {
                        left -= u32::from(self.exchange(stacks, (at, from), (back, to)));
                        if left == 0 {
                            return self;
                        }
                    }
                }
            }
            if self.score == before {
                return self;
            }
        }
    }

    /// Exchanges a package of one partner for another's if that is better, and says whether it could be tried.
    fn exchange(&mut self, stacks: &Stacks, (at, from): (usize, usize), (back, to): (usize, usize)) -> bool {
        let has = |at: usize, partner: usize| self.counts.get(at).is_none_or(|of| of[partner] > 0);
        if !has(at, from) || !has(back, to) {
            return false;
        }
        self.pass_on(stacks, at, from, to);
        self.pass_on(stacks, back, to, from);
        let score = Score::of(&self.rows);
        if score < self.score {
            self.score = score;
        } else {
            self.pass_on(stacks, at, to, from);
            self.pass_on(stacks, back, from, to);
        }
        true
    }

    fn pass_on(&mut self, stacks: &Stacks, at: usize, from: usize, to: usize) {
        if at < stacks.all.len() {
            self.give(stacks, at, from, -1);
            self.give(stacks, at, to, 1);
        }
    }
}
