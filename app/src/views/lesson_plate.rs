//! The plate for learning: no plan on it, only the muscles, and what is marked on one of them.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, View};
use hindsaddle_model::animal::Species;
use hindsaddle_model::lesson::shown_from;
use hindsaddle_model::plan::Plan;

use super::labels::Labels;
use super::plate_view::{AreaView, Cover, Scene, has_antlers, id, pixels};
use crate::plate::axis::Axis;
use crate::plate::figure::plate;
use crate::plate::{Area, Frame, Plate};
use crate::text;

/// What is looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Near {
    /// The region come close to.
    pub region: Option<Region>,
    /// Closer or farther than that, by hand.
    pub lens: Option<Frame>,
}

impl Near {
    /// The whole animal.
    pub const WHOLE: Near = Near { region: None, lens: None };
}

/// What the muscles on the plate are called to who does not see it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Called {
    /// By their names.
    Names,
    /// By where they lie: while their names are asked for.
    Places,
}

/// The muscles of a view in a window of `width` CSS pixels.
pub fn bare(plan: &Plan, view: View, near: Near, width: f64, called: Called, picked: &[Muscle]) -> Scene {
    let plate = plate(view, plan.animal().species());
    let antlers = has_antlers(plan);
    let whole = plate.frame(None, antlers).unwrap_or(Frame { x: 0.0, y: 0.0, width: 1.0, height: 1.0 });
    let frame = near.lens.or_else(|| plate.frame(near.region, antlers)).unwrap_or(whole);
    let pixels = pixels(width, frame);
    let areas = plate
        .areas
        .iter()
        .map(|area| {
            Rc::new(AreaView {
                id: id(area),
                marks: Vec::new(),
                mark: "",
                taken: true,
                picked: picked.contains(&area.muscle),
                cover: Cover::Open,
                name: name(area, called),
                area: area.clone(),
            })
        })
        .collect();
    Scene {
        frame,
        whole,
        pixels,
        antlers: antlers && near.region.is_none(),
        labels: Labels { frame, size: 1.0, labels: Vec::new(), key: Vec::new() },
        wounds: Vec::new(),
        areas,
        plate,
    }
}

fn name(area: &Area, called: Called) -> String {
    let name = match called {
        Called::Names => text::muscle(area.muscle).to_owned(),
        Called::Places => text::place_name(area.muscle),
    };
    area.side.map_or(name.clone(), |side| text::on_side(&name, side))
}

/// The view on which two muscles are both seen, if there is one.
pub fn seen_together(one: Muscle, other: Muscle, species: Species) -> Option<View> {
    View::ALL.into_iter().find(|view| {
        let plate = plate(*view, species);
        plate.shows(one) && plate.shows(other)
    })
}

/// The view to go to for a muscle: the one that is shown if it is seen there.
pub fn view_for(muscle: Muscle, now: View, species: Species) -> View {
    if plate(now, species).shows(muscle) { now } else { shown_from(muscle) }
}

/// The areas of a muscle on a plate.
pub fn areas_of(plate: &Plate, muscle: Muscle) -> impl Iterator<Item = &Rc<Area>> {
    plate.areas.iter().filter(move |area| area.muscle == muscle)
}

/// How a stroke of the knife runs against the fibres.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Turn {
    /// Square across them: the right one.
    Across,
    /// Along them.
    Along,
    /// At half a right angle.
    Aslant,
    /// The same, the other way.
    AslantBack,
}

impl Turn {
    /// Cosine and sine of the angle to the fibres.
    const fn direction(self) -> (f64, f64) {
        const HALF: f64 = std::f64::consts::FRAC_1_SQRT_2;
        match self {
            Turn::Across => (0.0, 1.0),
            Turn::Along => (1.0, 0.0),
            Turn::Aslant => (HALF, HALF),
            Turn::AslantBack => (HALF, -HALF),
        }
    }
}

/// A stroke of the knife over a muscle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stroke {
    /// One end.
    pub from: (f64, f64),
    /// The other.
    pub to: (f64, f64),
    /// Where its letter stands, beyond the other end.
    pub letter: (f64, f64),
}

impl Stroke {
    /// How far it runs to the right and down.
    pub fn run(&self) -> (f64, f64) {
        (self.to.0 - self.from.0, self.to.1 - self.from.1)
    }
}

/// A stroke through the middle of a muscle, turned so against its fibres.
pub fn stroke(area: &Area, turn: Turn) -> Stroke {
    let axis = Axis::new(&area.axis);
    let (middle, _) = axis.at(0.5);
    // The whole run of the fibres, as the catalogue means it, not the bend at one place of it.
    let ((from, _), (to, _)) = (axis.at(0.0), axis.at(1.0));
    let chord = ((to.0 - from.0) * (to.0 - from.0) + (to.1 - from.1) * (to.1 - from.1)).sqrt();
    let (dx, dy) = ((to.0 - from.0) / chord, (to.1 - from.1) / chord);
    let (cos, sin) = turn.direction();
    let (x, y) = (dx * cos - dy * sin, dx * sin + dy * cos);
    let half = (axis.length * 0.42).max(75.0).min(170.0);
    let at = |reach: f64| (middle.0 + x * reach, middle.1 + y * reach);
    Stroke { from: at(-half), to: at(half), letter: at(half + 30.0) }
}

/// The frame around a muscle with room for strokes.
pub fn close_to(plate: &Plate, muscle: Muscle) -> Option<Frame> {
    let all = areas_of(plate, muscle).map(|area| area.bounds).reduce(Frame::with)?;
    // As wide as it is high, or wider: a phone is held upright, and the picture stands across it.
    let size = all.width.max(all.height) * 0.62 + 60.0;
    let (x, y) = (all.x + all.width / 2.0, all.y + all.height / 2.0);
    Some(Frame { x: x - size * 1.15, y: y - size, width: size * 2.3, height: size * 2.0 })
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::lesson::Game;
    use hindsaddle_model::tables;

    use super::*;

    /// The cosine of the angle between two lines; a line has no head and no tail.
    fn cosine(one: (f64, f64), other: (f64, f64)) -> f64 {
        let long = |(x, y): (f64, f64)| (x * x + y * y).sqrt();
        ((one.0 * other.0 + one.1 * other.1) / (long(one) * long(other))).abs()
    }

    /// In every view of every species the stroke that is right is square to the run of the fibres, and on the plate's
    /// own deer within 12 degrees of square to the catalogue's grain. In the middle of the most curved ropes it is off
    /// by up to 17; the other strokes are at least 28 from square.
    #[test]
    fn the_right_stroke_is_square_to_the_grain() {
        let [twelve, bend] = [12.0_f64, 17.0].map(|degrees| degrees.to_radians().sin_cos().0);
        let mut looked = 0;
        for species in Species::ALL {
            for view in View::ALL {
                let plate = plate(view, species);
                for area in plate.areas.iter().filter(|area| Game::Knife.asks(area.muscle)) {
                    let what = format!("{species:?} {view:?} {:?}", area.muscle);
                    let across = stroke(area, Turn::Across).run();
                    let (_, here) = Axis::new(&area.axis).at(0.5);
                    let ends = (area.axis[0], area.axis[area.axis.len() - 1]);
                    let run = (ends.1.0 - ends.0.0, ends.1.1 - ends.0.1);
                    assert!(cosine(across, run) < 1e-9, "{what}");
                    assert!(
                        cosine(across, here) <= bend,
                        "{what}: {:.2} at the middle",
                        cosine(across, here)
                    );
                    for other in [Turn::Along, Turn::Aslant, Turn::AslantBack] {
                        assert!(
                            cosine(stroke(area, other).run(), here) >= 0.48,
                            "{what}: {other:?} {:.3}",
                            cosine(stroke(area, other).run(), here)
                        );
                    }
                    if species == Species::WhiteTailed && view != View::Above {
                        let (sin, cos) = tables::muscle(area.muscle).grain_degrees.to_radians().sin_cos();
                        let off = cosine(across, (cos, -sin));
                        assert!(off <= twelve, "{what}: {off:.2} against the catalogue");
                    }
                    looked += 1;
                }
            }
        }
        assert!(looked > 300, "{looked}");
    }

    #[test]
    fn every_muscle_is_named_and_reached_by_its_place_alone() {
        let plan = Plan::new(Animal::example());
        for view in View::ALL {
            let scene = bare(&plan, view, Near::WHOLE, 360.0, Called::Places, &[]);
            for (at, area) in scene.areas.iter().enumerate() {
                let name = text::muscle(area.area.muscle).to_lowercase();
                assert!(!area.name.to_lowercase().contains(&name), "{}: {name}", area.name);
                assert!(scene.areas[..at].iter().all(|other| other.name != area.name), "{}", area.name);
            }
        }
    }

    #[test]
    fn a_muscle_is_looked_for_where_it_shows() {
        let deer = Species::WhiteTailed;
        assert_eq!(view_for(Muscle::Tenderloin, View::Outer, deer), View::Inner);
        assert_eq!(view_for(Muscle::Backstrap, View::Above, deer), View::Above);
        assert_eq!(seen_together(Muscle::Backstrap, Muscle::Tenderloin, deer), None);
        assert_eq!(seen_together(Muscle::Knuckle, Muscle::Clod, deer), Some(View::Outer));
        for muscle in Muscle::ALL {
            let plate = plate(shown_from(muscle), deer);
            assert!(close_to(&plate, muscle).is_some_and(|frame| frame.width > 100.0), "{muscle:?}");
        }
    }
}
