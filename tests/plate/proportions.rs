//! The drawn animal has a deer's proportions. In withers' heights; the value and its basis stand beside each.

use hindsaddle_model::anatomy::View;
use kurbo::{ParamCurveNearest, Point};

use crate::read::{Drawing, drawing};

const SIDES: [View; 2] = [View::Outer, View::Inner];

#[track_caller]
fn check(what: &str, drawn: f64, low: f64, high: f64) {
    let (low, high) = (low * 0.96, high * 1.04);
    assert!(drawn >= low && drawn <= high, "{what}: {drawn:.3}, expected {low:.3} to {high:.3}");
}

/// Length of the line through landmarks.
fn line(drawing: &Drawing, names: &[&str]) -> f64 {
    names.windows(2).map(|pair| drawing.landmark(pair[0]).distance(drawing.landmark(pair[1]))).sum()
}

fn height(drawing: &Drawing, name: &str) -> f64 {
    drawing.landmark(name).y
}

#[test]
fn the_animal_has_the_proportions_of_a_deer() {
    for view in SIDES {
        let deer = drawing(view);
        // Withers' height is the unit.
        check("withers", height(&deer, "withers"), 1.0, 1.0);
        // Tanba sika: 112.6/106.2 cm male, 103.9/94.8 cm female.
        check("body length", line(&deer, &["point-of-shoulder", "pin-bone"]), 1.06, 1.10);
        // Mule deer 126/84 to 168/106, elk 2.1/1.3, moose 1.52 to 1.71.
        let back = ["nose-tip", "poll", "withers", "mid-back", "croup-top", "tail-head"];
        check("nose to tail head, along the back", line(&deer, &back), 1.5, 1.65);
        // Mule deer: 28/84 and 35/106 male, 27/80 and 33/100 female.
        check("head", line(&deer, &["nose-tip", "poll"]), 0.33, 0.33);
        // From memory and judgement.
        check("neck", line(&deer, &["poll", "withers"]), 0.50, 0.50);
        // From girth over height of mule deer, 0.95 to 1.10: depth is girth over 2.58.
        check("chest depth", height(&deer, "withers") - height(&deer, "brisket-low"), 0.37, 0.44);
        // Adult sika, about 53 of 90 cm.
        check("brisket height", height(&deer, "brisket-low"), 0.585, 0.585);
        // Tanba sika: 52.9/106.2 and 49.4/94.8, along the bone.
        check("hind foot", line(&deer, &["hind-hoof", "hind-fetlock", "hock-point"]), 0.50, 0.52);
        // Fallow + 6 cm (weak); white-tailed slightly high from memory.
        check("rump", height(&deer, "croup-top"), 1.0, 1.06);
    }
}

/// Bones of a white-tailed deer in a public bone collection, at a withers' height of 92 cm (assumed there).
#[test]
fn the_long_bones_are_as_long_as_measured() {
    for view in SIDES {
        let deer = drawing(view);
        for (bone, ends, centimetres) in [
            ("humerus", ["shoulder-joint", "elbow-joint"], 21.5),
            // The forearm is drawn to the middle of the wrist, half a centimetre below the radius.
            ("radius", ["elbow-joint", "carpus"], 24.4),
            ("femur", ["hip-joint", "stifle"], 27.0),
            ("tibia", ["stifle", "hock-joint"], 31.5),
        ] {
            check(bone, line(&deer, &ends) * 92.0, centimetres, centimetres);
        }
    }
}

/// A landmark is a promise that the drawing keeps: the contour passes within 4 % of the withers' height.
#[test]
fn the_contour_passes_through_its_landmarks() {
    for view in SIDES {
        let deer = drawing(view);
        let names = ["nose-tip", "withers", "mid-back", "croup-top", "tail-head", "belly-mid"];
        // On the inner side the chest is split along the breastbone, and the foreleg stands behind it.
        let outer_only = ["breast-point", "brisket-low", "hock-point", "hind-hoof", "fore-hoof"];
        let wanted = if view == View::Outer { &outer_only[..] } else { &[] };
        for name in names.iter().chain(wanted) {
            let at = deer.landmark(name);
            let at = Point::new(at.x * 1000.0, at.y * -1000.0);
            let gap = deer
                .contour
                .segments()
                .map(|line| line.nearest(at, 0.01).distance_sq)
                .fold(f64::MAX, f64::min);
            assert!(gap.sqrt() <= 40.0, "{view:?} {name}: {:.0} thousandths away", gap.sqrt());
        }
    }
}

/// From above: half widths, from memory and judgement (rib cage, hips, thighs).
#[test]
fn the_animal_is_as_wide_as_a_deer_from_above() {
    let deer = drawing(View::Above);
    let half_width = |x: f64| {
        let step = 1.0;
        let mut y = 0.0;
        while kurbo::Shape::winding(&deer.body, Point::new(x * 1000.0, y)) != 0 {
            y += step;
        }
        y / 1000.0
    };
    check("rib cage", half_width(0.48), 0.13, 0.13);
    check("hip points", half_width(0.84), 0.115, 0.125);
    check("thighs", half_width(0.95), 0.125, 0.125);
}
