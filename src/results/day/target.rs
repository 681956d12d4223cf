//! The time a plan is solved from: when the bread is to be ready, or when the work starts.

use super::input::DayInput;
use crate::engine::plan::Aim;
use crate::engine::quantity::Instant;
use crate::sheet::Moment;
use crate::sheet::civil::{Clock, Zone};
use crate::sheet::day::Target;

/// The local time at which bread is ready where no time is set.
const AFTERNOON: Clock = Clock::known(16, 0);
/// The least time between now and that, s: a night and the morning after it.
const LEAST_AHEAD: i64 = 20 * 3600;

/// The time the plan is solved from.
pub(super) fn target(input: &DayInput) -> Aim {
    match input.settings.target {
        Target::Table(at) => Aim::Table(at.instant()),
        Target::From(at) => Aim::From(at.instant()),
        // A bake that has begun keeps the time it began with.
        Target::Open => {
            let began = input.bake().map_or(input.now, |bake| bake.began);
            Aim::Table(open_target(input.zone, began))
        }
    }
}

/// Returns the first 16:00 by the local clock that is at least twenty hours away.
///
/// ```
/// use softcrumb::results::day::open_target;
/// use softcrumb::sheet::{Moment, civil::Zone};
///
/// // On Friday, 27 March 2026, at 18:00 that is Saturday's, 22 hours later.
/// let now = Moment::from_milliseconds(1_774_634_400_000.0).unwrap_or_default();
/// let ready = open_target(&Zone::default(), now);
/// assert_eq!(ready.seconds() - now.instant().seconds(), 22 * 3600);
/// ```
#[must_use]
pub fn open_target(zone: &Zone, now: Moment) -> Instant {
    let soonest = now.instant().seconds().saturating_add(LEAST_AHEAD);
    let today = zone.civil(now.instant()).date;
    let days = (0..4).map(|days| zone.instant(today.plus(days), AFTERNOON).last());
    days.into_iter()
        .find(|at| at.seconds() >= soonest)
        .unwrap_or(now.instant())
}
