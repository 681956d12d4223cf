//! The examples in the language of the page.

use super::language::tr_dynamic;
use super::tr_noop;
use crate::sheet::{self, Id, Sheet};

/// The note of the first example in earlier releases, which links and records still hold: it is read in
/// the language of the page, too.
const _: &str = tr_noop!(
    "Lantern Lane evening class, first week. Scald and preferment the night before; both go into the mixer cold. Ten balls, chocolate inside each, close together in one tin."
);

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
