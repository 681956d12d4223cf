//! Times of day, as a clock on the wall shows them.

use crate::engine::quantity::{Instant, Minutes};
use crate::sheet::civil::{Civil, Clock, Zone};
use crate::text::{name, tr};

/// A time of day: "7:05", "21:30".
#[must_use]
pub fn clock(clock: Clock) -> String {
    format!("{}:{:02}", clock.hour(), clock.minute())
}

/// A point in time by its day and clock, to the nearest minute: "Sat 21:30".
#[must_use]
pub fn day_and_clock(at: Instant, zone: &Zone) -> String {
    let Civil { date, clock, .. } = civil(at, zone);
    format!("{} {}", name::weekday(date.weekday()), self::clock(clock))
}

/// The day of the week of a point in time: "Sat".
#[must_use]
pub fn weekday(at: Instant, zone: &Zone) -> &'static str {
    name::weekday(civil(at, zone).date.weekday())
}

/// A point in time by its clock alone, to the nearest minute.
#[must_use]
pub fn clock_at(at: Instant, zone: &Zone) -> String {
    clock(civil(at, zone).clock)
}

/// The time between two clocks as they are shown.
#[must_use]
pub fn between_clocks(from: Instant, until: Instant) -> Minutes {
    let shown = |at: Instant| {
        let half = at.seconds().saturating_add(30);
        let whole = half.saturating_sub(half.rem_euclid(60));
        Instant::from_seconds(whole).unwrap_or(at)
    };
    shown(until).since(shown(from))
}

/// A date: "Sat 28 March".
#[must_use]
pub fn date(at: Instant, zone: &Zone) -> String {
    let date = civil(at, zone).date;
    let (_, month, day) = date.numbers();
    let months = [
        tr!("January"),
        tr!("February"),
        tr!("March"),
        tr!("April"),
        tr!("May"),
        tr!("June"),
        tr!("July"),
        tr!("August"),
        tr!("September"),
        tr!("October"),
        tr!("November"),
        tr!("December"),
    ];
    let month = usize::try_from(month - 1)
        .ok()
        .and_then(|at| months.get(at));
    let month = month.copied().unwrap_or_default();
    tr!(
        "{weekday} {day} {month}",
        weekday = name::weekday(date.weekday()),
        day = day,
        month = month
    )
}

/// To the nearest minute: half a minute is rounded up.
fn civil(at: Instant, zone: &Zone) -> Civil {
    let half = at.seconds().saturating_add(30);
    zone.civil(Instant::from_seconds(half).unwrap_or(at))
}

/// A time of day for a browser's own box: "07:05".
#[must_use]
pub fn box_clock(clock: Clock) -> String {
    format!("{:02}:{:02}", clock.hour(), clock.minute())
}

/// A point in time for a browser's own box, to the nearest minute: "2026-03-28T16:00".
#[must_use]
pub fn box_date_and_clock(at: Instant, zone: &Zone) -> String {
    let Civil { date, clock, .. } = civil(at, zone);
    let (year, month, day) = date.numbers();
    format!("{year:04}-{month:02}-{day:02}T{}", box_clock(clock))
}
