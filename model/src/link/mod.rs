//! A plan as text for the fragment of an address, and back.
//!
//! A link is one version character and base64url of packed bits with a CRC-16 behind them. Equal plans give
//! equal links, and a link that is read and written again is the same text: anything else is refused. A link
//! is a promise: version 1 is frozen, its codes are its own, and every link in `tests/links` must open for
//! ever. What version 1 cannot say is a section of version 2, which reads and writes version 1's fields first; a
//! season of several animals, or one that is shared, is version 3, which does so with version 2's.

mod bits;
pub mod lesson;
mod partners;
mod scale;
mod v1;
mod v2;
mod v3;
mod wishes;

use bits::{Reader, Writer};
use data_encoding::BASE64URL_NOPAD;

use v1::Usual;

use crate::plan::{Plan, Restored};
use crate::season::Season;

/// The longest text that is looked at, in bytes.
pub const LONGEST: usize = 8192;

/// Whether titles and names travel with the link.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Names {
    /// It does.
    Included,
    /// It stays at home.
    LeftOut,
}

/// Why a text is not a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkError {
    /// Nothing there.
    Empty,
    /// Longer than [`LONGEST`].
    TooLong,
    /// Written by a later version of the planner.
    Newer,
    /// Not the beginning of any link of the planner.
    Unknown,
    /// A character that no link has.
    Character,
    /// Its end is missing.
    CutShort,
    /// The checksum is wrong: mistyped, or changed on the way.
    Mistyped,
    /// The checksum is right, but it does not say a plan that can be made.
    Impossible,
    /// No plan, but a lesson: see [`lesson`].
    Lesson,
}

const CRC: crc::Crc<u16> = crc::Crc::<u16>::new(&crc::CRC_16_IBM_SDLC);

/// A version of the link, by its first character.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Version {
    One,
    Two,
    Three,
}

impl Version {
    fn of(season: &Season, names: Names) -> Self {
        if v3::is_needed(season) {
            Version::Three
        } else if v2::is_needed(season.animal(0), names) {
            Version::Two
        } else {
            Version::One
        }
    }

    const fn character(self) -> char {
        match self {
            Version::One => '1',
            Version::Two => '2',
            Version::Three => '3',
        }
    }

    fn payload(self, season: &Season, names: Names) -> Vec<u8> {
        let mut bits = Writer::default();
        match self {
            Version::One => v1::write(&mut bits, season.animal(0), names, &Usual::frozen()),
            Version::Two => v2::write(&mut bits, season.animal(0), names, &Usual::frozen()),
            Version::Three => v3::write(&mut bits, season, names),
        }
        bits.into_bytes()
    }

    fn checksum(self, payload: &[u8]) -> [u8; 2] {
        let mut digest = CRC.digest();
        match self {
            Version::One => {}
            // From version 2 on a slip in the version character is noticed too.
            Version::Two | Version::Three => digest.update(&[self.character() as u8]),
        }
        digest.update(payload);
        digest.finalize().to_be_bytes()
    }

    /// The season, and how many bytes it took.
    fn read(self, bytes: &[u8]) -> Result<(Season, usize), LinkError> {
        let mut bits = Reader::new(bytes);
        let usual = Usual::frozen();
        let season = match self {
            Version::One => alone(v1::read(&mut bits, &usual)?),
            Version::Two => alone(v2::read(&mut bits, &usual)?),
            Version::Three => v3::read(&mut bits),
        }?;
        Ok((season, bits.bytes_read()))
    }
}

fn alone(parts: Restored) -> Result<Season, LinkError> {
    Plan::restore(parts).map(Season::from).map_err(|_| LinkError::Impossible)
}

/// The season as text, beginning with the version character: the lowest version that can say it.
pub fn write(season: &Season, names: Names) -> String {
    let version = Version::of(season, names);
    let mut bytes = version.payload(season, names);
    bytes.extend(version.checksum(&bytes));
    let mut text = String::from(version.character());
    BASE64URL_NOPAD.encode_append(&bytes, &mut text);
    text
}

/// The season a text says. White space, a leading `#` and what mail and chat programs put behind an address are
/// stripped first.
///
/// # Errors
/// See [`LinkError`]; nothing is guessed or mended.
pub fn read(text: &str) -> Result<Season, LinkError> {
    if text.len() > LONGEST {
        return Err(LinkError::TooLong);
    }
    let mut characters = clean(text).chars();
    let version = match characters.next() {
        None => return Err(LinkError::Empty),
        Some('1') => Version::One,
        Some('2') => Version::Two,
        Some('3') => Version::Three,
        Some('4'..='9') => return Err(LinkError::Newer),
        Some(_) if lesson::is_lesson(text) => return Err(LinkError::Lesson),
        Some(_) => return Err(LinkError::Unknown),
    };
    let packed = decoded(characters.as_str())?;
    let (payload, checksum) = packed.split_at(packed.len().saturating_sub(2));
    if checksum.len() < 2 {
        return Err(LinkError::CutShort);
    }
    if version.checksum(payload) != *checksum {
        // A link that lost its end leaves its reader without bits; one that was mistyped usually does not.
        return Err(match version.read(&packed) {
            Err(LinkError::CutShort) => LinkError::CutShort,
            Ok((_, used)) if used + 2 > packed.len() => LinkError::CutShort,
            Ok(_) | Err(_) => LinkError::Mistyped,
        });
    }
    let (season, used) = version.read(payload)?;
    if used != payload.len()
        || Version::of(&season, Names::Included) != version
        || version.payload(&season, Names::Included) != payload
    {
        return Err(LinkError::Impossible);
    }
    Ok(season)
}

/// A text without what people and programs put around it.
fn clean(text: &str) -> &str {
    text.trim().trim_start_matches('#').trim_end_matches(['.', ',', ')', '>', '"', '\''])
}

/// Base64url without padding; a lone last character is a link cut short.
fn decoded(text: &str) -> Result<Vec<u8>, LinkError> {
    if !text.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'-' || byte == b'_') {
        return Err(LinkError::Character);
    }
    if text.len() % 4 == 1 {
        return Err(LinkError::CutShort);
    }
    // Left-over bits that are not zero come from a cut or a slip in the last character.
    BASE64URL_NOPAD.decode(text.as_bytes()).map_err(|_| LinkError::CutShort)
}

#[cfg(test)]
mod tests {
    /// The check value of CRC-16/IBM-SDLC (also called X-25) over "123456789", from the CRC catalogue.
    #[test]
    fn the_checksum_is_the_catalogued_one() {
        assert_eq!(super::CRC.checksum(b"123456789"), 0x906e);
    }
}
