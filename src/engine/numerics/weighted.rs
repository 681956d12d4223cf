//! A mean of measurements of unequal precision, with what was believed before as one of them.

use super::integer::float_from_usize;
use super::robust::median;

/// A mean in which each value counts by its precision.
#[derive(Clone, Debug, PartialEq)]
pub struct WeightedMean {
    /// The mean of the values that were kept and of what was believed before.
    pub mean: f64,
    /// Its standard deviation.
    pub deviation: f64,
    /// The standard deviation of what was believed before, as it counted.
    pub before_deviation: f64,
    /// How many times farther the kept values scatter than they should; at least 1.
    pub scatter: f64,
    /// Whether each value was kept, in the order given; the others are outliers.
    pub kept: Vec<bool>,
}

/// A value and its standard deviation.
pub type Weighed = (f64, f64);

/// Values farther from the centre than so many standard deviations are outliers.
const OUTLIER: f64 = 3.0;
/// The standard deviation of a normal distribution, as a multiple of its median absolute deviation.
const FROM_MEDIAN: f64 = 1.4826;
/// From so many values on they alone say where the centre lies.
const ENOUGH: usize = 3;
/// What is believed of the scatter before anything is measured, as so many values.
const BELIEF: f64 = 4.0;

/// The mean of those values that are no outliers, and of `before`, each by the inverse of its
/// variance: `x = Σ wᵢ·xᵢ / Σ wᵢ` with `wᵢ = 1/σᵢ²`, whose standard deviation is `1/√Σ wᵢ`.
///
/// The centre that outliers are far from is the median of the values, `before` among them where
/// they are fewer than three; a single value is far from `before`. A belief that three values or more
/// contradict counts as if they were three of its deviations away. Values that scatter farther than
/// their own deviations widen that of the mean (Birge's ratio). `None` without values, or where a
/// deviation is not above zero.
///
/// Source: Particle Data Group, *Review of Particle Physics*, 5.2.2 (weighted mean and scale
/// factor); Hampel 1974, *Journal of the American Statistical Association* 69:383–393 (outliers).
#[must_use]
pub fn weighted_mean(values: &[Weighed], before: Weighed) -> Option<WeightedMean> {
    let all = || values.iter().chain([&before]);
    if values.is_empty() || !all().all(|(value, deviation)| value.is_finite() && *deviation > 0.0) {
        return None;
    }
    let kept = kept(values, before)?;
    let before = contradicted(values, before)?;
    let good = || {
        let pairs = values.iter().zip(&kept);
        pairs.filter(|(_, kept)| **kept).map(|(value, _)| value)
    };
    let weight = |(_, deviation): &Weighed| 1.0 / (deviation * deviation);
    let weights: f64 = good().chain([&before]).map(weight).sum();
    let sum: f64 = good().chain([&before]).map(|one| weight(one) * one.0).sum();
    let mean = sum / weights;
    let square = |one: &Weighed| weight(one) * (one.0 - mean) * (one.0 - mean);
    let squares: f64 = good().map(square).sum();
    let count = float_from_usize(good().count());
    let scatter = libm::sqrt((BELIEF + squares) / (BELIEF + count)).max(1.0);
    Some(WeightedMean {
        mean,
        deviation: scatter / libm::sqrt(weights),
        before_deviation: before.1,
        scatter,
        kept,
    })
}

/// What was believed before, less firmly where the values lie far from it.
fn contradicted(values: &[Weighed], (value, deviation): Weighed) -> Option<Weighed> {
    if values.len() < ENOUGH {
        return Some((value, deviation));
    }
    let measured: Vec<f64> = values.iter().map(|(value, _)| *value).collect();
    let off = (median(&measured)? - value).abs();
    Some((value, deviation.max(off / OUTLIER)))
}

/// Which values are no outliers.
fn kept(values: &[Weighed], before: Weighed) -> Option<Vec<bool>> {
    let few = values.len() < ENOUGH;
    let mut middle: Vec<f64> = values.iter().map(|(value, _)| *value).collect();
    if few {
        middle.push(before.0);
    }
    let alone = values.len() == 1;
    let centre = if alone { before.0 } else { median(&middle)? };
    let far: Vec<f64> = middle.iter().map(|value| (value - centre).abs()).collect();
    let scatter = if alone { 0.0 } else { median(&far)? };
    let doubt = if few { before.1 } else { 0.0 };
    let is_kept = |(value, own): &Weighed| {
        let deviation = libm::sqrt(own * own + doubt * doubt);
        let limit = OUTLIER * (FROM_MEDIAN * scatter).max(deviation);
        (value - centre).abs() <= limit
    };
    Some(values.iter().map(is_kept).collect())
}
