//! Whole packages dealt to partners, so that everyone comes nearest to their share of each product and of all.
//!
//! A partner is *due* their share of each product and of the whole; a *difference* is what they get less that,
//! in whole grams a package. The best deal makes the worst difference of anyone, in any product or in all, as
//! small as it can be, and among those deals the sum of all differences. A claimed muscle goes to its claimant
//! first and counts toward their share.
//!
//! Packages of one product and weight can stand in for each other, so the search ([`search`]) goes over how many
//! of each such kind everyone gets. It counts its steps and not the time: the same packages are dealt the same
//! way everywhere. If the steps run out it says how much better a deal could be.

mod by_hand;
mod search;
mod sums;
mod table;

use crate::packages::Package;
use crate::partners::{Partners, Share};
use crate::product::Product;
use crate::short;
use crate::units::Mass;
use table::{Kind, Row, Table};

/// Packages of one partner, and what was due.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Lot {
    /// How many.
    pub packages: u32,
    /// What they weigh.
    pub got: Mass,
    /// What the share comes to.
    pub due: Mass,
}

impl Lot {
    /// What is got less what is due: below zero if it is too little.
    pub fn difference(&self) -> Mass {
        self.got - self.due
    }
}

/// What one partner gets.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Hand {
    /// Of each product, in the order of [`Product::ALL`].
    pub of: [Lot; Product::ALL.len()],
    /// Of all.
    pub total: Lot,
}

/// Packages dealt.
#[derive(Clone, Debug, PartialEq)]
pub struct Deal {
    /// Whose each package is: a place among the partners.
    pub owners: Vec<u8>,
    /// What everyone gets, in the order of the partners.
    pub hands: Vec<Hand>,
    /// How much smaller another deal's worst difference could be: nothing if this is proven to be the best.
    pub worst_gap: Mass,
    /// How much less its differences could come to together: nothing if this is proven to be the best.
    pub sum_gap: Mass,
}

/// The worst difference of a deal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Worst {
    /// Whose.
    pub partner: u8,
    /// In which product; none for all together.
    pub product: Option<Product>,
    /// Below zero if they get too little.
    pub difference: Mass,
}

impl Deal {
    /// Whether no other deal can be better.
    pub fn is_best(&self) -> bool {
        self.worst_gap == Mass::ZERO && self.sum_gap == Mass::ZERO
    }

    /// The worst difference; none if nothing was dealt.
    pub fn worst(&self) -> Option<Worst> {
        let lots = self.hands.iter().zip(0..).flat_map(|(hand, partner)| {
            let of = Product::ALL.into_iter().map(Some).zip(hand.of);
            of.chain([(None, hand.total)]).map(move |(product, lot)| Worst {
                partner,
                product,
                difference: lot.difference(),
            })
        });
        let far = |worst: &Worst| worst.difference.to_grams().abs();
        lots.reduce(|worst, other| if far(&other) > far(&worst) { other } else { worst })
    }
}

/// Deals packages, of one animal or of several; none if nobody shares.
pub fn deal(packages: &[Package], partners: &Partners) -> Option<Deal> {
    if partners.is_empty() {
        return None;
    }
    let parts: Vec<i64> = partners.all().iter().map(|partner| i64::from(partner.parts)).collect();
    let unit: i64 = parts.iter().sum();
    let mut owners: Vec<Option<u8>> =
        packages.iter().map(|package| partners.claimant(package.muscle()?)).collect();
    let mut rows: Vec<Row> = vec![[0; Product::ALL.len()]; parts.len()];
    let mut kinds: Vec<(Kind, Vec<usize>)> = Vec::new();
    for (place, (package, owner)) in packages.iter().zip(&owners).enumerate() {
        let (product, grams) = (package.product, whole_grams(package));
        for (row, parts) in rows.iter_mut().zip(&parts) {
            row[product as usize] -= grams * parts;
        }
        if let Some(owner) = owner {
            rows[usize::from(*owner)][product as usize] += grams * unit;
            continue;
        }
        let alike = kinds.iter_mut().find(|(kind, _)| kind.product == product && kind.grams == grams);
        match alike {
            Some((kind, places)) => {
                kind.number += 1;
                places.push(place);
            }
            None => kinds.push((Kind { product, grams, number: 1 }, vec![place])),
        }
    }
    let seats = seats(&parts, &rows);
    let table = Table {
        parts: seats.iter().map(|partner| parts[*partner]).collect(),
        rows: seats.iter().map(|partner| rows[*partner]).collect(),
        kinds: kinds.iter().map(|(kind, _)| *kind).collect(),
    };
    let found = search::search(&table);
    for ((_, places), counts) in kinds.iter().zip(&found.counts) {
        for (place, seat) in places.iter().zip(in_turn(counts)) {
            owners[*place] = Some(seats[seat] as u8);
        }
    }
    let owners: Vec<u8> = owners.into_iter().flatten().collect();
    let gap = |found: i64, least: i64| Mass::grams((found - least) as f64 / unit as f64);
    Some(Deal {
        hands: hands(packages, &owners, &partners.shares()),
        owners,
        worst_gap: gap(found.score.worst, found.least.worst),
        sum_gap: gap(found.score.sum, found.least.sum),
    })
}

fn whole_grams(package: &Package) -> i64 {
    package.mass.to_grams().round() as i64
}

/// The partners in the order in which the search sees them: it depends on what is theirs and not on who was named
/// first, so that naming them in another order deals everyone the same.
fn seats(parts: &[i64], rows: &[Row]) -> Vec<usize> {
    let mut seats: Vec<usize> = Vec::new();
    for partner in 0..parts.len() {
        let key = |partner: usize| (parts[partner], rows[partner]);
        short::put(&mut seats, partner, |other| key(*other) < key(partner));
    }
    seats
}

/// So many to each, in turn: packages of one kind lie in the order of the animals, and everyone gets some of each.
fn in_turn(counts: &[u32]) -> Vec<usize> {
    let all: u32 = counts.iter().sum();
    let mut given = vec![0; counts.len()];
    (1..=all)
        .map(|turn| {
            let behind = |seat: usize| {
                i64::from(counts[seat]) * i64::from(turn) - i64::from(given[seat]) * i64::from(all)
            };
            let next = (1..counts.len())
                .fold(0, |first, seat| if behind(seat) > behind(first) { seat } else { first });
            given[next] += 1;
            next
        })
        .collect()
}

fn hands(packages: &[Package], owners: &[u8], shares: &[Share]) -> Vec<Hand> {
    let mut hands = vec![Hand::default(); shares.len()];
    for (package, owner) in packages.iter().zip(owners) {
        for (partner, (hand, share)) in hands.iter_mut().zip(shares).enumerate() {
            for lot in [&mut hand.of[package.product as usize], &mut hand.total] {
                lot.due += share.of_mass(package.mass);
                if partner == usize::from(*owner) {
                    lot.packages += 1;
                    lot.got += package.mass;
                }
            }
        }
    }
    hands
}
