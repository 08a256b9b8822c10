//! The forecast: a pure function of the plan.
//!
//! Every scenario of the ensemble goes through the whole chain to whole packages; the spreads are read off
//! at the end. `likely` is the middle case, in which the ledger adds up exactly and the plate is drawn;
//! `low` and `high` bound the middle 80 % of the thousand draws.

use std::rc::Rc;

use crate::anatomy::Muscle;
use crate::carcass::Carcass;
use crate::cutting::{self, CutMuscle, Landed};
use crate::ensemble::SCENARIOS;
use crate::estimate::Estimate;
use crate::packing;
use crate::pieces::Pieces;
use crate::plan::Plan;
use crate::product::{Cut, Product};
use crate::rules::Reason;
use crate::spread::Spread;
use crate::units::{Area, Length, Mass};
use crate::weighed;

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
    pub muscles: Vec<Rc<MuscleForecast>>,
}

/// What a plan gives.
pub fn forecast(plan: &Plan) -> Forecast {
    Forecaster::default().forecast(plan)
}

/// Forecasts one plan after another, and keeps what the next decides alike: the animal, and every muscle whose cut
/// is the same. What comes out is what [`forecast`] gives, bit for bit.
#[derive(Debug, Default)]
pub struct Forecaster {
    last: Option<Last>,
}

/// What came of a plan.
#[derive(Debug)]
struct Last {
    plan: Plan,
    carcass: Carcass,
    muscles: Vec<CutMuscle>,
}

impl Forecaster {
    /// What a plan gives.
    pub fn forecast(&mut self, plan: &Plan) -> Forecast {
        let (carcass, kept) = match self.last.take() {
            Some(last) if weighed::is_same_animal(&last.plan, plan) => {
                (last.carcass, if last.plan.packing() == plan.packing() { last.muscles } else { Vec::new() })
            }
            _ => (weighed::carcass(plan), Vec::new()),
        };
        let muscles = cutting::cut_up(plan, &carcass, kept);
        let forecast = added_up(plan, &carcass, &muscles);
        self.last = Some(Last { plan: plan.clone(), carcass, muscles });
        forecast
    }
}

/// What lands in each product when this animal is cut as planned.
pub(crate) fn landed(plan: &Plan, carcass: &Carcass) -> Landed {
    cutting::together(plan.packing(), &cutting::cut_up(plan, carcass, Vec::new()))
}

fn added_up(plan: &Plan, carcass: &Carcass, muscles: &[CutMuscle]) -> Forecast {
    let mut spread = Spread::default();
    let sums = cutting::together(plan.packing(), muscles);
    let take_home: Vec<Mass> =
        (0..SCENARIOS).map(|scenario| sums.mass.iter().map(|masses| masses[scenario]).sum()).collect();
    let packs: Vec<u32> =
        (0..SCENARIOS).map(|scenario| sums.packs.iter().map(|packs| packs[scenario]).sum()).collect();
    let tallies = Product::ALL.into_iter().map(|product| tally(plan, product, &sums, &mut spread)).collect();
    let (live, take_home) = (spread.masses(&carcass.live), spread.masses(&take_home));
    let ledger = Line::ALL
        .into_iter()
        .map(|line| (line, line_estimate(line, carcass, &sums, (live, take_home), &mut spread)))
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
        muscles: muscles.iter().map(|muscle| muscle.forecast.clone()).collect(),
    }
}

fn line_estimate(
    line: Line,
    carcass: &Carcass,
    sums: &Landed,
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

fn tally(plan: &Plan, product: Product, sums: &Landed, spread: &mut Spread) -> Tally {
    let masses = &sums.mass[product as usize];
    let packs = &sums.packs[product as usize];
    let loose = matches!(product, Product::Stew | Product::Grind).then(|| {
        let pack = plan.packing().loose_pack(product);
        (pack, packing::short_last(masses[0], pack, packs[0]))
    });
    Tally { product, packs: spread.counts(packs), mass: spread.masses(masses), loose }
}
