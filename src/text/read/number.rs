//! A number as people write it: either decimal mark, grouped thousands, fractions.

use super::ReadError;
use super::parsed::parsed;
use crate::text::format_options::NumberStyle;

/// More digits than any scale, label or pocket calculator shows.
const MOST_DIGITS: usize = 18;

/// Returns the number, zero or more; may be infinite for 1e999, which every range refuses.
///
/// One comma or point is the decimal mark; where it is not the mark of this device and exactly
/// three digits follow, it may as well stand for thousands, and the reader is asked.
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub(super) fn number(text: &str, style: NumberStyle) -> Result<f64, ReadError> {
    let digits = text.chars().filter(char::is_ascii_digit);
    if digits.skip_while(|digit| *digit == '0').count() > MOST_DIGITS {
        return Err(ReadError::TooManyDigits { most: MOST_DIGITS });
    }
    if let Some((above, below)) = text.split_once('/') {
        return fraction(above.trim(), below.trim());
    }
    let mut characters = text.chars();
    if let Some(component) = characters.next_back().and_then(fraction_sign) {
        let wholes = characters.as_str().trim();
        let wholes = if wholes.is_empty() {
            0.0
        } else {
            whole(wholes)?
        };
        return Ok(wholes + component);
    }
    match text.split_once(['e', 'E']) {
        Some((body, power)) => parsed(&format!("{}e{power}", decimal(body, style)?)),
        None => parsed(&decimal(text, style)?),
    }
}

/// The value of a one-character fraction.
pub(super) const fn fraction_sign(character: char) -> Option<f64> {
    match character {
        '½' => Some(0.5),
        '⅓' => Some(1.0 / 3.0),
        '⅔' => Some(2.0 / 3.0),
        '¼' => Some(0.25),
        '¾' => Some(0.75),
        '⅕' => Some(0.2),
        '⅖' => Some(0.4),
        '⅗' => Some(0.6),
        '⅘' => Some(0.8),
        '⅙' => Some(1.0 / 6.0),
        '⅚' => Some(5.0 / 6.0),
        '⅛' => Some(0.125),
        '⅜' => Some(0.375),
        '⅝' => Some(0.625),
        '⅞' => Some(0.875),
        _ => None,
    }
}

/// "1/2" and "1 1/2".
fn fraction(above: &str, below: &str) -> Result<f64, ReadError> {
    let below = whole(below)?;
    let (wholes, above) = match above.split_once(' ') {
        Some((wholes, above)) => (whole(wholes)?, whole(above.trim_start())?),
        None => (0.0, whole(above)?),
    };
    if below > 0.0 {
        Ok(wholes + above / below)
    } else {
        Err(ReadError::OverNought)
    }
}

/// Digits and nothing else.
fn whole(text: &str) -> Result<f64, ReadError> {
    if text.is_empty() || text.chars().any(|character| !character.is_ascii_digit()) {
        return Err(ReadError::NotANumber);
    }
    parsed(text)
}

/// Rewrites grouped and decimal digits with a point and no groups.
fn decimal(text: &str, style: NumberStyle) -> Result<String, ReadError> {
    let marks: Vec<char> = text.chars().filter(|mark| !mark.is_ascii_digit()).collect();
    let groups: Vec<&str> = text
        .split(|character: char| !character.is_ascii_digit())
        .collect();
    let Some((last, earlier)) = marks.split_last() else {
        return Ok(text.to_owned());
    };
    let grouped = grouped(&marks, &groups);
    if !matches!(last, '.' | ',' | '٫') || earlier.contains(last) {
        return if grouped {
            Ok(groups.concat())
        } else {
            Err(error(&marks))
        };
    }
    let Some((components, wholes)) = groups.split_last() else {
        return Err(ReadError::NotANumber);
    };
    let point = format!("{}.{components}", wholes.concat());
    if earlier.is_empty() {
        let other_mark = *last != style.decimal && *last != '٫';
        let leads = wholes.first().is_some_and(|first| !first.starts_with('0'));
        return if other_mark && grouped && leads {
            Err(ReadError::Unclear {
                grouped: parsed(&groups.concat())?,
                decimal: parsed(&point)?,
            })
        } else {
            Ok(point)
        };
    }
    if self::grouped(earlier, wholes) {
        Ok(point)
    } else {
        Err(error(&marks))
    }
}

/// Whether the digits are grouped as thousands are: 1,234,567 or 12,34,567.
fn grouped(marks: &[char], groups: &[&str]) -> bool {
    let one_mark = marks.windows(2).all(|pair| pair.first() == pair.last());
    let sizes: Vec<usize> = groups.iter().map(|group| group.len()).collect();
    let [first, middle @ .., last] = sizes.as_slice() else {
        return false;
    };
    let by_three = (1..=3).contains(first) && middle.iter().all(|size| *size == 3);
    let by_two = (1..=2).contains(first) && middle.iter().all(|size| *size == 2);
    one_mark && *last == 3 && (by_three || by_two)
}

/// What is wrong with marks that make no number.
fn error(marks: &[char]) -> ReadError {
    if marks.contains(&' ') {
        ReadError::TwoNumbers
    } else {
        ReadError::TwoPoints
    }
}
