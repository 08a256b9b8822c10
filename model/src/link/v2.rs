//! Version 2 of the link: the fields of version 1, then sections for what version 1 cannot say.
//!
//! | field | bits |
//! |---|---|
//! | the fields of version 1 | |
//! | for each section, their numbers rising: a 1, its number | 1, 4 |
//! | a 0 behind the last | 1 |
//!
//! | section | what | bits |
//! |---|---|---|
//! | 0 | wounds less one; for each its side, x + 20, y, radius less one | 2; 1, 7, 7, 4 |
//! | 1 | harvested? days since 2000; packed? days since 2000 | 1, 17; 1, 17 |
//! | 2 | wrap of each product; paper roll; percent to spare | 3 each; 2; 7 |
//! | 3 | mix; its target: tenths of a percent, what is added, its tenths of a percent if that is trim | 2; 10, 2, 10 |
//! |   | vessel by volume?, grams or millilitres; patties?, three to the pound?, how many | 1, 16; 1, 1, 4 |
//! | 4 | litres of the freezer, litres free, full load? | 12, 12, 1 |
//! | 5 | owner and tag: length in bytes, UTF-8 | 7 each |
//! | 6 | weighings, in their order; for each its target | 6; 7 |
//! |   | and its grams: bits below the highest, these bits; how many packages, 0 for all, behind them | 5, 0 to 18; 8 |
//! |   | own figures? percent of meat + 32, for each group: the table's?, else percent + 32 | 1; 6, 1, 6 |
//! | 7 | the wishes: see [`super::wishes`] | |
//! | 8 | what the test for disease says | 2 |
//!
//! A target is a group times 3 and 0 for both sides, 1 left, 2 right; 78 is all meat, 79 the tub, and 80 and up the
//! packages of each product.
//!
//! A section that is not in this table was written by a later version. A plan without a section is a plan that
//! version 1 can say, and is written so. Sections are added, never changed.

use super::bits::{Reader, Writer};
use super::v1::Usual;
use super::{LinkError, Names, scale, v1, wishes};
use crate::anatomy::Side;
use crate::dates::Date;
use crate::fat::{Added, FatContent, NamedFat};
use crate::freezer::{Freezer, LoadRule};
use crate::grind::{Mix, Patty, Target, Vessel};
use crate::kitchen::{Grinder, Kitchen};
use crate::plan::{Plan, Restored, Tested};
use crate::tables::PAPER_ROLLS;
use crate::units::{Mass, Volume};
use crate::wishes::Wishes;
use crate::wounds::Wound;
use crate::wrap::{Fold, Wrap, Wrapping};

const WOUNDS: u32 = 0;
const DATES: u32 = 1;
const WRAPPING: u32 = 2;
const GRINDER: u32 = 3;
const FREEZER: u32 = 4;
const NAMES: u32 = 5;
const SCALE: u32 = 6;
const WISHES: u32 = 7;
const TESTED: u32 = 8;
/// Frozen; the first is said by leaving the section out.
const RESULTS: [Tested; 4] = [Tested::NotAsked, Tested::Awaited, Tested::Clear, Tested::DoNotEat];
const SIDES: [Side; 2] = [Side::Left, Side::Right];
/// Bits of a name's length in bytes.
const NAME_BITS: u32 = 7;
/// Added to x, so that it is never below zero.
const X_SHIFT: i8 = 20;

/// Whether the plan has anything to say that version 1 cannot.
pub(super) fn is_needed(plan: &Plan, names: Names) -> bool {
    let kitchen = plan.kitchen();
    let usual = Kitchen::default();
    let silent = Kitchen { owner: String::new(), tag: String::new(), ..kitchen.clone() };
    scale::is_needed(plan)
        || *plan.wishes() != Wishes::default()
        || !plan.wounds().is_empty()
        || plan.tested() != Tested::NotAsked
        || silent != usual
        || (names == Names::Included && kitchen != &silent)
}

pub(super) fn write(bits: &mut Writer, plan: &Plan, names: Names, usual: &Usual) {
    v1::write(bits, plan, names, usual);
    let wounds = plan.wounds();
    if !wounds.is_empty() {
        section(bits, WOUNDS);
        bits.put(wounds.len() as u32 - 1, 2);
        for wound in wounds {
            bits.flag(wound.side == Side::Right);
            bits.put((wound.x + X_SHIFT) as u32, 7);
            bits.put(wound.y as u32, 7);
            bits.put(u32::from(wound.radius) - 1, 4);
        }
    }
    write_kitchen(bits, plan.kitchen(), names);
    if scale::is_needed(plan) {
        section(bits, SCALE);
        scale::write(bits, plan);
    }
    if *plan.wishes() != Wishes::default() {
        section(bits, WISHES);
        wishes::write(bits, plan.wishes());
    }
    if plan.tested() != Tested::NotAsked {
        section(bits, TESTED);
        bits.put(RESULTS.iter().position(|result| *result == plan.tested()).unwrap_or(0) as u32, 2);
    }
    bits.flag(false);
}

/// Announces a section.
pub(super) fn section(bits: &mut Writer, number: u32) {
    bits.flag(true);
    bits.put(number, 4);
}

pub(super) fn read(bits: &mut Reader, usual: &Usual) -> Result<Restored, LinkError> {
    let mut parts = v1::read(bits, usual)?;
    while bits.flag()? {
        match bits.take(4)? {
            WOUNDS => {
                for _ in 0..=bits.take(2)? {
                    parts.wounds.push(Wound {
                        side: SIDES[bits.take(1)? as usize],
                        x: bits.take(7)? as i8 - X_SHIFT,
                        y: bits.take(7)? as i8,
                        radius: bits.take(4)? as u8 + 1,
                    });
                }
            }
            DATES => {
                parts.kitchen.harvested = read_date(bits)?;
                parts.kitchen.packed = read_date(bits)?;
            }
            WRAPPING => parts.kitchen.wrapping = read_wrapping(bits)?,
            GRINDER => parts.kitchen.grinder = read_grinder(bits)?,
            FREEZER => parts.kitchen.freezer = Some(read_freezer(bits)?),
            NAMES => {
                parts.kitchen.owner = v1::read_text(bits, NAME_BITS)?;
                parts.kitchen.tag = v1::read_text(bits, NAME_BITS)?;
            }
            SCALE => scale::read(bits, &mut parts)?,
            WISHES => parts.wishes = wishes::read(bits)?,
            TESTED => parts.tested = RESULTS[bits.take(2)? as usize],
            _ => return Err(LinkError::Newer),
        }
    }
    Ok(parts)
}

/// Days are counted from here.
fn first_day() -> Result<Date, LinkError> {
    Date::new(2000, 1, 1).map_err(|_| LinkError::Impossible)
}

fn write_kitchen(bits: &mut Writer, kitchen: &Kitchen, names: Names) {
    let usual = Kitchen::default();
    if kitchen.harvested.is_some() || kitchen.packed.is_some() {
        section(bits, DATES);
        for date in [kitchen.harvested, kitchen.packed] {
            bits.flag(date.is_some());
            if let (Some(date), Ok(first)) = (date, first_day()) {
                bits.put(date.days_after(first) as u32, 17);
            }
        }
    }
    if kitchen.wrapping != usual.wrapping {
        section(bits, WRAPPING);
        for wrap in kitchen.wrapping.by {
            bits.put(WRAPS.iter().position(|other| *other == wrap).unwrap_or(0) as u32, 3);
        }
        let roll = PAPER_ROLLS.iter().position(|row| row.value == kitchen.wrapping.roll);
        bits.put(roll.unwrap_or(0) as u32, 2);
        bits.put(u32::from(kitchen.wrapping.spare_percent), 7);
    }
    if kitchen.grinder != usual.grinder {
        section(bits, GRINDER);
        write_grinder(bits, &kitchen.grinder);
    }
    if let Some(freezer) = kitchen.freezer {
        section(bits, FREEZER);
        bits.put(freezer.size.to_litres().round() as u32, 12);
        bits.put(freezer.free.to_litres().round() as u32, 12);
        bits.flag(freezer.pace == LoadRule::Full);
    }
    if names == Names::Included && !(kitchen.owner.is_empty() && kitchen.tag.is_empty()) {
        section(bits, NAMES);
        for name in [&kitchen.owner, &kitchen.tag] {
            v1::write_text(bits, name, NAME_BITS);
        }
    }
}

/// Frozen: a new wrap goes to the end.
const WRAPS: [Wrap; 6] = [
    Wrap::Paper(Fold::Butcher),
    Wrap::Paper(Fold::Drugstore),
    Wrap::Paper(Fold::DrugstoreShort),
    Wrap::Paper(Fold::Square),
    Wrap::Zip,
    Wrap::Vacuum,
];

fn tenths(content: FatContent) -> u32 {
    (content.to_percent() * 10.0).round() as u32
}

fn write_grinder(bits: &mut Writer, grinder: &Grinder) {
    let (mix, target) = match grinder.mix {
        Mix::Plain => (0, None),
        Mix::Burger(target) => (1, Some(target)),
        Mix::SausageLean(None) => (2, None),
        Mix::SausageLean(Some(target)) => (3, Some(target)),
    };
    bits.put(mix, 2);
    if let Some(target) = target {
        bits.put(tenths(target.fat), 10);
        match target.added {
            Added::Fat(NamedFat::PorkBackFat) => bits.put(0, 2),
            Added::Fat(NamedFat::BeefFat) => bits.put(1, 2),
            Added::PorkTrim(content) => {
                bits.put(2, 2);
                bits.put(tenths(content), 10);
            }
        }
    }
    match grinder.vessel {
        Vessel::Takes(mass) => {
            bits.flag(false);
            bits.put(mass.to_grams().round() as u32, 16);
        }
        Vessel::Holds(volume) => {
            bits.flag(true);
            bits.put((volume.to_litres() * 1000.0).round() as u32, 16);
        }
    }
    bits.flag(grinder.patties.is_some());
    if let Some((patty, a_pack)) = grinder.patties {
        bits.flag(patty == Patty::ThreeToOne);
        bits.put(u32::from(a_pack), 4);
    }
}

fn read_date(bits: &mut Reader) -> Result<Option<Date>, LinkError> {
    if !bits.flag()? {
        return Ok(None);
    }
    let days = bits.take(17)?;
    // A date holds 16 bits of days at a time.
    let half = (days / 2) as u16;
    Ok(Some(first_day()?.plus_days(half).plus_days((days - u32::from(half)) as u16)))
}

fn read_wrapping(bits: &mut Reader) -> Result<Wrapping, LinkError> {
    let mut wrapping = Wrapping::default();
    for wrap in &mut wrapping.by {
        *wrap = *WRAPS.get(bits.take(3)? as usize).ok_or(LinkError::Impossible)?;
    }
    wrapping.roll = PAPER_ROLLS.get(bits.take(2)? as usize).ok_or(LinkError::Impossible)?.value;
    wrapping.spare_percent = bits.take(7)? as u8;
    Ok(wrapping)
}

fn read_grinder(bits: &mut Reader) -> Result<Grinder, LinkError> {
    let percent = |bits: &mut Reader| -> Result<FatContent, LinkError> {
        Ok(FatContent::percent(f64::from(bits.take(10)?) / 10.0))
    };
    let target = |bits: &mut Reader| -> Result<Target, LinkError> {
        let fat = percent(bits)?;
        let added = match bits.take(2)? {
            0 => Added::Fat(NamedFat::PorkBackFat),
            1 => Added::Fat(NamedFat::BeefFat),
            2 => Added::PorkTrim(percent(bits)?),
            _ => return Err(LinkError::Impossible),
        };
        Ok(Target { fat, added })
    };
    let mix = match bits.take(2)? {
        0 => Mix::Plain,
        1 => Mix::Burger(target(bits)?),
        2 => Mix::SausageLean(None),
        _ => Mix::SausageLean(Some(target(bits)?)),
    };
    let vessel = if bits.flag()? {
        Vessel::Holds(Volume::litres(f64::from(bits.take(16)?) / 1000.0))
    } else {
        Vessel::Takes(Mass::grams(f64::from(bits.take(16)?)))
    };
    let patties = if bits.flag()? {
        let patty = if bits.flag()? { Patty::ThreeToOne } else { Patty::FourToOne };
        Some((patty, bits.take(4)? as u8))
    } else {
        None
    };
    Ok(Grinder { mix, vessel, patties })
}

fn read_freezer(bits: &mut Reader) -> Result<Freezer, LinkError> {
    let (size, free) = (bits.take(12)?, bits.take(12)?);
    let pace = if bits.flag()? { LoadRule::Full } else { LoadRule::Cautious };
    let litres = |litres: u32| Volume::litres(f64::from(litres));
    Ok(Freezer { size: litres(size), free: litres(free), pace })
}
