//! Published and derived figures of the kitchen, each with its source.

use hindsaddle_model::fat::{FatContent, NamedFat, Square};
use hindsaddle_model::freezer::{Freezer, LoadRule, room};
use hindsaddle_model::grind::{Patty, Price};
use hindsaddle_model::heat::{Cold, Conductivity, Faces, SurfaceTransfer, is_too_thick};
use hindsaddle_model::packing::Appetite;
use hindsaddle_model::product::Product;
use hindsaddle_model::shape::Block;
use hindsaddle_model::sources::Source;
use hindsaddle_model::tables::{self, DEER_FAT, FATS};
use hindsaddle_model::thaw::{Pace, Piece, thawing_time};
use hindsaddle_model::units::{Density, Length, Mass, Temperature, Volume};
use hindsaddle_model::wrap::{Fold, sheet};

#[track_caller]
fn near(value: f64, expected: f64, tolerance: f64) {
    assert!((value - expected).abs() <= tolerance, "{value}, not {expected}");
}

fn load(cubic_feet: f64, pace: LoadRule) -> f64 {
    let size = Volume::cubic_feet(cubic_feet);
    Freezer { size, free: size, pace }.daily_load().to_pounds()
}

/// University of Minnesota Extension 2017: 20 cubic feet at 2 to 3 lb take 40 to 60 lb in 24 h.
#[test]
fn twenty_cubic_feet_take_40_to_60_pounds_a_day() {
    near(load(20.0, LoadRule::Cautious), 40.0, 1e-9);
    near(load(20.0, LoadRule::Full), 60.0, 1e-9);
}

/// Appliance manual, chart based on USDA recommendations: 15, 18 and 23 cubic feet take 30, 36 and 46 lb of
/// meat.
#[test]
fn the_chart_for_meat_is_the_cautious_rule() {
    for (cubic_feet, pounds) in [(15.0, 30.0), (18.0, 36.0), (23.0, 46.0)] {
        near(load(cubic_feet, LoadRule::Cautious), pounds, 1e-9);
    }
}

/// NC State 2004: 35 lb in a cubic foot, so 50 lb take 1.43; 30 and 40 lb give 1.67 and 1.25 (derived).
#[test]
fn fifty_pounds_take_1_43_cubic_feet() {
    let room = room(Mass::pounds(50.0)).map(Volume::to_cubic_feet);
    near(room.likely(), 1.43, 0.01);
    near(room.high(), 1.67, 0.01);
    near(room.low(), 1.25, 0.01);
}

/// USDA FDC 172602: a patty of 4 oz raw weighs 85 g cooked, 0.750.
#[test]
fn a_patty_keeps_three_quarters() {
    let kept = tables::COOKED_YIELD.spread.likely();
    near((Mass::ounces(4.0) * kept).to_grams(), 85.0, 0.5);
    near(kept, 0.750, 0.005);
}

fn percent(percent: f64) -> FatContent {
    FatContent::percent(percent)
}

fn square(first: f64, second: f64, target: f64) -> Square {
    Square::new(percent(first), percent(second), percent(target)).unwrap()
}

/// A meat-science lecture's question; the answer is arithmetic: 10 % and 25 % to 20 % of 1000 lb.
#[test]
fn a_third_of_the_lean_and_two_thirds_of_the_trim() {
    let (lean, trim) = square(10.0, 25.0, 20.0).of_total(Mass::pounds(1000.0));
    near(lean.to_pounds(), 333.33, 0.01);
    near(trim.to_pounds(), 666.67, 0.01);
}

/// A sausage maker's printed answer: 30 % and 12 % to 20 % is 8 parts to 10.
#[test]
fn eight_parts_of_belly_to_ten_of_beef() {
    let (belly, beef) = square(30.0, 12.0, 20.0).of_total(Mass::pounds(18.0));
    near(belly.to_pounds(), 8.0, 1e-9);
    near(beef.to_pounds(), 10.0, 1e-9);
    near(square(30.0, 12.0, 20.0).added_to(Mass::pounds(8.0)).unwrap().to_pounds(), 10.0, 1e-9);
}

/// Fat and price a pound of the two ingredients, the masses, and the price of the mix in cents.
type Blend = ((f64, f64), (f64, f64), (f64, f64), f64);

#[track_caller]
fn blended((first, second, masses, cents): Blend) {
    let (one, other) = square(first.0, second.0, 28.0).of_total(Mass::pounds(500.0));
    near(one.to_pounds(), masses.0, 0.01);
    near(other.to_pounds(), masses.1, 0.01);
    let cost = Price::per_pound(first.1).of(one).amount() + Price::per_pound(second.1).of(other).amount();
    assert_eq!((cost / 500.0 * 100.0).round(), cents);
}

/// Georgia FFA 2016 state formulation problem: 28 % of 500 lb from shoulder and three trims, with the price
/// a pound as printed.
#[test]
fn shoulder_with_three_trims() {
    blended(((23.0, 1.78), (50.0, 1.89), (407.41, 92.59), 180.0));
    blended(((23.0, 1.78), (60.0, 1.69), (432.43, 67.57), 177.0));
    blended(((23.0, 1.78), (70.0, 1.56), (446.81, 53.19), 176.0));
}

/// The same problem: ham and three trims.
#[test]
fn ham_with_three_trims() {
    blended(((20.0, 2.45), (50.0, 1.89), (366.67, 133.33), 230.0));
    blended(((20.0, 2.45), (60.0, 1.69), (400.0, 100.0), 230.0));
    blended(((20.0, 2.45), (70.0, 1.56), (420.0, 80.0), 231.0));
}

/// USDA fat figures (deer 2.42 %, pork backfat 88.69 %); arithmetic: 10 lb of venison to 10 and 20 %.
#[test]
fn fat_for_ten_pounds_of_venison() {
    let backfat = FATS[NamedFat::PorkBackFat as usize].content.value;
    assert_eq!((DEER_FAT.value.to_percent(), backfat.to_percent()), (2.42, 88.69));
    for (target, pounds) in [(10.0, 0.963), (20.0, 2.559)] {
        let square = Square::new(DEER_FAT.value, backfat, percent(target)).unwrap();
        near(square.added_to(Mass::pounds(10.0)).unwrap().to_pounds(), pounds, 0.001);
    }
}

/// "Add 10 %" and "10 % fat" differ, because fat tissue is not all fat: 1 part in 10 of backfat gives 11.05 %,
/// 2 in 10 give 19.67 % (derived from the same figures).
#[test]
fn fat_tissue_is_not_all_fat() {
    for (tenths, fat) in [(1.0, 11.05), (2.0, 19.67)] {
        let (_, added) = square(2.42, 88.69, fat).of_total(Mass::pounds(10.0));
        near(added.to_pounds(), tenths, 0.001);
    }
}

/// Iowa State, portion control: 1 lb of boneless ground meat or stew serves 4.
#[test]
fn a_pound_serves_four() {
    assert_eq!(Mass::pounds(1.0) / tables::portion(Appetite::Light).raw, 4.0);
    // Extension-service figure: three a pound for roasts, so 8 servings are 2.67 lb (printed: about 2 1/2).
    near((tables::portion(Appetite::Hearty).raw * 8.0).to_pounds(), 2.67, 0.01);
}

/// NDSU FN613 (1 1/2 times, twice round) and an appliance manual (a third longer): a pack of 6 x 4 x 2 in.
#[test]
fn sheets_for_a_pack_of_6_by_4_by_2_inches() {
    let pack = Block::new(Length::inches(6.0), Length::inches(4.0), Length::inches(2.0));
    near(pack.girth().to_inches(), 12.0, 1e-9);
    let roll = Length::inches(15.0);
    for (fold, inches) in [
        (Fold::Butcher, 24.0),
        (Fold::Drugstore, 18.0),
        (Fold::DrugstoreShort, 16.0),
        // Common practice, no source: as long as the roll is wide.
        (Fold::Square, 15.0),
    ] {
        near(sheet(&pack, fold, roll).unwrap().to_inches(), inches, 1e-9);
    }
}

/// Plank's equation for a slab, h = 8 (the slow end measured in home freezers, Anderson et al. 2004), k 1.4,
/// air -18, freezing point -1.7, start 4 degrees C, 1050 kg/m3.
#[test]
fn an_inch_freezes_in_8_2_hours_and_three_not_in_a_day() {
    let hours = |cold: Cold, inches: f64, faces| cold.freezing_time(Length::inches(inches), faces).to_hours();
    let still = Cold::default();
    let transfer = SurfaceTransfer::watts_per_square_metre_kelvin;
    assert_eq!(still.surface, transfer(8.0));
    assert_eq!(still.conductivity, Conductivity::watts_per_metre_kelvin(1.4));
    assert_eq!((still.air, still.freezing_point), (Temperature::celsius(-18.0), Temperature::celsius(-1.7)));
    assert_eq!(still.density, Density::kilograms_per_cubic_metre(1050.0));
    // Each row of the derived table: inches, then h = 5, 8 and 15.
    for (inches, times) in [
        (0.75, [9.7, 6.1, 3.3]),
        (1.0, [13.0, 8.2, 4.5]),
        (1.5, [19.7, 12.6, 7.0]),
        (2.0, [26.6, 17.0, 9.6]),
        (3.0, [40.7, 26.4, 15.3]),
        (4.0, [55.5, 36.4, 21.6]),
    ] {
        for (surface, time) in [5.0, 8.0, 15.0].into_iter().zip(times) {
            near(hours(Cold { surface: transfer(surface), ..still }, inches, Faces::Both), time, 0.1);
        }
    }
    // One face only is twice the thickness: 17.0 and 36.4 h.
    near(hours(still, 1.0, Faces::One), 17.0, 0.1);
    near(hours(still, 2.0, Faces::One), 36.4, 0.1);
    assert!(!is_too_thick(Length::inches(2.0)) && is_too_thick(Length::inches(2.1)));
}

/// FSIS wording (24 h for 5 lb) and a thawing guide (3 to 5 hours a pound for a small roast).
#[test]
fn five_pounds_thaw_in_a_day_and_a_small_roast_in_9_to_15_hours() {
    let of = |piece, pounds, source| {
        let row = tables::THAW.iter().find(|row| row.piece == piece && row.source == source).unwrap();
        let hours = |pace: Pace| pace.time(Mass::pounds(pounds)).to_hours();
        (hours(row.pace.0), hours(row.pace.1))
    };
    let (least, most) = of(Piece::Large, 5.0, Source::FsisThaw);
    near(least, 24.0, 1e-9);
    near(most, 24.0, 1e-9);
    let (least, most) = of(Piece::SmallRoast, 3.0, Source::ThawPage);
    near(least, 9.0, 1e-9);
    near(most, 15.0, 1e-9);
    // A pound of ground meat: a full day.
    assert_eq!(of(Piece::Loose, 1.0, Source::FsisThaw), (24.0, 24.0));
}

/// The sources together: kitchen pages give 12 to 14 h for steaks, 4 to 7 h a pound for a large roast (FSIS wording: 4.8).
#[test]
fn a_package_thaws_between_the_quickest_source_and_the_slowest() {
    let hours = |product, pounds| {
        let (low, high) = thawing_time(product, Mass::pounds(pounds));
        (low.to_hours(), high.to_hours())
    };
    let near_both = |(low, high), (least, most)| {
        near(low, least, 1e-9);
        near(high, most, 1e-9);
    };
    near_both(hours(Product::Roast, 5.0), (20.0, 35.0));
    near_both(hours(Product::Roast, 3.0), (9.0, 15.0));
    near_both(hours(Product::Steak, 1.0), (12.0, 14.0));
    near_both(hours(Product::Chop, 0.5), (12.0, 14.0));
    near_both(hours(Product::Grind, 1.0), (24.0, 24.0));
    near_both(hours(Product::Stew, 1.5), (24.0, 24.0));
}

/// 335e3 x 0.7357 + 3304.6 x 5.7 + 1767.0 x 8.15 J/kg (derived): what is taken out between 4 and -18 degrees C.
#[test]
fn the_heat_of_a_pack_is_the_sum_of_three() {
    let joules = 335.0e3 * 0.7357 + 3304.6 * 5.7 + 1767.0 * 8.15;
    near(Cold::default().heat().to_joules_per_kilogram(), joules, 1e-6);
    // The rule by water content, as the source has it: 4.19 and 2.1 for water, 0.84 for the rest.
    let water = 0.7357;
    near(
        tables::HEAT.above.value.to_joules_per_kilogram_kelvin(),
        4190.0 * water + 840.0 * (1.0 - water),
        0.1,
    );
    near(
        tables::HEAT.below.value.to_joules_per_kilogram_kelvin(),
        2100.0 * water + 840.0 * (1.0 - water),
        0.1,
    );
}

/// FoodSafety.gov (venison 160 degrees F) and Penn State against Michigan State, Wisconsin and Canada (165). The
/// federal figure is the default.
#[test]
fn what_venison_is_cooked_to_is_shown_with_its_disagreement() {
    let degrees = tables::COOK_TO.map(|fact| fact.value.to_fahrenheit().round());
    assert_eq!(degrees, [160.0, 160.0, 165.0, 165.0, 165.0]);
    assert_eq!(tables::COOK_TO[0].source, Source::FederalVenison);
    near(tables::COOK_TO[0].value.to_celsius(), 71.0, 0.2);
    near(tables::COOK_TO[4].value.to_celsius(), 74.0, 0.2);
}

/// A cooking page and Michigan State: 3/8 in (10 mm), then 3/16 in (4.5 mm); a lecture: grind at 35 degrees F, and
/// FSIS: at or below 40.
#[test]
fn plates_and_cold_of_the_grinder() {
    let holes = tables::PLATES.each_ref().map(|row| row.hole.value.to_mm());
    near(holes[0], 10.0, 0.5);
    near(holes[1], 4.5, 0.3);
    near(tables::GRIND_BEST.value.to_fahrenheit(), 35.0, 1e-9);
    near(tables::GRIND_WARMEST.value.to_fahrenheit(), 40.0, 1e-9);
    assert_eq!((tables::BURGER_FAT.spread.likely(), tables::SAUSAGE_FAT.spread.low()), (10.0, 20.0));
}

/// Michigan State University Extension: four patties of 1/4 lb or three of 1/3 lb to the pound.
#[test]
fn patties_are_four_or_three_to_the_pound() {
    assert_eq!(Mass::pounds(1.0) / Patty::FourToOne.mass(), 4.0);
    assert_eq!(Mass::pounds(1.0) / Patty::ThreeToOne.mass(), 3.0);
}

/// Derived from the density: a pound is 26.05 in3, so 0.58 in thick on 45 in2; 2 lb are 0.52 in on 100 in2.
#[test]
fn flat_packs_are_as_thick_as_their_density_says() {
    let thickness = |pounds: f64, square_inches: f64| {
        let area = hindsaddle_model::units::Area::square_inches(square_inches);
        (Mass::pounds(pounds) / hindsaddle_model::freezer::MEAT / area).to_inches()
    };
    near(thickness(1.0, 45.0), 0.58, 0.005);
    near(thickness(2.0, 100.0), 0.52, 0.005);
}
