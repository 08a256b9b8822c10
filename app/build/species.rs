//! The figure of a species: which landmarks of the plate it moves, and what it carries on its head.

use crate::drawing::Drawing;
use crate::path::constant;

/// The constant of a figure. Its circles are `lm-NAME` for the side views and `above-lm-NAME` for the view from
/// above; its paths begin with `antler-`, `outline-extra-`, `ink-extra-` and `above-antler`.
pub(crate) fn code(name: &str, figure: &Drawing, outer: &Drawing, above: &Drawing) -> Result<String, String> {
    Ok(format!(
        "/// Read from assets/plate/species.\nstatic {}: Figure = Figure {{ side: &[{}], above: &[{}], antlers: {}, antlers_above: {}, shape: {}, ink: {} }};\n",
        name.to_ascii_uppercase(),
        moved(figure, "lm-", outer)?,
        moved(figure, "above-lm-", above)?,
        figure.antlers()?,
        constant(&figure.joined("above-antler"))?,
        constant(&figure.joined("outline-extra-"))?,
        constant(&figure.joined("ink-extra-"))?,
    ))
}

/// Each landmark that moves: its place in the list of the plate's landmarks, and where it goes.
fn moved(figure: &Drawing, prefix: &str, plate: &Drawing) -> Result<String, String> {
    let landmarks = plate.landmarks();
    let moved: Result<Vec<String>, String> = figure
        .points
        .iter()
        .filter_map(|(id, at)| id.strip_prefix(prefix).map(|name| (name, at)))
        .map(|(name, (x, y))| {
            let index = landmarks.iter().position(|(other, _)| *other == name);
            let index = index.ok_or_else(|| format!("the plate has no landmark {name}"))?;
            Ok(format!("({index}, ({}, {}))", x.round() as i32, y.round() as i32))
        })
        .collect();
    Ok(moved?.join(", "))
}
