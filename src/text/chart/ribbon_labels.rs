//! The words along the day ribbon: hours and nights at the foot, days at the head, none on another.

use crate::engine::quantity::Instant;
use crate::sheet::civil::{Clock, Zone};
use crate::text::{format, tr};

use super::Tick;
use super::ribbon_scale::{Scale, WIDTH};
use super::text_width::text_width;

/// The type size of the words.
const TYPE: f64 = 12.0;

/// The words below each night that have room beside those before, all of them within the picture.
pub(super) fn shortened(nights: &[(f64, f64)]) -> Vec<Tick> {
    let words = tr!("night, drawn shorter");
    let wide = text_width(words, TYPE);
    let mut free = 0.0;
    let mut found = Vec::new();
    for (x, width) in nights {
        let most = WIDTH - wide / 2.0;
        let at = (x + width / 2.0).min(most).max(wide / 2.0);
        if at - wide / 2.0 >= free {
            free = at + wide / 2.0 + TYPE / 2.0;
            found.push(Tick {
                at,
                text: words.to_owned(),
            });
        }
    }
    found
}

/// The room that an hour takes at the foot.
const HOUR: f64 = 40.0;

/// Midnights, and every third hour of the clock that has room beside what is there.
pub(super) fn hours(scale: &Scale, from: Instant, until: Instant, zone: &Zone) -> Vec<Tick> {
    let mut found: Vec<Tick> = Vec::new();
    for hours in [24, 3] {
        for (clock, at) in every(from, until, zone, hours) {
            let half = HOUR / 2.0;
            let at = scale.x(at);
            // A midnight beside an edge is moved inward; another hour is left out there.
            let held = at.clamp(half, WIDTH - half);
            let fits = clock.minutes() == 0 || held.total_cmp(&at).is_eq();
            if fits && found.iter().all(|one| (one.at - held).abs() >= HOUR) {
                found.push(Tick {
                    at: held,
                    text: format::clock(clock),
                });
            }
        }
    }
    found.sort_by(|one, other| one.at.total_cmp(&other.at));
    found
}

/// Between a midnight and the name of its day.
const AWAY: f64 = 4.0;

/// Midnights, the day that begins named where there is room.
pub(super) fn days(scale: &Scale, from: Instant, until: Instant, zone: &Zone) -> Vec<Tick> {
    let midnights: Vec<(f64, Instant)> = every(from, until, zone, 24)
        .map(|(_, at)| (scale.x(at), at))
        .collect();
    let next = midnights.iter().skip(1).map(|(x, _)| *x);
    let next = next.chain([WIDTH]);
    let ticks = midnights.iter().zip(next).map(|((x, at), next)| {
        let date = format::date(*at, zone);
        let has_room = next - x >= AWAY + text_width(&date, TYPE);
        Tick {
            at: *x,
            text: if has_room { date } else { String::new() },
        }
    });
    ticks.collect()
}

/// Every so many hours of the clock between two points in time, at most a month of them.
fn every(
    from: Instant,
    until: Instant,
    zone: &Zone,
    hours: u16,
) -> impl Iterator<Item = (Clock, Instant)> {
    let first = zone.civil(from).date;
    let days = (0..31).map(move |day| first.plus(day));
    let clocks = (0..24_u16).step_by(usize::from(hours.max(1)));
    days.flat_map(move |date| {
        let clocks = clocks.clone().filter_map(|hour| Clock::from_hour(hour, 0));
        clocks.map(move |clock| (clock, zone.instant(date, clock).first()))
    })
    .filter(move |(_, at)| *at > from && *at < until)
}
