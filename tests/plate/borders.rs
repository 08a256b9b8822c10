//! Borders: regions lie inside the animal, share their edges, and touch whom the catalogue says they touch.

use std::collections::BTreeSet;

use hindsaddle_model::anatomy::{Muscle, Side, View};
use hindsaddle_model::tables;
use kurbo::{BezPath, Point, Shape};

use crate::read::{Drawing, Region, along, drawing, lattice};

/// Between the points at which areas are sampled, in thousandths of the withers' height.
const FINE: i32 = 4;

#[test]
fn every_group_is_drawn_in_the_views_its_row_names_and_no_other() {
    for view in View::ALL {
        let drawing = drawing(view);
        for muscle in Muscle::ALL {
            let drawn = drawing.regions.iter().filter(|region| region.muscle == muscle).count();
            let expected = match (tables::muscle(muscle).views.contains(&view), view) {
                (false, _) => 0,
                (true, View::Above) => 2,
                (true, View::Outer | View::Inner) => 1,
            };
            assert_eq!(drawn, expected, "{muscle:?} in {view:?}");
        }
    }
}

#[test]
fn regions_lie_inside_the_outline() {
    for view in View::ALL {
        let drawing = drawing(view);
        for region in &drawing.regions {
            let points = points_of(region);
            let outside = points.iter().filter(|point| drawing.body.winding(**point) == 0).count();
            assert!(
                outside * 200 <= points.len(),
                "{view:?} {}: {outside} of {} outside",
                region.name(),
                points.len()
            );
        }
    }
}

#[test]
fn regions_of_a_view_overlap_by_less_than_half_a_percent_of_the_smaller() {
    for view in View::ALL {
        let drawing = drawing(view);
        for (index, one) in drawing.regions.iter().enumerate() {
            let points = points_of(one);
            for other in &drawing.regions[index + 1..] {
                let both = points.iter().filter(|point| other.contains(**point)).count();
                let smaller = points.len().min(points_of(other).len());
                assert!(
                    both * 200 < smaller,
                    "{view:?} {} and {}: {both} of {smaller}",
                    one.name(),
                    other.name()
                );
            }
        }
    }
}

#[test]
fn labels_stand_inside_their_regions() {
    for view in View::ALL {
        for region in drawing(view).regions {
            assert!(region.contains(region.label), "{view:?} {}", region.name());
        }
    }
}

/// A shared border is the same line for both: wherever two regions come close they meet, so no sliver of bare
/// hide shows between them.
#[test]
fn regions_that_come_close_share_their_border() {
    for view in View::ALL {
        let drawing = drawing(view);
        for (one, other) in pairs(&drawing) {
            let gaps: Vec<f64> = along(&one.polygon, 3.0)
                .into_iter()
                .map(|point| distance(&other.polygon, point))
                .filter(|gap| *gap > 0.5 && *gap < 5.0)
                .collect();
            // Where a border leaves the other it passes through these distances: once at each end.
            assert!(gaps.len() <= 24, "{view:?} {} and {}: {} gaps", one.name(), other.name(), gaps.len());
        }
    }
}

#[test]
fn the_neighbours_drawn_are_the_neighbours_of_the_catalogue() {
    for view in View::ALL {
        let drawing = drawing(view);
        let mut drawn = BTreeSet::new();
        for (one, other) in pairs(&drawing) {
            let shared = along(&one.polygon, 2.0)
                .into_iter()
                .filter(|point| distance(&other.polygon, *point) < 0.5)
                .count();
            // 12 of a thousand: a corner where three meet is no border.
            if shared * 2 >= 12 {
                drawn.insert(key(one.muscle, other.muscle, one.side));
            }
        }
        let sides: &[Option<Side>] = match view {
            View::Above => &[Some(Side::Left), Some(Side::Right)],
            View::Outer | View::Inner => &[None],
        };
        let catalogue: BTreeSet<_> = tables::neighbours(view)
            .iter()
            .flat_map(|(one, other)| sides.iter().map(|side| key(*one, *other, *side)))
            .collect();
        let missing: Vec<_> = catalogue.difference(&drawn).collect();
        let unnamed: Vec<_> = drawn.difference(&catalogue).collect();
        assert!(
            missing.is_empty() && unnamed.is_empty(),
            "{view:?}: not drawn {missing:?}; not in the catalogue {unnamed:?}"
        );
    }
}

fn key(one: Muscle, other: Muscle, side: Option<Side>) -> (Muscle, Muscle, Option<usize>) {
    (one.min(other), one.max(other), side.map(Side::index))
}

/// Every pair of regions of one side of the animal.
fn pairs(drawing: &Drawing) -> impl Iterator<Item = (&Region, &Region)> {
    drawing.regions.iter().enumerate().flat_map(|(index, one)| {
        drawing.regions[index + 1..]
            .iter()
            .filter(move |other| other.side == one.side)
            .map(move |other| (one, other))
    })
}

fn points_of(region: &Region) -> Vec<Point> {
    lattice(region.polygon.bounding_box(), FINE).into_iter().filter(|point| region.contains(*point)).collect()
}

/// How far a point is from a line of straight pieces.
fn distance(path: &BezPath, point: Point) -> f64 {
    let far = path.bounding_box().inflate(6.0, 6.0);
    if !far.contains(point) {
        return f64::MAX;
    }
    path.segments()
        .map(|segment| kurbo::ParamCurveNearest::nearest(&segment, point, 0.01).distance_sq)
        .fold(f64::MAX, f64::min)
        .sqrt()
}
