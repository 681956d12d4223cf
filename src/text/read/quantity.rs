//! Text to each kind of quantity.

use std::num::NonZeroU16;
use std::ops::RangeInclusive;

use super::number::number;
use super::typed::{Piece, Typed, typed};
use super::unit_suffix::UnitSuffix;
use super::{Limit, Measure, ReadError};
use crate::engine::quantity::{Factor, Mass, OutOfRange, Share, Temperature, Viscosity};
use crate::text::format_options::FormatOptions;

/// A baker's percentage passes 100; this leaves room for any of them.
const PERCENT: RangeInclusive<f64> = 0.0..=10_000.0;

/// Reads a weight: "120", "0,5 kg", "4 oz", "1 lb 3 oz".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn mass(text: &str, options: FormatOptions) -> Result<Mass, ReadError> {
    let mut grams = 0.0;
    let mut unit_before = f64::INFINITY;
    let pieces = not_below_zero(text)?;
    let several = pieces.len() > 1;
    for piece in &pieces {
        let figure = number(&piece.number, options.numbers)?;
        let in_one = match UnitSuffix::wanted(&piece.unit, Measure::Mass) {
            Ok(UnitSuffix::Grams(grams)) => grams,
            Ok(_) if !several => options.units.mass.grams(),
            Err(error) if !several => return Err(error),
            Ok(_) | Err(_) => return Err(ReadError::TwoNumbers),
        };
        if in_one >= unit_before {
            return Err(ReadError::TwoNumbers);
        }
        unit_before = in_one;
        grams += figure * in_one;
    }
    Mass::from_grams(grams).map_err(|out| outside(&out, Mass::from_grams, Limit::Mass))
}

/// Reads a share in percent: "65", "65 %", "2,5".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn share(text: &str, options: FormatOptions) -> Result<Share, ReadError> {
    let (figure, _) = one_above_zero(text, Measure::Share, options)?;
    within(figure, PERCENT)
        .and_then(Share::from_percent)
        .map_err(|out| outside(&out, Share::from_percent, Limit::Share))
}

/// Reads a temperature: "26", "26 °C", "78F", "-18".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn temperature(text: &str, options: FormatOptions) -> Result<Temperature, ReadError> {
    let typed = typed(text)?;
    let minus = typed.minus;
    let (figure, unit) = one(typed, Measure::Temperature, options)?;
    let scale = if let UnitSuffix::Degrees(scale) = unit {
        scale
    } else {
        options.units.temperature
    };
    let figure = if minus { -figure } else { figure };
    scale
        .temperature(figure)
        .map_err(|out| outside(&out, Temperature::from_celsius, Limit::Temperature))
}

/// Reads how many times over: "2", "× 1,5", "1/2".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn factor(text: &str, options: FormatOptions) -> Result<Factor, ReadError> {
    let (figure, _) = one_above_zero(text, Measure::Times, options)?;
    Factor::from_number(figure).map_err(|out| outside(&out, Factor::from_number, Limit::Times))
}

/// Reads a number of whole things: "9", "12 students".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn count(text: &str, options: FormatOptions) -> Result<NonZeroU16, ReadError> {
    let (figure, _) = one_above_zero(text, Measure::Count, options)?;
    if figure > f64::from(u16::MAX) {
        return Err(ReadError::TooLarge {
            most: Limit::Count(u16::MAX),
        });
    }
    if libm::floor(figure) < figure {
        return Err(ReadError::NotWhole);
    }
    // Printed without decimals a whole number is its digits, so nothing is lost on the way.
    let whole: u16 = format!("{figure:.0}")
        .parse()
        .map_err(|_| ReadError::NotANumber)?;
    NonZeroU16::new(whole).ok_or(ReadError::TooSmall {
        least: Limit::Count(1),
    })
}

/// Reads a thickness: "0.3", "0,3 Pa·s", "300 mPa s".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn viscosity(text: &str, options: FormatOptions) -> Result<Viscosity, ReadError> {
    let (figure, unit) = one_above_zero(text, Measure::Thickness, options)?;
    let in_one = if let UnitSuffix::PascalSeconds(in_one) = unit {
        in_one
    } else {
        1.0
    };
    Viscosity::from_pascal_seconds(figure * in_one)
        .map_err(|out| outside(&out, Viscosity::from_pascal_seconds, Limit::Thickness))
}

/// What to say of a number outside its range: the end it went past.
pub(super) fn outside<T>(
    out: &OutOfRange,
    from: fn(f64) -> Result<T, OutOfRange>,
    limit: fn(T) -> Limit,
) -> ReadError {
    let (start, end) = (*out.range.start(), *out.range.end());
    let below = out.value < start;
    match from(if below { start } else { end }).map(limit) {
        Ok(least) if below => ReadError::TooSmall { least },
        Ok(most) => ReadError::TooLarge { most },
        Err(_) => ReadError::NotANumber,
    }
}

/// Returns `value` back when it is within `range`.
fn within(value: f64, range: RangeInclusive<f64>) -> Result<f64, OutOfRange> {
    if range.contains(&value) {
        Ok(value)
    } else {
        Err(OutOfRange { value, range })
    }
}

/// The pieces of a text that may not be below zero.
pub(super) fn not_below_zero(text: &str) -> Result<Vec<Piece>, ReadError> {
    let typed = typed(text)?;
    if typed.minus {
        Err(ReadError::Minus)
    } else {
        Ok(typed.pieces)
    }
}

/// The one number of a text that may not be below zero.
pub(super) fn one_above_zero(
    text: &str,
    wanted: Measure,
    options: FormatOptions,
) -> Result<(f64, UnitSuffix), ReadError> {
    let typed = typed(text)?;
    if typed.minus {
        return Err(ReadError::Minus);
    }
    one(typed, wanted, options)
}

/// The one number of a text, with its unit.
pub(super) fn one(
    typed: Typed,
    wanted: Measure,
    options: FormatOptions,
) -> Result<(f64, UnitSuffix), ReadError> {
    let [piece] = typed.pieces.as_slice() else {
        return Err(ReadError::TwoNumbers);
    };
    let unit = UnitSuffix::wanted(&piece.unit, wanted)?;
    Ok((number(&piece.number, options.numbers)?, unit))
}
