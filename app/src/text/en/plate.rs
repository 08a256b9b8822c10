//! Words of the plate's tools: painting, wounds, names, layers, pictures, sheets for a class.

use hindsaddle_model::anatomy::{Muscle, Side};

use super::names;
use crate::store::Naming;

/// The row of tools.
pub const TOOLS: &str = "Tools of the plate";
/// All the way back.
pub const BACK_TO_WHOLE: &str = "\u{2039} Whole animal";
/// The tool that gives one product to many muscles.
pub const PAINT: &str = "Paint";
/// The tool that marks a wound.
pub const WOUND: &str = "Wound";
/// The tool that names the muscles.
pub const NAMES: &str = "Names";
/// The tool that lifts muscles off.
pub const PEEL: &str = "Lift off";
/// The tool that saves the picture.
pub const SAVE: &str = "Save";
/// What to do with a brush.
pub const TAP_PAINT: &str = "Tap muscles to paint them.";
/// What to do with the wound tool.
pub const TAP_WOUND: &str = "Tap where the shot went in or out. Drag a mark to move it.";
/// Size of a wound.
pub const ACROSS: &str = "Across";
/// Take a wound away.
pub const REMOVE: &str = "Remove";
/// A wound without a pointer.
pub const ADD_WOUND: &str = "Mark one behind the shoulder";
/// Who should not eat it, after the caution about the bullet path.
pub const LEAD_CAUTION: &str = "Lead fragments have been found as far as 18 in (45 cm) from the wound. Venison shot with lead, above all ground, is not for young children or anyone pregnant. Your health department decides.";
/// Beside the choice of the shot, while wounds are marked.
pub const WOUNDS_COUNT: &str = "What you mark takes the place of the average loss of a shot, which was counted until now: that is why the take-home weight may rise. Mark where it went in and where it came out.";
/// How a muscle is found by those around it.
pub const NEXT_TO: &str = "Next to";
/// Save as SVG.
pub const SAVE_SVG: &str = "Drawing (SVG)";
/// Save as PNG.
pub const SAVE_PNG: &str = "Picture (PNG)";
/// Open the sheets.
pub const CLASS_SHEETS: &str = "Worksheet and key";
/// Name of a saved picture, without its ending.
pub const PICTURE_FILE: &str = "hindsaddle-plate";
/// Said after saving.
pub const SAVED: &str = "Saved. Look among your downloads.";
/// Said when that failed.
pub const NOT_SAVED: &str =
    "This browser could not make the picture. Print the page instead, or try another browser.";
/// Print.
pub const PRINT: &str = "Print";
/// Over the sheets.
pub const CLASS_HINT: &str = "One page each: the worksheet, then the answer key. For another side of the deer, close and choose its view first.";
/// For the pupil.
pub const NAME_LINE: &str = "Name: ______________________________   Date: ______________";
/// Under each sheet.
pub const CLASS_FOOT: &str = "Hindsaddle: a schematic, not to scale for any one animal.";

/// "Left side is shown; show the right side".
pub fn shown_side(side: Side) -> &'static str {
    match side {
        Side::Left => "Left side is shown; show the right side",
        Side::Right => "Right side is shown; show the left side",
    }
}

/// The switch between the sides, by the one that is shown.
pub fn side_switch(side: Side) -> &'static str {
    match side {
        Side::Left => "\u{21c4}\u{a0}Left side",
        Side::Right => "\u{21c4}\u{a0}Right side",
    }
}

/// What a brush does.
pub fn painting(name: &str) -> String {
    format!("{name}: each muscle you tap becomes that, at the usual size.")
}

/// How many layers are off.
pub fn lifted(layers: u8) -> &'static str {
    match layers {
        0 => "Nothing lifted off",
        1 => "Thin sheets off: cape, neck straps, flank",
        2 => "Shoulder off too",
        3 => "Haunch opened too",
        _ => "Neck, back and belly off too",
    }
}

/// A choice of names.
pub fn naming_choice(naming: Naming) -> &'static str {
    match naming {
        Naming::Off => "No names",
        Naming::Common => "Trade names",
        Naming::Anatomical => "Anatomical",
    }
}

/// What a muscle is called beside it.
pub fn naming(muscle: Muscle, naming: Naming) -> String {
    match naming {
        Naming::Off => String::new(),
        Naming::Common => names::muscle(muscle).into(),
        Naming::Anatomical => anatomical_short(muscle).into(),
    }
}

/// The first, and largest, muscle of a group in anatomy's words.
pub fn anatomical_short(muscle: Muscle) -> &'static str {
    let full = names::anatomical(muscle);
    let end = [" +", " (", ",", "/"].into_iter().filter_map(|mark| full.find(mark)).min();
    &full[..end.unwrap_or(full.len())]
}

/// "Wound 1, left, 7 in across: spoils about 14 oz of rib meat, shoulder clod".
pub fn wound(number: usize, side: Side, reach: &str, lost: &str, muscles: &[&str]) -> String {
    let side = names::side(side).to_ascii_lowercase();
    if muscles.is_empty() {
        return format!("Wound {number}, {side}, {reach} across: no meat lies there");
    }
    let muscles = muscles.join(", ").to_ascii_lowercase();
    format!("Wound {number}, {side}, {reach} across: spoils about {lost} of {muscles}")
}

/// "mock tender, shoulder clod".
pub fn touching(muscles: impl Iterator<Item = Muscle>) -> String {
    let names: Vec<&str> = muscles.map(names::muscle).collect();
    names.join(", ").to_ascii_lowercase()
}

/// A wound's handle.
pub fn wound_handle(wound: &str) -> String {
    format!("{wound}. Arrow keys move it, plus and minus change its size, Delete removes it")
}

/// "Remove wound 2".
pub fn remove_wound(number: usize) -> String {
    format!("Remove wound {number}")
}

/// When a side has none.
pub fn no_wound(side: Side) -> String {
    format!("No wound is marked on the {} side.", names::side(side).to_ascii_lowercase())
}

/// The handle between two parts.
pub fn boundary(part: usize, whole: bool) -> String {
    if whole { "Divide this muscle".into() } else { format!("End of part {part}") }
}

/// "35 % of its length".
pub fn percent_of_length(percent: u8) -> String {
    format!("{percent} %")
}

/// Title of a sheet.
pub fn class_title(answers: bool) -> &'static str {
    if answers { "Name the muscles: answer key" } else { "Name the muscles" }
}

/// "Elk, outer side".
pub fn class_subject(species: &str, view: &str) -> String {
    format!("{species}, {}", view.to_ascii_lowercase())
}
