//! The log of bakes as a record, and as a file.

use crate::sheet::day::{Log, Resets};

use super::bake;
use super::day::maybe_ms;
use super::envelope::{FILE_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, list};
use super::print::Writer;
use super::shelf::moment;
use super::tree::Tree;

pub(super) const KIND: &str = "log";
pub(super) const KNOWN: &[&str] = &["forgotten", "bakes"];

/// Writes the log down as JSON.
#[must_use]
pub fn write_log(log: &Log) -> String {
    body(log, begin(KIND)).to_string()
}

pub(super) fn body<'t>(log: &'t Log, begun: Writer<'t>) -> Tree<'t> {
    written(log, begun).done()
}

/// The log, written but not closed.
pub(super) fn written<'t>(log: &'t Log, begun: Writer<'t>) -> Writer<'t> {
    let resets = &log.resets;
    let forgotten = Writer::new()
        .maybe("friction_ms", maybe_ms(resets.friction))
        .maybe("losses_ms", maybe_ms(resets.losses))
        .maybe("rises_ms", maybe_ms(resets.rises))
        .maybe("oven_ms", maybe_ms(resets.oven));
    begun
        .tree("forgotten", forgotten.done())
        .list("bakes", log.bakes().iter().map(bake::write))
}

/// Reads the log from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_log(text: &str) -> Result<Log, RecordError> {
    let tree = open(text, FILE_LIMIT)?;
    read_body(&fields(&tree, KIND, KNOWN)?)
}

pub(super) fn read_body(fields: &Fields) -> Result<Log, RecordError> {
    let bakes = fields.needed("bakes", |tree| list(tree, Log::MOST, bake::read))?;
    let resets = fields.maybe("forgotten", read_resets)?;
    Ok(Log::of(bakes, resets.unwrap_or_default()))
}

pub(super) fn read_resets(tree: &Tree) -> Result<Resets, RecordError> {
    let fields = Fields::of(tree, &["friction_ms", "losses_ms", "rises_ms", "oven_ms"])?;
    Ok(Resets {
        friction: fields.maybe("friction_ms", moment)?,
        losses: fields.maybe("losses_ms", moment)?,
        rises: fields.maybe("rises_ms", moment)?,
        oven: fields.maybe("oven_ms", moment)?,
    })
}
