//! General-purpose libraries as judges of what the model computes for itself.

use hindsaddle_model::ensemble::{Draw, SCENARIOS};
use statrs::distribution::{ContinuousCDF, Normal};

/// `statrs` inverts the normal distribution by another method.
#[test]
fn the_strata_are_normal_quantiles() {
    let normal = Normal::new(0.0, 1.0).unwrap();
    let mut drawn = Draw::Lean.values()[1..].to_vec();
    drawn.sort_by(f64::total_cmp);
    let draws = SCENARIOS - 1;
    for (index, value) in drawn.iter().enumerate() {
        let exact = normal.inverse_cdf((index as f64 + 0.5) / draws as f64).max(-2.5).min(2.5);
        assert!((value - exact).abs() < 1e-9, "stratum {index}: {value} against {exact}");
    }
}
