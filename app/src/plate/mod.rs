//! The plate: the drawing as it was authored, shaped for a species, and the marks that turn a plan into fills.
//!
//! No yew and no browser here; everything is tested on the host. Units are those of the drawing: 1000 is the
//! height of the withers, x runs toward the tail, y down.

pub mod axis;
pub mod figure;
pub mod leaders;
pub mod marks;
mod path;
pub mod peel;
mod warp;

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, Side};
use hindsaddle_model::tables;

use warp::Warp;

/// A rectangle of the drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// Left.
    pub x: f64,
    /// Top.
    pub y: f64,
    /// To the right.
    pub width: f64,
    /// Down.
    pub height: f64,
}

impl Frame {
    /// The smallest frame around both.
    #[must_use]
    pub fn with(self, other: Frame) -> Frame {
        let (x, y) = (self.x.min(other.x), self.y.min(other.y));
        let right = (self.x + self.width).max(other.x + other.width);
        let bottom = (self.y + self.height).max(other.y + other.height);
        Frame { x, y, width: right - x, height: bottom - y }
    }

    /// As the attribute of a drawing that shows it.
    pub fn view_box(self) -> String {
        [self.x, self.y, self.width, self.height].map(whole).join(" ")
    }

    /// The frame, taller about the same middle if its height is less than this part of its width.
    #[must_use]
    fn at_least_as_tall(self, part: f64) -> Frame {
        let height = self.height.max(self.width * part);
        Frame { y: self.y - (height - self.height) / 2.0, height, ..self }
    }

    /// The frame with `margin` on every side.
    #[must_use]
    pub fn grown(self, margin: f64) -> Frame {
        Frame {
            x: self.x - margin,
            y: self.y - margin,
            width: self.width + 2.0 * margin,
            height: self.height + 2.0 * margin,
        }
    }
}

/// A coordinate as an attribute has it: to the unit.
pub fn whole(number: f64) -> String {
    (number.round() as i64).to_string()
}

/// One muscle group in one view.
#[derive(Debug)]
pub struct Area {
    /// Which group.
    pub muscle: Muscle,
    /// Which side, where both are drawn.
    pub side: Option<Side>,
    /// Its border, closed.
    pub outline: Rc<str>,
    /// Fibre strokes.
    pub grain: Rc<str>,
    /// Silverskin highlights.
    pub sheen: Rc<str>,
    /// The line the knife divides it along.
    pub axis: Vec<(f64, f64)>,
    /// Where its letter sits.
    pub label: (f64, f64),
    /// Around its border.
    pub bounds: Frame,
}

/// One view of one animal.
#[derive(Debug)]
pub struct Plate {
    /// What the animal has lost, as a traced line; empty where it is whole.
    pub trace: Rc<str>,
    /// Legs and ear that stand behind the body.
    pub far: Rc<str>,
    /// The silhouette.
    pub body: Rc<str>,
    /// The near ear.
    pub ear: Rc<str>,
    /// A male's antlers or horns: the far one, and the near one over it.
    pub antlers: [Rc<str>; 2],
    /// Spine, blade, ribs and long bones, as a fine under-drawing.
    pub bones: Rc<str>,
    /// Mane, beard or bell, under the muscles.
    pub shape: Rc<str>,
    /// Contours, eye, mouth, hooves.
    pub ink: Rc<str>,
    /// Lines between and on the muscles.
    pub seams: Rc<str>,
    /// The muscle groups, in the order drawn.
    pub areas: Vec<Rc<Area>>,
    /// Around the animal without antlers, and around the antlers.
    bounds: (Frame, Option<Frame>),
    /// From the plate's own deer to this animal.
    warp: Option<Warp>,
}

/// Areas and plates are made once and compared by their place.
impl PartialEq for Area {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}
impl PartialEq for Plate {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}

/// Room around a region that was zoomed to.
const MARGIN: f64 = 45.0;
/// The least height of a region as a part of its width: the back alone is a strip, and whoever sees a strip does not see
/// where on the deer it is.
const LEAST_HEIGHT: f64 = 0.6;
/// Room around the whole animal.
const ROOM: f64 = 40.0;

impl Plate {
    /// What is shown: the whole animal, with or without its antlers, or one region of it. None if the region
    /// has nothing in this view.
    pub fn frame(&self, region: Option<Region>, antlers: bool) -> Option<Frame> {
        match region {
            None => {
                let (animal, headdress) = self.bounds;
                let all = headdress.filter(|_| antlers).map_or(animal, |headdress| animal.with(headdress));
                Some(all.grown(ROOM))
            }
            Some(region) => self
                .areas
                .iter()
                .filter(|area| tables::muscle(area.muscle).region == region)
                .map(|area| area.bounds)
                .reduce(Frame::with)
                .map(|frame| frame.grown(MARGIN).at_least_as_tall(LEAST_HEIGHT)),
        }
    }

    /// Where a place of the plate's own deer lies on this animal.
    pub fn on_this_animal(&self, place: (f64, f64)) -> (f64, f64) {
        self.warp.as_ref().map_or(place, |warp| warp.at(place))
    }

    /// Where a place of this animal lies on the plate's own deer.
    pub fn on_the_deer(&self, place: (f64, f64)) -> (f64, f64) {
        self.warp.as_ref().map_or(place, |warp| warp.back(place))
    }

    /// Whether the view shows a group.
    pub fn shows(&self, muscle: Muscle) -> bool {
        self.areas.iter().any(|area| area.muscle == muscle)
    }
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::anatomy::View;
    use hindsaddle_model::animal::Species;

    use super::figure::plate;
    use super::*;

    #[test]
    fn every_group_can_be_reached_on_one_of_the_two_side_views() {
        let [outer, inner] = [View::Outer, View::Inner].map(|view| plate(view, Species::WhiteTailed));
        for muscle in Muscle::ALL {
            assert!(outer.shows(muscle) || inner.shows(muscle), "{muscle:?}");
        }
    }

    #[test]
    fn a_region_is_shown_larger_than_the_whole() {
        for species in Species::ALL {
            let outer = plate(View::Outer, species);
            let whole = outer.frame(None, false).unwrap();
            for region in Region::ALL {
                let frame = outer.frame(Some(region), false).unwrap();
                assert!(frame.width < whole.width, "{region:?}");
                assert!(frame.height > frame.width * 0.59, "{region:?} of {species:?} is a strip");
            }
            assert!(outer.frame(None, true).unwrap().height > whole.height, "{species:?} carries nothing");
        }
    }
}
