//! A filling or a syrup to begin with.

use crate::engine::chocolate::{ChocolateError, usual_filling, usual_syrup};
use crate::engine::formula::{Part, PartKind};
use crate::sheet::Sheet;

/// Returns a syrup for a topping, a filling for any other kind, in proportion to the sheet's dough.
/// `None` where the ingredients it is made of are not listed.
///
/// # Errors
/// As [`usual_syrup`].
pub fn usual_part(
    sheet: &Sheet,
    kind: PartKind,
    name: String,
) -> Result<Option<Part>, ChocolateError> {
    let dough = sheet.formula.dough();
    if kind == PartKind::Topping {
        usual_syrup(dough, name, sheet.batch.syrup_at)
    } else {
        Ok(usual_filling(dough, name))
    }
}
