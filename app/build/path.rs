//! The paths of the drawing: read, flattened to points, written in few bytes.

use svg::node::element::path::{Command, Data, Position};

/// A point of the drawing.
pub(crate) type Point = (f64, f64);

/// One step of a path.
enum Step {
    Move(Point),
    Line(Point),
    Curve([Point; 3]),
    Close,
}

impl Step {
    fn kind(&self) -> u8 {
        match self {
            Step::Move(_) => 0,
            Step::Line(_) => 1,
            Step::Curve(_) => 2,
            Step::Close => 3,
        }
    }

    fn points(&self) -> &[Point] {
        match self {
            Step::Move(point) | Step::Line(point) => std::slice::from_ref(point),
            Step::Curve(points) => points,
            Step::Close => &[],
        }
    }
}

/// The steps of a path, which is of absolute M, L, C and Z alone.
fn steps(data: &str) -> Result<Vec<Step>, String> {
    let data = Data::parse(data).map_err(|error| error.to_string())?;
    let mut steps = Vec::new();
    for command in data.iter() {
        let (letter, numbers) = match command {
            Command::Move(Position::Absolute, numbers) => ('M', numbers),
            Command::Line(Position::Absolute, numbers) => ('L', numbers),
            Command::CubicCurve(Position::Absolute, numbers) => ('C', numbers),
            Command::Close => {
                steps.push(Step::Close);
                continue;
            }
            Command::Move(..)
            | Command::Line(..)
            | Command::CubicCurve(..)
            | Command::HorizontalLine(..)
            | Command::VerticalLine(..)
            | Command::QuadraticCurve(..)
            | Command::SmoothQuadraticCurve(..)
            | Command::SmoothCubicCurve(..)
            | Command::EllipticalArc(..) => {
                return Err(format!("only absolute M, L, C and Z are read, not {command:?}"));
            }
        };
        if !numbers.len().is_multiple_of(2) {
            return Err(format!("{letter} has an odd number of coordinates"));
        }
        let points: Vec<Point> =
            numbers.chunks(2).map(|pair| (f64::from(pair[0]), f64::from(pair[1]))).collect();
        match letter {
            'C' if !points.len().is_multiple_of(3) => return Err("C has not six coordinates a curve".into()),
            'C' => steps.extend(points.chunks(3).map(|curve| Step::Curve([curve[0], curve[1], curve[2]]))),
            // Points after the first of an M are lines.
            _ => steps.extend(points.into_iter().enumerate().map(|(index, point)| {
                if letter == 'M' && index == 0 { Step::Move(point) } else { Step::Line(point) }
            })),
        }
    }
    Ok(steps)
}

/// A path as points; each curve becomes eight chords.
pub(crate) fn flattened(data: &str) -> Result<Vec<Point>, String> {
    const CHORDS: u32 = 8;
    let mut points: Vec<Point> = Vec::new();
    for step in steps(data)? {
        match step {
            Step::Move(point) | Step::Line(point) => points.push(point),
            Step::Close => {}
            Step::Curve([first, second, to]) => {
                let from = *points.last().ok_or("a curve begins nowhere")?;
                points.extend((1..=CHORDS).map(|step| {
                    let t = f64::from(step) / f64::from(CHORDS);
                    let s = 1.0 - t;
                    let mix = |a: f64, b: f64, c: f64, d: f64| {
                        s * s * s * a + 3.0 * s * s * t * b + 3.0 * s * t * t * c + t * t * t * d
                    };
                    (mix(from.0, first.0, second.0, to.0), mix(from.1, first.1, second.1, to.1))
                }));
            }
        }
    }
    if points.len() < 2 { Err("it has no length".into()) } else { Ok(points) }
}

/// The same path on whole units, in as few bytes as it takes. A whole unit is a quarter of a pixel on a phone.
///
/// Runs of like steps: a byte with the step in its two low bits (0 move, 1 line, 2 curve, 3 close) and above them
/// how many there are; then across and down of each point, counted from the point before, also within a curve: signs
/// in the lowest bit, seven bits a byte, the highest saying that more follows.
pub(crate) fn compact(data: &str) -> Result<Vec<u8>, String> {
    written(data, 1.0)
}

/// The mirror image of a path in the midline, as [`compact`] writes it.
pub(crate) fn mirrored(data: &str) -> Result<Vec<u8>, String> {
    written(data, -1.0)
}

/// The same path as a constant of the program.
pub(crate) fn constant(data: &str) -> Result<String, String> {
    Ok(format!("b\"{}\"", compact(data)?.escape_ascii()))
}

fn written(data: &str, side: f64) -> Result<Vec<u8>, String> {
    /// How many steps six bits count.
    const LONGEST: usize = 63;
    let mut path = Vec::new();
    let (mut at, mut start) = ((0, 0), (0, 0));
    let steps = steps(data)?;
    for run in steps.chunk_by(|one, other| one.kind() == other.kind()) {
        for run in run.chunks(LONGEST) {
            path.push(run[0].kind() | (run.len() as u8) << 2);
            for step in run {
                for (x, y) in step.points() {
                    let to = (x.round() as i32, (y * side).round() as i32);
                    number(&mut path, to.0 - at.0);
                    number(&mut path, to.1 - at.1);
                    at = to;
                }
                match step {
                    Step::Move(_) => start = at,
                    Step::Close => at = start,
                    Step::Line(_) | Step::Curve(_) => {}
                }
            }
        }
    }
    Ok(path)
}

fn number(path: &mut Vec<u8>, number: i32) {
    let mut rest = (number.unsigned_abs() << 1) | u32::from(number < 0);
    while rest > 0x7f {
        path.push(rest as u8 | 0x80);
        rest >>= 7;
    }
    path.push(rest as u8);
}
