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

/// A rise as a product: the known time, times what the dough makes of it, times what its warmth does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RiseFactors {
    /// The time of the known rise, to the minute.
    pub known: Minutes,
    /// How many times as long this dough takes as that of the known rise, to a hundredth.
    pub dough: Factor,
    /// How many times as long its warmth makes that, to a hundredth.
    pub warmth: Factor,
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

/// A rise as a product of figures that multiply as they are shown: the last of them takes up what
/// the others leave by being rounded. `None` without a time.
#[must_use]
pub fn rise_factors(risen: &Risen) -> Option<RiseFactors> {
    let hundredth = |number: f64| libm::round(number * 100.0) / 100.0;
    let known = libm::round(risen.asked.anchor.time.minutes());
    let dough = hundredth(1.0 / risen.asked.yeast_activity.number());
    let warmth = hundredth(libm::round(risen.due.minutes()) / (known * dough));
    let is_told = known > 0.0 && dough > 0.0 && warmth > 0.0;
    Some(RiseFactors {
        known: Minutes::from_minutes(known).ok().filter(|_| is_told)?,
        dough: Factor::from_number(dough).ok()?,
        warmth: Factor::from_number(warmth).ok()?,
    })
}
