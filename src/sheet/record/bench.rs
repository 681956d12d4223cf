//! The bake under way as a record.

use crate::engine::formula::LineAt;
use crate::sheet::day::{Bench, Timer, Weighing};

use super::bake;
use super::day::{read_step, write_step};
use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::{Fields, list, mass, truth, whole};
use super::print::Writer;
use super::shelf::moment;
use super::tree::Tree;

const KIND: &str = "bench";

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
    .done()
    .to_string()
}

fn write_timer<'t>(timer: &Timer) -> Tree<'t> {
    write_step(timer.step, Writer::new())
        .number("ends_ms", timer.ends.milliseconds())
        .tree("heard", Tree::Truth(timer.heard))
        .done()
}

fn write_weighing<'t>(weighing: &Weighing) -> Tree<'t> {
    let place = |at: usize| u16::try_from(at).unwrap_or(u16::MAX);
    Writer::new()
        .number("stream", place(weighing.at.stream))
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
    let fields = fields(&tree, KIND, &["bake", "at", "timers", "weighed"])?;
    let timers = fields.maybe("timers", |tree| list(tree, Bench::MOST_TIMERS, read_timer))?;
    let weighed = fields.maybe("weighed", |tree| {
        list(tree, Bench::MOST_WEIGHINGS, read_weighing)
    })?;
    Ok(Bench {
        bake: fields.needed("bake", bake::read)?,
        at: fields.maybe("at", |tree| read_step(&Fields::of(tree, &["work", "of"])?))?,
        timers: timers.unwrap_or_default(),
        weighed: weighed.unwrap_or_default(),
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

fn read_weighing(tree: &Tree) -> Result<Weighing, RecordError> {
    let fields = Fields::of(tree, &["stream", "line", "mass_g"])?;
    let place = |tree: &Tree| {
        let place = whole(tree, 0, u32::from(u16::MAX))?;
        Ok(usize::try_from(place).unwrap_or(usize::MAX))
    };
    Ok(Weighing {
        at: LineAt {
            stream: fields.needed("stream", place)?,
            line: fields.needed("line", place)?,
        },
        mass: fields.maybe("mass_g", mass)?,
    })
}
