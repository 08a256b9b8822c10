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
//!
//! A section that is not in this table was written by a later version. A plan without a section is a plan that
//! version 1 can say, and is written so. Sections are added, never changed.

use super::bits::{Reader, Writer};
use super::{LinkError, Names, v1};
use crate::anatomy::Side;
use crate::plan::{Plan, Restored};
use crate::wounds::Wound;

const WOUNDS: u32 = 0;
const SIDES: [Side; 2] = [Side::Left, Side::Right];
/// Added to x, so that it is never below zero.
const X_SHIFT: i8 = 20;

/// Whether the plan has anything that version 1 cannot say.
pub(super) fn is_needed(plan: &Plan) -> bool {
    !plan.wounds().is_empty()
}

pub(super) fn write(bits: &mut Writer, plan: &Plan, names: Names) {
    v1::write(bits, plan, names);
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
    bits.flag(false);
}

fn section(bits: &mut Writer, number: u32) {
    bits.flag(true);
    bits.put(number, 4);
}

pub(super) fn read(bits: &mut Reader) -> Result<Restored, LinkError> {
    let mut parts = v1::read(bits)?;
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
            _ => return Err(LinkError::Newer),
        }
    }
    Ok(parts)
}
