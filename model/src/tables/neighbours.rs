//! Which muscles touch on which side of the plate, so that one is found by its neighbours.
//!
//! From the places the muscle catalogue gives in words ([`crate::sources::Source::MuscleCatalogue`]), and by
//! judgement where it is silent; `tests/plate/borders.rs` holds the drawing to it, both ways.

use crate::anatomy::{Muscle, View};

/// Every pair that shares a border in a view, each once; from above it is the same on both sides.
pub fn neighbours(view: View) -> &'static [(Muscle, Muscle)] {
    match view {
        View::Outer => OUTER,
        View::Inner => INNER,
        View::Above => ABOVE,
    }
}

/// The muscles that touch one on any side of the plate, in the order of [`Muscle::ALL`].
pub fn touching(muscle: Muscle) -> impl Iterator<Item = Muscle> {
    Muscle::ALL.into_iter().filter(move |other| {
        [View::Outer, View::Inner, View::Above]
            .into_iter()
            .flat_map(neighbours)
            .any(|pair| *pair == (muscle, *other) || *pair == (*other, muscle))
    })
}

static OUTER: &[(Muscle, Muscle)] = &[
    (Muscle::Neck, Muscle::NeckStraps),
    (Muscle::Neck, Muscle::Cape),
    (Muscle::Neck, Muscle::MockTender),
    (Muscle::NeckStraps, Muscle::MockTender),
    (Muscle::NeckStraps, Muscle::Arm),
    (Muscle::NeckStraps, Muscle::Brisket),
    (Muscle::Cape, Muscle::MockTender),
    (Muscle::Cape, Muscle::FlatIron),
    (Muscle::Cape, Muscle::Clod),
    (Muscle::Cape, Muscle::RibMeat),
    (Muscle::Cape, Muscle::Backstrap),
    (Muscle::MockTender, Muscle::FlatIron),
    (Muscle::MockTender, Muscle::Arm),
    (Muscle::FlatIron, Muscle::Clod),
    (Muscle::FlatIron, Muscle::Arm),
    (Muscle::Clod, Muscle::Arm),
    (Muscle::Clod, Muscle::ForeShank),
    (Muscle::Clod, Muscle::Brisket),
    (Muscle::Clod, Muscle::RibMeat),
    (Muscle::Arm, Muscle::ForeShank),
    (Muscle::Arm, Muscle::Brisket),
    (Muscle::ForeShank, Muscle::Brisket),
    (Muscle::Brisket, Muscle::RibMeat),
    (Muscle::Brisket, Muscle::FlankSteak),
    (Muscle::RibMeat, Muscle::FlankSheets),
    (Muscle::RibMeat, Muscle::Backstrap),
    (Muscle::FlankSteak, Muscle::FlankSheets),
    (Muscle::FlankSteak, Muscle::Knuckle),
    (Muscle::FlankSheets, Muscle::Backstrap),
    (Muscle::FlankSheets, Muscle::Sirloin),
    (Muscle::FlankSheets, Muscle::TriTip),
    (Muscle::Backstrap, Muscle::Sirloin),
    (Muscle::Sirloin, Muscle::TriTip),
    (Muscle::Sirloin, Muscle::Knuckle),
    (Muscle::Sirloin, Muscle::BottomRound),
    (Muscle::TriTip, Muscle::Knuckle),
    (Muscle::Knuckle, Muscle::BottomRound),
    (Muscle::Knuckle, Muscle::HindShank),
    (Muscle::BottomRound, Muscle::EyeRound),
    (Muscle::BottomRound, Muscle::HindShank),
    (Muscle::EyeRound, Muscle::HindShank),
];

static INNER: &[(Muscle, Muscle)] = &[
    (Muscle::Chuck, Muscle::UnderBlade),
    (Muscle::Chuck, Muscle::Arm),
    (Muscle::Chuck, Muscle::BackTrim),
    (Muscle::Chuck, Muscle::RibMeat),
    (Muscle::UnderBlade, Muscle::Arm),
    (Muscle::RibMeat, Muscle::Skirt),
    (Muscle::Skirt, Muscle::Tenderloin),
    (Muscle::Skirt, Muscle::FlankSteak),
    (Muscle::Tenderloin, Muscle::PelvicTrim),
    (Muscle::Tenderloin, Muscle::TopRound),
    (Muscle::PelvicTrim, Muscle::TopRound),
];

static ABOVE: &[(Muscle, Muscle)] = &[
    (Muscle::Neck, Muscle::Cape),
    (Muscle::Neck, Muscle::MockTender),
    (Muscle::Cape, Muscle::MockTender),
    (Muscle::Cape, Muscle::FlatIron),
    (Muscle::Cape, Muscle::Backstrap),
    (Muscle::MockTender, Muscle::FlatIron),
    (Muscle::Backstrap, Muscle::Sirloin),
];
