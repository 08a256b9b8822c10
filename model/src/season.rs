//! A season: one or more animals planned together, and who shares them. Each keeps its own plan, tag, dates and
//! test; freezer, supplies and partners are one.

use crate::kitchen::Kitchen;
use crate::partners::Partners;
use crate::plan::{Action, Plan, Tested};
use crate::rules::Refusal;

/// The most animals of a season.
pub const MOST_ANIMALS: usize = 8;

/// One or more animals.
#[derive(Clone, Debug, PartialEq)]
pub struct Season {
    animals: Vec<Plan>,
    partners: Partners,
}

/// One change of a season. An animal is meant by its place in [`Season::animals`]; a place where there is none
/// changes nothing.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// A change of one animal's plan.
    Act(usize, Action),
    /// Another animal behind this one, of the same kind and cut the same way.
    AddLike(usize),
    /// The cuts, packing and wrap of one animal for another.
    CopyCuts {
        /// From which animal.
        from: usize,
        /// To which.
        to: usize,
    },
    /// The cuts of a plan that is no part of the season, as the planner proposes one.
    TakeCuts(usize, Box<Plan>),
    /// An animal to another place.
    Move {
        /// From where.
        from: usize,
        /// To where.
        to: usize,
    },
    /// One animal less; the last one stays.
    Remove(usize),
    /// Other partners.
    SetPartners(Partners),
}

/// A season after a change, with what of the change could not be done.
#[derive(Clone, Debug, PartialEq)]
pub struct Changed {
    /// The season now.
    pub season: Season,
    /// Muscles of a region that could not become the product and stayed as they were.
    pub skipped: Vec<Refusal>,
}

impl From<Plan> for Season {
    fn from(plan: Plan) -> Self {
        Self { animals: vec![plan], partners: Partners::default() }
    }
}

impl Season {
    /// Its animals: one at least.
    pub fn animals(&self) -> &[Plan] {
        &self.animals
    }

    /// Who shares the meat.
    pub fn partners(&self) -> &Partners {
        &self.partners
    }

    /// The animal at a place, or the last one before it.
    pub fn animal(&self, place: usize) -> &Plan {
        &self.animals[place.min(self.animals.len() - 1)]
    }

    /// A season read from a link.
    ///
    /// # Errors
    /// No animal, or more than [`MOST_ANIMALS`].
    pub(crate) fn restore(animals: Vec<Plan>, partners: Partners) -> Result<Self, Refusal> {
        if (1..=MOST_ANIMALS).contains(&animals.len()) {
            Ok(Self { animals, partners })
        } else {
            Err(Refusal::TooManyAnimals { most: MOST_ANIMALS })
        }
    }

    /// The season after a change: the only way to change one.
    ///
    /// # Errors
    /// A [`Refusal`] with its reason; the season stays as it was.
    pub fn apply(&self, change: Change) -> Result<Changed, Refusal> {
        let mut season = self.clone();
        let mut skipped = Vec::new();
        let count = self.animals.len();
        match change {
            Change::Act(place, action) if place < count => {
                let shares_freezer = matches!(action, Action::SetKitchen(_));
                let applied = self.animals[place].apply(action)?;
                season.animals[place] = applied.plan;
                skipped = applied.skipped;
                if shares_freezer {
                    season.share_freezer(place)?;
                }
            }
            Change::AddLike(place) if place < count => {
                if count == MOST_ANIMALS {
                    return Err(Refusal::TooManyAnimals { most: MOST_ANIMALS });
                }
                let like = &self.animals[place];
                season.animals.insert(place + 1, Plan::new(*like.animal()).cut_like(like));
            }
            Change::CopyCuts { from, to } if from < count && to < count => {
                season.animals[to] = self.animals[to].cut_like(&self.animals[from]);
            }
            Change::TakeCuts(place, plan) if place < count => {
                season.animals[place] = self.animals[place].cut_like(&plan);
            }
            Change::Move { from, to } if from < count && to < count => {
                let moved = season.animals.remove(from);
                season.animals.insert(to, moved);
            }
            Change::Remove(place) if place < count && count > 1 => {
                season.animals.remove(place);
            }
            Change::SetPartners(partners) => season.partners = partners,
            Change::Act(..)
            | Change::AddLike(_)
            | Change::TakeCuts(..)
            | Change::CopyCuts { .. }
            | Change::Move { .. }
            | Change::Remove(_) => {}
        }
        Ok(Changed { season, skipped })
    }

    /// There is one freezer: the other animals get that of `place`.
    fn share_freezer(&mut self, place: usize) -> Result<(), Refusal> {
        let freezer = self.animals[place].kitchen().freezer;
        for plan in &mut self.animals {
            if plan.kitchen().freezer != freezer {
                let kitchen = Kitchen { freezer, ..plan.kitchen().clone() };
                *plan = plan.apply(Action::SetKitchen(Box::new(kitchen)))?.plan;
            }
        }
        Ok(())
    }

    /// Whether the meat of the animal at a place is counted with the rest: not if it must not be eaten.
    pub fn counts(&self, place: usize) -> bool {
        self.animal(place).tested() != Tested::DoNotEat
    }
}
