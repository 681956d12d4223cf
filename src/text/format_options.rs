//! `FormatOptions`: how figures are shown and read on this device.

use super::unit::Units;
use crate::sheet::Language;

/// How a number is punctuated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NumberStyle {
    /// Between the whole and its parts: a point or a comma.
    pub decimal: char,
    /// Between thousands, where there is anything.
    pub group: Option<char>,
}

impl Default for NumberStyle {
    fn default() -> Self {
        Self {
            decimal: '.',
            group: Some(','),
        }
    }
}

/// How figures are shown and read on this device: the browser's punctuation, the user's units.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct FormatOptions {
    /// How a number is punctuated.
    pub numbers: NumberStyle,
    /// Which units are shown, and meant when none is typed.
    pub units: Units,
    /// The language, so that what is written in it is written anew in another.
    pub language: Language,
}
