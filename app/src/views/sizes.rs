//! One step more or less of a size, in steps a person would take in their units, inside what the model takes.

use hindsaddle_model::product::{self, Cut, RoastSize};
use hindsaddle_model::units::{Length, Mass};

use crate::text::Units;

/// Next multiple of `step` in the direction `by`, between the ends.
fn stepped(value: f64, step: f64, by: i32, (least, most): (f64, f64)) -> f64 {
    let on_grid = value / step;
    let next = if by > 0 { (on_grid + 0.01).floor() + 1.0 } else { (on_grid - 0.01).ceil() - 1.0 };
    next.max((least / step).ceil()).min((most / step).floor()) * step
}

fn length(value: Length, by: i32, ends: (Length, Length), inch_part: f64, mm: f64, units: Units) -> Length {
    let step = match units {
        Units::Pounds => Length::inches(inch_part).to_mm(),
        Units::Kilograms => mm,
    };
    Length::mm(stepped(value.to_mm(), step, by, (ends.0.to_mm(), ends.1.to_mm())))
}

/// The same cut one step larger or smaller: slices and cubes by 1/8 in or 2 mm, roasts by half a pound or
/// 250 g, or by an inch or 2 cm.
pub fn step(cut: Cut, by: i32, units: Units) -> Cut {
    match cut {
        Cut::Steak(thick) => Cut::Steak(length(thick, by, product::THICKNESS_RANGE, 0.125, 2.0, units)),
        Cut::Chop(thick) => Cut::Chop(length(thick, by, product::THICKNESS_RANGE, 0.125, 2.0, units)),
        Cut::Stew(edge) => Cut::Stew(length(edge, by, product::CUBE_RANGE, 0.25, 5.0, units)),
        Cut::Roast(RoastSize::Weight(weight)) => {
            let step = match units {
                Units::Pounds => Mass::pounds(0.5),
                Units::Kilograms => Mass::grams(250.0),
            };
            let (least, most) = product::ROAST_WEIGHT_RANGE;
            let grams = stepped(weight.to_grams(), step.to_grams(), by, (least.to_grams(), most.to_grams()));
            Cut::Roast(RoastSize::Weight(Mass::grams(grams)))
        }
        Cut::Roast(RoastSize::Length(long)) => {
            Cut::Roast(RoastSize::Length(length(long, by, product::ROAST_LENGTH_RANGE, 1.0, 20.0, units)))
        }
        Cut::Roast(RoastSize::Whole) | Cut::Grind | Cut::Discard => cut,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_up_and_down_comes_back_in_both_units() {
        let inch = Cut::Steak(Length::mm(25.4));
        for units in [Units::Pounds, Units::Kilograms] {
            let up = step(inch, 1, units).on_grid();
            assert_ne!(up, inch);
            let Cut::Steak(thick) = step(up, -1, units).on_grid() else { panic!() };
            assert!((thick.to_mm() - 25.4).abs() < 2.0);
        }
        let Cut::Steak(thick) = step(inch, 1, Units::Pounds) else { panic!() };
        assert!((thick.to_inches() - 1.125).abs() < 1e-9);
    }

    #[test]
    fn a_thousand_steps_end_at_what_the_model_takes() {
        for by in [-1, 1] {
            for mut cut in [
                Cut::Steak(Length::mm(25.4)),
                Cut::Stew(Length::mm(25.4)),
                Cut::usual(product::Product::Roast),
            ] {
                for _ in 0..1000 {
                    cut = step(cut, by, Units::Pounds).on_grid();
                }
                let refused =
                    hindsaddle_model::rules::check(hindsaddle_model::anatomy::Muscle::Knuckle, cut, None);
                assert_eq!(refused, Ok(()), "{cut:?}");
            }
        }
    }
}
