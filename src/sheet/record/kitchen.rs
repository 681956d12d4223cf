//! The kitchen as a record.

use crate::engine::quantity::{Division, Mass};
use crate::sheet::kitchen::{Kitchen, Scales};

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, mass};
use super::print::Writer;
use super::tree::Tree;

const KIND: &str = "kitchen";
pub(super) const KNOWN: &[&str] = &["scales"];

/// Writes the kitchen down as JSON.
#[must_use]
pub fn write_kitchen(kitchen: &Kitchen) -> String {
    body(kitchen, begin(KIND)).to_string()
}

/// Reads the kitchen from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_kitchen(text: &str) -> Result<Kitchen, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    read_body(&fields(&tree, KIND, KNOWN)?)
}

pub(super) fn body<'t>(kitchen: &Kitchen, begun: Writer<'t>) -> Tree<'t> {
    let scales = Writer::new()
        .number("main_g", kitchen.scales.main.grams())
        .maybe("pocket_g", kitchen.scales.pocket.map(Mass::grams));
    begun.tree("scales", scales.done()).done()
}

pub(super) fn read_body(fields: &Fields) -> Result<Kitchen, RecordError> {
    Ok(Kitchen {
        scales: fields.needed("scales", read_scales)?,
    })
}

fn read_scales(tree: &Tree) -> Result<Scales, RecordError> {
    let fields = Fields::of(tree, &["main_g", "pocket_g"])?;
    Ok(Scales {
        main: fields.needed("main_g", division)?,
        pocket: fields.maybe("pocket_g", division)?,
    })
}

/// A division that scales are made with.
fn division(tree: &Tree) -> Result<Mass, RecordError> {
    Ok(Division::from_mass(mass(tree)?)?.mass())
}
