//! The wounds of a plan as they are drawn and said.

use hindsaddle_model::anatomy::{Muscle, Side};
use hindsaddle_model::carcass::middle_scale;
use hindsaddle_model::forecast::Forecast;
use hindsaddle_model::plan::Plan;
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_model::wounds::{
    RADIUS_RANGE, REFERENCE_HEIGHT_MM, STEP, USUAL_RADIUS, Wound, X_RANGE, Y_RANGE, share,
};

use crate::plate::Plate;
use crate::text::{self, Units};

/// One wound.
#[derive(Clone, Debug, PartialEq)]
pub struct WoundView {
    /// Its place in the plan.
    pub place: usize,
    /// What the plan says of it.
    pub wound: Wound,
    /// Its middle on the drawing.
    pub at: (f64, f64),
    /// From the middle to the rim.
    pub radius: f64,
    /// What is said of it.
    pub name: String,
    /// How far it reaches, on this animal.
    pub reach: String,
}

/// Units of the drawing in a step of the wounds' lattice.
const UNITS: f64 = STEP * 1000.0;

/// The wounds of one side.
pub fn wounds(plan: &Plan, forecast: &Forecast, side: Side, plate: &Plate, units: Units) -> Vec<WoundView> {
    let scale = middle_scale(plan);
    plan.wounds()
        .iter()
        .enumerate()
        .filter(|(_, wound)| wound.side == side)
        .map(|(place, wound)| {
            let at = plate.on_this_animal((f64::from(wound.x) * UNITS, f64::from(wound.y) * -UNITS));
            let across = Length::mm(f64::from(wound.radius) * STEP * REFERENCE_HEIGHT_MM * scale * 2.0);
            let reach = text::rough_length(across, units);
            WoundView {
                place,
                wound: *wound,
                at,
                radius: f64::from(wound.radius) * UNITS,
                name: said(plan, forecast, place, *wound, &reach, units),
                reach,
            }
        })
        .collect()
}

/// "Wound 1, left, 7 in across: takes 14 oz of rib meat, shoulder clod".
fn said(plan: &Plan, forecast: &Forecast, place: usize, wound: Wound, reach: &str, units: Units) -> String {
    let mut lost = Mass::ZERO;
    let mut muscles = Vec::new();
    for muscle in Muscle::ALL.into_iter().filter(|muscle| plan.is_recovered(*muscle)) {
        let taken = share(&[wound], muscle, wound.side);
        if taken > 0.0 {
            lost += forecast.muscles[muscle.index()].mass.likely() * (taken / 2.0);
            muscles.push(text::muscle(muscle));
        }
    }
    text::wound(place + 1, wound.side, reach, &text::mass(lost, units), &muscles)
}

/// The wound that a tap on the drawing marks.
pub fn marked(side: Side, plate: &Plate, at: (f64, f64)) -> Wound {
    moved(Wound { side, x: 0, y: 0, radius: USUAL_RADIUS }, plate, at)
}

/// A wound dragged to another place of the drawing.
pub fn moved(wound: Wound, plate: &Plate, at: (f64, f64)) -> Wound {
    let (x, y) = plate.on_the_deer(at);
    let (x, y) = ((x / UNITS).round(), (-y / UNITS).round());
    at_place(wound, x as i32, y as i32)
}

/// A wound some steps away, larger or smaller: as far as the plate goes.
pub fn stepped(wound: Wound, right: i32, up: i32, larger: i32) -> Wound {
    let (least, most) = RADIUS_RANGE;
    let radius = (i32::from(wound.radius) + larger).clamp(i32::from(least), i32::from(most)) as u8;
    at_place(Wound { radius, ..wound }, i32::from(wound.x) + right, i32::from(wound.y) + up)
}

fn at_place(wound: Wound, x: i32, y: i32) -> Wound {
    let within = |value: i32, (least, most): (i8, i8)| value.clamp(i32::from(least), i32::from(most)) as i8;
    Wound { x: within(x, X_RANGE), y: within(y, Y_RANGE), ..wound }
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::anatomy::View;
    use hindsaddle_model::animal::Species;

    use super::*;
    use crate::plate::figure::plate;

    /// On every animal: a tap marks the place that is then drawn under the finger, to half a step.
    #[test]
    fn a_wound_is_drawn_where_it_was_tapped() {
        for species in Species::ALL {
            let plate = plate(View::Outer, species);
            for area in &plate.areas {
                let wound = marked(Side::Left, &plate, area.label);
                let (x, y) = plate.on_this_animal((f64::from(wound.x) * UNITS, f64::from(wound.y) * -UNITS));
                let (dx, dy) = (x - area.label.0, y - area.label.1);
                let off = (dx * dx + dy * dy).sqrt();
                assert!(off < UNITS, "{species:?} {:?}: {off:.1} away", area.muscle);
            }
        }
    }

    #[test]
    fn steps_end_at_the_edge_of_the_plate() {
        let mut wound = Wound { side: Side::Left, x: 0, y: 0, radius: 1 };
        for _ in 0..200 {
            wound = stepped(wound, 1, 1, 1);
        }
        assert!(wound.is_possible());
        assert_eq!((wound.x, wound.y, wound.radius), (X_RANGE.1, Y_RANGE.1, RADIUS_RANGE.1));
    }
}
