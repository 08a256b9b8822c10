//! Words of the scale: weights as they are typed and said, what they change, what is asked, own figures.

use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::changes::Change;
use hindsaddle_model::own::{Animal, ENOUGH, Own};
use hindsaddle_model::product::Product;
use hindsaddle_model::scale::{Doubt, OnScale};
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_model::wrap::Bag;

use super::names;
use crate::text::numbers::{self, Units};

/// What the scale says.
pub const WEIGHED_NOW: &str = "On the scale";
/// What some packages weigh.
pub const THEY_WEIGH: &str = "They weigh, together";
/// How a weight is typed.
pub const WEIGH_HINT: &str = "Cleaned, without what a wound spoiled. Type 1 lb 4 oz, 12.5 oz, 0.8 kg or 570 g; both sides together or one.";
/// What a typed weight could not be read as.
pub const NOT_A_WEIGHT: &str =
    "That is no weight. Type a number with its unit, such as 1 lb 4 oz, 12.5 oz, 0.8 kg or 570 g.";
/// How many packages, which could not be read.
pub const NOT_A_COUNT: &str = "How many is a whole number from 1 to 255. Leave it empty for all there are.";
/// The choice of sides.
pub const WHICH_SIDES: &str = "Which";
/// The choice of a product.
pub const WHICH_PACKAGES: &str = "Packages of";
/// How many of them.
pub const HOW_MANY: &str = "How many (empty: all)";
/// The card.
pub const SCALE: &str = "Scale";
/// What it is for.
pub const SCALE_HINT: &str = "Every weight makes the other estimates narrower, here and in the plan. A scale is taken to be right to 5 g and 1 % (our judgement).";
/// What was weighed.
pub const ALL_WEIGHINGS: &str = "Weights in the plan";
/// Nothing was.
pub const NO_WEIGHINGS: &str = "None yet.";
/// Keeps a questioned weight.
pub const KEEP: &str = "Keep it";
/// Takes a questioned weight back.
pub const TAKE_BACK: &str = "Take it back";
/// When a weight changes nothing worth telling.
pub const CHANGES_LITTLE: &str = "With this weight the packages stay as they are.";

/// Which side or sides: both, left, right.
pub fn sides(sides: Sides) -> &'static str {
    match sides {
        Sides::Both => super::BOTH,
        Sides::One(side) => names::side(side),
    }
}

/// What lay on the scale.
pub fn on_scale(target: OnScale) -> String {
    match target {
        OnScale::Muscle(muscle, side) => {
            format!("{}, {}", names::muscle(muscle), sides(side).to_ascii_lowercase())
        }
        OnScale::Lot => LOT.into(),
        OnScale::Tub => TUB.into(),
        OnScale::Packages(product, count) => match count {
            Some(count) => format!("{} of {}", super::packages_count(count.get().into()), in_packs(product)),
            None => format!("All packages of {}", in_packs(product)),
        },
    }
}

/// All meat.
pub const LOT: &str = "All boneless meat, before it is cut";
/// The tub.
pub const TUB: &str = "The tub, before it is ground";

/// A product in its packages.
pub fn in_packs(product: Product) -> &'static str {
    match product {
        Product::Roast => "roast",
        Product::Steak => "steak",
        Product::Chop => "chops",
        Product::Stew => "stew",
        Product::Grind => "ground",
    }
}

fn counted(count: i32, one: &str, many: &str) -> String {
    let word = if count.abs() == 1 { one } else { many };
    let more = if count < 0 { "fewer" } else { "more" };
    format!("{} {more} {word}", count.abs())
}

fn rolled(length: Length, units: Units, what: &str) -> String {
    let (length, more) =
        if length < Length::ZERO { (Length::ZERO - length, "less") } else { (length, "more") };
    let length = match units {
        Units::Pounds if length > Length::inches(24.0) => {
            format!("{} ft", (length.to_inches() / 12.0).round() as u32)
        }
        Units::Kilograms if length > Length::cm(100.0) => {
            format!("{} m", numbers::one_decimal(length.to_cm() / 100.0))
        }
        Units::Pounds | Units::Kilograms => numbers::rough_length(length, units),
    };
    format!("about {length} {more} {what}")
}

fn change(change: &Change, units: Units) -> String {
    match *change {
        Change::TakeHome(mass) if mass < Mass::ZERO => {
            format!("{} less to take home", numbers::mass(Mass::ZERO - mass, units))
        }
        Change::TakeHome(mass) => format!("{} more to take home", numbers::mass(mass, units)),
        Change::Packs(product, count) => {
            format!("{} of {}", counted(count, "package", "packages"), in_packs(product))
        }
        Change::Paper(length) => rolled(length, units, "freezer paper"),
        Change::Bags(Bag::Quart, count) => counted(count, "quart bag", "quart bags"),
        Change::Bags(Bag::Gallon, count) => counted(count, "gallon bag", "gallon bags"),
        Change::Vacuum(_, length) => rolled(length, units, "vacuum roll"),
    }
}

/// "With this weight: 3 more packages of ground, about 3 ft less freezer paper."
pub fn changed(changes: &[Change], units: Units) -> String {
    if changes.is_empty() {
        return CHANGES_LITTLE.into();
    }
    let all: Vec<String> = changes.iter().map(|one| change(one, units)).collect();
    format!("With this weight: {}.", all.join(", "))
}

/// What is asked about a weight that is hard to believe.
pub fn doubt(target: OnScale, doubt: &Doubt, units: Units) -> String {
    match doubt {
        Doubt::MoreThanAllMeat { meat } => format!(
            "That is more than all the meat expected of this animal, {}. Is the unit right?",
            numbers::mass(*meat, units)
        ),
        Doubt::Far { expected, .. } => {
            let ask = match target {
                OnScale::Muscle(_, Sides::Both) => "Is it the right muscle, and both sides?",
                OnScale::Muscle(_, Sides::One(_)) => "Is it the right muscle, and this side alone?",
                OnScale::Lot => "Is all of it there, and nothing else?",
                OnScale::Tub => "Was all of it in the tub, and the tub taken off?",
                OnScale::Packages(..) => "Are these all of them, and no others?",
            };
            format!("That is far from the {} expected. {ask}", numbers::mass(*expected, units))
        }
    }
}

/// "3 weighings in it".
pub fn weighings_in_it(count: usize, own: bool) -> String {
    let word = if count == 1 { "weighing" } else { "weighings" };
    match (count, own) {
        (0, false) => String::new(),
        (0, true) => "Your own figures are in it".into(),
        (_, false) => format!("{count} {word} in it"),
        (_, true) => format!("{count} {word} and your own figures in it"),
    }
}

/// How a number was worked out, when something was weighed.
pub const WEIGHED_WORKING: &str =
    "What the scale said is in it: it moves the estimates that go with it, and makes them narrower.";
/// How a number was worked out, with own figures.
pub const OWN_WORKING: &str = "Your own figures are in it: they stand in the place of part of the table's.";

/// The card of own figures.
pub const OWN: &str = "Your own figures";
/// What they are.
pub const OWN_HINT: &str = "How your animals weighed against the table, muscle by muscle. Kept on this device only, and only if you ask. With n animals a figure goes n / (n + 3) of the way from the table to their mean, at most 30 % (our judgement); ranges stay as wide.";
/// Consent for one animal.
pub const OWN_KEEP: &str = "Keep this animal's comparison on this device";
/// They are in this plan.
pub const OWN_IN_IT: &str = "Your own figures are in this plan, and travel with its link.";
/// Out of it.
pub const OWN_OUT: &str = "Take them out";
/// Into it.
pub const OWN_USE: &str = "Use them in this plan";
/// None are kept.
pub const OWN_NONE: &str = "Nothing is kept yet.";
/// A file of them.
pub const OWN_SAVE: &str = "Save as a file";
/// All go.
pub const OWN_ERASE: &str = "Erase all";

/// Too little was weighed to compare.
pub fn own_too_little(weighed: f64) -> String {
    format!(
        "To compare, weigh muscles of both sides that make up {} of the meat; so far it is {}.",
        numbers::percent(ENOUGH),
        numbers::percent((weighed * 100.0).floor() / 100.0)
    )
}

fn percent(percent: i8) -> String {
    let sign = if percent < 0 { '\u{2212}' } else { '+' };
    format!("{sign}{} %", percent.unsigned_abs())
}

/// "From 2 other animals of this species: all meat −3 %, Backstrap +4 %, the rest within 1 %."
pub fn own_figures(own: &Own, animals: usize) -> String {
    let told = |percent: i8| percent.unsigned_abs() > 1;
    let meat = Some(own.meat_percent()).filter(|meat| told(*meat));
    let shares = Muscle::ALL
        .into_iter()
        .filter(|muscle| told(own.share_percent(*muscle)))
        .map(|muscle| format!("{} {}, ", names::muscle(muscle), percent(own.share_percent(muscle))));
    let all: String =
        meat.map(|meat| format!("all meat {}, ", percent(meat))).into_iter().chain(shares).collect();
    let word = if animals == 1 { "animal" } else { "animals" };
    format!("From {animals} other {word} of this species: {all}the rest within 1 % of the table.")
}

/// An animal that is kept: "white tailed doe adult hanging 25000 g: all meat 97 %, 14 muscles".
pub fn own_animal(animal: &Animal) -> String {
    let name: String = animal.name.chars().map(|letter| if letter == '_' { ' ' } else { letter }).collect();
    let meat = animal.meat.map(|ratio| format!("all meat {}, ", numbers::percent(ratio)));
    let count = animal.shares.len();
    format!("{name}: {}{count} muscles", meat.unwrap_or_default())
}

/// "Erase …", as it is said.
pub fn own_erase(animal: &Animal) -> String {
    format!("Erase {}", own_animal(animal))
}

/// "Remove …", as it is said.
pub fn remove_weighing(what: &str) -> String {
    format!("Remove {what}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn changes_are_a_sentence() {
        let changes = [
            Change::TakeHome(Mass::ZERO - Mass::pounds(1.5)),
            Change::Packs(Product::Grind, 3),
            Change::Packs(Product::Stew, -1),
            Change::Paper(Length::ZERO - Length::inches(40.0)),
        ];
        assert_eq!(
            changed(&changes, Units::Pounds),
            "With this weight: 1.5 lb less to take home, 3 more packages of ground, 1 fewer package of stew, about 3 ft less freezer paper."
        );
    }
}
