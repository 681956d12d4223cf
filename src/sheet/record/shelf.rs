//! The index of the shelf as a record.

use crate::engine::quantity::Mass;
use crate::sheet::enum_names::spelt;
use crate::sheet::shelf::{Shelf, ShelfEntry, Slot, Standing};
use crate::sheet::{Id, Moment, Sheet, plain};

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::{RecordError, RecordFault};
use super::fields::{Fields, list, mass, number, short, text, word};
use super::print::Writer;
use super::tree::Tree;

const KIND: &str = "shelf";
const KNOWN: &[&str] = &["id", "name", "dough_g", "changed_ms", "place", "since_ms"];

const PLACES: &[(Standing, &str)] = &[
    (Standing::Shelved, "shelf"),
    (Standing::Binned, "bin"),
    (Standing::Gone, "gone"),
];

/// Writes the index down as JSON. Of formulas removed for good only the last few are named.
#[must_use]
pub fn write_shelf(shelf: &Shelf) -> String {
    let forgotten = forgotten_before(shelf);
    let kept = shelf
        .slots
        .iter()
        .filter(|slot| slot.standing != Standing::Gone || slot.since.milliseconds() > forgotten);
    begin(KIND)
        .list("entries", kept.map(write_slot))
        .done()
        .to_string()
}

/// The moment up to which removed formulas are no longer remembered.
fn forgotten_before(shelf: &Shelf) -> f64 {
    let gone = shelf
        .slots
        .iter()
        .filter(|slot| slot.standing == Standing::Gone);
    let mut moments: Vec<f64> = gone.map(|slot| slot.since.milliseconds()).collect();
    moments.sort_by(|one, other| other.total_cmp(one));
    moments.get(Shelf::MOST_GONE).copied().unwrap_or(-1.0)
}

fn write_slot(slot: &Slot) -> Tree<'_> {
    let entry = &slot.entry;
    Writer::new()
        .text("id", entry.id.as_text())
        .text("name", entry.name.as_str())
        .number("dough_g", entry.dough.grams())
        .number("changed_ms", entry.changed.milliseconds())
        .text("place", spelt(slot.standing, PLACES))
        .number("since_ms", slot.since.milliseconds())
        .done()
}

/// Reads the index from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong; the index can then be made anew with
/// [`Shelf::repair`].
pub fn read_shelf(text: &str) -> Result<Shelf, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    let fields = fields(&tree, KIND, &["entries"])?;
    let mut slots = fields.needed("entries", |tree| list(tree, Shelf::MOST, read_slot))?;
    slots.sort_by(|one, other| one.entry.id.cmp(&other.entry.id));
    let doubled = slots
        .windows(2)
        .any(|pair| matches!(pair, [one, other] if one.entry.id == other.entry.id));
    if doubled {
        return Err(RecordError::from(RecordFault::Twice).inside("entries"));
    }
    Ok(Shelf { slots })
}

fn read_slot(tree: &Tree) -> Result<Slot, RecordError> {
    let fields = Fields::of(tree, KNOWN)?;
    let entry = ShelfEntry {
        id: fields.needed("id", id)?,
        name: fields.needed("name", |tree| short(tree, Sheet::NAME_LENGTH, plain::name))?,
        // A sum, kept for show only: a hundred lines of a tonne may pass what a weight may be.
        dough: fields.needed("dough_g", mass).unwrap_or(Mass::ZERO),
        changed: fields.needed("changed_ms", moment)?,
    };
    Ok(Slot {
        entry,
        standing: fields.needed("place", |tree| word(tree, PLACES))?,
        since: fields.needed("since_ms", moment)?,
    })
}

pub(super) fn id(tree: &Tree) -> Result<Id, RecordError> {
    Id::from_text(text(tree)?).ok_or_else(|| RecordFault::BadId.into())
}

pub(super) fn moment(tree: &Tree) -> Result<Moment, RecordError> {
    Ok(Moment::from_milliseconds(number(tree)?)?)
}
