//! A bake in a record: of the log, or under way on the bench.

use crate::sheet::Kitchen;
use crate::sheet::day::{Bake, DoneStep};
use crate::sheet::{Sheet, plain};

use super::day::{maybe_ms, read_step, write_step};
use super::error::RecordError;
use super::fields::{Fields, list, short, temperature, truth};
use super::observation;
use super::print::Writer;
use super::shelf::{id, moment};
use super::tree::Tree;

const KNOWN: &[&str] = &[
    "id", "formula", "name", "kitchen", "began_ms", "room_c", "noted", "steps", "note", "photo",
];

pub(super) fn write(bake: &Bake) -> Tree<'_> {
    let begun = Writer::new().text("id", bake.id.as_text());
    match &bake.formula {
        Some(formula) => begun.text("formula", formula.as_text()),
        None => begun,
    }
    .text("name", plain::name(&bake.name, Sheet::NAME_LENGTH))
    .text("kitchen", plain::name(&bake.kitchen, Kitchen::NAME_LENGTH))
    .number("began_ms", bake.began.milliseconds())
    .maybe("room_c", bake.room.map(|at| at.celsius()))
    .tree("noted", observation::write(&bake.noted))
    .list("steps", bake.steps.iter().map(write_done))
    .text("note", plain::note(&bake.note, Bake::NOTE_LENGTH))
    .tree("photo", Tree::Truth(bake.photo))
    .done()
}

fn write_done<'t>(done: &DoneStep) -> Tree<'t> {
    write_step(done.step, Writer::new())
        .number("began_ms", done.began.milliseconds())
        .maybe("ended_ms", maybe_ms(done.ended))
        .done()
}

pub(super) fn read(tree: &Tree) -> Result<Bake, RecordError> {
    let fields = Fields::of(tree, KNOWN)?;
    let name = |tree: &Tree| short(tree, Sheet::NAME_LENGTH, plain::name);
    let kitchen = |tree: &Tree| short(tree, Kitchen::NAME_LENGTH, plain::name);
    let note = |tree: &Tree| short(tree, Bake::NOTE_LENGTH, plain::note);
    let steps = |tree: &Tree| list(tree, Bake::MOST_STEPS, read_done);
    Ok(Bake {
        id: fields.needed("id", id)?,
        formula: fields.maybe("formula", id)?,
        name: fields.maybe("name", name)?.unwrap_or_default(),
        kitchen: fields.maybe("kitchen", kitchen)?.unwrap_or_default(),
        began: fields.needed("began_ms", moment)?,
        room: fields.maybe("room_c", temperature)?,
        noted: fields
            .maybe("noted", observation::read)?
            .unwrap_or_default(),
        steps: fields.maybe("steps", steps)?.unwrap_or_default(),
        note: fields.maybe("note", note)?.unwrap_or_default(),
        photo: fields.maybe("photo", truth)?.unwrap_or_default(),
    })
}

fn read_done(tree: &Tree) -> Result<DoneStep, RecordError> {
    let fields = Fields::of(tree, &["work", "of", "began_ms", "ended_ms"])?;
    Ok(DoneStep {
        step: read_step(&fields)?,
        began: fields.needed("began_ms", moment)?,
        ended: fields.maybe("ended_ms", moment)?,
    })
}
