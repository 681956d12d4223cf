//! Civil time: calendar, zones, and nights on which clocks are changed.

use softcrumb::engine::quantity::Instant;
use softcrumb::sheet::Moment;
use softcrumb::sheet::civil::{Civil, Clock, Date, Met, Weekday, Zone, nights};
use softcrumb::storage::calendar;

fn at(seconds: i64) -> Instant {
    Instant::from_seconds(seconds).unwrap()
}

fn date(year: i64, month: i64, day: i64) -> Date {
    Date::from_numbers(year, month, day).unwrap()
}

fn clock(hour: u16, minute: u16) -> Clock {
    Clock::from_hour(hour, minute).unwrap()
}

/// A zone asked for as the page asks a browser: only an offset at a point in time is known.
fn asked(changes: &'static [(i64, i64)], before: i64) -> Zone {
    let offset = move |point: Instant| {
        let mut past = changes.iter().rev();
        let past = past.find(|(from, _)| *from <= point.seconds());
        past.map_or(before, |(_, minutes)| *minutes)
    };
    Zone::asked(at(1_767_225_600), at(1_798_761_600), offset)
}

/// Clocks in London in 2026: forward on 29 March at 01:00 UTC, back on 25 October at 01:00 UTC.
///
/// Source: Summer Time Order 2002 (UK): last Sundays of March and October, 01:00 GMT.
fn london() -> Zone {
    asked(&[(1_774_746_000, 60), (1_792_890_000, 0)], 0)
}

/// New York in 2026: forward on 8 March at 07:00 UTC, back on 1 November at 06:00 UTC.
///
/// Source: Energy Policy Act of 2005 (US), section 110: second Sunday of March, first of November,
/// at 02:00 local time.
fn new_york() -> Zone {
    asked(&[(1_772_953_200, -240), (1_793_512_800, -300)], -300)
}

/// Lord Howe Island in 2026: half an hour, back on 5 April, forward on 4 October, 15:00 and
/// 15:30 UTC the day before.
///
/// Source: Standard Time Act 1987 (NSW): first Sundays of April and October.
fn lord_howe() -> Zone {
    asked(&[(1_775_314_800, 630), (1_791_041_400, 660)], 660)
}

#[test]
fn dates_go_to_days_and_back() {
    for days in (0..2_932_897).step_by(13) {
        let (year, month, day) = Date::from_days(days).numbers();
        assert_eq!(date(year, month, day).days(), days);
    }
    // ISO 8601: 1 January 1970 was a Thursday; 29 February 2000 a Tuesday.
    assert_eq!(date(1970, 1, 1).weekday(), Weekday::Thursday);
    assert_eq!(date(2000, 2, 29).weekday(), Weekday::Tuesday);
    assert_eq!(date(2000, 2, 29).days(), 11_016);
    assert_eq!(date(9999, 12, 31).plus(5), date(9999, 12, 31));
    for (year, month, day) in [
        (2026, 2, 29),
        (2100, 2, 29),
        (2026, 4, 31),
        (2026, 0, 1),
        (2026, 13, 1),
        (1969, 12, 31),
        (10_000, 1, 1),
        (i64::MAX, 1, 1),
    ] {
        assert_eq!(
            Date::from_numbers(year, month, day),
            None,
            "{year}-{month}-{day}"
        );
    }
}

#[test]
fn the_change_of_clocks_is_found_to_the_second() {
    for (zone, change, before, after) in [
        (london(), 1_774_746_000, 0, 3600),
        (london(), 1_792_890_000, 3600, 0),
        (new_york(), 1_772_953_200, -18_000, -14_400),
        (lord_howe(), 1_791_041_400, 37_800, 39_600),
    ] {
        assert_eq!(zone.ahead(at(change - 1)), before);
        assert_eq!(zone.ahead(at(change)), after);
    }
}

#[test]
fn a_clock_that_is_put_forward_skips_and_one_put_back_repeats() {
    let spring = date(2026, 3, 29);
    let jump = at(1_774_746_000);
    assert_eq!(london().instant(spring, clock(1, 30)), Met::Never(jump));
    assert_eq!(london().instant(spring, clock(2, 0)), Met::Once(jump));
    let autumn = date(2026, 10, 25);
    let (first, second) = (at(1_792_888_200), at(1_792_891_800));
    assert_eq!(
        london().instant(autumn, clock(1, 30)),
        Met::Twice(first, second)
    );
    // This zone changes by half an hour only.
    let howe = date(2026, 4, 5);
    let Met::Twice(first, second) = lord_howe().instant(howe, clock(1, 45)) else {
        panic!("no half hour twice");
    };
    assert_eq!(second.seconds() - first.seconds(), 1800);
    let skipped = lord_howe().instant(date(2026, 10, 4), clock(2, 15));
    assert_eq!(skipped, Met::Never(at(1_791_041_400)));
}

#[test]
fn every_minute_of_three_years_that_clocks_show_leads_back() {
    for zone in [london(), new_york(), lord_howe(), Zone::fixed(345)] {
        for seconds in (1_767_225_600..1_798_761_600).step_by(1260) {
            let point = at(seconds);
            let Civil { date, clock, .. } = zone.civil(point);
            let (first, last) = match zone.instant(date, clock) {
                Met::Once(only) => (only, only),
                Met::Twice(first, second) => (first, second),
                Met::Never(_) => panic!("{seconds} is shown"),
            };
            assert!(first == point || last == point, "{seconds}");
        }
    }
}

#[test]
fn a_night_is_an_hour_shorter_in_spring_and_longer_in_autumn() {
    let length = |zone: &Zone, from: i64, falls_asleep, wakes| {
        let found = nights(zone, (falls_asleep, wakes), at(from), at(from + 3600));
        assert_eq!(found.len(), 1, "{found:?}");
        found[0].until.seconds() - found[0].from.seconds()
    };
    let (eleven, six) = (clock(23, 0), clock(6, 0));
    let hour = 3600;
    // A quarter to one UTC of the night before each change, and a month later.
    for (zone, change, by) in [
        (london(), 1_774_746_000, -hour),
        (london(), 1_792_890_000, hour),
        (new_york(), 1_772_953_200, -hour),
        (new_york(), 1_793_512_800, hour),
        (lord_howe(), 1_775_314_800, hour / 2),
        (lord_howe(), 1_791_041_400, -hour / 2),
    ] {
        assert_eq!(length(&zone, change - 900, eleven, six), 7 * hour + by);
        let month = 30 * 86_400;
        assert_eq!(length(&zone, change - 900 - month, eleven, six), 7 * hour);
    }
    // One sleeps by day, the other never.
    assert_eq!(
        length(&Zone::default(), 12 * hour, clock(9, 0), clock(15, 0)),
        6 * hour
    );
    assert!(nights(&Zone::default(), (six, six), at(0), at(86_400)).is_empty());
    let long = nights(&london(), (eleven, six), at(0), at(253_402_300_799));
    assert!(long.len() < 70);
}

#[test]
fn offsets_that_no_clock_has_count_as_none() {
    for minutes in [i64::MAX, i64::MIN, 100_000] {
        let zone = Zone::asked(at(0), at(1_000_000), |_| minutes);
        assert_eq!(zone.ahead(at(5)), 0);
    }
}

#[test]
fn moments_and_points_in_time_are_the_same_second() {
    for seconds in [0, 1, 65_535, 65_536, 1_774_746_000, 253_402_300_799] {
        let moment = Moment::from_instant(at(seconds));
        assert_eq!(moment.instant(), at(seconds));
        let later = Moment::from_milliseconds(moment.milliseconds() + 999.0).unwrap();
        assert_eq!(later.instant(), at(seconds));
    }
}

#[test]
fn a_calendar_of_nothing_is_still_a_calendar() {
    let text = calendar::write(&[], at(0));
    assert!(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    assert!(text.ends_with("END:VCALENDAR\r\n"));
}
