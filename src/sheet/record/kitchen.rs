//! The kitchen as a record.

use crate::engine::quantity::Mass;
use crate::sheet::kitchen::{Kitchen, Scales};

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, number};
use super::print::Writer;
use super::tree::Tree;

const KIND: &str = "kitchen";

/// Writes the kitchen down as JSON.
#[must_use]
pub fn write_kitchen(kitchen: &Kitchen) -> String {
    write(kitchen).to_string()
}

/// Reads the kitchen from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_kitchen(text: &str) -> Result<Kitchen, RecordError> {
    read(&open(text, RECORD_LIMIT)?)
}

pub(super) fn write(kitchen: &Kitchen) -> Tree<'static> {
    let scales = Writer::new()
        .number("main_g", kitchen.scales.main.grams())
        .maybe("pocket_g", kitchen.scales.pocket.map(Mass::grams));
    begin(KIND).tree("scales", scales.done()).done()
}

pub(super) fn read(tree: &Tree) -> Result<Kitchen, RecordError> {
    let fields = fields(tree, KIND, &["scales"])?;
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

fn division(tree: &Tree) -> Result<Mass, RecordError> {
    Ok(Scales::division(number(tree)?)?)
}
