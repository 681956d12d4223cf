//! Hand time: how far the time of work by hand is off.

use crate::engine::quantity::Minutes;

/// Work by hand is done a tenth sooner at best. Common practice: pieces are weighed, rounded and
/// shaped in half a minute each by a quick hand, and doughs are mixed until they are ready.
const SOONER: f64 = 0.1;
/// It takes a quarter longer where there is something to look for, wash or wait for. Common practice.
const LONGER: f64 = 0.25;

/// How long scalding takes: boiling, pouring, stirring. Common practice.
pub const SCALDING: Minutes = Minutes::known(12.0);

/// How long work by hand or in the mixer lasts that is likely to take so long: at the soonest, most
/// likely, at the latest.
///
/// ```
/// use softcrumb::engine::plan::hands_between;
/// use softcrumb::engine::quantity::Minutes;
///
/// let [soonest, likely, latest] = hands_between(Minutes::from_minutes(20.0)?);
/// assert_eq!((soonest.minutes(), likely.minutes(), latest.minutes()), (18.0, 20.0, 25.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn hands_between(likely: Minutes) -> [Minutes; 3] {
    [1.0 - SOONER, 1.0, 1.0 + LONGER].map(|times| {
        let minutes = (likely.minutes() * times).min(*Minutes::RANGE.end());
        Minutes::from_minutes(minutes).unwrap_or(likely)
    })
}
