//! The tub to the grinder: how much fat to add, in which batches, through which plates, into which packs.
//!
//! No cure is computed: its dose is a matter of safety, for a tested recipe and
//! the packet.

use crate::fat::{Added, FatContent, Square, SquareError};
use crate::packages::{Contents, Fill, Package, split_loose};
use crate::packing::PACK_WEIGHT_RANGE;
use crate::product::Product;
use crate::tables::{DEER_FAT, FAT_LIMIT};
use crate::units::{Mass, Volume};

/// What is aimed for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Target {
    /// Fat of the mix.
    pub fat: FatContent,
    /// What is added to reach it.
    pub added: Added,
}

/// What the tub becomes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mix {
    /// Ground as it is.
    Plain,
    /// For burgers.
    Burger(Target),
    /// The lean of a sausage to be made another day; its fat is added now, or then if there is no target.
    SausageLean(Option<Target>),
}

impl Mix {
    /// What is added now.
    pub fn target(self) -> Option<Target> {
        match self {
            Mix::Plain | Mix::SausageLean(None) => None,
            Mix::Burger(target) | Mix::SausageLean(Some(target)) => Some(target),
        }
    }

    /// The plates, in order. Lean that waits for its fat goes through the coarse one only: it is ground again.
    pub fn plates(self) -> &'static [Plate] {
        match self {
            Mix::Plain | Mix::Burger(_) | Mix::SausageLean(Some(_)) => &Plate::ALL,
            Mix::SausageLean(None) => &[Plate::Coarse],
        }
    }
}

/// A plate of the grinder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Plate {
    /// First.
    Coarse,
    /// Second.
    Fine,
}

impl Plate {
    /// Both, in order.
    pub const ALL: [Plate; 2] = [Plate::Coarse, Plate::Fine];
}

/// A patty by how many make a pound ([`crate::sources::Source::MsuFreezer`]).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Patty {
    /// Four to the pound.
    FourToOne,
    /// Three to the pound.
    ThreeToOne,
}

impl Patty {
    /// Both.
    pub const ALL: [Patty; 2] = [Patty::FourToOne, Patty::ThreeToOne];

    /// What one weighs.
    pub fn mass(self) -> Mass {
        match self {
            Patty::FourToOne => Mass::pounds(1.0) / 4.0,
            Patty::ThreeToOne => Mass::pounds(1.0) / 3.0,
        }
    }
}

/// How the ground meat is packed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum GroundPacks {
    /// Loose, near this weight.
    Weight(Mass),
    /// Patties, so many in a pack.
    Patties {
        /// Which.
        patty: Patty,
        /// How many: 3 to 4 is usual ([`crate::sources::Source::MsuFreezer`]).
        a_pack: u8,
    },
}

/// What one batch is mixed in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Vessel {
    /// A tub of which it is known what it takes.
    Takes(Mass),
    /// A bowl or tub of this volume, filled two thirds so that it can be mixed (judgement).
    Holds(Volume),
}

/// How full a vessel is. Judgement.
const FILLED: f64 = 2.0 / 3.0;

impl Vessel {
    /// The most meat for one batch.
    pub fn most(self) -> Mass {
        match self {
            Vessel::Takes(mass) => mass,
            Vessel::Holds(volume) => crate::freezer::MEAT * (volume * FILLED),
        }
    }
}

/// Money for a mass, in whatever money is asked in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Price(f64);

impl Price {
    /// For a pound.
    pub const fn per_pound(money: f64) -> Self {
        Self(money / crate::units::GRAMS_PER_POUND)
    }
    /// For a kilogram.
    pub const fn per_kilogram(money: f64) -> Self {
        Self(money / 1000.0)
    }
    /// What so much costs.
    pub fn of(self, mass: Mass) -> Money {
        Money(self.0 * mass.to_grams())
    }
}

/// An amount of money, in whatever money the price is in.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Money(f64);

impl Money {
    /// The amount.
    pub const fn amount(self) -> f64 {
        self.0
    }
}

/// Everything the grinder is told.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grinding {
    /// What the tub becomes.
    pub mix: Mix,
    /// What a batch is mixed in.
    pub vessel: Vessel,
    /// How it is packed.
    pub packs: GroundPacks,
    /// Price of what is added, if it is to be counted.
    pub price: Option<Price>,
}

/// Why a mix is not possible.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum GrindError {
    /// The target cannot be mixed from the two.
    Square(SquareError),
    /// The vessel takes nothing, or too little to be one.
    VesselTooSmall {
        /// The least it has to take.
        least: Mass,
    },
    /// A pack outside the range.
    PackOutOfRange {
        /// Lightest.
        least: Mass,
        /// Heaviest.
        most: Mass,
    },
    /// A pack of no patties.
    NoPatties,
    /// A price below nothing.
    PriceBelowNothing,
}

/// One batch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Batch {
    /// From the tub.
    pub lean: Mass,
    /// Added to it.
    pub added: Mass,
}

/// What the grinder gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Ground {
    /// From the tub.
    pub lean: Mass,
    /// Added to it.
    pub added: Mass,
    /// How much of the mix is fat.
    pub fat: FatContent,
    /// More fat than "ground beef" may have: a note, no refusal.
    pub is_fatty: bool,
    /// Equal batches that fit the vessel.
    pub batches: Vec<Batch>,
    /// Which plates, in order.
    pub plates: &'static [Plate],
    /// What the added part costs.
    pub cost: Option<Money>,
    /// How it is packed.
    pub packs: GroundPacks,
    /// Less than one patty that is left over: for the pan.
    pub left: Mass,
}

/// The least a vessel takes. Judgement.
const LEAST_VESSEL: Mass = Mass::grams(250.0);

/// What `tub` of trim gives.
///
/// # Errors
/// A target that cannot be reached, a vessel or a pack that holds nothing.
pub fn grind(tub: Mass, grinding: &Grinding) -> Result<Ground, GrindError> {
    let vessel = grinding.vessel.most();
    if !vessel.to_grams().is_finite() || vessel < LEAST_VESSEL {
        return Err(GrindError::VesselTooSmall { least: LEAST_VESSEL });
    }
    check_packs(grinding.packs)?;
    if grinding.price.is_some_and(|price| !(price.0 >= 0.0 && price.0.is_finite())) {
        return Err(GrindError::PriceBelowNothing);
    }
    let lean_fat = DEER_FAT.value;
    let (added, fat) = match grinding.mix.target() {
        None => (Mass::ZERO, lean_fat),
        Some(target) => {
            let most = target.added.content();
            let square = Square::new(lean_fat, most, target.fat).map_err(GrindError::Square)?;
            // Only the fat alone is as fat as the fat.
            let above = GrindError::Square(SquareError::TargetAboveBoth { most });
            let added = square.added_to(tub).ok_or(above)?;
            (added, target.fat)
        }
    };
    let total = tub + added;
    let batches = (total / vessel - EPSILON).ceil().max(0.0);
    let left = match grinding.packs {
        GroundPacks::Weight(_) => Mass::ZERO,
        GroundPacks::Patties { patty, .. } => total - patty.mass() * f64::from(patties(total, patty)),
    };
    Ok(Ground {
        lean: tub,
        added,
        fat,
        is_fatty: fat > FAT_LIMIT.value,
        batches: vec![Batch { lean: tub / batches, added: added / batches }; batches as usize],
        plates: grinding.mix.plates(),
        cost: grinding.price.map(|price| price.of(added)),
        packs: grinding.packs,
        left,
    })
}

/// Keeps a whole number whole when the division was exact but for rounding.
const EPSILON: f64 = 1e-9;

fn patties(total: Mass, patty: Patty) -> u32 {
    (total / patty.mass() + EPSILON).floor() as u32
}

fn check_packs(packs: GroundPacks) -> Result<(), GrindError> {
    let (least, most) = PACK_WEIGHT_RANGE;
    match packs {
        GroundPacks::Weight(weight) if weight >= least && weight <= most => Ok(()),
        GroundPacks::Weight(_) => Err(GrindError::PackOutOfRange { least, most }),
        GroundPacks::Patties { a_pack: 0, .. } => Err(GrindError::NoPatties),
        GroundPacks::Patties { .. } => Ok(()),
    }
}

impl Ground {
    /// The mix.
    pub fn total(&self) -> Mass {
        self.lean + self.added
    }

    /// Whether fat was added, which shortens how long it keeps.
    pub fn has_added_fat(&self) -> bool {
        self.added > Mass::ZERO
    }

    /// The packages. They and what is left over weigh what the mix weighs.
    pub fn packages(&self) -> Vec<Package> {
        match self.packs {
            GroundPacks::Weight(weight) => {
                let packs = split_loose(self.total(), weight);
                let of = packs.len() as u32;
                let package = |(mass, fill, number)| ground(Contents::Pooled, mass, fill, (number, of));
                packs.into_iter().map(package).collect()
            }
            GroundPacks::Patties { patty, a_pack } => {
                let (all, a_pack) = (patties(self.total(), patty), u32::from(a_pack));
                let of = all.div_ceil(a_pack);
                (1..=of)
                    .map(|number| {
                        let in_it = a_pack.min(all - a_pack * (number - 1));
                        let fill = if in_it < a_pack { Fill::Short } else { Fill::Full };
                        let mass = patty.mass() * f64::from(in_it);
                        ground(Contents::Patties(in_it), mass, fill, (number, of))
                    })
                    .collect()
            }
        }
    }
}

fn ground(contents: Contents, mass: Mass, fill: Fill, (number, of): (u32, u32)) -> Package {
    Package { product: Product::Grind, contents, mass, fill, number, of }
}
