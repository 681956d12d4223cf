//! Text to what is bought: money, and room for dough.

use super::quantity::one_above_zero;
use super::{Limit, Measure, ReadError};
use crate::engine::quantity::{Factor, Money, SpecificVolume};
use crate::text::format_options::FormatOptions;

/// Reads money: "3", "12,40". What it is called is typed elsewhere.
///
/// # Errors
/// [`ReadError`] saying what is in the way.
pub fn money(text: &str, options: FormatOptions) -> Result<Money, ReadError> {
    let (figure, _) = one_above_zero(text, Measure::Times, options)?;
    Money::from_amount(figure).map_err(|_| ReadError::TooManyDigits { most: 9 })
}

/// Reads the room for a gram of dough, cm³/g: "3.9".
///
/// # Errors
/// [`ReadError`] saying what is in the way.
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
