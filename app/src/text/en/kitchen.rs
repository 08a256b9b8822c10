//! Words of the kitchen: the table card, grinder, wrap, freezer, dates, labels, work order, files, cautions.

use hindsaddle_model::dates::{Date, DateError, Keeps};
use hindsaddle_model::fat::{Added, FatContent, NamedFat, SquareError};
use hindsaddle_model::freezer::{FreezerError, LoadRule, Trouble, Way};
use hindsaddle_model::grind::{GrindError, Mix, Patty, Plate};
use hindsaddle_model::kitchen::KitchenError;
use hindsaddle_model::labels::LabelError;
use hindsaddle_model::order::Why;
use hindsaddle_model::packages::{Contents, Package};
use hindsaddle_model::units::{Duration, Length, Mass, Temperature, Volume};
use hindsaddle_model::wrap::{Bag, Fold, Misfit, Need, Wrap};

use super::{names, sentences};
use crate::caution::Caution;
use crate::text::numbers::{self, Units};

/// The table card.
pub const TABLE_CARD: &str = "Table card";
/// The grinder.
pub const GRINDER: &str = "Grind";
/// The wrap.
pub const WRAPPING: &str = "Wrap";
/// The freezer.
pub const FREEZER: &str = "Freeze";
/// Labels.
pub const LABELS: &str = "Labels";
/// The work order.
pub const WORK_ORDER: &str = "Work order";
/// Files.
pub const FILES: &str = "Files";
/// Cautions.
pub const CAUTIONS: &str = "Cautions";
/// Under every figure here.
pub const MIDDLE_CASE: &str = "Likely weights and counts. The plan's page has their ranges.";

// The table card.

/// Next step.
pub const NEXT: &str = "Next";
/// Step before.
pub const BACK: &str = "Back";
/// It is done.
pub const DONE: &str = "Done";
/// Every step.
pub const ALL_STEPS: &str = "All steps";
/// The marks go.
pub const START_AGAIN: &str = "Take all marks away";
/// Keep the screen on.
pub const AWAKE: &str = "Keep the screen on";
/// Hand safety, where the knife is.
pub const HAND_CAUTION: &str =
    "A sharp knife needs less force. Cut away from the other hand, and wear a cut-resistant glove on it.";
/// Clean-up, at the end.
pub const CLEAN_UP: &str = "Wash boards, knives and grinder in hot soapy water, then sanitise. After a deer from a wasting-disease area follow your agency's advice for tools.";
/// At the tub.
pub const GRIND_CAUTION: &str = "Grind cold: chill meat and grinder parts, and chill them again if they warm past 40 °F (4 °C). Push with the plunger, never with fingers. Unplug it before you open it.";
/// The tub as a step.
pub const TUB_STEP: &str = "The tub, through the grinder";

/// "Step 3 of 21".
pub fn step_of(step: usize, of: usize) -> String {
    format!("Step {step} of {of}")
}

/// "4 of 21 done".
pub fn done_of(done: usize, of: usize) -> String {
    format!("{done} of {of} done")
}

/// "about 2 oz of ends and trim to the tub".
pub fn ends_and_trim(mass: &str) -> String {
    format!("about {mass} of ends and trim to the tub")
}

/// Why a muscle is worked on now.
pub fn why(why: Why) -> &'static str {
    match why {
        Why::DriesFirst => "It lies bare and dries first.",
        Why::ChoiceWhileFresh => "A choice cut, while your hands are fresh.",
        Why::SlicesNext => "Slices, while the knife is sharp.",
        Why::RoastsNext => "Whole pieces: few strokes of the knife.",
        Why::CubesNext => "Cubes need no straight edge.",
        Why::TrimToTheTub => "All of it is trim: to the tub, and the tub to the cold.",
        Why::GrindLast => "Last, when the tub is full and near freezing.",
    }
}

// Grinding.

/// What the tub becomes.
pub const MIX: &str = "The tub becomes";
/// Target.
pub const TARGET_FAT: &str = "Fat of the mix, %";
/// What is added.
pub const ADDED_FAT: &str = "Fat to add";
/// Fat of trim.
pub const TRIM_FAT: &str = "Fat of the pork trim, %";
/// What is mixed in.
pub const VESSEL: &str = "Mixing tub takes";
/// Packs or patties.
pub const GROUND_PACKS: &str = "Packed as";
/// How many patties.
pub const PATTIES_A_PACK: &str = "Patties in a pack";
/// Price field.
pub const PRICE: &str = "Price of what is added (optional)";
/// Packs by weight.
pub const BY_WEIGHT: &str = "Packs by weight";
/// Over the answer.
pub const GRIND_RESULT: &str = "What to do";
/// No cure.
pub const NO_CURE: &str = "This planner computes no cure. Curing salt in the wrong dose makes people ill: follow a tested recipe from your extension service, and the packet.";
/// A fat mix.
pub const FATTY: &str =
    "That is fatter than ground beef may be (30 %). It keeps for a shorter time, and the grill flares.";

/// What the tub can become: plain, burger, sausage now, sausage later.
pub const MIXES: [&str; 4] =
    ["Plain ground", "Burger, with fat", "Sausage meat, with fat", "Lean for sausage, fat later"];

/// A patty.
pub fn patty(patty: Patty) -> &'static str {
    match patty {
        Patty::FourToOne => "Patties, 4 to the pound (113 g)",
        Patty::ThreeToOne => "Patties, 3 to the pound (151 g)",
    }
}

/// What can be added: two fats and trim.
pub const FATS: [&str; 3] = ["Pork back fat", "Beef fat", "Pork trim"];

/// The place of what is added in [`FATS`].
pub fn added_place(added: Added) -> usize {
    match added {
        Added::Fat(NamedFat::PorkBackFat) => 0,
        Added::Fat(NamedFat::BeefFat) => 1,
        Added::PorkTrim(_) => 2,
    }
}

/// The place of a mix in [`MIXES`].
pub fn mix_place(mix: Mix) -> usize {
    match mix {
        Mix::Plain => 0,
        Mix::Burger(_) => 1,
        Mix::SausageLean(Some(_)) => 2,
        Mix::SausageLean(None) => 3,
    }
}

fn content(content: FatContent) -> String {
    numbers::percent(content.to_percent() / 100.0)
}

/// "10 lb from the tub and 1.2 lb pork back fat make 11.2 lb with 10 % fat."
pub fn mixed(lean: Mass, added: Mass, what: Option<&str>, fat: FatContent, units: Units) -> String {
    let write = |mass: Mass| numbers::mass(mass, units);
    match what {
        Some(what) => format!(
            "{} from the tub and {} of {} make {} with {} fat.",
            write(lean),
            write(added),
            what.to_ascii_lowercase(),
            write(lean + added),
            content(fat)
        ),
        None => format!("{} from the tub, about {} fat.", write(lean), content(fat)),
    }
}

/// "3 batches, each 3.3 lb lean and 6 oz fat."
pub fn batches(count: usize, lean: Mass, added: Mass, units: Units) -> String {
    let write = |mass: Mass| numbers::mass(mass, units);
    let fat = if added > Mass::ZERO { format!(" and {} added", write(added)) } else { String::new() };
    let word = if count == 1 { "batch" } else { "batches, each" };
    format!("{count} {word} {} lean{fat}.", write(lean))
}

/// Which plates.
pub fn plates(plates: &[Plate]) -> &'static str {
    match plates {
        [Plate::Coarse] => "Through the coarse plate (3/8 in, 10 mm) once: it is ground again with its fat.",
        _ => "Through the coarse plate (3/8 in, 10 mm), then the fine (3/16 in, 5 mm).",
    }
}

/// "12 packs, 4 oz left for the pan."
pub fn ground_packs(packs: usize, left: Mass, units: Units) -> String {
    let packs = format!("{packs} {}", sentences::packages(packs as u32));
    if left > Mass::grams(5.0) {
        format!("{packs}; {} left for the pan.", numbers::mass(left, units))
    } else {
        format!("{packs}.")
    }
}

/// "What is added costs about 4.20."
pub fn cost(amount: f64) -> String {
    let cents = (amount * 100.0).round() as i64;
    format!("What is added costs about {}.{:02}.", cents / 100, cents % 100)
}

fn square_error(error: SquareError) -> String {
    match error {
        SquareError::NotAPercentage => "Fat is 0 to 100 %. Enter a figure between them.".into(),
        SquareError::SameFat { both } => {
            format!("Both have {} fat, so no mix of them has another. Add something fatter.", content(both))
        }
        SquareError::TargetBelowBoth { least } => {
            format!("Nothing here is leaner than {}. Aim for more fat.", content(least))
        }
        SquareError::TargetAboveBoth { most } => {
            format!(
                "What is added has {} fat: a mix has less. Aim lower, or add something fatter.",
                content(most)
            )
        }
    }
}

/// Why the grinder cannot do that.
pub fn grind_error(error: &GrindError, units: Units) -> String {
    let mass = |mass: &Mass| numbers::mass(*mass, units);
    match error {
        GrindError::Square(error) => square_error(*error),
        GrindError::VesselTooSmall { least } => format!("A mixing tub takes at least {}.", mass(least)),
        GrindError::PackOutOfRange { least, most } => {
            format!("A package weighs {} to {}.", mass(least), mass(most))
        }
        GrindError::NoPatties => "A pack holds at least one patty.".into(),
        GrindError::PriceBelowNothing => "A price is nothing or more.".into(),
    }
}

// Wrap.

/// Roll width.
pub const ROLL: &str = "Width of the paper";
/// Spare.
pub const SPARE: &str = "Paper, tape and roll to spare, %";
/// The list.
pub const SUPPLIES: &str = "Shopping list";
/// Columns.
pub const NEEDED: &str = "Needed";
/// What is there.
pub const HAVE: &str = "I have";
/// What is left to buy.
pub const TO_BUY: &str = "To buy";
/// How it is wrapped, at the table.
pub const WRAP_HINT: &str = "Coated side to the meat, air out, freezer tape (masking tape lets go in the cold). Keep a double sheet between slices and patties.";
/// Vacuum.
pub const VACUUM_CAUTION: &str =
    "A vacuum does not keep meat safe outside the cold: it goes in the refrigerator or freezer all the same.";
/// Names of the supplies: paper, tape, sheets between, bags, vacuum rolls, labels.
pub const SUPPLY_NAMES: [&str; 8] = [
    "Freezer paper",
    "Freezer tape",
    "Double sheets between pieces",
    "Quart freezer bags",
    "Gallon freezer bags",
    "Vacuum roll, 8 in (20 cm)",
    "Vacuum roll, 11 in (28 cm)",
    "Labels",
];

/// A wrap.
pub fn wrap(wrap: Wrap) -> &'static str {
    match wrap {
        Wrap::Paper(Fold::Butcher) => "Paper, butcher wrap (2 \u{d7} round)",
        Wrap::Paper(Fold::Drugstore) => "Paper, drugstore wrap (1.5 \u{d7})",
        Wrap::Paper(Fold::DrugstoreShort) => "Paper, drugstore wrap (1.33 \u{d7})",
        Wrap::Paper(Fold::Square) => "Paper, a square of the roll",
        Wrap::Zip => "Zip freezer bag",
        Wrap::Vacuum => "Vacuum bag",
    }
}

/// What one package takes.
pub fn need(need: Result<Need, Misfit>, units: Units) -> String {
    match need {
        Ok(Need::Sheet { length, .. }) => format!("sheets of up to {}", numbers::rough_length(length, units)),
        Ok(Need::Bag(Bag::Quart)) => "a quart bag".into(),
        Ok(Need::Bag(Bag::Gallon)) => "a gallon bag".into(),
        Ok(Need::VacuumBag { length, .. }) => {
            format!("{} of vacuum roll", numbers::rough_length(length, units))
        }
        Err(Misfit::PaperTooNarrow { needs }) => {
            format!(
                "does not fit: the paper would have to be {} wide. Choose a wider roll.",
                numbers::rough_length(needs, units)
            )
        }
        Err(Misfit::NoBagTakesIt) => "fits no zip bag. Choose paper, or smaller packages.".into(),
        Err(Misfit::NoRollTakesIt { needs }) => {
            format!(
                "no vacuum roll is {} wide. Choose paper, or smaller packages.",
                numbers::rough_length(needs, units)
            )
        }
        Err(Misfit::TooManyRoasts { most }) => {
            format!("more than {most} roasts in one vacuum bag. Choose paper, or fewer to a package.")
        }
    }
}

/// Feet or metres off a roll, whole, rounded up.
pub fn roll_length(length: Length, units: Units) -> String {
    match units {
        Units::Pounds => format!("{} ft", (length.to_inches() / 12.0 - 1e-9).ceil().max(0.0) as i64),
        Units::Kilograms => format!("{} m", (length.to_mm() / 1000.0 - 1e-9).ceil().max(0.0) as i64),
    }
}

// Freezer.

/// Size field.
pub const FREEZER_SIZE: &str = "Size of the freezer";
/// Free room field.
pub const FREEZER_FREE: &str = "Still free in it";
/// Pace.
pub const PACE: &str = "How fast it is loaded";
/// Without a freezer.
pub const NO_FREEZER: &str = "Enter the size of your freezer (it stands on its plate or in its manual), and this plans which package goes in on which day.";
/// What the small pictures show.
pub const FILLING: &str =
    "In the picture: goes in that day on top, frozen before that under it, what was there at the bottom.";
/// Over the schedule.
pub const SCHEDULE: &str = "Day by day";
/// What freezing asks.
pub const FREEZE_HINT: &str = "One layer, against the cold walls, air between; stack when they are hard. Keep what waits below 40 °F (4 °C).";
/// Over the times of freezing and thawing.
pub const PACKAGE_TIMES: &str = "How long a package takes";
/// Column: of the thickest package.
pub const FREEZES: &str = "To freeze, the thickest";
/// Column: of the heaviest package, in the refrigerator.
pub const THAWS: &str = "To thaw, the heaviest";
/// Under it, to be opened.
pub const HOW_COMPUTED: &str = "How this is computed";
/// What that rests on.
pub const PLANK: &str = "To freeze: Plank's equation for a slab, cold air on both faces: freezer at 0 °F (-18 °C), meat from 40 °F (4 °C), 8 W/m\u{b2}K from still air to the pack (home freezers: 8 to 15). A pack that lies on another takes about twice as long. A compact roast freezes somewhat faster than a slab, a full or warm freezer more slowly. To thaw: what the quickest source says and the slowest; a roast of 4 lb (1.8 kg) or more counts as a large one, which is judgement.";
/// Too thick.
pub const TOO_THICK: &str = "A package is thicker than 2 in (5 cm), so it may take more than a day: a thinner roast or a flatter pack freezes faster.";
/// Columns.
pub const DAY: &str = "Day";
/// Column.
pub const GOES_IN: &str = "Goes in";
/// Column.
pub const WAITS: &str = "Waits in the cold";
/// Thawing.
pub const THAW_HINT: &str = "Thaw in the refrigerator: about 24 hours for each 5 lb (2.3 kg) of a large piece, a day for a 1 lb pack of ground. Once thawed there, cook ground meat and stew within 1 to 2 days, whole cuts within 3.";

/// How much goes in a day.
pub fn load_rule(rule: LoadRule) -> &'static str {
    match rule {
        LoadRule::Cautious => "2 lb a cubic foot a day (32 g/L)",
        LoadRule::Full => "3 lb a cubic foot a day (48 g/L)",
    }
}

/// The unit of a freezer's size.
pub fn volume_unit(units: Units) -> &'static str {
    match units {
        Units::Pounds => "cu ft",
        Units::Kilograms => "L",
    }
}

/// What stands in a field for a volume.
pub fn volume_field(volume: Volume, units: Units) -> String {
    match units {
        Units::Pounds => numbers::one_decimal(volume.to_cubic_feet()),
        Units::Kilograms => (volume.to_litres().round() as i64).to_string(),
    }
}

/// A volume with its unit.
pub fn volume(volume: Volume, units: Units) -> String {
    format!("{} {}", volume_field(volume, units), volume_unit(units))
}

/// A typed volume.
pub fn typed_volume(number: f64, units: Units) -> Volume {
    match units {
        Units::Pounds => Volume::cubic_feet(number),
        Units::Kilograms => Volume::litres(number),
    }
}

/// "All of it takes about 1.4 cu ft (1.2 to 1.6); this freezer freezes 14 lb a day."
pub fn room(low: Volume, likely: Volume, high: Volume, load: Mass, units: Units) -> String {
    format!(
        "All of it takes about {} ({} to {}). This freezer freezes {} a day.",
        volume(likely, units),
        volume_field(low, units),
        volume(high, units),
        numbers::mass(load, units)
    )
}

fn way(way: &Way, units: Units) -> String {
    match way {
        Way::FullLoad => "load it at the upper of the published figures".into(),
        Way::BiggerFreezer(size) => format!("use a freezer of {} or more", volume(*size, units)),
        Way::MakeRoom(room) => format!("free another {}", volume(*room, units)),
        Way::PackLess(mass) => {
            format!(
                "pack {} less now: eat it fresh, or leave it on the bone in the cold",
                numbers::mass(*mass, units)
            )
        }
        Way::Commercial(mass) => {
            format!("have {} frozen by a processor", numbers::mass(*mass, units))
        }
    }
}

/// Why it cannot be frozen so, and what would do.
pub fn trouble(trouble: &Trouble, units: Units) -> String {
    let or = |ways: &[Way]| ways.iter().map(|one| way(one, units)).collect::<Vec<_>>().join("; or ");
    match trouble {
        Trouble::Freezer(error) => freezer_error(error, units),
        Trouble::NoRoom { needs, ways } => {
            format!(
                "It takes about {}, and there is less room. {}.",
                volume(needs.likely(), units),
                capital(&or(ways))
            )
        }
        Trouble::TooSlow { mass, ways, .. } => format!(
            "{} would wait longer than it may (ground 1 day, whole cuts 3). {}.",
            capital(&numbers::mass(*mass, units)),
            capital(&or(ways))
        ),
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_ascii_uppercase().to_string() + letters.as_str())
}

fn freezer_error(error: &FreezerError, units: Units) -> String {
    match error {
        FreezerError::SizeOutOfRange { least, most } => {
            format!("A freezer holds {} to {}. Check the size.", volume(*least, units), volume(*most, units))
        }
        FreezerError::FreeOutOfRange { most } => {
            format!("No more than {} can be free in it. Check both figures.", volume(*most, units))
        }
    }
}

/// "8.2 h".
pub fn hours(duration: Duration) -> String {
    let hours = duration.to_hours();
    if hours < 10.0 {
        format!("about {} h", numbers::one_decimal(hours))
    } else {
        format!("about {} h", hours.round() as i64)
    }
}

/// "12 to 14 h".
pub fn hours_range((low, high): (Duration, Duration)) -> String {
    let [low, high] = [low, high].map(|duration| duration.to_hours().round() as i64);
    if low == high { format!("about {low} h") } else { format!("{low} to {high} h") }
}

// Dates.

/// Harvest field.
pub const HARVESTED: &str = "Killed on";
/// Packing field.
pub const PACKED_ON: &str = "Packed on";
/// Owner field.
pub const OWNER: &str = "Owner (on labels and order)";
/// Tag field.
pub const TAG: &str = "Tag or licence number";
/// Over the table.
pub const BEST_BY: &str = "At its best until";
/// What a best-by date is.
pub const QUALITY: &str = "The date is about taste, not safety: kept frozen at 0 °F (-18 °C) meat stays safe for longer. Sources disagree; the label takes the cautious end.";
/// Without a step.
pub const NO_STEP: &str =
    "Nothing to cut: every muscle is left behind or thrown away. Decide on the plan's page.";
/// Without a date.
pub const NO_DATE: &str = "Enter the day of packing for best-by dates.";
/// Calendar.
pub const SAVE_CALENDAR: &str = "Best-by reminders (.ics)";

const MONTHS: [&str; 12] =
    ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/// "25 Nov 2026".
pub fn date(date: Date) -> String {
    format!("{} {} {}", date.day(), MONTHS[usize::from(date.month()) - 1], date.year())
}

/// A form in which meat is frozen.
pub fn keeps(keeps: Keeps) -> &'static str {
    match keeps {
        Keeps::Roast => "Roasts",
        Keeps::Steak => "Steaks",
        Keeps::Chop => "Chops",
        Keeps::Stew => "Stew",
        Keeps::Ground => "Ground, plain",
        Keeps::GroundWithFat => "Ground, with fat added",
        Keeps::Sausage => "Raw sausage",
        Keeps::Organs => "Organs",
    }
}

/// "8 to 12 months".
pub fn months((from, to): (u8, u8)) -> String {
    if from == to { format!("{to} months") } else { format!("{from} to {to} months") }
}

/// A reminder.
pub fn reminder(form: Keeps) -> String {
    format!("{}: at their best until today (venison)", keeps(form))
}

fn date_error(error: &DateError) -> String {
    match error {
        DateError::YearOutOfRange { first, last } => {
            format!("The year is {first} to {last}. Check the date.")
        }
        DateError::NoSuchMonth => "There are twelve months. Check the date.".into(),
        DateError::NoSuchDay { last } => format!("That month has {last} days. Check the date."),
        DateError::PackedBeforeHarvest { harvested, packed } => format!(
            "Packed on {} is before it was killed on {}. Change one of the two.",
            date(*packed),
            date(*harvested)
        ),
    }
}

/// Why something about the kitchen was refused.
pub fn kitchen_error(error: &KitchenError, units: Units) -> String {
    match error {
        KitchenError::Date(error) => date_error(error),
        KitchenError::Freezer(error) => freezer_error(error, units),
        KitchenError::Grind(error) => grind_error(error, units),
        KitchenError::VesselTooLarge { most } => {
            format!("A mixing tub takes at most {}.", numbers::mass(*most, units))
        }
        KitchenError::TooManyPatties { most } => format!("A pack holds at most {most} patties."),
        KitchenError::Name { most } => format!("A name or tag has at most {most} plain characters."),
        KitchenError::SpareOutOfRange { most } => format!("To spare is 0 to {most} %."),
    }
}

// Labels.

/// Sheet field.
pub const SHEET: &str = "Sheet of labels";
/// Own dimensions.
pub const OWN_SHEET: &str = "Own: enter the sizes";
/// A roll.
pub const ROLL_OF_LABELS: &str = "Continuous roll";
/// First label.
pub const START_AT: &str = "First free label";
/// Nudges.
pub const NUDGE_ACROSS: &str = "Move right";
/// Nudge down.
pub const NUDGE_DOWN: &str = "Move down";
/// Frames.
pub const FRAMES: &str = "Print the frames (a test on plain paper)";
/// QR.
pub const WITH_QR: &str = "A square code of the plan on each label";
/// Blank weight.
pub const BLANK_WEIGHT: &str = "Leave the weight blank, for the scale";
/// Print.
pub const PRINT_LABELS: &str = "Print the labels";
/// Before printing.
pub const PRINT_HINT: &str = "In the print dialog choose this paper, no margins, and 100 % (no \u{201c}fit to page\u{201d}). Lay a ruler on the printed 100 mm to check.";
/// The fields of an own sheet.
pub const SHEET_FIELDS: [&str; 8] = [
    "Labels across",
    "Labels down",
    "Label width, mm",
    "Label height, mm",
    "Left margin, mm",
    "Top margin, mm",
    "Step across, mm",
    "Step down, mm",
];
/// Under the ruler.
pub const RULER: &str = "100 mm";

/// "3 × 10 labels of 66.7 × 25.4 mm, Letter".
pub fn grid(columns: u8, rows: u8, label: (Length, Length), paper: &str) -> String {
    let mm = |length: Length| numbers::one_decimal(length.to_mm());
    format!("{columns} \u{d7} {rows}, {} \u{d7} {} mm, {paper}", mm(label.0), mm(label.1))
}

/// Half millimetres as millimetres.
pub fn nudge(half_millimetres: i8) -> String {
    format!("{} mm", numbers::one_decimal(f64::from(half_millimetres) / 2.0))
}

/// "2 sheets for 40 labels".
pub fn sheets(sheets: u32, labels: usize) -> String {
    let word = if sheets == 1 { "sheet" } else { "sheets" };
    format!("{sheets} {word} for {labels} labels.")
}

/// Why labels cannot be laid out.
pub fn label_error(error: &LabelError) -> String {
    let mm = |length: &Length| format!("{} mm", numbers::one_decimal(length.to_mm()));
    match error {
        LabelError::NoLabels => "A sheet has at least one label across and one down.".into(),
        LabelError::NoSize => "Every size is a number, and a label is larger than nothing.".into(),
        LabelError::Overlap { least } => {
            format!(
                "The labels lie over each other: step at least {} across and {} down.",
                mm(&least.0),
                mm(&least.1)
            )
        }
        LabelError::WiderThanPaper { needs, paper } => {
            format!(
                "The labels take {} across, and the paper has {}. Use fewer, narrower ones, or a smaller margin.",
                mm(needs),
                mm(paper)
            )
        }
        LabelError::TallerThanPaper { needs, paper } => {
            format!(
                "The labels take {} down, and the paper has {}. Use fewer, lower ones, or a smaller margin.",
                mm(needs),
                mm(paper)
            )
        }
        LabelError::StartBeyondLast { last } => format!("The sheet has {last} labels. Start at one of them."),
        LabelError::NudgeTooFar { most } => {
            format!("A print is moved at most {} mm either way.", i32::from(*most) / 2)
        }
    }
}

/// What a package is: "Backstrap, steak".
pub fn package_name(package: &Package) -> String {
    let product = names::product(package.product);
    match package.contents {
        Contents::Pieces { muscle, .. } => {
            format!("{}, {}", names::muscle(muscle), product.to_ascii_lowercase())
        }
        Contents::Pooled => {
            if package.product == hindsaddle_model::product::Product::Grind { "Ground meat" } else { product }
                .into()
        }
        Contents::Patties(_) => "Burger patties".into(),
    }
}

/// How many pieces: "14 steaks"; empty where they are not counted.
pub fn package_pieces(package: &Package) -> String {
    match package.contents {
        Contents::Pieces { pieces, .. } => format!("{pieces} {}", names::pieces(package.product, pieces)),
        Contents::Pooled => String::new(),
        Contents::Patties(patties) => format!("{patties} patties"),
    }
}

/// "3 of 11".
pub fn number_of(number: u32, of: u32) -> String {
    format!("{number} of {of}")
}

/// The weight of a label, or a line to write it on.
pub fn label_weight(mass: Option<String>) -> String {
    mass.map_or_else(|| "Weight: __________".into(), |mass| format!("about {mass}"))
}

/// "Packed 25 Nov 2026".
pub fn packed_on(day: Date) -> String {
    format!("Packed {}", date(day))
}

/// "killed 21 Nov 2026".
pub fn killed_on(day: Date) -> String {
    format!("killed {}", date(day))
}

/// "Best by 25 May 2027".
pub fn best_by(day: Date) -> String {
    format!("Best by {} (taste)", date(day))
}

/// What it is cooked to.
pub fn cook_to(first: Temperature, most: Temperature) -> String {
    let f = |temperature: Temperature| temperature.to_fahrenheit().round() as i64;
    let c = |temperature: Temperature| temperature.to_celsius().round() as i64;
    format!("Cook to {} °F / {} °C ({} °F where advised)", f(first), c(first), f(most))
}

/// On every label.
pub const NOT_FOR_SALE: &str = "Wild game, not for sale";

// Work order.

/// Column.
pub const MUSCLE_COLUMN: &str = "Muscle";
/// Column.
pub const LEFT_COLUMN: &str = "Becomes";
/// Column.
pub const EXPECTED: &str = "Expect";
/// Notes.
pub const NOTES: &str = "Notes";
/// Print.
pub const PRINT_ORDER: &str = "Print the work order";
/// What an order is.
pub const ORDER_HINT: &str = "One page for whoever cuts: a processor, a partner, you. Counts are expected, not promised; ask before changing a cut.";
/// Blank fields.
pub const OWNER_LINE: &str = "Owner";
/// Tag.
pub const TAG_LINE: &str = "Tag";

// Files.

/// CSV.
pub const SAVE_CSV: &str = "Packages (.csv)";
/// Plan file.
pub const SAVE_PLAN: &str = "Plan as a file";
/// Open.
pub const OPEN_PLAN: &str = "Open a plan file";
/// What files are for.
pub const FILES_HINT: &str = "Nothing leaves this device until you send it. A plan file holds the link, with titles, names and tags only if you tick that; it opens here and in every later version.";
/// A file that is none.
pub const FILE_TOO_LONG: &str = "This file is too long to be a plan. Your own plan is still here.";
/// Heads of the columns of the CSV file.
pub const CSV_HEAD: [&str; 14] = [
    "package", "product", "muscle", "pieces", "grams", "number", "of", "packed", "best_by", "owner", "tag",
    "species", "animal", "test",
];

// Cautions.

/// Under the cautions.
pub const CAUTION_FOOT: &str = "Planning help only. Your wildlife agency and health department decide.";

/// A caution: what it is about, and what it says.
pub const fn caution(caution: Caution) -> (&'static str, &'static str) {
    match caution {
        Caution::Testing => (
            "Testing",
            "Test first where your wildlife agency asks or advises it. Freeze and label the packs, and don't eat them until the result is back. If it is positive, don't eat it; ask the agency how to dispose of it.",
        ),
        Caution::PartsLeftOut => (
            "Parts to leave out",
            "Leave out brain, eyes, spine, spleen, tonsils and lymph nodes. Cut meat off the bone; don't saw through the spine. Trim fat seams.",
        ),
        Caution::OneAnimal => ("One animal at a time", "Keep each animal's meat apart."),
        Caution::Tag => (
            "Tag and proof of sex",
            "Keep the tag, and proof of sex or species if required, with the meat for as long as your rules say. Cutting it up too early can break them. Check before you cross a zone or state line; some places let out only boned meat.",
        ),
        Caution::Selling => (
            "Selling and giving",
            "Wild game can't be sold in most places. Giving it away may need a signed note. Check your rules.",
        ),
        Caution::BulletPath => (
            "The bullet path",
            "Throw away meat around the bullet path, and do not grind it. No distance is known to be safe: fragments have been found as far as 18 in (45 cm) away. Don't rinse. If you hunt with lead, don't serve that venison, above all the ground, to young children or anyone pregnant.",
        ),
        Caution::Gut => (
            "Gut contents",
            "Meat touched by gut contents goes out, with a margin. Don't try to wash it clean.",
        ),
        Caution::Cold => (
            "Cold fast",
            "Below 40 °F (4 °C), and soon. If it has been warm for long and smells or feels wrong, throw it out.",
        ),
        Caution::Ageing => {
            ("Ageing", "Don't age meat you mean to grind, or in a place you cannot hold under 40 °F (4 °C).")
        }
        Caution::Cooking => (
            "Cooking",
            "Cook to 160 °F (71 °C) inside, by thermometer; some agencies say 165 °F (74 °C). Ground meat always.",
        ),
        Caution::GrinderAndKnife => (
            "Grinder and knife",
            "Grind cold. Push with the plunger, never fingers. Unplug before you open it. Keep the knife sharp and the other hand behind the edge.",
        ),
        Caution::Freezing => (
            "Freezing",
            "Freeze in thin single layers, few pounds a day, at 0 °F (-18 °C). The date on the pack is for taste; safety depends on staying frozen.",
        ),
        Caution::Thawing => {
            ("Thawing and vacuum", "Thaw in the refrigerator. Vacuum packs don't keep meat safe outside it.")
        }
        Caution::Cure => (
            "Cure and jerky",
            "Curing and jerky can make people ill if the dose or heat is wrong: follow a tested recipe from your extension service, not this planner.",
        ),
        Caution::Organs => {
            ("Organs", "Check your state's advisory before eating liver, kidney or other organs.")
        }
    }
}

// A plan that was received.

/// The page.
pub const RECEIVED: &str = "Your work order";
/// What can be done on it.
pub const READ_ONLY: &str = "To read only: nothing of yours changes here.";
/// The way to the page for learning.
pub const WHERE_CUTS_ARE: &str = "Where the cuts lie, and why";
/// The way to one's own plan.
pub const TO_OWN_PLAN: &str = "To your own plan";
/// The choice.
pub const YOURS_OR_THEIRS: &str = "Yours or theirs";
/// There is none.
pub const IS_YOURS: &str = "This is the plan you have.";
/// There is one.
pub const HAVE_OWN: &str = "You have a plan of your own; it stays as it is.";
/// There is nothing of one's own.
pub const PLAN_ON: &str = "Plan on from this";
