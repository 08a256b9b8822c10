//! Grain axes: inside their muscles, and along the fibres as the catalogue has them.

use hindsaddle_model::anatomy::View;
use hindsaddle_model::tables;
use kurbo::ParamCurve;

use crate::read::{along, drawing};

/// A drawn axis lies within this much of the direction that the catalogue has. Judgement.
const MOST_DEGREES: f64 = 12.0;

#[test]
fn an_axis_lies_inside_its_muscle() {
    for view in View::ALL {
        for region in drawing(view).regions {
            let points = along(&region.axis, 2.0);
            let outside = points.iter().filter(|point| !region.contains(**point)).count();
            // The first and last points may touch the border.
            assert!(
                outside * 20 <= points.len(),
                "{view:?} {}: {outside} of {}",
                region.name(),
                points.len()
            );
        }
    }
}

/// From above a muscle is seen aslant, so only the side views can be held to an angle.
#[test]
fn an_axis_runs_along_the_fibres() {
    for view in [View::Outer, View::Inner] {
        for region in drawing(view).regions {
            let mut segments = region.axis.segments();
            let first = segments.next().unwrap();
            let (from, to) = (first.start(), segments.last().unwrap_or(first).end());
            let drawn = -(to - from).atan2().to_degrees();
            let catalogue = tables::muscle(region.muscle).grain_degrees;
            // A fibre has no head and no tail: a half turn is no difference.
            let off = (drawn - catalogue).rem_euclid(180.0);
            let off = off.min(180.0 - off);
            assert!(off <= MOST_DEGREES, "{view:?} {}: {drawn:.0} against {catalogue:.0}", region.name());
        }
    }
}
