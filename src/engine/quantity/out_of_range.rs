//! A number that lies outside its quantity's range.

use std::ops::RangeInclusive;

/// A number outside the range of the quantity it was meant for; NaN is outside every range.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{value} is outside {range:?}")]
pub struct OutOfRange {
    /// The number as it came.
    pub value: f64,
    /// What would have been taken, in the same unit.
    pub range: RangeInclusive<f64>,
}

/// `value`, or the nearer end of `range`. Operands that lie within their own ranges never make NaN;
/// NaN would give the start of the range.
pub(crate) fn saturated(value: f64, range: RangeInclusive<f64>) -> f64 {
    let (start, end) = range.into_inner();
    value.max(start).min(end)
}

/// Gives `value` back when it lies within `range`.
///
/// # Errors
/// [`OutOfRange`] otherwise, NaN included.
pub(crate) fn within(value: f64, range: RangeInclusive<f64>) -> Result<f64, OutOfRange> {
    if range.contains(&value) {
        Ok(value)
    } else {
        Err(OutOfRange { value, range })
    }
}
