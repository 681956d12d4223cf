//! A square code as a drawing.

use std::fmt::Write;

use super::square_code::SquareCode;

/// The code as an SVG picture with its quiet margin, dark squares in one path.
#[must_use]
pub fn svg(code: &SquareCode) -> String {
    let whole = code.side + 2 * SquareCode::MARGIN;
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {whole} {whole}\" \
         shape-rendering=\"crispEdges\"><path fill=\"#fff\" d=\"M0 0h{whole}v{whole}H0z\"/>\
         <path d=\"{}\"/></svg>",
        path(code)
    )
}

/// Runs of dark squares, row by row.
fn path(code: &SquareCode) -> String {
    let mut path = String::new();
    for row in 0..code.side {
        let mut column = 0;
        while column < code.side {
            let begins = column;
            while code.is_dark(column, row) {
                column += 1;
            }
            let length = column - begins;
            if length > 0 {
                let (x, y) = (begins + SquareCode::MARGIN, row + SquareCode::MARGIN);
                // Writing to a text never fails.
                let _ = write!(path, "M{x} {y}h{length}v1h-{length}z");
            } else {
                column += 1;
            }
        }
    }
    path
}
