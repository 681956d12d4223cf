//! The middle of several entries, of which one may be wild.

/// What several entries come to.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct RobustMean {
    /// The mean of those that were kept.
    pub(super) mean: f64,
    /// Whether each entry was kept, in the order given.
    pub(super) kept: Vec<bool>,
    /// The sum of the squares by which the kept ones miss the mean.
    pub(super) squares: f64,
}

/// Three times the usual miss is wild.
const WILD: f64 = 3.0;
/// The median miss of a normal scatter, turned into its standard deviation.
const FROM_MEDIAN: f64 = 1.4826;

/// The mean of those entries that lie within three standard deviations of the median, the deviation
/// taken from the median miss and never below `least`. `None` without entries.
///
/// Source: Hampel 1974, *Journal of the American Statistical Association* 69:383–393 (the median
/// miss as a measure of scatter that one wild entry cannot move).
pub(super) fn middle(entries: &[f64], least: f64) -> Option<RobustMean> {
    let centre = median(entries)?;
    let misses: Vec<f64> = entries.iter().map(|entry| (entry - centre).abs()).collect();
    let scatter = (FROM_MEDIAN * median(&misses)?).max(least);
    let kept: Vec<bool> = misses.iter().map(|miss| *miss <= WILD * scatter).collect();
    let good = || entries.iter().zip(&kept).filter(|(_, kept)| **kept);
    let count = good().fold(0.0, |count, _| count + 1.0);
    if count <= 0.0 {
        return None;
    }
    let mean = good().map(|(entry, _)| entry).sum::<f64>() / count;
    let squares = good()
        .map(|(entry, _)| (entry - mean) * (entry - mean))
        .sum();
    Some(RobustMean {
        mean,
        kept,
        squares,
    })
}

/// The entry in the middle, or half-way between the two there.
fn median(entries: &[f64]) -> Option<f64> {
    let mut sorted = entries.to_vec();
    sorted.sort_by(f64::total_cmp);
    let last = sorted.len().checked_sub(1)?;
    let low = *sorted.get(last.div_euclid(2))?;
    let high = *sorted.get(sorted.len().div_euclid(2))?;
    Some(low.midpoint(high))
}
