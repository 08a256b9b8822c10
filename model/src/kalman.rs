//! What an observation teaches about an ensemble: the Kalman step in its square-root form, one observation
//! after another, each scenario moved by its own surprise and nothing drawn at random (Whitaker and Hamill 2002,
//! Monthly Weather Review 130:1913, from memory).
//!
//! The draws get the mean and the covariance that the normal distribution with theirs has once the observations
//! are known. The middle case is moved as a mean is.

use crate::carcass::Scenarios;
use crate::ensemble::SCENARIOS;
use crate::tables::FAR;

/// Something that was observed.
pub(crate) struct Observation {
    /// What each scenario would have shown.
    pub(crate) expected: Scenarios<f64>,
    /// What was seen.
    pub(crate) seen: f64,
    /// The square of its standard error.
    pub(crate) variance: f64,
    /// The column of what was observed, where that is one thing and no sum. However far out it is, the column
    /// follows it; everything else follows it no farther than [`FAR`] standard deviations.
    pub(crate) own: Option<usize>,
}

const DRAWS: f64 = (SCENARIOS - 1) as f64;

/// The mean of the draws.
pub(crate) fn mean(column: &[f64]) -> f64 {
    column[1..].iter().sum::<f64>() / DRAWS
}

/// The sum of products of the draws of two columns, the second of them with mean 0, over the draws less one.
/// A column that is the same in every scenario has none, exactly.
fn covariance(column: &[f64], anomalies: &[f64]) -> f64 {
    let middle = column[0];
    let products = column[1..].iter().zip(&anomalies[1..]).map(|(value, off)| (value - middle) * off);
    products.sum::<f64>() / (DRAWS - 1.0)
}

/// The standard deviation of the draws.
pub(crate) fn deviation(column: &[f64]) -> f64 {
    covariance(column, &anomalies(column)).sqrt()
}

fn anomalies(column: &[f64]) -> Vec<f64> {
    let mean = mean(column);
    column.iter().map(|value| value - mean).collect()
}

/// Moves every column by what the observations teach about it.
pub(crate) fn learn(columns: &mut [Scenarios<f64>], mut observations: Vec<Observation>) {
    let mut left = observations.as_mut_slice();
    while let Some((now, later)) = left.split_first_mut() {
        let off = anomalies(&now.expected);
        let total = covariance(&now.expected, &off) + now.variance;
        // A draw keeps so much of its own surprise that the variance of all comes out right.
        let kept = 1.0 / (1.0 + (now.variance / total).sqrt());
        let believed = if now.own.is_some() { FAR.value * total.sqrt() } else { f64::INFINITY };
        let steps = |most: f64| {
            let within = |surprise: f64| surprise.max(-most).min(most);
            let surprise = within(now.seen - mean(&now.expected));
            let mut steps: Vec<f64> = off.iter().map(|off| surprise - kept * off).collect();
            steps[0] = within(now.seen - now.expected[0]);
            steps
        };
        let (own_steps, steps) = (steps(f64::INFINITY), steps(believed));
        let columns = columns.iter_mut().enumerate().map(|(place, column)| (Some(place), column));
        let expected = later.iter_mut().map(|later| (None, &mut later.expected));
        for (place, column) in columns.chain(expected) {
            let gain = covariance(column, &off) / total;
            let steps = if place.is_some() && place == now.own { &own_steps } else { &steps };
            for (value, step) in column.iter_mut().zip(steps) {
                *value += gain * step;
            }
        }
        left = later;
    }
}
