//! Words fitted into a label: they get smaller before they would stand over, and narrower before they would be
//! too small to read.

/// A line of a label, placed: lengths in hundredths of a millimetre.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedLine {
    /// What it says.
    pub says: String,
    /// Its left end.
    pub x: i64,
    /// Its baseline.
    pub y: i64,
    /// Height of the letters.
    pub size: i64,
    /// The width it is pressed into; None where it is surely narrower.
    pub pressed: Option<i64>,
    /// The first line is bold.
    pub bold: bool,
}

/// From the edge of a label to its words.
const MARGIN: f64 = 150.0;
/// Largest and smallest letters; smaller ones are pressed instead.
const LARGEST: f64 = 450.0;
const SMALLEST: f64 = 150.0;
/// From line to line, in heights of a letter.
const LEADING: f64 = 1.18;
/// The first line is this much larger.
const FIRST: f64 = 1.3;
/// A line that may be this much of its room, or more, is pressed, because a browser's letters may be wider than
/// they are taken for here.
const NEARLY_FULL: f64 = 0.9;

/// Width of a letter over the size, generously.
fn width(letter: char) -> f64 {
    match letter {
        'i' | 'l' | 'j' | '.' | ',' | ';' | ':' | '|' | '\'' | ' ' | 't' | 'f' | 'r' | '(' | ')' => 0.4,
        'm' | 'w' | 'M' | 'W' | '%' | '@' => 0.95,
        'A'..='Z' | '0'..='9' | '_' => 0.7,
        // Wide scripts and pictures.
        '\u{1100}'.. => 1.1,
        _ => 0.57,
    }
}

fn length(says: &str, bold: bool) -> f64 {
    says.chars().map(width).sum::<f64>() * if bold { 1.08 } else { 1.0 }
}

/// Lines in a rectangle at (`left`, `top`), `across` wide and `down` high.
pub fn placed(lines: &[String], (left, top): (f64, f64), (across, down): (f64, f64)) -> Vec<PlacedLine> {
    let (room, high) = ((across - 2.0 * MARGIN).max(1.0), (down - 2.0 * MARGIN).max(1.0));
    let rows = lines.len() as f64 - 1.0 + FIRST;
    let size = (high / (rows * LEADING)).min(LARGEST);
    let mut y = top + MARGIN;
    lines
        .iter()
        .enumerate()
        .map(|(index, says)| {
            let bold = index == 0;
            let wanted = if bold { size * FIRST } else { size };
            let natural = length(says, bold);
            let fitted = wanted.min((room * NEARLY_FULL / natural).max(SMALLEST.min(wanted)));
            let taken = natural * fitted;
            y += wanted * LEADING;
            PlacedLine {
                says: says.clone(),
                x: (left + MARGIN).round() as i64,
                // The descenders stay above the next line.
                y: (y - wanted * 0.25).round() as i64,
                size: fitted.round() as i64,
                pressed: (taken > room * NEARLY_FULL + 1.0).then_some(room as i64),
                bold,
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_line_stays_between_the_edges() {
        let long = "Donaudampfschifffahrtsgesellschaft ".repeat(3);
        let lines: Vec<String> =
            [long.as_str(), "Packed 25 Nov 2026", "鹿鹿鹿鹿鹿鹿鹿鹿鹿鹿鹿鹿鹿鹿鹿鹿", "x", "y", "z", "w"]
                .map(str::to_owned)
                .to_vec();
        for (across, down) in [(6670.0, 2540.0), (10_160.0, 8470.0), (3000.0, 1500.0)] {
            for line in placed(&lines, (500.0, 700.0), (across, down)) {
                assert!(line.y as f64 <= 700.0 + down - MARGIN + 1.0, "{line:?}");
                assert!(line.y as f64 - line.size as f64 * 0.8 >= 700.0, "{line:?}");
                let end = line.pressed.map_or_else(
                    || length(&line.says, line.bold) * line.size as f64,
                    |pressed| pressed as f64,
                );
                assert!(line.x as f64 + end <= 500.0 + across - MARGIN + 2.0, "{line:?}");
            }
        }
    }

    #[test]
    fn short_words_are_as_large_as_they_may_be() {
        let lines = placed(&["Stew".into()], (0.0, 0.0), (6670.0, 2540.0));
        assert_eq!(lines[0].size, (LARGEST * FIRST) as i64);
        assert_eq!(lines[0].pressed, None);
    }
}
