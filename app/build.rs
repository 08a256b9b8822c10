//! Reads the authored plate in assets/plate into constants. An SVG edited wrongly fails the build with the
//! path's name and what is wrong.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;

use svg::node::element::path::{Command, Data, Position};
use svg::parser::Event;

/// The muscle names are the model's; the script reads them from there, so that list and drawing cannot drift.
use hindsaddle_model::anatomy::Muscle;

fn main() {
    let mut code = String::new();
    for (name, file) in [("OUTER", "outer"), ("INNER", "inner"), ("ABOVE", "above")] {
        let path = format!("../assets/plate/{file}.svg");
        println!("cargo::rerun-if-changed={path}");
        match std::fs::read_to_string(&path)
            .map_err(|error| error.to_string())
            .and_then(|text| Drawing::read(&text))
            .and_then(|drawing| drawing.code(name))
        {
            Ok(constant) => code.push_str(&constant),
            Err(problem) => {
                println!("cargo::error=assets/plate/{file}.svg: {problem}");
                return;
            }
        }
    }
    let out = std::env::var("OUT_DIR").expect("cargo sets OUT_DIR");
    std::fs::write(Path::new(&out).join("plate.rs"), code).expect("OUT_DIR can be written");
}

/// One view as it was authored: paths and points by their name, in the order drawn.
#[derive(Default)]
struct Drawing {
    view_box: Vec<f64>,
    paths: Vec<(String, String)>,
    points: BTreeMap<String, (f64, f64)>,
}

impl Drawing {
    fn read(text: &str) -> Result<Self, String> {
        let mut drawing = Drawing::default();
        for event in svg::read(text).map_err(|error| error.to_string())? {
            let Event::Tag(tag, _, attributes) = event else { continue };
            let attribute = |key: &str| attributes.get(key).map(ToString::to_string);
            let number = |key: &str| attribute(key).and_then(|value| value.parse::<f64>().ok());
            match tag {
                "svg" => {
                    if let Some(view_box) = attribute("viewBox") {
                        drawing.view_box = view_box.split(' ').filter_map(|part| part.parse().ok()).collect();
                    }
                }
                "path" => {
                    let id = attribute("id").ok_or("a path has no id")?;
                    let data = attribute("d").ok_or_else(|| format!("path {id} has no d"))?;
                    if drawing.paths.iter().any(|(other, _)| *other == id) {
                        return Err(format!("two paths are called {id}"));
                    }
                    drawing.paths.push((id, data));
                }
                "circle" => {
                    let id = attribute("id").ok_or("a circle has no id")?;
                    let centre = number("cx").zip(number("cy"));
                    drawing
                        .points
                        .insert(id.clone(), centre.ok_or_else(|| format!("circle {id} has no centre"))?);
                }
                _ => {}
            }
        }
        if drawing.view_box.len() == 4 {
            Ok(drawing)
        } else {
            Err("svg has no viewBox of four numbers".into())
        }
    }

    fn path(&self, id: &str) -> Option<&str> {
        self.paths.iter().find(|(other, _)| other == id).map(|(_, data)| data.as_str())
    }

    /// The paths whose name begins with `prefix`, joined into one.
    fn joined(&self, prefix: &str) -> String {
        let parts: Vec<&str> = self
            .paths
            .iter()
            .filter(|(id, _)| id.starts_with(prefix))
            .map(|(_, data)| data.as_str())
            .collect();
        parts.join("")
    }

    fn code(&self, name: &str) -> Result<String, String> {
        let mut code = String::new();
        let [x, y, width, height] = self.view_box[..] else { return Err("svg has no viewBox".into()) };
        let far = compact(&(self.joined("outline-far") + &self.joined("outline-ear-far")))?;
        let body = compact(self.path("outline-body").ok_or("path outline-body is missing")?)?;
        let ear = compact(self.path("outline-ear").unwrap_or_default())?;
        writeln!(
            code,
            "/// Read from assets/plate.\npub(crate) static {name}: Plate = Plate {{ view_box: Frame {{ x: {x:?}, y: {y:?}, width: {width:?}, height: {height:?} }},\n far: {far:?},\n body: {body:?},\n ear: {ear:?},\n antlers: {:?},\n bones: {:?},\n ink: {:?},\n areas: &[",
            compact(&self.joined("antler-"))?,
            compact(&self.joined("bone-"))?,
            compact(&self.joined("ink-"))?,
        )
        .map_err(|error| error.to_string())?;
        for (id, data) in &self.paths {
            if let Some(named) = id.strip_prefix("m-") {
                code.push_str(&self.area(named, data)?);
            }
        }
        code.push_str("] };\n");
        Ok(code)
    }

    fn area(&self, named: &str, data: &str) -> Result<String, String> {
        let (muscle_id, side) = match (named.strip_suffix("-l"), named.strip_suffix("-r")) {
            (Some(id), _) => (id, "Some(Side::Left)"),
            (None, Some(id)) => (id, "Some(Side::Right)"),
            (None, None) => (named, "None"),
        };
        let muscle = Muscle::from_id(muscle_id).ok_or_else(|| format!("path m-{named}: no such muscle"))?;
        let outline = flattened(data).map_err(|problem| format!("path m-{named}: {problem}"))?;
        if !data.trim_end().ends_with('Z') {
            return Err(format!("path m-{named} is not closed"));
        }
        let axis_data =
            self.path(&format!("axis-{named}")).ok_or_else(|| format!("path axis-{named} is missing"))?;
        let axis = flattened(axis_data).map_err(|problem| format!("path axis-{named}: {problem}"))?;
        let label = self
            .points
            .get(&format!("label-{named}"))
            .ok_or_else(|| format!("circle label-{named} is missing"))?;
        let (mut low, mut high) = ((f64::MAX, f64::MAX), (f64::MIN, f64::MIN));
        for (x, y) in &outline {
            low = (low.0.min(*x), low.1.min(*y));
            high = (high.0.max(*x), high.1.max(*y));
        }
        let points: Vec<String> = axis.iter().map(|(x, y)| format!("({x:.1}, {y:.1})")).collect();
        Ok(format!(
            "Area {{ muscle: Muscle::{muscle:?}, side: {side}, outline: {:?},\n grain: {:?}, sheen: {:?}, axis: &[{}], label: ({:?}, {:?}), bounds: Frame {{ x: {:.1}, y: {:.1}, width: {:.1}, height: {:.1} }} }},\n",
            compact(data)?,
            compact(self.path(&format!("grain-{named}")).unwrap_or_default())?,
            compact(self.path(&format!("sheen-{named}")).unwrap_or_default())?,
            points.join(", "),
            label.0,
            label.1,
            low.0,
            low.1,
            high.0 - low.0,
            high.1 - low.1,
        ))
    }
}

/// A point of the drawing.
type Point = (f64, f64);

/// One step of a path.
enum Step {
    Move(Point),
    Line(Point),
    Curve([Point; 3]),
    Close,
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
fn flattened(data: &str) -> Result<Vec<Point>, String> {
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

/// The same path on whole units and relative to the point before, in as few bytes as it takes. A whole unit is
/// a quarter of a pixel on a phone.
fn compact(data: &str) -> Result<String, String> {
    let mut path = String::new();
    let (mut at, mut start) = ((0, 0), (0, 0));
    let mut letter_before = ' ';
    for step in steps(data)? {
        let (letter, points) = match step {
            Step::Move(point) => ('m', vec![point]),
            Step::Line(point) => ('l', vec![point]),
            Step::Curve(curve) => ('c', curve.to_vec()),
            Step::Close => ('z', Vec::new()),
        };
        // A letter that was just said need not be said again, except that points after an m would be lines.
        if letter != letter_before || letter == 'm' {
            path.push(letter);
        }
        letter_before = letter;
        let points: Vec<(i32, i32)> =
            points.into_iter().map(|(x, y)| (x.round() as i32, y.round() as i32)).collect();
        for number in points.iter().flat_map(|(x, y)| [x - at.0, y - at.1]) {
            if number >= 0 && path.ends_with(|last: char| last.is_ascii_digit()) {
                path.push(' ');
            }
            path.push_str(&number.to_string());
        }
        at = points.last().copied().unwrap_or(start);
        if letter == 'm' {
            start = at;
        }
    }
    Ok(path)
}
