//! The fill of a muscle is its cut: blocks, knife lines, cubes, stipple, drawn at the place and in the number
//! of the forecast. Everything here is clipped to the muscle's border by whoever draws it.

use std::fmt::Write as _;

use hindsaddle_model::forecast::PartForecast;
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::units::Length;

use super::axis::{ACROSS, Axis};

/// How far the first and last part of a muscle reach past the ends of its axis: the axis of a strip whose
/// fibres run aslant is short, and lies at one end of it.
const PAST_END: f64 = 900.0;
/// Lines closer than this on the screen, in CSS pixels, run together.
const CLOSEST: f64 = 2.5;

/// How one part of a muscle is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Marks {
    /// What it becomes; None is a discard. What a wound took has the product of the part beside it: the mark of
    /// the wound lies over it, and its place along the muscle is only as good as its share.
    pub product: Option<Product>,
    /// Whether a wound took it.
    pub spoiled: bool,
    /// The stretch of the muscle it is, as a closed path; None where it is all of it.
    pub stretch: Option<String>,
    /// Knife lines or cube edges, as one path.
    pub lines: String,
    /// Whether every cut of the plan is a line.
    pub every_cut: bool,
}

/// The marks of the parts of one muscle. `length` is the muscle's own; `pixels` is how many CSS pixels a unit
/// of the drawing takes on the screen.
pub fn marks(axis: &[(f64, f64)], parts: &[PartForecast], length: Option<Length>, pixels: f64) -> Vec<Marks> {
    let axis = Axis::new(axis);
    let last = parts.len().saturating_sub(1);
    parts
        .iter()
        .enumerate()
        .map(|(index, part)| {
            let past = PAST_END / axis.length;
            let from = if index == 0 { -past } else { part.span.0 };
            let to = if index == last { 1.0 + past } else { part.span.1 };
            // Where a wound ends a part, no knife goes.
            let ends = (index == 0 || parts[index - 1].spoiled, index == last || parts[index + 1].spoiled);
            let (lines, every_cut) =
                if part.spoiled { (String::new(), true) } else { lines(&axis, part, ends, length, pixels) };
            let beside = if part.spoiled { unspoiled(parts, index) } else { part };
            Marks {
                product: beside.cut.product(),
                spoiled: part.spoiled,
                stretch: (last > 0).then(|| stretch(&axis, from, to)),
                lines,
                every_cut,
            }
        })
        .collect()
}

/// The part beside a spoiled one that has not been spoiled, if there is one.
fn unspoiled(parts: &[PartForecast], index: usize) -> &PartForecast {
    let mut around = parts[index..].iter().chain(parts[..index].iter().rev());
    around.find(|part| !part.spoiled).unwrap_or(&parts[index])
}

/// The part of the muscle between two fractions of its axis.
fn stretch(axis: &Axis, from: f64, to: f64) -> String {
    const STEPS: u32 = 12;
    let (mut one, mut other) = (Vec::new(), Vec::new());
    for step in 0..=STEPS {
        let (a, b) = axis.across(from + (to - from) * f64::from(step) / f64::from(STEPS));
        one.push(a);
        other.push(b);
    }
    other.reverse();
    let mut pen = Pen::default();
    for (index, at) in one.into_iter().chain(other).enumerate() {
        pen.to(if index == 0 { 'm' } else { 'l' }, at);
    }
    pen.path.push('z');
    pen.path
}

/// Writes a path, each point counted from the one before: cuts that lie beside each other are then said alike, and
/// the first picture of the page, which stands in index.html, is packed closer.
#[derive(Default)]
struct Pen {
    path: String,
    at: (i64, i64),
}

impl Pen {
    fn to(&mut self, command: char, (x, y): (f64, f64)) {
        // Whole units are a quarter of a pixel on a phone; they also keep float formatting out of the page.
        let to = (x.round() as i64, y.round() as i64);
        let _ = write!(self.path, "{command}{} {}", to.0 - self.at.0, to.1 - self.at.1);
        self.at = to;
    }

    fn line(&mut self, from: (f64, f64), to: (f64, f64)) {
        self.to('m', from);
        self.to('l', to);
    }
}

/// Where the knife goes, as fractions of the muscle's length: one more than there are pieces.
pub fn knife_places(part: &PartForecast) -> Vec<f64> {
    let pieces = part.pieces;
    if pieces.count == 0 {
        return Vec::new();
    }
    (0..=pieces.count)
        .map(|index| {
            if pieces.short_last && index == pieces.count {
                part.span.1
            } else {
                pieces.start + pieces.pitch * f64::from(index)
            }
        })
        .collect()
}

fn lines(
    axis: &Axis,
    part: &PartForecast,
    ends: (bool, bool),
    length: Option<Length>,
    pixels: f64,
) -> (String, bool) {
    match part.cut {
        Cut::Grind => (String::new(), true),
        Cut::Discard => (strike(axis, part), true),
        Cut::Roast(_) | Cut::Steak(_) | Cut::Chop(_) => knife_lines(axis, part, ends, pixels),
        Cut::Stew(edge) => (cubes(axis, part, length, edge, pixels), true),
    }
}

/// A line through what is thrown away.
fn strike(axis: &Axis, part: &PartForecast) -> String {
    let mut pen = Pen::default();
    pen.line(axis.at(part.span.0).0, axis.at(part.span.1).0);
    pen.path
}

fn knife_lines(axis: &Axis, part: &PartForecast, ends: (bool, bool), pixels: f64) -> (String, bool) {
    let places = knife_places(part);
    let spacing = part.pieces.pitch * axis.length * pixels;
    let every = if spacing > 0.0 { (CLOSEST / spacing).ceil().max(1.0) as usize } else { 1 };
    let mut pen = Pen::default();
    // A roast keeps the ends of its muscle: no knife goes there.
    let keeps_ends = part.cut.product() == Some(Product::Roast);
    for u in places.iter().step_by(every) {
        let at_end =
            (ends.0 && (u - part.span.0).abs() < 0.001) || (ends.1 && (u - part.span.1).abs() < 0.001);
        if keeps_ends && at_end {
            continue;
        }
        let (a, b) = axis.across(*u);
        pen.line(a, b);
    }
    (pen.path, every == 1)
}

/// A grid of cubes along and across the axis, at the true edge to the muscle's scale.
fn cubes(axis: &Axis, part: &PartForecast, length: Option<Length>, edge: Length, pixels: f64) -> String {
    let scale = length.map_or(1.0, |length| axis.length / length.to_mm());
    let step = (edge.to_mm() * scale).max(CLOSEST * 2.0 / pixels);
    let mut pen = Pen::default();
    let (from, to) = part.span;
    let beyond = PAST_END / axis.length;
    let (from, to) = (if from <= 0.0 { -beyond } else { from }, if to >= 1.0 { 1.0 + beyond } else { to });
    let count = ((to - from) * axis.length / step) as u32;
    for index in 0..=count {
        let (a, b) = axis.across(from + f64::from(index) * step / axis.length);
        pen.line(a, b);
    }
    let rows = (ACROSS / step) as i32;
    for row in -rows..=rows {
        let aside = f64::from(row) * step;
        for (index, u) in
            [from, from + (to - from) / 3.0, from + (to - from) * 2.0 / 3.0, to].into_iter().enumerate()
        {
            let ((x, y), (dx, dy)) = axis.at(u);
            pen.to(if index == 0 { 'm' } else { 'l' }, (x - dy * aside, y + dx * aside));
        }
    }
    pen.path
}
