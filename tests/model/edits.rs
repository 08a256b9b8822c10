//! What a change moves, and what it leaves alone: every muscle in turn, and plans made at random.

use hindsaddle_model::anatomy::{Muscle, Side, Sides};
use hindsaddle_model::animal::{Animal, Weighed};
use hindsaddle_model::forecast::{Forecast, Line, PackRow, forecast};
use hindsaddle_model::packing::{Appetite, PackBy, packs_of_loose, packs_of_pieces};
use hindsaddle_model::plan::{Action, Care, Division, Losses, MOST_HUNG_DAYS, Part, Plan, Shot};
use hindsaddle_model::product::{Cut, Product};
use hindsaddle_model::tables;
use hindsaddle_model::units::Mass;
use hindsaddle_model::wounds::{Wound, share};
use hindsaddle_tests::{random_plan, with};

fn is_deboned(plan: &Plan) -> bool {
    matches!(plan.animal().weighed(), Weighed::Deboned(_))
}

#[track_caller]
fn near(a: Mass, b: Mass, what: &str) {
    assert!((a - b).to_grams().abs() < 1e-6, "{what}: {a:?} {b:?}");
}

/// The plan with left and right changed over; none if a size is too long for its animal by now.
fn mirrored(plan: &Plan) -> Option<Plan> {
    let mut turned = plan.clone();
    for muscle in Muscle::ALL {
        for side in Side::ALL {
            let division = plan.division(muscle, side.other()).clone();
            turned = turned.apply(Action::Divide { muscle, sides: Sides::One(side), division }).ok()?.plan;
        }
    }
    for (place, wound) in plan.wounds().iter().enumerate() {
        let wound = Wound { side: wound.side.other(), ..*wound };
        turned = with(&turned, Action::ChangeWound { place, wound });
    }
    Some(turned)
}

/// The rows of a muscle in an order that does not know left from right.
fn sorted(rows: &[PackRow]) -> Vec<PackRow> {
    let mut rows = rows.to_vec();
    rows.sort_by_key(|row| format!("{:?}", row.cut));
    rows
}

#[test]
fn left_and_right_changed_over_give_an_equal_forecast() {
    let mut uneven = 0;
    for seed in 0..60 {
        let plan = random_plan(seed);
        let Some(other) = mirrored(&plan) else { continue };
        uneven += usize::from(plan != other);
        let (here, there) = (forecast(&plan), forecast(&other));
        assert_eq!((here.live, here.hanging, here.lean), (there.live, there.hanging, there.lean));
        assert_eq!(here.packs, there.packs, "seed {seed}");
        for (a, b) in here.tallies.iter().zip(&there.tallies) {
            assert_eq!(a.packs, b.packs, "seed {seed}");
            for (a, b) in [(a.mass.low(), b.mass.low()), (a.mass.likely(), b.mass.likely())] {
                near(a, b, "a tally");
            }
        }
        for (a, b) in here.muscles.iter().zip(&there.muscles) {
            assert_eq!((a.mass, a.length), (b.mass, b.length));
            assert_eq!(a.sides[0], b.sides[1], "seed {seed}");
            assert_eq!(a.sides[1], b.sides[0], "seed {seed}");
            assert_eq!(a.packs.len(), b.packs.len());
            for (a, b) in sorted(&a.packs).iter().zip(&sorted(&b.packs)) {
                assert_eq!((a.cut, a.pieces, a.packs), (b.cut, b.pieces, b.packs), "seed {seed}");
                assert_eq!((a.a_pack, a.short), (b.a_pack, b.short), "seed {seed}");
                near(a.mass.high(), b.mass.high(), "a row");
            }
        }
    }
    assert!(uneven >= 30, "{uneven} plans had two different sides");
}

/// Worse shots, hastier knives and longer hanging take meat away; on a table of deboned meat, where the meat
/// itself was weighed, they change nothing of it.
#[test]
fn no_loss_adds_meat() {
    for seed in 0..24 {
        let plan = random_plan(seed);
        let meat = |losses: Losses| forecast(&with(&plan, Action::SetLosses(losses))).take_home.likely();
        let usual = Losses { shot: Shot::Usual, care: Care::Usual, hung_days: 5 };
        let chains: [Vec<Losses>; 3] = [
            Shot::ALL.map(|shot| Losses { shot, ..usual }).to_vec(),
            Care::ALL.map(|care| Losses { care, ..usual }).to_vec(),
            [0, 1, 7, MOST_HUNG_DAYS].map(|hung_days| Losses { hung_days, ..usual }).to_vec(),
        ];
        for (shots, chain) in [true, false, false].into_iter().zip(chains) {
            let masses: Vec<Mass> = chain.into_iter().map(meat).collect();
            for pair in masses.windows(2) {
                if is_deboned(&plan) {
                    // A heavier animal has a little more muscle where muscle grows with the animal, so the
                    // parts thrown away weigh a little differently.
                    assert!((pair[0] / pair[1] - 1.0).abs() < 0.01, "seed {seed}: {masses:?}");
                } else {
                    // Marked wounds stand in for the average of the shot, whichever it is.
                    let same = shots && !plan.wounds().is_empty();
                    assert!(pair[0] > pair[1] || same && pair[0] == pair[1], "seed {seed}: {masses:?}");
                }
            }
        }
    }
}

/// An edit of how one muscle is cut changes no number of any other, whatever was weighed.
#[test]
fn an_edit_stays_inside_its_muscle() {
    for seed in 0..40 {
        let plan = random_plan(seed);
        let before = forecast(&plan);
        let muscle = Muscle::ALL[seed as usize % Muscle::COUNT];
        for cut in [Cut::Grind, Cut::Discard, Cut::usual(Product::Stew)] {
            let after = forecast(&with(&plan, Action::Assign { muscle, sides: Sides::One(Side::Left), cut }));
            for other in Muscle::ALL.into_iter().filter(|other| *other != muscle) {
                assert_eq!(before.muscles[other.index()], after.muscles[other.index()], "seed {seed}");
            }
            assert_eq!(before.muscles[muscle.index()].mass, after.muscles[muscle.index()].mass);
        }
    }
}

/// A group that is left is missing by its own weight and moves nothing else; deboned meat is the exception,
/// since there the meat that was taken was weighed.
#[test]
fn a_group_that_is_left_is_missing_by_its_own_weight() {
    let mut looked = 0;
    for seed in 0..16 {
        let mut plan = random_plan(seed);
        if is_deboned(&plan) {
            continue;
        }
        for muscle in Muscle::ALL {
            // A discarded part is not packed, so only a muscle that is all packed is missing by its weight.
            plan = with(&plan, Action::Recover { muscle, taken: true });
            plan = with(&plan, Action::Assign { muscle, sides: Sides::Both, cut: Cut::Grind });
            let before = forecast(&plan);
            let after = forecast(&with(&plan, Action::Recover { muscle, taken: false }));
            let own = before.muscles[muscle.index()].mass;
            let [left, right] = Side::ALL.map(|side| share(plan.wounds(), muscle, side));
            let clean = own.likely() * (1.0 - f64::midpoint(left, right));
            near(before.take_home.likely() - after.take_home.likely(), clean, muscle.id());
            let left = |of: &Forecast| of.ledger[Line::NotRecovered as usize].1.likely();
            near(left(&after) - left(&before), own.likely(), muscle.id());
            for other in Muscle::ALL.into_iter().filter(|other| *other != muscle) {
                assert_eq!(before.muscles[other.index()], after.muscles[other.index()], "seed {seed}");
            }
            looked += 1;
        }
    }
    assert!(looked > 8 * Muscle::COUNT, "{looked}");
}

/// A muscle that goes to the grinder in parts is ground all the same.
#[test]
fn parts_that_become_the_same_change_nothing() {
    for muscle in Muscle::ALL.into_iter().filter(|muscle| tables::muscle(*muscle).size.is_some()) {
        let plan = Plan::new(Animal::example());
        let whole = with(&plan, Action::Assign { muscle, sides: Sides::Both, cut: Cut::Grind });
        for percents in [&[50, 50][..], &[1, 99], &[33, 33, 34], &[1, 1, 1, 97]] {
            let parts = percents.iter().map(|percent| Part { percent: *percent, cut: Cut::Grind }).collect();
            let division = Division::new(parts).unwrap();
            let parted = with(&plan, Action::Divide { muscle, sides: Sides::Both, division });
            let (whole, parted) = (forecast(&whole), forecast(&parted));
            for (a, b) in whole.tallies.iter().zip(&parted.tallies) {
                assert_eq!(a.packs, b.packs, "{muscle:?} {percents:?}");
                near(a.mass.likely(), b.mass.likely(), muscle.id());
                near(a.mass.high(), b.mass.high(), muscle.id());
            }
        }
    }
}

/// What the plate draws is what the tally counts: the middle case, added up piece by piece.
#[test]
fn the_tally_is_the_sum_of_the_drawn_pieces() {
    for seed in 0..60 {
        let plan = random_plan(seed);
        let forecast = forecast(&plan);
        let (mut masses, mut packs) = ([Mass::ZERO; 5], [0_u32; 5]);
        for muscle in forecast.muscles.iter().filter(|muscle| plan.is_recovered(muscle.muscle)) {
            for part in muscle.sides.iter().flatten() {
                masses[Product::Grind as usize] += part.pieces.tub;
                if let Some(product) = part.cut.product() {
                    masses[product as usize] += part.pieces.mass;
                }
            }
            for row in &muscle.packs {
                let product = row.cut.product().unwrap();
                let drawn: u32 = muscle
                    .sides
                    .iter()
                    .flatten()
                    .filter(|part| part.cut == row.cut)
                    .map(|part| part.pieces.count)
                    .sum();
                assert_eq!(row.pieces.likely(), drawn, "seed {seed} {:?}", muscle.muscle);
                assert_eq!(row.packs.likely(), slow_packs(drawn, row.a_pack), "seed {seed}");
                assert_eq!(row.short.unwrap_or(0), drawn % row.a_pack, "seed {seed}");
                packs[product as usize] += row.packs.likely();
            }
        }
        for product in [Product::Stew, Product::Grind] {
            let pack = plan.packing().loose_pack(product);
            packs[product as usize] = slow_loose(masses[product as usize], pack);
        }
        for tally in &forecast.tallies {
            near(tally.mass.likely(), masses[tally.product as usize], tally.product.id());
            assert_eq!(
                tally.packs.likely(),
                packs[tally.product as usize],
                "seed {seed}: {}",
                tally.product.id()
            );
        }
        assert_eq!(forecast.packs.likely(), packs.iter().sum::<u32>(), "seed {seed}");
    }
}

/// Fills one pack after another with one piece after another.
fn slow_packs(pieces: u32, a_pack: u32) -> u32 {
    let (mut packs, mut room) = (0, 0);
    for _ in 0..pieces {
        if room == 0 {
            packs += 1;
            room = a_pack;
        }
        room -= 1;
    }
    packs
}

/// Fills one pack after another from the tub; a last handful of a tenth of a pack goes into the others.
fn slow_loose(tub: Mass, pack: Mass) -> u32 {
    let (mut left, mut packs) = (tub.to_grams(), 0);
    while left > 1e-9 && (packs == 0 || left > pack.to_grams() * 0.1 + 1e-9) {
        left -= pack.to_grams();
        packs += 1;
    }
    packs
}

#[test]
fn a_slow_packer_agrees() {
    for pieces in 0..200 {
        for a_pack in 1..=24 {
            assert_eq!(packs_of_pieces(pieces, a_pack), slow_packs(pieces, a_pack), "{pieces} by {a_pack}");
        }
    }
    for grams in (0..20_000).step_by(7) {
        for pack in [100, 454, 907, 5000] {
            let (tub, pack) = (Mass::grams(f64::from(grams)), Mass::grams(f64::from(pack)));
            assert_eq!(packs_of_loose(tub, pack), slow_loose(tub, pack), "{tub:?} by {pack:?}");
        }
    }
}

/// Pieces are added to a pack until the table has enough, a tenth of a piece less being enough.
#[test]
fn a_pack_holds_as_few_pieces_as_feed_the_table() {
    for people in 1..=12 {
        for appetite in Appetite::ALL {
            let plan = with(&Plan::new(Animal::example()), Action::SetTable { people, appetite });
            let packing = plan.packing();
            assert_eq!(packing.rule(Product::Steak), PackBy::Table);
            for grams in (10..1500).step_by(11) {
                let each = f64::from(grams);
                let mut pieces = 1;
                while (f64::from(pieces) + 0.1) * each + 1e-9 < packing.table().to_grams() && pieces < 24 {
                    pieces += 1;
                }
                assert_eq!(
                    packing.pieces_a_pack(Product::Steak, Mass::grams(each)),
                    pieces,
                    "{people} {grams} g"
                );
            }
        }
    }
}
