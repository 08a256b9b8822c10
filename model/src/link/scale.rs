//! Section 6 of version 2 of the link: what the scale said, and the household's own figures. Its bits stand in
//! the table of `v2`; its codes are version 1's.

use std::num::NonZeroU8;

use super::LinkError;
use super::bits::{Reader, Writer};
use super::v1::{MUSCLES, PRODUCTS, code, grams, item};
use crate::anatomy::{Muscle, Side, Sides};
use crate::own::Own;
use crate::plan::{Plan, Restored};
use crate::scale::{OnScale, Weighing};
use crate::units::Mass;

const SIDES: [Side; 2] = [Side::Left, Side::Right];
const ALL_MEAT: u32 = 78;
const TUB: u32 = 79;
const PACKAGES: u32 = 80;
/// Added to a percent, so that it is never below zero.
const PERCENT_SHIFT: i8 = 32;

/// Whether the plan has anything to say here.
pub(super) fn is_needed(plan: &Plan) -> bool {
    !plan.weighings().is_empty() || !plan.own().is_table()
}

pub(super) fn write(bits: &mut Writer, plan: &Plan) {
    let (weighings, own) = (plan.weighings(), plan.own());
    bits.put(weighings.len() as u32, 6);
    for weighing in weighings {
        let (target, count) = match weighing.target {
            OnScale::Muscle(muscle, sides) => {
                let side = match sides {
                    Sides::Both => 0,
                    Sides::One(side) => 1 + code(&SIDES, &side),
                };
                (code(&MUSCLES, &muscle) * 3 + side, None)
            }
            OnScale::Lot => (ALL_MEAT, None),
            OnScale::Tub => (TUB, None),
            OnScale::Packages(product, count) => {
                (PACKAGES + code(&PRODUCTS, &product), Some(count.map_or(0, NonZeroU8::get)))
            }
        };
        bits.put(target, 7);
        let grams = grams(weighing.mass);
        let below = grams.ilog2();
        bits.put(below, 5);
        bits.put(grams - (1 << below), below);
        if let Some(count) = count {
            bits.put(u32::from(count), 8);
        }
    }
    bits.flag(!own.is_table());
    if !own.is_table() {
        let percent = |bits: &mut Writer, percent: i8| bits.put((percent + PERCENT_SHIFT) as u32, 6);
        percent(bits, own.meat_percent());
        for muscle in MUSCLES {
            let share = own.share_percent(muscle);
            bits.flag(share == 0);
            if share != 0 {
                percent(bits, share);
            }
        }
    }
}

pub(super) fn read(bits: &mut Reader, parts: &mut Restored) -> Result<(), LinkError> {
    for _ in 0..bits.take(6)? {
        let target = bits.take(7)?;
        let below = bits.take(5)?;
        // What is too heavy for a scale is refused with the plan.
        let mass = Mass::grams(f64::from(bits.take(below)?) + f64::from(1_u32 << below));
        let target = match target {
            ALL_MEAT => OnScale::Lot,
            TUB => OnScale::Tub,
            muscle if muscle < ALL_MEAT => {
                let sides = [Sides::Both, Sides::One(SIDES[0]), Sides::One(SIDES[1])];
                OnScale::Muscle(MUSCLES[(muscle / 3) as usize], sides[(muscle % 3) as usize])
            }
            product => {
                let count = NonZeroU8::new(bits.take(8)? as u8);
                OnScale::Packages(item(&PRODUCTS, product - PACKAGES)?, count)
            }
        };
        parts.weighings.push(Weighing { target, mass });
    }
    if bits.flag()? {
        let percent = |bits: &mut Reader| bits.take(6).map(|percent| percent as i8 - PERCENT_SHIFT);
        let meat = percent(bits)?;
        let mut shares = [0; Muscle::COUNT];
        for muscle in MUSCLES {
            if !bits.flag()? {
                shares[muscle.index()] = percent(bits)?;
            }
        }
        parts.own = Own::new(meat, shares);
    }
    Ok(())
}
