//! Words of the third page and of what all pages share: their names, and those of the animals.

use hindsaddle_model::plan::{Plan, Tested};

use super::names;

/// The name of a page: the plan, thinking ahead, the kitchen.
pub const fn page(place: usize) -> &'static str {
    ["Hindsaddle", "Think ahead", "Table and freezer"][place]
}

/// The way to it.
pub const fn way(place: usize) -> &'static str {
    ["Plan", "Ahead", "Table"][place]
}

/// The parts of a page.
pub const PARTS_OF_PAGE: &str = "Parts of the page";
/// The animals.
pub const ANIMALS: &str = "Animals";
/// All animals.
pub const SEASON: &str = "Season";
/// Two plans.
pub const COMPARE: &str = "Compare";
/// There is only one.
pub const ONE_ANIMAL: &str = "There is one animal so far. Another begins with the same kind and the same cuts; packages, supplies, freezer and labels then add up, and each animal keeps its own tag, dates and test.";
/// There are several.
pub const SEASON_HINT: &str = "Tap an animal to show it on every page. Meat of each stays apart: its own tag, dates and test go on its labels.";
/// Another.
pub const ADD_ANIMAL: &str = "Add an animal cut the same way";
/// No more.
pub fn season_full(most: usize) -> String {
    format!("A season holds {most} animals. Start another plan for more.")
}
/// To the plan's page.
pub const PLAN_IT: &str = "Plan it \u{203a}";
/// Up the list.
pub const EARLIER: &str = "Earlier";
/// Down the list.
pub const LATER: &str = "Later";
/// What is done, and to which animal.
pub fn of_animal(what: &str, name: &str) -> String {
    format!("{what}: {name}")
}
/// The cuts of another animal for this one.
pub fn cuts_of(name: &str) -> String {
    format!("Cut it as {name}")
}
/// All animals.
pub const TOGETHER: &str = "All together";
/// How they are added.
pub const TOGETHER_HINT: &str = "Likely figures add up. Lows and highs are added as if all animals turned out low or high together, so the true range is a little narrower.";

/// "2 Doe", or the title.
pub fn animal_name(plan: &Plan, place: usize) -> String {
    let name = if plan.title().is_empty() {
        names::sex(plan.animal().sex(), plan.animal().species())
    } else {
        plan.title()
    };
    format!("{} {name}", place + 1)
}

/// Over what is of all animals.
pub fn for_all(animals: usize) -> String {
    match animals {
        1 => "For the one animal of the season that may be eaten.".into(),
        _ => format!("For all {animals} animals of the season that may be eaten."),
    }
}

/// The test for a disease.
pub const TEST: &str = "Disease test (CWD)";

/// What it says.
pub const fn tested(tested: Tested) -> &'static str {
    match tested {
        Tested::NotAsked => "Nothing said",
        Tested::Awaited => "Result awaited",
        Tested::Clear => "Not detected",
        Tested::DoNotEat => "Do not eat",
    }
}

/// What follows.
pub const fn tested_caution(tested: Tested) -> Option<&'static str> {
    match tested {
        Tested::NotAsked | Tested::Clear => None,
        Tested::Awaited => Some(
            "Freeze it apart and eat none of it until the result is there. Its labels say so. A test is not a food safety test: ask your wildlife agency.",
        ),
        Tested::DoNotEat => Some(
            "Do not eat or give away any of it. It is not counted with the rest. Ask your wildlife agency how to dispose of it.",
        ),
    }
}

/// On the label of its packages.
pub const fn tested_label(tested: Tested) -> &'static str {
    match tested {
        Tested::NotAsked | Tested::Clear => "",
        Tested::Awaited => "HOLD: test result awaited",
        Tested::DoNotEat => "DO NOT EAT",
    }
}

/// Packages and what they weigh.
pub fn packs_and_mass(packs: &str, mass: &str) -> String {
    format!("{packs} \u{b7} {mass}")
}

/// How much tender meat is cooked tender.
pub const TENDER_USE: &str = "Tender meat kept whole";

/// A part of it, if there is any.
pub fn part_of_tender(part: Option<f64>) -> String {
    part.map_or_else(|| "none there".into(), |part| format!("{} %", (part * 100.0).round() as u32))
}

/// What the knife has to do.
pub const KNIFE_WORK: &str = "Knife work";

/// Roasts, steaks and chops.
pub fn knife_pieces(count: u32) -> String {
    format!("{count} pieces")
}

/// Cubes of stew.
pub fn knife_cubes(count: u32) -> String {
    format!("{count} cubes")
}

/// What is compared.
pub const FIRST_PLAN: &str = "One plan";
/// With what.
pub const OTHER_PLAN: &str = "Another plan";
/// A plan that came by link.
pub const PASTED: &str = "From a link";
/// Where it is pasted.
pub const PASTE_LINK: &str = "Paste a link here to compare with it";
/// Nothing to compare with.
pub const COMPARE_HINT: &str = "Add an animal cut the same way and change it, or paste the link of another plan: what each comes to stands side by side.";
/// What the lines mean.
pub const COMPARE_NOTE: &str = "Tender meat is that of muscles of tenderness 4 and 5 of 5 (judgement); what of it becomes roasts, steaks or chops counts as kept whole. Knife work is of the middle case.";
