//! The square code of a link, or the reason why there is none.

use crate::sheet::Sheet;
use crate::storage::interchange::{SquareCode, square_code, svg};
use crate::text::{ErrorText, format_options::FormatOptions, tr};

/// The square code of a link.
#[derive(Clone, Debug, PartialEq)]
pub enum CodeView {
    /// A code.
    Drawn {
        /// The code itself.
        code: SquareCode,
        /// Its drawing.
        svg: String,
        /// Its text alternative.
        says: String,
    },
    /// The link is too long for a code.
    TooLong {
        /// The reason, as a sentence.
        says: String,
    },
}

/// Makes the square code of a link.
#[must_use]
pub fn code(sheet: &Sheet, whole: &str, options: FormatOptions) -> CodeView {
    match square_code(whole) {
        Ok(code) => CodeView::Drawn {
            svg: svg(&code),
            says: tr!(
                "A square code that holds the link to “{value}”. A phone’s camera opens it.",
                value = sheet.name
            ),
            code,
        },
        Err(error) => CodeView::TooLong {
            says: error.sentence(options),
        },
    }
}
