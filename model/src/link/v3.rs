//! Version 3 of the link: a season.
//!
//! | field | bits |
//! |---|---|
//! | animals less one | 3 |
//! | for each animal, the fields of version 2; what version 1 calls usual is, from the second animal on, what the animal before it has | |
//! | for each section, their numbers rising: a 1, its number | 1, 4 |
//! | a 0 behind the last | 1 |
//!
//! There are no sections yet. A season of one animal is a plan that version 1 or 2 can say, and is written so. Sections
//! are added, never changed.

use super::bits::{Reader, Writer};
use super::v1::Usual;
use super::{LinkError, Names, v2};
use crate::plan::Plan;
use crate::season::Season;

/// Whether there is more than one plan to say.
pub(super) fn is_needed(season: &Season) -> bool {
    season.animals().len() > 1
}

pub(super) fn write(bits: &mut Writer, season: &Season, names: Names) {
    bits.put(season.animals().len() as u32 - 1, 3);
    let mut usual = Usual::frozen();
    for plan in season.animals() {
        v2::write(bits, plan, names, &usual);
        usual = Usual::of(plan);
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
    if bits.flag()? {
        return Err(LinkError::Newer);
    }
    Season::restore(animals).map_err(|_| LinkError::Impossible)
}
