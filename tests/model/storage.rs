//! Packages into the freezer, day by day: nothing is lost, nothing waits too long, and if it cannot be done the
//! ways that are offered work.

use hindsaddle_model::forecast::forecast;
use hindsaddle_model::freezer::{
    Arrival, Freezer, FreezerError, LoadRule, Schedule, Trouble, Waits, Way, room, schedule,
};
use hindsaddle_model::packages::{Contents, Fill, Package, packages};
use hindsaddle_model::product::Product;
use hindsaddle_model::tables::SPACE;
use hindsaddle_model::units::{Mass, Volume};
use hindsaddle_tests::random_plan;

fn freezer(cubic_feet: f64) -> Freezer {
    let size = Volume::cubic_feet(cubic_feet);
    Freezer { size, free: size, pace: LoadRule::Cautious }
}

fn pack(product: Product, pounds: f64) -> Package {
    let (contents, mass) = (Contents::Pooled, Mass::pounds(pounds));
    Package { product, contents, mass, fill: Fill::Full, number: 1, of: 1 }
}

fn many(kinds: &[(Product, usize)]) -> Vec<Package> {
    kinds.iter().flat_map(|(product, count)| vec![pack(*product, 1.0); *count]).collect()
}

/// All packed on the first day.
fn at_once(packages: &[Package]) -> Vec<Arrival> {
    packages.iter().map(|package| Arrival { package: *package, day: 0 }).collect()
}

#[track_caller]
fn check(packages: &[Package], freezer: &Freezer, schedule: &Schedule) {
    let mut seen: Vec<usize> = schedule.days.iter().flat_map(|day| day.packages.clone()).collect();
    seen.sort_unstable();
    assert_eq!(seen, (0..packages.len()).collect::<Vec<_>>(), "every package once");
    let mut frozen = Mass::ZERO;
    let total: Mass = packages.iter().map(|package| package.mass).sum();
    for (number, day) in schedule.days.iter().enumerate() {
        assert!(day.mass.to_grams() <= freezer.daily_load().to_grams() + 1e-3);
        for index in &day.packages {
            frozen += packages[*index].mass;
            assert!(number <= usize::from(Waits::of(packages[*index].product).days()));
        }
        assert!((day.frozen - frozen).to_grams().abs() < 1e-6);
        assert!((day.frozen + day.waiting - total).to_grams().abs() < 1e-6);
    }
}

/// Two animals packed four days apart: each waits from its own day, and the days between are left out.
#[test]
fn animals_packed_on_different_days_wait_from_their_own() {
    let all = many(&[(Product::Grind, 40), (Product::Roast, 10), (Product::Grind, 30)]);
    let day = |place: usize| if place < 50 { 0 } else { 4 };
    let arrivals: Vec<Arrival> =
        all.iter().zip(0..).map(|(package, place)| Arrival { package: *package, day: day(place) }).collect();
    let schedule = schedule(&arrivals, &freezer(15.0)).unwrap();
    let days: Vec<(u16, usize)> = schedule.days.iter().map(|day| (day.day, day.packages.len())).collect();
    assert_eq!(days, [(0, 30), (1, 20), (4, 30)]);
    for day in &schedule.days {
        for index in &day.packages {
            let waited = day.day - arrivals[*index].day;
            assert!(waited <= u16::from(Waits::of(all[*index].product).days()));
        }
    }
    // All at once, the third day's ground meat would be too late.
    assert!(matches!(
        hindsaddle_model::freezer::schedule(&at_once(&all), &freezer(15.0)),
        Err(Trouble::TooSlow { .. })
    ));
}

/// A schedule ends with the last day it counts, and what is left then is late.
#[test]
fn the_last_day_that_is_counted_is_the_last() {
    let last = |pounds: usize| -> Vec<Arrival> {
        let all = many(&[(Product::Roast, pounds)]);
        all.iter()
            .zip(0..)
            .map(|(package, place)| Arrival { package: *package, day: if place == 0 { 0 } else { u16::MAX } })
            .collect()
    };
    let fits = schedule(&last(31), &freezer(15.0)).unwrap();
    assert_eq!(fits.days.iter().map(|day| day.day).collect::<Vec<_>>(), [0, u16::MAX]);
    let Err(Trouble::TooSlow { late, .. }) = schedule(&last(32), &freezer(15.0)) else {
        panic!("a day more")
    };
    assert_eq!(late, [31]);
}

/// 15 cubic feet at 2 lb take 30 lb a day (appliance chart); ground meat waits 1 to 2 days (FDA), whole cuts 3 to
/// 5 (FSIS): the cautious ends are 1 and 3.
#[test]
fn ground_meat_goes_first_then_stew_then_whole_cuts() {
    assert_eq!(Waits::ALL.map(Waits::days), [1, 3]);
    let all = many(&[(Product::Roast, 20), (Product::Stew, 20), (Product::Grind, 40)]);
    let freezer = freezer(15.0);
    let schedule = schedule(&at_once(&all), &freezer).unwrap();
    check(&all, &freezer, &schedule);
    let days: Vec<Vec<Product>> = schedule
        .days
        .iter()
        .map(|day| {
            let mut products: Vec<Product> = day.packages.iter().map(|index| all[*index].product).collect();
            products.dedup();
            products
        })
        .collect();
    let (grind, stew, roast) = (Product::Grind, Product::Stew, Product::Roast);
    assert_eq!(days, [vec![grind], vec![grind, stew], vec![roast]]);
    assert_eq!(schedule.days[0].packages.len(), 30, "a day is filled to the pound");
    assert!((schedule.room.likely().to_cubic_feet() - 80.0 / 35.0).abs() < 1e-9);
}

#[test]
fn a_freezer_that_cannot_be_says_what_can() {
    let all = many(&[(Product::Steak, 1)]);
    let (least, most) = (Volume::cubic_feet(0.5), Volume::cubic_feet(100.0));
    for cubic_feet in [0.0, -1.0, 1000.0, f64::NAN] {
        let error = FreezerError::SizeOutOfRange { least, most };
        assert_eq!(schedule(&at_once(&all), &freezer(cubic_feet)), Err(Trouble::Freezer(error)));
    }
    let free = Freezer { free: Volume::cubic_feet(9.0), ..freezer(7.0) };
    let error = FreezerError::FreeOutOfRange { most: Volume::cubic_feet(7.0) };
    assert_eq!(schedule(&at_once(&all), &free), Err(Trouble::Freezer(error)));
    assert!(schedule(&[], &freezer(7.0)).unwrap().days.is_empty());
}

#[test]
fn too_little_room_says_how_much_is_missing() {
    let all = many(&[(Product::Steak, 70)]);
    let tight = Freezer { free: Volume::cubic_feet(1.0), ..freezer(20.0) };
    let Err(Trouble::NoRoom { needs, ways }) = schedule(&at_once(&all), &tight) else {
        panic!("2 cu ft in 1")
    };
    assert!((needs.likely().to_cubic_feet() - 2.0).abs() < 1e-9);
    assert!((needs.high() - room(Mass::pounds(70.0)).high()).to_litres().abs() < 1e-9);
    let [Way::MakeRoom(more), Way::PackLess(less), Way::Commercial(_)] = ways[..] else { panic!("{ways:?}") };
    assert!((more.to_cubic_feet() - 1.0).abs() < 1e-9 && (less.to_pounds() - 35.0).abs() < 1e-9);
    assert!(schedule(&at_once(&all), &Freezer { free: tight.free * 2.001, ..tight }).is_ok());
    assert_eq!(SPACE.map(|fact| fact.value.to_pounds_per_cubic_foot().round()), [30.0, 35.0, 40.0]);
}

/// A 5 cubic foot freezer takes 10 lb a day: 40 lb in four days, of which ground meat in the first two.
#[test]
fn every_way_that_is_offered_works() {
    let small = freezer(5.0);
    let all = many(&[(Product::Grind, 24), (Product::Roast, 30)]);
    let Err(Trouble::TooSlow { late, mass, ways }) = schedule(&at_once(&all), &small) else {
        panic!("54 lb in 4 days")
    };
    assert_eq!((late.len(), mass.to_pounds().round()), (14, 14.0));
    let mut offered = 0;
    for way in &ways {
        match way {
            Way::FullLoad => {
                offered += 1;
                let full = Freezer { pace: LoadRule::Full, ..small };
                check(&all, &full, &schedule(&at_once(&all), &full).unwrap());
            }
            Way::BiggerFreezer(size) => {
                offered += 1;
                let of = |size: Volume| Freezer { size, free: size, ..small };
                check(&all, &of(*size), &schedule(&at_once(&all), &of(*size)).unwrap());
                assert!(
                    schedule(&at_once(&all), &of(Volume::cubic_feet(size.to_cubic_feet() - 0.5))).is_err()
                );
            }
            Way::PackLess(less) | Way::Commercial(less) => {
                offered += 1;
                assert_eq!(*less, mass);
                let rest: Vec<Package> =
                    (0..all.len()).filter(|index| !late.contains(index)).map(|index| all[index]).collect();
                check(&rest, &small, &schedule(&at_once(&rest), &small).unwrap());
            }
            Way::MakeRoom(_) => panic!("there is room"),
        }
    }
    assert_eq!(offered, 4, "{ways:?}");
    too_little_room_has_ways_that_work();
    // A roast that is heavier than a day's load goes in on no day.
    let heavy = [pack(Product::Roast, 11.0)];
    let Err(Trouble::TooSlow { late, ways, .. }) = schedule(&at_once(&heavy), &small) else {
        panic!("11 lb in 10")
    };
    assert_eq!((late, ways[1]), (vec![0], Way::BiggerFreezer(Volume::cubic_feet(5.5))));
}

/// 70 lb take 2 cubic feet: what is offered where 1 is free, taken to the hair.
fn too_little_room_has_ways_that_work() {
    let all = many(&[(Product::Steak, 70)]);
    let tight = Freezer { free: Volume::cubic_feet(1.0), ..freezer(20.0) };
    let Err(Trouble::NoRoom { ways, .. }) = schedule(&at_once(&all), &tight) else { panic!("2 cu ft in 1") };
    assert_eq!(ways.len(), 3, "{ways:?}");
    // Less than this is rounding.
    let hair = 1.0 + 1e-9;
    for way in ways {
        match way {
            Way::MakeRoom(more) => {
                let with = |more: Volume| Freezer {
                    free: Volume::litres(tight.free.to_litres() + more.to_litres()),
                    ..tight
                };
                check(&all, &with(more * hair), &schedule(&at_once(&all), &with(more * hair)).unwrap());
                assert!(schedule(&at_once(&all), &with(more * 0.99)).is_err());
            }
            Way::PackLess(less) | Way::Commercial(less) => {
                let left = |less: Mass| {
                    let total: Mass = all.iter().map(|package| package.mass).sum();
                    vec![Package { mass: (total - less) * (1.0 / 70.0), ..all[0] }; 70]
                };
                let rest = left(less * hair);
                check(&rest, &tight, &schedule(&at_once(&rest), &tight).unwrap());
                assert!(schedule(&at_once(&left(less * 0.99)), &tight).is_err());
            }
            Way::FullLoad | Way::BiggerFreezer(_) => panic!("{way:?} makes no room"),
        }
    }
}

#[test]
fn any_plan_is_scheduled_or_told_why_not() {
    let mut scheduled = 0;
    for seed in 0..60 {
        let all = packages(&forecast(&random_plan(seed)), None);
        for cubic_feet in [1.0, 7.0, 15.0, 40.0] {
            let freezer = freezer(cubic_feet);
            match schedule(&at_once(&all), &freezer) {
                Ok(schedule) => {
                    check(&all, &freezer, &schedule);
                    scheduled += 1;
                }
                Err(Trouble::TooSlow { late, ways, .. }) => {
                    assert!(!late.is_empty() && ways.len() >= 2);
                }
                Err(Trouble::NoRoom { needs, .. }) => assert!(needs.likely() > freezer.free),
                Err(Trouble::Freezer(error)) => panic!("{error:?}"),
            }
        }
    }
    assert!(scheduled > 50, "{scheduled}");
}
