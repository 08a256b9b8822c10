//! The quantile of the standard normal distribution, with the same bits on every device.

#![expect(clippy::excessive_precision, reason = "the coefficients stand as they were published")]

/// The standard normal quantile: Wichura 1988, algorithm AS 241 (PPND16), relative error about 1e-16.
pub(crate) fn quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        return q * ratio(&CENTRE_NUMERATOR, &CENTRE_DENOMINATOR, r);
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = (-libm::log(tail)).sqrt() - 1.6;
    let value = ratio(&TAIL_NUMERATOR, &TAIL_DENOMINATOR, r);
    if q < 0.0 { -value } else { value }
}

fn ratio(numerator: &[f64; 8], denominator: &[f64; 8], r: f64) -> f64 {
    let horner = |c: &[f64; 8]| c.iter().rev().fold(0.0, |sum, term| sum * r + term);
    horner(numerator) / horner(denominator)
}

// AS 241 without its third region: the strata end at 0.0005, where r is 2.76, well inside the second.
const CENTRE_NUMERATOR: [f64; 8] = [
    3.387_132_872_796_366_608,
    133.141_667_891_784_377_45,
    1_971.590_950_306_551_442_7,
    13_731.693_765_509_461_125,
    45_921.953_931_549_871_457,
    67_265.770_927_008_700_853,
    33_430.575_583_588_128_105,
    2_509.080_928_730_122_672_7,
];
const CENTRE_DENOMINATOR: [f64; 8] = [
    1.0,
    42.313_330_701_600_911_252,
    687.187_007_492_057_908_3,
    5_394.196_021_424_751_107_7,
    21_213.794_301_586_595_867,
    39_307.895_800_092_710_61,
    28_729.085_735_721_942_674,
    5_226.495_278_852_854_561,
];
const TAIL_NUMERATOR: [f64; 8] = [
    1.423_437_110_749_683_577_34,
    4.630_337_846_156_545_295_9,
    5.769_497_221_460_691_405_5,
    3.647_848_324_763_204_605_04,
    1.270_458_252_452_368_382_58,
    0.241_780_725_177_450_611_77,
    0.022_723_844_989_269_184_583_3,
    7.745_450_142_783_414_076_4e-4,
];
const TAIL_DENOMINATOR: [f64; 8] = [
    1.0,
    2.053_191_626_637_758_821_87,
    1.676_384_830_183_803_849_4,
    0.689_767_334_985_100_004_55,
    0.148_103_976_427_480_074_59,
    0.015_198_666_563_616_457_19,
    5.475_938_084_995_344_946e-4,
    1.050_750_071_644_416_843_24e-9,
];

#[cfg(test)]
mod tests {
    use super::quantile;

    /// Quantiles printed in any table of the normal distribution; more digits from memory.
    #[test]
    fn the_quantile_agrees_with_printed_tables() {
        for (p, z) in [
            (0.5, 0.0),
            (0.9, 1.281_551_565_544_600_4),
            (0.975, 1.959_963_984_540_054),
            (0.0005, -3.290_526_731_491_894),
        ] {
            assert!((quantile(p) - z).abs() < 1e-12, "{p}: {}", quantile(p));
        }
    }
}
