//! What several test targets share: plans made at random from a seed, and a digest of a forecast.

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::{Age, Animal, Condition, Legs, Sex, Species, Weighed};
use hindsaddle_model::ensemble::SplitMix;
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::packing::{Appetite, MOST_PEOPLE, MOST_PIECES, PackBy};
use hindsaddle_model::plan::{Action, Care, Division, Losses, MOST_HUNG_DAYS, Part, Plan, Shot};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::tables;
use hindsaddle_model::units::{Length, Mass};

/// How many random plans are compared between this machine and a browser.
pub const DIGESTED: u64 = 200;

fn one<T: Copy>(dice: &mut SplitMix, of: &[T]) -> T {
    of[dice.below(of.len() as u64) as usize]
}

fn between(dice: &mut SplitMix, low: f64, high: f64) -> f64 {
    low + (high - low) * dice.below(1_000_001) as f64 / 1_000_000.0
}

/// An animal of any kind, weighed at any stage.
///
/// # Panics
/// If the model refuses an animal near the typical one of its kind, which is then a defect of the model.
pub fn random_animal(dice: &mut SplitMix) -> Animal {
    let species = one(dice, &Species::ALL);
    let sex = one(dice, &Sex::ALL);
    let age = one(dice, &Age::ALL);
    let conditions: Vec<Condition> =
        Condition::ALL.into_iter().filter(|condition| condition.suits(sex, age)).collect();
    let condition = one(dice, &conditions);
    let (typical, _) = tables::typical_live(species, sex, age);
    let live = typical * between(dice, 0.8, 1.2);
    let weighed = match dice.below(7) {
        0 => Weighed::Typical,
        1 => Weighed::Live(live),
        2 => Weighed::FieldDressed(live * 0.74, Legs::On),
        3 => Weighed::FieldDressed(live * 0.71, Legs::Off),
        4 => Weighed::Hanging(live * 0.57),
        5 => Weighed::Deboned(live * 0.3),
        _ => tables::girth(species, age).map_or(Weighed::Typical, |row| {
            Weighed::Girth(Length::mm(between(dice, row.range.0.to_mm(), row.range.1.to_mm())))
        }),
    };
    Animal::new(species, sex, age, condition, weighed).expect("a typical animal, or nearly, is believed")
}

fn random_cut(dice: &mut SplitMix) -> Cut {
    match dice.below(8) {
        0 => Cut::Roast(RoastSize::Whole),
        1 => Cut::Roast(RoastSize::Weight(Mass::grams(between(dice, 200.0, 6000.0)))),
        2 => Cut::Roast(RoastSize::Length(Length::mm(between(dice, 50.0, 600.0)))),
        3 => Cut::Steak(Length::mm(between(dice, 3.0, 102.0))),
        4 => Cut::Chop(Length::mm(between(dice, 3.0, 102.0))),
        5 => Cut::Stew(Length::mm(between(dice, 10.0, 76.2))),
        6 => Cut::Grind,
        _ => Cut::Discard,
    }
}

fn random_division(dice: &mut SplitMix) -> Division {
    let count = 1 + dice.below(4);
    let mut left = 100;
    let mut parts = Vec::new();
    for part in 0..count {
        let still = (count - part - 1) as u8;
        let percent = if still == 0 { left } else { 1 + dice.below(u64::from(left - still)) as u8 };
        left -= percent;
        parts.push(Part { percent, cut: random_cut(dice) });
    }
    Division::new(parts).expect("the parts add up")
}

/// A plan that uses everything a plan can hold. What the rules refuse is left out.
pub fn random_plan(seed: u64) -> Plan {
    let dice = &mut SplitMix::new(seed);
    let mut plan = Plan::new(random_animal(dice));
    let hung_days = dice.below(u64::from(MOST_HUNG_DAYS) + 1) as u8;
    let mut actions = vec![Action::SetLosses(Losses {
        shot: one(dice, &Shot::ALL),
        care: one(dice, &Care::ALL),
        hung_days,
    })];
    if dice.below(2) == 0 {
        actions
            .push(Action::SetTitle(one(dice, &["north ridge doe", "Rehbock, späte Jagd", "鹿 42"]).into()));
    }
    for muscle in Muscle::ALL {
        let sides = one(dice, &[Sides::Both, Sides::One(Side::Left), Sides::One(Side::Right)]);
        if dice.below(2) == 0 {
            actions.push(Action::Divide { muscle, sides, division: random_division(dice) });
        }
        if dice.below(10) == 0 {
            actions.push(Action::Recover { muscle, taken: dice.below(2) == 0 });
        }
    }
    if dice.below(2) == 0 {
        let people = 1 + dice.below(u64::from(MOST_PEOPLE)) as u8;
        actions.push(Action::SetTable { people, appetite: one(dice, &Appetite::ALL) });
        for product in Product::ALL {
            let by = match dice.below(3) {
                0 => PackBy::Table,
                1 => PackBy::Pieces(1 + dice.below(u64::from(MOST_PIECES)) as u8),
                _ => PackBy::Weight(Mass::grams(between(dice, 100.0, 5000.0))),
            };
            actions.push(Action::SetPack { product, by });
        }
    }
    for action in actions {
        if let Ok(applied) = plan.apply(action) {
            plan = applied.plan;
        }
    }
    plan
}

/// Every number of a forecast, bit for bit, as a CRC-64.
pub fn digest(forecast: &Forecast) -> u64 {
    let mut bytes = Vec::new();
    let mut mass = |estimate: hindsaddle_model::estimate::Estimate<Mass>| {
        for end in [estimate.low(), estimate.likely(), estimate.high()] {
            bytes.extend(end.to_grams().to_bits().to_le_bytes());
        }
    };
    for estimate in [forecast.live, forecast.dressed, forecast.hanging, forecast.lean, forecast.take_home] {
        mass(estimate);
    }
    forecast.ledger.iter().for_each(|(_, line)| mass(*line));
    forecast.tallies.iter().for_each(|tally| mass(tally.mass));
    forecast.muscles.iter().for_each(|muscle| {
        mass(muscle.mass);
        muscle.packs.iter().for_each(|row| mass(row.mass));
    });
    let rows = forecast.muscles.iter().flat_map(|muscle| &muscle.packs);
    let counts = rows.flat_map(|row| [row.pieces, row.packs]);
    for count in counts.chain(forecast.tallies.iter().map(|tally| tally.packs)).chain([forecast.packs]) {
        for end in [count.low(), count.likely(), count.high()] {
            bytes.extend(end.to_le_bytes());
        }
    }
    let pieces = forecast.muscles.iter().flat_map(|muscle| &muscle.sides).flatten().map(|part| part.pieces);
    for piece in pieces {
        for number in [piece.mass.to_grams(), piece.tub.to_grams(), piece.start, piece.pitch] {
            bytes.extend(number.to_bits().to_le_bytes());
        }
    }
    crc::Crc::<u64>::new(&crc::CRC_64_XZ).checksum(&bytes)
}

/// One line for each random plan: its seed and the digest of its forecast.
pub fn digests() -> String {
    let line = |seed: u64| format!("{seed} {:016x}\n", digest(&forecast(&random_plan(seed))));
    (0..DIGESTED).map(line).collect::<Vec<_>>().concat()
}
