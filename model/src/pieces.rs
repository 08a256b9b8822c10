//! A part of a muscle to pieces: how many, how heavy, what goes to the tub.
//!
//! A muscle is read as a body of even section with both ends tapering to nothing. Steaks and chops come from
//! the even stretch; the tapered ends and every offcut go to the tub. A roast keeps its ends.

use crate::product::{Cut, RoastSize};
use crate::tables::Size;
use crate::units::{Length, MUSCLE_GRAMS_PER_CUBIC_MM, Mass};

/// Unevenness of a hand cut, taken off the length with every slice. Judgement.
const KERF: Length = Length::mm(1.0);
/// Each tapered end, as a part of the length: 4 %, or 2 cm on the reference animal if that is more (judgement;
/// 5 cm in all is lost on a 62 cm backstrap).
const END_PART: f64 = 0.04;
const END_LEAST: Length = Length::cm(2.0);
/// Squaring-up, as a part of the mass, that goes to the tub. Judgement.
const ROAST_TRIM: f64 = 0.02;
const SLICE_TRIM: f64 = 0.03;
const STEW_TRIM: f64 = 0.02;
/// What is left of a muscle after its planned roasts is a short roast from this part of the length up.
const SHORT_ROAST: f64 = 0.5;
/// Keeps a whole number of slices whole when the division was exact but for rounding.
const EPSILON: f64 = 1e-9;

/// One muscle of one side: its mass, its length and how its ends taper.
#[derive(Clone, Copy, Debug)]
pub struct Body {
    mass: Mass,
    length: Length,
    end: f64,
}

impl Body {
    /// A muscle of this mass and length; `size` is that of the reference animal, none for scraps.
    pub fn new(mass: Mass, length: Length, size: Option<Size>) -> Self {
        let end = size.map_or(0.0, |size| END_PART.max(END_LEAST / size.length));
        Self { mass, length, end }
    }

    /// Mass of the even section per length, times the whole length.
    fn even_mass(&self) -> Mass {
        self.mass / (1.0 - self.end)
    }

    /// The part of the mass that lies before `u`, a fraction of the length.
    fn before(&self, u: f64) -> f64 {
        let end = self.end;
        let area = if u < end {
            u * u / (2.0 * end)
        } else if u <= 1.0 - end {
            u - end / 2.0
        } else {
            let rest = 1.0 - u;
            1.0 - end - if end > 0.0 { rest * rest / (2.0 * end) } else { 0.0 }
        };
        area / (1.0 - end)
    }

    /// Where the share `part` of the mass ends, as a fraction of the length: the inverse of [`Self::before`].
    pub fn place_of(&self, part: f64) -> f64 {
        let end = self.end;
        let area = part * (1.0 - end);
        if area < end / 2.0 {
            (2.0 * end * area).sqrt()
        } else if area <= 1.0 - end * 1.5 {
            area + end / 2.0
        } else {
            1.0 - (2.0 * end * (1.0 - end - area).max(0.0)).sqrt()
        }
    }

    fn between(&self, from: f64, to: f64) -> Mass {
        self.mass * (self.before(to) - self.before(from))
    }
}

/// What a part gives.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pieces {
    /// Roasts, steaks, chops or cubes; 0 for grind and discard.
    pub count: u32,
    /// All of them together.
    pub mass: Mass,
    /// Ends, offcuts and trim; everything, for grind.
    pub tub: Mass,
    /// Thrown away.
    pub discarded: Mass,
    /// Where the first piece begins, as a fraction of the muscle's length.
    pub start: f64,
    /// From one cut to the next, as a fraction of the muscle's length.
    pub pitch: f64,
    /// The last roast is shorter than the others.
    pub short_last: bool,
}

/// Cuts the stretch `from..to` of a muscle (fractions of its length). `hand` is how much thicker than planned
/// the hand cuts: 1 is exactly.
pub fn cut(body: &Body, from: f64, to: f64, cut: Cut, hand: f64) -> Pieces {
    let mass = body.between(from, to);
    match cut {
        Cut::Grind => Pieces { tub: mass, ..Pieces::default() },
        Cut::Discard => Pieces { discarded: mass, ..Pieces::default() },
        Cut::Stew(edge) => {
            let cubes = mass * (1.0 - STEW_TRIM);
            let edge = edge.to_mm();
            let one = MUSCLE_GRAMS_PER_CUBIC_MM * edge * edge * edge;
            let count = (cubes.to_grams() / one).round() as u32;
            Pieces {
                count,
                mass: cubes,
                tub: mass - cubes,
                start: from,
                pitch: to - from,
                ..Pieces::default()
            }
        }
        Cut::Steak(thick) | Cut::Chop(thick) => slices(body, from, to, thick * hand),
        Cut::Roast(size) => roasts(body, from, to, size),
    }
}

fn slices(body: &Body, from: f64, to: f64, thick: Length) -> Pieces {
    let whole = body.between(from, to);
    let start = from.max(body.end);
    let usable = body.length * (to.min(1.0 - body.end) - start).max(0.0);
    let pitch = (thick + KERF) / body.length;
    let count = (usable / (thick + KERF) + EPSILON).floor();
    let mass = body.even_mass() * (count * (thick / body.length) * (1.0 - SLICE_TRIM));
    Pieces { count: count as u32, mass, tub: whole - mass, start, pitch, ..Pieces::default() }
}

fn roasts(body: &Body, from: f64, to: f64, size: RoastSize) -> Pieces {
    let whole = body.between(from, to);
    let equal = |count: f64| Pieces {
        count: count as u32,
        mass: whole * (1.0 - ROAST_TRIM),
        tub: whole * ROAST_TRIM,
        start: from,
        pitch: (to - from) / count,
        ..Pieces::default()
    };
    match size {
        RoastSize::Whole => equal(1.0),
        RoastSize::Weight(weight) => equal((whole / weight).round().max(1.0)),
        RoastSize::Length(long) => {
            let stretch = body.length * (to - from);
            let full = (stretch / long + EPSILON).floor();
            let rest = stretch - long * full;
            let short = rest > long * EPSILON && rest >= long * SHORT_ROAST || full < 1.0;
            let pitch = long / body.length;
            let end = if short { to } else { from + pitch * full };
            let mass = body.between(from, end) * (1.0 - ROAST_TRIM);
            Pieces {
                count: full as u32 + u32::from(short),
                mass,
                tub: whole - mass,
                start: from,
                pitch,
                short_last: short,
                ..Pieces::default()
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::anatomy::Muscle;
    use crate::tables;

    fn strap(length: Length) -> Body {
        Body::new(Mass::grams(1325.0), length, tables::muscle(Muscle::Backstrap).size)
    }

    /// Common practice, no source: loin roasts of 8 to 10 in; a 24 in strap gives two or three.
    #[test]
    fn a_24_inch_strap_gives_two_or_three_roasts() {
        for (inches, expected) in [(8.0, 3), (9.0, 3), (10.0, 2)] {
            let size = RoastSize::Length(Length::inches(inches));
            let pieces = cut(&strap(Length::inches(24.0)), 0.0, 1.0, Cut::Roast(size), 1.0);
            assert_eq!(pieces.count, expected, "{inches} in");
        }
    }

    /// Common practice, no source: chops of 3/8 to 1/2 in; a 24 in strap gives 48 to 64, less kerf and ends.
    /// Two ends of 4 % leave 22.03 in; kerf is 0.039 in.
    #[test]
    fn a_24_inch_strap_gives_48_to_64_chops_less_kerf_and_ends() {
        for (inches, bare, expected) in [(0.5, 48, 40), (0.375, 64, 53)] {
            let pieces = cut(&strap(Length::inches(24.0)), 0.0, 1.0, Cut::Chop(Length::inches(inches)), 1.0);
            assert_eq!(pieces.count, expected, "{inches} in");
            assert!(pieces.count < bare);
        }
    }

    /// The muscle catalogue's own arithmetic: 62 cm, 5 cm lost to ends, 2.5 cm steaks: 22 of about 53 g
    /// without kerf; our kerf of 1 mm makes it 21.
    #[test]
    fn a_62_cm_strap_gives_about_22_inch_steaks() {
        let pieces = cut(&strap(Length::cm(62.0)), 0.0, 1.0, Cut::Steak(Length::cm(2.5)), 1.0);
        assert_eq!(pieces.count, 21);
        let each = pieces.mass.to_grams() / 21.0;
        assert!((each - 53.0).abs() < 2.0, "{each}");
    }

    #[test]
    fn parts_keep_the_mass_of_the_whole() {
        let body = strap(Length::cm(62.0));
        for cuts in [
            Cut::Steak(Length::mm(25.4)),
            Cut::Roast(RoastSize::Whole),
            Cut::Stew(Length::mm(25.4)),
            Cut::Grind,
            Cut::Discard,
        ] {
            let total: Mass = [(0.0, 0.02), (0.02, 0.5), (0.5, 0.97), (0.97, 1.0)]
                .into_iter()
                .map(|(from, to)| cut(&body, from, to, cuts, 1.0))
                .map(|pieces| pieces.mass + pieces.tub + pieces.discarded)
                .sum();
            assert!((total - Mass::grams(1325.0)).to_grams().abs() < 1e-9);
        }
    }
}
