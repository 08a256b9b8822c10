//! Words of the third page and of what all pages share: their names, and those of the animals.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::deal::{Deal, Worst};
use hindsaddle_model::packages::Package;
use hindsaddle_model::partners::{Claim, Partners, PartnersError};
use hindsaddle_model::plan::{Plan, Tested};
use hindsaddle_model::planner::assignment::{Found, SHORT};
use hindsaddle_model::planner::{Lack, Proposed, Unmet, Why};
use hindsaddle_model::product::Product;
use hindsaddle_model::season::Season;
use hindsaddle_model::units::Mass;
use hindsaddle_model::wishes::{Demand, WishError};

use super::names;
use super::sentences::animal_line;
use crate::text::numbers::{self, Units};

/// The name of a page: the plan, thinking ahead, the kitchen, learning.
pub const fn page(place: usize) -> &'static str {
    ["Hindsaddle", "Wishes and sharing", "From table to freezer", "Learn"][place]
}

/// The way to it.
pub const fn way(place: usize) -> &'static str {
    ["Plan", "Wish & share", "Cut & pack", "Learn"][place]
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
/// Who opens the link.
pub const FOR_WHOM: &str = "For whom";
/// Who that may be.
pub const WHOM: [&str; 2] = ["Who works from it", "Who plans on"];
/// What each of them sees.
pub const WHOM_HINTS: [&str; 2] = [
    "Opens to read, the work order first. Their own plan stays as it is.",
    "Opens the plan itself, to be changed. Their own plan is kept.",
];
/// In the one file.
pub const NO_ADDRESS: &str = "This page was opened from a file, so it has no address that another device could open. Save the plan as a file and hand it on with this one: the other opens it under Cut & pack, Files.";
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
/// Another like it.
pub const COPY_KEPT: &str = "Duplicate";
/// What the other is called.
pub fn copy_of(name: &str) -> String {
    if name.is_empty() { "Copy".into() } else { format!("{name}, copy") }
}

// This device.

/// The part.
pub const DEVICE: &str = "This device";
/// What may be kept.
pub const HELD: [&str; 8] = [
    "The plan",
    "Kept plans",
    "Done marks at the table",
    "Label settings",
    "What you have at home",
    "Your own figures",
    "Practice",
    "A plan that could not be read",
];
/// How much of it.
pub fn characters(count: usize) -> String {
    if count == 0 { "nothing".into() } else { format!("{count} characters") }
}
/// Over being installed.
pub const INSTALL_HEAD: &str = "Among the apps";
/// It is.
pub const IS_INSTALLED: &str =
    "It is installed on this device, and opens without a browser and without a network.";
/// What that does.
pub const INSTALL_HINT: &str = "It then has an icon of its own, and opens without a network.";
/// Asks the browser for it.
pub const INSTALL: &str = "Install";
/// Where the browser has no offer.
pub const INSTALL_BY_HAND: &str = "This browser does not offer it from here. Look in its own menu for “Install” or “Add to Home Screen”. Without that, too, the page opens without a network after one visit.";
/// Over forgetting.
pub const FORGET_HEAD: &str = "Forget everything";
/// Before it; the name of a page follows.
pub const FORGET_HINT: &str = "For a device that is not yours. What you shared stays with whom you gave it; a plan you want to keep is saved as a file under";
/// The first press.
pub const FORGET_ASK: &str = "Forget everything on this device";
/// What it means.
pub const FORGET_SURE: &str = "The plan, the kept plans, done marks, your own figures and every setting are gone from this device for good. Undo cannot bring them back.";
/// The second press.
pub const FORGET_ALL: &str = "Yes, forget it all";
/// The other.
pub const FORGET_NOT: &str = "No, keep it";
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

// Wishes.

/// The part.
pub const WISHES: &str = "Wishes";
/// What a dinner is.
pub fn dinner(people: u8, mass: &str) -> String {
    let table = if people == 1 { "one person".to_owned() } else { format!("{people} people") };
    format!(
        "Say what you want to eat, and the planner finds the cuts. A dinner is {mass} of meat: a meal for {table}, as under Packages on the plan\u{2019}s page."
    )
}
/// Nothing is wished.
pub const NO_WISHES: &str = "Nothing is wished yet.";
/// An invented example.
pub const EXAMPLE_WISHES: &str =
    "Try an invented example: 8 roast dinners, 20 of ground meat, the tenderloin whole";
/// How much of a product is wished.
pub const WISH_KINDS: [&str; 4] = ["The rest", "Dinners", "Share of the meat", "None"];
/// The number of a wish.
pub fn product_wish(product: Product, kind: &str) -> String {
    format!("{}: {}", super::product(product), kind.to_ascii_lowercase())
}
/// What muscles must and must not become.
pub const DEMANDS: &str = "Must and never";
/// Nothing chosen.
pub const NEW_DEMAND: &str = "Choose a muscle";
/// Nothing chosen.
pub const WHICH_DEMAND: &str = "Choose";
/// The muscle.
pub const DEMAND_MUSCLE: &str = "Muscle";
/// What it must be.
pub const DEMAND_WHAT: &str = "What about it";
/// The most pieces.
pub const MOST_PIECES: &str = "At most so many roasts, steaks and chops (empty: no limit)";
/// Find it.
pub const PLAN_WISHES: &str = "Find the best plan";
/// It is being found.
pub fn planning(nodes: u64) -> String {
    format!("Looking: {nodes} ways so far\u{2026}")
}
/// Impossible.
pub fn too_much_work(least: u32) -> String {
    format!("What must be takes at least {least} pieces. Allow more, or take a \u{201c}must\u{201d} away.")
}
/// A demand.
pub fn demand(demand: Demand) -> String {
    let product = |product: Product| super::product(product).to_ascii_lowercase();
    match demand {
        Demand::Keep => "stays as it is".into(),
        Demand::Whole => "one whole roast".into(),
        Demand::Must(of) => format!("must be {}", product(of)),
        Demand::Never(of) => format!("never {}", product(of)),
    }
}
/// A demand on a muscle.
pub fn demand_on(muscle: Muscle, of: Demand) -> String {
    format!("{}: {}", super::muscle(muscle), demand(of))
}
/// The answer.
pub const PROPOSAL: &str = "The best plan for it";
/// Before.
pub const AS_IT_IS: &str = "As it is";
/// After.
pub const AS_WISHED: &str = "As wished";
/// Everything wished is there.
pub const ALL_MET: &str = "Every wish is met, in the likely case.";
/// Take it.
pub const USE_PROPOSAL: &str = "Use this plan";
/// Do not.
pub const LEAVE_PROPOSAL: &str = "Leave it";
/// Over the reasons.
pub const WHY_SO: &str = "Why each muscle";

/// What could not be met, by how much and why.
pub fn unmet(unmet: &Unmet, units: Units) -> String {
    let tenths = (unmet.dinners * 10.0).round().max(1.0) as u32;
    let number = if tenths.is_multiple_of(10) {
        (tenths / 10).to_string()
    } else {
        format!("{}.{}", tenths / 10, tenths % 10)
    };
    let dinners = if tenths == 10 { "dinner" } else { "dinners" };
    let why = match unmet.lack {
        Lack::NothingLeft => "no muscle is left that can become it.",
        Lack::KnifeWork => "more of it is more knife work than you allow.",
        Lack::OtherWishes => "the other wishes have what is left.",
    };
    format!(
        "{number} {} {dinners} short ({}): {why}",
        super::product(unmet.product).to_ascii_lowercase(),
        numbers::mass(unmet.missing, units)
    )
}

/// Proven, or how far from best it may be.
pub fn how_sure(found: &Found, units: Units) -> String {
    if found.is_proven {
        return format!("Proven: no way to cut it meets this better. {} ways were looked into.", found.nodes);
    }
    let worth = Mass::grams((found.cost - found.bound) as f64 / SHORT as f64);
    format!(
        "Stopped after {} ways. A better plan may exist, by the worth of {} of a missing wish at most.",
        found.nodes,
        numbers::mass(worth, units)
    )
}

/// A muscle, what it is to become, and why.
pub fn proposed(row: &Proposed) -> String {
    let product = |of: Product| super::product(of).to_ascii_lowercase();
    let becomes = match row.sides {
        None => "stays".to_owned(),
        Some([left, right]) if left == right => product(left),
        Some([left, right]) => format!("{} left, {} right", product(left), product(right)),
    };
    let why = match row.why {
        Why::Kept => "it was to stay as it is".to_owned(),
        Why::Demanded(of) => format!("because of \u{201c}{}\u{201d}", demand(of)),
        Why::BestUse => "its best use".to_owned(),
        Why::Wished(of) => format!("the wish for {} needs it", product(of)),
        Why::Enough(usual) => format!("usually {}, and of that there is enough", product(usual)),
        Why::Otherwise => "fits the wishes with less loss than its usual use".to_owned(),
    };
    format!("{}: {becomes} \u{2013} {why}", super::muscle(row.muscle))
}

/// Why wishes cannot be.
pub fn wish_error(error: &WishError) -> String {
    let product = |of: Product| super::product(of).to_ascii_lowercase();
    match error {
        WishError::TooManyDinners { most } => format!("At most {most} dinners of one kind can be planned."),
        WishError::SharesOverAll { total } => {
            format!("The shares add up to {total} % of the meat. Make them 100 % or less.")
        }
        WishError::KnifeWorkOutOfRange { most } => format!("A limit of knife work is {most} pieces at most."),
        WishError::TooManyDemands { most } => {
            format!("{most} is the most of \u{201c}must\u{201d} and \u{201c}never\u{201d}. Remove one first.")
        }
        WishError::Contradiction { muscle, one, other } => format!(
            "{}: \u{201c}{}\u{201d} and \u{201c}{}\u{201d} cannot both be. Remove one of them first.",
            super::muscle(*muscle),
            demand(*one),
            demand(*other)
        ),
        WishError::NoneOfIt { muscle, demand: of, product: none } => format!(
            "{}: \u{201c}{}\u{201d}, but no {} is wished. Wish for some, or take that away.",
            super::muscle(*muscle),
            demand(*of),
            product(*none)
        ),
        WishError::Impossible { muscle, product: of, .. } => {
            format!("{} cannot become {}.", super::muscle(*muscle), product(*of))
        }
        WishError::NothingLeft { muscle } => {
            format!(
                "{}: nothing is left that it may become. Take a \u{201c}never\u{201d} away.",
                super::muscle(*muscle)
            )
        }
    }
}

// Partners.

/// The part.
pub const PARTNERS: &str = "Partners";
/// Nobody shares.
pub const NOBODY_SHARES: &str = "Nobody shares yet. Whole packages are dealt so that weight and every kind come out as even as they can; whose each is stands on the labels.";
/// Two of them.
pub const SHARE_BY_TWO: &str = "Share it between two";
/// An invented example.
pub const EXAMPLE_PARTNERS: &str =
    "Try an invented example: Ann 2 parts, Bo 1, the tenderloin is Ann\u{2019}s";
/// One more.
pub const ADD_PARTNER: &str = "Add a partner";
/// All the same.
pub const EQUAL_SHARES: &str = "Equal shares";
/// Of the name.
pub const PARTNER_NAME: &str = "Name or initials";
/// Of the share.
pub const PARTNER_PARTS: &str = "Parts";
/// Nobody any more.
pub const NOBODY: &str = "Nobody shares";
/// What they asked for.
pub const CLAIMS: &str = "Claims";
/// Who gets what.
pub const DEAL: &str = "Who gets what";
/// Columns.
pub const DEAL_HEAD: [&str; 4] = ["Who", "Packages", "Gets", "Due"];
/// To copy.
pub const COPY_SUMMARY: &str = "Copy the list";

/// A partner by name, or by letter.
pub fn partner(partners: &Partners, place: u8) -> String {
    match partners.all().get(usize::from(place)) {
        Some(partner) if !partner.name.is_empty() => partner.name.clone(),
        Some(_) | None => format!("Partner {}", char::from(b'A' + place)),
    }
}
/// A partner by letter.
pub fn nth_partner(place: usize) -> String {
    format!("Partner {}", char::from(b'A' + place as u8))
}
/// So many packages.
pub fn packages_count(count: u32) -> String {
    format!("{count} {}", super::packages(count))
}
/// Whose a muscle is.
pub fn claimed_by(partners: &Partners, place: u8) -> String {
    format!("For {}", partner(partners, place))
}
/// A claim.
pub fn claim(partners: &Partners, claim: Claim) -> String {
    format!("{}: {}", super::muscle(claim.muscle), partner(partners, claim.partner))
}
/// How the parts are read.
pub fn shares(partners: &Partners) -> String {
    let percents: Vec<String> =
        partners.shares().iter().map(|share| format!("{} %", share.to_percent().round() as u32)).collect();
    let read = percents.join(", ");
    if partners.are_percents() {
        format!("Shares: {read}.")
    } else {
        format!("The parts add up to {}; read as {read}.", partners.total_parts())
    }
}
/// The worst-off.
pub fn worst(partners: &Partners, worst: &Worst, units: Units) -> String {
    let grams = worst.difference.to_grams();
    let mass = numbers::mass(Mass::grams(grams.abs()), units);
    let of = worst.product.map_or("all".to_owned(), |product| super::product(product).to_ascii_lowercase());
    let than = if grams < 0.0 { "less" } else { "more" };
    format!(
        "Farthest from a share: {} gets {mass} {than} of {of} than is due.",
        partner(partners, worst.partner)
    )
}
/// Proven, or not.
pub fn deal_proof(deal: &Deal, units: Units) -> String {
    if deal.is_best() {
        "Proven: whole packages cannot be dealt more evenly.".into()
    } else {
        format!("A more even deal may exist, by {} at most.", numbers::mass(deal.worst_gap, units))
    }
}
/// What of a product is got and due.
pub fn lot(product: Product, got: &str, due: &str) -> String {
    format!("{}: {got}, due {due}", super::product(product))
}
/// One partner's list in words, to send.
pub fn summary(name: &str, packages: &[String], link: &str) -> String {
    format!("{name}:\n{}\n{link}\n", packages.join("\n"))
}
/// A package in a list.
pub fn summary_line(package: &Package, animal: Option<&str>, units: Units) -> String {
    let animal = animal.map(|name| format!(" ({name})")).unwrap_or_default();
    format!("{}, {}{animal}", super::package_name(package), numbers::mass(package.mass, units))
}
/// Why partners cannot be.
pub fn partners_error(error: &PartnersError) -> String {
    let nth = |place: u8| format!("Partner {}", char::from(b'A' + place));
    match error {
        PartnersError::HowMany { least, most } => format!("{least} to {most} can share."),
        PartnersError::Name { partner, most } => {
            format!("{}: a name has at most {most} plain characters.", nth(*partner))
        }
        PartnersError::SameName { first, second } => {
            format!("{} and {} have the same name. Tell them apart.", nth(*first), nth(*second))
        }
        PartnersError::Parts { partner, most } => format!("{}: parts are 1 to {most}.", nth(*partner)),
        PartnersError::ClaimedTwice(muscle) => format!("{} is claimed already.", super::muscle(*muscle)),
        PartnersError::ClaimedByNobody(muscle) => {
            format!("{}: whoever claimed it is not there.", super::muscle(*muscle))
        }
    }
}
