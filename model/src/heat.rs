//! How long a pack takes to freeze, by Plank's equation, with every input in sight.

use crate::tables::{HEAT, THICKEST_PACK};
use crate::units::{Density, Duration, Length, Temperature};

/// How well heat goes through a body. Inside: W/mK.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Conductivity(f64);

impl Conductivity {
    /// From watts a metre and kelvin.
    pub const fn watts_per_metre_kelvin(watts: f64) -> Self {
        Self(watts)
    }
}

/// How well heat goes from a surface into the air. Inside: W/m²K.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SurfaceTransfer(f64);

impl SurfaceTransfer {
    /// From watts a square metre and kelvin.
    pub const fn watts_per_square_metre_kelvin(watts: f64) -> Self {
        Self(watts)
    }
}

/// Heat for a mass, as to freeze it. Inside: J/kg.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct HeatPerMass(f64);

impl HeatPerMass {
    /// From joules a kilogram.
    pub const fn joules_per_kilogram(joules: f64) -> Self {
        Self(joules)
    }
    /// In joules a kilogram.
    pub const fn to_joules_per_kilogram(self) -> f64 {
        self.0
    }
}

/// Heat for a mass and a degree. Inside: J/kgK.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct HeatCapacity(f64);

impl HeatCapacity {
    /// From joules a kilogram and kelvin.
    pub const fn joules_per_kilogram_kelvin(joules: f64) -> Self {
        Self(joules)
    }
    /// In joules a kilogram and kelvin.
    pub const fn to_joules_per_kilogram_kelvin(self) -> f64 {
        self.0
    }
}

/// How many faces of a pack the cold air reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Faces {
    /// Both: one layer, with air above and below.
    Both,
    /// One: it lies on another pack, which is like being twice as thick.
    One,
}

/// What goes into Plank's equation, to be shown beside its answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cold {
    /// From the pack to the air: 8 to 15 W/m²K in home freezers.
    pub surface: SurfaceTransfer,
    /// Through frozen meat.
    pub conductivity: Conductivity,
    /// Air of the freezer.
    pub air: Temperature,
    /// Where freezing begins.
    pub freezing_point: Temperature,
    /// Where the pack starts.
    pub start: Temperature,
    /// Of the meat.
    pub density: Density,
}

impl Default for Cold {
    /// Still air at the slow end of what was measured in home freezers; a pack out of the refrigerator.
    fn default() -> Self {
        Self {
            surface: HEAT.surface.value,
            conductivity: HEAT.conductivity.value,
            air: HEAT.air.value,
            freezing_point: HEAT.freezing_point.value,
            start: HEAT.start.value,
            density: HEAT.density.value,
        }
    }
}

/// Plank's shape factors of a slab.
const P: f64 = 0.5;
const R: f64 = 0.125;

impl Cold {
    /// Heat to be taken out: to the freezing point, through it, and to halfway between it and the air, which is
    /// the mean of a pack whose surface is as cold as the air.
    pub fn heat(&self) -> HeatPerMass {
        let above = self.start.kelvin_above(self.freezing_point);
        let below = self.freezing_point.kelvin_above(self.air) / 2.0;
        let latent = HEAT.latent_of_water.value.0 * HEAT.water.value;
        HeatPerMass(latent + HEAT.above.value.0 * above + HEAT.below.value.0 * below)
    }

    /// How long a slab takes to freeze (Plank): t = ρ L / (Tf - Ta) (P D / h + R D² / k). A lower bound: the
    /// freezer is warmed by what is put in, and its compressor has a limit.
    pub fn freezing_time(&self, thickness: Length, faces: Faces) -> Duration {
        let metres = match faces {
            Faces::Both => thickness.to_mm() / 1000.0,
            Faces::One => thickness.to_mm() / 500.0,
        };
        let drive = self.freezing_point.kelvin_above(self.air);
        let heat = self.density.to_kilograms_per_cubic_metre() * self.heat().0;
        let ways = P * metres / self.surface.0 + R * metres * metres / self.conductivity.0;
        Duration::seconds(heat / drive * ways)
    }
}

/// Whether a pack is thicker than freezes in a day.
pub fn is_too_thick(thickness: Length) -> bool {
    thickness > THICKEST_PACK.value
}
