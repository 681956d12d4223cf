//! The bake under way as a record.

use crate::engine::formula::LineAt;
use crate::engine::plan::{Edit, Plan};
use crate::sheet::day::{Bench, Measured, PlanSnapshot, Timer, Weighing};

use super::bake;
use super::day::{read_edit, read_step, small, write_edit, write_step};
use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, list, mass, minutes, temperature, truth, whole};
use super::print::Writer;
use super::shelf::moment;
use super::tree::Tree;

const KIND: &str = "bench";
const KNOWN: &[&str] = &[
    "bake",
    "at",
    "timers",
    "weighed",
    "promised",
    "measured",
    "edits",
    "bulk_place_c",
    "proof_place_c",
];

/// Writes the bake under way down as JSON.
#[must_use]
pub fn write_bench(bench: &Bench) -> String {
    let begun = begin(KIND).tree("bake", bake::write(&bench.bake));
    match bench.at {
        Some(at) => begun.tree("at", write_step(at, Writer::new()).done()),
        None => begun,
    }
    .list("timers", bench.timers.iter().map(write_timer))
    .list("weighed", bench.weighed.iter().map(write_weighing))
    .maybe_tree("promised", some(&bench.promised, write_promised))
    .maybe_tree("measured", some(&bench.measured, write_measured))
    .maybe_tree("edits", some(&bench.edits, write_edit))
    .maybe("bulk_place_c", bench.bulk_place.map(|at| at.celsius()))
    .maybe("proof_place_c", bench.proof_place.map(|at| at.celsius()))
    .done()
    .to_string()
}

/// A list, where there is anything in it.
fn some<'t, T>(items: &'t [T], write: fn(&'t T) -> Tree<'t>) -> Option<Tree<'t>> {
    (!items.is_empty()).then(|| Tree::List(items.iter().map(write).collect()))
}

fn write_timer<'t>(timer: &Timer) -> Tree<'t> {
    write_step(timer.step, Writer::new())
        .number("ends_ms", timer.ends.milliseconds())
        .tree("heard", Tree::Truth(timer.heard))
        .done()
}

fn write_promised<'t>(promised: &PlanSnapshot) -> Tree<'t> {
    write_step(promised.step, Writer::new())
        .number("begins_ms", promised.begins.milliseconds())
        .number("lasts_min", promised.lasts.minutes())
        .done()
}

fn write_measured<'t>(found: &Measured) -> Tree<'t> {
    write_step(found.step, Writer::new())
        .number("stream", found.part)
        .number("at_c", found.at.celsius())
        .number("when_ms", found.when.milliseconds())
        .done()
}

fn write_weighing<'t>(weighing: &Weighing) -> Tree<'t> {
    let place = |at: usize| u16::try_from(at).unwrap_or(u16::MAX);
    Writer::new()
        .number("stream", place(weighing.at.part))
        .number("line", place(weighing.at.line))
        .maybe("mass_g", weighing.mass.map(|mass| mass.grams()))
        .done()
}

/// Reads the bake under way from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_bench(text: &str) -> Result<Bench, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    let fields = fields(&tree, KIND, KNOWN)?;
    let timers = fields.maybe("timers", |tree| list(tree, Bench::MOST_TIMERS, read_timer))?;
    let weighed = fields.maybe("weighed", |tree| {
        list(tree, Bench::MOST_WEIGHINGS, read_weighing)
    })?;
    let promised = fields.maybe("promised", |tree| list(tree, Plan::MOST, read_promised))?;
    let measured = fields.maybe("measured", |tree| {
        list(tree, Bench::MOST_MEASURED, read_measured)
    })?;
    let edits = fields.maybe("edits", |tree| list(tree, Edit::MOST, read_edit))?;
    Ok(Bench {
        bake: fields.needed("bake", bake::read)?,
        at: fields.maybe("at", |tree| read_step(&Fields::of(tree, &["work", "of"])?))?,
        timers: timers.unwrap_or_default(),
        weighed: weighed.unwrap_or_default(),
        promised: promised.unwrap_or_default(),
        measured: measured.unwrap_or_default(),
        edits: edits.unwrap_or_default(),
        bulk_place: fields.maybe("bulk_place_c", temperature)?,
        proof_place: fields.maybe("proof_place_c", temperature)?,
    })
}

fn read_timer(tree: &Tree) -> Result<Timer, RecordError> {
    let fields = Fields::of(tree, &["work", "of", "ends_ms", "heard"])?;
    Ok(Timer {
        step: read_step(&fields)?,
        ends: fields.needed("ends_ms", moment)?,
        heard: fields.maybe("heard", truth)?.unwrap_or_default(),
    })
}

fn read_promised(tree: &Tree) -> Result<PlanSnapshot, RecordError> {
    let fields = Fields::of(tree, &["work", "of", "begins_ms", "lasts_min"])?;
    Ok(PlanSnapshot {
        step: read_step(&fields)?,
        begins: fields.needed("begins_ms", moment)?,
        lasts: fields.needed("lasts_min", minutes)?,
    })
}

fn read_measured(tree: &Tree) -> Result<Measured, RecordError> {
    let fields = Fields::of(tree, &["work", "of", "stream", "at_c", "when_ms"])?;
    Ok(Measured {
        step: read_step(&fields)?,
        part: fields.needed("stream", small)?,
        at: fields.needed("at_c", temperature)?,
        when: fields.needed("when_ms", moment)?,
    })
}

fn read_weighing(tree: &Tree) -> Result<Weighing, RecordError> {
    let fields = Fields::of(tree, &["stream", "line", "mass_g"])?;
    let place = |tree: &Tree| {
        let place = whole(tree, 0, u32::from(u16::MAX))?;
        Ok(usize::try_from(place).unwrap_or(usize::MAX))
    };
    Ok(Weighing {
        at: LineAt {
            part: fields.needed("stream", place)?,
            line: fields.needed("line", place)?,
        },
        mass: fields.maybe("mass_g", mass)?,
    })
}
