//! The authored constants, and the plate of each species made of them.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Side, View};
use hindsaddle_model::animal::Species;

use super::path::{Place, bounds, drawn};
use super::warp::Warp;
use super::{Area, Frame, Plate};

/// A view as it was authored, of a white-tailed deer. From above all but the body is the left half alone: the
/// right is its mirror image.
pub(super) struct Authored {
    landmarks: &'static [(i16, i16)],
    far: &'static [u8],
    body: &'static [u8],
    ear: &'static [u8],
    antlers: [&'static [u8]; 2],
    bones: &'static [u8],
    ink: &'static [u8],
    seams: &'static [u8],
    areas: &'static [AuthoredArea],
}

struct AuthoredArea {
    muscle: Muscle,
    outline: &'static [u8],
    grain: &'static [u8],
    sheen: &'static [u8],
    axis: &'static [(i16, i16)],
    label: (i16, i16),
}

impl AuthoredArea {
    /// The area at its place.
    fn on(&self, place: Place<'_>, side: Option<Side>) -> Area {
        let shaped = |data| drawn(data, place);
        let point = |(x, y): (i16, i16)| place.at((f64::from(x), f64::from(y)), place.sides[0]);
        let nothing = Frame { x: 0.0, y: 0.0, width: 0.0, height: 0.0 };
        Area {
            muscle: self.muscle,
            side,
            outline: shaped(self.outline),
            grain: shaped(self.grain),
            sheen: shaped(self.sheen),
            axis: self.axis.iter().map(|at| point(*at)).collect(),
            label: point(self.label),
            bounds: bounds(self.outline, place).unwrap_or(nothing),
        }
    }
}

/// What another animal has elsewhere, and on its head and neck. Antlers, shape and ink are drawn for it and not
/// moved.
pub(super) struct Figure {
    side: &'static [(u8, (i16, i16))],
    above: &'static [(u8, (i16, i16))],
    antlers: [&'static [u8]; 2],
    antlers_above: &'static [u8],
    shape: &'static [u8],
    ink: &'static [u8],
}

include!(concat!(env!("OUT_DIR"), "/plate.rs"));

fn figure(species: Species) -> Option<&'static Figure> {
    match species {
        Species::WhiteTailed => None,
        Species::Mule | Species::BlackTailed => Some(&MULE),
        Species::Elk | Species::Red => Some(&ELK),
        Species::Moose => Some(&MOOSE),
        Species::Pronghorn => Some(&PRONGHORN),
        Species::Caribou => Some(&CARIBOU),
        Species::Roe => Some(&ROE),
        Species::Fallow => Some(&FALLOW),
        Species::Sika | Species::Axis => Some(&SIKA),
    }
}

fn authored(view: View) -> &'static Authored {
    match view {
        View::Outer => &OUTER,
        View::Inner => &INNER,
        View::Above => &ABOVE,
    }
}

thread_local! {
    /// A plate is a few thousand points to move: it is made once.
    static MADE: RefCell<BTreeMap<(u8, u8), Rc<Plate>>> = const { RefCell::new(BTreeMap::new()) };
}

/// The drawing of a view of a species.
pub fn plate(view: View, species: Species) -> Rc<Plate> {
    MADE.with_borrow_mut(|made| {
        made.entry((view as u8, species as u8)).or_insert_with(|| Rc::new(make(view, species))).clone()
    })
}

/// What the half that is seen from within has lost, head and feet, as the outer side has them.
fn trace(view: View) -> [&'static [u8]; 2] {
    if view == View::Inner { [OUTER.body, OUTER.ear] } else { [b""; 2] }
}

/// The far antler and the near one; from above both are the second.
fn antlers(view: View, figure: Option<&'static Figure>) -> [&'static [u8]; 2] {
    match (figure, view) {
        (None, View::Outer | View::Inner) => OUTER.antlers,
        (None, View::Above) => ABOVE.antlers,
        (Some(figure), View::Above) => [b"", figure.antlers_above],
        (Some(figure), View::Outer | View::Inner) => figure.antlers,
    }
}

fn make(view: View, species: Species) -> Plate {
    let authored = authored(view);
    let figure = figure(species);
    let moved = figure.map_or(&[][..], |figure| if view == View::Above { figure.above } else { figure.side });
    let made = (!moved.is_empty()).then(|| Warp::new(authored.landmarks, moved));
    let sides: &[f64] = if view == View::Above { &[1.0, -1.0] } else { &[1.0] };
    let place = Place { warp: made.as_ref(), sides };
    // Antlers are drawn for their animal.
    let own_place = Place { warp: None, sides };
    let whole = Place { sides: &[1.0], ..place };
    let shaped = |data: &[u8]| drawn(data, place);
    let own = |of: fn(&Figure) -> &'static [u8]| figure.map_or(&b""[..], of);
    let (trace, antlers) = (trace(view), antlers(view, figure));
    let outer_only = |data: &'static [u8]| if view == View::Outer { data } else { b"" };
    let nothing = Frame { x: 0.0, y: 0.0, width: 0.0, height: 0.0 };
    let mut ink = String::from(&*shaped(authored.ink));
    ink.push_str(&drawn(outer_only(own(|figure| figure.ink)), own_place));
    let bounds = (
        [authored.body, authored.far, authored.ear, authored.bones, trace[0], trace[1]]
            .into_iter()
            .filter_map(|data| bounds(data, place))
            .reduce(Frame::with)
            .unwrap_or(nothing),
        antlers.into_iter().filter_map(|antler| bounds(antler, own_place)).reduce(Frame::with),
    );
    Plate {
        trace: trace.map(shaped).concat().into(),
        far: shaped(authored.far),
        body: drawn(authored.body, whole),
        ear: shaped(authored.ear),
        antlers: antlers.map(|antler| drawn(antler, own_place)),
        bones: shaped(authored.bones),
        shape: drawn(outer_only(own(|figure| figure.shape)), own_place),
        ink: ink.into(),
        seams: shaped(authored.seams),
        areas: (0..sides.len())
            .flat_map(|index| {
                let one = Place { sides: &sides[index..=index], ..place };
                authored
                    .areas
                    .iter()
                    .map(move |area| Rc::new(area.on(one, (sides.len() > 1).then(|| Side::ALL[index]))))
            })
            .collect(),
        bounds,
        warp: made,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SIDES: [View; 2] = [View::Outer, View::Inner];

    /// Withers' heights of a landmark of the side views on a species' figure, by its place among the landmarks
    /// in the order of their names.
    fn landmark(species: Species, place: usize) -> (f64, f64) {
        let (x, y) = OUTER.landmarks[place];
        let at = (f64::from(x), f64::from(y));
        let moved = figure(species).map_or(&[][..], |figure| figure.side);
        let (x, y) = Warp::new(OUTER.landmarks, moved).at(at);
        (x / 1000.0, -y / 1000.0)
    }

    /// A map that folds would turn a small triangle over.
    #[test]
    fn no_figure_folds() {
        for species in Species::ALL {
            let Some(figure) = figure(species) else { continue };
            let warp = Warp::new(OUTER.landmarks, figure.side);
            for view in SIDES {
                for area in &plate(view, Species::WhiteTailed).areas {
                    let (middle, axis) = (area.label, &area.axis);
                    for (x, y) in axis.iter().flat_map(|at| {
                        [0.0, 0.3, 0.6, 1.0]
                            .map(|t| (middle.0 + (at.0 - middle.0) * t, middle.1 + (at.1 - middle.1) * t))
                    }) {
                        let [a, b, c] = [(x, y), (x + 1.0, y), (x, y + 1.0)].map(|at| warp.at(at));
                        let turned = (b.0 - a.0) * (c.1 - a.1) - (c.0 - a.0) * (b.1 - a.1);
                        assert!(turned > 0.05, "{species:?} {:?} at {x:.0} {y:.0}: {turned:.2}", area.muscle);
                    }
                }
            }
        }
    }

    /// Both side views of one animal have one shape.
    #[test]
    fn the_two_sides_have_the_same_landmarks() {
        assert_eq!(OUTER.landmarks, INNER.landmarks);
        assert!(OUTER.landmarks.len() >= 30);
        let withers = OUTER.landmarks.iter().position(|at| *at == (240, -1000)).unwrap();
        assert!((landmark(Species::Elk, withers).1 - 1.0).abs() < 1e-6);
    }
}
