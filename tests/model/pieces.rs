//! Pieces against a slow cutter, over every muscle, product and a grid of sizes and spans.
//!
//! The slow cutter knows only what a muscle is (an even body whose ends taper to nothing) and what a knife
//! does; the numbers it needs are written out again here, so that a slip in the model's formulas shows.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::pieces::{Body, Pieces, cut};
use hindsaddle_model::product::{Cut, Product, RoastSize};
use hindsaddle_model::rules::{Verdict, verdict};
use hindsaddle_model::tables;
use hindsaddle_model::units::{Length, Mass};

/// Unevenness of the hand, lost with every slice: 1 mm. Judgement, as in the model.
const KERF_MM: f64 = 1.0;
/// Parts of a muscle that are tried: the whole, both ends, the middle, and a sliver at each end.
const SPANS: [(f64, f64); 6] = [(0.0, 1.0), (0.0, 0.4), (0.4, 1.0), (0.25, 0.75), (0.0, 0.03), (0.97, 1.0)];
const SCALES: [f64; 3] = [0.6, 1.0, 1.7];

struct Muscled {
    muscle: Muscle,
    body: Body,
    grams: f64,
    mm: f64,
    /// Each tapered end: 4 % of the length, or 2 cm on the reference animal if that is more. Judgement.
    end: f64,
}

/// Every muscle on a small, a middling and a large animal.
fn muscles() -> Vec<Muscled> {
    let mut all = Vec::new();
    for muscle in Muscle::ALL {
        let row = tables::muscle(muscle);
        for scale in SCALES {
            let grams = 135.0 * row.share * scale * scale * scale;
            let mm = row.size.map_or(0.0, |size| size.length.to_mm() * scale);
            let end = row.size.map_or(0.0, |size| f64::max(0.04, 20.0 / size.length.to_mm()));
            let body = Body::new(Mass::grams(grams), Length::mm(mm), row.size);
            all.push(Muscled { muscle, body, grams, mm, end });
        }
    }
    all
}

fn possible(muscle: Muscle, product: Product) -> bool {
    !matches!(verdict(muscle, product), Verdict::Impossible(_))
}

/// Every cut a muscle can be, at several sizes.
fn cuts(muscle: Muscle) -> Vec<Cut> {
    let mut cuts = vec![Cut::Grind, Cut::Discard];
    for mm in [3.0, 9.5, 12.7, 19.0, 25.4, 38.1, 50.8, 102.0] {
        cuts.extend(possible(muscle, Product::Steak).then_some(Cut::Steak(Length::mm(mm))));
        cuts.extend(possible(muscle, Product::Chop).then_some(Cut::Chop(Length::mm(mm))));
    }
    for mm in [10.0, 25.4, 76.2] {
        cuts.extend(possible(muscle, Product::Stew).then_some(Cut::Stew(Length::mm(mm))));
    }
    if possible(muscle, Product::Roast) {
        cuts.push(Cut::Roast(RoastSize::Whole));
        cuts.extend([200.0, 1130.0, 6000.0].map(|grams| Cut::Roast(RoastSize::Weight(Mass::grams(grams)))));
        cuts.extend([50.0, 203.2, 600.0].map(|mm| Cut::Roast(RoastSize::Length(Length::mm(mm)))));
    }
    cuts
}

/// Calls `look` with every muscle, span and cut, and the pieces of it; says how often.
fn everywhere(mut look: impl FnMut(&Muscled, (f64, f64), Cut, Pieces)) -> u32 {
    let mut looked = 0;
    for muscled in muscles() {
        for (from, to) in SPANS {
            for each in cuts(muscled.muscle) {
                look(&muscled, (from, to), each, cut(&muscled.body, from, to, each, 1.0));
                looked += 1;
            }
        }
    }
    looked
}

/// Mass of a stretch by adding up thin discs: the section grows from nothing to its full size over an end.
fn slow_mass(muscled: &Muscled, (from, to): (f64, f64)) -> f64 {
    let section = |u: f64| {
        let in_from_an_end = u.min(1.0 - u);
        if muscled.end > 0.0 { (in_from_an_end / muscled.end).min(1.0) } else { 1.0 }
    };
    let discs = |from: f64, to: f64| -> f64 {
        let count = 4000;
        let thick = (to - from) / f64::from(count);
        (0..count).map(|disc| section(from + (f64::from(disc) + 0.5) * thick) * thick).sum()
    };
    muscled.grams * discs(from, to) / discs(0.0, 1.0)
}

#[test]
fn a_stretch_weighs_what_its_thin_discs_weigh() {
    for muscled in muscles() {
        for span in SPANS {
            let fast = cut(&muscled.body, span.0, span.1, Cut::Grind, 1.0).tub.to_grams();
            let slow = slow_mass(&muscled, span);
            assert!(
                (fast - slow).abs() < 1e-4 * muscled.grams,
                "{:?} {span:?}: {fast} {slow}",
                muscled.muscle
            );
        }
    }
}

#[test]
fn pieces_tub_and_discard_are_the_part_again() {
    let looked = everywhere(|muscled, (from, to), each, pieces| {
        let part = cut(&muscled.body, from, to, Cut::Grind, 1.0).tub;
        let sum = pieces.mass + pieces.tub + pieces.discarded;
        assert!((sum - part).to_grams().abs() < 1e-9, "{:?} {from}..{to} {each:?}", muscled.muscle);
        for mass in [pieces.mass, pieces.tub, pieces.discarded] {
            assert!(mass.to_grams() > -1e-9, "{:?} {from}..{to} {each:?}: {pieces:?}", muscled.muscle);
        }
        // Of stew the mass counts: a handful lighter than half a cube is stew all the same.
        assert!(matches!(each, Cut::Stew(_)) || (pieces.count > 0) == (pieces.mass > Mass::ZERO), "{each:?}");
    });
    assert!(looked > 5000, "{looked}");
}

/// Takes one slice after another off the even stretch, until no whole one is left.
#[test]
fn a_cutter_who_takes_one_slice_at_a_time_agrees() {
    let mut sliced = 0;
    everywhere(|muscled, (from, to), each, pieces| {
        let (Cut::Steak(thick) | Cut::Chop(thick)) = each else { return };
        let stop = to.min(1.0 - muscled.end) * muscled.mm;
        let mut knife = from.max(muscled.end) * muscled.mm;
        let (mut count, mut even_mm) = (0, 0.0);
        while knife + thick.to_mm() + KERF_MM <= stop + 1e-6 {
            knife += thick.to_mm() + KERF_MM;
            even_mm += thick.to_mm();
            count += 1;
        }
        assert_eq!(pieces.count, count, "{:?} {from}..{to} {each:?}", muscled.muscle);
        // The even section, times what the slices keep after they are squared up (97 %, judgement).
        let grams = even_mm / muscled.mm / (1.0 - muscled.end) * muscled.grams * 0.97;
        assert!(
            (pieces.mass.to_grams() - grams).abs() < 1e-6 * muscled.grams,
            "{:?} {each:?}",
            muscled.muscle
        );
        sliced += count;
    });
    assert!(sliced > 10_000, "{sliced}");
}

/// Takes one roast after another; half a roast or more at the end is a short one, less is trim.
#[test]
fn a_cutter_who_takes_one_roast_at_a_time_agrees() {
    everywhere(|muscled, (from, to), each, pieces| {
        let Cut::Roast(RoastSize::Length(long)) = each else { return };
        let mut left = (to - from) * muscled.mm;
        let mut count = 0;
        while left + 1e-6 >= long.to_mm() {
            left -= long.to_mm();
            count += 1;
        }
        // Where not even half a roast fits, the part is one small roast rather than none.
        let short = left > 1e-6 && left >= long.to_mm() / 2.0 || count == 0;
        count += u32::from(short);
        assert_eq!(pieces.count, count, "{:?} {from}..{to} {each:?}", muscled.muscle);
        assert_eq!(pieces.short_last, short, "{:?} {from}..{to} {each:?}", muscled.muscle);
    });
}

/// Roasts by weight share the part evenly, as near the wanted weight as a whole number of them comes.
#[test]
fn roasts_by_weight_are_as_near_as_whole_roasts_come() {
    everywhere(|muscled, (from, to), each, pieces| {
        let Cut::Roast(RoastSize::Weight(weight)) = each else { return };
        let part = cut(&muscled.body, from, to, Cut::Grind, 1.0).tub;
        let wanted = part / weight;
        let off = (f64::from(pieces.count) - wanted).abs();
        assert!(pieces.count == 1 && wanted < 1.5 || off <= 0.5 + 1e-9, "{:?} {each:?}", muscled.muscle);
    });
}

/// A thicker hand makes heavier slices and never more of them.
#[test]
fn a_thicker_slice_or_hand_never_makes_more_pieces() {
    for muscled in muscles() {
        if !possible(muscled.muscle, Product::Steak) || muscled.mm == 0.0 {
            continue;
        }
        let mut before = u32::MAX;
        for tenths in (30..=1020).step_by(5) {
            let steak = Cut::Steak(Length::mm(f64::from(tenths) / 10.0));
            let pieces = cut(&muscled.body, 0.0, 1.0, steak, 1.0);
            assert!(pieces.count <= before, "{:?} {tenths}", muscled.muscle);
            assert!(cut(&muscled.body, 0.0, 1.0, steak, 1.08).count <= pieces.count);
            assert!(cut(&muscled.body, 0.0, 1.0, steak, 0.92).count >= pieces.count);
            before = pieces.count;
        }
    }
}

/// Common practice, no source: steaks about 3/8 in across the grain, chops of 3/8 to 1/2 in, loin roasts of 8
/// to 10 in. A 24 in strap (0.61 m) gives two or three such roasts, or 48 to 64 such chops less kerf and ends.
#[test]
fn common_practice_a_24_inch_strap_gives_what_cutters_say() {
    let row = tables::muscle(Muscle::Backstrap);
    let strap = Body::new(Mass::grams(1325.0), Length::inches(24.0), row.size);
    let count = |each: Cut| cut(&strap, 0.0, 1.0, each, 1.0).count;
    for inches in [8.0, 9.0, 10.0] {
        let roasts = count(Cut::Roast(RoastSize::Length(Length::inches(inches))));
        assert!((2..=3).contains(&roasts), "{inches} in: {roasts}");
    }
    for (inches, bare) in [(0.5, 48), (0.375, 64)] {
        // Ends of 4 % each leave 22.08 in; 1 mm of kerf is 0.039 in.
        let less = (24.0 * 0.92 / (inches + 1.0 / 25.4)) as u32;
        assert!(less < bare);
        assert_eq!(count(Cut::Chop(Length::inches(inches))), less, "{inches} in");
        assert_eq!(count(Cut::Steak(Length::inches(inches))), less, "{inches} in");
    }
}
