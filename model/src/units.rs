//! Mass, length, area, volume, density, temperature and duration as types, so that no bare number crosses a
//! module.
//!
//! Grams, millimetres, degrees Celsius and hours inside; every constructor and reader names its unit.
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
    /// No length at all.
    pub const ZERO: Length = Length(0.0);

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
impl AddAssign for Length {
    fn add_assign(&mut self, other: Length) {
        self.0 += other.0;
    }
}
impl Div<f64> for Length {
    type Output = Length;
    fn div(self, divisor: f64) -> Length {
        Length(self.0 / divisor)
    }
}
impl Sum for Length {
    fn sum<I: Iterator<Item = Length>>(lengths: I) -> Length {
        lengths.fold(Length::ZERO, Add::add)
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
    /// From square inches.
    pub const fn square_inches(square_inches: f64) -> Self {
        Self(square_inches * MM_PER_INCH * MM_PER_INCH)
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

impl Mul<f64> for Area {
    type Output = Area;
    fn mul(self, factor: f64) -> Area {
        Area(self.0 * factor)
    }
}

/// A volume. Inside: cubic millimetres.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Volume(f64);

impl Volume {
    /// From litres.
    pub const fn litres(litres: f64) -> Self {
        Self(litres * 1e6)
    }
    /// From cubic feet of twelve inches each way.
    pub const fn cubic_feet(cubic_feet: f64) -> Self {
        Self(cubic_feet * CUBIC_MM_PER_CUBIC_FOOT)
    }
    /// In litres.
    pub const fn to_litres(self) -> f64 {
        self.0 / 1e6
    }
    /// In cubic feet.
    pub const fn to_cubic_feet(self) -> f64 {
        self.0 / CUBIC_MM_PER_CUBIC_FOOT
    }
}

const CUBIC_MM_PER_CUBIC_FOOT: f64 = 12.0 * 12.0 * 12.0 * MM_PER_INCH * MM_PER_INCH * MM_PER_INCH;

impl Sub for Volume {
    type Output = Volume;
    fn sub(self, other: Volume) -> Volume {
        Volume(self.0 - other.0)
    }
}
impl Mul<f64> for Volume {
    type Output = Volume;
    fn mul(self, factor: f64) -> Volume {
        Volume(self.0 * factor)
    }
}
impl Div<f64> for Volume {
    type Output = Volume;
    fn div(self, divisor: f64) -> Volume {
        Volume(self.0 / divisor)
    }
}
impl Div<Area> for Volume {
    type Output = Length;
    fn div(self, area: Area) -> Length {
        Length(self.0 / area.0)
    }
}
impl Div<Length> for Volume {
    type Output = Area;
    fn div(self, length: Length) -> Area {
        Area(self.0 / length.0)
    }
}

/// Mass per volume: of meat, or what a freezer holds or takes in a day. Inside: grams per cubic millimetre.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Density(f64);

impl Density {
    /// From pounds per cubic foot.
    pub const fn pounds_per_cubic_foot(pounds: f64) -> Self {
        Self(pounds * GRAMS_PER_POUND / CUBIC_MM_PER_CUBIC_FOOT)
    }
    /// From kilograms per cubic metre.
    pub const fn kilograms_per_cubic_metre(kilograms: f64) -> Self {
        Self(kilograms * 1e-6)
    }
    /// In pounds per cubic foot.
    pub const fn to_pounds_per_cubic_foot(self) -> f64 {
        self.0 * CUBIC_MM_PER_CUBIC_FOOT / GRAMS_PER_POUND
    }
    /// In kilograms per cubic metre.
    pub const fn to_kilograms_per_cubic_metre(self) -> f64 {
        self.0 * 1e6
    }
}

impl Mul<Volume> for Density {
    type Output = Mass;
    fn mul(self, volume: Volume) -> Mass {
        Mass(self.0 * volume.0)
    }
}
impl Div<Density> for Mass {
    type Output = Volume;
    fn div(self, density: Density) -> Volume {
        Volume(self.0 / density.0)
    }
}

/// A temperature. Inside: degrees Celsius. There is no `Temperature + Temperature`.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Temperature(f64);

impl Temperature {
    /// From degrees Celsius.
    pub const fn celsius(degrees: f64) -> Self {
        Self(degrees)
    }
    /// From degrees Fahrenheit.
    pub const fn fahrenheit(degrees: f64) -> Self {
        Self((degrees - 32.0) * 5.0 / 9.0)
    }
    /// In degrees Celsius.
    pub const fn to_celsius(self) -> f64 {
        self.0
    }
    /// In degrees Fahrenheit.
    pub const fn to_fahrenheit(self) -> f64 {
        self.0 * 9.0 / 5.0 + 32.0
    }
    /// How many kelvin this is above `other`.
    pub const fn kelvin_above(self, other: Temperature) -> f64 {
        self.0 - other.0
    }
}

/// A stretch of time. Inside: hours.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Duration(f64);

impl Duration {
    /// From seconds.
    pub const fn seconds(seconds: f64) -> Self {
        Self(seconds / 3600.0)
    }
    /// From hours.
    pub const fn hours(hours: f64) -> Self {
        Self(hours)
    }
    /// From days of 24 hours.
    pub const fn days(days: f64) -> Self {
        Self(days * 24.0)
    }
    /// In hours.
    pub const fn to_hours(self) -> f64 {
        self.0
    }
}

impl Mul<f64> for Duration {
    type Output = Duration;
    fn mul(self, factor: f64) -> Duration {
        Duration(self.0 * factor)
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

    /// A cubic foot is 28.316 846 592 litres, exactly, by the inch; 0 °F is -17.78 °C.
    #[test]
    fn cubic_feet_and_degrees_convert_both_ways() {
        assert!((Volume::cubic_feet(1.0).to_litres() - 28.316_846_592).abs() < 1e-9);
        assert!((Density::pounds_per_cubic_foot(35.0).to_pounds_per_cubic_foot() - 35.0).abs() < 1e-9);
        let held = Density::pounds_per_cubic_foot(35.0) * Volume::cubic_feet(2.0);
        assert!((held.to_pounds() - 70.0).abs() < 1e-9);
        assert!((Temperature::fahrenheit(0.0).to_celsius() + 17.777_777_777_777_8).abs() < 1e-9);
        assert!((Temperature::celsius(71.111).to_fahrenheit() - 160.0).abs() < 1e-3);
        assert_eq!(Duration::days(1.0), Duration::seconds(86_400.0));
    }

    #[test]
    fn a_section_times_length_times_density_is_the_mass_again() {
        let area = Area::mean_section(Mass::grams(1325.0), Length::cm(62.0));
        assert!((area.to_square_mm() * 620.0 * MUSCLE_GRAMS_PER_CUBIC_MM - 1325.0).abs() < 1e-9);
    }
}
