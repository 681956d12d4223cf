//! A trial as a record: the formula it began from, and the formula as it is tried.

use crate::sheet::{Sheet, Trial};

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::Fields;
use super::print::Writer;
use super::sheet;
use super::tree::Tree;

const KIND: &str = "trial";

/// Writes a trial down as JSON; its steps are not kept.
#[must_use]
pub fn write_trial(trial: &Trial) -> String {
    begin(KIND)
        .tree("base", sheet::body(&trial.base, Writer::new()))
        .tree("tried", sheet::body(trial.steps.now(), Writer::new()))
        .done()
        .to_string()
}

/// Reads a trial from JSON: what it began from, and what is tried.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_trial(text: &str) -> Result<(Sheet, Sheet), RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    let fields = fields(&tree, KIND, &["base", "tried"])?;
    let one = |tree: &Tree| sheet::read_body(&Fields::of(tree, sheet::KNOWN)?);
    Ok((fields.needed("base", one)?, fields.needed("tried", one)?))
}
