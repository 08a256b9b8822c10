//! Every muscle cut and packed as planned, in every scenario.

use std::ops::AddAssign;
use std::rc::Rc;

use crate::anatomy::{Muscle, Side};
use crate::carcass::{Carcass, Scenarios};
use crate::ensemble::{Draw, SCENARIOS};
use crate::estimate::Estimate;
use crate::forecast::{Advice, MuscleForecast, PackRow, PartForecast};
use crate::packing::{self, Packing};
use crate::pieces::{self, Body, Pieces};
use crate::plan::Plan;
use crate::product::{Cut, Product, RoastSize};
use crate::rules::{self, Verdict};
use crate::spread::Spread;
use crate::tables;
use crate::units::{Area, Length, Mass};
use crate::wounds;

/// How much spread the hand has around the planned thickness, at 90 % (judgement).
const HAND_SPREAD: Estimate<f64> = Estimate::row(-0.08, 0.0, 0.08);

/// What lands where, scenario by scenario. Of one muscle, a column in which nothing of it lands is empty.
#[derive(Clone, Debug, Default)]
pub(crate) struct Landed {
    /// In the order of [`Product::ALL`].
    pub(crate) mass: [Scenarios<Mass>; 5],
    /// In the order of [`Product::ALL`].
    pub(crate) packs: [Scenarios<u32>; 5],
    pub(crate) not_recovered: Scenarios<Mass>,
    pub(crate) discarded: Scenarios<Mass>,
    /// At marked wounds.
    pub(crate) wound: Scenarios<Mass>,
}

impl Landed {
    /// Nothing, in every scenario.
    fn nothing() -> Self {
        let masses = || vec![Mass::ZERO; SCENARIOS];
        Self {
            mass: std::array::from_fn(|_| masses()),
            packs: std::array::from_fn(|_| vec![0; SCENARIOS]),
            not_recovered: masses(),
            discarded: masses(),
            wound: masses(),
        }
    }

    fn add(&mut self, other: &Self) {
        for product in Product::ALL.map(|product| product as usize) {
            add(&mut self.mass[product], &other.mass[product]);
            add(&mut self.packs[product], &other.packs[product]);
        }
        add(&mut self.not_recovered, &other.not_recovered);
        add(&mut self.discarded, &other.discarded);
        add(&mut self.wound, &other.wound);
    }
}

/// Adds a column to another, scenario by scenario; an empty one is nothing.
fn add<T: Copy + AddAssign>(column: &mut Vec<T>, more: &[T]) {
    if column.is_empty() {
        column.extend_from_slice(more);
    } else {
        for (sum, more) in column.iter_mut().zip(more) {
            *sum += *more;
        }
    }
}

/// One muscle cut and packed, with what decided how: the next plan keeps what it decides alike.
#[derive(Clone, Debug)]
pub(crate) struct CutMuscle {
    sides: [Vec<Stretch>; 2],
    is_recovered: bool,
    pub(crate) forecast: Rc<MuscleForecast>,
    landed: Landed,
}

/// Cuts and packs every muscle in every scenario. `kept` is what came of the same animal and packing before, in the
/// order of [`Muscle::ALL`], or nothing.
pub(crate) fn cut_up(plan: &Plan, carcass: &Carcass, kept: Vec<CutMuscle>) -> Vec<CutMuscle> {
    let mut kept = kept.into_iter();
    let hand: Vec<f64> = Draw::Hand.values().iter().map(|z| 1.0 + HAND_SPREAD.at(*z)).collect();
    let mut spread = Spread::default();
    let cut = |muscle: Muscle| {
        let sides = Side::ALL.map(|side| stretches(plan, muscle, side));
        let is_recovered = plan.is_recovered(muscle);
        match kept.next() {
            Some(kept) if kept.sides == sides && kept.is_recovered == is_recovered => kept,
            _ => cut_muscle(plan, carcass, muscle, sides, &hand, &mut spread),
        }
    };
    Muscle::ALL.into_iter().map(cut).collect()
}

/// What lands in each product of all muscles together; stew and grind, which are pooled, are packed here.
pub(crate) fn together(packing: &Packing, muscles: &[CutMuscle]) -> Landed {
    let mut landed = Landed::nothing();
    for muscle in muscles {
        landed.add(&muscle.landed);
    }
    for product in [Product::Stew, Product::Grind] {
        let pack = packing.loose_pack(product);
        let of = |mass: &Mass| packing::packs_of_loose(*mass, pack);
        landed.packs[product as usize] = landed.mass[product as usize].iter().map(of).collect();
    }
    landed
}

/// Parts of a muscle, on either side, that become the same thing and are packed together.
struct Group {
    cut: Cut,
    spoiled: bool,
    /// Where each part begins and ends, and on how many sides it is so.
    spans: Vec<(f64, f64, f64)>,
}

fn cut_muscle(
    plan: &Plan,
    carcass: &Carcass,
    muscle: Muscle,
    sides: [Vec<Stretch>; 2],
    hand: &[f64],
    spread: &mut Spread,
) -> CutMuscle {
    let row = tables::muscle(muscle);
    let masses = &carcass.muscles[muscle.index()];
    let lengths = &carcass.lengths[muscle.index()];
    let body = |scenario: usize| Body::new(masses[scenario], lengths[scenario], row.size);
    let (mut packs, mut landed) = (Vec::new(), Landed::default());
    let is_recovered = plan.is_recovered(muscle);
    if is_recovered {
        for group in groups(&sides) {
            packs.extend(group_packs(plan.packing(), muscle, &group, &body, hand, &mut landed, spread));
        }
    } else {
        landed.not_recovered = masses.iter().map(|mass| *mass * 2.0).collect();
    }
    let length = row.size.map(|_| lengths[0]);
    let middle = body(0);
    let part = |&Stretch { from, to, cut, spoiled }: &Stretch| {
        let pieces = pieces::cut(&middle, from, to, cut, 1.0);
        PartForecast {
            cut,
            spoiled,
            span: (from, to),
            pieces,
            advice: advice(muscle, cut, &pieces, masses[0], length),
        }
    };
    let forecast = Rc::new(MuscleForecast {
        muscle,
        mass: spread.masses(masses).map(|mass| mass * 2.0),
        length,
        sides: sides.each_ref().map(|stretches| stretches.iter().map(part).collect()),
        packs,
    });
    CutMuscle { sides, is_recovered, forecast, landed }
}

/// A stretch of a muscle of one side, by fractions of its length.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Stretch {
    from: f64,
    to: f64,
    cut: Cut,
    spoiled: bool,
}

/// The parts of a muscle of one side, less what the wounds took out of them.
fn stretches(plan: &Plan, muscle: Muscle, side: Side) -> Vec<Stretch> {
    let body = Body::new(Mass::ZERO, Length::mm(0.0), tables::muscle(muscle).size);
    let wounds: Vec<(f64, f64)> = wounds::spoiled(plan.wounds(), muscle, side)
        .into_iter()
        .map(|(from, to)| (body.place_of(from), body.place_of(to)))
        .collect();
    let mut stretches = Vec::new();
    for (begin, end, cut) in plan.division(muscle, side).spans() {
        let mut at = begin;
        for (from, to) in wounds.iter().filter(|(from, to)| *to > begin && *from < end) {
            if *from > at {
                stretches.push(Stretch { from: at, to: *from, cut, spoiled: false });
            }
            let to = to.min(end);
            stretches.push(Stretch { from: from.max(at), to, cut: Cut::Discard, spoiled: true });
            at = to;
        }
        if at < end {
            stretches.push(Stretch { from: at, to: end, cut, spoiled: false });
        }
    }
    stretches
}

fn groups([left, right]: &[Vec<Stretch>; 2]) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    let sides = if left == right { vec![(left, 2.0)] } else { vec![(left, 1.0), (right, 1.0)] };
    for (stretches, times) in sides {
        for &Stretch { from, to, cut, spoiled } in stretches {
            let span = (from, to, times);
            match groups.iter_mut().find(|group| group.cut == cut && group.spoiled == spoiled) {
                Some(group) => group.spans.push(span),
                None => groups.push(Group { cut, spoiled, spans: vec![span] }),
            }
        }
    }
    groups
}

/// Cuts one group in every scenario. Whole cuts are packed here, by muscle; loose meat is packed when all of
/// it is together.
fn group_packs(
    packing: &Packing,
    muscle: Muscle,
    group: &Group,
    body: &impl Fn(usize) -> Body,
    hand: &[f64],
    landed: &mut Landed,
    spread: &mut Spread,
) -> Option<PackRow> {
    let (mut counts, mut masses, mut tub, mut thrown) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for (scenario, hand) in hand.iter().enumerate() {
        let body = body(scenario);
        let mut sum = Pieces::default();
        for (from, to, times) in &group.spans {
            let pieces = pieces::cut(&body, *from, *to, group.cut, *hand);
            sum.count += pieces.count * *times as u32;
            sum.mass += pieces.mass * *times;
            sum.tub += pieces.tub * *times;
            sum.discarded += pieces.discarded * *times;
        }
        counts.push(sum.count);
        masses.push(sum.mass);
        tub.push(sum.tub);
        thrown.push(sum.discarded);
    }
    let Some(product) = group.cut.product() else {
        add(if group.spoiled { &mut landed.wound } else { &mut landed.discarded }, &thrown);
        return None;
    };
    add(&mut landed.mass[product as usize], &masses);
    add(&mut landed.mass[Product::Grind as usize], &tub);
    if matches!(product, Product::Stew | Product::Grind) {
        return None;
    }
    let in_pack = |count: u32, mass: Mass| packing.pieces_a_pack(product, mass / f64::from(count.max(1)));
    let made = |(count, mass): (&u32, &Mass)| packing::packs_of_pieces(*count, in_pack(*count, *mass));
    let packs: Vec<u32> = counts.iter().zip(&masses).map(made).collect();
    add(&mut landed.packs[product as usize], &packs);
    let a_pack = in_pack(counts[0], masses[0]);
    Some(PackRow {
        muscle,
        cut: group.cut,
        pieces: spread.counts(&counts),
        packs: spread.counts(&packs),
        mass: spread.masses(&masses),
        a_pack,
        short: Some(counts[0] % a_pack).filter(|rest| *rest > 0),
    })
}

/// A roast lighter than this dries out; a single portion may go down to 300 g (judgement).
const SMALL_ROAST: Mass = Mass::grams(450.0);
/// A steak wants a face of at least this (judgement).
const SMALL_FACE: Area = Area::square_cm(20.0);
/// A muscle thinner than this gives no steak (judgement).
const THIN_MUSCLE: Length = Length::cm(2.0);

/// What is worth saying of a part. The usual use of a muscle is never advised against for its size.
fn advice(muscle: Muscle, cut: Cut, pieces: &Pieces, side_mass: Mass, length: Option<Length>) -> Vec<Advice> {
    let row = tables::muscle(muscle);
    let mut advice = Vec::new();
    let Some(product) = cut.product() else { return advice };
    match rules::verdict(muscle, product) {
        Verdict::Allowed(Some(reason)) => advice.push(Advice::Care(reason)),
        Verdict::Discouraged(reason) | Verdict::Impossible(reason) => {
            advice.push(Advice::Discouraged(reason));
        }
        Verdict::Allowed(None) => {}
    }
    if matches!(product, Product::Roast | Product::Steak | Product::Chop) && pieces.count == 0 {
        advice.push(Advice::NothingFits);
        return advice;
    }
    if product == row.usual {
        return advice;
    }
    if let Cut::Roast(size) = cut {
        let each = pieces.mass / f64::from(pieces.count.max(1));
        // Somebody who asks for small roasts by weight knows that they are small.
        if each < SMALL_ROAST && !matches!(size, RoastSize::Weight(_) if pieces.count > 1) {
            advice.push(Advice::SmallRoast(each));
        }
    }
    if let (Cut::Steak(_), Some(length), Some(size)) = (cut, length, row.size) {
        let thickness = size.thickness * (length / size.length);
        let face = Area::mean_section(side_mass, length);
        if thickness < THIN_MUSCLE {
            advice.push(Advice::ThinMuscle(thickness));
        } else if face < SMALL_FACE {
            advice.push(Advice::SmallFace(face));
        }
    }
    advice
}
