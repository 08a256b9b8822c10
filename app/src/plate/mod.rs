//! The plate: the drawing as it was authored, and the marks that turn a plan into fills.
//!
//! No yew and no browser here; everything is tested on the host. Units are those of the drawing: 1000 is the
//! height of the withers, x runs toward the tail, y down.

pub mod marks;

use hindsaddle_model::anatomy::{Muscle, Region, Side, View};
use hindsaddle_model::tables;

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
    fn with(self, other: Frame) -> Frame {
        let (x, y) = (self.x.min(other.x), self.y.min(other.y));
        let right = (self.x + self.width).max(other.x + other.width);
        let bottom = (self.y + self.height).max(other.y + other.height);
        Frame { x, y, width: right - x, height: bottom - y }
    }

    /// The frame with `margin` on every side.
    fn grown(self, margin: f64) -> Frame {
        Frame {
            x: self.x - margin,
            y: self.y - margin,
            width: self.width + 2.0 * margin,
            height: self.height + 2.0 * margin,
        }
    }
}

/// One muscle group in one view.
#[derive(Debug)]
pub struct Area {
    /// Which group.
    pub muscle: Muscle,
    /// Which side, where both are drawn.
    pub side: Option<Side>,
    /// Its border, closed.
    pub outline: &'static str,
    /// Fibre strokes.
    pub grain: &'static str,
    /// Silverskin highlights.
    pub sheen: &'static str,
    /// The line the knife divides it along.
    pub axis: &'static [(f64, f64)],
    /// Where its letter sits.
    pub label: (f64, f64),
    /// Around its border.
    pub bounds: Frame,
}

/// One view of the animal.
#[derive(Debug)]
pub struct Plate {
    /// All of it, without antlers.
    pub view_box: Frame,
    /// Legs and ear of the far side.
    pub far: &'static str,
    /// The silhouette.
    pub body: &'static str,
    /// The near ear.
    pub ear: &'static str,
    /// A buck's antlers.
    pub antlers: &'static str,
    /// Spine, blade, ribs and long bones, as a fine under-drawing.
    pub bones: &'static str,
    /// Contours, eye, mouth, hooves.
    pub ink: &'static str,
    /// The muscle groups, in the order drawn.
    pub areas: &'static [Area],
}

include!(concat!(env!("OUT_DIR"), "/plate.rs"));

/// The drawing of a view.
pub fn plate(view: View) -> &'static Plate {
    match view {
        View::Outer => &OUTER,
        View::Inner => &INNER,
        View::Above => &ABOVE,
    }
}

/// How far antlers rise over the frame of a view without them.
const ANTLERS: f64 = 290.0;
/// Room around a region that was zoomed to.
const MARGIN: f64 = 45.0;

/// There is one of each view: plates are compared by their place.
impl PartialEq for Plate {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}

impl Plate {
    /// What is shown: the whole animal, with room for antlers, or one region of it. None if the region has
    /// nothing in this view.
    pub fn frame(&self, region: Option<Region>, antlers: bool) -> Option<Frame> {
        match region {
            None if antlers && !self.antlers.is_empty() => Some(Frame {
                y: self.view_box.y - ANTLERS,
                height: self.view_box.height + ANTLERS,
                ..self.view_box
            }),
            None => Some(self.view_box),
            Some(region) => self
                .areas
                .iter()
                .filter(|area| tables::muscle(area.muscle).region == region)
                .map(|area| area.bounds)
                .reduce(Frame::with)
                .map(|frame| frame.grown(MARGIN)),
        }
    }

    /// Whether the view shows a group.
    pub fn shows(&self, muscle: Muscle) -> bool {
        self.areas.iter().any(|area| area.muscle == muscle)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_group_is_drawn_in_the_views_its_row_names_and_no_other() {
        for view in [View::Outer, View::Inner, View::Above] {
            for muscle in Muscle::ALL {
                let named = tables::muscle(muscle).views.contains(&view);
                assert_eq!(plate(view).shows(muscle), named, "{muscle:?} in {view:?}");
            }
        }
    }

    #[test]
    fn every_group_can_be_reached_on_one_of_the_two_side_views() {
        for muscle in Muscle::ALL {
            assert!(OUTER.shows(muscle) || INNER.shows(muscle), "{muscle:?}");
        }
    }

    #[test]
    fn a_region_is_shown_larger_than_the_whole() {
        for region in Region::ALL {
            let frame = OUTER.frame(Some(region), false).unwrap();
            assert!(frame.width < OUTER.view_box.width, "{region:?}");
        }
    }
}
