//! How wide a text of a chart is, about: the browser measures it only once it is drawn.

use crate::engine::numerics::float_from_usize;

/// The first of the letters that are as wide as they are high.
const SQUARE: char = '\u{2E80}';
/// Mean width of a letter relative to the type size, for the widest of the usual screen fonts, bold.
const LETTER: f64 = 0.6;

/// How wide a text is, for a type size in the same unit.
pub(super) fn text_width(text: &str, size: f64) -> f64 {
    let letters = text.chars().count();
    let square = text.chars().filter(|letter| *letter >= SQUARE).count();
    let plain = letters.saturating_sub(square);
    size * (float_from_usize(square) + LETTER * float_from_usize(plain))
}
