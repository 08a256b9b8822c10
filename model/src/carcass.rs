//! The animal in every scenario: from its weight to the mass and length of each muscle of one side.
//!
//! Mass balance: live = viscera + head, hide and feet + bone + fat and membrane + drying + wound + left behind
//! + twice the muscles, in every scenario.

use crate::anatomy::{Muscle, Region, Side};
use crate::animal::{Age, Species, Weighed};
use crate::ensemble::{Draw, SCENARIOS};
use crate::estimate::Estimate;
use crate::plan::Plan;
use crate::tables::{self, MUSCLES, REFERENCE_HANGING};
use crate::units::{Length, Mass};
use crate::wounds;

/// One value for each scenario; the first is the middle case.
pub type Scenarios<T> = Vec<T>;

/// The masses of an animal before anything is decided about its cuts.
#[derive(Clone, Debug, Default)]
pub struct Carcass {
    /// Whole.
    pub live: Scenarios<Mass>,
    /// With head and hide, lower legs on.
    pub dressed: Scenarios<Mass>,
    /// Skinned.
    pub hanging: Scenarios<Mass>,
    /// Careful boneless meat of a clean kill.
    pub lean: Scenarios<Mass>,
    /// Bone with the scraps on it.
    pub bone: Scenarios<Mass>,
    /// Fat, membrane, silverskin, tendon.
    pub trim: Scenarios<Mass>,
    /// Drying, while hanging and while cutting.
    pub drying: Scenarios<Mass>,
    /// Around the wound.
    pub wound: Scenarios<Mass>,
    /// Left on the bones.
    pub left_behind: Scenarios<Mass>,
    /// Each muscle of one side, by [`Muscle::index`]; both sides weigh the same.
    pub muscles: Vec<Scenarios<Mass>>,
    /// Length of each muscle; zero for scraps.
    pub lengths: Vec<Scenarios<Length>>,
}

/// Fractions of one scenario.
struct Fractions {
    dressed: f64,
    hanging: f64,
    lean: f64,
    bone: f64,
    shot: f64,
    left: f64,
    dried: f64,
    stage: f64,
}

impl Fractions {
    /// What is left of careful lean after shot, hurry and hanging.
    fn kept(&self) -> f64 {
        (1.0 - self.shot) * (1.0 - self.left) * (1.0 - self.dried)
    }
}

/// The spreads that hold for a plan's animal, after adjustment by sex, age and condition.
struct Spreads {
    dressed: Estimate<f64>,
    hanging: Estimate<f64>,
    lean: Estimate<f64>,
    bone: Estimate<f64>,
    shot: Estimate<f64>,
    left: Estimate<f64>,
    dried: Estimate<f64>,
    stage: Estimate<f64>,
}

/// No hanging carcass is leaner, whatever a household's own figures say. Judgement; the table's leanest moose is at
/// 0.80.
const MOST_LEAN: f64 = 0.92;

impl Spreads {
    fn of(plan: &Plan) -> Self {
        let animal = plan.animal();
        let row = tables::yields(animal.species(), animal.sex());
        let losses = plan.losses();
        let shifts = tables::shifts(animal);
        let mut dressed = row.dressed.spread.shifted(shifts.dressed.by);
        if let Weighed::Girth(girth) = animal.weighed()
            && let Some(regression) = tables::girth(animal.species(), animal.age())
            && let Some(dressed_weight) = regression.dressed
        {
            // The regressions give both weights: their ratio is the middle for this girth.
            let ratio = dressed_weight(girth) / (regression.live)(girth);
            dressed = dressed.shifted(ratio - dressed.likely());
        }
        Self {
            dressed,
            hanging: row.hanging.spread.shifted(shifts.hanging.by),
            lean: row.lean.spread.shifted(shifts.lean.by).map(|lean| lean * plan.own().meat()),
            bone: tables::non_lean(animal.species()).bone.spread,
            // Marked wounds are cut out of their muscles; the average would take that meat twice.
            shot: if plan.wounds().is_empty() {
                tables::shot_loss(losses.shot).spread
            } else {
                Estimate::row(0.0, 0.0, 0.0)
            },
            left: tables::left_behind(losses.care).spread,
            dried: tables::dried(losses.hung_days).spread,
            stage: match animal.weighed() {
                Weighed::Girth(_) => tables::GIRTH_SPREAD.spread,
                Weighed::Typical => tables::TYPICAL_SPREAD.spread,
                Weighed::Live(_) | Weighed::FieldDressed(..) | Weighed::Hanging(_) | Weighed::Deboned(_) => {
                    Estimate::row(0.0, 0.0, 0.0)
                }
            },
        }
    }

    fn at(&self, scenario: usize) -> Fractions {
        let z = |draw: Draw| draw.values()[scenario];
        Fractions {
            dressed: self.dressed.at(z(Draw::Dressed)),
            hanging: self.hanging.at(z(Draw::Hanging)),
            lean: self.lean.at(z(Draw::Lean)).min(MOST_LEAN),
            bone: self.bone.at(z(Draw::Bone)),
            shot: self.shot.at(z(Draw::Shot)).max(0.0),
            left: self.left.at(z(Draw::LeftBehind)).max(0.0),
            dried: self.dried.at(z(Draw::Drying)).max(0.0),
            stage: 1.0 + self.stage.at(z(Draw::Stage)),
        }
    }
}

/// Live weight of a plan's animal in one scenario. `recovered` is the part of all meat that is taken.
fn live(plan: &Plan, fractions: &Fractions, recovered: f64) -> Mass {
    let animal = plan.animal();
    match animal.weighed() {
        Weighed::Live(live) => live,
        Weighed::FieldDressed(dressed, legs) => {
            dressed * tables::legs_on_per_legs_off(legs) / fractions.dressed
        }
        Weighed::Hanging(hanging) => hanging / (fractions.dressed * fractions.hanging),
        Weighed::Deboned(meat) => {
            meat / (fractions.dressed * fractions.hanging * fractions.lean * fractions.kept() * recovered)
        }
        Weighed::Typical => {
            let (typical, _) = tables::typical_live(animal.species(), animal.sex(), animal.age());
            let season = tables::season_weight(animal.condition()).by;
            typical * season * fractions.stage
        }
        Weighed::Girth(girth) => match tables::girth(animal.species(), animal.age()) {
            Some(row) => (row.live)(girth) * fractions.stage,
            None => unreachable!("Animal::new refuses a girth without a table"),
        },
    }
}

/// Length scale of a plan's animal in the middle case: the cube root of hanging weight over the reference.
pub fn middle_scale(plan: &Plan) -> f64 {
    let fractions = Spreads::of(plan).at(0);
    let shares = middle_shares(plan, 1.0);
    let live = live(plan, &fractions, recovered_part(&parts_taken(plan), &shares));
    scale(live * fractions.dressed * fractions.hanging)
}

fn scale(hanging: Mass) -> f64 {
    libm::cbrt(hanging / REFERENCE_HANGING)
}

/// How much of each muscle, both sides, ends up with the meat: nothing if it is not taken, less what marked
/// wounds take.
pub(crate) fn parts_taken(plan: &Plan) -> [f64; Muscle::COUNT] {
    let mut taken = [0.0; Muscle::COUNT];
    for muscle in Muscle::ALL.into_iter().filter(|muscle| plan.is_recovered(*muscle)) {
        let [left, right] = Side::ALL.map(|side| wounds::share(plan.wounds(), muscle, side));
        taken[muscle.index()] = 1.0 - f64::midpoint(left, right);
    }
    taken
}

/// The part of all meat that is taken.
fn recovered_part(taken: &[f64; Muscle::COUNT], shares: &[f64; Muscle::COUNT]) -> f64 {
    taken.iter().zip(shares).map(|(taken, share)| taken * share).sum()
}

/// Muscle mass over that of a typical adult of the species and sex, both boned out alike, clamped to where the
/// growth exponents hold.
fn growth(plan: &Plan, lean: Mass) -> f64 {
    let animal = plan.animal();
    let (adult, _) = tables::typical_live(animal.species(), animal.sex(), Age::Adult);
    let row = tables::yields(animal.species(), animal.sex());
    let typical =
        adult * row.dressed.spread.likely() * row.hanging.spread.likely() * row.lean.spread.likely();
    (lean / (typical * plan.own().meat())).max(0.3).min(1.2)
}

/// What multiplies each share: sex and season, growth, species, the household's own figures.
fn multipliers(plan: &Plan, growth: f64) -> [f64; Muscle::COUNT] {
    let sex = tables::share_row(plan.animal());
    let species = tables::hind_leg(plan.animal().species()).by;
    let mut factors = [1.0; Muscle::COUNT];
    for row in &MUSCLES {
        let mut factor = 1.0;
        if (row.growth - 1.0).abs() > 1e-12 {
            factor *= libm::pow(growth, row.growth - 1.0);
        }
        factor *= sex.factor(row);
        if row.region == Region::HindLeg {
            factor *= species;
        }
        factor *= plan.own().share(row.muscle);
        factors[row.muscle.index()] = factor;
    }
    factors
}

fn middle_shares(plan: &Plan, growth: f64) -> [f64; Muscle::COUNT] {
    let factors = multipliers(plan, growth);
    let mut shares = [0.0; Muscle::COUNT];
    for row in &MUSCLES {
        shares[row.muscle.index()] = row.share * factors[row.muscle.index()];
    }
    normalised(shares)
}

fn normalised(mut shares: [f64; Muscle::COUNT]) -> [f64; Muscle::COUNT] {
    let total: f64 = shares.iter().sum();
    for share in &mut shares {
        *share /= total;
    }
    shares
}

/// A drawn share never falls below this part of the row's (muscle catalogue).
const SHARE_FLOOR: f64 = 0.2;
/// Lengths of one animal size lie within 8 % at 90 % (judgement).
const LENGTH_SPREAD: Estimate<f64> = Estimate::row(-0.08, 0.0, 0.08);

/// The animal of a plan in every scenario.
pub fn carcass(plan: &Plan) -> Carcass {
    let spreads = Spreads::of(plan);
    let non_lean = tables::non_lean(plan.animal().species());
    let middle = spreads.at(0);
    let taken = parts_taken(plan);
    let rough = live(plan, &middle, recovered_part(&taken, &middle_shares(plan, 1.0)));
    let factors = multipliers(plan, growth(plan, rough * middle.dressed * middle.hanging * middle.lean));
    // Elk and moose: a quarter more spread (muscle catalogue).
    let wider = if matches!(plan.animal().species(), Species::Elk | Species::Moose) { 1.25 } else { 1.0 };
    let share_draws: Vec<&[f64]> =
        Muscle::ALL.into_iter().map(|muscle| Draw::Share(muscle).values()).collect();
    let length_draws: Vec<&[f64]> =
        Muscle::ALL.into_iter().map(|muscle| Draw::Length(muscle).values()).collect();

    let mut carcass = Carcass {
        muscles: vec![Vec::new(); Muscle::COUNT],
        lengths: vec![Vec::new(); Muscle::COUNT],
        ..Carcass::default()
    };
    for scenario in 0..SCENARIOS {
        let fractions = spreads.at(scenario);
        let mut shares = [0.0; Muscle::COUNT];
        for (index, row) in MUSCLES.iter().enumerate() {
            let drawn = row.share + row.share_sd * wider * share_draws[index][scenario];
            shares[index] = drawn.max(row.share * SHARE_FLOOR) * factors[index];
        }
        let shares = normalised(shares);
        let live = live(plan, &fractions, recovered_part(&taken, &shares));
        let dressed = live * fractions.dressed;
        let hanging = dressed * fractions.hanging;
        let lean = hanging * fractions.lean;
        let rest = hanging - lean;
        let bone = rest * fractions.bone;
        let cutting = (rest - bone) * non_lean.drying;
        let wound = lean * fractions.shot;
        let left_behind = (lean - wound) * fractions.left;
        let aged = (lean - wound - left_behind) * fractions.dried;
        let meat = lean - wound - left_behind - aged;
        carcass.live.push(live);
        carcass.dressed.push(dressed);
        carcass.hanging.push(hanging);
        carcass.lean.push(lean);
        carcass.bone.push(bone);
        carcass.trim.push(rest - bone - cutting);
        carcass.drying.push(cutting + aged);
        carcass.wound.push(wound);
        carcass.left_behind.push(left_behind);
        let scale = scale(hanging);
        for (index, row) in MUSCLES.iter().enumerate() {
            carcass.muscles[index].push(meat * (shares[index] / 2.0));
            carcass.lengths[index].push(row.size.map_or(Length::mm(0.0), |size| {
                size.length * (scale * (1.0 + LENGTH_SPREAD.at(length_draws[index][scenario])))
            }));
        }
    }
    carcass
}
