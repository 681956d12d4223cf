//! The examples in the language of the page.

use super::language::tr_dynamic;
use crate::sheet::{self, Id, Sheet};

/// Returns the example formulas in the language of the page.
#[must_use]
pub fn examples() -> Vec<(Id, Sheet)> {
    let all = sheet::examples().into_iter();
    all.map(|(id, sheet)| (id, in_words(sheet))).collect()
}

/// Translates the names in an example.
#[must_use]
pub fn in_words(mut sheet: Sheet) -> Sheet {
    sheet.name = tr_dynamic(&sheet.name).into_owned();
    sheet.note = tr_dynamic(&sheet.note).into_owned();
    for part in &mut sheet.formula.parts {
        part.name = tr_dynamic(&part.name).into_owned();
    }
    sheet
}
