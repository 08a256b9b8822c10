//! The 26 muscle groups: shares, sizes, rules. One row a group.
//!
//! No published table of single muscle weights of a deer was found. Every share is an estimate: published
//! joint and cut totals of deer, split inside each joint as in cattle, sheep and zebra, and fitted by hand.
//! The page says so. Sizes are for the reference animal, a white-tailed deer of 45 kg hanging weight.

use crate::anatomy::{Layer, Muscle, Region, View};
use crate::product::Product;
use crate::rules::{Reason, Verdict};
use crate::sources::{Grade, Source};
use crate::units::{Length, Mass};

/// From this tenderness on, of five, meat is worth cooking tender, and slices of it are choice. Judgement.
pub const TENDER: u8 = 4;

/// Hanging weight of the animal the sizes in this table belong to.
pub const REFERENCE_HANGING: Mass = Mass::kilograms(45.0);

/// Length, width and thickness at the reference animal.
#[derive(Clone, Copy, Debug)]
pub struct Size {
    /// Along the muscle, the way the knife divides it.
    pub length: Length,
    /// Across.
    pub width: Length,
    /// The thin way.
    pub thickness: Length,
}

/// One muscle group.
#[derive(Debug)]
pub struct MuscleRow {
    /// Which group.
    pub muscle: Muscle,
    /// Where on the carcass.
    pub region: Region,
    /// How deep.
    pub layer: Layer,
    /// Where on the plate.
    pub views: &'static [View],
    /// Percent of one side's separable lean; the column adds to 100.
    pub share: f64,
    /// Standard deviation of `share` between animals and cutters, in points.
    pub share_sd: f64,
    /// Growth exponent inside a species: share goes as (muscle mass / adult)^(growth - 1). Spine, belly and
    /// distal fore limb are measured ([`Source::RedDeerGrowth`]); 1 elsewhere, and between by judgement.
    pub growth: f64,
    /// 1 tough to 5 tender.
    pub tenderness: u8,
    /// 1 clean to 5 heavy.
    pub silverskin: u8,
    /// Direction of the fibres on the standing animal, head left: 0 toward the tail, counter-clockwise.
    pub grain_degrees: f64,
    /// None where the group is scraps without a shape.
    pub size: Option<Size>,
    /// What it becomes in the starting plan.
    pub usual: Product,
    /// What is said of each product, in the order of [`Product::ALL`].
    pub rules: [Verdict; 5],
    /// How good the share is.
    pub grade: Grade,
    /// Where the share comes from.
    pub source: Source,
}

/// The row of a group.
pub fn muscle(muscle: Muscle) -> &'static MuscleRow {
    &MUSCLES[muscle.index()]
}

const fn size(length_cm: f64, width_cm: f64, thickness_cm: f64) -> Size {
    Size { length: Length::cm(length_cm), width: Length::cm(width_cm), thickness: Length::cm(thickness_cm) }
}

const OK: Verdict = Verdict::Allowed(None);
const fn care(reason: Reason) -> Verdict {
    Verdict::Allowed(Some(reason))
}
const fn poor(reason: Reason) -> Verdict {
    Verdict::Discouraged(reason)
}
const fn no(reason: Reason) -> Verdict {
    Verdict::Impossible(reason)
}

/// Every group, in the order of [`Muscle::ALL`].
pub static MUSCLES: [MuscleRow; Muscle::COUNT] = [
    MuscleRow {
        muscle: Muscle::TopRound,
        region: Region::HindLeg,
        layer: Layer::Inner,
        views: &[View::Inner],
        share: 11.0,
        share_sd: 0.9,
        growth: 1.0,
        tenderness: 3,
        silverskin: 2,
        grain_degrees: 55.0,
        size: Some(size(26.0, 14.0, 5.5)),
        usual: Product::Steak,
        rules: [OK, OK, no(Reason::NoLoinShape), OK, OK],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::BottomRound,
        region: Region::HindLeg,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 8.0,
        share_sd: 0.7,
        growth: 1.0,
        tenderness: 2,
        silverskin: 4,
        grain_degrees: 60.0,
        size: Some(size(30.0, 12.0, 4.0)),
        usual: Product::Roast,
        rules: [OK, poor(Reason::CoarseAndTough), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::EyeRound,
        region: Region::HindLeg,
        layer: Layer::Outer,
        views: &[View::Outer, View::Above],
        share: 2.7,
        share_sd: 0.3,
        growth: 1.0,
        tenderness: 3,
        silverskin: 2,
        grain_degrees: 75.0,
        size: Some(size(24.0, 5.3, 4.6)),
        usual: Product::Roast,
        rules: [OK, care(Reason::ToughEnds), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Knuckle,
        region: Region::HindLeg,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 7.6,
        share_sd: 0.6,
        growth: 1.0,
        tenderness: 4,
        silverskin: 3,
        grain_degrees: 60.0,
        size: Some(size(22.0, 9.2, 9.2)),
        usual: Product::Roast,
        rules: [OK, care(Reason::SeamsInside), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Sirloin,
        region: Region::HindLeg,
        layer: Layer::Outer,
        views: &[View::Outer, View::Above],
        share: 4.9,
        share_sd: 0.5,
        growth: 1.0,
        tenderness: 4,
        silverskin: 2,
        grain_degrees: 155.0,
        size: Some(size(20.0, 11.0, 4.2)),
        usual: Product::Steak,
        rules: [OK, OK, no(Reason::NoLoinShape), poor(Reason::BestPiece), poor(Reason::BestPiece)],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::TriTip,
        region: Region::HindLeg,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 1.6,
        share_sd: 0.3,
        growth: 1.0,
        tenderness: 4,
        silverskin: 2,
        grain_degrees: 92.0,
        size: Some(size(20.0, 10.0, 1.7)),
        usual: Product::Steak,
        rules: [OK, OK, no(Reason::NoLoinShape), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::HindShank,
        region: Region::HindLeg,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 5.2,
        share_sd: 0.6,
        growth: 0.9,
        tenderness: 1,
        silverskin: 5,
        grain_degrees: 125.0,
        size: Some(size(26.0, 7.2, 5.2)),
        usual: Product::Stew,
        rules: [OK, poor(Reason::TendonsStayHard), no(Reason::NoLoinShape), OK, care(Reason::TendonsClog)],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::PelvicTrim,
        region: Region::HindLeg,
        layer: Layer::Deep,
        views: &[View::Inner],
        share: 1.0,
        share_sd: 0.3,
        growth: 1.0,
        tenderness: 2,
        silverskin: 3,
        grain_degrees: 0.0,
        size: None,
        usual: Product::Grind,
        rules: [no(Reason::Scraps), no(Reason::Scraps), no(Reason::Scraps), OK, OK],
        grade: Grade::D,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Backstrap,
        region: Region::Back,
        layer: Layer::Outer,
        views: &[View::Outer, View::Above],
        share: 9.8,
        share_sd: 0.9,
        growth: 1.08,
        tenderness: 5,
        silverskin: 4,
        grain_degrees: 10.0,
        size: Some(size(62.0, 7.1, 4.2)),
        usual: Product::Steak,
        rules: [OK, OK, OK, poor(Reason::BestPiece), poor(Reason::BestPiece)],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Tenderloin,
        region: Region::Back,
        layer: Layer::Inner,
        views: &[View::Inner],
        share: 2.0,
        share_sd: 0.25,
        growth: 1.08,
        tenderness: 5,
        silverskin: 1,
        grain_degrees: 170.0,
        size: Some(size(32.0, 3.6, 2.8)),
        usual: Product::Steak,
        rules: [OK, OK, OK, poor(Reason::BestPiece), poor(Reason::BestPiece)],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::BackTrim,
        region: Region::Back,
        layer: Layer::Deep,
        views: &[View::Inner],
        share: 2.2,
        share_sd: 0.5,
        growth: 1.08,
        tenderness: 3,
        silverskin: 4,
        grain_degrees: 30.0,
        size: None,
        usual: Product::Grind,
        rules: [no(Reason::Scraps), no(Reason::Scraps), no(Reason::Scraps), OK, OK],
        grade: Grade::D,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::FlatIron,
        region: Region::Shoulder,
        layer: Layer::Outer,
        views: &[View::Outer, View::Above],
        share: 2.2,
        share_sd: 0.25,
        growth: 1.0,
        tenderness: 4,
        silverskin: 5,
        grain_degrees: 55.0,
        size: Some(size(20.0, 8.0, 2.2)),
        usual: Product::Steak,
        rules: [OK, care(Reason::SheetInside), no(Reason::NoLoinShape), OK, care(Reason::SheetInside)],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::MockTender,
        region: Region::Shoulder,
        layer: Layer::Outer,
        views: &[View::Outer, View::Above],
        share: 1.8,
        share_sd: 0.2,
        growth: 1.0,
        tenderness: 2,
        silverskin: 4,
        grain_degrees: 55.0,
        size: Some(size(21.0, 5.2, 3.4)),
        usual: Product::Stew,
        rules: [OK, poor(Reason::LooksTender), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Clod,
        region: Region::Shoulder,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 4.7,
        share_sd: 0.4,
        growth: 1.0,
        tenderness: 3,
        silverskin: 3,
        grain_degrees: 105.0,
        size: Some(size(20.0, 13.0, 4.2)),
        usual: Product::Roast,
        rules: [OK, care(Reason::InnerTendons), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::UnderBlade,
        region: Region::Shoulder,
        layer: Layer::Inner,
        views: &[View::Inner],
        share: 1.6,
        share_sd: 0.2,
        growth: 1.0,
        tenderness: 3,
        silverskin: 3,
        grain_degrees: 55.0,
        size: Some(size(18.0, 9.0, 1.6)),
        usual: Product::Stew,
        rules: [poor(Reason::Thin), OK, no(Reason::NoLoinShape), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Arm,
        region: Region::Shoulder,
        layer: Layer::Deep,
        views: &[View::Outer, View::Inner],
        share: 1.6,
        share_sd: 0.2,
        growth: 0.95,
        tenderness: 2,
        silverskin: 4,
        grain_degrees: 135.0,
        size: Some(size(20.0, 5.0, 2.9)),
        usual: Product::Stew,
        rules: [
            poor(Reason::SmallWithTendons),
            poor(Reason::SmallWithTendons),
            no(Reason::NoLoinShape),
            OK,
            OK,
        ],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::ForeShank,
        region: Region::Shoulder,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 2.3,
        share_sd: 0.3,
        growth: 0.84,
        tenderness: 1,
        silverskin: 5,
        grain_degrees: 92.0,
        size: Some(size(22.0, 5.4, 4.2)),
        usual: Product::Stew,
        rules: [OK, poor(Reason::TendonsStayHard), no(Reason::NoLoinShape), OK, care(Reason::TendonsClog)],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Chuck,
        region: Region::Neck,
        layer: Layer::Deep,
        views: &[View::Inner],
        share: 4.6,
        share_sd: 0.6,
        growth: 1.0,
        tenderness: 3,
        silverskin: 3,
        grain_degrees: 115.0,
        size: Some(size(26.0, 18.0, 1.7)),
        usual: Product::Stew,
        rules: [OK, OK, no(Reason::NoLoinShape), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Cape,
        region: Region::Neck,
        layer: Layer::Outer,
        views: &[View::Outer, View::Above],
        share: 3.2,
        share_sd: 0.5,
        growth: 1.0,
        tenderness: 2,
        silverskin: 3,
        grain_degrees: 25.0,
        size: Some(size(34.0, 22.0, 0.56)),
        usual: Product::Grind,
        rules: [no(Reason::ThinSheet), no(Reason::ThinSheet), no(Reason::ThinSheet), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::NeckStraps,
        region: Region::Neck,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 1.8,
        share_sd: 0.35,
        growth: 1.05,
        tenderness: 2,
        silverskin: 2,
        grain_degrees: 125.0,
        size: Some(size(40.0, 5.0, 1.6)),
        usual: Product::Stew,
        rules: [poor(Reason::ThinRopes), poor(Reason::ThinRopes), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Neck,
        region: Region::Neck,
        layer: Layer::Outer,
        views: &[View::Outer, View::Above],
        share: 6.2,
        share_sd: 1.2,
        growth: 1.05,
        tenderness: 2,
        silverskin: 4,
        grain_degrees: 130.0,
        size: Some(size(36.0, 13.0, 2.7)),
        usual: Product::Roast,
        rules: [OK, poor(Reason::Layers), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::B,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Brisket,
        region: Region::Belly,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 3.9,
        share_sd: 0.5,
        growth: 1.0,
        tenderness: 1,
        silverskin: 3,
        grain_degrees: 162.0,
        size: Some(size(32.0, 9.0, 2.3)),
        usual: Product::Grind,
        rules: [OK, poor(Reason::ToughHardFat), no(Reason::NoLoinShape), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::RibMeat,
        region: Region::Belly,
        layer: Layer::Deep,
        views: &[View::Outer, View::Inner],
        share: 3.2,
        share_sd: 0.7,
        growth: 1.0,
        tenderness: 1,
        silverskin: 4,
        grain_degrees: 135.0,
        size: Some(size(40.0, 28.0, 0.36)),
        usual: Product::Grind,
        rules: [no(Reason::ThinSheet), no(Reason::ThinSheet), no(Reason::ThinSheet), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::FlankSteak,
        region: Region::Belly,
        layer: Layer::Deep,
        views: &[View::Outer, View::Inner],
        share: 1.8,
        share_sd: 0.3,
        growth: 1.08,
        tenderness: 2,
        silverskin: 3,
        grain_degrees: 13.0,
        size: Some(size(44.0, 8.0, 0.82)),
        usual: Product::Grind,
        rules: [poor(Reason::Thin), OK, no(Reason::NoLoinShape), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::FlankSheets,
        region: Region::Belly,
        layer: Layer::Outer,
        views: &[View::Outer],
        share: 4.4,
        share_sd: 0.9,
        growth: 1.08,
        tenderness: 2,
        silverskin: 4,
        grain_degrees: 145.0,
        size: Some(size(44.0, 30.0, 0.44)),
        usual: Product::Grind,
        rules: [no(Reason::ThinSheet), no(Reason::ThinSheet), no(Reason::ThinSheet), OK, OK],
        grade: Grade::C,
        source: Source::MuscleCatalogue,
    },
    MuscleRow {
        muscle: Muscle::Skirt,
        region: Region::Belly,
        layer: Layer::Inner,
        views: &[View::Inner],
        share: 0.7,
        share_sd: 0.35,
        growth: 1.0,
        tenderness: 3,
        silverskin: 4,
        grain_degrees: 60.0,
        size: Some(size(35.0, 4.0, 0.8)),
        usual: Product::Grind,
        rules: [poor(Reason::Thin), OK, no(Reason::NoLoinShape), OK, OK],
        grade: Grade::D,
        source: Source::MuscleCatalogue,
    },
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_stand_in_the_order_of_the_enum() {
        for (row, expected) in MUSCLES.iter().zip(Muscle::ALL) {
            assert_eq!(row.muscle, expected);
        }
    }

    #[test]
    fn the_shares_add_to_a_hundred() {
        let total: f64 = MUSCLES.iter().map(|row| row.share).sum();
        assert!((total - 100.0).abs() < 1e-9, "{total}");
    }

    #[test]
    fn the_usual_product_is_never_advised_against() {
        for row in &MUSCLES {
            let verdict = row.rules[row.usual as usize];
            assert!(matches!(verdict, Verdict::Allowed(_)), "{:?}", row.muscle);
        }
    }

    #[test]
    fn scraps_have_no_shape_and_shapes_have_a_volume() {
        for row in &MUSCLES {
            match row.size {
                None => assert_eq!(row.usual, Product::Grind),
                Some(size) => assert!(size.length >= size.width && size.width >= size.thickness),
            }
        }
    }
}
