//! Say: a text of the page in the language it is read in.

/// A text in the language that is spoken: `tr!("Weights")` gives `&'static str`.
///
/// With values it fills the places in braces and gives a `String`. The values stand in the order
/// in which the places first appear in the English text; a name in braces is for translators.
macro_rules! say {
    ($text:literal) => {
        $crate::text::language::text($text)
    };
    ($text:literal, $($value:expr),+ $(,)?) => {
        $crate::text::language::filled($text, &[$(&$value),+])
    };
}

/// Marks a text that is kept in English for now and shown through [`told`](super::told).
macro_rules! message {
    ($text:literal) => {
        $text
    };
}

pub(crate) use {message, say};
