//! One formula with its batch as a record.

use crate::sheet::enum_names::{BREADS, spelt};
use crate::sheet::formula_sheet::Sheet;
use crate::sheet::plain;

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, short, word};
use super::print::Writer;
use super::tree::Tree;
use super::{batch, formula, heat};

pub(super) const KIND: &str = "formula";
pub(super) const KNOWN: &[&str] = &["name", "bread", "formula", "batch", "heat", "note"];

/// Writes a sheet down as JSON.
#[must_use]
pub fn write_sheet(sheet: &Sheet) -> String {
    body(sheet, begin(KIND)).to_string()
}

/// Reads a sheet from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_sheet(text: &str) -> Result<Sheet, RecordError> {
    read(&open(text, RECORD_LIMIT)?)
}

pub(super) fn body<'t>(sheet: &'t Sheet, begun: Writer<'t>) -> Tree<'t> {
    begun
        .text("name", plain::name(&sheet.name, Sheet::NAME_LENGTH))
        .text("bread", spelt(sheet.bread, BREADS))
        .tree("formula", formula::write(&sheet.formula))
        .tree("batch", batch::write(&sheet.batch))
        .tree("heat", heat::write(&sheet.heat))
        .text("note", plain::note(&sheet.note, Sheet::NOTE_LENGTH))
        .done()
}

/// Reads a sheet from a tree whose envelope is already known to be of this version.
pub(super) fn read(tree: &Tree) -> Result<Sheet, RecordError> {
    read_body(&fields(tree, KIND, KNOWN)?)
}

pub(super) fn read_body(fields: &Fields) -> Result<Sheet, RecordError> {
    Ok(Sheet {
        name: fields.needed("name", |tree| short(tree, Sheet::NAME_LENGTH, plain::name))?,
        bread: fields.needed("bread", |tree| word(tree, BREADS))?,
        formula: fields.needed("formula", formula::read)?,
        batch: fields.needed("batch", batch::read)?,
        heat: fields.maybe("heat", heat::read)?.unwrap_or_default(),
        note: fields.needed("note", |tree| short(tree, Sheet::NOTE_LENGTH, plain::note))?,
    })
}
