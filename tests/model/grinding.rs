//! The tub through the grinder: nothing is lost, and what cannot be reached says what can.

use hindsaddle_model::fat::{Added, FatContent, NamedFat, SquareError};
use hindsaddle_model::grind::{
    GrindError, Grinding, Ground, GroundPacks, Mix, Patty, Plate, Price, Target, Vessel, grind,
};
use hindsaddle_model::packages::{Contents, Fill};
use hindsaddle_model::packing::PACK_WEIGHT_RANGE;
use hindsaddle_model::units::{Mass, Volume};
use proptest::prelude::*;

fn burger(percent: f64, added: Added) -> Grinding {
    Grinding {
        mix: Mix::Burger(Target { fat: FatContent::percent(percent), added }),
        vessel: Vessel::Takes(Mass::pounds(5.0)),
        packs: GroundPacks::Weight(Mass::pounds(1.0)),
        price: None,
    }
}

const BACK_FAT: Added = Added::Fat(NamedFat::PorkBackFat);

fn weight(ground: &Ground) -> f64 {
    ground.packages().iter().map(|package| package.mass).sum::<Mass>().to_grams() + ground.left.to_grams()
}

/// USDA fat figures: 10 lb of venison to 10 % takes 0.963 lb of backfat, so 10.963 lb in three batches of 5 lb.
#[test]
fn ten_pounds_of_trim_to_burger() {
    let price = Some(Price::per_pound(2.0));
    let ground = grind(Mass::pounds(10.0), &Grinding { price, ..burger(10.0, BACK_FAT) }).unwrap();
    assert!((ground.added.to_pounds() - 0.963).abs() < 0.001);
    assert!((ground.cost.unwrap().amount() - 1.926).abs() < 0.002);
    assert_eq!((ground.batches.len(), ground.packages().len()), (3, 11));
    assert_eq!(ground.plates, [Plate::Coarse, Plate::Fine]);
    assert!(ground.has_added_fat() && !ground.is_fatty);
    let all: Mass = ground.batches.iter().map(|batch| batch.lean + batch.added).sum();
    assert!((all - ground.total()).to_grams().abs() < 1e-9);
    assert!((weight(&ground) - ground.total().to_grams()).abs() < 1e-9);
}

#[test]
fn plain_meat_and_lean_for_sausage_stay_as_they_are() {
    for mix in [Mix::Plain, Mix::SausageLean(None)] {
        let ground = grind(Mass::pounds(7.0), &Grinding { mix, ..burger(10.0, BACK_FAT) }).unwrap();
        assert_eq!((ground.added, ground.fat), (Mass::ZERO, FatContent::percent(2.42)));
        assert!(!ground.has_added_fat());
        assert_eq!(ground.plates.len(), if mix == Mix::Plain { 2 } else { 1 });
    }
    let nothing = grind(Mass::ZERO, &burger(10.0, BACK_FAT)).unwrap();
    assert!(nothing.packages().is_empty() && nothing.batches.is_empty());
}

#[test]
fn what_cannot_be_mixed_says_what_can() {
    let percent = FatContent::percent;
    let trim = |fat: f64| Added::PorkTrim(percent(fat));
    let usual = burger(10.0, BACK_FAT);
    let (least, most) = PACK_WEIGHT_RANGE;
    for (grinding, error) in [
        (burger(2.0, BACK_FAT), GrindError::Square(SquareError::TargetBelowBoth { least: percent(2.42) })),
        (burger(90.0, BACK_FAT), GrindError::Square(SquareError::TargetAboveBoth { most: percent(88.69) })),
        (burger(40.0, trim(30.0)), GrindError::Square(SquareError::TargetAboveBoth { most: percent(30.0) })),
        // Only the fat alone is that fat.
        (burger(30.0, trim(30.0)), GrindError::Square(SquareError::TargetAboveBoth { most: percent(30.0) })),
        (burger(2.42, trim(2.42)), GrindError::Square(SquareError::SameFat { both: percent(2.42) })),
        (burger(101.0, BACK_FAT), GrindError::Square(SquareError::NotAPercentage)),
        (burger(f64::NAN, BACK_FAT), GrindError::Square(SquareError::NotAPercentage)),
        (burger(10.0, trim(-1.0)), GrindError::Square(SquareError::NotAPercentage)),
        (
            Grinding { vessel: Vessel::Takes(Mass::ZERO), ..usual },
            GrindError::VesselTooSmall { least: Mass::grams(250.0) },
        ),
        (
            Grinding { vessel: Vessel::Holds(Volume::litres(0.1)), ..usual },
            GrindError::VesselTooSmall { least: Mass::grams(250.0) },
        ),
        (
            Grinding { packs: GroundPacks::Weight(Mass::ZERO), ..usual },
            GrindError::PackOutOfRange { least, most },
        ),
        (
            Grinding { packs: GroundPacks::Patties { patty: Patty::FourToOne, a_pack: 0 }, ..usual },
            GrindError::NoPatties,
        ),
        (Grinding { price: Some(Price::per_pound(-1.0)), ..usual }, GrindError::PriceBelowNothing),
    ] {
        assert_eq!(grind(Mass::pounds(10.0), &grinding), Err(error));
    }
    // A lecture on ground beef: at most 30 % fat. More is noted, not refused.
    assert!(grind(Mass::pounds(10.0), &burger(35.0, BACK_FAT)).unwrap().is_fatty);
}

#[test]
fn patties_fill_packs_and_the_last_bit_is_for_the_pan() {
    let packs = GroundPacks::Patties { patty: Patty::ThreeToOne, a_pack: 4 };
    let ground = grind(Mass::pounds(5.1), &Grinding { mix: Mix::Plain, packs, ..burger(10.0, BACK_FAT) });
    let ground = ground.unwrap();
    let packages = ground.packages();
    assert_eq!(packages.len(), 4);
    assert_eq!(packages[0].contents, Contents::Patties(4));
    assert_eq!((packages[3].contents, packages[3].fill), (Contents::Patties(3), Fill::Short));
    assert!((ground.left.to_pounds() - 0.1).abs() < 1e-9);
}

/// Two thirds of 3 litres (judgement) at 1.06 g/cm3 (Mendez and Keys 1960).
#[test]
fn a_bowl_is_not_filled_to_the_rim() {
    assert!((Vessel::Holds(Volume::litres(3.0)).most().to_grams() - 2120.0).abs() < 1e-9);
}

proptest! {
    #[test]
    fn nothing_is_lost_and_the_mix_has_its_fat(
        tub in 0.1..200.0, target in 2.42..60.0, content in 61.0..100.0, bowl in 0.5..40.0, pack in 100.0..5000.0,
        patties in 0_u8..9,
    ) {
        let packs = match patties {
            0 => GroundPacks::Weight(Mass::grams(pack)),
            a_pack => GroundPacks::Patties { patty: Patty::FourToOne, a_pack },
        };
        let vessel = Vessel::Takes(Mass::kilograms(bowl));
        let added = Added::PorkTrim(FatContent::percent(content));
        let grinding = Grinding { vessel, packs, ..burger(target, added) };
        let ground = grind(Mass::kilograms(tub), &grinding).unwrap();
        let total = ground.total().to_grams();
        // Tons of it in thousands of packages: sums of so many round in their thirteenth digit.
        prop_assert!((weight(&ground) - total).abs() < total * 1e-11);
        let fat = ground.lean.to_grams() * 2.42 + ground.added.to_grams() * content;
        prop_assert!((fat / total - target).abs() < 1e-6);
        for batch in &ground.batches {
            prop_assert!((batch.lean + batch.added).to_grams() <= vessel.most().to_grams() + 1e-3);
        }
    }
}
