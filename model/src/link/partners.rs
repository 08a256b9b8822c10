//! The partners of a season in a link.
//!
//! | field | bits |
//! |---|---|
//! | partners less two | 3 |
//! | equal parts? then once, else for each: parts less one | 1; 10 |
//! | named? then for each: length in bytes, UTF-8 | 1; 7 |
//! | claims; for each, in version 1's order of muscles: its muscle, whose | 5; 5, 3 |
//!
//! Nobody has no such field: whoever writes them says first whether there are any.

use super::bits::{Reader, Writer};
use super::{LinkError, Names, v1};
use crate::partners::{Claim, FEWEST_PARTNERS, Partner, Partners};

/// Bits of parts.
const PARTS_BITS: u32 = 10;
/// Bits of a name's length in bytes.
const NAME_BITS: u32 = 7;

/// Partners that are not nobody.
pub(super) fn write(bits: &mut Writer, partners: &Partners, names: Names) {
    let all = partners.all();
    bits.put((all.len() - FEWEST_PARTNERS) as u32, 3);
    bits.flag(partners.are_equal());
    let told = if partners.are_equal() { &all[..1] } else { all };
    for partner in told {
        bits.put(u32::from(partner.parts) - 1, PARTS_BITS);
    }
    let has_names = names == Names::Included && all.iter().any(|partner| !partner.name.is_empty());
    bits.flag(has_names);
    if has_names {
        for partner in all {
            v1::write_text(bits, &partner.name, NAME_BITS);
        }
    }
    bits.put(partners.claims().len() as u32, 5);
    for (muscle, code) in v1::MUSCLES.into_iter().zip(0..) {
        if let Some(partner) = partners.claimant(muscle) {
            bits.put(code, 5);
            bits.put(u32::from(partner), 3);
        }
    }
}

/// What [`write`] wrote.
pub(super) fn read(bits: &mut Reader) -> Result<Partners, LinkError> {
    let number = bits.take(3)? as usize + FEWEST_PARTNERS;
    let read_parts = |bits: &mut Reader| -> Result<u16, LinkError> { Ok(bits.take(PARTS_BITS)? as u16 + 1) };
    let alike = if bits.flag()? { Some(read_parts(bits)?) } else { None };
    let mut all = Vec::new();
    for _ in 0..number {
        let parts = alike.map_or_else(|| read_parts(bits), Ok)?;
        all.push(Partner { name: String::new(), parts });
    }
    if bits.flag()? {
        for partner in &mut all {
            partner.name = v1::read_text(bits, NAME_BITS)?;
        }
    }
    let mut claims = Vec::new();
    for _ in 0..bits.take(5)? {
        let muscle = *v1::MUSCLES.get(bits.take(5)? as usize).ok_or(LinkError::Impossible)?;
        claims.push(Claim { muscle, partner: bits.take(3)? as u8 });
    }
    Partners::checked(all, claims).map_err(|_| LinkError::Impossible)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::anatomy::Muscle;

    fn partner(name: &str, parts: u16) -> Partner {
        Partner { name: name.to_owned(), parts }
    }

    fn over(partners: &Partners, names: Names) -> (Partners, usize) {
        let mut writer = Writer::default();
        write(&mut writer, partners, names);
        let bytes = writer.into_bytes();
        (read(&mut Reader::new(&bytes)).unwrap(), bytes.len())
    }

    #[test]
    fn partners_come_back_as_they_were_sent() {
        let claims = vec![
            Claim { muscle: Muscle::Neck, partner: 1 },
            Claim { muscle: Muscle::Tenderloin, partner: 2 },
        ];
        let three = vec![partner("Ann", 50), partner("Jäger", 30), partner("", 10)];
        let three = Partners::checked(three, claims.clone()).unwrap();
        assert_eq!(over(&three, Names::Included).0, three);
        let silent = vec![partner("", 50), partner("", 30), partner("", 10)];
        assert_eq!(over(&three, Names::LeftOut).0, Partners::checked(silent, claims).unwrap());
        let halves = Partners::checked(vec![partner("", 1), partner("", 1)], Vec::new()).unwrap();
        assert_eq!(over(&halves, Names::Included), (halves, 3));
    }
}
