//! What a household wishes of an animal: dinners, shares of the meat, what a muscle must or must not become, and
//! how much knife work is worth it. People and appetite are those of the packing.

use crate::anatomy::Muscle;
use crate::product::Product;
use crate::rules::{self, Reason, Verdict};

/// The most dinners of one product that can be wished.
pub const MOST_DINNERS: u16 = 999;
/// The most pieces that can be named as a limit of the knife work.
pub const MOST_KNIFE_WORK: u16 = 999;
/// The most demands.
pub const MOST_DEMANDS: usize = 31;

/// How much of a product is wished.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Wish {
    /// Whatever the other wishes leave.
    #[default]
    Rest,
    /// So many dinners: meals of it for everybody at the table. None of it, if 0.
    Dinners(u16),
    /// So many percent of the take-home meat, by weight.
    Share(u8),
}

/// What a muscle has to become, or must not.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Demand {
    /// What the plan has for it now, part by part.
    Keep,
    /// One roast, in one piece.
    Whole,
    /// This product.
    Must(Product),
    /// Anything but this product.
    Never(Product),
}

impl Demand {
    /// Every one.
    pub const ALL: [Demand; 12] = [
        Demand::Keep,
        Demand::Whole,
        Demand::Must(Product::Roast),
        Demand::Must(Product::Steak),
        Demand::Must(Product::Chop),
        Demand::Must(Product::Stew),
        Demand::Must(Product::Grind),
        Demand::Never(Product::Roast),
        Demand::Never(Product::Steak),
        Demand::Never(Product::Chop),
        Demand::Never(Product::Stew),
        Demand::Never(Product::Grind),
    ];

    /// Whether it lets a muscle become `product`. What it keeps, it keeps whatever that is.
    pub fn allows(self, product: Product) -> bool {
        match self {
            Demand::Keep => false,
            Demand::Whole => product == Product::Roast,
            Demand::Must(only) => product == only,
            Demand::Never(barred) => product != barred,
        }
    }

    /// The product it asks for, if it asks for one.
    pub fn product(self) -> Option<Product> {
        match self {
            Demand::Whole => Some(Product::Roast),
            Demand::Must(product) => Some(product),
            Demand::Keep | Demand::Never(_) => None,
        }
    }

    /// Whether one muscle can be given both: some product is allowed by both, or they are the same.
    fn agrees(self, other: Demand) -> bool {
        self == other || Product::ALL.into_iter().any(|product| self.allows(product) && other.allows(product))
    }
}

/// A demand on one muscle.
pub type MuscleDemand = (Muscle, Demand);

/// Everything wished. The default wishes nothing: all of it is the rest.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wishes {
    /// How much of each product, in the order of [`Product::ALL`].
    pub by: [Wish; 5],
    /// Demands on muscles; in order and each once, after [`Wishes::checked`].
    pub demands: Vec<MuscleDemand>,
    /// The most pieces to take off with the knife: roasts, steaks and chops; cubes and the grinder are not counted.
    pub most_knife_work: Option<u16>,
}

/// Why wishes cannot be. A contradiction names both of its sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WishError {
    /// More dinners than can be wished.
    TooManyDinners {
        /// The most.
        most: u16,
    },
    /// Shares that add up to more than all of the meat.
    SharesOverAll {
        /// What they add up to, in percent.
        total: u16,
    },
    /// A limit of the knife work that is no limit.
    KnifeWorkOutOfRange {
        /// The most.
        most: u16,
    },
    /// More demands than are kept.
    TooManyDemands {
        /// The most.
        most: usize,
    },
    /// Two demands on a muscle that exclude each other.
    Contradiction {
        /// Which muscle.
        muscle: Muscle,
        /// One of them.
        one: Demand,
        /// The other.
        other: Demand,
    },
    /// A muscle has to become a product of which none is wished.
    NoneOfIt {
        /// Which muscle.
        muscle: Muscle,
        /// What is demanded.
        demand: Demand,
        /// The product.
        product: Product,
    },
    /// A muscle cannot be what is demanded.
    Impossible {
        /// Which muscle.
        muscle: Muscle,
        /// What is demanded.
        product: Product,
        /// Why not.
        reason: Reason,
    },
    /// Everything the muscle could become is barred.
    NothingLeft {
        /// Which muscle.
        muscle: Muscle,
    },
}

impl Wishes {
    /// How much of a product.
    pub fn wish(&self, product: Product) -> Wish {
        self.by[product as usize]
    }

    /// The demands on a muscle.
    pub fn demands_on(&self, muscle: Muscle) -> impl Iterator<Item = Demand> {
        self.demands.iter().filter(move |(of, _)| *of == muscle).map(|(_, demand)| *demand)
    }

    /// Whether the demands let a muscle become `product`.
    pub fn allow(&self, muscle: Muscle, product: Product) -> bool {
        self.demands_on(muscle).all(|demand| demand.allows(product))
    }

    /// Whether a demand keeps the muscle as the plan has it.
    pub fn keep(&self, muscle: Muscle) -> bool {
        self.demands_on(muscle).any(|demand| demand == Demand::Keep)
    }

    /// The same with its demands in order and each once.
    ///
    /// # Errors
    /// See [`WishError`].
    pub fn checked(mut self) -> Result<Self, WishError> {
        self.check_amounts()?;
        let mut demands = Vec::with_capacity(self.demands.len());
        for muscle in Muscle::ALL {
            let of_it = Demand::ALL.into_iter().map(|demand| (muscle, demand));
            demands.extend(of_it.filter(|demand| self.demands.contains(demand)));
        }
        self.demands = demands;
        if self.demands.len() > MOST_DEMANDS {
            return Err(WishError::TooManyDemands { most: MOST_DEMANDS });
        }
        for muscle in Muscle::ALL {
            self.check_demands(muscle)?;
        }
        Ok(self)
    }

    fn check_amounts(&self) -> Result<(), WishError> {
        let mut total = 0;
        for wish in self.by {
            match wish {
                Wish::Dinners(dinners) if dinners > MOST_DINNERS => {
                    return Err(WishError::TooManyDinners { most: MOST_DINNERS });
                }
                Wish::Share(percent) => total += u16::from(percent),
                Wish::Rest | Wish::Dinners(_) => {}
            }
        }
        if total > 100 {
            return Err(WishError::SharesOverAll { total });
        }
        if self.most_knife_work.is_some_and(|most| most > MOST_KNIFE_WORK) {
            return Err(WishError::KnifeWorkOutOfRange { most: MOST_KNIFE_WORK });
        }
        Ok(())
    }

    fn check_demands(&self, muscle: Muscle) -> Result<(), WishError> {
        let demands: Vec<Demand> = self.demands_on(muscle).collect();
        for (place, one) in demands.iter().enumerate() {
            if let Some(other) = demands[..place].iter().find(|other| !one.agrees(**other)) {
                return Err(WishError::Contradiction { muscle, one: *other, other: *one });
            }
            if let Some(product) = one.product() {
                if let Verdict::Impossible(reason) = rules::verdict(muscle, product) {
                    return Err(WishError::Impossible { muscle, product, reason });
                }
                if matches!(self.wish(product), Wish::Dinners(0) | Wish::Share(0)) {
                    return Err(WishError::NoneOfIt { muscle, demand: *one, product });
                }
            }
        }
        let possible =
            |product: &Product| !matches!(rules::verdict(muscle, *product), Verdict::Impossible(_));
        let is_left = Product::ALL
            .iter()
            .filter(|product| possible(product))
            .any(|product| self.allow(muscle, *product));
        if is_left || self.keep(muscle) { Ok(()) } else { Err(WishError::NothingLeft { muscle }) }
    }
}
