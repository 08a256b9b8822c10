//! Words of the third page and of what all pages share: their names, and those of the animals.

use hindsaddle_model::plan::{Plan, Tested};
use hindsaddle_model::season::Season;

use super::names;
use super::numbers::Units;
use super::sentences::animal_line;

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

// Sharing.

/// The part.
pub const SHARE: &str = "Share";
/// Over the list of what goes along.
pub const WHAT_TRAVELS: &str = "What goes along";
/// Names go along only if this is ticked.
pub const NAMES_TRAVEL: &str = "Titles, names and tags, too";
/// The device's own way.
pub const SHARE_BY: &str = "Share\u{2026}";
/// Everything in one file.
pub const ONE_FILE: &str = "The whole planner as one file";
/// What for.
pub const ONE_FILE_HINT: &str =
    "opens from a memory card or a message, without any network. Fetch it while there is one.";
/// From screen to screen.
pub const CODE: &str = "From screen to screen";
/// How.
pub const CODE_HINT: &str = "Hold the other phone's camera over the code; no network is needed to read it, and none to open it where this page was opened before. Turn the brightness up, and out of the sun.";
/// What it is, for who cannot see it.
pub const CODE_ALT: &str = "The link of the plan as a code to photograph";
/// As large as it gets.
pub const FULL_SCREEN: &str = "Fill the screen";
/// Too long.
pub const NO_CODE: &str = "This plan is too long for a code. Send the link or the file.";

/// One line of what travels: an animal.
pub fn travels(plan: &Plan, named: bool, units: Units) -> String {
    let title = if named && !plan.title().is_empty() {
        format!(" (\u{201c}{}\u{201d})", plan.title())
    } else {
        String::new()
    };
    format!("{}{title}, its cuts, packing and dates", animal_line(plan, units))
}

/// What never travels.
pub const STAYS: &str = "Not: done marks, kept plans, what you have at home, label settings";
/// The partners.
pub fn partners_travel(count: usize, named: bool) -> String {
    format!(
        "{count} partners, their shares and claims, {} their names",
        if named { "with" } else { "without" }
    )
}
/// Owners and tags.
pub const NAMES_GO: &str = "Owners and tags";
/// They stay.
pub const NAMES_STAY: &str = "No title, owner, name or tag";

// Kept plans.

/// The part.
pub const KEPT_PLANS: &str = "Kept plans";
/// What they are.
pub const KEPT_HINT: &str = "Plans put aside on this device. When a link or a file takes the place of your plan, yours is put here by itself.";
/// This one, too.
pub const KEEP_THIS: &str = "Keep the plan that is open";
/// What it is called.
pub const KEPT_NAME: &str = "Name";
/// Open it.
pub const OPEN_KEPT: &str = "Open";
/// Gone.
pub const REMOVED: &str = "Removed.";
/// Not gone.
pub const BRING_BACK: &str = "Bring it back";
/// Over what is kept where.
pub const WHAT_IS_WHERE: &str = "What is kept where";
/// What is kept where.
pub const WHERE_THINGS_ARE: [&str; 4] = [
    "The plan: in the address and in this browser, after every change.",
    "Steps back: in this window, until it is closed.",
    "Done marks, kept plans, label settings and what you have at home: in this browser only.",
    "Nothing is sent anywhere. Browsers may clear what a page keeps when it is not opened for some days: a link or a file outlives that.",
];
/// Asks the browser.
pub const ASK_TO_KEEP: &str = "Ask the browser not to clear it";
/// It agrees.
pub const WILL_KEEP: &str = "The browser will not clear it by itself.";
/// It does not.
pub const WILL_NOT_KEEP: &str = "The browser did not promise that. A link or a file is safe.";

/// A season in a line.
pub fn season_line(season: &Season, units: Units) -> String {
    let plan = season.animal(0);
    let title = if plan.title().is_empty() { String::new() } else { format!("{}: ", plan.title()) };
    let more = match season.animals().len() {
        1 => String::new(),
        count => format!(", and {} more", count - 1),
    };
    format!("{title}{}{more}", animal_line(plan, units))
}
