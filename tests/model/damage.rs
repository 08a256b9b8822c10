//! Damaged links, exhaustively: every single slip and every loss of an end is noticed, nothing is mended.

use data_encoding::BASE64URL_NOPAD;
use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::Animal;
use hindsaddle_model::link::{LONGEST, LinkError, Names};
use hindsaddle_model::plan::{Action, Division, Part, Plan};
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::units::Length;
use hindsaddle_tests::{random_plan, read, with, write};

const ALPHABET: &str = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// Bits, written as text, as a link with a right checksum.
fn signed(bits: &str) -> String {
    let mut bytes: Vec<u8> = bits
        .as_bytes()
        .chunks(8)
        .map(|chunk| {
            chunk.iter().enumerate().fold(0, |byte, (at, bit)| byte | u8::from(*bit == b'1') << (7 - at))
        })
        .collect();
    let checksum = crc::Crc::<u16>::new(&crc::CRC_16_IBM_SDLC).checksum(&bytes);
    bytes.extend(checksum.to_be_bytes());
    format!("1{}", BASE64URL_NOPAD.encode(&bytes))
}

fn in_bits(bytes: &[u8]) -> String {
    let bits = bytes.iter().flat_map(|byte| (0..8).rev().map(move |bit| byte >> bit & 1 == 1));
    bits.map(|bit| if bit { '1' } else { '0' }).collect()
}

/// The bits of a link without its checksum.
fn bits(link: &str) -> String {
    let bytes = BASE64URL_NOPAD.decode(&link.as_bytes()[1..]).unwrap();
    in_bits(&bytes[..bytes.len() - 2])
}

/// Every character of a link, put in the place of every other. A checksum of 16 bits catches every burst of
/// up to 16 bits, so there is no luck in this.
#[test]
fn every_single_slip_is_refused() {
    for plan in [Plan::new(Animal::example()), random_plan(1), random_plan(2)] {
        let text = write(&plan, Names::Included);
        for at in 0..text.len() {
            for other in ALPHABET.chars().filter(|other| !text[at..].starts_with(*other)) {
                let slipped = format!("{}{other}{}", &text[..at], &text[at + 1..]);
                let refused = read(&slipped).expect_err(&slipped);
                let expected = match (at, other) {
                    (0, '4'..='9') => &[LinkError::Newer][..],
                    (0, '1' | '2' | '3') => &[LinkError::Mistyped, LinkError::CutShort],
                    (0, 'L') => &[LinkError::Unknown, LinkError::Lesson],
                    (0, _) => &[LinkError::Unknown],
                    _ => &[LinkError::Mistyped, LinkError::CutShort],
                };
                assert!(expected.contains(&refused), "{slipped}: {refused:?}");
            }
        }
    }
}

/// Two neighbours that changed places: eleven bits or twelve, so a burst as well.
#[test]
fn every_pair_that_changed_places_is_refused() {
    let text = write(&random_plan(4), Names::Included);
    for at in 1..text.len() - 1 {
        let mut swapped = text.clone().into_bytes();
        swapped.swap(at, at + 1);
        let swapped = String::from_utf8(swapped).unwrap();
        assert!(swapped == text || read(&swapped).is_err(), "{swapped}");
    }
}

/// A link that lost its end is refused; one that lost three characters or more is known to be cut short.
#[test]
fn every_lost_end_is_refused() {
    for seed in 0..40 {
        let text = write(&random_plan(seed), Names::Included);
        for lost in 1..text.len() {
            let left = &text[..text.len() - lost];
            let refused = read(left).expect_err(left);
            if lost >= 3 {
                assert_eq!(refused, LinkError::CutShort, "seed {seed}: {lost} characters of {text} lost");
            }
        }
    }
}

/// Of the sixty-four slips possible in the middle of a link, most are called what they are.
#[test]
fn a_slip_in_the_middle_is_mostly_called_mistyped() {
    let text = write(&random_plan(8), Names::Included);
    let (mut mistyped, mut all) = (0, 0);
    for at in text.len() / 4..text.len() * 3 / 4 {
        for other in ALPHABET.chars().filter(|other| !text[at..].starts_with(*other)) {
            let slipped = format!("{}{other}{}", &text[..at], &text[at + 1..]);
            mistyped += u32::from(read(&slipped) == Err(LinkError::Mistyped));
            all += 1;
        }
    }
    assert!(mistyped * 2 > all, "{mistyped} of {all}");
}

#[test]
fn a_text_is_looked_at_up_to_its_limit_and_no_further() {
    let long = |length: usize| format!("1{}", "A".repeat(length - 1));
    assert_ne!(read(&long(LONGEST)), Err(LinkError::TooLong));
    assert_eq!(read(&long(LONGEST + 1)), Err(LinkError::TooLong));
}

#[test]
fn each_kind_of_nonsense_is_named() {
    let text = write(&Plan::new(Animal::example()), Names::LeftOut);
    let cases: [(String, LinkError); 16] = [
        (String::new(), LinkError::Empty),
        ("  \n".into(), LinkError::Empty),
        ("#".into(), LinkError::Empty),
        ("...".into(), LinkError::Empty),
        ("1".into(), LinkError::CutShort),
        ("1AA".into(), LinkError::CutShort),
        (format!("2{}", &text[1..]), LinkError::Mistyped),
        (format!("4{}", &text[1..]), LinkError::Newer),
        (format!("9{}", &text[1..]), LinkError::Newer),
        (format!("0{}", &text[1..]), LinkError::Unknown),
        ("äöü".into(), LinkError::Unknown),
        (format!("{text}ä"), LinkError::Character),
        (format!("{text}="), LinkError::Character),
        (format!("{}+{}", &text[..4], &text[5..]), LinkError::Character),
        (format!("{} {}", &text[..4], &text[4..]), LinkError::Character),
        (format!("{text}{text}"), LinkError::Mistyped),
    ];
    for (damaged, expected) in cases {
        assert_eq!(read(&damaged), Err(expected), "{damaged:?}");
    }
}

/// A white-tailed doe of typical weight and usual everything, field by field, in the bits of version 1.
fn fields() -> Vec<(&'static str, String)> {
    [
        ("species", "0000"),
        ("sex", "1"),
        ("age", "10"),
        ("condition", "00"),
        ("weighed", "000"),
        ("shot", "01"),
        ("care", "01"),
        ("hung", "0000"),
        ("table", "1"),
        ("packs", "1"),
        ("taken", "1"),
        ("first muscle", "1"),
        ("other muscles", "1111111111111111111111111"),
        ("title", "1"),
    ]
    .map(|(field, bits)| (field, bits.to_owned()))
    .to_vec()
}

/// That plan as a link, with some fields said otherwise.
fn said(otherwise: &[(&str, &str)]) -> String {
    let mut all = fields();
    for (field, bits) in otherwise {
        all.iter_mut().find(|(name, _)| name == field).unwrap().1 = bits.replace(' ', "");
    }
    signed(&all.into_iter().map(|(_, bits)| bits).collect::<String>())
}

/// The same plan said at length, with a right checksum, is refused: an explicit usual is not how a plan is
/// written. The same form with a value that is not the usual one is how it is written, and opens.
#[test]
fn a_usual_thing_said_at_length_is_refused() {
    let (pound, other) = (format!("10{:013b}", 454), format!("10{:013b}", 900));
    let packs = |last: &str| format!("0 01 00001 00 00 {pound} {last}");
    let taken = |last: &str| format!("0 {} {last}", "1".repeat(25));
    let (inch, thinner) = (format!("0 1 00 011 0 {:010b}", 254), format!("0 1 00 011 0 {:010b}", 250));
    for (field, usual, unusual) in [
        ("table", "0 0100 1", "0 0101 1"),
        ("packs", &packs(&pound), &packs(&other)),
        ("taken", &taken("0"), &taken("1")),
        ("first muscle", "0 1 00 011 1", "0 1 00 000"),
        ("first muscle", &inch, &thinner),
        ("first muscle", "0 0 00 110 00 110", "0 0 00 110 00 111"),
        ("title", "0 00000000", "0 00000001 01000001"),
    ] {
        assert_eq!(read(&said(&[(field, usual)])), Err(LinkError::Impossible), "{field}: {usual}");
        let written = said(&[(field, unusual)]);
        let plan = read(&written).unwrap_or_else(|error| panic!("{field}: {unusual}: {error:?}"));
        assert_eq!(write(&plan, Names::Included), written, "{field}: {unusual}");
    }
    let short: String = fields().into_iter().map(|(_, bits)| bits).collect();
    assert_eq!(bits(&said(&[])), format!("{short:0<56}"));
    assert!(read(&said(&[])).is_ok());
    for (what, long) in
        [("padding that is not zero", format!("{short:0<55}1")), ("a byte behind", format!("{short:0<64}"))]
    {
        assert_eq!(read(&signed(&long)), Err(LinkError::Impossible), "{what}");
    }
}

/// Values that fit their bits and mean nothing are refused; beside each, one that means something and opens.
#[test]
fn a_right_checksum_does_not_make_nonsense_a_plan() {
    let live = |grams: u32| format!("001{grams:020b}");
    let girth = |tenths: u32| format!("101{tenths:015b}");
    let steak = |tenths: u32| format!("0 1 00 011 0 {tenths:010b}");
    let parts = |first: u32| format!("0 1 01 {first:07b} 110 111");
    let pieces = |pieces: u32| format!("0 01 {pieces:05b} 00 00 00 00");
    let weight = |grams: u32| format!("0 00 00 00 00 10 {grams:013b}");
    let title = |bytes: &[u8]| format!("0 {:08b} {}", bytes.len(), in_bits(bytes));
    let cases: Vec<(&str, String, String)> = vec![
        ("species", "1100".into(), "1011".into()),
        ("condition", "10".into(), "11".into()),
        ("weighed", "110".into(), "000".into()),
        ("weighed", "111".into(), "000".into()),
        ("weighed", live(0), live(50_000)),
        ("weighed", live(408_233), live(200_000)),
        ("weighed", girth(1000), girth(9144)),
        ("shot", "11".into(), "10".into()),
        ("care", "11".into(), "10".into()),
        ("hung", "1111".into(), "1110".into()),
        ("table", "0 0000 1".into(), "0 0001 1".into()),
        ("table", "0 1101 1".into(), "0 1100 1".into()),
        ("packs", pieces(0), pieces(2)),
        ("packs", pieces(25), pieces(24)),
        ("packs", weight(99), weight(100)),
        ("packs", weight(5001), weight(5000)),
        ("packs", "0 11 00 00 00 00".into(), "0 00 00 00 00 00".into()),
        // The first muscle is the top round, which gives no chops.
        ("first muscle", "0 1 00 100 1".into(), "0 1 00 101 1".into()),
        ("first muscle", steak(29), steak(30)),
        ("first muscle", steak(1021), steak(1020)),
        ("first muscle", parts(0), parts(1)),
        ("first muscle", parts(100), parts(99)),
        ("first muscle", parts(127), parts(99)),
        ("title", title(&[0xff, 0xfe]), title("ä".as_bytes())),
        ("title", title(b" doe"), title(b"doe")),
        ("title", title(b"a\nb"), title(b"a b")),
        ("title", title(&[b'x'; 41]), title(&[b'x'; 40])),
    ];
    for (field, nonsense, sense) in cases {
        assert_eq!(read(&said(&[(field, &nonsense)])), Err(LinkError::Impossible), "{field}: {nonsense}");
        let opened = read(&said(&[(field, &sense)]));
        assert!(opened.is_ok(), "{field}: {sense}: {opened:?}");
    }
    // Scraps have no length to divide: the pelvic trim is the eighth muscle.
    let scraps = |division: &str| format!("{}0 1 {division}{}", "1".repeat(6), "1".repeat(18));
    let divided = scraps("01 0110010 110 111");
    assert_eq!(read(&said(&[("other muscles", &divided)])), Err(LinkError::Impossible));
    assert!(read(&said(&[("other muscles", &scraps("00 111"))])).is_ok());
    // A fawn is not in milk; a roe is not 900 lb; a doe is not in rut.
    let fawn = [("age", "00"), ("condition", "11")];
    assert_eq!(read(&said(&fawn)), Err(LinkError::Impossible));
    assert!(read(&said(&fawn[..1])).is_ok());
}

/// How long links may be: less than 100 characters for a usual plan with the longest title,
/// and less than 160 with every muscle changed.
#[test]
fn links_with_every_muscle_changed_are_short() {
    let usual = Plan::new(Animal::example());
    let titled = with(&usual, Action::SetTitle("A title of forty characters, all ASCII .".into()));
    let mut lengths = vec![
        ("usual", write(&usual, Names::LeftOut).len(), 100),
        ("titled", write(&titled, Names::Included).len(), 100),
    ];
    // Another product on both sides, or on each side another, at the product's usual size.
    let (mut even, mut uneven) = (usual.clone(), usual.clone());
    let others = |muscle: Muscle| {
        Product::ALL
            .into_iter()
            .map(Cut::usual)
            .filter(move |cut| usual_cut(muscle) != *cut)
            .filter(move |cut| hindsaddle_model::rules::check(muscle, *cut, None).is_ok())
    };
    for muscle in Muscle::ALL {
        let other = others(muscle).next().unwrap();
        even = with(&even, Action::Assign { muscle, sides: Sides::Both, cut: other });
        uneven = with(&uneven, Action::Assign { muscle, sides: Sides::One(Side::Left), cut: other });
        let third = others(muscle).nth(1).unwrap_or(Cut::Discard);
        uneven = with(&uneven, Action::Assign { muscle, sides: Sides::One(Side::Right), cut: third });
    }
    for muscle in Muscle::ALL {
        assert!(*even.division(muscle, Side::Left) != Division::whole(usual_cut(muscle)));
        assert!(!uneven.is_even(muscle));
    }
    lengths.push(("every muscle changed", write(&even, Names::LeftOut).len(), 160));
    lengths.push(("every muscle changed and sides apart", write(&uneven, Names::LeftOut).len(), 160));
    for (what, length, most) in &lengths {
        assert!(length < most, "{what}: {length} of {most}; all: {lengths:?}");
    }
}

fn usual_cut(muscle: Muscle) -> Cut {
    hindsaddle_model::plan::usual(muscle).single().unwrap()
}

/// The largest plan there is still fits: four parts on each side of every muscle that can be divided, each at
/// a size of its own, and the longest title in the widest letters.
#[test]
fn the_largest_plan_fits() {
    let mut plan = Plan::new(Animal::example());
    plan = with(&plan, Action::SetTitle("鹿".repeat(40)));
    for muscle in Muscle::ALL {
        for (side, mm) in [(Side::Left, 11.1), (Side::Right, 12.3)] {
            let parts = |percent| Part { percent, cut: Cut::Stew(Length::mm(mm + f64::from(percent))) };
            let division = Division::new([10, 20, 30, 40].map(parts).to_vec()).unwrap();
            let action = Action::Divide { muscle, sides: Sides::One(side), division };
            if let Ok(applied) = plan.apply(action) {
                plan = applied.plan;
            }
        }
    }
    let text = write(&plan, Names::Included);
    assert!(text.len() <= LONGEST, "{}", text.len());
    assert_eq!(read(&text), Ok(plan));
}
