//! The envelope of every record: which kind it is, and which version, both first in the text.

use super::error::{RecordError, RecordFault};
use super::fields::{Fields, text, whole};
use super::print::Writer;
use super::tree::Tree;
use super::upgrade::{self, VERSION};

/// The most bytes one record may have.
pub const RECORD_LIMIT: usize = 5_000_000;

/// The most bytes a file of formulas may have: all that a browser's storage can hold.
pub const FILE_LIMIT: usize = 12_000_000;

/// Begins a record.
pub(super) fn begin<'t>(kind: &'static str) -> Writer<'t> {
    Writer::new()
        .text("softcrumb", kind)
        .number("version", VERSION)
}

/// Reads the JSON of a record of at most `most` bytes, upgraded to this release's version.
pub(super) fn open(text: &str, most: usize) -> Result<Tree<'_>, RecordError> {
    let bytes = text.len();
    if bytes > most {
        return Err(RecordFault::TooLarge { bytes, most }.into());
    }
    let text = text.trim_start_matches('\u{feff}');
    if text.trim().is_empty() {
        return Err(RecordFault::Empty.into());
    }
    let damaged = |(line, column)| RecordFault::Damaged { line, column };
    let tree = Tree::parse(text).map_err(damaged)?;
    let version = version(&tree)?;
    upgrade::to_newest(tree, version)
}

/// What kind of record it says it is.
pub(super) fn kind<'t>(tree: &'t Tree<'t>) -> Result<&'t str, RecordError> {
    match field(tree, "softcrumb") {
        Some(Tree::Text(kind)) => Ok(kind),
        _ => Err(RecordFault::NotOurs.into()),
    }
}

/// The fields of a record of this `kind`, of which it may have those `known`.
pub(super) fn fields<'t>(
    tree: &'t Tree<'t>,
    wanted: &str,
    known: &[&'static str],
) -> Result<Fields<'t>, RecordError> {
    let found = kind(tree)?;
    if found != wanted {
        let found = found.chars().take(40).collect();
        return Err(RecordFault::OtherKind { found }.into());
    }
    let mut all = vec!["softcrumb", "version"];
    all.extend(known);
    let fields = Fields::of(tree, &all)?;
    fields.needed("softcrumb", text)?;
    Ok(fields)
}

/// Whether a record says that a newer release has written it: such a one is never overwritten.
///
/// Only the beginning of the text is looked at, so that it can be asked before each keystroke is
/// kept; every release writes kind and version first.
#[must_use]
pub fn is_newer(text: &str) -> bool {
    const BEGINNING: usize = 200;
    let beginning: String = text
        .chars()
        .take(BEGINNING)
        .filter(|character| !character.is_whitespace())
        .collect();
    let digits = beginning
        .split_once("\"version\":")
        .and_then(|(_, behind)| behind.split(|one: char| !one.is_ascii_digit()).next());
    // What is too long for a number is no version of ours.
    digits.is_some_and(|digits| digits.parse::<u32>().is_ok_and(|version| version > VERSION))
}

fn version(tree: &Tree) -> Result<u32, RecordError> {
    kind(tree)?;
    let missing = || RecordError::from(RecordFault::Missing);
    let version = field(tree, "version").ok_or_else(missing);
    version
        .and_then(|tree| whole(tree, 0, u32::MAX))
        .map_err(|error| error.inside("version"))
}

fn field<'t>(tree: &'t Tree<'t>, wanted: &str) -> Option<&'t Tree<'t>> {
    let Tree::Fields(fields) = tree else {
        return None;
    };
    fields
        .iter()
        .find(|(key, _)| key == wanted)
        .map(|(_, value)| value)
}
