//! One authored file: its named paths and points, and the constants made of them.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use hindsaddle_model::anatomy::Muscle;
use svg::parser::Event;

use crate::path::{Point, compact, constant, flattened, mirrored};

/// One view as it was authored: paths and points by their name, in the order drawn.
#[derive(Default)]
pub(crate) struct Drawing {
    paths: Vec<(String, String)>,
    pub(crate) points: BTreeMap<String, Point>,
}

/// Ink between and on the muscles, which goes when they are lifted off.
fn is_seam(id: &str) -> bool {
    id.starts_with("ink-seams") || id.starts_with("ink-bellies")
}

impl Drawing {
    pub(crate) fn read(text: &str) -> Result<Self, String> {
        let mut drawing = Drawing::default();
        for event in svg::read(text).map_err(|error| error.to_string())? {
            let Event::Tag(tag, _, attributes) = event else { continue };
            let attribute = |key: &str| attributes.get(key).map(ToString::to_string);
            let number = |key: &str| attribute(key).and_then(|value| value.parse::<f64>().ok());
            match tag {
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
        Ok(drawing)
    }

    /// The left half of a drawing whose right half is its mirror image.
    pub(crate) fn left_half(mut self) -> Result<Self, String> {
        for (id, data) in &self.paths {
            let Some(name) = id.strip_suffix("-l") else { continue };
            let right = self.path(&format!("{name}-r")).ok_or_else(|| format!("path {name}-r is missing"))?;
            if compact(right)? != mirrored(data)? {
                return Err(format!("path {name}-r is not the mirror image of {name}-l"));
            }
        }
        self.paths.retain(|(id, _)| !id.ends_with("-r"));
        Ok(self)
    }

    fn path(&self, id: &str) -> Option<&str> {
        self.paths.iter().find(|(other, _)| other == id).map(|(_, data)| data.as_str())
    }

    /// The paths of some names, joined into one.
    fn all(&self, wanted: impl Fn(&str) -> bool) -> String {
        self.paths.iter().filter(|(id, _)| wanted(id)).map(|(_, data)| data.as_str()).collect()
    }

    /// The paths whose name begins with `prefix`, joined into one.
    pub(crate) fn joined(&self, prefix: &str) -> String {
        self.all(|id| id.starts_with(prefix))
    }

    /// The antlers: the far one, and what stands before it.
    pub(crate) fn antlers(&self) -> Result<String, String> {
        let is_far = |id: &str| id.starts_with("antler-far");
        let near = constant(&self.all(|id| id.starts_with("antler-") && !is_far(id)))?;
        Ok(format!("[{}, {near}]", constant(&self.all(is_far))?))
    }

    /// The landmarks by name, in the order in which a figure counts them.
    pub(crate) fn landmarks(&self) -> Vec<(&str, Point)> {
        self.points.iter().filter_map(|(id, at)| id.strip_prefix("lm-").map(|name| (name, *at))).collect()
    }

    pub(crate) fn code(&self, name: &str) -> Result<String, String> {
        let mut code = String::new();
        let far = constant(&(self.joined("outline-far") + &self.joined("outline-ear-far")))?;
        let body = constant(self.path("outline-body").ok_or("path outline-body is missing")?)?;
        let ear =
            constant(&self.all(|id| id.starts_with("outline-ear") && !id.starts_with("outline-ear-far")))?;
        let landmarks: Vec<String> = self
            .landmarks()
            .iter()
            .map(|(_, (x, y))| format!("({}, {})", x.round() as i32, y.round() as i32))
            .collect();
        writeln!(
            code,
            "/// Read from assets/plate.\nstatic {}: Authored = Authored {{ landmarks: &[{}],\n far: {far},\n body: {body},\n ear: {ear},\n antlers: {},\n bones: {},\n ink: {},\n seams: {},\n areas: &[",
            name.to_ascii_uppercase(),
            landmarks.join(", "),
            self.antlers()?,
            constant(&self.joined("bone-"))?,
            constant(&self.all(|id| id.starts_with("ink-") && !is_seam(id)))?,
            constant(&self.all(is_seam))?,
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
        let muscle_id = named.strip_suffix("-l").unwrap_or(named);
        let muscle = Muscle::from_id(muscle_id).ok_or_else(|| format!("path m-{named}: no such muscle"))?;
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
        let points: Vec<String> =
            axis.iter().map(|(x, y)| format!("({}, {})", x.round() as i32, y.round() as i32)).collect();
        Ok(format!(
            "AuthoredArea {{ muscle: Muscle::{muscle:?}, outline: {},\n grain: {}, sheen: {}, axis: &[{}], label: ({}, {}) }},\n",
            constant(data).map_err(|problem| format!("path m-{named}: {problem}"))?,
            constant(self.path(&format!("grain-{named}")).unwrap_or_default())?,
            constant(self.path(&format!("sheen-{named}")).unwrap_or_default())?,
            points.join(", "),
            label.0.round() as i32,
            label.1.round() as i32,
        ))
    }
}
