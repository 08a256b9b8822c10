//! The paths of the plate as the build wrote them (`app/build/path.rs` has the form): moves, lines, curves and
//! closes on whole units.

use std::fmt::Write as _;
use std::rc::Rc;

use super::Frame;
use super::warp::Warp;

/// Where what was authored is drawn: once, or from above also in the mirror.
#[derive(Clone, Copy)]
pub(super) struct Place<'a> {
    /// Moves the points to another animal.
    pub(super) warp: Option<&'a Warp>,
    /// For each time it is drawn 1, or -1 for the mirror image in the midline.
    pub(super) sides: &'static [f64],
}

impl Place<'_> {
    /// Where a point is drawn on one of the sides.
    pub(super) fn at(self, (x, y): (f64, f64), side: f64) -> (f64, f64) {
        let at = (x, y * side);
        self.warp.map_or(at, |warp| warp.at(at))
    }
}

/// Calls `step` with the letter of each step and its points, as they were authored.
fn walk(data: &[u8], mut step: impl FnMut(char, &[(i32, i32)])) {
    let mut bytes = data.iter().copied();
    let (mut at, mut start) = ((0, 0), (0, 0));
    while let Some(run) = bytes.next() {
        let (letter, count) = [('m', 1), ('l', 1), ('c', 3), ('z', 0)][usize::from(run & 3)];
        for _ in 0..run >> 2 {
            let mut points = [(0, 0); 3];
            for point in &mut points[..count] {
                at.0 += number(&mut bytes);
                at.1 += number(&mut bytes);
                *point = at;
            }
            match letter {
                'm' => start = at,
                'z' => at = start,
                _ => {}
            }
            step(letter, &points[..count]);
        }
    }
}

fn number(bytes: &mut impl Iterator<Item = u8>) -> i32 {
    let (mut number, mut shift) = (0, 0);
    for byte in bytes {
        number |= i32::from(byte & 0x7f) << shift;
        shift += 7;
        if byte < 0x80 {
            break;
        }
    }
    if number & 1 == 0 { number >> 1 } else { -(number >> 1) }
}

/// The path with every point at its place, as an attribute: relative, on whole units.
pub(super) fn drawn(data: &[u8], place: Place<'_>) -> Rc<str> {
    let mut path = String::with_capacity(data.len() * 3);
    let (mut at, mut start) = ((0, 0), (0, 0));
    let mut before = ' ';
    for side in place.sides {
        walk(data, |letter, points| {
            // What begins with a capital can follow another path.
            let said = if path.is_empty() { 'M' } else { letter };
            // A letter that was just said need not be said again, except that points after an m would be lines.
            if said != before || said == 'm' {
                path.push(said);
            }
            before = said;
            let from = at;
            for &(x, y) in points {
                let (x, y) = place.at((f64::from(x), f64::from(y)), *side);
                at = (x.round() as i32, y.round() as i32);
                for number in [at.0 - from.0, at.1 - from.1] {
                    if number >= 0 && path.ends_with(|last: char| last.is_ascii_digit()) {
                        path.push(' ');
                    }
                    let _ = write!(path, "{number}");
                }
            }
            match letter {
                'm' => start = at,
                'z' => at = start,
                _ => {}
            }
        });
    }
    path.into()
}

/// The frame around what is drawn of a path, and its control points; None if there is no path.
pub(super) fn bounds(data: &[u8], place: Place<'_>) -> Option<Frame> {
    let mut frame: Option<Frame> = None;
    for side in place.sides {
        walk(data, |_, points| {
            for &(x, y) in points {
                let (x, y) = place.at((f64::from(x), f64::from(y)), *side);
                let here = Frame { x, y, width: 0.0, height: 0.0 };
                frame = Some(frame.map_or(here, |frame| frame.with(here)));
            }
        });
    }
    frame
}

#[cfg(test)]
mod tests {
    use super::*;

    /// To (10, 20), a line to (15, 15), and back.
    const FLAG: &[u8] = &[4, 20, 40, 5, 10, 11, 7];

    fn on(data: &[u8], sides: &'static [f64]) -> Rc<str> {
        drawn(data, Place { warp: None, sides })
    }

    #[test]
    fn a_path_is_drawn_on_each_of_its_sides() {
        assert_eq!(&*on(FLAG, &[1.0]), "M10 20l5-5z");
        assert_eq!(&*on(FLAG, &[-1.0]), "M10-20l5 5z");
        assert_eq!(&*on(FLAG, &[1.0, -1.0]), "M10 20l5-5zm0-40l5 5z");
    }

    #[test]
    fn points_of_a_curve_are_counted_from_each_other_and_drawn_from_where_it_begins() {
        assert_eq!(&*on(&[4, 2, 2, 6, 2, 2, 4, 1, 3, 199, 1], &[1.0]), "M1 1c1 1 3 1 2-98");
    }

    #[test]
    fn a_large_number_takes_more_bytes() {
        let large = |bytes: &[u8]| number(&mut bytes.iter().copied());
        assert_eq!((large(&[0xac, 0x02]), large(&[0xd1, 0x0f]), large(&[1])), (150, -1000, 0));
    }

    #[test]
    fn after_a_close_the_next_point_is_counted_from_the_start() {
        assert_eq!(&*on(&[4, 10, 10, 5, 18, 18, 7, 4, 2, 0], &[1.0]), "M5 5l9 9zm1 0");
    }
}
