//! The square code of a link: what is drawn, or what to leave out so that it can be.

use crate::sheet::interchange::{LinkPart, SquareCode, SquareCodeError, shorter, square_code, svg};
use crate::sheet::{Sheet, link};
use crate::words::{Trouble, manner::Manner, name, say, write};

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
        /// What can be left out, with a sentence for each.
        leave_out: Vec<(LinkPart, String)>,
    },
}

/// The square code of a sheet whose link is `whole`.
#[must_use]
pub fn code(sheet: &Sheet, whole: &str, manner: Manner) -> CodeView {
    match square_code(whole) {
        Ok(code) => CodeView::Drawn {
            svg: svg(&code),
            says: say!(
                "A square code that holds the link to “{}”. A phone’s camera opens it.",
                sheet.name
            ),
            code,
        },
        Err(error) => CodeView::TooLong {
            says: error.sentence(manner),
            leave_out: leave_out(sheet, whole, &error, manner),
        },
    }
}

fn leave_out(
    sheet: &Sheet,
    whole: &str,
    error: &SquareCodeError,
    manner: Manner,
) -> Vec<(LinkPart, String)> {
    let SquareCodeError::TooLong { most, .. } = error else {
        return Vec::new();
    };
    // The address before the formula stays as it is.
    let before = link::write(sheet).map_or(0, |text| whole.len().saturating_sub(text.len()));
    let found = shorter(sheet, most.saturating_sub(before));
    let told = found.into_iter().map(|one| {
        let saves = write::count(u32::try_from(one.saves).unwrap_or(u32::MAX), manner);
        let enough = if one.enough {
            say!(", which is enough")
        } else {
            ""
        };
        let part = name::link_part(one.part);
        (
            one.part,
            say!(
                "Leaving out {part} saves {saves} characters{enough}.",
                part,
                saves,
                enough
            ),
        )
    });
    told.collect()
}
