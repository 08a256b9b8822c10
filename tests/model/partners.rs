//! Who shares the meat: what is refused, how shares are scaled, and how they travel.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::Animal;
use hindsaddle_model::ensemble::SplitMix;
use hindsaddle_model::link::{LinkError, Names, read, write};
use hindsaddle_model::partners::{Claim, MOST_PARTNERS, Partner, Partners, PartnersError, Share};
use hindsaddle_model::plan::Plan;
use hindsaddle_model::season::{Change, Season};

fn partner(name: &str, parts: u16) -> Partner {
    Partner { name: name.to_owned(), parts }
}

fn claim(muscle: Muscle, partner: u8) -> Claim {
    Claim { muscle, partner }
}

#[track_caller]
fn shared_by(partners: &[(&str, u16)], claims: &[Claim]) -> Partners {
    let all = partners.iter().map(|(name, parts)| partner(name, *parts)).collect();
    Partners::checked(all, claims.to_vec()).unwrap()
}

fn of(partners: Partners) -> Season {
    let season = Season::from(Plan::new(Animal::example()));
    season.apply(Change::SetPartners(partners)).unwrap().season
}

#[test]
fn what_cannot_be_is_refused_with_who_and_why() {
    let refused = |partners: &[(&str, u16)], claims: &[Claim]| {
        let all = partners.iter().map(|(name, parts)| partner(name, *parts)).collect();
        Partners::checked(all, claims.to_vec()).unwrap_err()
    };
    let how_many = PartnersError::HowMany { least: 2, most: MOST_PARTNERS };
    assert_eq!(refused(&[("Ann", 1)], &[]), how_many);
    assert_eq!(refused(&[("", 1); 7], &[]), how_many);
    let halves = [("Ann", 1), ("Ben", 1)];
    assert_eq!(refused(&[("Ann", 1), (" ann ", 1)], &[]), PartnersError::SameName { first: 0, second: 1 });
    let long = "x".repeat(25);
    assert_eq!(refused(&[("Ann", 1), (&long, 1)], &[]), PartnersError::Name { partner: 1, most: 24 });
    assert_eq!(refused(&[("A\tB", 1), ("", 1)], &[]), PartnersError::Name { partner: 0, most: 24 });
    for parts in [0, 1000] {
        assert_eq!(refused(&[("", 1), ("", parts)], &[]), PartnersError::Parts { partner: 1, most: 999 });
    }
    let twice = [claim(Muscle::Neck, 0), claim(Muscle::Neck, 0)];
    assert_eq!(refused(&halves, &twice), PartnersError::ClaimedTwice(Muscle::Neck));
    assert_eq!(refused(&halves, &[claim(Muscle::Neck, 2)]), PartnersError::ClaimedByNobody(Muscle::Neck));
    assert_eq!(refused(&[], &[claim(Muscle::Neck, 0)]), PartnersError::ClaimedByNobody(Muscle::Neck));
    assert!(shared_by(&[], &[]).is_empty());
    assert_eq!(shared_by(&[("", 1), ("", 1)], &[]).all().len(), 2, "two may be nameless");
}

/// Shares add up to one whatever was typed, and what was typed is known.
#[test]
fn shares_are_scaled_to_one() {
    let two_to_one = shared_by(&[("", 2), ("", 1)], &[]);
    assert_eq!(two_to_one.shares(), [Share { parts: 2, of: 3 }, Share { parts: 1, of: 3 }]);
    let ninety = shared_by(&[("", 50), ("", 40)], &[]);
    assert_eq!((ninety.total_parts(), ninety.are_percents()), (90, false));
    let percents: Vec<f64> = ninety.shares().iter().map(|share| share.to_percent().round()).collect();
    assert_eq!(percents, [56.0, 44.0]);
    assert!(shared_by(&[("", 60), ("", 40)], &[]).are_percents());
    let dice = &mut SplitMix::new(3);
    for _ in 0..500 {
        let parts: Vec<(&str, u16)> =
            (0..2 + dice.below(5)).map(|_| ("", 1 + dice.below(999) as u16)).collect();
        let partners = shared_by(&parts, &[]);
        // Over the common denominator, in whole numbers.
        let all = partners.total_parts();
        let sum: u32 = partners.shares().iter().map(|share| all / share.of * share.parts).sum();
        assert_eq!(sum, all, "{parts:?}");
    }
}

#[test]
fn partners_come_back_from_their_links_and_equal_ones_have_equal_links() {
    let dice = &mut SplitMix::new(17);
    for case in 0..400 {
        let number = 2 + dice.below(5);
        let names = ["Ann", "Ben", "Jäger Müller", "鹿", "", "№ 6"];
        let all: Vec<Partner> = (0..number as usize)
            .map(|place| {
                let parts = if case % 2 == 0 { 1 } else { 1 + dice.below(999) as u16 };
                partner(if case % 3 == 0 { "" } else { names[place] }, parts)
            })
            .collect();
        let mut claims: Vec<Claim> = Vec::new();
        for muscle in Muscle::ALL {
            if dice.below(6) == 0 {
                claims.push(claim(muscle, dice.below(number) as u8));
            }
        }
        let season = of(Partners::checked(all.clone(), claims.clone()).unwrap());
        let link = write(&season, Names::Included);
        assert_eq!(read(&link).as_ref(), Ok(&season), "{link}");
        claims.reverse();
        assert_eq!(
            write(&of(Partners::checked(all.clone(), claims.clone()).unwrap()), Names::Included),
            link
        );
        let silent = all.into_iter().map(|one| partner("", one.parts)).collect();
        let silent = of(Partners::checked(silent, claims).unwrap());
        assert_eq!(write(&season, Names::LeftOut), write(&silent, Names::Included));
    }
}

/// Two halves cost four letters, and three with names and a claim stay short.
#[test]
fn partners_cost_a_link_little() {
    let length = |partners| write(&of(partners), Names::Included).len();
    let alone = length(Partners::default());
    assert!(length(shared_by(&[("", 1), ("", 1)], &[])) <= alone + 8);
    let named = shared_by(&[("Ann", 50), ("Ben", 30), ("Cat", 20)], &[claim(Muscle::Tenderloin, 0)]);
    assert!(length(named) <= alone + 40);
}

/// A changed letter never says other partners: the checksum sees it.
#[test]
fn a_slip_is_noticed() {
    let link = write(&of(shared_by(&[("Ann", 2), ("Ben", 1)], &[claim(Muscle::Neck, 1)])), Names::Included);
    for place in 1..link.len() {
        let mut slipped = link.clone().into_bytes();
        slipped[place] = if slipped[place] == b'A' { b'B' } else { b'A' };
        let slipped = String::from_utf8(slipped).unwrap();
        let error = read(&slipped).unwrap_err();
        assert!(matches!(error, LinkError::Mistyped | LinkError::CutShort | LinkError::Newer), "{error:?}");
    }
}

/// Links with partners from the day their bits were frozen, beside what they say: `UPDATE_EXPECT=1` writes only
/// files that are not there.
#[test]
fn frozen_partners_open_for_ever() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("links/partners");
    let claims = [claim(Muscle::Tenderloin, 1), claim(Muscle::Neck, 0)];
    let frozen = [
        ("halves", shared_by(&[("", 1), ("", 1)], &[])),
        ("named", shared_by(&[("Ann", 2), ("Jäger Müller", 1)], &claims)),
        ("six", shared_by(&[("", 999), ("B", 1), ("", 20), ("D", 30), ("", 40), ("", 50)], &claims[..1])),
    ];
    for (name, partners) in frozen {
        let file = folder.join(format!("{name}.txt"));
        if !file.exists() && std::env::var_os("UPDATE_EXPECT").is_some() {
            let link = write(&of(partners.clone()), Names::Included);
            std::fs::write(&file, format!("{link}\n{partners:#?}\n")).unwrap();
        }
        let text = std::fs::read_to_string(&file).unwrap();
        let (link, said) = text.split_once('\n').unwrap();
        let season = read(link).unwrap();
        assert_eq!(format!("{:#?}\n", season.partners()), said, "{name}");
        assert_eq!(write(&season, Names::Included), link, "{name}");
    }
}
