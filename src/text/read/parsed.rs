//! A number in plain digits, with at most one point and a power of ten.
//!
//! The standard library's own reading is right to the last bit for any length, with a table of ten
//! kilobytes. Here at most eighteen digits come, and up to fifteen of them are as exact: they and
//! the power of ten are both whole numbers that a double holds, so that one division rounds once.
//! Source: W. D. Clinger, "How to read floating point numbers accurately", PLDI 1990, section 3.

use super::ReadError;
use crate::engine::numerics::float_from_u64;

/// The greatest power of ten that a double holds exactly.
const EXACT_POWER: i32 = 22;
/// Powers beyond this give nothing or no end whatever the digits are.
const LAST_POWER: i32 = 400;

/// Returns the number, zero or more; infinite where it is beyond all numbers.
///
/// # Errors
/// [`ReadError::NotANumber`] for anything but digits, one point, and a power with or without sign.
pub(super) fn parsed(text: &str) -> Result<f64, ReadError> {
    let (body, power) = match text.split_once('e') {
        Some((body, power)) => (body, whole_power(power)?),
        None => (text, 0),
    };
    let (wholes, components) = body.split_once('.').unwrap_or((body, ""));
    if wholes.is_empty() && components.is_empty() {
        return Err(ReadError::NotANumber);
    }
    let digits = wholes.bytes().chain(components.bytes());
    let mut value = 0_u64;
    for digit in digits {
        if !digit.is_ascii_digit() {
            return Err(ReadError::NotANumber);
        }
        value = value
            .saturating_mul(10)
            .saturating_add(u64::from(digit - b'0'));
    }
    let decimals = i32::try_from(components.len()).unwrap_or(LAST_POWER);
    Ok(times_ten_to(float_from_u64(value), power - decimals))
}

fn whole_power(text: &str) -> Result<i32, ReadError> {
    let (sign, digits) = match text.strip_prefix('-') {
        Some(digits) => (-1, digits),
        None => (1, text.strip_prefix('+').unwrap_or(text)),
    };
    if digits.is_empty() || digits.bytes().any(|digit| !digit.is_ascii_digit()) {
        return Err(ReadError::NotANumber);
    }
    // Only too long a power does not fit.
    Ok(sign * digits.parse().unwrap_or(LAST_POWER).min(LAST_POWER))
}

fn times_ten_to(value: f64, power: i32) -> f64 {
    let step = |value: f64, tens: i32| {
        // A product of so few tens is exact.
        let ten = (0..tens).fold(1.0, |ten, _| ten * 10.0);
        if power < 0 { value / ten } else { value * ten }
    };
    let (mut value, mut left) = (value, power.abs());
    while left > EXACT_POWER {
        value = step(value, EXACT_POWER);
        left -= EXACT_POWER;
    }
    step(value, left)
}

#[cfg(test)]
mod tests {
    use super::parsed;

    /// Compared with: the standard library's reading, which rounds right at any length.
    #[test]
    fn fifteen_digits_are_read_to_the_last_bit() {
        for digits in [
            "1",
            "7",
            "125",
            "9007199254740",
            "123456789012345",
            "999999999999999",
        ] {
            for place in 0..=digits.len() {
                let (wholes, components) = digits.split_at(place);
                for power in ["", "e-9", "e+7", "e3"] {
                    let text = format!("{wholes}.{components}{power}");
                    assert_eq!(
                        parsed(&text).unwrap().to_bits(),
                        text.parse::<f64>().unwrap().to_bits(),
                        "{text}"
                    );
                }
            }
        }
    }

    /// Compared with: the standard library's reading. Eighteen digits round once more, and each 22
    /// powers of ten once: at most sixteen roundings here.
    #[test]
    fn longer_ones_are_as_near_as_anyone_can_weigh() {
        for text in [
            "123456789012345678",
            "0.999999999999999999",
            "1e99",
            "4.75e-120",
            "1e300",
        ] {
            let (ours, theirs) = (parsed(text).unwrap(), text.parse::<f64>().unwrap());
            assert!(
                (ours / theirs - 1.0).abs() <= 16.0 * f64::EPSILON,
                "{text}: {ours} {theirs}"
            );
        }
        assert!(parsed("1e999").unwrap().is_infinite() && parsed("0e999").unwrap() == 0.0);
    }

    #[test]
    fn anything_else_is_no_number() {
        for text in [
            "", ".", "e5", "1e", "1e+-5", "1.2.3", "-1", "+1", "1_0", "inf", "NaN", "٣",
        ] {
            assert!(parsed(text).is_err(), "{text}");
        }
    }
}
