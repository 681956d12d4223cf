//! Files in words: what came of taking one in.

use crate::words::say;

/// How many formulas were put onto the shelf.
#[must_use]
pub fn taken_in(formulas: usize) -> String {
    match formulas {
        0 => say!("No formula in this file could be taken in.").to_owned(),
        1 => say!("One formula is on your shelf, and open.").to_owned(),
        many => say!(
            "{many} formulas are on your shelf; the first is open.",
            many
        ),
    }
}
