//! Text to dates and times of day, as a browser's own boxes write them.

use crate::sheet::civil::{Clock, Date};

/// Reads "21:30" or "21:30:00"; nothing for anything else.
#[must_use]
pub fn clock(text: &str) -> Option<Clock> {
    let mut components = text.trim().split(':');
    let hour = components.next()?.parse().ok()?;
    let minute = components.next()?.parse().ok()?;
    Clock::from_hour(hour, minute)
}

/// Reads "2026-03-28T16:00"; nothing for anything else.
#[must_use]
pub fn date_and_clock(text: &str) -> Option<(Date, Clock)> {
    let (date, time) = text.trim().split_once('T')?;
    let mut components = date.split('-').map(str::parse::<i64>);
    let mut next = || components.next()?.ok();
    let date = Date::from_numbers(next()?, next()?, next()?)?;
    Some((date, clock(time)?))
}
