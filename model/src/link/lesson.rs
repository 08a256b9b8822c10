//! A lesson as text for the fragment of an address, and back: `L`, a version, base64url of packed bits and a checksum.
//!
//! Version 1, most significant bit first: which side (2 bits: wherever, outer, inner, above), games (3 bits: find, cut,
//! knife), order (8 bits), muscles (26 bits, in the frozen order of version 1 of a plan's link), one bit of zero. Then
//! CRC-16 over `L1` and that. Frozen: a link that was given to a class opens for ever.

use data_encoding::BASE64URL_NOPAD;

use super::bits::{Ended, Reader, Writer};
use super::v1::MUSCLES;
use super::{CRC, LONGEST, LinkError, clean, decoded};
use crate::anatomy::{Muscle, View};
use crate::lesson::{Game, Lesson};

/// How a lesson's text begins. No plan's link does.
const SIGN: char = 'L';
const VERSION: char = '1';

/// The codes of the sides and of the games, by place.
const SIDES: [Option<View>; 4] = [None, Some(View::Outer), Some(View::Inner), Some(View::Above)];
const GAMES: [Game; 3] = [Game::Find, Game::Cut, Game::Knife];

/// Whether a text claims to be a lesson, in whatever version.
pub fn is_lesson(text: &str) -> bool {
    let mut characters = clean(text).chars();
    characters.next() == Some(SIGN) && characters.next().is_some_and(|version| version.is_ascii_digit())
}

fn payload(lesson: &Lesson) -> Vec<u8> {
    let mut bits = Writer::default();
    let side = SIDES.iter().position(|side| *side == lesson.view()).unwrap_or(0);
    bits.put(side as u32, 2);
    for game in GAMES {
        bits.flag(lesson.games().any(|other| other == game));
    }
    bits.put(u32::from(lesson.order()), 8);
    for muscle in MUSCLES {
        bits.flag(lesson.muscles().any(|other| other == muscle));
    }
    bits.into_bytes()
}

fn checksum(payload: &[u8]) -> [u8; 2] {
    let mut digest = CRC.digest();
    digest.update(&[SIGN as u8, VERSION as u8]);
    digest.update(payload);
    digest.finalize().to_be_bytes()
}

/// The text of a lesson. Equal lessons have equal texts.
pub fn write(lesson: &Lesson) -> String {
    let mut bytes = payload(lesson);
    bytes.extend(checksum(&bytes));
    let mut text = String::from_iter([SIGN, VERSION]);
    BASE64URL_NOPAD.encode_append(&bytes, &mut text);
    text
}

/// The lesson a text says, cleaned as [`super::read`] cleans it.
///
/// # Errors
/// See [`LinkError`]; nothing is guessed or mended.
pub fn read(text: &str) -> Result<Lesson, LinkError> {
    if text.len() > LONGEST {
        return Err(LinkError::TooLong);
    }
    let mut characters = clean(text).chars();
    match (characters.next(), characters.next()) {
        (None, _) => return Err(LinkError::Empty),
        (Some(SIGN), Some(VERSION)) => {}
        (Some(SIGN), Some('2'..='9')) => return Err(LinkError::Newer),
        (Some(SIGN), None) => return Err(LinkError::CutShort),
        _ => return Err(LinkError::Unknown),
    }
    let packed = decoded(characters.as_str())?;
    let (payload, sum) = packed.split_at(packed.len().saturating_sub(2));
    if payload.len() < LENGTH {
        return Err(LinkError::CutShort);
    }
    if checksum(payload) != *sum {
        return Err(LinkError::Mistyped);
    }
    let lesson = unpacked(payload).map_err(|Ended| LinkError::CutShort)?.ok_or(LinkError::Impossible)?;
    // One lesson, one text: a bit that should be zero, or bytes behind the end, make another.
    if self::payload(&lesson) == payload { Ok(lesson) } else { Err(LinkError::Impossible) }
}

/// How many bytes the bits of version 1 take.
const LENGTH: usize = (2 + 3 + 8 + 26_usize).div_ceil(8);

/// None if the bits say nothing that can be asked.
fn unpacked(payload: &[u8]) -> Result<Option<Lesson>, Ended> {
    let mut bits = Reader::new(payload);
    let side = SIDES[bits.take(2)? as usize];
    let mut games = Vec::new();
    for game in GAMES {
        if bits.flag()? {
            games.push(game);
        }
    }
    let order = bits.take(8)? as u8;
    let mut muscles: Vec<Muscle> = Vec::new();
    for muscle in MUSCLES {
        if bits.flag()? {
            muscles.push(muscle);
        }
    }
    Ok(Lesson::new(side, &games, &muscles, order).ok())
}
