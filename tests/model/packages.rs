//! Packages one by one against the forecast's tallies, their order, and what they are wrapped in.

use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::animal::Animal;
use hindsaddle_model::fat::{Added, FatContent, NamedFat};
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::grind::{Grinding, GroundPacks, Mix, Plate, Target, Vessel, grind};
use hindsaddle_model::order::{Step, Task, Why, working_order};
use hindsaddle_model::packages::{Contents, Fill, Package, packages};
use hindsaddle_model::packing::PackBy;
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::shape::Block;
use hindsaddle_model::tables::{BAGS, FATS, FLAT_PACK, Fact, PAPER_ROLLS, PLATES, TURNS, VACUUM_ROLLS};
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_model::wrap::{Bag, Fold, Misfit, Need, Supplies, Wrap, Wrapped, Wrapping, sheet, wrapped};
use hindsaddle_tests::{named_plans, random_plan, with};

fn plans() -> impl Iterator<Item = (String, Plan)> {
    named_plans().into_iter().chain((0..100).map(|seed| (format!("seed {seed}"), random_plan(seed))))
}

#[track_caller]
fn adds_up(name: &str, packages: &[Package], forecast: &Forecast) {
    for tally in &forecast.tallies {
        let of_it: Vec<_> = packages.iter().filter(|package| package.product == tally.product).collect();
        assert_eq!(of_it.len() as u32, tally.packs.likely(), "{name}: {:?}", tally.product);
        let mass: Mass = of_it.iter().map(|package| package.mass).sum();
        assert!((mass - tally.mass.likely()).to_grams().abs() < 1e-6, "{name}: {:?}", tally.product);
    }
    let pieces = |packages: &[Package]| {
        let count = |package: &Package| match package.contents {
            Contents::Pieces { pieces, .. } => pieces,
            Contents::Pooled | Contents::Patties(_) => 0,
        };
        packages.iter().map(count).sum::<u32>()
    };
    let rows = forecast.muscles.iter().flat_map(|muscle| &muscle.packs);
    assert_eq!(pieces(packages), rows.map(|row| row.pieces.likely()).sum::<u32>(), "{name}");
}

#[test]
fn the_packages_are_the_tallies_one_by_one() {
    for (name, plan) in plans() {
        let forecast = forecast(&plan);
        let packages = packages(&forecast, None);
        assert_eq!(packages.len() as u32, forecast.packs.likely(), "{name}");
        adds_up(&name, &packages, &forecast);
        for package in &packages {
            assert!(package.mass > Mass::ZERO && (1..=package.of).contains(&package.number), "{name}");
            if package.fill == Fill::Short {
                assert_eq!(package.number, package.of, "{name}: only the last is short");
            }
        }
    }
}

#[test]
fn a_full_package_is_never_lighter_than_the_short_one_of_its_kind() {
    for (name, plan) in plans() {
        let all = packages(&forecast(&plan), None);
        for short in all.iter().filter(|package| package.fill == Fill::Short && package.of > 1) {
            let same = |package: &&Package| match (package.contents, short.contents) {
                (Contents::Pieces { muscle, cut, .. }, Contents::Pieces { muscle: its, cut: way, .. }) => {
                    muscle == its && cut == way
                }
                (Contents::Pooled, Contents::Pooled) => package.product == short.product,
                (
                    Contents::Pieces { .. } | Contents::Pooled | Contents::Patties(_),
                    Contents::Pieces { .. } | Contents::Pooled | Contents::Patties(_),
                ) => false,
            };
            let first = all.iter().find(same).unwrap();
            assert!(first.mass > short.mass && first.fill == Fill::Full, "{name}");
        }
    }
}

#[test]
fn the_tub_is_packed_as_the_grinder_gives_it() {
    let forecast = forecast(&Plan::new(Animal::example()));
    let tub = forecast.tallies[Product::Grind as usize].mass.likely();
    let target = Target { fat: FatContent::percent(10.0), added: Added::Fat(NamedFat::PorkBackFat) };
    let grinding = Grinding {
        mix: Mix::Burger(target),
        vessel: Vessel::Takes(Mass::kilograms(5.0)),
        packs: GroundPacks::Weight(Mass::grams(454.0)),
        price: None,
    };
    let ground = grind(tub, &grinding).unwrap();
    let all = packages(&forecast, Some(&ground));
    let grind: Mass =
        all.iter().filter(|package| package.product == Product::Grind).map(|package| package.mass).sum();
    assert!((grind - ground.total()).to_grams().abs() < 1e-6);
    assert!(grind > tub);
    let plain = packages(&forecast, None);
    let whole = |packages: &[Package]| {
        packages.iter().filter(|package| package.product != Product::Grind).copied().collect::<Vec<_>>()
    };
    assert_eq!(whole(&all), whole(&plain));
}

#[test]
fn the_work_goes_from_what_dries_first_to_the_grinder() {
    for (name, plan) in plans() {
        let steps = working_order(&plan);
        assert!(steps.windows(2).all(|pair| pair[0].why <= pair[1].why), "{name}");
        let mut tasks: Vec<Muscle> = steps
            .iter()
            .filter_map(|step| match step.task {
                Task::Muscle(muscle) => Some(muscle),
                Task::Tub => None,
            })
            .collect();
        assert!(tasks.iter().all(|muscle| plan.is_recovered(*muscle)), "{name}");
        let steps_of_muscles = tasks.len();
        tasks.sort_unstable();
        tasks.dedup();
        assert_eq!(tasks.len(), steps_of_muscles, "{name}: a muscle once");
        assert_eq!(steps.last(), Some(&Step { task: Task::Tub, why: Why::GrindLast }), "{name}");
        // The packages come off the table in the same order.
        let place = |muscle: Muscle| steps.iter().position(|step| step.task == Task::Muscle(muscle)).unwrap();
        let places: Vec<usize> =
            packages(&forecast(&plan), None).iter().filter_map(Package::muscle).map(place).collect();
        assert!(places.is_sorted(), "{name}");
    }
}

/// The usual plan: tenderloin first, then the choice cuts from the tenderest; the tub last. Common practice, no
/// source.
#[test]
fn the_usual_order_is_a_butchers() {
    let plan = Plan::new(Animal::example());
    let steps = working_order(&plan);
    let names = |why: Why| -> Vec<&str> {
        let of = steps.iter().filter(|step| step.why == why);
        of.map(|step| match step.task {
            Task::Muscle(muscle) => muscle.id(),
            Task::Tub => "tub",
        })
        .collect()
    };
    assert_eq!(names(Why::DriesFirst), ["tenderloin"]);
    assert_eq!(names(Why::ChoiceWhileFresh), ["backstrap", "sirloin", "tri_tip", "flat_iron"]);
    assert_eq!(names(Why::SlicesNext), ["top_round"]);
    assert_eq!(names(Why::RoastsNext), ["knuckle", "eye_round", "clod", "bottom_round", "neck"]);
    let trim = names(Why::TrimToTheTub);
    assert_eq!((trim[0], trim.last()), ("pelvic_trim", Some(&"flank_sheets")));
    assert_eq!(names(Why::GrindLast), ["tub"]);
    let taken = Muscle::ALL.into_iter().filter(|muscle| plan.is_recovered(*muscle)).count();
    assert_eq!(steps.len(), taken + 1);
    let whys: std::collections::BTreeSet<Why> = steps.iter().map(|step| step.why).collect();
    assert_eq!(whys.into_iter().collect::<Vec<_>>(), Why::ALL);
    let discard =
        with(&plan, Action::Assign { muscle: Muscle::Tenderloin, sides: Sides::Both, cut: Cut::Discard });
    let steps = working_order(&discard);
    assert!(steps.iter().all(|step| step.task != Task::Muscle(Muscle::Tenderloin)));
}

fn wraps(plan: &Plan, wrapping: &Wrapping) -> Vec<(Package, Wrapped)> {
    let forecast = forecast(plan);
    let one = |package: Package| (package, wrapped(&forecast, &package, wrapping));
    packages(&forecast, None).into_iter().map(one).collect()
}

#[test]
fn every_package_of_every_plan_has_a_shape_that_holds_it() {
    for (name, plan) in plans() {
        for wrap in [Wrap::Paper(Fold::Butcher), Wrap::Paper(Fold::Square), Wrap::Zip, Wrap::Vacuum] {
            let wrapping = Wrapping { by: [wrap; 5], ..Wrapping::default() };
            for (package, wrapped) in wraps(&plan, &wrapping) {
                let block = wrapped.shape.block;
                assert!(block.length >= block.width && block.thickness > Length::ZERO, "{name}");
                // A block round its meat: never smaller than the meat, at 1.06 g/cm3 (Mendez and Keys 1960).
                let volume = (block.length * block.width).to_square_mm() * block.thickness.to_mm();
                assert!(
                    volume * 1.06e-3 >= package.mass.to_grams() * 0.94,
                    "{name}: {package:?} in {block:?}"
                );
            }
        }
    }
}

#[test]
fn a_pound_of_ground_meat_lies_flat_in_a_quart_bag() {
    let plan = with(
        &Plan::new(Animal::example()),
        Action::SetPack { product: Product::Grind, by: PackBy::Weight(Mass::pounds(1.0)) },
    );
    let all = wraps(&plan, &Wrapping::default());
    let (_, pound) = all.iter().find(|(package, _)| package.product == Product::Grind).unwrap();
    assert_eq!(pound.need, Ok(Need::Bag(Bag::Quart)));
    // Derived: 26.05 in3 on 45 in2 are 0.58 in.
    assert!((pound.shape.block.thickness.to_inches() - 0.58).abs() < 0.01);
    assert!(pound.shape.block.thickness < FLAT_PACK.value);
    assert!(BAGS[0].flat < BAGS[1].flat);
}

#[test]
fn cubes_lie_no_flatter_than_they_are() {
    let plan = Plan::new(Animal::example());
    for (package, wrapped) in wraps(&plan, &Wrapping::default()) {
        if package.product == Product::Stew {
            // The usual stew is cut 1 in; a pound of it goes into a quart bag.
            assert_eq!(wrapped.shape.block.thickness, Length::inches(1.0));
            assert_eq!(wrapped.need, Ok(Need::Bag(Bag::Quart)));
        }
    }
}

#[test]
fn rows_stand_in_the_order_of_their_kinds() {
    for (kind, row) in Fold::ALL.into_iter().zip(&TURNS) {
        assert_eq!(row.fold, kind);
    }
    for (kind, row) in Bag::ALL.into_iter().zip(&BAGS) {
        assert_eq!(row.bag, kind);
    }
    for (kind, row) in NamedFat::ALL.into_iter().zip(&FATS) {
        assert_eq!(row.fat, kind);
    }
    for (kind, row) in Plate::ALL.into_iter().zip(&PLATES) {
        assert_eq!(row.plate, kind);
    }
    let rising = |lengths: &[Fact<Length>]| lengths.is_sorted_by(|one, other| one.value < other.value);
    assert!(rising(&PAPER_ROLLS) && rising(&VACUUM_ROLLS));
}

/// By hand: a block of 10 x 4 x 2 in is 12 in round its length and 24 round its width; it takes 14 in of width,
/// or 8 in turned.
#[test]
fn a_long_block_on_narrow_paper_is_turned() {
    let inches = Length::inches;
    let block = Block::new(inches(10.0), inches(4.0), inches(2.0));
    let length = |fold, roll| sheet(&block, fold, inches(roll)).map(Length::to_inches);
    assert!((length(Fold::Butcher, 14.0).unwrap() - 24.0).abs() < 1e-9);
    assert!((length(Fold::Butcher, 13.9).unwrap() - 48.0).abs() < 1e-9);
    let Err(Misfit::PaperTooNarrow { needs }) = length(Fold::Drugstore, 7.9) else { panic!("7.9 in") };
    assert!((needs.to_inches() - 8.0).abs() < 1e-9);
    // A square of 12 in has a diagonal of 17: enough for 14 in along and 16 round. One of 11 in has 15.6.
    assert!((length(Fold::Square, 12.0).unwrap() - 12.0).abs() < 1e-9);
    let Err(Misfit::PaperTooNarrow { needs }) = length(Fold::Square, 11.0) else { panic!("11 in square") };
    assert!(sheet(&block, Fold::Square, needs * 1.000_001).is_ok() && needs > inches(11.0));
}

/// By hand: half the way round has to go into the mouth. The bags and rolls are those of the tables.
#[test]
fn bags_and_rolls_are_chosen_by_what_goes_into_their_mouth() {
    let plan = Plan::new(Animal::example());
    for wrap in [Wrap::Zip, Wrap::Vacuum] {
        for (package, wrapped) in wraps(&plan, &Wrapping { by: [wrap; 5], ..Wrapping::default() }) {
            let Block { length, width, thickness } = wrapped.shape.block;
            match wrapped.need {
                Ok(Need::Bag(bag)) => {
                    let row = &BAGS[bag as usize];
                    assert!(width <= row.width && length <= row.length, "{package:?}");
                }
                Ok(Need::VacuumBag { roll, length: cut }) => {
                    let mouth = VACUUM_ROLLS[roll].value;
                    let along = cut - Length::inches(3.0);
                    let across = if (along - length).to_mm().abs() < 1e-9 { width } else { length };
                    assert!(across + thickness <= mouth, "{package:?}");
                }
                Err(misfit) => assert_eq!(misfit, Misfit::NoBagTakesIt, "{package:?}"),
                Ok(Need::Sheet { .. }) => panic!("{package:?}"),
            }
        }
    }
}

/// By hand: a quarter pound at 1.06 g/cm3 and 1/2 in thick is 103.5 mm across; eight lie in four layers.
#[test]
fn patties_lie_side_by_side_and_on_each_other() {
    let forecast = forecast(&Plan::new(Animal::example()));
    let pack = |patties: u32| {
        let (contents, mass) = (Contents::Patties(patties), Mass::pounds(0.25) * f64::from(patties));
        let package = Package { product: Product::Grind, contents, mass, fill: Fill::Full, number: 1, of: 1 };
        wrapped(&forecast, &package, &Wrapping::default()).shape
    };
    assert!((pack(1).block.width.to_mm() - 103.5).abs() < 0.1);
    let eight = pack(8);
    assert!((eight.block.length.to_mm() - 207.1).abs() < 0.2 && eight.stacked == 6);
    assert!((eight.block.thickness.to_inches() - 2.0).abs() < 1e-9);
}

#[test]
fn what_does_not_fit_says_so_and_is_left_off_the_list() {
    let plan = with(
        &Plan::new(Animal::example()),
        Action::Assign { muscle: Muscle::TopRound, sides: Sides::Both, cut: Cut::Roast(RoastSize::Whole) },
    );
    let top_round = |wrapping: &Wrapping| {
        let all = wraps(&plan, wrapping);
        let found = all.iter().find(|(package, _)| package.muscle() == Some(Muscle::TopRound));
        found.map(|(_, wrapped)| *wrapped).unwrap()
    };
    let zip = Wrapping { by: [Wrap::Zip; 5], ..Wrapping::default() };
    assert_eq!(top_round(&zip).need, Err(Misfit::NoBagTakesIt));
    let narrow = Wrapping { by: [Wrap::Paper(Fold::Butcher); 5], roll: Length::inches(4.0), ..zip };
    let Err(Misfit::PaperTooNarrow { needs }) = top_round(&narrow).need else { panic!("4 in paper") };
    assert!(matches!(top_round(&Wrapping { roll: needs, ..narrow }).need, Ok(Need::Sheet { .. })));
    assert_eq!(Supplies::of(&[top_round(&zip)], &zip), Supplies { labels: 1, ..Supplies::default() });
    let small = Cut::Roast(RoastSize::Weight(Mass::grams(300.0)));
    let small = Action::Assign { muscle: Muscle::TopRound, sides: Sides::Both, cut: small };
    let four = Action::SetPack { product: Product::Roast, by: PackBy::Pieces(4) };
    let four = with(&with(&plan, small), four);
    let vacuum = Wrapping { by: [Wrap::Vacuum; 5], ..Wrapping::default() };
    let roasts = wraps(&four, &vacuum);
    assert!(roasts.iter().any(|(_, wrapped)| wrapped.need == Err(Misfit::TooManyRoasts { most: 3 })));
}

#[test]
fn the_list_for_the_shop_adds_up_over_animals_and_takes_off_what_there_is() {
    let vacuum = Wrapping {
        by: [Wrap::Vacuum, Wrap::Paper(Fold::Drugstore), Wrap::Vacuum, Wrap::Zip, Wrap::Zip],
        ..Wrapping::default()
    };
    for seed in 0..40 {
        let of = |plan: &Plan| wraps(plan, &vacuum).into_iter().map(|(_, wrap)| wrap).collect::<Vec<_>>();
        let (one, other) = (of(&random_plan(seed)), of(&random_plan(seed + 1000)));
        let apart = Supplies::of(&one, &vacuum) + Supplies::of(&other, &vacuum);
        let together = Supplies::of(&[one, other].concat(), &vacuum);
        assert_eq!(
            (apart.bags, apart.labels, apart.between),
            (together.bags, together.labels, together.between)
        );
        assert!((apart.paper - together.paper).to_mm().abs() < 1e-6);
        for roll in 0..VACUUM_ROLLS.len() {
            assert!((apart.vacuum[roll] - together.vacuum[roll]).to_mm().abs() < 1e-6);
        }
        assert_eq!(apart.without(&apart), Supplies::default());
        assert_eq!(apart.without(&Supplies::default()), apart);
        let more = apart.without(&Supplies { bags: [u32::MAX; 2], ..Supplies::default() });
        assert_eq!((more.bags, more.paper), ([0, 0], apart.paper));
    }
    let plan = Plan::new(Animal::example());
    let exact = Wrapping { spare_percent: 0, ..vacuum };
    let all: Vec<Wrapped> = wraps(&plan, &exact).into_iter().map(|(_, wrapped)| wrapped).collect();
    let (bare, spare) = (Supplies::of(&all, &exact), Supplies::of(&all, &vacuum));
    assert!((spare.paper / bare.paper - 1.1).abs() < 1e-9);
    assert!((spare.tape / bare.tape - 1.1).abs() < 1e-9);
    assert_eq!(spare.bags, bare.bags);
}
