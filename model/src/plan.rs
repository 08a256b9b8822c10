//! The plan: everything the person decided, and the only way to change it.
//!
//! Weights, counts, labels and the link are derived from the plan; nothing derived is kept in it.

use crate::anatomy::{Muscle, Region, Side, Sides};
use crate::animal::Animal;
use crate::carcass;
pub use crate::division::{Division, MOST_PARTS, Part};
use crate::kitchen::Kitchen;
use crate::own::Own;
use crate::packing::{self, Appetite, PackBy, Packing};
use crate::product::{Cut, Product};
use crate::rules::{self, Refusal};
use crate::scale::{self, OnScale, Weighing};
use crate::tables;
use crate::units::{Length, Mass};
use crate::weighed;
use crate::wishes::Wishes;
use crate::wounds::{MOST_WOUNDS, Wound};

/// How much meat the shot spoiled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shot {
    /// Head, neck, or a clean pass behind the shoulder.
    Clean,
    /// As hunters' animals are on average.
    Usual,
    /// Through a shoulder, the haunch or the gut.
    Bad,
}

impl Shot {
    /// Every one.
    pub const ALL: [Shot; 3] = [Shot::Clean, Shot::Usual, Shot::Bad];
}

/// How carefully the bones are cleaned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Care {
    /// Every scrap.
    Fussy,
    /// As most people do.
    Usual,
    /// In a hurry, tired or cold.
    Hurried,
}

impl Care {
    /// Every one.
    pub const ALL: [Care; 3] = [Care::Fussy, Care::Usual, Care::Hurried];
}

/// What is lost between clean lean and the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Losses {
    /// Around the wound.
    pub shot: Shot,
    /// On the bones.
    pub care: Care,
    /// Days it hung skinned: 0 to [`MOST_HUNG_DAYS`].
    pub hung_days: u8,
}

/// What the test for a disease of deer says. Meat of an animal whose result is awaited is kept apart, and of one
/// that must not be eaten nothing is counted with the rest; what to do with it is the wildlife agency's word.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Tested {
    /// Nothing was said about a test.
    #[default]
    NotAsked,
    /// Sent in, no answer yet.
    Awaited,
    /// Not detected.
    Clear,
    /// Found, or the agency says so.
    DoNotEat,
}

impl Tested {
    /// Every one.
    pub const ALL: [Tested; 4] = [Tested::NotAsked, Tested::Awaited, Tested::Clear, Tested::DoNotEat];
}

/// The most days of hanging the planner computes; longer is not advised (published advice ends at 5 to 7).
pub const MOST_HUNG_DAYS: u8 = 14;
/// The most characters of a title.
pub const MOST_TITLE: usize = 40;

/// Everything decided about one animal.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    title: String,
    animal: Animal,
    losses: Losses,
    divisions: Vec<[Division; 2]>,
    recovered: [bool; Muscle::COUNT],
    packing: Packing,
    wounds: Vec<Wound>,
    kitchen: Kitchen,
    wishes: Wishes,
    weighings: Vec<Weighing>,
    own: Own,
    tested: Tested,
}

/// One change.
#[derive(Clone, Debug, PartialEq)]
pub enum Action {
    /// Another animal, or another weight of it.
    SetAnimal(Animal),
    /// A title of at most [`MOST_TITLE`] characters.
    SetTitle(String),
    /// Other losses.
    SetLosses(Losses),
    /// A muscle becomes one thing as a whole.
    Assign {
        /// Which group.
        muscle: Muscle,
        /// On which side.
        sides: Sides,
        /// What it becomes.
        cut: Cut,
    },
    /// A muscle is divided along its length.
    Divide {
        /// Which group.
        muscle: Muscle,
        /// On which side.
        sides: Sides,
        /// Its parts.
        division: Division,
    },
    /// Every muscle of a region that can becomes one product at its usual size.
    AssignRegion {
        /// Which region.
        region: Region,
        /// What it becomes.
        product: Product,
    },
    /// Whether a group is taken at all; its mass lands nowhere else if not.
    Recover {
        /// Which group.
        muscle: Muscle,
        /// Taken or left.
        taken: bool,
    },
    /// People at the table and how much they eat.
    SetTable {
        /// How many.
        people: u8,
        /// How hungry.
        appetite: Appetite,
    },
    /// How a product is packed.
    SetPack {
        /// Which product.
        product: Product,
        /// How.
        by: PackBy,
    },
    /// Another wound.
    AddWound(Wound),
    /// A wound lies elsewhere, or is larger or smaller.
    ChangeWound {
        /// Which one, by its place in [`Plan::wounds`].
        place: usize,
        /// How it is now.
        wound: Wound,
    },
    /// A wound was none.
    RemoveWound(usize),
    /// Other dates, wrap, grinder, freezer or names.
    SetKitchen(Box<Kitchen>),
    /// What the scale said of something; None takes that back.
    Weigh {
        /// What lay on it.
        target: OnScale,
        /// What it said.
        mass: Option<Mass>,
    },
    /// The household's own figures, or the table's if they say nothing.
    UseOwn(Own),
    /// What is wished of the animal.
    SetWishes(Box<Wishes>),
    /// What the test for a disease says.
    SetTested(Tested),
    /// Every muscle back to its usual product; animal, losses, wounds and packing stay.
    ResetCuts,
}

/// A plan after a change, with what of the change could not be done.
#[derive(Clone, Debug, PartialEq)]
pub struct Applied {
    /// The plan now.
    pub plan: Plan,
    /// Muscles of a region that could not become the product and stayed as they were.
    pub skipped: Vec<Refusal>,
}

impl Plan {
    /// The starting plan for an animal: every muscle at its usual product, skirt not taken.
    pub fn new(animal: Animal) -> Self {
        let mut recovered = [true; Muscle::COUNT];
        // The skirt usually leaves with the guts.
        recovered[Muscle::Skirt.index()] = false;
        Self {
            title: String::new(),
            animal,
            losses: Losses { shot: Shot::Usual, care: Care::Usual, hung_days: 0 },
            divisions: Muscle::ALL.into_iter().map(|muscle| [usual(muscle), usual(muscle)]).collect(),
            recovered,
            packing: Packing::default(),
            wounds: Vec::new(),
            kitchen: Kitchen::default(),
            wishes: Wishes::default(),
            weighings: Vec::new(),
            own: Own::default(),
            tested: Tested::NotAsked,
        }
    }

    /// Its title; empty if none was given.
    pub fn title(&self) -> &str {
        &self.title
    }
    /// The animal.
    pub fn animal(&self) -> &Animal {
        &self.animal
    }
    /// The losses.
    pub fn losses(&self) -> Losses {
        self.losses
    }
    /// How everything is packed.
    pub fn packing(&self) -> &Packing {
        &self.packing
    }
    /// Where the shot spoiled meat; while there are any, they stand in for the average of [`Losses::shot`].
    pub fn wounds(&self) -> &[Wound] {
        &self.wounds
    }
    /// What was decided about packing and freezing.
    pub fn kitchen(&self) -> &Kitchen {
        &self.kitchen
    }
    /// What the scale said, in a fixed order whichever came first.
    pub fn weighings(&self) -> &[Weighing] {
        &self.weighings
    }
    /// The household's own figures that are in it.
    pub fn own(&self) -> &Own {
        &self.own
    }
    /// What is wished of the animal: see [`crate::planner`].
    pub fn wishes(&self) -> &Wishes {
        &self.wishes
    }
    /// What the test for a disease says.
    pub fn tested(&self) -> Tested {
        self.tested
    }
    /// What a muscle of a side becomes.
    pub fn division(&self, muscle: Muscle, side: Side) -> &Division {
        &self.divisions[muscle.index()][side.index()]
    }
    /// Whether left and right of a muscle become the same.
    pub fn is_even(&self, muscle: Muscle) -> bool {
        let [left, right] = &self.divisions[muscle.index()];
        left == right
    }
    /// Whether a group is taken.
    pub fn is_recovered(&self, muscle: Muscle) -> bool {
        self.recovered[muscle.index()]
    }

    /// The plan after `action`: the only way to change one.
    ///
    /// # Errors
    /// A [`Refusal`] with its reason; the plan stays as it was.
    pub fn apply(&self, action: Action) -> Result<Applied, Refusal> {
        let mut plan = self.clone();
        let mut skipped = Vec::new();
        match action {
            Action::SetAnimal(animal) => plan.animal = animal,
            Action::SetTitle(title) => plan.title = checked_title(&title)?,
            Action::SetLosses(losses) => {
                if losses.hung_days > MOST_HUNG_DAYS {
                    return Err(Refusal::HungTooLong { most: MOST_HUNG_DAYS });
                }
                plan.losses = losses;
            }
            Action::Assign { muscle, sides, cut } => plan.divide(muscle, sides, &Division::whole(cut))?,
            Action::Divide { muscle, sides, division } => plan.divide(muscle, sides, &division)?,
            Action::AssignRegion { region, product } => {
                for muscle in region.muscles() {
                    if let Err(refusal) =
                        plan.divide(muscle, Sides::Both, &Division::whole(Cut::usual(product)))
                    {
                        skipped.push(refusal);
                    }
                }
            }
            Action::Recover { muscle, taken } => plan.recovered[muscle.index()] = taken,
            Action::SetTable { people, appetite } => {
                if !(1..=packing::MOST_PEOPLE).contains(&people) {
                    return Err(Refusal::PeopleOutOfRange { most: packing::MOST_PEOPLE });
                }
                plan.packing.people = people;
                plan.packing.appetite = appetite;
            }
            Action::SetPack { product, by } => plan.packing.by[product as usize] = checked_pack(by)?,
            Action::AddWound(wound) => {
                plan.wounds.push(wound);
                plan.wounds = checked_wounds(plan.wounds)?;
            }
            Action::ChangeWound { place, wound } => {
                if let Some(changed) = plan.wounds.get_mut(place) {
                    *changed = wound;
                }
                plan.wounds = checked_wounds(plan.wounds)?;
            }
            Action::RemoveWound(place) => {
                if place < plan.wounds.len() {
                    plan.wounds.remove(place);
                }
            }
            Action::SetKitchen(kitchen) => {
                plan.kitchen = kitchen.checked(&plan.packing).map_err(Refusal::Kitchen)?;
            }
            Action::Weigh { target, mass } => scale::set(&mut plan.weighings, target, mass)?,
            Action::UseOwn(own) => plan.own = own,
            Action::SetWishes(wishes) => plan.wishes = wishes.checked().map_err(Refusal::Wishes)?,
            Action::SetTested(tested) => plan.tested = tested,
            Action::ResetCuts => plan.divisions = Plan::new(plan.animal).divisions,
        }
        Ok(Applied { plan, skipped })
    }

    /// A plan read from a link: everything is checked but the sizes that depend on the animal, which another
    /// animal may have made too large without anybody's fault.
    pub(crate) fn restore(parts: Restored) -> Result<Plan, Refusal> {
        let mut plan = Plan::new(parts.animal);
        plan.title = checked_title(&parts.title)?;
        if parts.losses.hung_days > MOST_HUNG_DAYS {
            return Err(Refusal::HungTooLong { most: MOST_HUNG_DAYS });
        }
        plan.losses = parts.losses;
        plan.recovered = parts.recovered;
        plan = plan
            .apply(Action::SetTable { people: parts.packing.people, appetite: parts.packing.appetite })?
            .plan;
        for product in Product::ALL {
            plan.packing.by[product as usize] = checked_pack(parts.packing.rule(product))?;
        }
        for (muscle, sides) in Muscle::ALL.into_iter().zip(&parts.divisions) {
            for division in sides {
                if tables::muscle(muscle).size.is_none() && division.parts().len() > 1 {
                    return Err(Refusal::NoLengthToDivide { muscle });
                }
                for part in division.parts() {
                    rules::check(muscle, part.cut, None)?;
                }
            }
        }
        plan.divisions = parts.divisions;
        plan.wounds = checked_wounds(parts.wounds)?;
        plan.kitchen = parts.kitchen.checked(&plan.packing).map_err(Refusal::Kitchen)?;
        for Weighing { target, mass } in parts.weighings {
            scale::set(&mut plan.weighings, target, Some(mass))?;
        }
        plan.own = parts.own;
        plan.wishes = parts.wishes.checked().map_err(Refusal::Wishes)?;
        plan.tested = parts.tested;
        Ok(plan)
    }

    fn divide(&mut self, muscle: Muscle, sides: Sides, division: &Division) -> Result<(), Refusal> {
        let row = tables::muscle(muscle);
        if row.size.is_none() && division.parts().len() > 1 {
            return Err(Refusal::NoLengthToDivide { muscle });
        }
        let length = self.middle_length(muscle);
        for part in division.parts() {
            let part_length = length.map(|length| length * (f64::from(part.percent) / 100.0));
            rules::check(muscle, part.cut, part_length)?;
        }
        for side in Side::ALL {
            if sides.includes(side) {
                self.divisions[muscle.index()][side.index()] = division.clone();
            }
        }
        Ok(())
    }

    /// The same animal with the cuts, packing, wrap, grinder and freezer of `other`. What happened to the animal
    /// (losses, wounds, dates, names, test) stays its own. A size that this animal is too small for stays, as it
    /// does after [`Action::SetAnimal`], and the forecast says that nothing fits.
    #[must_use]
    pub fn cut_like(&self, other: &Plan) -> Plan {
        let mut plan = self.clone();
        plan.divisions.clone_from(&other.divisions);
        plan.recovered = other.recovered;
        plan.packing = other.packing;
        plan.kitchen.wrapping = other.kitchen.wrapping;
        plan.kitchen.grinder = other.kitchen.grinder;
        plan.kitchen.freezer = other.kitchen.freezer;
        plan
    }

    /// How long a muscle is on this animal, in the middle case; none for scraps.
    pub fn middle_length(&self, muscle: Muscle) -> Option<Length> {
        let size = tables::muscle(muscle).size?;
        if self.weighings.is_empty() {
            return Some(size.length * carcass::middle_scale(self));
        }
        Some(weighed::carcass(self).lengths[muscle.index()][0])
    }
}

/// The parts of a plan as a link carries them.
pub(crate) struct Restored {
    pub(crate) title: String,
    pub(crate) animal: Animal,
    pub(crate) losses: Losses,
    pub(crate) divisions: Vec<[Division; 2]>,
    pub(crate) recovered: [bool; Muscle::COUNT],
    pub(crate) packing: Packing,
    pub(crate) wounds: Vec<Wound>,
    pub(crate) kitchen: Kitchen,
    pub(crate) wishes: Wishes,
    pub(crate) weighings: Vec<Weighing>,
    pub(crate) own: Own,
    pub(crate) tested: Tested,
}

/// What a muscle becomes in the starting plan.
pub fn usual(muscle: Muscle) -> Division {
    Division::whole(Cut::usual(tables::muscle(muscle).usual))
}

fn checked_title(title: &str) -> Result<String, Refusal> {
    let title = title.trim();
    if title.chars().count() > MOST_TITLE || title.chars().any(char::is_control) {
        return Err(Refusal::Title { most: MOST_TITLE });
    }
    Ok(title.to_owned())
}

fn checked_wounds(wounds: Vec<Wound>) -> Result<Vec<Wound>, Refusal> {
    if wounds.len() > MOST_WOUNDS {
        return Err(Refusal::TooManyWounds { most: MOST_WOUNDS });
    }
    if wounds.iter().all(|wound| wound.is_possible()) { Ok(wounds) } else { Err(Refusal::WoundOffThePlate) }
}

fn checked_pack(by: PackBy) -> Result<PackBy, Refusal> {
    match by {
        PackBy::Table => {}
        PackBy::Pieces(pieces) => {
            if !(1..=packing::MOST_PIECES).contains(&pieces) {
                return Err(Refusal::PiecesOutOfRange { most: packing::MOST_PIECES });
            }
        }
        PackBy::Weight(weight) => {
            let (least, most) = packing::PACK_WEIGHT_RANGE;
            if !(weight >= least && weight <= most) {
                return Err(Refusal::PackWeightOutOfRange { least, most });
            }
            return Ok(PackBy::Weight(Mass::grams(weight.to_grams().round())));
        }
    }
    Ok(by)
}
