//! Told: every result as JSON, each number with its unit in the name.

mod batch;
mod chocolate;
mod class;
mod day;
mod formula;
mod heat;
mod run;
mod share;
mod working;

use serde_json::{Value, json};
use softcrumb::engine::formula::Formula;
use softcrumb::results::day::ReadyRange;
use softcrumb::storage::Record;
use softcrumb::storage::link;

use crate::asked::{Asked, VERSION};
use crate::error::or_error;
use crate::evaluation::Evaluation;

pub(crate) use working::working;

/// All results for one document.
pub(crate) fn to_json(asked: &Asked, evaluation: &Evaluation) -> Value {
    json!({
        "worksheet": VERSION,
        "formula": formula::to_json(evaluation),
        "batch": batch::to_json(evaluation),
        "chocolate": chocolate::to_json(evaluation),
        "day": day::to_json(asked, evaluation),
        "heat": evaluation.heat.as_ref().map(|heat| heat::to_json(asked, heat)),
        "run": evaluation.heat.as_ref().map(|heat| run::to_json(&heat.run, ready(evaluation))),
        "tin": class::tin(asked, evaluation),
        "nutrition": class::nutrition(asked, evaluation),
        "allergens": class::allergens(asked),
        "shopping": class::shopping(asked, evaluation),
        "class": class::class(asked),
        "hand_out": share::to_json(asked),
        "recipe": share::recipe(asked),
        "working": working::to_json(&working(evaluation)),
        "link": or_error(&link::write(&asked.sheet), "", |text| json!(text)),
        "record": asked.sheet.write(),
    })
}

/// When the bread is ready, where a day was asked and it can be.
fn ready(evaluation: &Evaluation) -> Option<&ReadyRange> {
    let planned = evaluation.day.as_ref()?.as_ref().ok()?;
    planned.ready.as_ref()
}

/// The weights of all lines, part by part, g.
fn weights(formula: &Formula) -> Value {
    let parts = formula.parts.iter();
    let lines = parts.map(|part| part.lines.iter().map(|line| line.mass.grams()));
    json!(lines.map(Iterator::collect::<Vec<f64>>).collect::<Vec<_>>())
}
