//! Bisection: where a function crosses zero, and where a condition begins to hold.

use std::ops::RangeInclusive;

/// No root: the function has the same sign at both ends of the range.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("no root: {at_start} at the start of the range, {at_end} at its end")]
pub struct NoRoot {
    /// The function's value at the start of the range.
    pub at_start: f64,
    /// The function's value at the end of the range.
    pub at_end: f64,
}

/// Halvings of [`root`]: a range of 1000 shrinks to 1e-15, the resolution of an `f64` near 1.
const HALVINGS: u32 = 60;

/// A root of a continuous function: a point of `range` at which it changes its sign.
///
/// Sixty halvings: the answer is at most 2⁻⁶¹ of the range away from such a point, or as near as
/// `f64` can be. Of several roots one is returned.
///
/// # Errors
/// [`NoRoot`] where the function has the same sign at both ends, or is NaN at one of them.
pub fn root(function: impl Fn(f64) -> f64, range: RangeInclusive<f64>) -> Result<f64, NoRoot> {
    let (at_start, at_end) = (function(*range.start()), function(*range.end()));
    let rises = at_start <= 0.0 && at_end >= 0.0;
    let falls = at_start >= 0.0 && at_end <= 0.0;
    if !rises && !falls {
        return Err(NoRoot { at_start, at_end });
    }
    let passed = |x: f64| {
        let y = function(x);
        if rises { y >= 0.0 } else { y <= 0.0 }
    };
    let (low, high) = halved(range, HALVINGS, &mut |x| Ok::<_, NoRoot>(passed(x)))?;
    Ok(low.midpoint(high))
}

/// The least `x` of `range` for which `holds` is true, if it is false before and true after.
///
/// The answer is at most 2 to the power of −`halvings` of the range above the true one, and `holds`
/// was true for it. `None` where `holds` is false at the end of the range.
pub fn first_true(
    range: RangeInclusive<f64>,
    halvings: u32,
    mut holds: impl FnMut(f64) -> bool,
) -> Option<f64> {
    let never_fails = |x| Ok::<_, std::convert::Infallible>(holds(x));
    try_first_true(range, halvings, never_fails).unwrap_or_else(|never| match never {})
}

/// As [`first_true`], for a condition that may fail to be worked out.
///
/// # Errors
/// The first error that `holds` returns.
pub fn try_first_true<E>(
    range: RangeInclusive<f64>,
    halvings: u32,
    mut holds: impl FnMut(f64) -> Result<bool, E>,
) -> Result<Option<f64>, E> {
    if holds(*range.start())? {
        return Ok(Some(*range.start()));
    }
    if !holds(*range.end())? {
        return Ok(None);
    }
    let (_, high) = halved(range, halvings, &mut holds)?;
    Ok(Some(high))
}

/// The range, halved so many times: `holds` is false at its start and true at its end.
fn halved<E>(
    range: RangeInclusive<f64>,
    halvings: u32,
    holds: &mut impl FnMut(f64) -> Result<bool, E>,
) -> Result<(f64, f64), E> {
    let (mut low, mut high) = range.into_inner();
    for _ in 0..halvings {
        let middle = low.midpoint(high);
        if holds(middle)? {
            high = middle;
        } else {
            low = middle;
        }
    }
    Ok((low, high))
}

/// The least whole number of `range` for which `holds` is true, if it is false before and true
/// after. `None` where `holds` is false at the end of the range.
pub fn first_integer(
    range: RangeInclusive<i64>,
    mut holds: impl FnMut(i64) -> bool,
) -> Option<i64> {
    let (low, high) = range.into_inner();
    if !holds(high) {
        None
    } else if low >= high {
        Some(high)
    } else if holds(low) {
        Some(low)
    } else {
        Some(halve_integers(low, high, 1, holds))
    }
}

/// A whole number for which `holds` is true, at most `step` above one for which it is false.
///
/// `holds` is taken to be false at `low` and true at `high`, without evaluating it there; `high`
/// is returned where both are no more than `step` apart. A step below one counts as one.
pub fn halve_integers(low: i64, high: i64, step: i64, mut holds: impl FnMut(i64) -> bool) -> i64 {
    let (mut low, mut high) = (low, high);
    // Each round halves the distance: 64 are enough for all of `i64`.
    for _ in 0..=i64::BITS {
        if high.saturating_sub(low) <= step.max(1) {
            break;
        }
        let middle = low.midpoint(high);
        if holds(middle) {
            high = middle;
        } else {
            low = middle;
        }
    }
    high
}
