//! Names beside the muscles, or numbers where there is no room for names.

use std::rc::Rc;

use hindsaddle_model::anatomy::Muscle;

use super::plate_view::AreaView;
use crate::plate::Frame;
use crate::plate::leaders::{Point, Slot, Stands, about_the_animal, around, assign};
use crate::store::Naming;
use crate::text;

/// One label and its line.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// What it says.
    pub says: String,
    /// On the muscle.
    pub anchor: Point,
    /// Where the line ends and the text begins.
    pub slot: Slot,
}

/// All labels of a picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Labels {
    /// The picture with room for them.
    pub frame: Frame,
    /// Height of the letters, in units of the drawing.
    pub size: f64,
    /// The labels.
    pub labels: Vec<Label>,
    /// What the numbers stand for, from 1; empty where names are written.
    pub key: Vec<Muscle>,
}

/// Height of a letter on the screen, in CSS pixels.
const LETTER: f64 = 13.0;
/// Width of a letter over its height, about.
const SLIM: f64 = 0.56;
/// From this many CSS pixels a unit on, the animal's own surroundings have room for names.
const ROOMY: f64 = 0.28;

/// Where the labels have room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Space {
    /// About the legs and over the back of a whole animal seen from the side.
    AboutTheAnimal(Frame),
    /// Over and under what is shown, which gets larger by that.
    Around(Frame),
    /// Inside what is shown.
    Within(Frame),
}

impl Space {
    fn frame(self) -> Frame {
        let (Space::AboutTheAnimal(frame) | Space::Around(frame) | Space::Within(frame)) = self;
        frame
    }

    fn slots(self, width: f64, size: f64) -> Vec<Slot> {
        match self {
            Space::AboutTheAnimal(_) => about_the_animal(width, size),
            Space::Around(frame) => around(frame, width, size),
            Space::Within(frame) => around(frame.grown(-1.8 * size), width, size),
        }
    }

    /// Whether names have room at all.
    fn is_roomy(self, pixels: f64) -> bool {
        !matches!(self, Space::AboutTheAnimal(_)) || pixels >= ROOMY
    }
}

/// The labels of the open areas: names, or numbers with a key where names have no room.
pub fn labels(naming: Naming, areas: &[Rc<AreaView>], space: Space, pixels: f64) -> Labels {
    let size = LETTER / pixels;
    let none = Labels { frame: space.frame(), size, labels: Vec::new(), key: Vec::new() };
    if naming == Naming::Off {
        return none;
    }
    let shown = shown(areas, space.frame());
    let anchors: Vec<Point> = shown.iter().map(|view| view.area.label).collect();
    let names: Vec<String> = shown.iter().map(|view| text::naming(view.area.muscle, naming)).collect();
    let longest = names.iter().map(|name| name.chars().count()).max().unwrap_or(0) as f64;
    let width = (longest + 1.0) * SLIM * size;
    let slots = space.slots(width, size);
    if space.is_roomy(pixels)
        && let Some(places) = assign(&anchors, &slots)
    {
        return placed(none, names, &anchors, &slots, &places, width);
    }
    numbers(areas, space, pixels)
}

/// A number for each open muscle, and the key to them.
pub fn numbers(areas: &[Rc<AreaView>], space: Space, pixels: f64) -> Labels {
    let size = LETTER / pixels;
    let none = Labels { frame: space.frame(), size, labels: Vec::new(), key: Vec::new() };
    let shown = shown(areas, space.frame());
    let anchors: Vec<Point> = shown.iter().map(|view| view.area.label).collect();
    // Both sides of a muscle from above have one number.
    let mut key: Vec<Muscle> = Vec::new();
    for view in &shown {
        if !key.contains(&view.area.muscle) {
            key.push(view.area.muscle);
        }
    }
    let says: Vec<String> = shown
        .iter()
        .map(|view| key.iter().position(|muscle| *muscle == view.area.muscle).map_or(0, |place| place + 1))
        .map(|number| number.to_string())
        .collect();
    let width = 4.0 * SLIM * size;
    let slots = space.slots(width, size);
    match assign(&anchors, &slots) {
        Some(places) => Labels { key, ..placed(none, says, &anchors, &slots, &places, width) },
        None => none,
    }
}

fn shown(areas: &[Rc<AreaView>], frame: Frame) -> Vec<&AreaView> {
    let inside =
        |(x, y): Point| x > frame.x && x < frame.x + frame.width && y > frame.y && y < frame.y + frame.height;
    areas.iter().map(Rc::as_ref).filter(|view| view.is_open() && inside(view.area.label)).collect()
}

fn placed(
    none: Labels,
    says: Vec<String>,
    anchors: &[Point],
    slots: &[Slot],
    places: &[usize],
    width: f64,
) -> Labels {
    let size = none.size;
    let mut frame = none.frame;
    let labels: Vec<Label> = says
        .into_iter()
        .zip(anchors)
        .zip(places)
        .map(|((says, anchor), place)| Label { says, anchor: *anchor, slot: slots[*place] })
        .collect();
    for label in &labels {
        frame = frame.with(space(label, width, size));
    }
    Labels { frame, labels, ..none }
}

/// What a label covers.
fn space(label: &Label, width: f64, size: f64) -> Frame {
    let (x, y) = label.slot.at;
    let (left, top) = match label.slot.stands {
        Stands::Left => (x - width - size, y - size * 0.6),
        Stands::Right => (x + size * 0.3, y - size * 0.6),
        Stands::Over => (x - width / 2.0, y - size * 1.4),
        Stands::Under => (x - width / 2.0, y + size * 0.2),
    };
    Frame { x: left, y: top, width: width + size * 0.7, height: size * 1.3 }
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::anatomy::View;
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::plan::Plan;

    use super::*;
    use crate::store::State;
    use crate::text::Units;
    use crate::views::plate_view::scene;

    fn labelled(view: View, naming: Naming, width: f64) -> Labels {
        let mut state = State::new(Plan::new(Animal::example()).into(), None, Units::Pounds, None);
        state.look.view = view;
        state.look.naming = naming;
        scene(&state, width).labels
    }

    /// Names on a desk, numbers with a key on a phone; each muscle once in a side view.
    #[test]
    fn every_muscle_shown_is_labelled() {
        for view in View::ALL {
            for naming in [Naming::Common, Naming::Anatomical] {
                let muscles = crate::plate::figure::plate(view, Animal::example().species()).areas.len();
                for width in [360.0, 820.0, 1440.0] {
                    let labels = labelled(view, naming, width);
                    assert_eq!(labels.labels.len(), muscles, "{view:?} {naming:?} {width}");
                }
                assert!(!labelled(view, naming, 360.0).key.is_empty(), "{view:?}");
            }
        }
        assert!(labelled(View::Outer, Naming::Common, 1440.0).key.is_empty());
    }

    /// No text lies on another.
    #[test]
    fn labels_keep_apart() {
        for view in View::ALL {
            for width in [360.0, 820.0, 1440.0] {
                let labels = labelled(view, Naming::Common, width);
                for (index, one) in labels.labels.iter().enumerate() {
                    for other in &labels.labels[index + 1..] {
                        let own = |label: &Label| {
                            let letters = label.says.chars().count() as f64;
                            space(label, letters * SLIM * labels.size, labels.size * 0.8)
                        };
                        let (a, b) = (own(one), own(other));
                        let apart = a.x + a.width <= b.x
                            || b.x + b.width <= a.x
                            || a.y + a.height <= b.y
                            || b.y + b.height <= a.y;
                        assert!(apart, "{view:?} {width}: {} on {}", one.says, other.says);
                    }
                }
            }
        }
    }
}
