//! What several test targets share: named plans, plans made at random from a seed, and a digest of a forecast.

use std::num::NonZeroU8;

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::{Age, Animal, Condition, Legs, Sex, Species, Weighed};
use hindsaddle_model::dates::Date;
use hindsaddle_model::ensemble::SplitMix;
use hindsaddle_model::estimate::Estimate;
use hindsaddle_model::fat::{Added, FatContent, NamedFat};
use hindsaddle_model::forecast::{Advice, Forecast, forecast};
use hindsaddle_model::freezer::{Freezer, LoadRule};
use hindsaddle_model::grind::{Mix, Patty, Target, Vessel};
use hindsaddle_model::kitchen::{Grinder, Kitchen};
use hindsaddle_model::link::{self, LinkError, Names};
use hindsaddle_model::own::{FARTHEST, Own};
use hindsaddle_model::packing::{Appetite, MOST_PEOPLE, MOST_PIECES, PackBy};
use hindsaddle_model::plan::{Action, Care, Division, Losses, MOST_HUNG_DAYS, Part, Plan, Shot};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::scale::OnScale;
use hindsaddle_model::tables::{self, PAPER_ROLLS};
use hindsaddle_model::units::{Length, Mass, Volume};
use hindsaddle_model::wounds::{MOST_WOUNDS, RADIUS_RANGE, Wound, X_RANGE, Y_RANGE, share};
use hindsaddle_model::wrap::{Wrap, Wrapping};

/// How many random plans are compared between this machine and a browser.
pub const DIGESTED: u64 = 200;
/// And how many of which something was weighed.
const WEIGHED: u64 = 50;

/// The link of one animal's plan.
pub fn write(plan: &Plan, names: Names) -> String {
    link::write(&plan.clone().into(), names)
}

/// The plan of a link of one animal.
///
/// # Errors
/// See [`LinkError`].
pub fn read(text: &str) -> Result<Plan, LinkError> {
    link::read(text).map(|season| season.animal(0).clone())
}

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

fn random_wound(dice: &mut SplitMix) -> Wound {
    let mut within = |(least, most): (i8, i8)| least + dice.below((most - least + 1) as u64) as i8;
    let (x, y) = (within(X_RANGE), within(Y_RANGE));
    let (least, most) = RADIUS_RANGE;
    let radius = least + dice.below(u64::from(most - least) + 1) as u8;
    Wound { side: one(dice, &Side::ALL), x, y, radius }
}

fn random_kitchen(dice: &mut SplitMix) -> Kitchen {
    let date = |dice: &mut SplitMix| {
        let (year, month) = (2000 + dice.below(60) as i32, 1 + dice.below(12) as u8);
        Date::new(year, month, 1 + dice.below(28) as u8).expect("every month has 28 days")
    };
    let harvested = (dice.below(2) == 0).then(|| date(dice));
    let later = dice.below(14) as u16;
    let packed = (dice.below(2) == 0).then(|| harvested.unwrap_or_else(|| date(dice)).plus_days(later));
    let mut wrapping = Wrapping { roll: PAPER_ROLLS[dice.below(3) as usize].value, ..Wrapping::default() };
    wrapping.spare_percent = dice.below(101) as u8;
    wrapping.by = std::array::from_fn(|_| one(dice, &Wrap::ALL));
    let added = one(
        dice,
        &[
            Added::Fat(NamedFat::PorkBackFat),
            Added::Fat(NamedFat::BeefFat),
            Added::PorkTrim(FatContent::percent(52.5)),
        ],
    );
    let target = Target { fat: FatContent::percent(between(dice, 5.0, 45.0)), added };
    let mix =
        one(dice, &[Mix::Plain, Mix::Burger(target), Mix::SausageLean(None), Mix::SausageLean(Some(target))]);
    let bowl = Vessel::Holds(Volume::litres(between(dice, 3.0, 40.0)));
    let vessel = one(dice, &[Vessel::Takes(Mass::grams(4321.0)), bowl]);
    let patties = one(dice, &[None, Some((Patty::FourToOne, 4)), Some((Patty::ThreeToOne, 15))]);
    let freezer = (dice.below(2) == 0).then(|| Freezer {
        size: Volume::litres(between(dice, 200.0, 700.0)),
        free: Volume::litres(between(dice, 0.0, 200.0)),
        pace: one(dice, &LoadRule::ALL),
    });
    let name = |dice: &mut SplitMix| one(dice, &["", "Ann", "Jäger Müller", "№ 12-鹿"]).to_owned();
    let (owner, tag) = (name(dice), name(dice));
    Kitchen { harvested, packed, wrapping, grinder: Grinder { mix, vessel, patties }, freezer, owner, tag }
}

/// A plan that uses everything a plan can hold. What the rules refuse is left out.
pub fn random_plan(seed: u64) -> Plan {
    let dice = &mut SplitMix::new(seed);
    let mut plan = Plan::new(random_animal(dice));
    for action in random_actions(dice) {
        if let Ok(applied) = plan.apply(action) {
            plan = applied.plan;
        }
    }
    plan
}

/// Edits of everything a plan can hold but its animal and what was weighed. The rules may refuse some.
pub fn random_actions(dice: &mut SplitMix) -> Vec<Action> {
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
    if dice.below(2) == 0 {
        actions.push(Action::SetKitchen(Box::new(random_kitchen(dice))));
    }
    for _ in 0..dice.below(MOST_WOUNDS as u64 + 1) {
        actions.push(Action::AddWound(random_wound(dice)));
    }
    actions
}

/// Anything that can lie on the scale.
fn random_on_scale(dice: &mut SplitMix) -> OnScale {
    match dice.below(8) {
        0 => OnScale::Lot,
        1 => OnScale::Tub,
        2 => OnScale::Packages(one(dice, &Product::ALL), NonZeroU8::new(dice.below(12) as u8)),
        _ => {
            let sides = one(dice, &[Sides::Both, Sides::One(Side::Left), Sides::One(Side::Right)]);
            OnScale::Muscle(one(dice, &Muscle::ALL), sides)
        }
    }
}

/// What a plan leads to expect on the scale; None where nothing is.
pub fn expected_on_scale(plan: &Plan, target: OnScale) -> Option<Mass> {
    let forecast = forecast(plan);
    let clean = |muscle: Muscle, sides: Sides| {
        let sides = Side::ALL.into_iter().filter(|side| sides.includes(*side));
        let part: f64 = sides.map(|side| 1.0 - share(plan.wounds(), muscle, side)).sum();
        forecast.muscles[muscle.index()].mass.likely() * (part / 2.0)
    };
    let mass = match target {
        OnScale::Muscle(muscle, sides) => clean(muscle, sides),
        OnScale::Lot => {
            let taken = Muscle::ALL.into_iter().filter(|muscle| plan.is_recovered(*muscle));
            taken.map(|muscle| clean(muscle, Sides::Both)).sum()
        }
        OnScale::Tub => forecast.tallies[Product::Grind as usize].mass.likely(),
        OnScale::Packages(product, count) => {
            let tally = forecast.tallies[product as usize];
            let packs = f64::from(tally.packs.likely().max(1));
            let part = count.map_or(1.0, |count| f64::from(count.get()) / packs);
            tally.mass.likely() * part.min(1.0)
        }
    };
    (mass > Mass::grams(1.0)).then_some(mass)
}

/// A random plan of which some things were weighed, each within a fifth of what was expected; some plans have
/// the household's own figures in them.
pub fn weighed_plan(seed: u64) -> Plan {
    let plan = random_plan(seed);
    let dice = &mut SplitMix::new(!seed);
    let mut weighed = plan.clone();
    for _ in 0..=dice.below(9) {
        let target = random_on_scale(dice);
        let factor = between(dice, 0.8, 1.2);
        if let Some(expected) = expected_on_scale(&plan, target) {
            weighed = with(&weighed, Action::Weigh { target, mass: Some(expected * factor) });
        }
    }
    if dice.below(3) == 0 {
        let mut percent = || dice.below(2 * FARTHEST as u64 + 1) as i8 - FARTHEST;
        let own = Own::new(
            percent(),
            Muscle::ALL.map(|muscle| if muscle.index() % 3 == 0 { percent() } else { 0 }),
        );
        weighed = with(&weighed, Action::UseOwn(own));
    }
    weighed
}

/// A plan after an action that has to be possible.
///
/// # Panics
/// If it is refused.
#[track_caller]
pub fn with(plan: &Plan, action: Action) -> Plan {
    plan.apply(action).expect("the action is possible").plan
}

/// An animal of `live` weight, weighed in each way but by its girth.
pub fn ways_to_weigh(live: Mass) -> Vec<Weighed> {
    vec![
        Weighed::Typical,
        Weighed::Live(live),
        Weighed::FieldDressed(live * 0.74, Legs::On),
        Weighed::FieldDressed(live * 0.71, Legs::Off),
        Weighed::Hanging(live * 0.57),
        Weighed::Deboned(live * 0.3),
    ]
}

/// The usual plan of each kind of animal, weighed in each way: the fixtures that are compared by name.
///
/// # Panics
/// If a typical animal is not believed.
pub fn named_plans() -> Vec<(String, Plan)> {
    let mut plans = Vec::new();
    for species in Species::ALL {
        for sex in Sex::ALL {
            let (live, _) = tables::typical_live(species, sex, Age::Adult);
            let mut ways = ways_to_weigh(live);
            ways.extend(tables::girth(species, Age::Adult).map(|row| Weighed::Girth(row.range.0 * 1.25)));
            for (index, weighed) in ways.into_iter().enumerate() {
                let animal = Animal::new(species, sex, Age::Adult, Condition::Ordinary, weighed);
                let name = format!("{} {} {index} {}", species.id(), sex.id(), weighed.stage().id());
                plans.push((name, Plan::new(animal.expect("a typical animal is believed"))));
            }
        }
    }
    plans
}

/// Numbers on their way into a digest.
#[derive(Default)]
struct Numbers(Vec<u8>);

impl Numbers {
    fn float(&mut self, number: f64) {
        self.0.extend(number.to_bits().to_le_bytes());
    }

    fn whole(&mut self, number: u32) {
        self.0.extend(number.to_le_bytes());
    }

    fn mass(&mut self, mass: Estimate<Mass>) {
        for end in [mass.low(), mass.likely(), mass.high()] {
            self.float(end.to_grams());
        }
    }

    fn count(&mut self, count: Estimate<u32>) {
        for end in [count.low(), count.likely(), count.high()] {
            self.whole(end);
        }
    }

    /// A number that may not be there, and whether it is.
    fn maybe(&mut self, number: Option<f64>) {
        self.whole(u32::from(number.is_some()));
        self.float(number.unwrap_or_default());
    }
}

/// Every number of a forecast, bit for bit, as a CRC-64.
pub fn digest(forecast: &Forecast) -> u64 {
    let mut numbers = Numbers::default();
    for mass in [forecast.live, forecast.dressed, forecast.hanging, forecast.lean, forecast.take_home] {
        numbers.mass(mass);
    }
    forecast.ledger.iter().for_each(|(_, mass)| numbers.mass(*mass));
    numbers.count(forecast.packs);
    for tally in &forecast.tallies {
        numbers.count(tally.packs);
        numbers.mass(tally.mass);
        numbers.maybe(tally.loose.map(|(pack, _)| pack.to_grams()));
        numbers.maybe(tally.loose.and_then(|(_, last)| last).map(Mass::to_grams));
    }
    for muscle in &forecast.muscles {
        numbers.mass(muscle.mass);
        numbers.maybe(muscle.length.map(Length::to_mm));
        for row in &muscle.packs {
            numbers.count(row.pieces);
            numbers.count(row.packs);
            numbers.mass(row.mass);
            numbers.whole(row.a_pack);
            numbers.maybe(row.short.map(f64::from));
        }
        for part in muscle.sides.iter().flatten() {
            let pieces = part.pieces;
            for mass in [pieces.mass, pieces.tub, pieces.discarded] {
                numbers.float(mass.to_grams());
            }
            for fraction in [part.span.0, part.span.1, pieces.start, pieces.pitch] {
                numbers.float(fraction);
            }
            numbers.whole(pieces.count);
            numbers.whole(u32::from(pieces.short_last));
            numbers.whole(u32::from(part.spoiled));
            part.advice.iter().for_each(|advice| numbers.maybe(advised(*advice)));
        }
    }
    crc::Crc::<u64>::new(&crc::CRC_64_XZ).checksum(&numbers.0)
}

/// The number in a piece of advice.
fn advised(advice: Advice) -> Option<f64> {
    match advice {
        Advice::SmallRoast(mass) => Some(mass.to_grams()),
        Advice::SmallFace(area) => Some(area.to_square_mm()),
        Advice::ThinMuscle(length) => Some(length.to_mm()),
        Advice::Care(_) | Advice::Discouraged(_) | Advice::NothingFits => None,
    }
}

/// One line for each named, each random and each weighed plan: its name or seed, and the digest of its forecast.
pub fn digests() -> String {
    let seeded = (0..DIGESTED).map(|seed| (seed.to_string(), random_plan(seed)));
    let weighed = (0..WEIGHED).map(|seed| (format!("weighed {seed}"), weighed_plan(seed)));
    let line = |(name, plan): (String, Plan)| format!("{name} {:016x}\n", digest(&forecast(&plan)));
    named_plans().into_iter().chain(seeded).chain(weighed).map(line).collect::<Vec<_>>().concat()
}
