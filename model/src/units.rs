//! Mass, length and area as types, so that no bare number crosses a module.
//!
//! Grams, millimetres and square millimetres inside; every constructor and reader names its unit.
//! Only operations that mean something exist: there is no `Mass * Mass`.

use std::iter::Sum;
use std::ops::{Add, AddAssign, Div, Mul, Sub};

/// Grams in one pound: exact by definition (international avoirdupois pound, 1959).
pub const GRAMS_PER_POUND: f64 = 453.592_37;
/// Millimetres in one inch: exact by definition (international inch, 1959).
pub const MM_PER_INCH: f64 = 25.4;

/// A mass. Inside: grams.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Mass(f64);

impl Mass {
    /// No mass at all.
    pub const ZERO: Mass = Mass(0.0);

    /// From grams.
    pub const fn grams(grams: f64) -> Self {
        Self(grams)
    }
    /// From kilograms.
    pub const fn kilograms(kilograms: f64) -> Self {
        Self(kilograms * 1000.0)
    }
    /// From avoirdupois pounds.
    pub const fn pounds(pounds: f64) -> Self {
        Self(pounds * GRAMS_PER_POUND)
    }
    /// From avoirdupois ounces, sixteen to the pound.
    pub const fn ounces(ounces: f64) -> Self {
        Self(ounces * GRAMS_PER_POUND / 16.0)
    }
    /// In grams.
    pub const fn to_grams(self) -> f64 {
        self.0
    }
    /// In kilograms.
    pub const fn to_kilograms(self) -> f64 {
        self.0 / 1000.0
    }
    /// In avoirdupois pounds.
    pub const fn to_pounds(self) -> f64 {
        self.0 / GRAMS_PER_POUND
    }
    /// In avoirdupois ounces.
    pub const fn to_ounces(self) -> f64 {
        self.0 / GRAMS_PER_POUND * 16.0
    }
}

impl Add for Mass {
    type Output = Mass;
    fn add(self, other: Mass) -> Mass {
        Mass(self.0 + other.0)
    }
}
impl AddAssign for Mass {
    fn add_assign(&mut self, other: Mass) {
        self.0 += other.0;
    }
}
impl Sub for Mass {
    type Output = Mass;
    fn sub(self, other: Mass) -> Mass {
        Mass(self.0 - other.0)
    }
}
impl Mul<f64> for Mass {
    type Output = Mass;
    fn mul(self, factor: f64) -> Mass {
        Mass(self.0 * factor)
    }
}
impl Div<f64> for Mass {
    type Output = Mass;
    fn div(self, divisor: f64) -> Mass {
        Mass(self.0 / divisor)
    }
}
impl Div for Mass {
    type Output = f64;
    fn div(self, other: Mass) -> f64 {
        self.0 / other.0
    }
}
impl Sum for Mass {
    fn sum<I: Iterator<Item = Mass>>(masses: I) -> Mass {
        masses.fold(Mass::ZERO, Add::add)
    }
}

/// A length. Inside: millimetres.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Length(f64);

impl Length {
    /// From millimetres.
    pub const fn mm(mm: f64) -> Self {
        Self(mm)
    }
    /// From centimetres.
    pub const fn cm(cm: f64) -> Self {
        Self(cm * 10.0)
    }
    /// From inches.
    pub const fn inches(inches: f64) -> Self {
        Self(inches * MM_PER_INCH)
    }
    /// In millimetres.
    pub const fn to_mm(self) -> f64 {
        self.0
    }
    /// In centimetres.
    pub const fn to_cm(self) -> f64 {
        self.0 / 10.0
    }
    /// In inches.
    pub const fn to_inches(self) -> f64 {
        self.0 / MM_PER_INCH
    }
}

impl Add for Length {
    type Output = Length;
    fn add(self, other: Length) -> Length {
        Length(self.0 + other.0)
    }
}
impl Sub for Length {
    type Output = Length;
    fn sub(self, other: Length) -> Length {
        Length(self.0 - other.0)
    }
}
impl Mul<f64> for Length {
    type Output = Length;
    fn mul(self, factor: f64) -> Length {
        Length(self.0 * factor)
    }
}
impl Div for Length {
    type Output = f64;
    fn div(self, other: Length) -> f64 {
        self.0 / other.0
    }
}
impl Mul for Length {
    type Output = Area;
    fn mul(self, other: Length) -> Area {
        Area(self.0 * other.0)
    }
}

/// An area, such as the face of a steak. Inside: square millimetres.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Area(f64);

impl Area {
    /// From square centimetres.
    pub const fn square_cm(square_cm: f64) -> Self {
        Self(square_cm * 100.0)
    }
    /// In square centimetres.
    pub const fn to_square_cm(self) -> f64 {
        self.0 / 100.0
    }
    /// In square millimetres.
    pub const fn to_square_mm(self) -> f64 {
        self.0
    }
    /// The area of a body of this `mass` and `length` at muscle density, averaged along the length.
    pub fn mean_section(mass: Mass, length: Length) -> Self {
        Self(mass.to_grams() / (MUSCLE_GRAMS_PER_CUBIC_MM * length.to_mm()))
    }
}

/// Muscle density, 1.06 g/cm³ (Mendez and Keys 1960; see [`crate::sources::Source::MuscleDensity`]), per mm³.
pub const MUSCLE_GRAMS_PER_CUBIC_MM: f64 = 1.06e-3;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pound_is_sixteen_ounces_and_453_59237_grams() {
        assert_eq!(Mass::pounds(1.0).to_grams(), 453.592_37);
        assert!((Mass::ounces(16.0) - Mass::pounds(1.0)).to_grams().abs() < 1e-12);
        assert!((Mass::kilograms(1.0).to_pounds() - 2.204_622_621_848_776).abs() < 1e-12);
    }

    #[test]
    fn a_section_times_length_times_density_is_the_mass_again() {
        let area = Area::mean_section(Mass::grams(1325.0), Length::cm(62.0));
        assert!((area.to_square_mm() * 620.0 * MUSCLE_GRAMS_PER_CUBIC_MM - 1325.0).abs() < 1e-9);
    }
}
