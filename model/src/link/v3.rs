//! Version 3 of the link: a season.
//!
//! | field | bits |
//! |---|---|
//! | animals less one | 3 |
//! | for each animal, the fields of version 2; what version 1 calls usual is, from the second animal on, what the animal before it has | |
//! | for each section, their numbers rising: a 1, its number | 1, 4 |
//! | a 0 behind the last | 1 |
//!
//! | section | what |
//! |---|---|
//! | 0 | the partners: see [`super::partners`] |
//!
//! A season of one animal that nobody shares is a plan that version 1 or 2 can say, and is written so. Sections
//! are added, never changed.

use super::bits::{Reader, Writer};
use super::v1::Usual;
use super::{LinkError, Names, partners, v2};
use crate::partners::Partners;
use crate::plan::Plan;
use crate::season::Season;

const PARTNERS: u32 = 0;

/// Whether there is more than one plan to say.
pub(super) fn is_needed(season: &Season) -> bool {
    season.animals().len() > 1 || !season.partners().is_empty()
}

pub(super) fn write(bits: &mut Writer, season: &Season, names: Names) {
    bits.put(season.animals().len() as u32 - 1, 3);
    let mut usual = Usual::frozen();
    for plan in season.animals() {
        v2::write(bits, plan, names, &usual);
        usual = Usual::of(plan);
    }
    if !season.partners().is_empty() {
        v2::section(bits, PARTNERS);
        partners::write(bits, season.partners(), names);
    }
    bits.flag(false);
}

pub(super) fn read(bits: &mut Reader) -> Result<Season, LinkError> {
    let mut usual = Usual::frozen();
    let mut animals = Vec::new();
    for _ in 0..=bits.take(3)? {
        let plan = Plan::restore(v2::read(bits, &usual)?).map_err(|_| LinkError::Impossible)?;
        usual = Usual::of(&plan);
        animals.push(plan);
    }
    let mut shared = Partners::default();
    while bits.flag()? {
        match bits.take(4)? {
            PARTNERS => shared = partners::read(bits)?,
            _ => return Err(LinkError::Newer),
        }
    }
    Season::restore(animals, shared).map_err(|_| LinkError::Impossible)
}
