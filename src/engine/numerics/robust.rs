//! A mean that single outliers do not move.

use super::integer::float_from_usize;

/// The mean of several values without their outliers.
#[derive(Clone, Debug, PartialEq)]
pub struct RobustMean {
    /// The mean of the values that were kept.
    pub mean: f64,
    /// Whether each value was kept, in the order given; the others are outliers.
    pub kept: Vec<bool>,
    /// The sum of the squared deviations of the kept values from the mean.
    pub squares: f64,
}

/// Values farther from the median than so many standard deviations are outliers.
const OUTLIER: f64 = 3.0;
/// The standard deviation of a normal distribution, as a multiple of its median absolute deviation.
const FROM_MEDIAN: f64 = 1.4826;

/// The mean of those values that lie within three standard deviations of the median.
///
/// The standard deviation is estimated as 1.4826 times the median absolute deviation and never
/// taken below `least_deviation`. `None` without values, or where no value is a number.
///
/// Source: Hampel 1974, *Journal of the American Statistical Association* 69:383–393 (the median
/// absolute deviation as an estimate that a single outlier cannot move).
#[must_use]
pub fn robust_mean(values: &[f64], least_deviation: f64) -> Option<RobustMean> {
    let centre = median(values)?;
    let deviations: Vec<f64> = values.iter().map(|value| (value - centre).abs()).collect();
    let deviation = (FROM_MEDIAN * median(&deviations)?).max(least_deviation);
    let limit = OUTLIER * deviation;
    let kept: Vec<bool> = deviations.iter().map(|one| *one <= limit).collect();
    let good = || values.iter().zip(&kept).filter(|(_, kept)| **kept);
    let count = float_from_usize(good().count());
    if count <= 0.0 {
        return None;
    }
    let mean = good().map(|(value, _)| value).sum::<f64>() / count;
    let squares = good()
        .map(|(value, _)| (value - mean) * (value - mean))
        .sum();
    Some(RobustMean {
        mean,
        kept,
        squares,
    })
}

/// The value in the middle, or half-way between the two in the middle.
pub(super) fn median(values: &[f64]) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let last = sorted.len().checked_sub(1)?;
    let low = *sorted.get(last.div_euclid(2))?;
    let high = *sorted.get(sorted.len().div_euclid(2))?;
    Some(low.midpoint(high))
}
