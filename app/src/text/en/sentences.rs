//! Sentences: refusals, advice, notices, summaries.

use hindsaddle_model::anatomy::{Muscle, Side};
use hindsaddle_model::animal::{AnimalError, Stage, Weighed};
use hindsaddle_model::estimate::Estimate;
use hindsaddle_model::forecast::{Advice, Forecast, MuscleForecast, PackRow};
use hindsaddle_model::link::LinkError;
use hindsaddle_model::plan::{Division, Plan};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::{Reason, Refusal};
use hindsaddle_model::sources::{Grade, Kind};
use hindsaddle_model::units::Mass;

use super::names;
use crate::text::numbers::{self, Units};

/// Shown under every forecast: muscle shares are estimates.
pub const ESTIMATES: &str = "Planning help only. Muscle shares are estimates: no table of deer muscle weights was found. Ranges hold 8 of 10 animals like yours; a bar is the likely count, the line on it the range. Your wildlife agency and health department decide what is allowed and safe.";

/// Why a use is poor or impossible, or what to mind.
pub fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::NoLoinShape => "a chop is a slice of the loin, and this muscle has no such shape",
        Reason::CoarseAndTough => "it is the toughest muscle of the round, with a coarse grain",
        Reason::ToughEnds => "both ends are firmer than the middle",
        Reason::SeamsInside => "seam it apart first: four muscles of unequal tenderness are wrapped together",
        Reason::BestPiece => "it is one of the best pieces, and this use wastes it",
        Reason::TendonsStayHard => "its tendons never soften by quick heat",
        Reason::TendonsClog => "trim the tendons out first, they clog the plate",
        Reason::Scraps => "it comes off as scraps",
        Reason::SheetInside => "fillet out the sheet of gristle in the middle first",
        Reason::LooksTender => "it looks like tenderloin and is not",
        Reason::InnerTendons => "mind the tendon plates inside, worse in old animals",
        Reason::Thin => "it is too thin for that",
        Reason::SmallWithTendons => "it is small, with tendons at both ends",
        Reason::ThinSheet => "it is a sheet a few millimetres thick",
        Reason::ThinRopes => "it comes off as thin ropes",
        Reason::Layers => "it is many layers with sheets between them",
        Reason::ToughHardFat => "it is tough, with a hard fat that tastes",
    }
}

/// Why a change was refused, and what to do instead.
pub fn refusal(refusal: &Refusal, units: Units) -> String {
    let mass = |mass: &Mass| numbers::mass(*mass, units);
    let length = |length: &hindsaddle_model::units::Length| numbers::length(*length, units);
    match refusal {
        Refusal::Animal(error) => animal_error(error, units),
        Refusal::Impossible { muscle, product, reason: why, instead } => format!(
            "{} cannot be {}: {}. Try {}.",
            names::muscle(*muscle),
            product_in_sentence(*product),
            reason(*why),
            product_in_sentence(*instead)
        ),
        Refusal::ThicknessOutOfRange { least, most } => {
            format!("A slice is {} to {} thick. Enter a thickness between them.", length(least), length(most))
        }
        Refusal::LongerThanMuscle { muscle, length: long } => format!(
            "{} is only about {} long here. Choose something shorter or thinner.",
            names::muscle(*muscle),
            numbers::rough_length(*long, units)
        ),
        Refusal::RoastWeightOutOfRange { least, most } => {
            format!(
                "A roast weighs {} to {}. Enter a weight between them, or take it whole.",
                mass(least),
                mass(most)
            )
        }
        Refusal::RoastLengthOutOfRange { least, most } => {
            format!("A roast is {} to {} long. Enter a length between them.", length(least), length(most))
        }
        Refusal::CubeOutOfRange { least, most } => {
            format!("A stew cube is {} to {} wide. Enter a size between them.", length(least), length(most))
        }
        Refusal::PartsDoNotAddUp { total } => {
            format!("The parts add up to {total} %, not 100. Change one of them.")
        }
        Refusal::EmptyPart => "A part needs at least 1 %. Remove it, or make it larger.".into(),
        Refusal::TooManyParts { most } => format!("A muscle has at most {most} parts. Remove one first."),
        Refusal::NoLengthToDivide { muscle } => {
            format!("{} is scraps and has no length to divide.", names::muscle(*muscle))
        }
        Refusal::PeopleOutOfRange { most } => format!("Packages are made for 1 to {most} people."),
        Refusal::PiecesOutOfRange { most } => format!("A package holds 1 to {most} pieces."),
        Refusal::PackWeightOutOfRange { least, most } => {
            format!("A package weighs {} to {}.", mass(least), mass(most))
        }
        Refusal::WeighingOutOfRange { most, .. } => {
            format!("A weight is up to {}. Check the number and its unit.", mass(most))
        }
        Refusal::HungTooLong { most } => format!(
            "The planner computes up to {most} days of hanging; published advice ends at 5 to 7 days at or below 40 °F (4 °C)."
        ),
        Refusal::Kitchen(error) => super::kitchen_error(error, units),
        Refusal::TooManyWounds { most } => {
            format!("{most} wounds are marked, which is the most. Remove one first, or move it.")
        }
        Refusal::Wishes(error) => super::wish_error(error),
        Refusal::Partners(error) => super::partners_error(error),
        Refusal::TooManyAnimals { most } => super::season_full(*most),
        Refusal::WoundOffThePlate => "A wound has to lie on the animal. Mark it again.".into(),
        Refusal::Title { most } => format!("A title has at most {most} plain characters."),
    }
}

/// Why an animal was not believed, and what is expected.
pub fn animal_error(error: &AnimalError, units: Units) -> String {
    match error {
        AnimalError::NotPositive => "Enter a number above zero.".into(),
        AnimalError::WeightOutOfRange { least, most } => format!(
            "No such animal: at this stage it weighs {} to {}. Check the number, the unit and the stage.",
            numbers::mass(*least, units),
            numbers::mass(*most, units)
        ),
        AnimalError::NoGirthTable => {
            "No girth table was published for this species and age. Weigh it, or choose \u{201c}Not weighed\u{201d}.".into()
        }
        AnimalError::GirthOutOfRange { least, most } => format!(
            "The girth table runs from {} to {} {}. Measure again, or weigh it.",
            numbers::girth_field(*least, units),
            numbers::girth_field(*most, units),
            numbers::girth_unit(units)
        ),
        AnimalError::ConditionDoesNotSuit => "That condition does not suit the sex or age.".into(),
    }
}

/// What is wrong with a typed weight that is no number.
pub const NOT_A_NUMBER: &str = "Enter a number, such as 110 or 49.9.";

/// Why a link was not opened.
pub fn link_error(error: LinkError) -> &'static str {
    match error {
        LinkError::Empty => "There is nothing in this link. Your own plan is still here.",
        LinkError::TooLong => "This link is too long to be a plan. Your own plan is still here.",
        LinkError::Newer => {
            "This link was made by a later version. Reload the page to update it, then open the link again. Your own plan is still here."
        }
        LinkError::Unknown => "This is not a link of this planner. Your own plan is still here.",
        LinkError::Character => {
            "This link holds a character that no plan has: it was changed on the way. Ask for it again. Your own plan is still here."
        }
        LinkError::CutShort => {
            "The end of this link is missing. Copy all of it and open it again. Your own plan is still here."
        }
        LinkError::Mistyped => {
            "This link was mistyped or changed on the way. Ask for it again. Your own plan is still here."
        }
        LinkError::Impossible => {
            "This link does not say a plan that can be made. Ask for it again. Your own plan is still here."
        }
        LinkError::Lesson => LESSON_HERE,
    }
}

/// A lesson that was opened where plans are.
pub const LESSON_HERE: &str = "This is the link of a lesson, not of a plan. Your own plan is still here.";
/// The way to it.
pub const OPEN_LESSON: &str = "Open the lesson";

/// Why what this browser remembered was not opened.
pub fn memory_error(error: LinkError) -> &'static str {
    match error {
        LinkError::Newer => {
            "The plan this browser remembered was made by a later version. Reload the page to update it. Its text is set aside in this browser, and the page starts with the example."
        }
        LinkError::Empty
        | LinkError::TooLong
        | LinkError::Unknown
        | LinkError::Character
        | LinkError::CutShort
        | LinkError::Mistyped
        | LinkError::Impossible
        | LinkError::Lesson => {
            "The plan this browser remembered is damaged. Open its link again if you have it. Its text is set aside in this browser, and the page starts with the example."
        }
    }
}

/// Said after a link was opened over another plan.
pub const LINK_OPENED: &str =
    "This is the plan of the link. Yours is kept: Undo brings it back, and so does Wish & share, Kept plans.";
/// Back to one's own.
pub const KEEP_MINE: &str = "Keep mine";
/// The plan of the link it is.
pub const OPEN_THEIRS: &str = "Open theirs";
/// One's own is open, the other on the list.
pub const KEEP_BOTH: &str = "Keep both";
/// Said when it is.
pub const BOTH_KEPT: &str = "Both are kept: yours is open, the other is under Wish & share, Kept plans.";
/// Said when a kept plan was opened.
pub const KEPT_OPENED: &str =
    "Opened. The plan that was open is kept in its turn: Undo brings it back, and so does this list.";
/// Said when another plan was opened and the one before it could not be kept.
pub const OPENED_UNKEPT: &str = "Opened, but the plan that was open could not be kept: the list is full, or this browser refuses. Undo brings it back.";
/// Said when no more plans can be kept.
pub const KEPT_FULL: &str = "60 plans are kept, and no more fit. Remove one, or save this one as a file.";
/// Said when storage refuses.
pub const NOT_REMEMBERED: &str =
    "This browser will not remember it. The plan is all in the address: keep the link.";
/// Said when a newer build waits.
pub const NEWER: &str = "A new version is ready. It opens by itself the next time; your plan stays as it is.";
/// Opens it.
pub const USE_NEWER: &str = "Open it now";
/// Said after copying.
pub const COPIED: &str = "Link copied. Whoever opens it sees this plan and these numbers.";
/// Said when copying failed.
pub const NOT_COPIED: &str = "The browser did not let the link be copied. Copy it from the address bar.";

/// What could not become a product when a whole region was given to it.
pub fn skipped(refusals: &[Refusal], product: Product) -> String {
    let stayed: Vec<&str> = refusals
        .iter()
        .filter_map(|refusal| {
            if let Refusal::Impossible { muscle, .. } = refusal { Some(names::muscle(*muscle)) } else { None }
        })
        .collect();
    format!(
        "Stayed as planned, because it cannot be {}: {}.",
        product_in_sentence(product),
        stayed.join(", ")
    )
}

/// A product inside a sentence.
pub fn product_in_sentence(product: Product) -> &'static str {
    match product {
        Product::Roast => "a roast",
        Product::Steak => "steaks",
        Product::Chop => "chops",
        Product::Stew => "stew",
        Product::Grind => "grind",
    }
}

/// Something worth saying of a part.
pub fn advice(advice: &Advice, units: Units) -> String {
    match advice {
        Advice::Care(why) => format!("Take care: {}.", reason(*why)),
        Advice::Discouraged(why) => format!("Not the best use: {}.", reason(*why)),
        Advice::NothingFits => {
            "No piece of that size fits: all of it goes to the tub. Make it thinner.".into()
        }
        Advice::SmallRoast(each) => format!(
            "A roast of {} dries out easily: under 1 lb (450 g), steaks or stew are safer. Our judgement.",
            numbers::mass(*each, units)
        ),
        Advice::SmallFace(face) => format!(
            "Small steaks: a face of about {} cm². Stew or a roast may suit better. Our judgement.",
            face.to_square_cm().round() as i64
        ),
        Advice::ThinMuscle(thick) => format!(
            "Only about {} thick on this animal: strips, stew or grind suit better. Our judgement.",
            numbers::length(*thick, units)
        ),
    }
}

/// A cut with its size: "Steak, 1 in".
pub fn cut(cut: Cut, units: Units) -> String {
    match cut {
        Cut::Roast(RoastSize::Whole) => "Roast, whole".into(),
        Cut::Roast(RoastSize::Weight(weight)) => format!("Roast, about {}", numbers::mass(weight, units)),
        Cut::Roast(RoastSize::Length(length)) => format!("Roast, {} long", numbers::length(length, units)),
        Cut::Steak(thick) => format!("Steak, {}", numbers::length(thick, units)),
        Cut::Chop(thick) => format!("Chop, {}", numbers::length(thick, units)),
        Cut::Stew(edge) => format!("Stew, {} cubes", numbers::length(edge, units)),
        Cut::Grind => "Grind".into(),
        Cut::Discard => names::DISCARD.into(),
    }
}

/// What the parts of a muscle of one side become, in order: "Roast, whole + Grind".
pub fn cuts(division: &Division, joiner: &str, units: Units) -> String {
    division.parts().iter().map(|part| cut(part.cut, units)).collect::<Vec<_>>().join(joiner)
}

/// What a muscle becomes, said for each side where left and right differ.
pub fn muscle_cuts(plan: &Plan, muscle: Muscle, joiner: &str, units: Units) -> String {
    let cuts = |side: Side| cuts(plan.division(muscle, side), joiner, units);
    if plan.is_even(muscle) {
        cuts(Side::Left)
    } else {
        Side::ALL.map(|side| format!("{}: {}", names::side(side), cuts(side))).join("; ")
    }
}

/// "about 43": the middle of a count, said as an estimate where it has a range.
pub fn about(count: Estimate<u32>) -> String {
    if count.low() == count.high() { count.likely().to_string() } else { format!("about {}", count.likely()) }
}

/// "1 package", "3 packages".
pub fn packages(count: u32) -> &'static str {
    if count == 1 { "package" } else { "packages" }
}

/// What one cut of a muscle gives: "about 40 steaks of about 2 oz: 3 packages of 14, the last with 12".
pub fn pack_row(row: &PackRow, units: Units) -> String {
    let Some(product) = row.cut.product() else { return String::new() };
    let pieces = row.pieces;
    if pieces.likely() == 0 {
        return format!("no {}", names::pieces(product, 0));
    }
    let each = row.mass.likely() / f64::from(pieces.likely());
    let counted = match numbers::count_ends(pieces) {
        Some(ends) => format!("about {} ({ends})", pieces.likely()),
        None => pieces.likely().to_string(),
    };
    let in_packs = match numbers::count_ends(row.packs) {
        Some(ends) => format!("{} ({ends})", row.packs.likely()),
        None => row.packs.likely().to_string(),
    };
    let short = match row.short {
        Some(short) if row.packs.likely() > 1 => format!(", the last with {short}"),
        Some(_) | None => String::new(),
    };
    let of = match row.a_pack.min(pieces.likely()) {
        1 => String::new(),
        a_pack => format!(" of {a_pack}"),
    };
    format!(
        "{counted} {} of about {}: {in_packs} {}{of}{short}",
        names::pieces(product, pieces.likely()),
        numbers::mass(each, units),
        packages(row.packs.likely()),
    )
}

/// What a muscle gives, in one line for the list: "3 packages" or "to the tub".
pub fn muscle_result(muscle: &MuscleForecast, taken: bool) -> String {
    if !taken {
        return "not taken".into();
    }
    let mut parts = muscle.sides[0].iter().filter(|part| !part.spoiled);
    if let (Some(part), None) = (parts.next(), parts.next())
        && muscle.packs.is_empty()
    {
        return match part.cut {
            Cut::Stew(_) => "to the stew".into(),
            Cut::Discard => "thrown away".into(),
            Cut::Grind | Cut::Roast(_) | Cut::Steak(_) | Cut::Chop(_) => "to the tub".into(),
        };
    }
    let packs: u32 = muscle.packs.iter().map(|row| row.packs.likely()).sum();
    if packs == 0 { "to the tub".into() } else { format!("{packs} {}", packages(packs)) }
}

/// The animal in one line: "White-tailed deer, doe, adult · 100 lb field-dressed".
pub fn animal_line(plan: &Plan, units: Units) -> String {
    let animal = plan.animal();
    let size = match animal.weighed() {
        Weighed::Typical => names::stage_short(Stage::Typical).to_owned(),
        Weighed::Girth(girth) => format!(
            "{} {} {}",
            numbers::girth_field(girth, units),
            numbers::girth_unit(units),
            names::stage_short(Stage::Girth)
        ),
        Weighed::Live(mass)
        | Weighed::FieldDressed(mass, _)
        | Weighed::Hanging(mass)
        | Weighed::Deboned(mass) => format!(
            "{} {} {}",
            numbers::weight_field(mass, units),
            numbers::weight_unit(units),
            names::stage_short(animal.weighed().stage())
        ),
    };
    format!(
        "{}, {}, {} · {size}",
        names::species(animal.species()),
        names::sex(animal.sex(), animal.species()).to_ascii_lowercase(),
        names::age(animal.age()).to_ascii_lowercase()
    )
}

/// The whole tally in one sentence, for the live region and the bar.
pub fn tally(forecast: &Forecast, units: Units) -> String {
    let packs = forecast.packs;
    let ends = numbers::count_ends(packs).map(|ends| format!(" ({ends})")).unwrap_or_default();
    let take_home = numbers::mass_range(forecast.take_home, units);
    format!("{} {}{ends}; {take_home} to take home", about(packs), packages(packs.likely()))
}

/// How good a figure is.
pub fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::A => "A: measured, many animals",
        Grade::B => "B: measured, few animals, or relayed",
        Grade::C => "C: one weak source, or derived",
        Grade::D => "D: memory, analogy or judgement",
    }
}

/// What kind of source.
pub fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Measured => "Study",
        Kind::Agency => "Agency or extension text",
        Kind::Relayed => "Study, as relayed by another text",
        Kind::Weak => "Weak page",
        Kind::CommonPractice => "Common practice",
        Kind::Judgement => "Judgement",
    }
}

/// What a package of loose meat is.
pub fn loose_pack(pack: &str, last: Option<&str>) -> String {
    match last {
        Some(last) => format!("{pack} each, {last} in the last"),
        None => format!("{pack} each"),
    }
}

/// What a package of whole cuts weighs on average.
pub fn whole_pack(mass: &str) -> String {
    format!("about {mass} each")
}

/// The title of the working of all packages.
pub const ALL_PACKAGES: &str = "Packages";
/// Names of inputs.
pub const SHARES: &str = "Each muscle's share of the meat";
/// Field-dressed over live.
pub const DRESSED_OF_LIVE: &str = "Field-dressed, of live";
/// Hanging over dressed.
pub const HANGING_OF_DRESSED: &str = "Hanging, of field-dressed";
/// Lean over hanging.
pub const LEAN_OF_HANGING: &str = "Careful boneless, of hanging";
/// Bone in the rest.
pub const BONE_OF_REST: &str = "Bone, of what is not lean";
/// Shot loss.
pub const LOST_TO_SHOT: &str = "Lost to the shot, of lean";
/// Left behind.
pub const LEFT_ON_BONES: &str = "Left on the bones, of what the shot left";
/// Dried.
pub const DRIED: &str = "Dried while it hung, of the rest";
/// The girth regression.
pub const GIRTH_TABLE: &str = "Weight from chest girth";
/// A typical weight.
pub const TYPICAL_WEIGHT: &str = "Typical weight of its kind";
/// A packing rule the reader chose.
pub const PACK_RULE: &str = "A package";
/// Packed for the table.
pub const FOR_THE_TABLE: &str = "enough for the table";
/// How legs off are read.
pub const LEGS_WORKING: &str =
    "It was weighed with the lower legs off: divided by 0.96 first (judgement, no figure was found).";
/// How marked wounds are reckoned.
pub const WOUNDS_WORKING: &str = "You marked wounds on the plate: each takes the part of every muscle that lies within it on its side, as the plate draws it, and the average loss of a shot is left out. How a muscle's weight lies over its area is judgement.";
/// How ranges are made.
pub const RANGE_WORKING: &str = "The range holds the middle 8 of 10 of a thousand fixed scenarios, each with its own yields, muscle shares and sizes. The single figure is the middle case.";

/// How a line of the ledger is worked out.
pub fn line_working(line: hindsaddle_model::forecast::Line) -> &'static str {
    use hindsaddle_model::forecast::Line;
    match line {
        Line::Live => "What was weighed, taken back to the whole animal. The lines below add up to it.",
        Line::Viscera => "Live weight less field-dressed weight.",
        Line::HeadHideFeet => "Field-dressed weight less hanging weight.",
        Line::Bone => {
            "Hanging weight less careful boneless meat is bone, fat and membrane, and drying; this is the bone, with the scraps that stay on it."
        }
        Line::Trim => "What is neither lean, bone nor drying: fat, membrane, silverskin, tendon.",
        Line::Drying => "Water lost while it is cut, and while it hung.",
        Line::Wound => {
            "Meat around the bullet path or the arrow, and what the gut touched. It is thrown away, never ground."
        }
        Line::LeftBehind => "Meat that stays on the bones of a normal cutter.",
        Line::NotRecovered => "Muscle groups you do not take. Their meat lands nowhere else.",
        Line::Discarded => "Parts you chose to throw away.",
        Line::TakeHome => {
            "Live weight × field-dressed share × hanging share × careful boneless share, less the shot, the bones and drying, less what is not taken or thrown away."
        }
    }
}

/// How packages are counted.
pub fn packages_working() -> Vec<String> {
    [
        "Each muscle gets its share of the meat and its length on this animal, scaled from a reference deer by the cube root of hanging weight.",
        "It is cut along its length as you chose. Steaks and chops come from the even stretch; tapered ends, offcuts and trim go to the tub.",
        "Whole cuts are packed by muscle, both sides together. Stew and ground meat are pooled. A short last package counts as one.",
        RANGE_WORKING,
    ]
    .map(str::to_owned)
    .to_vec()
}

/// How packages of a product are counted.
pub fn product_working(product: Product) -> &'static str {
    match product {
        Product::Roast => {
            "Each part is divided into roasts of the length or weight you chose; 2 % is trimmed to the tub (judgement)."
        }
        Product::Steak | Product::Chop => {
            "Usable length over thickness and 1 mm for the unevenness of a hand cut; both tapered ends and 3 % trim go to the tub (judgement)."
        }
        Product::Stew => {
            "All stew parts together, less 2 % trim; a remainder under a tenth of a package is shared out."
        }
        Product::Grind => {
            "All grind parts, and every end, offcut and trim of the other cuts; a remainder under a tenth of a package is shared out."
        }
    }
}

/// "± 45 %".
pub fn plus_minus(fraction: f64) -> String {
    format!("± {}", numbers::percent(fraction))
}

/// "72 % to 80 %".
pub fn span(low: &str, high: &str) -> String {
    format!("{low} to {high}")
}

/// Kind and citation of a source.
pub fn source(kind: &str, citation: &str) -> String {
    if citation.starts_with(kind) { citation.into() } else { format!("{kind}: {citation}") }
}

/// "Backstrap: about 40 steaks".
pub fn named(name: &str, what: &str) -> String {
    format!("{name}: {what}")
}

/// "Raw meat for each of 4 people".
pub fn portion_of(people: u8) -> String {
    if people == 1 {
        "Raw meat for one person".into()
    } else {
        format!("Raw meat for each of {people} people")
    }
}

/// "Packages of steak".
pub fn product_packages(product: Product) -> String {
    format!("Packages: {}", names::product(product).to_ascii_lowercase())
}

/// "10, 9 to 12; 12 lb, 9 to 13 lb".
pub fn product_answer(tally: &hindsaddle_model::forecast::Tally, units: Units) -> String {
    let ends = numbers::count_ends(tally.packs).map(|ends| format!(" ({ends})")).unwrap_or_default();
    let packs = tally.packs.likely();
    format!("{packs} {}{ends}, {}", packages(packs), numbers::mass_range(tally.mass, units))
}

/// "2 pieces each".
pub fn pieces_a_pack(pieces: u8) -> String {
    if pieces == 1 { "1 piece each".into() } else { format!("{pieces} pieces each") }
}

/// "1 lb each".
pub fn weight_a_pack(weight: &str) -> String {
    format!("{weight} each")
}

/// The plate in one sentence, for those who do not see it.
pub fn plate_summary(packs: Estimate<u32>) -> String {
    format!(
        "Plate of the animal's muscles. The fill of each muscle is its cut; {} packages in all.",
        about(packs)
    )
}

/// A muscle on the plate: "Backstrap, left: Steak, 1 in; 3 packages".
pub fn area(
    muscle: Muscle,
    side: Option<Side>,
    cuts: &str,
    result: &str,
    spoiled: bool,
    every_cut: bool,
) -> String {
    let side = side.map(|side| format!(", {}", names::side(side).to_ascii_lowercase())).unwrap_or_default();
    let spoiled = if spoiled { "; part of it spoiled by a wound" } else { "" };
    let drawn = if every_cut { "" } else { "; not every cut drawn" };
    format!("{}{side}: {cuts}; {result}{spoiled}{drawn}", names::muscle(muscle))
}

/// What sex, age or season adds to a fraction.
pub fn adjusted(name: &str) -> String {
    format!("{name}: added for sex, age or season")
}

/// "+ 1 %" or "- 2 %" of a fraction.
pub fn added(fraction: f64) -> String {
    let sign = if fraction < 0.0 { '\u{2212}' } else { '+' };
    format!("{sign}\u{a0}{}", numbers::percent(fraction.abs()))
}
