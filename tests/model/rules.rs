//! What may become what, and how a change is refused.

use hindsaddle_model::anatomy::{Muscle, Region, Sides};
use hindsaddle_model::animal::Animal;
use hindsaddle_model::packing::{Appetite, PackBy};
use hindsaddle_model::plan::{Action, Division, Losses, MOST_HUNG_DAYS, Part, Plan};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::{Refusal, Verdict, verdict};
use hindsaddle_model::units::{Length, Mass};

/// The uses that the muscle catalogue allows, letter by letter: roast, steak, chop, stew, grind.
const ALLOWED: [(&str, &str); Muscle::COUNT] = [
    ("top_round", "rs_wg"),
    ("bottom_round", "rs_wg"),
    ("eye_round", "rs_wg"),
    ("knuckle", "rs_wg"),
    ("sirloin", "rs_wg"),
    ("tri_tip", "rs_wg"),
    ("hind_shank", "r__wg"),
    ("pelvic_trim", "___wg"),
    ("backstrap", "rsc__"),
    ("tenderloin", "rsc__"),
    ("back_trim", "___wg"),
    ("flat_iron", "rs_wg"),
    ("mock_tender", "r__wg"),
    ("clod", "rs_wg"),
    ("under_blade", "_s_wg"),
    ("arm", "___wg"),
    ("fore_shank", "r__wg"),
    ("chuck", "rs_wg"),
    ("cape", "___wg"),
    ("neck_straps", "___wg"),
    ("neck", "r__wg"),
    ("brisket", "r__wg"),
    ("rib_meat", "___wg"),
    ("flank_steak", "_s_wg"),
    ("flank_sheets", "___wg"),
    ("skirt", "_s_wg"),
];

/// Bottom round as steak is in the catalogue both allowed and discouraged ("thick grilled steak"); stew and
/// grind of the sirloin likewise ("only if damaged"). There the discouragement wins.
fn is_both(muscle: Muscle, product: Product) -> bool {
    matches!(
        (muscle, product),
        (Muscle::BottomRound, Product::Steak) | (Muscle::Sirloin, Product::Stew | Product::Grind)
    )
}

fn assign(plan: &Plan, muscle: Muscle, cut: Cut) -> Result<Plan, Refusal> {
    plan.apply(Action::Assign { muscle, sides: Sides::Both, cut }).map(|applied| applied.plan)
}

fn example() -> Plan {
    Plan::new(Animal::example())
}

#[test]
fn every_use_is_judged_as_the_catalogue_says() {
    for (id, letters) in ALLOWED {
        let muscle = Muscle::from_id(id).unwrap();
        for (product, letter) in Product::ALL.into_iter().zip(letters.chars()) {
            let allowed = matches!(verdict(muscle, product), Verdict::Allowed(_));
            assert_eq!(allowed, letter != '_' && !is_both(muscle, product), "{id} as {}", product.id());
        }
    }
}

#[test]
fn an_impossible_use_is_refused_with_a_way_out_that_works() {
    for muscle in Muscle::ALL {
        for product in Product::ALL {
            let Verdict::Impossible(expected) = verdict(muscle, product) else { continue };
            let Err(Refusal::Impossible { reason, instead, .. }) =
                assign(&example(), muscle, Cut::usual(product))
            else {
                panic!("{muscle:?} became {product:?}")
            };
            assert_eq!(reason, expected);
            assert!(assign(&example(), muscle, Cut::usual(instead)).is_ok());
        }
    }
}

#[test]
fn sizes_out_of_range_are_refused() {
    let plan = example();
    let steak = |mm: f64| assign(&plan, Muscle::Backstrap, Cut::Steak(Length::mm(mm)));
    for mm in [0.0, -5.0, f64::NAN, 2000.0] {
        assert!(matches!(steak(mm), Err(Refusal::ThicknessOutOfRange { .. })), "{mm} mm");
    }
    let long = Cut::Roast(RoastSize::Length(Length::cm(50.0)));
    assert!(matches!(assign(&plan, Muscle::Knuckle, long), Err(Refusal::LongerThanMuscle { .. })));
    let heavy = Cut::Roast(RoastSize::Weight(Mass::kilograms(90.0)));
    assert!(matches!(assign(&plan, Muscle::Knuckle, heavy), Err(Refusal::RoastWeightOutOfRange { .. })));
    let cube = Cut::Stew(Length::mm(0.0));
    assert!(matches!(assign(&plan, Muscle::Knuckle, cube), Err(Refusal::CubeOutOfRange { .. })));
}

#[test]
fn parts_have_to_add_up() {
    let parts = |percents: &[u8]| {
        Division::new(percents.iter().map(|percent| Part { percent: *percent, cut: Cut::Grind }).collect())
    };
    assert_eq!(parts(&[50, 40]), Err(Refusal::PartsDoNotAddUp { total: 90 }));
    assert_eq!(parts(&[90, 40]), Err(Refusal::PartsDoNotAddUp { total: 130 }));
    assert_eq!(parts(&[]), Err(Refusal::PartsDoNotAddUp { total: 0 }));
    assert_eq!(parts(&[100, 0]), Err(Refusal::EmptyPart));
    assert!(matches!(parts(&[20; 5]), Err(Refusal::TooManyParts { .. })));
    let scraps =
        Action::Divide { muscle: Muscle::BackTrim, sides: Sides::Both, division: parts(&[50, 50]).unwrap() };
    assert!(matches!(example().apply(scraps), Err(Refusal::NoLengthToDivide { .. })));
}

#[test]
fn settings_out_of_range_are_refused() {
    let plan = example();
    for people in [0, 13, 255] {
        let refused = plan.apply(Action::SetTable { people, appetite: Appetite::Light });
        assert!(matches!(refused, Err(Refusal::PeopleOutOfRange { .. })), "{people}");
    }
    let pack = |by| plan.apply(Action::SetPack { product: Product::Grind, by });
    assert!(matches!(pack(PackBy::Pieces(0)), Err(Refusal::PiecesOutOfRange { .. })));
    assert!(matches!(pack(PackBy::Weight(Mass::ZERO)), Err(Refusal::PackWeightOutOfRange { .. })));
    assert!(matches!(pack(PackBy::Weight(Mass::grams(f64::NAN))), Err(Refusal::PackWeightOutOfRange { .. })));
    let losses = Losses { hung_days: MOST_HUNG_DAYS + 1, ..plan.losses() };
    assert!(matches!(plan.apply(Action::SetLosses(losses)), Err(Refusal::HungTooLong { .. })));
    for title in ["x".repeat(41), "two\nlines".into()] {
        assert!(matches!(plan.apply(Action::SetTitle(title)), Err(Refusal::Title { .. })));
    }
}

#[test]
fn a_whole_region_to_grind_is_one_action_and_leaves_the_rest() {
    let plan = example();
    let applied =
        plan.apply(Action::AssignRegion { region: Region::HindLeg, product: Product::Grind }).unwrap();
    assert!(applied.skipped.is_empty());
    for muscle in Muscle::ALL {
        let side = hindsaddle_model::anatomy::Side::Left;
        let is_hind = Region::HindLeg.muscles().any(|hind| hind == muscle);
        let expected = if is_hind { &Division::whole(Cut::Grind) } else { plan.division(muscle, side) };
        assert_eq!(applied.plan.division(muscle, side), expected, "{muscle:?}");
    }
}
