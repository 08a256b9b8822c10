//! The parts of a muscle while they are changed. What comes out may be refused: too many parts, an empty one.

use hindsaddle_model::plan::Part;
use hindsaddle_model::product::Cut;

/// One part becomes something else.
pub fn recut(parts: &[Part], place: usize, cut: Cut) -> Vec<Part> {
    let mut parts = parts.to_vec();
    parts[place].cut = cut;
    parts
}

/// One part takes `percent` of the length; the next one (the one before, for the last) gives or takes the rest.
pub fn resized(parts: &[Part], place: usize, percent: u8) -> Vec<Part> {
    let mut parts = parts.to_vec();
    let other = if place + 1 < parts.len() { place + 1 } else { place - 1 };
    let both = parts[place].percent + parts[other].percent;
    parts[place].percent = percent;
    parts[other].percent = both.saturating_sub(percent);
    parts
}

/// The last part in two halves.
pub fn split(parts: &[Part]) -> Vec<Part> {
    let mut parts = parts.to_vec();
    if let Some(last) = parts.last_mut() {
        let half = Part { percent: last.percent / 2, ..*last };
        last.percent -= half.percent;
        parts.push(half);
    }
    parts
}

/// Where the parts end, in percent of the length, but for the last.
pub fn boundaries(parts: &[Part]) -> Vec<u8> {
    let ends = parts.iter().scan(0, |end, part| {
        *end += part.percent;
        Some(*end)
    });
    ends.take(parts.len().saturating_sub(1)).collect()
}

/// The end of a part moved to `percent` of the length, as far as both its neighbours leave room; a muscle that
/// is whole is divided there.
pub fn bounded(parts: &[Part], place: usize, percent: u8) -> Vec<Part> {
    if let [only] = parts {
        let percent = percent.max(1).min(99);
        return vec![Part { percent, ..*only }, Part { percent: 100 - percent, ..*only }];
    }
    let before: u8 = parts[..place].iter().map(|part| part.percent).sum();
    let both = parts[place].percent + parts[place + 1].percent;
    resized(parts, place, percent.saturating_sub(before).max(1).min(both - 1))
}

/// One part goes to the next one, the last one to the one before.
pub fn joined(parts: &[Part], place: usize) -> Vec<Part> {
    let mut parts = parts.to_vec();
    let gone = parts.remove(place);
    let other = place.min(parts.len() - 1);
    parts[other].percent += gone.percent;
    parts
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::plan::Division;

    use super::*;

    #[test]
    fn an_end_moves_as_far_as_its_neighbours_leave_room() {
        let parts: Vec<Part> = [30, 20, 50].map(|percent| Part { percent, cut: Cut::Grind }).to_vec();
        assert_eq!(boundaries(&parts), [30, 50]);
        for (place, percent, expected) in
            [(0, 40, [40, 10, 50]), (0, 90, [49, 1, 50]), (0, 0, [1, 49, 50]), (1, 99, [30, 69, 1])]
        {
            let percents: Vec<u8> = bounded(&parts, place, percent).iter().map(|part| part.percent).collect();
            assert_eq!(percents, expected, "{place} to {percent}");
        }
        let whole = [Part { percent: 100, cut: Cut::Grind }];
        assert_eq!(boundaries(&bounded(&whole, 0, 35)), [35]);
        assert_eq!(boundaries(&bounded(&whole, 0, 100)), [99]);
    }

    #[test]
    fn what_is_changed_still_adds_up() {
        let mut parts = vec![Part { percent: 100, cut: Cut::Grind }];
        for _ in 0..3 {
            parts = split(&parts);
        }
        parts = resized(&parts, 3, 20);
        parts = resized(&parts, 0, 55);
        parts = recut(&parts, 1, Cut::Discard);
        assert_eq!(Division::new(parts.clone()).unwrap().parts(), parts);
        for place in [3, 0, 1] {
            parts = joined(&parts, place);
            assert!(Division::new(parts.clone()).is_ok(), "{parts:?}");
        }
        assert_eq!(parts.len(), 1);
    }

    #[test]
    fn more_than_both_parts_have_is_refused() {
        let parts = split(&[Part { percent: 100, cut: Cut::Grind }]);
        assert!(Division::new(resized(&parts, 0, 100)).is_err());
        assert!(Division::new(resized(&parts, 1, 0)).is_err());
    }
}
