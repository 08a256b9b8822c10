//! Links: round trips, strictness, lengths, and fixtures that must open for ever.
//!
//! `tests/links` is append-only. A fixture is a link and the take-home weight it said on the day it was
//! frozen is not kept: better figures may change that. What it says of the plan is kept by the link itself:
//! reading it and writing it again has to give the same text, and the named facts beside it.

use std::num::NonZeroU8;

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::Animal;
use hindsaddle_model::dates::Date;
use hindsaddle_model::kitchen::Kitchen;
use hindsaddle_model::link::{LONGEST, LinkError, Names};
use hindsaddle_model::own::Own;
use hindsaddle_model::plan::{Action, Division, Plan};
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::scale::{HEAVIEST, OnScale};
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_model::wounds::Wound;
use hindsaddle_tests::{random_plan, read, weighed_plan, with, write};
use proptest::prelude::*;

#[test]
fn a_plan_comes_back_whole() {
    for seed in 0..3000 {
        let plan = random_plan(seed);
        let text = write(&plan, Names::Included);
        assert_eq!(read(&text).as_ref(), Ok(&plan), "seed {seed}: {text}");
        assert!(text.len() < LONGEST, "seed {seed}: {}", text.len());
    }
}

#[test]
fn a_weighed_plan_comes_back_whole() {
    for seed in 0..600 {
        let plan = weighed_plan(seed);
        let text = write(&plan, Names::Included);
        assert_eq!(read(&text).as_ref(), Ok(&plan), "seed {seed}: {text}");
        assert!(text.starts_with('2') && text.len() < LONGEST, "seed {seed}: {}", text.len());
    }
}

/// Everything on the scale that can be, and figures of one's own for every group: the longest of such links.
#[test]
fn a_link_with_weighings_is_short() {
    let plan = Plan::new(Animal::example());
    let tenderloin = OnScale::Muscle(Muscle::Tenderloin, Sides::Both);
    let one = with(&plan, Action::Weigh { target: tenderloin, mass: Some(Mass::grams(362.0)) });
    let more = write(&one, Names::Included).len() - write(&plan, Names::Included).len();
    assert!(more <= 8, "{more}");
    let mut all = one;
    for target in Muscle::ALL.map(|muscle| OnScale::Muscle(muscle, Sides::Both)) {
        all = with(&all, Action::Weigh { target, mass: Some(Mass::grams(1000.0)) });
    }
    let length = write(&all, Names::Included).len();
    assert!(length < 160, "every muscle on both sides: {length}");
    for side in Side::ALL {
        for muscle in Muscle::ALL {
            let target = OnScale::Muscle(muscle, Sides::One(side));
            all = with(&all, Action::Weigh { target, mass: Some(HEAVIEST) });
        }
    }
    let packages = Product::ALL.map(|product| OnScale::Packages(product, NonZeroU8::new(255)));
    for target in packages.into_iter().chain([OnScale::Lot, OnScale::Tub]) {
        all = with(&all, Action::Weigh { target, mass: Some(HEAVIEST) });
    }
    all = with(&all, Action::UseOwn(Own::new(30, [-30; Muscle::COUNT])));
    assert_eq!(all.weighings().len(), 59);
    let text = write(&all, Names::Included);
    assert!(text.len() < 400, "{}", text.len());
    assert_eq!(read(&text), Ok(all));
}

#[test]
fn equal_plans_have_equal_links_and_others_do_not() {
    let links: std::collections::BTreeSet<String> =
        (0..500).map(|seed| write(&random_plan(seed), Names::Included)).collect();
    assert_eq!(links.len(), 500);
    let plan = Plan::new(Animal::example());
    let there = with(
        &plan,
        Action::Assign { muscle: Muscle::Neck, sides: Sides::Both, cut: Cut::usual(Product::Stew) },
    );
    let back = with(
        &there,
        Action::Assign { muscle: Muscle::Neck, sides: Sides::Both, cut: Cut::usual(Product::Roast) },
    );
    assert_eq!(write(&plan, Names::Included), write(&back, Names::Included));
}

#[test]
fn a_title_travels_only_if_asked() {
    let plan = with(&Plan::new(Animal::example()), Action::SetTitle("north ridge doe".into()));
    assert_eq!(read(&write(&plan, Names::Included)).unwrap().title(), "north ridge doe");
    assert_eq!(read(&write(&plan, Names::LeftOut)).unwrap().title(), "");
}

/// Short enough for a message: under 100 characters for a usual plan.
#[test]
fn links_are_short() {
    let plan = Plan::new(Animal::example());
    let titled = with(&plan, Action::SetTitle("x".repeat(40)));
    let length = write(&titled, Names::Included).len();
    assert!(length < 100, "a usual plan with the longest title: {length}");
    let mut changed = plan;
    for muscle in Muscle::ALL {
        let usual = changed.division(muscle, Side::Left).single();
        let mut other = if usual == Some(Cut::Grind) { Cut::Stew(Length::mm(20.0)) } else { Cut::Grind };
        if usual == Some(Cut::usual(Product::Steak)) {
            other = Cut::Steak(Length::mm(19.1));
        }
        changed = with(&changed, Action::Assign { muscle, sides: Sides::Both, cut: other });
    }
    let length = write(&changed, Names::Included).len();
    assert!(length < 160, "every muscle changed: {length}");
}

#[test]
fn a_damaged_link_is_refused_wherever_it_is_damaged() {
    for seed in 0..12 {
        let text = write(&random_plan(seed), Names::Included);
        for at in 1..text.len() {
            let cut = read(&text[..at]);
            assert!(cut.is_err(), "seed {seed} cut at {at}");
            let mut changed = text.clone().into_bytes();
            changed[at] = if changed[at] == b'A' { b'B' } else { b'A' };
            let changed = String::from_utf8(changed).unwrap();
            assert!(read(&changed).is_err(), "seed {seed} changed at {at}: {changed}");
        }
    }
}

#[test]
fn each_damage_has_its_own_error() {
    let plan = random_plan(3);
    let text = write(&plan, Names::Included);
    assert_eq!(read(""), Err(LinkError::Empty));
    assert_eq!(read("#"), Err(LinkError::Empty));
    assert_eq!(read(&"1".repeat(LONGEST + 1)), Err(LinkError::TooLong));
    assert_eq!(read(&format!("4{}", &text[1..])), Err(LinkError::Newer));
    assert_eq!(read("hello"), Err(LinkError::Unknown));
    assert_eq!(read(&format!("{}!{}", &text[..9], &text[9..])), Err(LinkError::Character));
    for short in 4..text.len() - 2 {
        assert_eq!(read(&text[..text.len() - short]), Err(LinkError::CutShort), "{short} missing");
    }
    let swapped: String = [&text[..10], "Q", &text[11..]].concat();
    assert!(matches!(read(&swapped), Err(LinkError::Mistyped | LinkError::CutShort)));
    assert_eq!(read(&format!("{text}AAAA")), Err(LinkError::Mistyped));
}

#[test]
fn what_mail_and_chat_add_is_forgiven() {
    let plan = random_plan(5);
    let text = write(&plan, Names::Included);
    for dressed in [format!("#{text}"), format!(" {text}\n"), format!("{text}."), format!("{text})")] {
        assert_eq!(read(&dressed).as_ref(), Ok(&plan), "{dressed}");
    }
}

/// A right checksum does not save a text that no plan would be written as.
#[test]
fn other_ways_to_say_the_same_plan_are_refused() {
    let crc = crc::Crc::<u16>::new(&crc::CRC_16_IBM_SDLC);
    let text = write(&Plan::new(Animal::example()), Names::Included);
    let packed = data_encoding::BASE64URL_NOPAD.decode(&text.as_bytes()[1..]).unwrap();
    let payload = &packed[..packed.len() - 2];
    let signed = |payload: &[u8]| {
        let mut bytes = payload.to_vec();
        bytes.extend(crc.checksum(payload).to_be_bytes());
        format!("1{}", data_encoding::BASE64URL_NOPAD.encode(&bytes))
    };
    assert_eq!(signed(payload), text);
    let mut trailing = payload.to_vec();
    trailing.push(0);
    assert_eq!(read(&signed(&trailing)), Err(LinkError::Impossible));
    // Species 15, which there is none.
    let mut species = payload.to_vec();
    species[0] |= 0xf0;
    assert_eq!(read(&signed(&species)), Err(LinkError::Impossible));
    for bit in 0..payload.len() * 8 {
        let mut flipped = payload.to_vec();
        flipped[bit / 8] ^= 0x80 >> (bit % 8);
        if let Ok(plan) = read(&signed(&flipped)) {
            assert_eq!(write(&plan, Names::Included), signed(&flipped), "bit {bit}");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn any_text_returns(text in ".{0,200}") {
        let _ = read(&text).map(|plan| write(&plan, Names::Included));
    }

    #[test]
    fn any_bytes_behind_a_right_version_return(bytes in proptest::collection::vec(any::<u8>(), 0..300)) {
        for version in ['1', '2'] {
            let text = format!("{version}{}", data_encoding::BASE64URL_NOPAD.encode(&bytes));
            if let Ok(plan) = read(&text) {
                prop_assert_eq!(write(&plan, Names::Included), text);
            }
        }
    }
}

/// Links from the day their version was frozen: `UPDATE_EXPECT=1` writes only files that are not there. Plans
/// of version 1 have no wounds, those of version 2 have; from 300 on something was weighed.
#[test]
fn frozen_links_open_for_ever() {
    let links = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("links");
    let random: fn(u64) -> Plan = random_plan;
    for (version, seeds, plan) in
        [("v1", 100..116, random), ("v2", 200..216, random), ("v2", 300..308, weighed_plan)]
    {
        let folder = links.join(version);
        for seed in seeds.clone() {
            let file = folder.join(format!("plan-{seed}.txt"));
            let plan = plan(seed);
            if !file.exists() && std::env::var_os("UPDATE_EXPECT").is_some() {
                let link = write(&plan, Names::Included);
                std::fs::write(&file, format!("{link}\n{}", dump(&plan))).unwrap();
            }
        }
        let mut opened = 0;
        for entry in std::fs::read_dir(&folder).unwrap() {
            let path = entry.unwrap().path();
            let text = std::fs::read_to_string(&path).unwrap();
            let (link, said) = text.split_once('\n').unwrap();
            let plan = read(link).unwrap_or_else(|error| panic!("{}: {error:?}", path.display()));
            assert_eq!(write(&plan, Names::Included), link, "{}", path.display());
            assert_eq!(dump(&plan), said, "{}", path.display());
            opened += 1;
        }
        assert!(opened >= seeds.count(), "{version}: {opened}");
    }
}

/// What version 1 can say is said in version 1, so that a plan has one link.
#[test]
fn a_plan_with_wounds_is_a_link_of_version_2_and_without_them_of_version_1() {
    let plan = Plan::new(Animal::example());
    let wound = Wound { side: Side::Left, x: 20, y: 40, radius: 5 };
    let wounded = with(&plan, Action::AddWound(wound));
    assert!(write(&plan, Names::Included).starts_with('1'));
    assert!(write(&wounded, Names::Included).starts_with('2'));
    let healed = with(&wounded, Action::RemoveWound(0));
    assert_eq!(write(&healed, Names::Included), write(&plan, Names::Included));
}

/// Four wounds, which is the most, and a title of forty characters.
#[test]
fn a_link_with_wounds_is_short() {
    let mut plan = with(&Plan::new(Animal::example()), Action::SetTitle("x".repeat(40)));
    for x in [0, 10, 20, 60] {
        plan = with(&plan, Action::AddWound(Wound { side: Side::Right, x, y: 75, radius: 12 }));
    }
    let length = write(&plan, Names::Included).len();
    assert!(length < 100, "{length}");
}

/// A section that no version yet has: an address made by a later planner says so.
#[test]
fn a_section_from_later_is_said_to_be_from_later() {
    // The dates are section 1, which is one bit away from section 9.
    let packed = Date::new(2026, 11, 25).ok();
    let kitchen = Box::new(Kitchen { packed, ..Kitchen::default() });
    let text = write(&with(&Plan::new(Animal::example()), Action::SetKitchen(kitchen)), Names::Included);
    let packed = data_encoding::BASE64URL_NOPAD.decode(&text.as_bytes()[1..]).unwrap();
    let payload = &packed[..packed.len() - 2];
    let mut later = 0;
    for bit in 0..payload.len() * 8 {
        let mut flipped = payload.to_vec();
        flipped[bit / 8] ^= 0x80 >> (bit % 8);
        let checksum = crc::Crc::<u16>::new(&crc::CRC_16_IBM_SDLC);
        let mut digest = checksum.digest();
        digest.update(b"2");
        digest.update(&flipped);
        flipped.extend(digest.finalize().to_be_bytes());
        let link = format!("2{}", data_encoding::BASE64URL_NOPAD.encode(&flipped));
        match read(&link) {
            Ok(plan) => assert_eq!(write(&plan, Names::Included), link, "bit {bit}"),
            Err(LinkError::Newer) => later += 1,
            Err(LinkError::Impossible | LinkError::CutShort) => {}
            Err(other) => panic!("bit {bit}: {other:?}"),
        }
    }
    assert!(later >= 1, "a section number that is not taken: {later}");
}

/// A plan in words, for people and for the fixtures.
fn dump(plan: &Plan) -> String {
    let animal = plan.animal();
    let mut text = format!(
        "title {:?}\n{} {} {} {} {:?}\n{:?}\n{:?}\n",
        plan.title(),
        animal.species().id(),
        animal.sex().id(),
        animal.age().id(),
        animal.condition().id(),
        animal.weighed(),
        plan.losses(),
        plan.packing()
    );
    for muscle in Muscle::ALL {
        let parts = |side| {
            let division: &Division = plan.division(muscle, side);
            division
                .parts()
                .iter()
                .map(|part| format!("{} % {:?}", part.percent, part.cut))
                .collect::<Vec<_>>()
                .join(", ")
        };
        let taken = if plan.is_recovered(muscle) { "" } else { " (not taken)" };
        let line = format!("{}{taken}: {} | {}\n", muscle.id(), parts(Side::Left), parts(Side::Right));
        text.push_str(&line);
    }
    if *plan.kitchen() != Kitchen::default() {
        let kitchen = format!("kitchen {:?}\n", plan.kitchen());
        text.push_str(&kitchen);
    }
    let weighings = plan.weighings().iter();
    let weighings = weighings.map(|one| format!("{:?} {} g\n", one.target, one.mass.to_grams()));
    text.extend(weighings);
    text.extend((!plan.own().is_table()).then(|| format!("{:?}\n", plan.own())));
    let wounds: Vec<String> = plan.wounds().iter().map(|wound| format!("{wound:?}\n")).collect();
    text.push_str(&wounds.concat());
    text
}
