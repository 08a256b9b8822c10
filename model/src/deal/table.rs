//! What is dealt, as the search sees it: packages in stacks of one kind, and what everyone has of them.
//!
//! Differences are kept in grams times the parts of all, so that every share is a whole number.

use super::sums::Sums;
use crate::product::Product;
use crate::short;

const PRODUCTS: usize = Product::ALL.len();

/// One partner's differences by product.
pub(super) type Row = [i64; PRODUCTS];

/// How far a deal is from the shares: less is better, and the worst comes first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Score {
    /// The worst difference of anyone, in any product or in all.
    pub(super) worst: i64,
    /// All differences together.
    pub(super) sum: i64,
}

impl Score {
    pub(super) fn of(rows: &[Row]) -> Self {
        let mut score = Score { worst: 0, sum: 0 };
        for row in rows {
            for difference in row.iter().copied().chain([row.iter().sum()]) {
                score.worst = score.worst.max(difference.abs());
                score.sum += difference.abs();
            }
        }
        score
    }
}

/// Packages of one product and weight.
#[derive(Clone, Copy)]
pub(super) struct Kind {
    pub(super) product: Product,
    pub(super) grams: i64,
    pub(super) number: u32,
}

/// What is to be dealt.
pub(super) struct Table {
    /// Everyone's parts.
    pub(super) parts: Vec<i64>,
    /// Everyone's differences before anything of [`Self::kinds`] is dealt.
    pub(super) rows: Vec<Row>,
    pub(super) kinds: Vec<Kind>,
}

impl Table {
    /// The table with one product on it.
    pub(super) fn only(&self, product: Product) -> Table {
        let row = |row: &Row| {
            let mut only = [0; PRODUCTS];
            only[product as usize] = row[product as usize];
            only
        };
        Table {
            parts: self.parts.clone(),
            rows: self.rows.iter().map(row).collect(),
            kinds: self.kinds.iter().copied().filter(|kind| kind.product == product).collect(),
        }
    }
}

/// Packages of a kind, as the search deals them.
pub(super) struct Stack {
    /// Its place in the table.
    pub(super) place: usize,
    /// Its place among the groups.
    pub(super) group: usize,
    pub(super) product: usize,
    /// A package's weight, in the unit of the differences.
    pub(super) weight: i64,
    pub(super) number: u32,
    /// What this and the later stacks of the group can add up to.
    pub(super) sums: Sums,
    /// What the later stacks of the group weigh, in grams.
    pub(super) later: i64,
}

/// The stacks of one product.
pub(super) struct Group {
    pub(super) product: Product,
    /// The least everyone's difference can be, whatever the others get.
    nearest: Vec<i64>,
    /// The sum of that over the groups behind it.
    pub(super) behind: Vec<i64>,
}

/// The stacks in the order in which they are dealt: the products that are hardest to share first.
pub(super) struct Stacks {
    pub(super) parts: Vec<i64>,
    /// So many are a gram.
    pub(super) unit: i64,
    pub(super) all: Vec<Stack>,
    pub(super) groups: Vec<Group>,
}

impl Stacks {
    pub(super) fn of(table: &Table) -> Self {
        let unit = table.parts.iter().sum();
        let mut groups: Vec<Group> = Vec::new();
        for product in Product::ALL {
            let group = Group::of(product, table, unit);
            let hardness = group.hardness(table);
            short::put(&mut groups, group, |other| other.hardness(table) < hardness);
        }
        let mut all = Vec::new();
        let mut behind = vec![0; table.parts.len()];
        for (place, group) in groups.iter_mut().enumerate().rev() {
            all.splice(0..0, stacks(table, group.product, place, unit));
            group.behind.clone_from(&behind);
            for (behind, nearest) in behind.iter_mut().zip(&group.nearest) {
                *behind += nearest;
            }
        }
        Self { parts: table.parts.clone(), unit, all, groups }
    }

    /// How far the nearest thing that stack `at` and the later ones of its group can add up to is from a stretch.
    pub(super) fn distance(&self, at: usize, low: i64, high: i64) -> i64 {
        self.all[at].sums.distance(low, high, self.unit)
    }

    /// Whether the stack behind `at` is of the same product.
    pub(super) fn goes_on(&self, at: usize) -> bool {
        self.all.get(at + 1).is_some_and(|next| next.group == self.all[at].group)
    }
}

impl Group {
    fn of(product: Product, table: &Table, unit: i64) -> Self {
        let mut sums = Sums::of_nothing();
        for kind in table.kinds.iter().filter(|kind| kind.product == product) {
            sums = sums.with(kind.grams, kind.number);
        }
        let nearest = |row: &Row| {
            let wanted = -row[product as usize];
            sums.distance(wanted, wanted, unit)
        };
        Self { product, nearest: table.rows.iter().map(nearest).collect(), behind: Vec::new() }
    }

    /// Products of which nothing is left to deal come first; then by how far somebody has to be from their share.
    fn hardness(&self, table: &Table) -> i64 {
        let is_open = table.kinds.iter().any(|kind| kind.product == self.product);
        if is_open { self.nearest.iter().copied().fold(0, i64::max) } else { i64::MAX }
    }
}

/// The kinds of a product as stacks, the heaviest stack first, so that the light ones mend what is left.
fn stacks(table: &Table, product: Product, group: usize, unit: i64) -> Vec<Stack> {
    let weight_of = |place: usize| table.kinds[place].grams * i64::from(table.kinds[place].number);
    let mut lightest_first: Vec<usize> = Vec::new();
    for (place, kind) in table.kinds.iter().enumerate() {
        if kind.product == product {
            short::put(&mut lightest_first, place, |other| weight_of(*other) > weight_of(place));
        }
    }
    let (mut sums, mut later) = (Sums::of_nothing(), 0);
    let mut stacks = Vec::new();
    for place in lightest_first {
        let Kind { grams, number, .. } = table.kinds[place];
        sums = sums.with(grams, number);
        let (product, weight) = (product as usize, grams * unit);
        stacks.insert(0, Stack { place, group, product, weight, number, sums: sums.clone(), later });
        later += weight_of(place);
    }
    stacks
}

/// Who has how many of each stack, and the differences then.
#[derive(Clone)]
pub(super) struct Hands {
    pub(super) counts: Vec<Vec<u32>>,
    pub(super) rows: Vec<Row>,
    pub(super) score: Score,
}

impl Hands {
    /// Nothing dealt yet.
    pub(super) fn empty(table: &Table, stacks: &Stacks) -> Self {
        let counts = vec![vec![0; table.parts.len()]; stacks.all.len()];
        Self { counts, score: Score::of(&table.rows), rows: table.rows.clone() }
    }

    /// Gives so many of a stack to a partner, or takes them; the score is left as it was.
    pub(super) fn give(&mut self, stacks: &Stacks, at: usize, partner: usize, number: i64) {
        let count = &mut self.counts[at][partner];
        *count = (i64::from(*count) + number) as u32;
        let stack = &stacks.all[at];
        self.rows[partner][stack.product] += stack.weight * number;
    }
}
