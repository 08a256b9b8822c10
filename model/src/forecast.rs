//! The forecast: a pure function of the plan.
//!
//! Every scenario of the ensemble goes through the whole chain to whole packages; the spreads are read off
//! at the end. `likely` is the middle case, in which the ledger adds up exactly and the plate is drawn;
//! `low` and `high` bound the middle 80 % of the thousand draws.

use crate::anatomy::{Muscle, Side};
use crate::carcass::Carcass;
use crate::ensemble::{Draw, SCENARIOS};
use crate::estimate::Estimate;
use crate::packing;
use crate::pieces::{self, Body, Pieces};
use crate::plan::Plan;
use crate::product::{Cut, Product, RoastSize};
use crate::rules::{self, Reason, Verdict};
use crate::spread::Spread;
use crate::tables;
use crate::units::{Area, Length, Mass};
use crate::weighed;
use crate::wounds;

/// How much spread the hand has around the planned thickness, at 90 % (judgement).
const HAND_SPREAD: Estimate<f64> = Estimate::row(-0.08, 0.0, 0.08);

/// A line of the ledger. The lines after `Live` add up to it, in every scenario.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// What went in.
    Live,
    /// Organs of chest and belly.
    Viscera,
    /// Head, hide and lower legs.
    HeadHideFeet,
    /// Bone, with the scraps on it.
    Bone,
    /// Fat, membrane, silverskin, tendon.
    Trim,
    /// Water lost while hanging and cutting, and dry crust.
    Drying,
    /// Meat around the wound.
    Wound,
    /// Meat left on the bones.
    LeftBehind,
    /// Groups that were not taken.
    NotRecovered,
    /// Parts thrown away on purpose.
    Discarded,
    /// What goes into packages.
    TakeHome,
}

impl Line {
    /// Every line, top to bottom.
    pub const ALL: [Line; 11] = [
        Line::Live,
        Line::Viscera,
        Line::HeadHideFeet,
        Line::Bone,
        Line::Trim,
        Line::Drying,
        Line::Wound,
        Line::LeftBehind,
        Line::NotRecovered,
        Line::Discarded,
        Line::TakeHome,
    ];

    /// The name used by scripts.
    pub const fn id(self) -> &'static str {
        match self {
            Line::Live => "live",
            Line::Viscera => "viscera",
            Line::HeadHideFeet => "head_hide_feet",
            Line::Bone => "bone",
            Line::Trim => "trim",
            Line::Drying => "drying",
            Line::Wound => "wound",
            Line::LeftBehind => "left_behind",
            Line::NotRecovered => "not_recovered",
            Line::Discarded => "discarded",
            Line::TakeHome => "take_home",
        }
    }
}

/// Something worth saying about a part, with its reason. It never changes the plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Advice {
    /// Allowed, but take care.
    Care(Reason),
    /// A poor use.
    Discouraged(Reason),
    /// No piece of that size fits; the part goes to the tub.
    NothingFits,
    /// A roast this light dries out.
    SmallRoast(Mass),
    /// A steak with a face this small.
    SmallFace(Area),
    /// A muscle this thin gives no steak.
    ThinMuscle(Length),
}

/// One part of a muscle of one side.
#[derive(Clone, Debug, PartialEq)]
pub struct PartForecast {
    /// What it becomes.
    pub cut: Cut,
    /// Whether a wound took it, whatever was planned.
    pub spoiled: bool,
    /// Where it begins and ends, as fractions of the muscle's length.
    pub span: (f64, f64),
    /// The pieces of the middle case, as the plate draws them.
    pub pieces: Pieces,
    /// What is worth saying.
    pub advice: Vec<Advice>,
}

/// One muscle group.
#[derive(Clone, Debug, PartialEq)]
pub struct MuscleForecast {
    /// Which group.
    pub muscle: Muscle,
    /// Both sides together, before it is cut.
    pub mass: Estimate<Mass>,
    /// Length on this animal, middle case; none for scraps.
    pub length: Option<Length>,
    /// Left and right, part by part.
    pub sides: [Vec<PartForecast>; 2],
    /// Packages of it alone, cut by cut; stew and grind are pooled and not here.
    pub packs: Vec<PackRow>,
}

/// Packages of one cut of one muscle, both sides together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackRow {
    /// Which group.
    pub muscle: Muscle,
    /// Which cut.
    pub cut: Cut,
    /// Pieces.
    pub pieces: Estimate<u32>,
    /// Packages.
    pub packs: Estimate<u32>,
    /// All of them together.
    pub mass: Estimate<Mass>,
    /// Pieces in a full package, middle case.
    pub a_pack: u32,
    /// Pieces in the last package if it is short, middle case.
    pub short: Option<u32>,
}

/// Packages of one product.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tally {
    /// Which product.
    pub product: Product,
    /// Packages.
    pub packs: Estimate<u32>,
    /// All of them together.
    pub mass: Estimate<Mass>,
    /// A full package of loose meat, and the last one if it is short; middle case, stew and grind only.
    pub loose: Option<(Mass, Option<Mass>)>,
}

/// Everything expected of a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Forecast {
    /// Whole.
    pub live: Estimate<Mass>,
    /// Field-dressed, lower legs on.
    pub dressed: Estimate<Mass>,
    /// Hanging.
    pub hanging: Estimate<Mass>,
    /// Careful boneless, before shot, hurry and hanging.
    pub lean: Estimate<Mass>,
    /// From live to take-home, in the order of [`Line::ALL`].
    pub ledger: Vec<(Line, Estimate<Mass>)>,
    /// What goes into packages.
    pub take_home: Estimate<Mass>,
    /// All packages.
    pub packs: Estimate<u32>,
    /// By product, in the order of [`Product::ALL`].
    pub tallies: Vec<Tally>,
    /// By group, in the order of [`Muscle::ALL`].
    pub muscles: Vec<MuscleForecast>,
}

/// What every scenario adds up while the muscles are cut.
struct Sums {
    mass: [Vec<Mass>; 5],
    packs: [Vec<u32>; 5],
    not_recovered: Vec<Mass>,
    discarded: Vec<Mass>,
    /// At marked wounds.
    wound: Vec<Mass>,
}

impl Sums {
    fn new() -> Self {
        let masses = || vec![Mass::ZERO; SCENARIOS];
        Self {
            mass: std::array::from_fn(|_| masses()),
            packs: std::array::from_fn(|_| vec![0; SCENARIOS]),
            not_recovered: masses(),
            discarded: masses(),
            wound: masses(),
        }
    }

    fn add(&mut self, scenario: usize, pieces: &Pieces, group: &Group, times: f64) {
        if let Some(product) = group.cut.product() {
            self.mass[product as usize][scenario] += pieces.mass * times;
        }
        self.mass[Product::Grind as usize][scenario] += pieces.tub * times;
        let thrown = if group.spoiled { &mut self.wound } else { &mut self.discarded };
        thrown[scenario] += pieces.discarded * times;
    }
}

/// Parts of a muscle, on either side, that become the same thing and are packed together.
struct Group {
    cut: Cut,
    spoiled: bool,
    /// Where each part begins and ends, and on how many sides it is so.
    spans: Vec<(f64, f64, f64)>,
}

/// What a plan gives.
pub fn forecast(plan: &Plan) -> Forecast {
    let carcass = weighed::carcass(plan);
    let mut spread = Spread::default();
    let (muscles, sums) = cut_up(plan, &carcass, &mut spread);
    let take_home: Vec<Mass> =
        (0..SCENARIOS).map(|scenario| sums.mass.iter().map(|masses| masses[scenario]).sum()).collect();
    let packs: Vec<u32> =
        (0..SCENARIOS).map(|scenario| sums.packs.iter().map(|packs| packs[scenario]).sum()).collect();
    let tallies = Product::ALL.into_iter().map(|product| tally(plan, product, &sums, &mut spread)).collect();
    let (live, take_home) = (spread.masses(&carcass.live), spread.masses(&take_home));
    let ledger = Line::ALL
        .into_iter()
        .map(|line| (line, line_estimate(line, &carcass, &sums, (live, take_home), &mut spread)))
        .collect();
    Forecast {
        live,
        dressed: spread.masses(&carcass.dressed),
        hanging: spread.masses(&carcass.hanging),
        lean: spread.masses(&carcass.lean),
        ledger,
        take_home,
        packs: spread.counts(&packs),
        tallies,
        muscles,
    }
}

/// What lands in each product, scenario by scenario.
pub(crate) struct Landed {
    /// In the order of [`Product::ALL`].
    pub(crate) mass: [Vec<Mass>; 5],
    /// In the order of [`Product::ALL`].
    pub(crate) packs: [Vec<u32>; 5],
}

/// What lands in each product when this animal is cut as planned.
pub(crate) fn landed(plan: &Plan, carcass: &Carcass) -> Landed {
    let (_, Sums { mass, packs, .. }) = cut_up(plan, carcass, &mut Spread::default());
    Landed { mass, packs }
}

/// Cuts and packs every muscle in every scenario.
fn cut_up(plan: &Plan, carcass: &Carcass, spread: &mut Spread) -> (Vec<MuscleForecast>, Sums) {
    let mut sums = Sums::new();
    let hand: Vec<f64> = Draw::Hand.values().iter().map(|z| 1.0 + HAND_SPREAD.at(*z)).collect();
    let muscles = Muscle::ALL
        .into_iter()
        .map(|muscle| muscle_forecast(plan, carcass, muscle, &hand, &mut sums, spread))
        .collect();
    for product in [Product::Stew, Product::Grind] {
        let pack = plan.packing().loose_pack(product);
        for scenario in 0..SCENARIOS {
            sums.packs[product as usize][scenario] =
                packing::packs_of_loose(sums.mass[product as usize][scenario], pack);
        }
    }
    (muscles, sums)
}

fn line_estimate(
    line: Line,
    carcass: &Carcass,
    sums: &Sums,
    (whole, take_home): (Estimate<Mass>, Estimate<Mass>),
    spread: &mut Spread,
) -> Estimate<Mass> {
    match line {
        Line::Live => whole,
        Line::Viscera => spread.differences(&carcass.live, &carcass.dressed),
        Line::HeadHideFeet => spread.differences(&carcass.dressed, &carcass.hanging),
        Line::Bone => spread.masses(&carcass.bone),
        Line::Trim => spread.masses(&carcass.trim),
        Line::Drying => spread.masses(&carcass.drying),
        Line::Wound => {
            let all: Vec<Mass> =
                carcass.wound.iter().zip(&sums.wound).map(|(usual, marked)| *usual + *marked).collect();
            spread.masses(&all)
        }
        Line::LeftBehind => spread.masses(&carcass.left_behind),
        Line::NotRecovered => spread.masses(&sums.not_recovered),
        Line::Discarded => spread.masses(&sums.discarded),
        Line::TakeHome => take_home,
    }
}

fn tally(plan: &Plan, product: Product, sums: &Sums, spread: &mut Spread) -> Tally {
    let masses = &sums.mass[product as usize];
    let packs = &sums.packs[product as usize];
    let loose = matches!(product, Product::Stew | Product::Grind).then(|| {
        let pack = plan.packing().loose_pack(product);
        (pack, packing::short_last(masses[0], pack, packs[0]))
    });
    Tally { product, packs: spread.counts(packs), mass: spread.masses(masses), loose }
}

fn muscle_forecast(
    plan: &Plan,
    carcass: &Carcass,
    muscle: Muscle,
    hand: &[f64],
    sums: &mut Sums,
    spread: &mut Spread,
) -> MuscleForecast {
    let row = tables::muscle(muscle);
    let masses = &carcass.muscles[muscle.index()];
    let lengths = &carcass.lengths[muscle.index()];
    let body = |scenario: usize| Body::new(masses[scenario], lengths[scenario], row.size);
    let sides = Side::ALL.map(|side| stretches(plan, muscle, side));
    let mut packs = Vec::new();
    if plan.is_recovered(muscle) {
        for group in groups(&sides) {
            packs.extend(group_packs(plan, muscle, &group, &body, hand, sums, spread));
        }
    } else {
        for (left, mass) in sums.not_recovered.iter_mut().zip(masses) {
            *left += *mass * 2.0;
        }
    }
    let length = row.size.map(|_| lengths[0]);
    let middle = body(0);
    let part = |Stretch { from, to, cut, spoiled }: Stretch| {
        let pieces = pieces::cut(&middle, from, to, cut, 1.0);
        PartForecast {
            cut,
            spoiled,
            span: (from, to),
            pieces,
            advice: advice(muscle, cut, &pieces, masses[0], length),
        }
    };
    MuscleForecast {
        muscle,
        mass: spread.masses(masses).map(|mass| mass * 2.0),
        length,
        sides: sides.map(|stretches| stretches.into_iter().map(part).collect()),
        packs,
    }
}

/// A stretch of a muscle of one side, by fractions of its length.
#[derive(Clone, Copy, PartialEq)]
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
    plan: &Plan,
    muscle: Muscle,
    group: &Group,
    body: &impl Fn(usize) -> Body,
    hand: &[f64],
    sums: &mut Sums,
    spread: &mut Spread,
) -> Option<PackRow> {
    let product = group.cut.product();
    let whole = product.filter(|product| matches!(product, Product::Roast | Product::Steak | Product::Chop));
    let (mut counts, mut packs, mut masses) = (Vec::new(), Vec::new(), Vec::new());
    let (mut a_pack, mut short) = (1, None);
    for (scenario, hand) in hand.iter().enumerate() {
        let body = body(scenario);
        let (mut count, mut mass) = (0, Mass::ZERO);
        for (from, to, times) in &group.spans {
            let pieces = pieces::cut(&body, *from, *to, group.cut, *hand);
            sums.add(scenario, &pieces, group, *times);
            count += pieces.count * *times as u32;
            mass += pieces.mass * *times;
        }
        if let Some(product) = whole {
            let in_pack = plan.packing().pieces_a_pack(product, mass / f64::from(count.max(1)));
            let made = packing::packs_of_pieces(count, in_pack);
            if scenario == 0 {
                a_pack = in_pack;
                short = Some(count % in_pack).filter(|rest| *rest > 0);
            }
            sums.packs[product as usize][scenario] += made;
            counts.push(count);
            packs.push(made);
            masses.push(mass);
        }
    }
    whole.map(|_| PackRow {
        muscle,
        cut: group.cut,
        pieces: spread.counts(&counts),
        packs: spread.counts(&packs),
        mass: spread.masses(&masses),
        a_pack,
        short,
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
