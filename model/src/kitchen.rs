//! What was decided about the work after the knife: dates, wrap, grinder, freezer, and whose it is.

use crate::dates::{Date, DateError};
use crate::fat::{Added, FatContent};
use crate::freezer::{Freezer, FreezerError};
use crate::grind::{self, GrindError, Grinding, GroundPacks, Mix, Patty, Target, Vessel};
use crate::packing::Packing;
use crate::product::Product;
use crate::units::{Mass, Volume};
use crate::wrap::Wrapping;

/// The most characters of an owner's name or of a tag.
pub const MOST_NAME: usize = 24;
/// The most patties in a pack.
pub const MOST_PATTIES: u8 = 15;
/// The largest vessel. Judgement.
pub const LARGEST_VESSEL: Mass = Mass::kilograms(40.0);
/// The most paper, roll and tape to spare, in percent.
pub const MOST_SPARE: u8 = 100;

/// How the tub is ground. A price is no part of it: it stays with whoever typed it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grinder {
    /// What the tub becomes.
    pub mix: Mix,
    /// What a batch is mixed in.
    pub vessel: Vessel,
    /// Patties and how many in a pack; None for packs by weight.
    pub patties: Option<(Patty, u8)>,
}

impl Default for Grinder {
    /// As it is, in a tub that takes 10 lb (judgement), packed by weight.
    fn default() -> Self {
        Self { mix: Mix::Plain, vessel: Vessel::Takes(Mass::grams(4536.0)), patties: None }
    }
}

impl Grinder {
    /// Everything the grinder is told; packs by weight are those of the plan.
    pub fn grinding(&self, packing: &Packing, price: Option<grind::Price>) -> Grinding {
        let packs = match self.patties {
            Some((patty, a_pack)) => GroundPacks::Patties { patty, a_pack },
            None => GroundPacks::Weight(packing.loose_pack(Product::Grind)),
        };
        Grinding { mix: self.mix, vessel: self.vessel, packs, price }
    }
}

/// Everything decided about packing and freezing one animal.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Kitchen {
    /// The day it was killed.
    pub harvested: Option<Date>,
    /// The day it is packed.
    pub packed: Option<Date>,
    /// How everything is wrapped.
    pub wrapping: Wrapping,
    /// How the tub is ground.
    pub grinder: Grinder,
    /// The freezer, if there is one.
    pub freezer: Option<Freezer>,
    /// Whose it is; empty if not said.
    pub owner: String,
    /// Tag or licence number; empty if not said.
    pub tag: String,
}

/// Why what was decided cannot be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum KitchenError {
    /// Packed before the harvest, or a date out of range.
    Date(DateError),
    /// The freezer is not believed.
    Freezer(FreezerError),
    /// The grinder cannot do that.
    Grind(GrindError),
    /// A vessel larger than any.
    VesselTooLarge {
        /// The most it takes.
        most: Mass,
    },
    /// More patties in a pack than are packed.
    TooManyPatties {
        /// The most.
        most: u8,
    },
    /// A name that is too long or holds what cannot be printed.
    Name {
        /// The most characters.
        most: usize,
    },
    /// More to spare than is needed.
    SpareOutOfRange {
        /// The most percent.
        most: u8,
    },
}

impl Kitchen {
    /// The same with names trimmed and figures as a link carries them: whole grams, millilitres and litres, tenths
    /// of a percent.
    ///
    /// # Errors
    /// See [`KitchenError`].
    pub fn checked(mut self, packing: &Packing) -> Result<Self, KitchenError> {
        for name in [&mut self.owner, &mut self.tag] {
            *name = name.trim().to_owned();
            if name.chars().count() > MOST_NAME || name.chars().any(char::is_control) {
                return Err(KitchenError::Name { most: MOST_NAME });
            }
        }
        if let (Some(harvested), Some(packed)) = (self.harvested, self.packed)
            && packed < harvested
        {
            return Err(KitchenError::Date(DateError::PackedBeforeHarvest { harvested, packed }));
        }
        if self.grinder.patties.is_some_and(|(_, a_pack)| a_pack > MOST_PATTIES) {
            return Err(KitchenError::TooManyPatties { most: MOST_PATTIES });
        }
        if self.wrapping.spare_percent > MOST_SPARE {
            return Err(KitchenError::SpareOutOfRange { most: MOST_SPARE });
        }
        self.grinder = self.grinder.on_grid();
        self.freezer = self.freezer.map(Freezer::on_grid);
        if let Some(freezer) = &self.freezer {
            freezer.check().map_err(KitchenError::Freezer)?;
        }
        // Whatever the tub holds, the same targets, vessels and packs are possible.
        if self.grinder.vessel.most() > LARGEST_VESSEL {
            return Err(KitchenError::VesselTooLarge { most: LARGEST_VESSEL });
        }
        grind::grind(Mass::kilograms(10.0), &self.grinder.grinding(packing, None))
            .map_err(KitchenError::Grind)?;
        Ok(self)
    }
}

/// A fat content to the tenth of a percent.
fn tenths(content: FatContent) -> FatContent {
    FatContent::percent((content.to_percent() * 10.0).round() / 10.0)
}

impl Grinder {
    fn on_grid(self) -> Self {
        let target = |target: Target| Target {
            fat: tenths(target.fat),
            added: match target.added {
                Added::Fat(fat) => Added::Fat(fat),
                Added::PorkTrim(content) => Added::PorkTrim(tenths(content)),
            },
        };
        Self {
            mix: match self.mix {
                Mix::Plain => Mix::Plain,
                Mix::Burger(wanted) => Mix::Burger(target(wanted)),
                Mix::SausageLean(wanted) => Mix::SausageLean(wanted.map(target)),
            },
            vessel: match self.vessel {
                Vessel::Takes(mass) => Vessel::Takes(Mass::grams(mass.to_grams().round())),
                Vessel::Holds(volume) => {
                    Vessel::Holds(Volume::litres((volume.to_litres() * 1000.0).round() / 1000.0))
                }
            },
            ..self
        }
    }
}
