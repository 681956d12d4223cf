//! Comparison of a rise and its dough with those of the reference rise.

use crate::engine::quantity::{Factor, Minutes};
use crate::engine::rise::Risen;

/// The speed of a dough's rise relative to that of the dough of the reference rises.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RiseSpeed {
    /// The same to two decimals.
    Same,
    /// This many times as fast.
    Faster(Factor),
    /// This many times as long.
    Slower(Factor),
}

/// The time of a rise relative to that of its reference rise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RiseDifference {
    /// Less than a minute apart.
    Same,
    /// Longer by this much.
    Longer(Minutes),
    /// Shorter by this much.
    Shorter(Minutes),
}

/// A yeast activity nearer to 1 than this counts as the same.
const SAME_ACTIVITY: f64 = 0.005;
/// Times nearer than this count as the same, min.
const SAME_TIME: f64 = 1.0;

/// Compares a dough's yeast activity with that of the reference rises.
///
/// ```
/// use softcrumb::engine::quantity::Factor;
/// use softcrumb::results::day::{RiseSpeed, rise_speed};
///
/// assert_eq!(rise_speed(Factor::TWO), RiseSpeed::Faster(Factor::TWO));
/// assert_eq!(rise_speed(Factor::from_number(0.5)?), RiseSpeed::Slower(Factor::TWO));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn rise_speed(yeast_activity: Factor) -> RiseSpeed {
    let times = yeast_activity.number();
    if (times - 1.0).abs() < SAME_ACTIVITY {
        RiseSpeed::Same
    } else if times > 1.0 {
        RiseSpeed::Faster(yeast_activity)
    } else {
        Factor::from_number(1.0 / times).map_or(RiseSpeed::Same, RiseSpeed::Slower)
    }
}

/// Compares the time of a rise with that of its reference rise, in minutes; less than a minute
/// apart counts as the same.
#[must_use]
pub fn rise_difference(risen: &Risen) -> RiseDifference {
    let (now, reference) = (risen.due.minutes(), risen.asked.anchor.time.minutes());
    let apart = Minutes::from_minutes((now - reference).abs()).unwrap_or(Minutes::ZERO);
    if apart.minutes() < SAME_TIME {
        RiseDifference::Same
    } else if now > reference {
        RiseDifference::Longer(apart)
    } else {
        RiseDifference::Shorter(apart)
    }
}
