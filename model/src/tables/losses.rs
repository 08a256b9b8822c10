//! What is lost between careful boneless meat and the table: the shot, hurry, hanging.

use super::yields::{Figure, figure};
use crate::animal::Legs;
use crate::estimate::Estimate;
use crate::plan::{Care, Shot};
use crate::sources::{Grade, Source};

/// Share of careful lean lost around the wound. The usual row lies between one hunter's measured 4 to 7 %
/// and the 12 to 17 % of hunters' animals in North Dakota; the other two rows are judgement.
pub fn shot_loss(shot: Shot) -> &'static Figure {
    match shot {
        Shot::Clean => &CLEAN_SHOT,
        Shot::Usual => &USUAL_SHOT,
        Shot::Bad => &BAD_SHOT,
    }
}

static CLEAN_SHOT: Figure = figure(0.0, 0.02, 0.05, Grade::D, Source::Judgement);
static USUAL_SHOT: Figure = figure(0.02, 0.08, 0.25, Grade::B, Source::NorthDakotaLean);
static BAD_SHOT: Figure = figure(0.10, 0.18, 0.35, Grade::D, Source::Judgement);

/// Share of what the shot left that stays on the bones or goes out with the scraps.
pub fn left_behind(care: Care) -> &'static Figure {
    match care {
        Care::Fussy => &FUSSY,
        Care::Usual => &USUAL_CARE,
        Care::Hurried => &HURRIED,
    }
}

static FUSSY: Figure = figure(0.0, 0.02, 0.06, Grade::D, Source::Judgement);
static USUAL_CARE: Figure = figure(0.0, 0.05, 0.15, Grade::D, Source::Judgement);
static HURRIED: Figure = figure(0.05, 0.10, 0.20, Grade::D, Source::Judgement);

/// Share of the rest lost to drying and dry crust after hanging skinned for some days: 10 % in 14 days, in
/// proportion (judgement and memory: 6 to 10 % shrink and 2 to 4 % crust in 14 days, 7 days about half).
pub fn dried(days: u8) -> Figure {
    let likely = 0.10 * f64::from(days) / 14.0;
    Figure {
        spread: Estimate::around(likely, likely * 0.7, likely * 1.4),
        grade: Grade::D,
        source: Source::Judgement,
    }
}

/// Field-dressed weight with the lower legs on, over the same with `legs`. Legs are about 4 % (judgement; no
/// figure was found).
pub fn legs_on_per_legs_off(legs: Legs) -> f64 {
    match legs {
        Legs::On => 1.0,
        Legs::Off => 1.0 / 0.96,
    }
}
