//! Where the shot spoiled meat: a place on the plate and a radius, and what that takes of each muscle.
//!
//! The plate and this file share one lattice: points a [`STEP`] of the withers' height apart, counted from the
//! point of the shoulder toward the tail and from the ground up. A muscle is the points inside its region on
//! the plate ([`tables::territory`]); a wound takes the points within its radius, on its side, whatever their
//! depth. What it takes is thrown away and never ground.

use crate::anatomy::{Muscle, Side};
use crate::tables::{self, Territory};

/// From one point of the lattice to the next, as a part of the withers' height.
pub const STEP: f64 = 0.02;
/// The most wounds of one animal: in and out, twice.
pub const MOST_WOUNDS: usize = 4;
/// Where a wound can be, in steps: from before the nose to behind the tail, from the ground to the ears.
pub const X_RANGE: (i8, i8) = (-20, 60);
/// See [`X_RANGE`].
pub const Y_RANGE: (i8, i8) = (0, 75);
/// Smallest and largest radius, in steps: 2 to 24 % of the withers' height.
pub const RADIUS_RANGE: (u8, u8) = (1, 12);
/// A tenth of the withers' height, 9 cm on the reference deer. Advice relayed by one page, from Illinois: four
/// or more inches around the wound. It is where to begin, not a safe distance: none is known.
pub const USUAL_RADIUS: u8 = 5;
/// Height at the withers of the reference deer, in millimetres: assumed, the bones fit it (muscle catalogue).
pub const REFERENCE_HEIGHT_MM: f64 = 920.0;
/// A wound that takes half of the muscle where it lies goes across it; less is a bite out of its edge, and the
/// rest stays in one piece. Judgement.
const ACROSS: f64 = 0.5;

/// Meat spoiled around a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wound {
    /// On which side of the animal.
    pub side: Side,
    /// Steps from the point of the shoulder toward the tail: within [`X_RANGE`].
    pub x: i8,
    /// Steps above the ground: within [`Y_RANGE`].
    pub y: i8,
    /// Steps from the middle to the rim: within [`RADIUS_RANGE`].
    pub radius: u8,
}

impl Wound {
    /// Whether it lies on the plate and has a radius that is computed.
    pub fn is_possible(self) -> bool {
        let within = |value: i8, (least, most): (i8, i8)| value >= least && value <= most;
        within(self.x, X_RANGE)
            && within(self.y, Y_RANGE)
            && self.radius >= RADIUS_RANGE.0
            && self.radius <= RADIUS_RANGE.1
    }

    fn takes(self, (x, y): (i8, i8)) -> bool {
        let (dx, dy) = (i32::from(x) - i32::from(self.x), i32::from(y) - i32::from(self.y));
        let radius = i32::from(self.radius);
        dx * dx + dy * dy <= radius * radius
    }
}

/// A muscle's points, and how far along its axis each lies.
fn points(territory: &Territory) -> Vec<((i8, i8), i32)> {
    let ((x1, y1), (x2, y2)) = territory.axis;
    let (dx, dy) = (i32::from(x2) - i32::from(x1), i32::from(y2) - i32::from(y1));
    let points = territory.rows.iter().flat_map(|(y, from, to)| (*from..=*to).map(|x| (x, *y)));
    points.map(|(x, y)| ((x, y), i32::from(x) * dx + i32::from(y) * dy)).collect()
}

/// The stretches of a muscle that wounds take, as shares of its mass counted from where its axis begins; in
/// order, apart from each other, 0 to 1. A bite out of the edge is taken off the nearer end.
pub fn spoiled(wounds: &[Wound], muscle: Muscle, side: Side) -> Vec<(f64, f64)> {
    // Most animals have no wound marked, and every muscle asks.
    if wounds.iter().all(|wound| wound.side != side) {
        return Vec::new();
    }
    let mut stretches: Vec<(usize, usize)> = Vec::new();
    let all = points(tables::territory(muscle));
    let count = all.len();
    let mut left = all.clone();
    for wound in wounds.iter().filter(|wound| wound.side == side) {
        let (taken, rest): (Vec<_>, Vec<_>) = left.iter().partition(|(point, _)| wound.takes(*point));
        let (Some(first), Some(last)) =
            (taken.iter().map(|(_, along)| *along).min(), taken.iter().map(|(_, along)| *along).max())
        else {
            continue;
        };
        // How many points of the whole muscle lie before the first that is taken, and behind the last.
        let before = all.iter().filter(|(_, along)| *along < first).count();
        let behind = all.iter().filter(|(_, along)| *along > last).count();
        let (amount, reach) = (taken.len(), count - before - behind);
        let begin = if amount as f64 >= reach as f64 * ACROSS {
            before + (reach - amount) / 2
        } else if before < behind {
            0
        } else {
            count - amount
        };
        put_in_order(&mut stretches, (begin, begin + amount));
        left = rest;
    }
    apart(&mut stretches, count);
    stretches.into_iter().map(|(from, to)| (from as f64 / count as f64, to as f64 / count as f64)).collect()
}

fn put_in_order(stretches: &mut Vec<(usize, usize)>, new: (usize, usize)) {
    let place = stretches.iter().position(|other| *other > new).unwrap_or(stretches.len());
    stretches.insert(place, new);
}

/// Moves stretches that overlap apart, within `count`; together they are never longer than that.
fn apart(stretches: &mut [(usize, usize)], count: usize) {
    let mut free = 0;
    for stretch in stretches.iter_mut() {
        let size = stretch.1 - stretch.0;
        stretch.0 = stretch.0.max(free);
        stretch.1 = stretch.0 + size;
        free = stretch.1;
    }
    let mut limit = count;
    for stretch in stretches.iter_mut().rev() {
        let size = stretch.1 - stretch.0;
        stretch.1 = stretch.1.min(limit);
        stretch.0 = stretch.1 - size;
        limit = stretch.0;
    }
}

/// The part of a muscle of one side that wounds take: 0 to 1.
pub fn share(wounds: &[Wound], muscle: Muscle, side: Side) -> f64 {
    spoiled(wounds, muscle, side).into_iter().map(|(from, to)| to - from).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stretches_that_overlap_move_apart_and_keep_their_size() {
        for (given, expected) in [
            (vec![(2, 5), (4, 6)], vec![(2, 5), (5, 7)]),
            (vec![(7, 10), (8, 10)], vec![(5, 8), (8, 10)]),
            (vec![(0, 4), (0, 4), (1, 3)], vec![(0, 4), (4, 8), (8, 10)]),
        ] {
            let mut stretches = given;
            apart(&mut stretches, 10);
            assert_eq!(stretches, expected);
        }
    }

    #[test]
    fn a_wound_as_wide_as_the_muscle_takes_what_lies_there() {
        // Over the loin, halfway along the back: the middle of the backstrap.
        let wound = Wound { side: Side::Left, x: 26, y: 48, radius: 3 };
        let taken = spoiled(&[wound], Muscle::Backstrap, Side::Left);
        let [(from, to)] = taken[..] else { panic!("{taken:?}") };
        assert!(from > 0.25 && to < 0.75, "{from} to {to}");
        assert!(spoiled(&[wound], Muscle::Backstrap, Side::Right).is_empty());
    }

    #[test]
    fn a_wound_over_everything_takes_everything_once() {
        let everywhere = Wound { side: Side::Right, x: 40, y: 40, radius: 12 };
        let twice = [everywhere, everywhere];
        assert_eq!(
            share(&twice, Muscle::Knuckle, Side::Right),
            share(&twice[..1], Muscle::Knuckle, Side::Right)
        );
        assert!(share(&twice, Muscle::Knuckle, Side::Right) > 0.5);
    }
}
