//! What the plate shows of a state.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Side, View};
use hindsaddle_model::animal::{Age, Sex, Species};
use hindsaddle_model::forecast::MuscleForecast;
use hindsaddle_model::plan::{Division, Plan};

use super::labels::{self, Labels, Space};
use super::wounds::{self, WoundView};
use crate::plate::figure::plate;
use crate::plate::marks::{self, Marks};
use crate::plate::peel::layer;
use crate::plate::{Area, Frame, Plate};
use crate::store::{Look, Naming, State};
use crate::text::{self, Units};

/// One muscle group as it is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct AreaView {
    /// Its shape.
    pub area: Rc<Area>,
    /// A name for its elements.
    pub id: String,
    /// Its parts.
    pub marks: Vec<Marks>,
    /// The letter of its product; of the first part where it is divided.
    pub mark: &'static str,
    /// Whether it is taken at all.
    pub taken: bool,
    /// Whether it is being decided.
    pub picked: bool,
    /// Whether it can be pressed.
    pub cover: Cover,
    /// What is said of it.
    pub name: String,
}

/// What lifting layers off did to a muscle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cover {
    /// It lies open and can be pressed.
    Open,
    /// It lies under another that has not been lifted.
    Covered,
    /// It was lifted off.
    Lifted,
}

impl AreaView {
    /// Whether it can be pressed.
    pub fn is_open(&self) -> bool {
        self.cover == Cover::Open
    }
}

/// Everything drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    /// The animal.
    pub plate: Rc<Plate>,
    /// What is shown of it.
    pub frame: Frame,
    /// The farthest one can go away from it.
    pub whole: Frame,
    /// How many CSS pixels a unit of the drawing takes.
    pub pixels: f64,
    /// Whether antlers are drawn.
    pub antlers: bool,
    /// The muscles, those that lie deeper first.
    pub areas: Vec<Rc<AreaView>>,
    /// What is written beside them.
    pub labels: Labels,
    /// The wounds of the side that is shown.
    pub wounds: Vec<WoundView>,
}

impl Scene {
    /// Whether a place lies in a wound.
    pub fn is_spoiled(&self, (x, y): (f64, f64)) -> bool {
        self.wounds.iter().any(|wound| {
            let (dx, dy) = (x - wound.at.0, y - wound.at.1);
            dx * dx + dy * dy < wound.radius * wound.radius
        })
    }
}

/// How many CSS pixels a unit of the drawing takes in a window of `width`.
pub(super) fn pixels(width: f64, frame: Frame) -> f64 {
    let plate = if width < 700.0 {
        width - 16.0
    } else if width < 1100.0 {
        width - 48.0
    } else {
        (width - 740.0).min(900.0)
    };
    plate.max(200.0) / frame.width
}

/// The plate of a state in a window of `width` CSS pixels.
pub fn scene(state: &State, width: f64) -> Scene {
    Drawer::default().scene(state, width)
}

/// Draws one state after another, and keeps the areas that the next leaves alike. What comes out is what [`scene`]
/// gives.
#[derive(Debug, Default)]
pub struct Drawer {
    drawn: Vec<(Given, Rc<AreaView>)>,
}

impl Drawer {
    /// The plate of a state in a window of `width` CSS pixels.
    pub fn scene(&mut self, state: &State, width: f64) -> Scene {
        let look = state.look;
        let plate = plate(look.view, state.plan.animal().species());
        let antlers = has_antlers(&state.plan);
        let whole = plate.frame(None, antlers).unwrap_or(Frame { x: 0.0, y: 0.0, width: 1.0, height: 1.0 });
        let region = plate.frame(look.region, antlers).unwrap_or(whole);
        let near = look.lens.unwrap_or(region);
        let areas = self.areas(state, &plate, pixels(width, near));
        let space = match (look.lens, look.region) {
            (Some(_), _) => Space::Within(near),
            (None, None) if look.view != View::Above => Space::AboutTheAnimal(near),
            (None, _) => Space::Around(near),
        };
        let labels = labels::labels(look.naming, &areas, space, pixels(width, near));
        let frame = labels.frame;
        Scene {
            frame,
            whole: if look.naming == Naming::Off { whole } else { whole.with(frame) },
            pixels: pixels(width, frame),
            antlers: antlers && look.region.is_none(),
            labels,
            wounds: if look.view == View::Above {
                Vec::new()
            } else {
                wounds::wounds(&state.plan, &state.forecast, look.side, &plate, state.units)
            },
            areas,
            plate,
        }
    }

    /// Every area of a view.
    fn areas(&mut self, state: &State, plate: &Plate, pixels: f64) -> Vec<Rc<AreaView>> {
        let mut before = std::mem::take(&mut self.drawn).into_iter();
        for given in given(state, plate, pixels) {
            let view = match before.next() {
                Some((same, view)) if same == given => view,
                _ => Rc::new(area_view(&given)),
            };
            self.drawn.push((given, view));
        }
        self.drawn.iter().map(|(_, view)| view.clone()).collect()
    }
}

/// The plate from one side with a number for each of these muscles, for a page of paper.
pub fn numbered(state: &State, view: View, asked: &[Muscle]) -> (Scene, Labels) {
    /// CSS pixels that the picture takes across a page.
    const PAGE: f64 = 640.0;
    let look = Look { view, region: None, lens: None, peel: 0, naming: Naming::Off, ..state.look };
    let mut bare = state.clone();
    bare.look = look;
    let scene = scene(&bare, PAGE);
    let space = if look.view == View::Above {
        Space::Around(scene.frame)
    } else {
        Space::AboutTheAnimal(scene.frame)
    };
    let asked: Vec<Rc<AreaView>> =
        scene.areas.iter().filter(|view| asked.contains(&view.area.muscle)).cloned().collect();
    let numbers = labels::numbers(&asked, space, scene.pixels);
    (scene, numbers)
}

/// What is shown after somebody pinched, dragged or turned the wheel: not closer than a tenth of the whole, not
/// beside it, and None, which is the whole, when nothing would be left out.
pub fn kept(wanted: Frame, whole: Frame) -> Option<Frame> {
    if wanted.width >= whole.width * 0.97 {
        return None;
    }
    let larger = (whole.width / 10.0 / wanted.width).max(1.0);
    let (width, height) = (wanted.width * larger, wanted.height * larger);
    let middle = |from: f64, size: f64, low: f64, room: f64| (from + size / 2.0).max(low).min(low + room);
    Some(Frame {
        x: middle(wanted.x, wanted.width, whole.x, whole.width) - width / 2.0,
        y: middle(wanted.y, wanted.height, whole.y, whole.height) - height / 2.0,
        width,
        height,
    })
}

/// All that an area is drawn from.
#[derive(Clone, Debug, PartialEq)]
struct Given {
    area: Rc<Area>,
    side: Side,
    forecast: Rc<MuscleForecast>,
    division: Division,
    taken: bool,
    picked: bool,
    cover: Cover,
    /// Whether it is seen through what was lifted off.
    beneath: bool,
    units: Units,
    pixels: f64,
}

/// What every area of a view is drawn from. With layers lifted off, what lies beneath comes first.
fn given(state: &State, plate: &Plate, pixels: f64) -> Vec<Given> {
    let lifted = state.look.lifted();
    let given = |area: &Rc<Area>, cover: Cover, beneath: bool| {
        let (muscle, side) = (area.muscle, area.side.unwrap_or(state.look.side));
        Given {
            area: area.clone(),
            side,
            forecast: state.forecast.muscles[muscle.index()].clone(),
            division: state.plan.division(muscle, side).clone(),
            taken: state.plan.is_recovered(muscle),
            picked: state.muscle == Some(muscle),
            cover,
            beneath,
            units: state.units,
            pixels,
        }
    };
    let mut all = Vec::new();
    if lifted > 0 {
        let beneath = self::plate(View::Inner, state.plan.animal().species());
        all.extend(beneath.areas.iter().map(|area| {
            given(area, if layer(area.muscle) <= lifted { Cover::Open } else { Cover::Covered }, true)
        }));
    }
    all.extend(plate.areas.iter().map(|area| {
        given(area, if layer(area.muscle) <= lifted { Cover::Lifted } else { Cover::Open }, false)
    }));
    all
}

fn area_view(given: &Given) -> AreaView {
    let (area, forecast) = (&given.area, &given.forecast);
    let parts = &forecast.sides[given.side.index()];
    let marks =
        if given.taken { marks::marks(&area.axis, parts, forecast.length, given.pixels) } else { Vec::new() };
    let every_cut = marks.iter().all(|marks| marks.every_cut);
    let cuts = text::cuts(&given.division, ", ", given.units);
    let result = text::muscle_result(forecast, given.taken);
    let spoiled = parts.iter().any(|part| part.spoiled);
    AreaView {
        id: if given.beneath { format!("{}-in", area.muscle.id()) } else { id(area) },
        mark: if given.taken { mark(&marks) } else { "" },
        marks,
        taken: given.taken,
        picked: given.picked,
        cover: given.cover,
        name: text::area(area.muscle, area.side, &cuts, &result, spoiled, every_cut),
        area: area.clone(),
    }
}

pub(super) fn id(area: &Area) -> String {
    match area.side {
        None => area.muscle.id().to_owned(),
        Some(Side::Left) => format!("{}-l", area.muscle.id()),
        Some(Side::Right) => format!("{}-r", area.muscle.id()),
    }
}

fn mark(marks: &[Marks]) -> &'static str {
    match marks.iter().find(|marks| !marks.spoiled).map(|marks| marks.product) {
        Some(Some(product)) => text::product_mark(product),
        Some(None) => text::DISCARD_MARK,
        None => "",
    }
}

/// Whether the animal carries antlers or horns on the plate.
pub(super) fn has_antlers(plan: &Plan) -> bool {
    let animal = plan.animal();
    let male = animal.sex() == Sex::Buck || animal.species() == Species::Caribou;
    male && animal.age() != Age::Fawn
}

/// A direction of the arrow keys.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Toward {
    /// Left.
    Left,
    /// Right.
    Right,
    /// Up.
    Up,
    /// Down.
    Down,
}

/// The nearest open area from `index` in a direction, by where the labels sit; None at the edge.
pub fn neighbour(areas: &[Rc<AreaView>], index: usize, toward: Toward) -> Option<usize> {
    let from = areas.get(index)?.area.label;
    let mut best: Option<(f64, usize)> = None;
    for (other, view) in areas.iter().enumerate() {
        let (dx, dy) = (view.area.label.0 - from.0, view.area.label.1 - from.1);
        let (along, aside) = match toward {
            Toward::Left => (-dx, dy),
            Toward::Right => (dx, dy),
            Toward::Up => (-dy, dx),
            Toward::Down => (dy, dx),
        };
        // Nothing more than 60 degrees off the direction counts as lying there.
        if other == index || !view.is_open() || along <= 0.0 || aside.abs() > along * 1.75 {
            continue;
        }
        let distance = along + 2.0 * aside.abs();
        if best.is_none_or(|(nearest, _)| distance < nearest) {
            best = Some((distance, other));
        }
    }
    best.map(|(_, other)| other)
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::anatomy::{Region, Sides};
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::plan::Action;
    use hindsaddle_model::product::{Cut, Product, RoastSize};
    use hindsaddle_model::tables;
    use hindsaddle_model::units::{Length, Mass};

    use super::*;
    use crate::plate::marks::knife_places;
    use crate::plate::peel::LAYERS;
    use crate::store::Tool;

    fn example() -> State {
        State::new(Plan::new(Animal::example()).into(), None, Units::Pounds, None)
    }

    fn looked(view: View, region: Option<Region>, peel: u8) -> State {
        let mut state = example();
        state.look = Look { view, region, peel, ..state.look };
        state
    }

    /// Cuts of every product at sizes from the thinnest to the thickest.
    fn cuts() -> Vec<Cut> {
        let mut cuts: Vec<Cut> = [3.0, 6.4, 9.5, 12.7, 19.1, 25.4, 38.1, 50.8, 102.0]
            .into_iter()
            .flat_map(|mm| [Cut::Steak(Length::mm(mm)), Cut::Chop(Length::mm(mm))])
            .collect();
        cuts.extend([50.0, 100.0, 203.2, 300.0].map(|mm| Cut::Roast(RoastSize::Length(Length::mm(mm)))));
        cuts.extend(
            [200.0, 450.0, 1130.0, 3000.0].map(|grams| Cut::Roast(RoastSize::Weight(Mass::grams(grams)))),
        );
        cuts.push(Cut::Roast(RoastSize::Whole));
        cuts
    }

    /// The pieces between the knife lines of a part: one line more than pieces, or, for roasts, which keep the
    /// ends of their muscle, one less for each end that is the muscle's own.
    fn pieces_drawn(marks: &Marks, places: &[f64]) -> u32 {
        let lines = marks.lines.matches('m').count() as u32;
        let ends = match marks.product {
            Some(Product::Roast) => {
                places.iter().filter(|place| !(0.001..0.999).contains(*place)).count() as u32
            }
            Some(_) | None => 0,
        };
        (lines + ends).saturating_sub(1)
    }

    /// Every muscle in every view that draws it, as every product in every thickness that the rules allow; in a
    /// picture so large that no line is left out.
    #[test]
    fn as_many_cuts_are_drawn_as_the_forecast_counts() {
        let mut looked = 0;
        for muscle in Muscle::ALL {
            for cut in cuts() {
                let action = Action::Assign { muscle, sides: Sides::Both, cut };
                let Ok(applied) = Plan::new(Animal::example()).apply(action) else { continue };
                let state = State::new(applied.plan.into(), None, Units::Pounds, None);
                let parts = &state.forecast.muscles[muscle.index()].sides[0];
                for view in View::ALL {
                    let plate = plate(view, Species::WhiteTailed);
                    let views = Drawer::default().areas(&state, &plate, 50.0);
                    for view in views.iter().filter(|view| view.area.muscle == muscle && view.taken) {
                        for (marks, part) in view.marks.iter().zip(parts) {
                            assert!(marks.every_cut, "{muscle:?} {cut:?}");
                            let drawn = pieces_drawn(marks, &knife_places(part));
                            assert_eq!(drawn, part.pieces.count, "{muscle:?} {cut:?}");
                            looked += 1;
                        }
                    }
                }
            }
        }
        assert!(looked > 500, "{looked}");
    }

    /// Edits, each seen from either side, with a muscle picked, in other units, with layers lifted, and from above.
    #[test]
    fn what_is_kept_from_one_drawing_to_the_next_changes_nothing() {
        let edits = [
            Action::Assign {
                muscle: Muscle::Backstrap,
                sides: Sides::Both,
                cut: Cut::Steak(Length::mm(30.0)),
            },
            Action::Assign { muscle: Muscle::Neck, sides: Sides::One(Side::Left), cut: Cut::Grind },
            Action::Recover { muscle: Muscle::Knuckle, taken: false },
        ];
        let looks: [fn(&mut State); 6] = [
            |_| (),
            |state| state.look.side = Side::Right,
            |state| state.muscle = Some(Muscle::Knuckle),
            |state| state.units = Units::Kilograms,
            |state| (state.tool, state.look.peel) = (Tool::Peel, 2),
            |state| state.look.view = View::Above,
        ];
        let mut drawer = Drawer::default();
        let (mut before, mut kept): (Vec<Rc<AreaView>>, usize) = (Vec::new(), 0);
        for look in looks {
            let mut plan = Plan::new(Animal::example());
            for edit in edits.clone() {
                plan = plan.apply(edit).unwrap().plan;
                let mut state = State::new(plan.clone().into(), None, Units::Pounds, None);
                look(&mut state);
                let drawn = drawer.scene(&state, 1440.0);
                assert_eq!(drawn, scene(&state, 1440.0));
                kept += before.iter().zip(&drawn.areas).filter(|(one, other)| Rc::ptr_eq(one, other)).count();
                before = drawn.areas;
            }
        }
        assert!(kept > 100, "{kept}");
    }

    #[test]
    fn lines_too_close_for_the_screen_are_thinned_and_said() {
        let state = example();
        let views = Drawer::default().areas(&state, &plate(View::Outer, Species::WhiteTailed), 0.02);
        let backstrap = views.iter().find(|view| view.id == "backstrap").unwrap();
        assert!(!backstrap.marks[0].every_cut);
        assert!(backstrap.name.ends_with("not every cut drawn"), "{}", backstrap.name);
    }

    #[test]
    fn the_arrow_keys_reach_every_open_muscle() {
        for (view, peel) in [(View::Outer, 0), (View::Outer, 2), (View::Outer, LAYERS), (View::Inner, 0)] {
            let state = looked(view, None, peel);
            let areas = scene(&state, 1440.0).areas;
            let open = areas.iter().filter(|view| view.is_open()).count();
            let mut reached = vec![areas.iter().position(|view| view.is_open()).unwrap()];
            let mut next = 0;
            while let Some(from) = reached.get(next).copied() {
                next += 1;
                for toward in [Toward::Left, Toward::Right, Toward::Up, Toward::Down] {
                    if let Some(to) = neighbour(&areas, from, toward)
                        && !reached.contains(&to)
                    {
                        reached.push(to);
                    }
                }
            }
            assert_eq!(reached.len(), open, "{view:?}, {peel} layers off");
        }
    }

    /// Layer by layer the outer side goes and the inner side comes; in the end every muscle of the inner side
    /// can be pressed.
    #[test]
    fn lifting_every_layer_shows_everything_beneath() {
        let mut open = 0;
        for peel in 0..=LAYERS {
            let areas = scene(&looked(View::Outer, None, peel), 1440.0).areas;
            let lifted = areas.iter().filter(|view| view.cover == Cover::Lifted).count();
            assert!(peel == 0 || lifted > open, "{peel}");
            open = lifted;
        }
        let areas = scene(&looked(View::Outer, None, LAYERS), 1440.0).areas;
        for muscle in
            Muscle::ALL.into_iter().filter(|muscle| tables::muscle(*muscle).views.contains(&View::Inner))
        {
            assert!(areas.iter().any(|view| view.is_open() && view.area.muscle == muscle), "{muscle:?}");
        }
    }

    /// 44 px under a thumb: a region of the side views on the narrowest phone. The touch layer adds 8 px around
    /// each border.
    #[test]
    fn a_muscle_of_a_region_is_as_large_as_a_thumb() {
        for view in [View::Outer, View::Inner] {
            for region in Region::ALL {
                let state = looked(view, Some(region), 0);
                let scene = scene(&state, 360.0);
                for view in
                    scene.areas.iter().filter(|view| tables::muscle(view.area.muscle).region == region)
                {
                    let bounds = view.area.bounds;
                    let least = bounds.width.min(bounds.height) * scene.pixels + 16.0;
                    assert!(least >= 44.0, "{:?} in {region:?}: {least:.0} px", view.area.muscle);
                }
            }
        }
    }
}
