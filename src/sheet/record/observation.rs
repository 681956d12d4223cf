//! What a bake noted, in a record; none of it need be there.

use crate::engine::learn::{MeasuredDuration, Observation, Weighed};
use crate::engine::quantity::{Minutes, Temperature};

use super::error::RecordError;
use super::fields::{Fields, mass, minutes, temperature};
use super::print::Writer;
use super::tree::Tree;

const KNOWN: &[&str] = &[
    "unmixed_c",
    "dough_c",
    "mixing_min",
    "bowl",
    "oven_loss",
    "bulk",
    "proof",
    "bake",
];

pub(super) fn write(noted: &Observation) -> Tree<'static> {
    let degrees = |at: Option<Temperature>| at.map(Temperature::celsius);
    let mut begun = Writer::new()
        .maybe("unmixed_c", degrees(noted.unmixed))
        .maybe("dough_c", degrees(noted.dough))
        .maybe("mixing_min", noted.mixing.map(Minutes::minutes));
    for (key, weighed) in [("bowl", noted.bowl), ("oven_loss", noted.oven_loss)] {
        if let Some(weighed) = weighed {
            let both = Writer::new()
                .number("before_g", weighed.before.grams())
                .number("after_g", weighed.after.grams());
            begun = begun.tree(key, both.done());
        }
    }
    let times = [
        ("bulk", noted.bulk),
        ("proof", noted.proof),
        ("bake", noted.bake),
    ];
    for (key, took) in times {
        if let Some(took) = took {
            let both = Writer::new()
                .number("expected_min", took.expected.minutes())
                .number("took_min", took.minutes.minutes());
            begun = begun.tree(key, both.done());
        }
    }
    begun.done()
}

pub(super) fn read(tree: &Tree) -> Result<Observation, RecordError> {
    let fields = Fields::of(tree, KNOWN)?;
    Ok(Observation {
        unmixed: fields.maybe("unmixed_c", temperature)?,
        dough: fields.maybe("dough_c", temperature)?,
        mixing: fields.maybe("mixing_min", minutes)?,
        bowl: fields.maybe("bowl", read_weighed)?,
        oven_loss: fields.maybe("oven_loss", read_weighed)?,
        bulk: fields.maybe("bulk", read_took)?,
        proof: fields.maybe("proof", read_took)?,
        bake: fields.maybe("bake", read_took)?,
    })
}

fn read_weighed(tree: &Tree) -> Result<Weighed, RecordError> {
    let fields = Fields::of(tree, &["before_g", "after_g"])?;
    Ok(Weighed {
        before: fields.needed("before_g", mass)?,
        after: fields.needed("after_g", mass)?,
    })
}

fn read_took(tree: &Tree) -> Result<MeasuredDuration, RecordError> {
    let fields = Fields::of(tree, &["expected_min", "took_min"])?;
    Ok(MeasuredDuration {
        expected: fields.needed("expected_min", minutes)?,
        minutes: fields.needed("took_min", minutes)?,
    })
}
