//! What every language does alike with its words: the case of a first letter, and which word says how a stroke lies.

use super::STROKE_LIES;

/// The words with a small letter first.
pub(super) fn lower(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// The words with a capital first.
pub(super) fn upper(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// How a stroke lies that runs so far to the right and down, for who does not see it.
pub fn stroke_lies((right, down): (f64, f64)) -> &'static str {
    /// The tangent of half of half a right angle.
    const FLAT: f64 = 0.414;
    let [level, upright, rising, falling] = STROKE_LIES;
    if down.abs() <= right.abs() * FLAT {
        level
    } else if right.abs() <= down.abs() * FLAT {
        upright
    } else if right * down < 0.0 {
        rising
    } else {
        falling
    }
}
