//! A bare figure: rounded, punctuated, never anything but digits.

use crate::text::{format_options::NumberStyle, language::text, tr_noop};

/// Replaces a number that cannot be worked out; the sentence beside it says why.
pub(super) const NOT_KNOWN: &str = tr_noop!("not known");

/// A true minus sign.
pub(super) const MINUS: char = '\u{2212}';

/// Four digits stand together; from five on, thousands are set apart.
const GROUPED_FROM: usize = 5;

/// The error that sums in binary digits may have at a half.
const NOISE: f64 = 5e-10;

/// The most decimals printed.
const MOST_PLACES: usize = 9;

/// A number with `places` decimals, trailing zeros kept.
#[must_use]
pub fn figure(value: f64, places: usize, style: NumberStyle) -> String {
    match digits(value, places) {
        Some(digits) => set(&digits, style),
        None => text(NOT_KNOWN).to_owned(),
    }
}

/// A number with at most `places` decimals, trailing zeros dropped: 12.50 is 12.5.
#[must_use]
pub fn plain(value: f64, places: usize, style: NumberStyle) -> String {
    match digits(value, places) {
        Some(digits) => set(&digits.trimmed(), style),
        None => text(NOT_KNOWN).to_owned(),
    }
}

/// A number to so many significant figures, trailing zeros after the point dropped.
#[must_use]
pub fn significant(value: f64, figures: usize, style: NumberStyle) -> String {
    let (value, places) = to_significant(value, figures);
    plain(value, places, style)
}

/// Digits before and after the point, with the sign.
pub(super) struct Digits {
    negative: bool,
    whole: String,
    components: String,
}

impl Digits {
    /// Removes trailing zeros.
    pub(super) fn trimmed(mut self) -> Self {
        self.components
            .truncate(self.components.trim_end_matches('0').len());
        self
    }

    /// Whether it rounds to zero.
    pub(super) fn is_nought(&self) -> bool {
        self.whole
            .chars()
            .chain(self.components.chars())
            .all(|digit| digit == '0')
    }
}

/// Rounds half away from zero, as people do; a number within a billionth of a half counts as
/// one, so that 1.005 as typed becomes 1.01. `None` for what is no number.
pub(super) fn digits(value: f64, places: usize) -> Option<Digits> {
    if !value.is_finite() {
        return None;
    }
    let places = places.min(MOST_PLACES);
    let scaled = value.abs() * ten_to(places);
    if !scaled.is_finite() {
        return None;
    }
    let rounded = format!("{:.0}", libm::round(scaled + NOISE));
    let padded = format!("{rounded:0>width$}", width = places + 1);
    let (whole, components) = padded.split_at_checked(padded.len().saturating_sub(places))?;
    let digits = Digits {
        negative: value < 0.0,
        whole: whole.to_owned(),
        components: components.to_owned(),
    };
    Some(digits)
}

/// Ten to a small power.
pub(super) fn ten_to(power: usize) -> f64 {
    (0..power).fold(1.0, |product, _| product * 10.0)
}

/// Rounded to so many significant figures, with the decimals that print them.
pub(super) fn to_significant(value: f64, figures: usize) -> (f64, usize) {
    let figures = figures.max(1);
    let full = ten_to(figures);
    let mut size = value.abs();
    if size >= full && size.is_finite() {
        let mut unit = 1.0;
        while size >= full && size.is_finite() {
            size /= 10.0;
            unit *= 10.0;
        }
        return (libm::round(value / unit) * unit, 0);
    }
    let mut places = 0;
    while size * 10.0 < full && places < MOST_PLACES {
        size *= 10.0;
        places += 1;
    }
    (value, places)
}

/// Sign, groups and decimal mark.
fn set(digits: &Digits, style: NumberStyle) -> String {
    let mut text = String::new();
    if digits.negative && !digits.is_nought() {
        text.push(MINUS);
    }
    let length = digits.whole.len();
    for (index, digit) in digits.whole.chars().enumerate() {
        let left = length.saturating_sub(index);
        if index > 0 && left.is_multiple_of(3) && length >= GROUPED_FROM {
            text.extend(style.group);
        }
        text.push(digit);
    }
    if !digits.components.is_empty() {
        text.push(style.decimal);
        text.push_str(&digits.components);
    }
    text
}
