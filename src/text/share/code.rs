//! The square code of a link: what is drawn, or why it cannot be.

use crate::sheet::Sheet;
use crate::sheet::interchange::{SquareCode, square_code, svg};
use crate::text::{Trouble, format_options::FormatOptions, tr};

/// The square code of a link.
#[derive(Clone, Debug, PartialEq)]
pub enum CodeView {
    /// It is drawn.
    Drawn {
        /// The code itself.
        code: SquareCode,
        /// As a picture.
        svg: String,
        /// What it is, for who cannot see it.
        says: String,
    },
    /// It is too long to be drawn.
    TooLong {
        /// Why.
        says: String,
    },
}

/// The square code of a sheet whose link is `whole`.
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
