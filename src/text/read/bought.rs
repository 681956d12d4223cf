//! Text to money and tin volume per gram.

use super::quantity::one_above_zero;
use super::{Limit, Measure, ReadError};
use crate::engine::quantity::{Factor, Money, SpecificVolume};
use crate::text::format_options::FormatOptions;

/// Reads money: "3", "12,40". The currency is set elsewhere.
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn money(text: &str, options: FormatOptions) -> Result<Money, ReadError> {
    let (figure, _) = one_above_zero(text, Measure::Times, options)?;
    Money::from_amount(figure).map_err(|_| ReadError::TooManyDigits { most: 9 })
}

/// Reads the tin volume per gram of dough, cm³/g: "3.9".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn room(text: &str, options: FormatOptions) -> Result<SpecificVolume, ReadError> {
    let (figure, _) = one_above_zero(text, Measure::Times, options)?;
    SpecificVolume::from_cubic_centimetres_per_gram(figure).map_err(|out| {
        let limit = |bound: f64| Limit::Times(Factor::from_number(bound).unwrap_or_default());
        if figure > *out.range.end() {
            ReadError::TooLarge {
                most: limit(*out.range.end()),
            }
        } else {
            ReadError::TooSmall {
                least: limit(*out.range.start()),
            }
        }
    })
}
