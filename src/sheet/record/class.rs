//! What is wanted of a class, as a record; what is not there is as usual.

use crate::engine::class::{ClassSettings, OvenSettings};

use super::batch::count;
use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, mass, minutes, whole};
use super::print::Writer;
use super::tree::Tree;

const KIND: &str = "class";
pub(super) const KNOWN: &[&str] = &["students", "at_bench", "loaves", "loaf_g", "shown", "oven"];

/// Writes what is wanted of a class down as JSON.
#[must_use]
pub fn write_class(settings: &ClassSettings) -> String {
    body(settings, begin(KIND)).to_string()
}

pub(super) fn body<'t>(settings: &ClassSettings, begun: Writer<'t>) -> Tree<'t> {
    let oven = Writer::new()
        .number("places", settings.oven.places.get())
        .number("bake_min", settings.oven.bake.minutes())
        .number("between_min", settings.oven.between.minutes());
    begun
        .number("students", settings.students.get())
        .number("at_bench", settings.at_bench.get())
        .number("loaves", settings.loaves.get())
        .number("loaf_g", settings.loaf.grams())
        .number("shown", settings.shown)
        .tree("oven", oven.done())
        .done()
}

/// Reads what is wanted of a class from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_class(text: &str) -> Result<ClassSettings, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    read_body(&fields(&tree, KIND, KNOWN)?)
}

pub(super) fn read_body(fields: &Fields) -> Result<ClassSettings, RecordError> {
    let usual = ClassSettings::default();
    let shown = |tree: &Tree| whole(tree, 0, u32::from(u16::MAX));
    let shown = fields.maybe("shown", shown)?;
    Ok(ClassSettings {
        students: fields.maybe("students", count)?.unwrap_or(usual.students),
        at_bench: fields.maybe("at_bench", count)?.unwrap_or(usual.at_bench),
        loaves: fields.maybe("loaves", count)?.unwrap_or(usual.loaves),
        loaf: fields.maybe("loaf_g", mass)?.unwrap_or(usual.loaf),
        shown: shown.map_or(usual.shown, |shown| {
            u16::try_from(shown).unwrap_or(u16::MAX)
        }),
        oven: fields.maybe("oven", read_oven)?.unwrap_or(usual.oven),
    })
}

fn read_oven(tree: &Tree) -> Result<OvenSettings, RecordError> {
    let fields = Fields::of(tree, &["places", "bake_min", "between_min"])?;
    let usual = ClassSettings::default().oven;
    Ok(OvenSettings {
        places: fields.maybe("places", count)?.unwrap_or(usual.places),
        bake: fields.maybe("bake_min", minutes)?.unwrap_or(usual.bake),
        between: fields
            .maybe("between_min", minutes)?
            .unwrap_or(usual.between),
    })
}
