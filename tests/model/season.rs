//! Several animals in one plan: what is one, what stays apart, and how it travels.

use std::fmt::Write as _;

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::{Age, Animal, Condition, Sex, Species, Weighed};
use hindsaddle_model::forecast::{Advice, forecast};
use hindsaddle_model::freezer::{Freezer, LoadRule};
use hindsaddle_model::kitchen::Kitchen;
use hindsaddle_model::link::{LinkError, Names, read, write};
use hindsaddle_model::partners::{Claim, Partner, Partners};
use hindsaddle_model::plan::{Action, Plan, Tested};
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::rules::Refusal;
use hindsaddle_model::season::{Change, MOST_ANIMALS, Season};
use hindsaddle_model::units::{Length, Mass, Volume};
use hindsaddle_model::wishes::{Demand, Wish, Wishes};
use hindsaddle_tests::{random_plan, weighed_plan, with};

/// The season of these animals, made of a first one by the changes a person can make.
fn season(plans: impl IntoIterator<Item = Plan>) -> Season {
    let mut plans = plans.into_iter();
    let mut season = Season::from(plans.next().unwrap());
    for (place, plan) in (1..).zip(plans) {
        season = season.apply(Change::AddLike(place - 1)).unwrap().season;
        let kitchen = Kitchen { freezer: season.animal(0).kitchen().freezer, ..plan.kitchen().clone() };
        for action in steps_to(&plan, kitchen) {
            season = season.apply(Change::Act(place, action)).unwrap().season;
        }
    }
    season
}

/// The actions that make a plan the given one. Wide roasts are tried on a moose, which they fit.
fn steps_to(plan: &Plan, kitchen: Kitchen) -> Vec<Action> {
    let moose = Animal::new(Species::Moose, Sex::Buck, Age::Adult, Condition::Ordinary, Weighed::Typical);
    let table = Action::SetTable { people: plan.packing().people, appetite: plan.packing().appetite };
    let mut steps = vec![Action::SetAnimal(moose.unwrap()), Action::SetLosses(plan.losses()), table];
    steps.push(Action::SetTitle(plan.title().to_owned()));
    steps.extend(Product::ALL.map(|product| Action::SetPack { product, by: plan.packing().rule(product) }));
    for muscle in Muscle::ALL {
        steps.push(Action::Recover { muscle, taken: plan.is_recovered(muscle) });
        for side in Side::ALL {
            let division = plan.division(muscle, side).clone();
            steps.push(Action::Divide { muscle, sides: Sides::One(side), division });
        }
    }
    steps.push(Action::SetAnimal(*plan.animal()));
    steps.extend(plan.wounds().iter().map(|wound| Action::AddWound(*wound)));
    steps.extend([Action::SetKitchen(Box::new(kitchen)), Action::SetTested(plan.tested())]);
    let weighings = plan.weighings().iter();
    steps.extend(weighings.map(|one| Action::Weigh { target: one.target, mass: Some(one.mass) }));
    steps.push(Action::UseOwn(*plan.own()));
    steps
}

fn elk() -> Plan {
    let animal = Animal::new(Species::Elk, Sex::Doe, Age::Adult, Condition::Ordinary, Weighed::Typical);
    Plan::new(animal.unwrap())
}

#[test]
fn seasons_come_back_from_their_links_and_equal_ones_have_equal_links() {
    let mut seen = std::collections::BTreeMap::new();
    for seed in 0..60 {
        let plan = if seed % 2 == 0 { random_plan } else { weighed_plan };
        let season = season((0..2 + seed % 4).map(|animal| plan(seed * 10 + animal)));
        let text = write(&season, Names::Included);
        assert!(text.starts_with('3'), "{text}");
        assert_eq!(read(&text).as_ref(), Ok(&season), "seed {seed}: {text}");
        assert_eq!(seen.insert(text, seed), None, "seed {seed}");
    }
}

#[test]
fn a_season_of_one_is_the_link_of_its_plan() {
    let one = Season::from(Plan::new(Animal::example()));
    let text = write(&one, Names::Included);
    let two = one.apply(Change::AddLike(0)).unwrap().season;
    assert_eq!(write(&two.apply(Change::Remove(1)).unwrap().season, Names::Included), text);
    assert!(text.starts_with('1'));
}

#[test]
fn a_later_version_and_a_damaged_season_are_told_apart() {
    let two = season([Plan::new(Animal::example()), elk()]);
    let text = write(&two, Names::Included);
    assert_eq!(read(&format!("4{}", &text[1..])), Err(LinkError::Newer));
    for at in 1..text.len() {
        assert!(read(&text[..at]).is_err());
        let other = if text.as_bytes()[at] == b'A' { 'B' } else { 'A' };
        let slipped = format!("{}{other}{}", &text[..at], &text[at + 1..]);
        assert!(read(&slipped).is_err(), "{slipped}");
    }
}

/// Four animals take under 500 characters, so that a message or a code holds them.
#[test]
fn four_animals_take_less_than_500_characters() {
    let titled = |plan: Plan, title: &str| with(&plan, Action::SetTitle(title.into()));
    let mut changed = Plan::new(Animal::example());
    for muscle in Muscle::ALL {
        changed = with(&changed, Action::Assign { muscle, sides: Sides::Both, cut: Cut::Grind });
    }
    let names = ["north ridge doe", "the creek buck", "last light", "uncle's cow elk"];
    let usual = season(names.map(|name| titled(Plan::new(Animal::example()), name)));
    // Every muscle of every animal cut otherwise than that of the animal before.
    let by_turns = season(names.into_iter().enumerate().map(|(place, name)| {
        titled(if place % 2 == 0 { changed.clone() } else { Plan::new(Animal::example()) }, name)
    }));
    for (what, season) in [("usual", usual), ("by turns", by_turns)] {
        let length = write(&season, Names::Included).len();
        assert!(length < 500, "{what}: {length}");
    }
}

#[test]
fn another_animal_is_cut_the_same_way_and_is_its_own() {
    let kitchen = Kitchen { tag: "A 17".into(), ..Kitchen::default() };
    let cut = Action::Assign { muscle: Muscle::Knuckle, sides: Sides::Both, cut: Cut::Grind };
    let first = with(&with(&elk(), cut), Action::SetKitchen(Box::new(kitchen)));
    let first = with(&first, Action::SetTested(Tested::Awaited));
    let two = Season::from(first.clone()).apply(Change::AddLike(0)).unwrap().season;
    let second = two.animal(1);
    assert_eq!(second.division(Muscle::Knuckle, Side::Left).single(), Some(Cut::Grind));
    assert_eq!((second.kitchen().tag.as_str(), second.tested()), ("", Tested::NotAsked));
    assert_eq!(two.animal(0), &first);
    let act = Action::Assign { muscle: Muscle::Clod, sides: Sides::Both, cut: Cut::Grind };
    let changed = two.apply(Change::Act(1, act)).unwrap().season;
    assert_eq!(changed.animal(0), &first);
}

/// Two animals planned together weigh what they weigh planned apart.
#[test]
fn animals_do_not_touch_each_others_forecasts() {
    let (one, other) = (random_plan(3), random_plan(4));
    let both = season([one.clone(), other.clone()]);
    assert_eq!(forecast(both.animal(0)), forecast(&one));
    assert_eq!(forecast(both.animal(1)), forecast(&other));
}

#[test]
fn there_is_one_freezer() {
    let freezer =
        Freezer { size: Volume::litres(200.0), free: Volume::litres(120.0), pace: LoadRule::Cautious };
    let three = season([elk(), elk(), Plan::new(Animal::example())]);
    let kitchen = Kitchen { freezer: Some(freezer), ..three.animal(1).kitchen().clone() };
    let cold = three.apply(Change::Act(1, Action::SetKitchen(Box::new(kitchen)))).unwrap().season;
    assert!(cold.animals().iter().all(|plan| plan.kitchen().freezer == Some(freezer)));
    assert_eq!(read(&write(&cold, Names::Included)), Ok(cold));
}

#[test]
fn animals_move_copy_and_leave() {
    let named = |name: &str| with(&elk(), Action::SetTitle(name.into()));
    let three = season(["a", "b", "c"].map(named));
    let titles =
        |season: &Season| season.animals().iter().map(|plan| plan.title().to_owned()).collect::<String>();
    let to = |season: &Season, change| season.apply(change).unwrap().season;
    assert_eq!(titles(&to(&three, Change::Move { from: 0, to: 2 })), "bca");
    assert_eq!(titles(&to(&three, Change::Move { from: 2, to: 0 })), "cab");
    assert_eq!(titles(&to(&three, Change::Remove(1))), "ac");
    let alone = to(&to(&three, Change::Remove(1)), Change::Remove(1));
    assert_eq!(titles(&alone), "a");
    // The last one stays, and a place where nobody is changes nothing.
    assert_eq!(to(&alone, Change::Remove(0)), alone);
    assert_eq!(to(&alone, Change::Move { from: 0, to: 7 }), alone);
    let cut = Action::Assign { muscle: Muscle::Neck, sides: Sides::Both, cut: Cut::Grind };
    let copied = to(&to(&three, Change::Act(0, cut)), Change::CopyCuts { from: 0, to: 2 });
    assert_eq!(copied.animal(2).division(Muscle::Neck, Side::Right).single(), Some(Cut::Grind));
    assert_eq!(titles(&copied), "abc");
}

#[test]
fn a_season_is_full_at_last() {
    let mut full = Season::from(elk());
    for place in 1..MOST_ANIMALS {
        full = full.apply(Change::AddLike(place - 1)).unwrap().season;
    }
    assert_eq!(full.apply(Change::AddLike(0)), Err(Refusal::TooManyAnimals { most: MOST_ANIMALS }));
}

/// A steak thicker than a fawn's flat iron is long is kept, and the forecast says that none fits.
#[test]
fn a_size_that_does_not_fit_is_kept_and_said() {
    let weighed = Weighed::Live(Mass::kilograms(4.0));
    let fawn = Animal::new(Species::Roe, Sex::Doe, Age::Fawn, Condition::Ordinary, weighed);
    let cut = Cut::Steak(Length::mm(100.0));
    let thick = with(&elk(), Action::Assign { muscle: Muscle::FlatIron, sides: Sides::Both, cut });
    let both = season([thick, Plan::new(fawn.unwrap())]);
    let copied = both.apply(Change::CopyCuts { from: 0, to: 1 }).unwrap().season;
    let small = forecast(copied.animal(1));
    let part = &small.muscles[Muscle::FlatIron.index()].sides[0][0];
    assert_eq!(part.cut, cut);
    assert_eq!(part.pieces.count, 0, "{:?}", small.muscles[Muscle::FlatIron.index()].length);
    assert!(part.advice.contains(&Advice::NothingFits), "{:?}", part.advice);
}

/// Names of partners stay at home unless they are asked along; shares and claims always travel.
#[test]
fn partners_travel_with_the_season() {
    let partner = |name: &str, parts| Partner { name: name.into(), parts };
    let claims = vec![Claim { muscle: Muscle::Tenderloin, partner: 1 }];
    let of = |names: [&str; 2]| {
        let partners = vec![partner(names[0], 2), partner(names[1], 1)];
        let partners = Partners::checked(partners, claims.clone()).unwrap();
        season([elk(), elk()]).apply(Change::SetPartners(partners)).unwrap().season
    };
    let named = of(["Ann", "Bo"]);
    assert_eq!(read(&write(&named, Names::Included)).as_ref(), Ok(&named));
    assert_eq!(read(&write(&named, Names::LeftOut)), Ok(of(["", ""])));
}

/// What the test says travels, and every answer has its own link.
#[test]
fn what_a_test_says_travels() {
    let links: std::collections::BTreeSet<String> = Tested::ALL
        .into_iter()
        .map(|tested| {
            let season = Season::from(with(&elk(), Action::SetTested(tested)));
            let text = write(&season, Names::LeftOut);
            assert_eq!(read(&text), Ok(season));
            text
        })
        .collect();
    assert_eq!(links.len(), Tested::ALL.len());
}

/// A season in words.
fn told(season: &Season) -> String {
    let mut text = format!("{:?}\n", season.partners());
    for plan in season.animals() {
        let animal = plan.animal();
        let _ = writeln!(
            text,
            "{:?} {} {} {} {:?} {:?}\n{:?}",
            plan.title(),
            animal.species().id(),
            animal.sex().id(),
            animal.age().id(),
            animal.weighed(),
            plan.tested(),
            plan.wishes()
        );
        for muscle in Muscle::ALL {
            let [left, right] = Side::ALL.map(|side| format!("{:?}", plan.division(muscle, side).parts()));
            let _ = writeln!(text, "{} {} {left} {right}", muscle.id(), plan.is_recovered(muscle));
        }
    }
    text
}

fn frozen(number: u64) -> Season {
    let mut season = season((0..=number % 4).map(|animal| random_plan(700 + number * 10 + animal)));
    if number > 0 {
        let names = ["", "Ann", "Bö", "", "", ""];
        let partners = names.into_iter().zip(1..).take(2 + number as usize % 5);
        let partners = partners.map(|(name, parts)| Partner { name: name.into(), parts });
        let claims =
            vec![Claim { muscle: Muscle::Skirt, partner: 0 }, Claim { muscle: Muscle::TopRound, partner: 1 }];
        let partners = Partners::checked(partners.collect(), claims).unwrap();
        season = season.apply(Change::SetPartners(partners)).unwrap().season;
    }
    let mut wishes = Wishes::default();
    wishes.by[number as usize % 5] = Wish::Dinners(number as u16 * 30);
    wishes.by[(number as usize + 1) % 5] = Wish::Share(number as u8 + 1);
    wishes.most_knife_work = number.is_multiple_of(2).then_some(number as u16);
    wishes.demands = vec![(Muscle::Neck, Demand::ALL[[0, 5, 7][number as usize % 3]])];
    let act = Action::SetWishes(Box::new(wishes));
    let season = season.apply(Change::Act(0, act)).unwrap().season;
    season.apply(Change::Act(0, Action::SetTested(Tested::ALL[number as usize % 4]))).unwrap().season
}

/// A file that is missing is written; one that is there never changes.
#[test]
fn frozen_seasons_open_for_ever() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("links/v3");
    for number in 0..8 {
        let path = folder.join(format!("season-{number}.txt"));
        if !path.exists() {
            assert!(
                std::env::var_os("UPDATE_EXPECT").is_some(),
                "{}: set UPDATE_EXPECT to write it",
                path.display()
            );
            let season = frozen(number);
            std::fs::write(&path, format!("{}\n{}", write(&season, Names::Included), told(&season))).unwrap();
        }
        let text = std::fs::read_to_string(&path).unwrap();
        let (link, expected) = text.split_once('\n').unwrap();
        let season = read(link).unwrap();
        assert_eq!(told(&season), expected, "{}", path.display());
        assert_eq!(write(&season, Names::Included), link, "{}", path.display());
    }
}
