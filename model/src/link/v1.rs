//! Version 1 of the link: one animal. Frozen; the codes are this file's own and never change.
//!
//! | field | bits |
//! |---|---|
//! | species, sex, age, condition | 4, 1, 2, 2 |
//! | stage; legs if field-dressed | 3; 1 |
//! | grams, or tenths of a millimetre of girth; nothing if typical | 20, 15, 0 |
//! | shot, care, days hung | 2, 2, 4 |
//! | table as usual? else people, appetite | 1; 4, 1 |
//! | packs as usual? else for each product: rule; pieces or grams | 1; 2; 5 or 13 |
//! | taken as usual? else one bit a group | 1; 26 |
//! | for each group: usual? else even?, then one division or left and right | 1; 1 |
//! | title? else length in bytes, UTF-8 | 1; 8 |
//!
//! A division is parts less one (2), then for each part its percent (7, not for the last) and its cut (3) with
//! its size: a flag for the usual size, else 0.1 mm (10), grams (13) or, for roasts by length, mm (10, no flag).

use super::bits::{Ended, Reader, Writer};
use super::{LinkError, Names};
use crate::anatomy::{Muscle, Side};
use crate::animal::{Age, Animal, Condition, Legs, Sex, Species, Weighed};
use crate::kitchen::Kitchen;
use crate::own::Own;
use crate::packing::{Appetite, PackBy, Packing};
use crate::plan::{self, Care, Division, Losses, Part, Plan, Restored, Shot, Tested};
use crate::product::{Cut, Product, RoastSize};
use crate::units::{Length, Mass};
use crate::wishes::Wishes;

// The orders below are version 1's own: a later change of an `ALL` must not change a link.
const SPECIES: [Species; 12] = [
    Species::WhiteTailed,
    Species::Mule,
    Species::BlackTailed,
    Species::Elk,
    Species::Moose,
    Species::Pronghorn,
    Species::Caribou,
    Species::Red,
    Species::Roe,
    Species::Fallow,
    Species::Sika,
    Species::Axis,
];
const SEXES: [Sex; 2] = [Sex::Buck, Sex::Doe];
const AGES: [Age; 4] = [Age::Fawn, Age::Yearling, Age::Adult, Age::Old];
const CONDITIONS: [Condition; 4] =
    [Condition::Ordinary, Condition::PreRut, Condition::LateRut, Condition::Nursing];
const SHOTS: [Shot; 3] = [Shot::Clean, Shot::Usual, Shot::Bad];
const CARES: [Care; 3] = [Care::Fussy, Care::Usual, Care::Hurried];
const APPETITES: [Appetite; 2] = [Appetite::Light, Appetite::Hearty];
const SIDES: [Side; 2] = [Side::Left, Side::Right];
pub(super) const PRODUCTS: [Product; 5] =
    [Product::Roast, Product::Steak, Product::Chop, Product::Stew, Product::Grind];
pub(super) const MUSCLES: [Muscle; 26] = [
    Muscle::TopRound,
    Muscle::BottomRound,
    Muscle::EyeRound,
    Muscle::Knuckle,
    Muscle::Sirloin,
    Muscle::TriTip,
    Muscle::HindShank,
    Muscle::PelvicTrim,
    Muscle::Backstrap,
    Muscle::Tenderloin,
    Muscle::BackTrim,
    Muscle::FlatIron,
    Muscle::MockTender,
    Muscle::Clod,
    Muscle::UnderBlade,
    Muscle::Arm,
    Muscle::ForeShank,
    Muscle::Chuck,
    Muscle::Cape,
    Muscle::NeckStraps,
    Muscle::Neck,
    Muscle::Brisket,
    Muscle::RibMeat,
    Muscle::FlankSteak,
    Muscle::FlankSheets,
    Muscle::Skirt,
];

/// What version 1 calls usual, frozen: a change of the starting plan must not change what an old link says.
mod usual {
    use super::{Appetite, Cut, Length, Mass, Muscle, PackBy, Packing, Product, RoastSize};

    pub(super) const ROAST: Mass = Mass::grams(1130.0);
    pub(super) const STEAK: Length = Length::mm(25.4);
    pub(super) const CHOP: Length = Length::mm(12.7);
    pub(super) const STEW: Length = Length::mm(25.4);

    fn product(muscle: Muscle) -> Product {
        match muscle {
            Muscle::BottomRound | Muscle::EyeRound | Muscle::Knuckle | Muscle::Clod | Muscle::Neck => {
                Product::Roast
            }
            Muscle::TopRound
            | Muscle::Sirloin
            | Muscle::TriTip
            | Muscle::Backstrap
            | Muscle::Tenderloin
            | Muscle::FlatIron => Product::Steak,
            Muscle::HindShank
            | Muscle::MockTender
            | Muscle::UnderBlade
            | Muscle::Arm
            | Muscle::ForeShank
            | Muscle::Chuck
            | Muscle::NeckStraps => Product::Stew,
            Muscle::PelvicTrim
            | Muscle::BackTrim
            | Muscle::Cape
            | Muscle::Brisket
            | Muscle::RibMeat
            | Muscle::FlankSteak
            | Muscle::FlankSheets
            | Muscle::Skirt => Product::Grind,
        }
    }

    pub(super) fn cut(muscle: Muscle) -> Cut {
        match product(muscle) {
            Product::Roast => Cut::Roast(RoastSize::Weight(ROAST)),
            Product::Steak => Cut::Steak(STEAK),
            Product::Chop => Cut::Chop(CHOP),
            Product::Stew => Cut::Stew(STEW),
            Product::Grind => Cut::Grind,
        }
    }

    pub(super) fn recovered(muscle: Muscle) -> bool {
        muscle != Muscle::Skirt
    }

    pub(super) fn packing() -> Packing {
        let pound = PackBy::Weight(Mass::grams(454.0));
        Packing {
            people: 4,
            appetite: Appetite::Hearty,
            by: [PackBy::Pieces(1), PackBy::Table, PackBy::Table, pound, pound],
        }
    }
}

/// What is not said again: the frozen usual or, in a season, what the animal before it has.
pub(super) struct Usual {
    packing: Packing,
    recovered: [bool; 26],
    divisions: [[Division; 2]; 26],
}

impl Usual {
    /// Version 1's.
    pub(super) fn frozen() -> Self {
        Self {
            packing: usual::packing(),
            recovered: MUSCLES.map(usual::recovered),
            divisions: MUSCLES.map(|muscle| {
                let whole = Division::whole(usual::cut(muscle));
                [whole.clone(), whole]
            }),
        }
    }

    /// What another animal has.
    pub(super) fn of(plan: &Plan) -> Self {
        Self {
            packing: *plan.packing(),
            recovered: MUSCLES.map(|muscle| plan.is_recovered(muscle)),
            divisions: MUSCLES.map(|muscle| SIDES.map(|side| plan.division(muscle, side).clone())),
        }
    }
}

/// Bits of a title's length in bytes.
const TITLE_BITS: u32 = 8;

pub(super) fn code<T: PartialEq>(list: &[T], item: &T) -> u32 {
    list.iter().position(|other| other == item).map_or(0, |index| index as u32)
}

fn tenths(length: Length) -> u32 {
    (length.to_mm() * 10.0).round() as u32
}

pub(super) fn grams(mass: Mass) -> u32 {
    mass.to_grams().round() as u32
}

/// Everything version 1 can say of a plan.
pub(super) fn write(bits: &mut Writer, plan: &Plan, names: Names, usual: &Usual) {
    write_animal(bits, plan.animal());
    let losses = plan.losses();
    bits.put(code(&SHOTS, &losses.shot), 2);
    bits.put(code(&CARES, &losses.care), 2);
    bits.put(u32::from(losses.hung_days), 4);
    let now = Usual::of(plan);
    write_packing(bits, &now.packing, &usual.packing);
    bits.flag(now.recovered == usual.recovered);
    if now.recovered != usual.recovered {
        for taken in now.recovered {
            bits.flag(taken);
        }
    }
    for (sides, usual) in now.divisions.iter().zip(&usual.divisions) {
        bits.flag(sides == usual);
        if sides != usual {
            let [left, right] = sides;
            bits.flag(left == right);
            write_division(bits, left);
            if left != right {
                write_division(bits, right);
            }
        }
    }
    let title = match names {
        Names::Included => plan.title(),
        Names::LeftOut => "",
    };
    bits.flag(title.is_empty());
    if !title.is_empty() {
        write_text(bits, title, TITLE_BITS);
    }
}

/// UTF-8 behind its length in bytes, which takes `width` bits.
pub(super) fn write_text(bits: &mut Writer, text: &str, width: u32) {
    bits.put(text.len() as u32, width);
    for byte in text.bytes() {
        bits.put(u32::from(byte), 8);
    }
}

fn write_animal(bits: &mut Writer, animal: &Animal) {
    bits.put(code(&SPECIES, &animal.species()), 4);
    bits.put(code(&SEXES, &animal.sex()), 1);
    bits.put(code(&AGES, &animal.age()), 2);
    bits.put(code(&CONDITIONS, &animal.condition()), 2);
    match animal.weighed() {
        Weighed::Typical => bits.put(0, 3),
        Weighed::Live(mass) => {
            bits.put(1, 3);
            bits.put(grams(mass), 20);
        }
        Weighed::FieldDressed(mass, legs) => {
            bits.put(2, 3);
            bits.flag(legs == Legs::Off);
            bits.put(grams(mass), 20);
        }
        Weighed::Hanging(mass) => {
            bits.put(3, 3);
            bits.put(grams(mass), 20);
        }
        Weighed::Deboned(mass) => {
            bits.put(4, 3);
            bits.put(grams(mass), 20);
        }
        Weighed::Girth(girth) => {
            bits.put(5, 3);
            bits.put(tenths(girth), 15);
        }
    }
}

fn write_packing(bits: &mut Writer, packing: &Packing, usual: &Packing) {
    let table = packing.people == usual.people && packing.appetite == usual.appetite;
    bits.flag(table);
    if !table {
        bits.put(u32::from(packing.people), 4);
        bits.put(code(&APPETITES, &packing.appetite), 1);
    }
    let packs = packing.by == usual.by;
    bits.flag(packs);
    if !packs {
        for product in PRODUCTS {
            match packing.rule(product) {
                PackBy::Table => bits.put(0, 2),
                PackBy::Pieces(pieces) => {
                    bits.put(1, 2);
                    bits.put(u32::from(pieces), 5);
                }
                PackBy::Weight(weight) => {
                    bits.put(2, 2);
                    bits.put(grams(weight), 13);
                }
            }
        }
    }
}

fn write_division(bits: &mut Writer, division: &Division) {
    let parts = division.parts();
    bits.put(parts.len() as u32 - 1, 2);
    for (index, part) in parts.iter().enumerate() {
        if index + 1 < parts.len() {
            bits.put(u32::from(part.percent), 7);
        }
        write_cut(bits, part.cut);
    }
}

fn write_cut(bits: &mut Writer, cut: Cut) {
    let sized = |bits: &mut Writer, is_usual: bool, value: u32, width: u32| {
        bits.flag(is_usual);
        if !is_usual {
            bits.put(value, width);
        }
    };
    match cut {
        Cut::Roast(RoastSize::Whole) => bits.put(0, 3),
        Cut::Roast(RoastSize::Weight(weight)) => {
            bits.put(1, 3);
            sized(bits, weight == usual::ROAST, grams(weight), 13);
        }
        Cut::Roast(RoastSize::Length(length)) => {
            bits.put(2, 3);
            bits.put(length.to_mm().round() as u32, 10);
        }
        Cut::Steak(thick) => {
            bits.put(3, 3);
            sized(bits, thick == usual::STEAK, tenths(thick), 10);
        }
        Cut::Chop(thick) => {
            bits.put(4, 3);
            sized(bits, thick == usual::CHOP, tenths(thick), 10);
        }
        Cut::Stew(edge) => {
            bits.put(5, 3);
            sized(bits, edge == usual::STEW, tenths(edge), 10);
        }
        Cut::Grind => bits.put(6, 3),
        Cut::Discard => bits.put(7, 3),
    }
}

impl From<Ended> for LinkError {
    fn from(_: Ended) -> Self {
        LinkError::CutShort
    }
}

pub(super) fn item<T: Copy>(list: &[T], code: u32) -> Result<T, LinkError> {
    list.get(code as usize).copied().ok_or(LinkError::Impossible)
}

/// What [`write`] wrote.
pub(super) fn read(bits: &mut Reader, usual: &Usual) -> Result<Restored, LinkError> {
    let animal = read_animal(bits)?;
    let losses = Losses {
        shot: item(&SHOTS, bits.take(2)?)?,
        care: item(&CARES, bits.take(2)?)?,
        hung_days: bits.take(4)? as u8,
    };
    let packing = read_packing(bits, usual.packing)?;
    let mut recovered = usual.recovered;
    if !bits.flag()? {
        for taken in &mut recovered {
            *taken = bits.flag()?;
        }
    }
    let mut divisions = Vec::with_capacity(MUSCLES.len());
    for usual in &usual.divisions {
        divisions.push(if bits.flag()? {
            usual.clone()
        } else {
            let even = bits.flag()?;
            let left = read_division(bits)?;
            let right = if even { left.clone() } else { read_division(bits)? };
            [left, right]
        });
    }
    let title = if bits.flag()? { String::new() } else { read_text(bits, TITLE_BITS)? };
    Ok(Restored {
        title,
        animal,
        losses,
        divisions: in_model_order(divisions),
        recovered: order(recovered),
        packing,
        wounds: Vec::new(),
        kitchen: Kitchen::default(),
        weighings: Vec::new(),
        own: Own::default(),
        wishes: Wishes::default(),
        tested: Tested::NotAsked,
    })
}

/// What [`write_text`] wrote.
pub(super) fn read_text(bits: &mut Reader, width: u32) -> Result<String, LinkError> {
    let length = bits.take(width)?;
    let bytes: Result<Vec<u8>, Ended> = (0..length).map(|_| bits.take(8).map(|byte| byte as u8)).collect();
    String::from_utf8(bytes?).map_err(|_| LinkError::Impossible)
}

/// Version 1's order of muscles to the model's.
fn in_model_order(divisions: Vec<[Division; 2]>) -> Vec<[Division; 2]> {
    let mut ordered: Vec<[Division; 2]> =
        Muscle::ALL.into_iter().map(|muscle| [plan::usual(muscle), plan::usual(muscle)]).collect();
    for (muscle, sides) in MUSCLES.into_iter().zip(divisions) {
        ordered[muscle.index()] = sides;
    }
    ordered
}

fn order(recovered: [bool; 26]) -> [bool; Muscle::COUNT] {
    let mut ordered = [true; Muscle::COUNT];
    for (muscle, taken) in MUSCLES.into_iter().zip(recovered) {
        ordered[muscle.index()] = taken;
    }
    ordered
}

fn read_animal(bits: &mut Reader) -> Result<Animal, LinkError> {
    let species = item(&SPECIES, bits.take(4)?)?;
    let sex = item(&SEXES, bits.take(1)?)?;
    let age = item(&AGES, bits.take(2)?)?;
    let condition = item(&CONDITIONS, bits.take(2)?)?;
    let stage = bits.take(3)?;
    let mass = |bits: &mut Reader| bits.take(20).map(|grams| Mass::grams(f64::from(grams)));
    let weighed = match stage {
        0 => Weighed::Typical,
        1 => Weighed::Live(mass(bits)?),
        2 => {
            let legs = if bits.flag()? { Legs::Off } else { Legs::On };
            Weighed::FieldDressed(mass(bits)?, legs)
        }
        3 => Weighed::Hanging(mass(bits)?),
        4 => Weighed::Deboned(mass(bits)?),
        5 => Weighed::Girth(Length::mm(f64::from(bits.take(15)?) / 10.0)),
        _ => return Err(LinkError::Impossible),
    };
    Animal::new(species, sex, age, condition, weighed).map_err(|_| LinkError::Impossible)
}

fn read_packing(bits: &mut Reader, mut packing: Packing) -> Result<Packing, LinkError> {
    if !bits.flag()? {
        packing.people = bits.take(4)? as u8;
        packing.appetite = item(&APPETITES, bits.take(1)?)?;
    }
    if !bits.flag()? {
        for product in PRODUCTS {
            packing.by[product as usize] = match bits.take(2)? {
                0 => PackBy::Table,
                1 => PackBy::Pieces(bits.take(5)? as u8),
                2 => PackBy::Weight(Mass::grams(f64::from(bits.take(13)?))),
                _ => return Err(LinkError::Impossible),
            };
        }
    }
    Ok(packing)
}

fn read_division(bits: &mut Reader) -> Result<Division, LinkError> {
    let count = bits.take(2)? + 1;
    let mut left = 100_u32;
    let mut parts = Vec::new();
    for index in 1..=count {
        let percent = if index < count { bits.take(7)? } else { left };
        left = left.checked_sub(percent).ok_or(LinkError::Impossible)?;
        parts.push(Part { percent: percent as u8, cut: read_cut(bits)? });
    }
    Division::new(parts).map_err(|_| LinkError::Impossible)
}

fn read_cut(bits: &mut Reader) -> Result<Cut, LinkError> {
    let code = bits.take(3)?;
    let tenths = |bits: &mut Reader, usual: Length| -> Result<Length, Ended> {
        if bits.flag()? { Ok(usual) } else { Ok(Length::mm(f64::from(bits.take(10)?) / 10.0)) }
    };
    Ok(match code {
        0 => Cut::Roast(RoastSize::Whole),
        1 => Cut::Roast(RoastSize::Weight(if bits.flag()? {
            usual::ROAST
        } else {
            Mass::grams(f64::from(bits.take(13)?))
        })),
        2 => Cut::Roast(RoastSize::Length(Length::mm(f64::from(bits.take(10)?)))),
        3 => Cut::Steak(tenths(bits, usual::STEAK)?),
        4 => Cut::Chop(tenths(bits, usual::CHOP)?),
        5 => Cut::Stew(tenths(bits, usual::STEW)?),
        6 => Cut::Grind,
        _ => Cut::Discard,
    })
}
