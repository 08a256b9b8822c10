//! The packages one by one, in working order: what goes on each label.
//!
//! The middle case of a [`Forecast`], pack by pack. Counts are those of its tallies, and the masses of a
//! product's packages add up to its tally.

use crate::anatomy::Muscle;
use crate::forecast::{Forecast, PackRow, Tally};
use crate::grind::Ground;
use crate::order;
use crate::packing;
use crate::product::{Cut, Product};
use crate::units::Mass;

/// What is in a package.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Contents {
    /// Pieces of one muscle, cut one way.
    Pieces {
        /// Which muscle.
        muscle: Muscle,
        /// Which cut.
        cut: Cut,
        /// How many.
        pieces: u32,
    },
    /// Loose meat from many muscles.
    Pooled,
    /// Patties from the tub.
    Patties(u32),
}

/// Whether a package holds what its kind holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fill {
    /// As planned.
    Full,
    /// The last of its kind, with less.
    Short,
}

/// One package.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Package {
    /// What it is packed and labelled as.
    pub product: Product,
    /// What is in it.
    pub contents: Contents,
    /// What it is likely to weigh.
    pub mass: Mass,
    /// Full or short.
    pub fill: Fill,
    /// Its number among those of its kind, from 1: the n of "n of m".
    pub number: u32,
    /// How many there are of its kind: the m of "n of m".
    pub of: u32,
}

impl Package {
    /// The muscle it is from; none for pooled meat.
    pub fn muscle(&self) -> Option<Muscle> {
        match self.contents {
            Contents::Pieces { muscle, .. } => Some(muscle),
            Contents::Pooled | Contents::Patties(_) => None,
        }
    }
}

/// Every package of a forecast in working order: whole cuts by muscle, then stew, then the tub. With `ground`,
/// the tub is packed as the grinder gives it, with what is added; without, as the forecast's tally has it.
pub fn packages(forecast: &Forecast, ground: Option<&Ground>) -> Vec<Package> {
    let muscles = forecast.muscles.iter().filter_map(|row| {
        let cuts = row.sides.iter().flatten().map(|part| part.cut);
        Some((order::why(row.muscle, cuts)?, row.muscle))
    });
    let mut packages = Vec::new();
    for (_, muscle) in order::in_order(muscles) {
        for row in &forecast.muscles[muscle.index()].packs {
            packages.extend(whole(row));
        }
    }
    for tally in &forecast.tallies {
        match (tally.product, ground) {
            (Product::Grind, Some(ground)) => packages.extend(ground.packages()),
            (Product::Stew | Product::Grind, _) => packages.extend(loose(tally)),
            (Product::Roast | Product::Steak | Product::Chop, _) => {}
        }
    }
    packages
}

/// The packages of one cut of one muscle. Every piece is taken to weigh the same.
fn whole(row: &PackRow) -> Vec<Package> {
    let (pieces, of) = (row.pieces.likely(), row.packs.likely());
    let Some(product) = row.cut.product() else { return Vec::new() };
    let full = row.mass.likely() * (f64::from(row.a_pack) / f64::from(pieces.max(1)));
    let masses = closed(row.mass.likely(), full, of);
    let contents = |pieces| Contents::Pieces { muscle: row.muscle, cut: row.cut, pieces };
    masses
        .zip(1..)
        .map(|(mass, number)| {
            let is_short = number == of && row.short.is_some();
            Package {
                product,
                contents: contents(row.short.filter(|_| is_short).unwrap_or(row.a_pack)),
                mass,
                fill: if is_short { Fill::Short } else { Fill::Full },
                number,
                of,
            }
        })
        .collect()
}

fn loose(tally: &Tally) -> Vec<Package> {
    let Some((pack, last)) = tally.loose else { return Vec::new() };
    split(tally.mass.likely(), pack, last, tally.packs.likely())
        .map(|(mass, fill, number)| Package {
            product: tally.product,
            contents: Contents::Pooled,
            mass,
            fill,
            number,
            of: tally.packs.likely(),
        })
        .collect()
}

/// Loose meat as packages: so many of weight `pack` and a short `last`, or all alike with the remainder shared
/// among them.
fn split(total: Mass, pack: Mass, last: Option<Mass>, of: u32) -> impl Iterator<Item = (Mass, Fill, u32)> {
    let each = if last.is_some() { pack } else { total / f64::from(of.max(1)) };
    closed(total, each, of).zip(1..).map(move |(mass, number)| {
        let fill = if last.is_some() && number == of { Fill::Short } else { Fill::Full };
        (mass, fill, number)
    })
}

/// Loose meat in packages near weight `pack`, with their number.
pub(crate) fn split_loose(total: Mass, pack: Mass) -> Vec<(Mass, Fill, u32)> {
    let of = packing::packs_of_loose(total, pack);
    let last = packing::short_last(total, pack, of);
    split(total, pack, last, of).collect()
}

/// `of` masses of `each`, the last of them what is then left of `total`.
fn closed(total: Mass, each: Mass, of: u32) -> impl Iterator<Item = Mass> {
    (1..=of).map(move |number| if number < of { each } else { total - each * f64::from(of - 1) })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn loose_meat_ends_in_a_short_pack_or_is_shared_out() {
        let pound = Mass::pounds(1.0);
        let last = |pounds: f64| split_loose(Mass::pounds(pounds), pound).last().copied().unwrap();
        let (mass, fill, number) = last(3.4);
        assert_eq!((fill, number), (Fill::Short, 4));
        assert!((mass.to_pounds() - 0.4).abs() < 1e-12);
        let (mass, fill, number) = last(3.06);
        assert_eq!((fill, number), (Fill::Full, 3));
        assert!((mass.to_pounds() - 1.02).abs() < 1e-12);
        let (mass, fill, number) = last(3.95);
        assert_eq!((fill, number), (Fill::Full, 4));
        assert!((mass.to_pounds() - 3.95 / 4.0).abs() < 1e-12);
        assert!(split_loose(Mass::ZERO, pound).is_empty());
    }
}
