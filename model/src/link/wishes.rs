//! The wishes of a plan in a link.
//!
//! | field | bits |
//! |---|---|
//! | for each product: the rest, dinners or a share; dinners, or percent | 2; 10, 7 |
//! | a limit of knife work? its pieces | 1; 10 |
//! | demands; for each its muscle, in version 1's order, and its code | 5; 5, 4 |

use super::bits::{Reader, Writer};
use super::{LinkError, v1};
use crate::product::Product;
use crate::wishes::{Demand, Wish, Wishes};

/// Frozen: a new demand goes to the end.
const DEMANDS: [Demand; 12] = [
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

pub(super) fn write(bits: &mut Writer, wishes: &Wishes) {
    for wish in wishes.by {
        match wish {
            Wish::Rest => bits.put(0, 2),
            Wish::Dinners(dinners) => {
                bits.put(1, 2);
                bits.put(u32::from(dinners), 10);
            }
            Wish::Share(percent) => {
                bits.put(2, 2);
                bits.put(u32::from(percent), 7);
            }
        }
    }
    bits.flag(wishes.most_knife_work.is_some());
    if let Some(most) = wishes.most_knife_work {
        bits.put(u32::from(most), 10);
    }
    bits.put(wishes.demands.len() as u32, 5);
    for (muscle, demand) in &wishes.demands {
        bits.put(v1::MUSCLES.iter().position(|other| other == muscle).unwrap_or(0) as u32, 5);
        bits.put(DEMANDS.iter().position(|other| other == demand).unwrap_or(0) as u32, 4);
    }
}

/// What [`write`] wrote.
pub(super) fn read(bits: &mut Reader) -> Result<Wishes, LinkError> {
    let mut wishes = Wishes::default();
    for wish in &mut wishes.by {
        *wish = match bits.take(2)? {
            0 => Wish::Rest,
            1 => Wish::Dinners(bits.take(10)? as u16),
            2 => Wish::Share(bits.take(7)? as u8),
            _ => return Err(LinkError::Impossible),
        };
    }
    if bits.flag()? {
        wishes.most_knife_work = Some(bits.take(10)? as u16);
    }
    for _ in 0..bits.take(5)? {
        let muscle = *v1::MUSCLES.get(bits.take(5)? as usize).ok_or(LinkError::Impossible)?;
        let demand = *DEMANDS.get(bits.take(4)? as usize).ok_or(LinkError::Impossible)?;
        wishes.demands.push((muscle, demand));
    }
    Ok(wishes)
}
