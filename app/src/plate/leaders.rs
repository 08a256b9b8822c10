//! Lines that lead from muscles to their labels, and never cross.
//!
//! Labels stand on slots around the animal. Each label first takes the slot nearest to it, then two labels
//! change slots as long as that makes their lines shorter together. Two lines that cross are longer than the
//! same two uncrossed, so when nothing gets shorter any more, nothing crosses.

use super::Frame;

/// A point of the drawing.
pub type Point = (f64, f64);

/// Where the text stands, seen from its slot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// To the left of it.
    Left,
    /// To the right.
    Right,
    /// Over it.
    Over,
    /// Under it.
    Under,
}

/// A place for a label.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slot {
    /// Where the line ends.
    pub at: Point,
    /// Where the text is.
    pub stands: Stands,
}

/// Slots in a row or a column from `from` to `to`, at least `step` apart.
pub fn slots(from: Point, to: Point, step: f64, stands: Stands) -> Vec<Slot> {
    let length = distance(from, to);
    // Where the steps fit exactly, rounding must not take the last one.
    let count = (length / step + 1e-9).floor();
    let at = |index: f64| {
        let part = if count > 0.0 { index / count } else { 0.5 };
        (from.0 + (to.0 - from.0) * part, from.1 + (to.1 - from.1) * part)
    };
    (0..=count as u32).map(|index| Slot { at: at(f64::from(index)), stands }).collect()
}

/// Slots over and under a frame, for labels of a width and a height.
pub fn around(frame: Frame, width: f64, height: f64) -> Vec<Slot> {
    let (left, right) = (frame.x + width / 2.0, frame.x + frame.width - width / 2.0);
    let bottom = frame.y + frame.height + height * 0.4;
    let mut all = slots((left, frame.y - height * 0.4), (right, frame.y - height * 0.4), width, Stands::Over);
    all.extend(slots((left, bottom), (right, bottom), width, Stands::Under));
    all
}

/// Slots about a standing animal seen from the side: before the chest, over the back, behind the rump, under
/// the belly. `width` and `height` are those of a label.
pub fn about_the_animal(width: f64, height: f64) -> Vec<Slot> {
    let step = height * 1.15;
    let mut all = slots((-75.0, -1040.0), (-75.0, -330.0), step, Stands::Left);
    // Names differ in length: next to the longest a slot may be a little narrower.
    let width = width * 0.95;
    all.extend(slots((330.0, -1115.0), (1130.0, -1115.0), width, Stands::Over));
    all.extend(slots((1205.0, -1060.0), (1205.0, -430.0), step, Stands::Right));
    all.extend(slots(
        (265.0 + width / 2.0, -455.0),
        (875.0 - width / 2.0, -455.0),
        width * 0.8,
        Stands::Under,
    ));
    all
}

/// For each anchor the slot of its label, by its place; None if there are fewer slots than anchors.
pub fn assign(anchors: &[Point], slots: &[Slot]) -> Option<Vec<usize>> {
    if slots.len() < anchors.len() {
        return None;
    }
    let mut taken: Vec<Option<usize>> = vec![None; slots.len()];
    for (label, anchor) in anchors.iter().enumerate() {
        let nearest = (0..slots.len())
            .filter(|slot| taken[*slot].is_none())
            .min_by(|a, b| distance(*anchor, slots[*a].at).total_cmp(&distance(*anchor, slots[*b].at)))?;
        taken[nearest] = Some(label);
    }
    let cost = |label: Option<usize>, slot: usize| {
        label.map_or(0.0, |label| distance(anchors[label], slots[slot].at))
    };
    let mut shorter = true;
    while shorter {
        shorter = false;
        for a in 0..slots.len() {
            for b in a + 1..slots.len() {
                let now = cost(taken[a], a) + cost(taken[b], b);
                let changed = cost(taken[b], a) + cost(taken[a], b);
                // Less by a margin, so that rounding cannot turn two labels for ever.
                if changed + 1e-6 < now {
                    taken.swap(a, b);
                    shorter = true;
                }
            }
        }
    }
    (0..anchors.len()).map(|label| taken.iter().position(|other| *other == Some(label))).collect()
}

fn distance(a: Point, b: Point) -> f64 {
    ((a.0 - b.0) * (a.0 - b.0) + (a.1 - b.1) * (a.1 - b.1)).sqrt()
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::anatomy::{Region, View};
    use hindsaddle_model::animal::Species;

    use super::*;
    use crate::plate::figure::plate;

    fn cross(a: (Point, Point), b: (Point, Point)) -> bool {
        let side = |(p, q): (Point, Point), r: Point| (q.0 - p.0) * (r.1 - p.1) - (q.1 - p.1) * (r.0 - p.0);
        side(a, b.0) * side(a, b.1) < -1e-9 && side(b, a.0) * side(b, a.1) < -1e-9
    }

    #[track_caller]
    fn check(anchors: &[Point], slots: &[Slot], what: &str) {
        let assigned = assign(anchors, slots).unwrap_or_else(|| panic!("{what}: too few slots"));
        let lines: Vec<(Point, Point)> =
            anchors.iter().zip(&assigned).map(|(anchor, slot)| (*anchor, slots[*slot].at)).collect();
        for (index, one) in lines.iter().enumerate() {
            for (other, line) in lines.iter().enumerate().skip(index + 1) {
                assert_ne!(assigned[index], assigned[other], "{what}: two labels in one place");
                assert!(!cross(*one, *line), "{what}: {index} and {other} cross");
            }
        }
    }

    /// Every species, every view and region, as names on a desk and as numbers on a phone.
    #[test]
    fn no_two_leaders_cross() {
        for species in Species::ALL {
            for view in View::ALL {
                let plate = plate(view, species);
                for (width, height) in [(250.0, 42.0), (75.0, 75.0)] {
                    for region in std::iter::once(None).chain(Region::ALL.into_iter().map(Some)) {
                        let Some(frame) = plate.frame(region, false) else { continue };
                        let inside = |(x, y): &Point| {
                            *x > frame.x
                                && *x < frame.x + frame.width
                                && *y > frame.y
                                && *y < frame.y + frame.height
                        };
                        let anchors: Vec<Point> =
                            plate.areas.iter().map(|area| area.label).filter(inside).collect();
                        let slots = if region.is_none() && view != View::Above {
                            about_the_animal(width, height)
                        } else {
                            around(frame, width.min(frame.width / 8.0), height)
                        };
                        check(&anchors, &slots, &format!("{species:?} {view:?} {region:?}"));
                    }
                }
            }
        }
    }

    #[test]
    fn steps_that_fit_exactly_are_all_there() {
        for width in [956.234_933_084_378_6, 0.3, 0.7, 1100.1] {
            assert_eq!(slots((0.1, 0.0), (0.1 + width * 7.0, 0.0), width, Stands::Over).len(), 8, "{width}");
        }
    }

    #[test]
    fn too_few_slots_are_said() {
        assert_eq!(assign(&[(0.0, 0.0), (1.0, 0.0)], &around_one()), None);
    }

    fn around_one() -> Vec<Slot> {
        slots((0.0, 0.0), (5.0, 0.0), 10.0, Stands::Over)
    }
}
