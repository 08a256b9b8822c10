//! What the plate shows of a state.

use hindsaddle_model::anatomy::Side;
use hindsaddle_model::animal::{Age, Sex, Species};
use hindsaddle_model::forecast::MuscleForecast;
use hindsaddle_model::plan::Plan;

use crate::plate::marks::{self, Marks};
use crate::plate::{Area, Frame, Plate};
use crate::store::State;
use crate::text::{self, Units};

/// One muscle group as it is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct AreaView {
    /// Its place in the areas of the view.
    pub index: usize,
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
    /// What is said of it.
    pub name: String,
}

/// How many CSS pixels a unit of the drawing takes in a window of `width`.
pub fn pixels(width: f64, frame: Frame) -> f64 {
    let plate = if width < 700.0 {
        width - 16.0
    } else if width < 1100.0 {
        width - 48.0
    } else {
        (width - 740.0).min(900.0)
    };
    plate.max(200.0) / frame.width
}

/// Every area of a view.
pub fn areas(state: &State, plate: &Plate, pixels: f64) -> Vec<AreaView> {
    plate
        .areas
        .iter()
        .enumerate()
        .map(|(index, area)| {
            let side = area.side.unwrap_or(state.shown_side());
            let forecast = &state.forecast.muscles[area.muscle.index()];
            let parts = &forecast.sides[side.index()];
            let taken = state.plan.is_recovered(area.muscle);
            let marks =
                if taken { marks::marks(area.axis, parts, forecast.length, pixels) } else { Vec::new() };
            let every_cut = marks.iter().all(|marks| marks.every_cut);
            AreaView {
                index,
                id: id(area),
                mark: if taken { mark(&marks) } else { "" },
                marks,
                taken,
                picked: state.muscle == Some(area.muscle),
                name: name(area, forecast, &state.plan, state.units, every_cut),
            }
        })
        .collect()
}

fn id(area: &Area) -> String {
    match area.side {
        None => area.muscle.id().to_owned(),
        Some(Side::Left) => format!("{}-l", area.muscle.id()),
        Some(Side::Right) => format!("{}-r", area.muscle.id()),
    }
}

fn mark(marks: &[Marks]) -> &'static str {
    match marks.first().map(|marks| marks.product) {
        Some(Some(product)) => text::product_mark(product),
        Some(None) => text::DISCARD_MARK,
        None => "",
    }
}

fn name(area: &Area, forecast: &MuscleForecast, plan: &Plan, units: Units, every_cut: bool) -> String {
    let shown = area.side.unwrap_or(Side::Left);
    let cuts: Vec<String> =
        plan.division(area.muscle, shown).parts().iter().map(|part| text::cut(part.cut, units)).collect();
    let result = text::muscle_result(forecast, plan.is_recovered(area.muscle));
    text::area(area.muscle, area.side, &cuts.join(", "), &result, every_cut)
}

/// Whether the animal carries antlers on the plate.
pub fn has_antlers(plan: &Plan) -> bool {
    let animal = plan.animal();
    let male = animal.sex() == Sex::Buck || animal.species() == Species::Caribou;
    male && animal.age() != Age::Fawn && animal.species() != Species::Pronghorn
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

/// The nearest area from `index` in a direction, by where the labels sit; None at the edge.
pub fn neighbour(plate: &Plate, index: usize, toward: Toward) -> Option<usize> {
    let from = plate.areas.get(index)?.label;
    let mut best: Option<(f64, usize)> = None;
    for (other, area) in plate.areas.iter().enumerate() {
        let (dx, dy) = (area.label.0 - from.0, area.label.1 - from.1);
        let (along, aside) = match toward {
            Toward::Left => (-dx, dy),
            Toward::Right => (dx, dy),
            Toward::Up => (-dy, dx),
            Toward::Down => (dy, dx),
        };
        // Nothing more than 60 degrees off the direction counts as lying there.
        if other == index || along <= 0.0 || aside.abs() > along * 1.75 {
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
    use hindsaddle_model::anatomy::{Muscle, View};
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::product::Product;

    use super::*;
    use crate::plate::plate;

    fn example() -> State {
        State::new(Plan::new(Animal::example()), None, Units::Pounds, None)
    }

    #[test]
    fn as_many_cuts_are_drawn_as_the_forecast_counts() {
        let state = example();
        let plate = plate(View::Outer);
        let views = areas(&state, plate, 10.0);
        let index = plate.areas.iter().position(|area| area.muscle == Muscle::Backstrap).unwrap();
        let part = &state.forecast.muscles[Muscle::Backstrap.index()].sides[0][0];
        let lines = views[index].marks[0].lines.matches('M').count();
        assert_eq!(lines as u32, part.pieces.count + 1);
        assert!(views[index].marks[0].every_cut);
        assert_eq!(views[index].marks[0].product, Some(Product::Steak));
    }

    #[test]
    fn lines_too_close_for_the_screen_are_thinned_and_said() {
        let state = example();
        let plate = plate(View::Outer);
        let views = areas(&state, plate, 0.02);
        let backstrap = views.iter().find(|view| view.id == "backstrap").unwrap();
        assert!(!backstrap.marks[0].every_cut);
        assert!(backstrap.name.ends_with("not every cut drawn"), "{}", backstrap.name);
    }

    #[test]
    fn the_arrow_keys_reach_every_muscle_of_a_side_view() {
        for view in [View::Outer, View::Inner] {
            let plate = plate(view);
            let mut reached = vec![0];
            let mut next = 0;
            while let Some(from) = reached.get(next).copied() {
                next += 1;
                for toward in [Toward::Left, Toward::Right, Toward::Up, Toward::Down] {
                    if let Some(to) = neighbour(plate, from, toward)
                        && !reached.contains(&to)
                    {
                        reached.push(to);
                    }
                }
            }
            assert_eq!(reached.len(), plate.areas.len(), "{view:?}");
        }
    }
}
