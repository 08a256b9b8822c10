//! The paths of the plate as the build wrote them: small letters, whole numbers, each point relative to the
//! one before; `m`, `l`, `c` and `z` alone.

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

/// Calls `step` with each letter and its points, where they lie on the plate.
fn walk(data: &str, mut step: impl FnMut(char, &[(f64, f64)])) {
    let (mut at, mut start) = ((0.0, 0.0), (0.0, 0.0));
    let (mut letter, mut numbers) = ('m', Vec::with_capacity(6));
    let mut take = |letter: char, numbers: &mut Vec<f64>| {
        let wanted = if letter == 'c' { 6 } else { 2 };
        if numbers.len() == wanted {
            let points: Vec<(f64, f64)> =
                numbers.chunks_exact(2).map(|pair| (at.0 + pair[0], at.1 + pair[1])).collect();
            numbers.clear();
            at = points[points.len() - 1];
            if letter == 'm' {
                start = at;
            }
            step(letter, &points);
        } else if letter == 'z' {
            at = start;
            step(letter, &[]);
        }
    };
    let mut number: Option<(bool, i32)> = None;
    for character in data.chars().chain([' ']) {
        if let Some(digit) = character.to_digit(10) {
            let (negative, value) = number.unwrap_or((false, 0));
            number = Some((negative, value * 10 + digit.cast_signed()));
            continue;
        }
        if let Some((negative, value)) = number.take() {
            numbers.push(f64::from(if negative { -value } else { value }));
            take(letter, &mut numbers);
        }
        match character {
            '-' => number = Some((true, 0)),
            'm' | 'l' | 'c' => letter = character,
            'z' => take('z', &mut numbers),
            _ => {}
        }
    }
}

/// The path with every point at its place.
pub(super) fn drawn(data: &str, place: Place<'_>) -> Rc<str> {
    // What nothing moves stays as it was authored, which is shorter.
    if place.warp.is_none() && matches!(place.sides, [side] if *side > 0.0) {
        return data.into();
    }
    let mut path = String::with_capacity(data.len() * 2);
    for side in place.sides {
        walk(data, |letter, points| {
            path.push(letter.to_ascii_uppercase());
            for point in points {
                let (x, y) = place.at(*point, *side);
                let _ = write!(path, "{} {} ", x.round() as i32, y.round() as i32);
            }
        });
    }
    path.into()
}

/// The frame around what is drawn of a path, and its control points; None if there is no path.
pub(super) fn bounds(data: &str, place: Place<'_>) -> Option<Frame> {
    let mut frame: Option<Frame> = None;
    for side in place.sides {
        walk(data, |_, points| {
            for point in points {
                let (x, y) = place.at(*point, *side);
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

    fn absolute(data: &str) -> String {
        let mut path = String::new();
        walk(data, |letter, points| write!(path, "{letter}{points:?}").unwrap());
        path
    }

    #[test]
    fn a_path_is_drawn_on_each_of_its_sides() {
        let on = |sides| drawn("m10 20l5-5z", Place { warp: None, sides });
        assert_eq!(&*on(&[1.0]), "m10 20l5-5z");
        assert_eq!(&*on(&[-1.0]), "M10 -20 L15 -15 Z");
        assert_eq!(&*on(&[1.0, -1.0]), "M10 20 L15 15 ZM10 -20 L15 -15 Z");
    }

    #[test]
    fn points_are_relative_to_the_one_before() {
        assert_eq!(absolute("m10 20l5-5 1 1z"), "m[(10.0, 20.0)]l[(15.0, 15.0)]l[(16.0, 16.0)]z[]");
    }

    #[test]
    fn a_curve_is_relative_to_where_it_begins() {
        let curves = "c[(1.0, 1.0), (2.0, 2.0), (3.0, 0.0)]c[(4.0, 1.0), (5.0, 2.0), (6.0, 0.0)]";
        assert_eq!(absolute("m0 0c1 1 2 2 3 0 1 1 2 2 3 0"), format!("m[(0.0, 0.0)]{curves}"));
    }

    #[test]
    fn after_a_close_the_next_point_is_relative_to_the_start() {
        assert_eq!(absolute("m5 5l9 9zm1 0"), "m[(5.0, 5.0)]l[(14.0, 14.0)]z[]m[(6.0, 5.0)]");
    }
}
