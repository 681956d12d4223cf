//! A file of formulas: one, or all of them with what is kept beside; nothing is lost on the way.

use crate::sheet::{Id, Moment, Sheet, Workspace};

use super::envelope::{self, FILE_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, list};
use super::print::Writer;
use super::shelf::{id, moment};
use super::tree::Tree;
use super::{sheet, workspace};

const KIND: &str = "formulas";
const MOST: usize = crate::sheet::Shelf::MOST;

/// One formula in a file.
#[derive(Clone, Debug, PartialEq)]
pub struct FormulaInFile {
    /// The id it was kept under.
    pub id: Option<Id>,
    /// When it was last changed.
    pub changed: Option<Moment>,
    /// When it was put into the bin, if it was.
    pub binned: Option<Moment>,
    /// The formula.
    pub sheet: Sheet,
}

/// What a file held.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Opened {
    /// The formulas that could be read.
    pub formulas: Vec<FormulaInFile>,
    /// What is kept beside them.
    pub beside: Workspace,
    /// What is wrong with the others, one by one.
    pub refused: Vec<RecordError>,
}

/// Writes formulas, and what is kept beside them, to the text of a file.
#[must_use]
pub fn write_file(formulas: &[FormulaInFile], beside: &Workspace) -> String {
    let begun = begin(KIND).list("formulas", formulas.iter().map(write_one));
    workspace::write(beside, begun).done().to_string()
}

fn write_one(filed: &FormulaInFile) -> Tree<'_> {
    let begun = match &filed.id {
        Some(id) => Writer::new().text("id", id.as_text()),
        None => Writer::new(),
    };
    begun
        .maybe("changed_ms", filed.changed.map(Moment::milliseconds))
        .maybe("binned_ms", filed.binned.map(Moment::milliseconds))
        .tree("sheet", sheet::body(&filed.sheet, Writer::new()))
        .done()
}

/// Reads a file of formulas, or the record of a single one. A formula that cannot be read does
/// not stand in the way of the others.
///
/// # Errors
/// [`RecordError`] when nothing of the file can be read.
pub fn read_file(text: &str) -> Result<Opened, RecordError> {
    let tree = open(text, FILE_LIMIT)?;
    if envelope::kind(&tree)? == sheet::KIND {
        let sheet = sheet::read(&tree)?;
        let one = FormulaInFile {
            id: None,
            changed: None,
            binned: None,
            sheet,
        };
        return Ok(Opened {
            formulas: vec![one],
            ..Opened::default()
        });
    }
    let mut known = vec!["formulas"];
    known.extend(workspace::KEYS);
    let fields = fields(&tree, KIND, &known)?;
    let read = fields.needed("formulas", |tree| {
        list(tree, MOST, |tree| Ok(read_one(tree)))
    })?;
    let mut opened = Opened::default();
    for (at, one) in read.into_iter().enumerate() {
        match one {
            Ok(filed) => opened.formulas.push(filed),
            Err(error) => opened.refused.push(error.item(at).inside("formulas")),
        }
    }
    let (beside, refused) = workspace::read(&fields);
    opened.beside = beside;
    opened.refused.extend(refused);
    Ok(opened)
}

fn read_one(tree: &Tree) -> Result<FormulaInFile, RecordError> {
    let fields = Fields::of(tree, &["id", "changed_ms", "binned_ms", "sheet"])?;
    Ok(FormulaInFile {
        id: fields.maybe("id", id)?,
        changed: fields.maybe("changed_ms", moment)?,
        binned: fields.maybe("binned_ms", moment)?,
        sheet: fields.needed("sheet", |tree| {
            sheet::read_body(&Fields::of(tree, sheet::KNOWN)?)
        })?,
    })
}
