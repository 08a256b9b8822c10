//! Labels of buttons, fields and headings, and the words of numbers.

use crate::text::numbers::Units;

/// The language, as HTML and browsers call it.
pub const LANGUAGE: &str = "en";
/// Between the ends of a range.
pub const TO: &str = "to";
/// Inches.
pub const INCHES: &str = "in";

/// The name of the product.
pub const NAME: &str = "Hindsaddle";
/// Under the name.
pub const MOTTO: &str = "from deer to labelled packages";
/// Step back.
pub const UNDO: &str = "Undo";
/// Step forward.
pub const REDO: &str = "Redo";
/// Copy the link.
pub const COPY_LINK: &str = "Copy link";
/// Units.
pub const UNITS: &str = "Units";
/// Language.
pub const LANGUAGE_CHOICE: &str = "Language";
/// The title field.
pub const TITLE: &str = "Title of the plan";
/// What an empty title suggests.
pub const TITLE_HINT: &str = "e.g. north ridge doe";
/// Whether it travels.
pub const TITLE_TRAVELS: &str = "Put the title in the link";
/// Close a sheet.
pub const CLOSE: &str = "Close";
/// Dismiss a notice.
pub const DISMISS: &str = "Dismiss";
/// The animal card.
pub const ANIMAL: &str = "Animal";
/// Marks the example.
pub const EXAMPLE: &str = "An example: enter your animal \u{203a}";
/// Species field.
pub const SPECIES: &str = "Species";
/// Sex field.
pub const SEX: &str = "Sex";
/// Age field.
pub const AGE: &str = "Age";
/// Condition field.
pub const CONDITION: &str = "Season";
/// Stage field.
pub const STAGE: &str = "Weighed as";
/// Weight field.
pub const WEIGHT: &str = "Weight";
/// Girth field.
pub const GIRTH: &str = "Chest girth";
/// Legs switch.
pub const LEGS_ON: &str = "Weighed with the lower legs on";
/// The losses card.
pub const LOSSES: &str = "Losses";
/// Shot field.
pub const SHOT: &str = "The shot";
/// Care field.
pub const CARE: &str = "Cleaning the bones";
/// Days field.
pub const HUNG: &str = "Days hung, skinned";
/// Caution at the shot.
pub const SHOT_CAUTION: &str = "Throw away meat around the bullet path and do not grind it. No distance is known to be safe; do not rinse. Meat touched by gut contents goes out with a margin.";
/// Caution at hanging.
pub const HUNG_CAUTION: &str =
    "Hang at or below 40 °F (4 °C); published advice ends at 5 to 7 days. Do not age what you mean to grind.";
/// The packing card.
pub const PACKING: &str = "Packages";
/// People field.
pub const PEOPLE: &str = "People at the table";
/// Appetite field.
pub const APPETITE: &str = "Appetite";
/// The plate.
pub const PLATE: &str = "The plate";
/// View switch.
pub const VIEW: &str = "View";
/// Region buttons.
pub const REGIONS: &str = "Region";
/// The whole animal.
pub const WHOLE: &str = "Whole";
/// The legend.
pub const LEGEND: &str = "Legend";
/// What to do first, on a phone.
pub const TAP_REGION: &str = "Tap the animal to come closer, then tap a muscle.";
/// What to do first, elsewhere.
pub const TAP_MUSCLE: &str = "Tap a muscle to decide what it becomes.";
/// Give a whole region one product.
pub const ALL_OF_REGION: &str = "All of it to";
/// Choose.
pub const CHOOSE: &str = "choose…";
/// The list.
pub const LIST: &str = "All muscles";
/// Columns of the list.
pub const MUSCLE: &str = "Muscle";
/// Column.
pub const BECOMES: &str = "Becomes";
/// Column.
pub const GIVES: &str = "Gives";
/// In the list, a muscle in parts.
pub const DIVIDED: &str = "In parts";
/// In the list, sides that differ.
pub const UNEVEN: &str = "Left and right differ";
/// Every muscle back.
pub const RESET: &str = "All muscles back to the usual";
/// The sheet's choice.
pub const WHAT_BECOMES: &str = "What it becomes";
/// Thickness stepper.
pub const THICKNESS: &str = "Thickness";
/// Cube stepper.
pub const CUBE: &str = "Cube";
/// Roast size.
pub const ROAST_SIZE: &str = "Size of a roast";
/// Whole roast.
pub const ROAST_WHOLE: &str = "Whole";
/// By weight.
pub const ROAST_WEIGHT: &str = "By weight";
/// By length.
pub const ROAST_LENGTH: &str = "By length";
/// Weight of a roast.
pub const EACH_WEIGHS: &str = "Each about";
/// Length of a roast.
pub const EACH_IS_LONG: &str = "Each is";
/// Smaller.
pub const LESS: &str = "Less";
/// Larger.
pub const MORE: &str = "More";
/// Sides.
pub const SIDES: &str = "For which side";
/// Both.
pub const BOTH: &str = "Both sides";
/// Taken.
pub const TAKEN: &str = "Take this muscle";
/// Divide.
pub const DIVIDE: &str = "Divide along its length";
/// Remove a part.
pub const REMOVE_PART: &str = "Join with its neighbour";
/// Length of a part.
pub const PART_LENGTH: &str = "Part of the length, %";
/// About the muscle.
pub const ABOUT: &str = "About this muscle";
/// How a muscle comes off the bones.
pub const TAKE_OFF: &str = "Take it off";
/// The knife.
pub const KNIFE: &str = "The knife";
/// Tenderness.
pub const TENDER: &str = "Tenderness";
/// Silverskin.
pub const SILVERSKIN: &str = "Silverskin";
/// The tally.
pub const TALLY: &str = "Tally";
/// Details of the tally.
pub const SHOW_TALLY: &str = "More";
/// Fewer details.
pub const HIDE_TALLY: &str = "Less";
/// Under the take-home weight.
pub const TO_TAKE_HOME: &str = "take home";
/// The ledger.
pub const LEDGER: &str = "Where the weight goes";
/// A price's unit.
pub fn price_unit(units: Units) -> &'static str {
    match units {
        Units::Pounds => "a lb",
        Units::Kilograms => "a kg",
    }
}

/// Packages column.
pub const PACKAGES: &str = "Packages";
/// Take-home.
pub const TAKE_HOME: &str = "Take home";
/// How was it worked out.
pub const WORKED_OUT: &str = "How it was worked out";
/// Inputs.
pub const INPUTS: &str = "Inputs and sources";

/// "Part 2".
pub fn part(number: usize) -> String {
    format!("Part {number}")
}

/// Read out after a number that can be pressed.
pub const HOW: &str = ": how it was worked out";
/// "How Bone was worked out", for a number that can be tapped.
pub fn how(name: &str) -> String {
    format!("{name}: how it was worked out")
}

/// "4 of 5".
pub fn of_five(value: u8) -> String {
    format!("{value} of 5")
}

/// "8.2 lb, both sides".
pub fn both_sides(mass: &str) -> String {
    format!("{mass}, both sides")
}

/// "24 in long".
pub fn long(length: &str) -> String {
    format!("about {length} long")
}

/// The name of a muscle's choice in the list.
pub fn becomes(muscle: &str) -> String {
    format!("{muscle} becomes")
}

/// A field of the packing card.
pub fn packed(product: &str) -> String {
    format!("{product}, a package")
}

/// Beside a poor use.
pub const POOR: &str = "poor use";
/// Beside a use that is refused.
pub const NOT_POSSIBLE: &str = "not possible";
