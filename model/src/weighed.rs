//! The animal in every scenario once something of it was weighed.
//!
//! What is learned is learned about logarithms: muscles, bone, hide and the rest differ from animal to animal by
//! factors, so that a spread is a part of the mass and no mass falls to nothing. Each muscle and each line of the
//! ledger is moved by what its scenarios have in common with what was weighed. The ledger is then closed: the
//! lines inside the weight that was entered are scaled together until they and the meat are that weight again.

use std::num::NonZeroU8;

use crate::anatomy::{Muscle, Side};
use crate::animal::Weighed;
use crate::carcass::{self, Carcass, Scenarios};
use crate::cutting::Landed;
use crate::ensemble::SCENARIOS;
use crate::forecast;
use crate::grind::{self, GroundPacks};
use crate::kalman::{Observation, learn};
use crate::plan::Plan;
use crate::product::Product;
use crate::scale::{self, OnScale, Weighing};
use crate::units::Mass;
use crate::wounds;

/// The animal of a plan in every scenario, by everything that was weighed.
pub fn carcass(plan: &Plan) -> Carcass {
    let mut carcass = carcass::carcass(plan);
    let observations = observations(&mut Prior::new(plan, &carcass), plan.weighings());
    if !observations.is_empty() {
        let mut columns = columns(&carcass);
        learn(&mut columns, observations);
        put_back(plan, &columns, &mut carcass);
    }
    carcass
}

/// Whether two plans are sure to have the same animal in every scenario: they may differ in how it is cut, unless
/// what was weighed of it depends on that.
pub(crate) fn is_same_animal(one: &Plan, other: &Plan) -> bool {
    let weighings = (one.weighings(), other.weighings());
    one.animal() == other.animal()
        && one.losses() == other.losses()
        && one.own() == other.own()
        && one.wounds() == other.wounds()
        && Muscle::ALL.into_iter().all(|muscle| one.is_recovered(muscle) == other.is_recovered(muscle))
        && (weighings == (&[], &[]) || one == other)
}

/// What each scenario would show on the scale, in logarithms of grams, once `weighings` are known. None where a
/// scenario shows nothing.
pub(crate) fn expected(plan: &Plan, weighings: &[Weighing], target: OnScale) -> Option<Scenarios<f64>> {
    let carcass = carcass::carcass(plan);
    let mut prior = Prior::new(plan, &carcass);
    let mut columns = columns(&carcass);
    columns.push(prior.expected(target)?);
    learn(&mut columns, observations(&mut prior, weighings));
    columns.pop()
}

/// What was expected before anything was weighed.
struct Prior<'a> {
    plan: &'a Plan,
    carcass: &'a Carcass,
    /// What lands where, once it is asked for.
    landed: Option<Landed>,
}

impl<'a> Prior<'a> {
    fn new(plan: &'a Plan, carcass: &'a Carcass) -> Self {
        Self { plan, carcass, landed: None }
    }

    fn expected(&mut self, target: OnScale) -> Option<Scenarios<f64>> {
        let plan = self.plan;
        let mut grams = match target {
            OnScale::Muscle(muscle, sides) => {
                let clean = Side::ALL.into_iter().filter(|side| sides.includes(*side));
                let mut parts = [0.0; Muscle::COUNT];
                parts[muscle.index()] =
                    clean.map(|side| 1.0 - wounds::share(plan.wounds(), muscle, side)).sum();
                self.together(&parts)
            }
            OnScale::Lot => self.together(&carcass::parts_taken(plan).map(|taken| taken * 2.0)),
            OnScale::Tub => self.finished(Product::Grind, None, (1.0, None)),
            OnScale::Packages(product, count) => self.finished(product, count, finished(plan, product)),
        };
        // Less than a gram is nothing.
        if grams.iter().any(|grams| *grams < 1.0) {
            return None;
        }
        for grams in &mut grams {
            *grams = libm::log(*grams);
        }
        Some(grams)
    }

    /// So much of each muscle of one side, in grams.
    fn together(&self, parts: &[f64; Muscle::COUNT]) -> Scenarios<f64> {
        let muscles = &self.carcass.muscles;
        let of = |scenario: usize| {
            muscles.iter().zip(parts).map(|(mass, part)| mass[scenario].to_grams() * part).sum()
        };
        (0..SCENARIOS).map(of).collect()
    }

    /// So many packages of what lands in a product, or all, in grams.
    fn finished(
        &mut self,
        product: Product,
        count: Option<NonZeroU8>,
        (per_landed, pack): (f64, Option<Mass>),
    ) -> Scenarios<f64> {
        let landed = self.landed.get_or_insert_with(|| forecast::landed(self.plan, self.carcass));
        let of = |(mass, packs): (&Mass, &u32)| {
            let all = mass.to_grams() * per_landed;
            let Some(count) = count.map(|count| f64::from(count.get())) else { return all };
            match pack {
                // So many full packs, if there is meat for so many.
                Some(pack) => all.min(pack.to_grams() * count),
                None => all * (count / f64::from(*packs)).min(1.0),
            }
        };
        landed.mass[product as usize].iter().zip(&landed.packs[product as usize]).map(of).collect()
    }
}

fn observations(prior: &mut Prior, weighings: &[Weighing]) -> Vec<Observation> {
    let seen = scale::seen(weighings).into_iter();
    seen.filter_map(|seen| {
        Some(Observation {
            expected: prior.expected(seen.target)?,
            seen: libm::log(seen.mass.to_grams()),
            variance: seen.variance(),
            own: match seen.target {
                OnScale::Muscle(muscle, _) => Some(LINES + muscle.index()),
                OnScale::Lot | OnScale::Tub | OnScale::Packages(..) => None,
            },
        })
    })
    .collect()
}

/// How much finished meat comes of what lands, for one of it; and a full package, where meat is packed loose.
fn finished(plan: &Plan, product: Product) -> (f64, Option<Mass>) {
    match product {
        Product::Roast | Product::Steak | Product::Chop => (1.0, None),
        Product::Stew => (1.0, Some(plan.packing().loose_pack(product))),
        Product::Grind => {
            let grinding = plan.kitchen().grinder.grinding(plan.packing(), None);
            let some = Mass::kilograms(1.0);
            let per_tub = grind::grind(some, &grinding).map_or(1.0, |ground| ground.total() / some);
            let pack = match grinding.packs {
                GroundPacks::Weight(weight) => weight,
                GroundPacks::Patties { patty, a_pack } => patty.mass() * f64::from(a_pack),
            };
            (per_tub, Some(pack))
        }
    }
}

/// Lines that are never empty, outermost first, then the two that may be.
const LINES: usize = 7;
/// Guts; hide, head and feet; bone; trim; drying.
const NEVER_EMPTY: usize = 5;
const DRYING: usize = 4;
/// At least this part of what is not meat stays in any scenario, however heavy the muscles are said to be. It
/// is met only by weights that are questioned. Judgement.
const LEAST_REST: f64 = 0.2;

/// The lines of the ledger that are not muscle, in one scenario.
fn lines(carcass: &Carcass, scenario: usize) -> [Mass; LINES] {
    [
        carcass.live[scenario] - carcass.dressed[scenario],
        carcass.dressed[scenario] - carcass.hanging[scenario],
        carcass.bone[scenario],
        carcass.trim[scenario],
        carcass.drying[scenario],
        carcass.wound[scenario],
        carcass.left_behind[scenario],
    ]
}

/// All muscles of both sides in one scenario.
fn meat(carcass: &Carcass, scenario: usize) -> Mass {
    carcass.muscles.iter().map(|masses| masses[scenario] * 2.0).sum()
}

/// What can be learned about: the lines, then the muscles. Logarithms of grams; plain grams of the two lines that
/// may be empty.
fn columns(carcass: &Carcass) -> Vec<Scenarios<f64>> {
    let mut columns = vec![Vec::new(); LINES];
    for scenario in 0..SCENARIOS {
        for (line, mass) in lines(carcass, scenario).into_iter().enumerate() {
            let grams = mass.to_grams();
            columns[line].push(if line < NEVER_EMPTY { libm::log(grams) } else { grams });
        }
    }
    let log = |masses: &Scenarios<Mass>| masses.iter().map(|mass| libm::log(mass.to_grams())).collect();
    columns.extend(carcass.muscles.iter().map(log));
    columns
}

/// The columns as masses again, closed.
fn put_back(plan: &Plan, columns: &[Scenarios<f64>], carcass: &mut Carcass) {
    // The lines before the first lie outside the weight that was entered, and know nothing of what is inside.
    let (first, is_closed) = match plan.animal().weighed() {
        Weighed::Live(_) => (0, true),
        Weighed::FieldDressed(..) => (1, true),
        Weighed::Hanging(_) => (2, true),
        Weighed::Deboned(_) => (LINES, false),
        Weighed::Typical | Weighed::Girth(_) => (0, false),
    };
    for scenario in 0..SCENARIOS {
        let (old, old_meat) = (lines(carcass, scenario), meat(carcass, scenario));
        let aged = carcass.lean[scenario] - old[NEVER_EMPTY] - old[NEVER_EMPTY + 1] - old_meat;
        let mut new: [Mass; LINES] = std::array::from_fn(|line| {
            let value = columns[line][scenario];
            if line < first {
                old[line]
            } else if line < NEVER_EMPTY {
                Mass::grams(libm::exp(value))
            } else {
                // A loss that comes out below nothing is none; what is missing is closed with the rest.
                Mass::grams(value.max(0.0))
            }
        });
        for (masses, column) in carcass.muscles.iter_mut().zip(&columns[LINES..]) {
            masses[scenario] = Mass::grams(libm::exp(column[scenario]));
        }
        if is_closed {
            close(&mut new[first..], old[first..].iter().copied().sum(), old_meat, carcass, scenario);
        }
        let [guts, hide, bone, trim, drying, wound, left_behind] = new;
        let meat = meat(carcass, scenario);
        let hanging = meat + bone + trim + drying + wound + left_behind;
        let length = libm::cbrt(hanging / carcass.hanging[scenario]);
        carcass.lean[scenario] = meat + wound + left_behind + aged * (drying / old[DRYING]);
        carcass.hanging[scenario] = hanging;
        carcass.dressed[scenario] = hanging + hide;
        carcass.live[scenario] = hanging + hide + guts;
        carcass.bone[scenario] = bone;
        carcass.trim[scenario] = trim;
        carcass.drying[scenario] = drying;
        carcass.wound[scenario] = wound;
        carcass.left_behind[scenario] = left_behind;
        for lengths in &mut carcass.lengths {
            lengths[scenario] = lengths[scenario] * length;
        }
    }
}

/// Scales the lines inside the entered weight so that they and the meat are that weight. If the meat leaves too
/// little for them, it is scaled too.
fn close(inside: &mut [Mass], rest: Mass, old_meat: Mass, carcass: &mut Carcass, scenario: usize) {
    let whole = rest + old_meat;
    let most = whole - rest * LEAST_REST;
    let mut now = meat(carcass, scenario);
    if now > most {
        let factor = most / now;
        for masses in &mut carcass.muscles {
            masses[scenario] = masses[scenario] * factor;
        }
        now = most;
    }
    let factor = (whole - now) / inside.iter().copied().sum::<Mass>();
    for line in inside {
        *line = *line * factor;
    }
}
