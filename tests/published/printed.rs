//! Numbers as print gives them: a value agrees when it would be printed alike.

use crate::accuracy::note;

/// The number that was printed. A decimal comma is read as a point.
pub(crate) fn number(printed: &str) -> f64 {
    let plain = printed.trim().replace(',', ".");
    plain
        .parse()
        .unwrap_or_else(|_| panic!("{printed:?} is not a printed number"))
}

/// Half of the last digit that was printed: 0.05 for "59.1", 0.5 for "60".
///
/// A number printed with an exponent counts the digits before it: 0.005e3 for "1.23e3".
pub(crate) fn half_last_digit(printed: &str) -> f64 {
    let plain = printed.trim().replace(',', ".").to_lowercase();
    let (digits, power) = plain.split_once('e').unwrap_or((&plain, "0"));
    let decimals = digits.split_once('.').map_or(0, |(_, after)| after.len());
    let exponent = power.parse::<i32>().unwrap() - i32::try_from(decimals).unwrap();
    0.5 * libm::pow(10.0, f64::from(exponent))
}

/// Holds `value` against a printed number, to half of the last digit printed.
///
/// A billionth of the number is allowed on top, so that a value on the very edge is not lost to
/// binary fractions.
#[track_caller]
pub(crate) fn agrees(value: f64, printed: &str) {
    let expected = number(printed);
    note(value, expected);
    let allowed = half_last_digit(printed) + 1e-9 * expected.abs();
    assert!(
        (value - expected).abs() <= allowed,
        "{value} is not {printed} as printed (off by {}, {allowed} allowed)",
        (value - expected).abs()
    );
}

/// Holds `value` against a printed number with a tolerance of the caller's own.
///
/// The caller says in words, on the line above, why half of the last digit will not do.
#[track_caller]
pub(crate) fn agrees_within(value: f64, printed: &str, allowed: f64) {
    let expected = number(printed);
    note(value, expected);
    assert!(
        (value - expected).abs() <= allowed,
        "{value} is not {printed} within {allowed} (off by {})",
        (value - expected).abs()
    );
}

/// Marks a disagreement: `value` misses a printed number, and lies this many times as high.
///
/// The caller says on the doc line why; where the two come to agree, the mark is to be taken away.
#[track_caller]
pub(crate) fn disagrees(value: f64, printed: &str, apart: std::ops::Range<f64>) {
    note(value, number(printed));
    let times = value / number(printed);
    assert!(!apart.contains(&1.0), "{apart:?} is no disagreement");
    assert!(
        apart.contains(&times),
        "{value} is {times} times {printed}, not {apart:?} times"
    );
}

#[test]
fn half_of_the_last_printed_digit_is_what_may_differ() {
    agrees(59.149, "59.1");
    agrees(1234.0, "1.23e3");
    agrees(12.5, "12,5");
    agrees_within(12.9, "12,5", 0.5);
    for (value, printed) in [(59.16, "59.1"), (60.6, "60"), (f64::NAN, "60")] {
        assert!(std::panic::catch_unwind(|| agrees(value, printed)).is_err());
    }
}
