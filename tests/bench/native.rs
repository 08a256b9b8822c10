//! How long the model and the plate take on this machine: `bash .dev/bench`. Nothing here fails for being slow.

use divan::{Bencher, black_box};
use hindsaddle_app::store::State;
use hindsaddle_app::text::Units;
use hindsaddle_app::views::plate_view;
use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species, Weighed};
use hindsaddle_model::deal::deal;
use hindsaddle_model::ensemble::SplitMix;
use hindsaddle_model::forecast::{Forecaster, forecast};
use hindsaddle_model::link::{self, Names};
use hindsaddle_model::packages::packages;
use hindsaddle_model::partners::{Partner, Partners};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::planner::{MOST_NODES, Planner};
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::units::Length;
use hindsaddle_model::wishes::{Wish, Wishes};
use hindsaddle_tests::{named_plans, random_animal, random_plan, weighed_plan, with};

fn main() {
    divan::main();
}

/// So many animals, each cut up differently.
#[divan::bench(args = [1, 10, 100, 1000])]
fn forecasts(bencher: Bencher, animals: u64) {
    let plans: Vec<Plan> = (0..animals).map(random_plan).collect();
    bencher.bench(|| {
        for plan in &plans {
            black_box(forecast(black_box(plan)));
        }
    });
}

/// The same with what the scale said.
#[divan::bench(args = [1, 10])]
fn forecasts_with_weighings(bencher: Bencher, animals: u64) {
    let plans: Vec<Plan> = (0..animals).map(weighed_plan).collect();
    bencher.bench(|| {
        for plan in &plans {
            black_box(forecast(black_box(plan)));
        }
    });
}

/// After an edit of one muscle, with what is kept of the forecast before it.
#[divan::bench]
fn forecast_after_an_edit(bencher: Bencher) {
    let steaks = |mm| Action::Assign {
        muscle: Muscle::Backstrap,
        sides: Sides::Both,
        cut: Cut::Steak(Length::mm(mm)),
    };
    let plan = Plan::new(Animal::example());
    let turns = [with(&plan, steaks(20.0)), with(&plan, steaks(25.0))];
    let mut forecaster = Forecaster::default();
    bencher.bench_local(|| {
        for plan in &turns {
            black_box(forecaster.forecast(black_box(plan)));
        }
    });
}

/// Eight roast dinners, twenty of ground meat, the rest as it comes.
fn wishing(species: Species) -> Plan {
    let animal = Animal::new(species, Sex::Buck, Age::Adult, Condition::Ordinary, Weighed::Typical)
        .expect("a buck of every species");
    let mut wishes = Wishes::default();
    wishes.by[Product::Roast as usize] = Wish::Dinners(8);
    wishes.by[Product::Grind as usize] = Wish::Dinners(20);
    with(&Plan::new(animal), Action::SetWishes(Box::new(wishes)))
}

#[divan::bench(args = [Species::Roe, Species::WhiteTailed, Species::Elk])]
fn plan_backwards(bencher: Bencher, species: Species) {
    let plan = wishing(species);
    bencher.bench(|| {
        let mut planner = Planner::new(black_box(&plan)).expect("no limit of knife work");
        planner.step(MOST_NODES);
        planner.proposal()
    });
}

/// All packages of an animal to so many partners of equal shares.
#[divan::bench(args = [2, 3, 6])]
fn deal_packages(bencher: Bencher, partners: usize) {
    let all = packages(&forecast(&wishing(Species::WhiteTailed)), None);
    let partner = || Partner { name: String::new(), parts: 1 };
    let partners =
        Partners::checked((0..partners).map(|_| partner()).collect(), Vec::new()).expect("two to six");
    bencher.bench(|| deal(black_box(&all), black_box(&partners)));
}

/// Links of plans in which everything was decided by chance: far longer than usual.
#[divan::bench]
fn write_a_link(bencher: Bencher) {
    let season = random_plan(1).into();
    bencher.bench(|| link::write(black_box(&season), Names::Included));
}

#[divan::bench]
fn read_a_link(bencher: Bencher) {
    let text = link::write(&random_plan(1).into(), Names::Included);
    bencher.bench(|| link::read(black_box(&text)).expect("its own link"));
}

#[divan::bench]
fn read_a_usual_link(bencher: Bencher) {
    let (_, plan) = named_plans().swap_remove(0);
    let text = link::write(&plan.into(), Names::Included);
    bencher.bench(|| link::read(black_box(&text)).expect("its own link"));
}

/// Everything that is drawn of a plan, on a desk: regions, blocks, knife lines, labels.
#[divan::bench]
fn draw_the_plate(bencher: Bencher) {
    let plan = Plan::new(random_animal(&mut SplitMix::new(7)));
    let state = State::new(plan.into(), None, Units::Pounds, None);
    bencher.bench_local(|| plate_view::scene(black_box(&state), 1440.0));
}
