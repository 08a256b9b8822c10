//! Who shares the meat: names, shares and claims, checked and in one canonical form.
//!
//! A share is a number of parts, so that 50 and 50, 2 and 1, and percents all say what they mean; whatever the
//! parts add up to, the shares add up to one. How the packages are dealt is the deal's.

use crate::anatomy::Muscle;
use crate::kitchen::MOST_NAME;
use crate::units::Mass;

/// The fewest who share; one household shares with nobody.
pub const FEWEST_PARTNERS: usize = 2;
/// The most who share.
pub const MOST_PARTNERS: usize = 6;
/// The most parts of one partner.
pub const MOST_PARTS: u16 = 999;

/// One of those who share.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Partner {
    /// A name or initials; empty if not said, or if names stayed at home.
    pub name: String,
    /// How many parts of the meat: 1 to [`MOST_PARTS`].
    pub parts: u16,
}

/// A muscle that one of them asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Claim {
    /// Which muscle, both sides of it.
    pub muscle: Muscle,
    /// Whose it is: their place among the partners, from 0.
    pub partner: u8,
}

/// A part of the whole, in lowest terms.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Share {
    /// So many.
    pub parts: u32,
    /// Of so many.
    pub of: u32,
}

impl Share {
    /// This much of a mass.
    pub fn of_mass(self, mass: Mass) -> Mass {
        mass * (f64::from(self.parts) / f64::from(self.of))
    }

    /// In percent.
    pub fn to_percent(self) -> f64 {
        f64::from(self.parts) * 100.0 / f64::from(self.of)
    }
}

/// Who shares the meat: nobody, or two to six with their claims. Equal partners are equal values.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Partners {
    partners: Vec<Partner>,
    /// In the order of the muscles.
    claims: Vec<Claim>,
}

/// Why partners cannot be as they were typed. Partners are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PartnersError {
    /// One alone, or more than the planner deals to.
    HowMany {
        /// The fewest, if there are any.
        least: usize,
        /// The most.
        most: usize,
    },
    /// A name that is too long or holds what cannot be printed.
    Name {
        /// Whose.
        partner: u8,
        /// The most characters.
        most: usize,
    },
    /// Two of one name, but for capitals.
    SameName {
        /// Who had it first.
        first: u8,
        /// Who has it too.
        second: u8,
    },
    /// No part at all, or too many.
    Parts {
        /// Whose.
        partner: u8,
        /// The most.
        most: u16,
    },
    /// A muscle claimed twice.
    ClaimedTwice(Muscle),
    /// A muscle claimed by someone who is not there.
    ClaimedByNobody(Muscle),
}

impl Partners {
    /// The same with names trimmed and claims in order.
    ///
    /// # Errors
    /// See [`PartnersError`].
    pub fn checked(mut partners: Vec<Partner>, claims: Vec<Claim>) -> Result<Self, PartnersError> {
        let number = partners.len();
        if number > MOST_PARTNERS || (number > 0 && number < FEWEST_PARTNERS) {
            return Err(PartnersError::HowMany { least: FEWEST_PARTNERS, most: MOST_PARTNERS });
        }
        for (partner, place) in partners.iter_mut().zip(0..) {
            partner.name = partner.name.trim().to_owned();
            if partner.name.chars().count() > MOST_NAME || partner.name.chars().any(char::is_control) {
                return Err(PartnersError::Name { partner: place, most: MOST_NAME });
            }
            if partner.parts == 0 || partner.parts > MOST_PARTS {
                return Err(PartnersError::Parts { partner: place, most: MOST_PARTS });
            }
        }
        for (partner, second) in partners.iter().zip(0..) {
            let same = |other: &Partner| other.name.eq_ignore_ascii_case(&partner.name);
            let first = partners.iter().position(same).map_or(second, |first| first as u8);
            if first < second && !partner.name.is_empty() {
                return Err(PartnersError::SameName { first, second });
            }
        }
        let mut of_muscle = [None; Muscle::ALL.len()];
        for claim in claims {
            if usize::from(claim.partner) >= number {
                return Err(PartnersError::ClaimedByNobody(claim.muscle));
            }
            if of_muscle[claim.muscle.index()].replace(claim).is_some() {
                return Err(PartnersError::ClaimedTwice(claim.muscle));
            }
        }
        Ok(Self { partners, claims: of_muscle.into_iter().flatten().collect() })
    }

    /// Everyone, as they were typed one below the other.
    pub fn all(&self) -> &[Partner] {
        &self.partners
    }

    /// Whether nobody shares.
    pub fn is_empty(&self) -> bool {
        self.partners.is_empty()
    }

    /// The claims, in the order of the muscles.
    pub fn claims(&self) -> &[Claim] {
        &self.claims
    }

    /// Who asked for a muscle.
    pub fn claimant(&self, muscle: Muscle) -> Option<u8> {
        self.claims.iter().find(|claim| claim.muscle == muscle).map(|claim| claim.partner)
    }

    /// What the parts add up to, as typed.
    pub fn total_parts(&self) -> u32 {
        self.partners.iter().map(|partner| u32::from(partner.parts)).sum()
    }

    /// Whether they can be read as percents as typed; if not, they are scaled.
    pub fn are_percents(&self) -> bool {
        self.total_parts() == 100
    }

    /// Whether everyone gets the same.
    pub fn are_equal(&self) -> bool {
        self.partners.windows(2).all(|pair| pair[0].parts == pair[1].parts)
    }

    /// Everyone's share; together they are one.
    pub fn shares(&self) -> Vec<Share> {
        let of = self.total_parts();
        let share = |partner: &Partner| {
            let parts = u32::from(partner.parts);
            let common = common_divisor(parts, of);
            Share { parts: parts / common, of: of / common }
        };
        self.partners.iter().map(share).collect()
    }
}

/// By Euclid; neither may be 0.
fn common_divisor(mut larger: u32, mut smaller: u32) -> u32 {
    while smaller > 0 {
        (larger, smaller) = (smaller, larger % smaller);
    }
    larger
}
