//! Lifting the outer muscles off the drawing, in the order in which they come off the animal, to show what
//! lies beneath. The order is common practice, no source.

use hindsaddle_model::anatomy::Muscle;

/// How many layers come off.
pub const LAYERS: u8 = 4;

/// With which layer a muscle of the outer side comes off: 1 the thin sheets, 2 the shoulder, 3 the haunch, 4
/// neck, back and belly.
pub fn layer(muscle: Muscle) -> u8 {
    match muscle {
        Muscle::Cape | Muscle::NeckStraps | Muscle::FlankSheets => 1,
        Muscle::FlatIron
        | Muscle::MockTender
        | Muscle::Clod
        | Muscle::Arm
        | Muscle::ForeShank
        | Muscle::UnderBlade
        | Muscle::Chuck => 2,
        Muscle::TopRound
        | Muscle::BottomRound
        | Muscle::EyeRound
        | Muscle::Knuckle
        | Muscle::Sirloin
        | Muscle::TriTip
        | Muscle::HindShank
        | Muscle::PelvicTrim => 3,
        Muscle::Backstrap
        | Muscle::Tenderloin
        | Muscle::BackTrim
        | Muscle::Neck
        | Muscle::Brisket
        | Muscle::RibMeat
        | Muscle::FlankSteak
        | Muscle::Skirt => 4,
    }
}
