//! Told: every result as JSON, each number with its unit in the name.

mod batch;
mod chocolate;
mod class;
mod day;
mod formula;
mod hand_out;
mod heat;
mod working;

use serde_json::{Value, json};
use softcrumb::engine::formula::Formula;
use softcrumb::sheet::link;
use softcrumb::sheet::record::write_sheet;

use crate::asked::{Asked, VERSION};
use crate::error::or_error;
use crate::evaluation::Evaluation;

pub(crate) use working::working;

/// All results for one document.
pub(crate) fn told(asked: &Asked, evaluation: &Evaluation) -> Value {
    json!({
        "worksheet": VERSION,
        "formula": formula::told(evaluation),
        "batch": batch::told(evaluation),
        "chocolate": chocolate::told(evaluation),
        "day": day::told(asked, evaluation),
        "heat": evaluation.heat.as_ref().map(|heat| heat::told(asked, heat)),
        "tin": class::tin(asked, evaluation),
        "nutrition": class::nutrition(asked, evaluation),
        "allergens": class::allergens(asked),
        "shopping": class::shopping(asked, evaluation),
        "class": class::class(asked),
        "hand_out": hand_out::told(asked),
        "recipe": hand_out::recipe(asked),
        "working": working::told(&working(evaluation)),
        "link": or_error(&link::write(&asked.sheet), "", |text| json!(text)),
        "record": write_sheet(&asked.sheet),
    })
}

/// The weights of all lines, part by part, g.
fn weights(formula: &Formula) -> Value {
    let parts = formula.parts.iter();
    let lines = parts.map(|part| part.lines.iter().map(|line| line.mass.grams()));
    json!(lines.map(Iterator::collect::<Vec<f64>>).collect::<Vec<_>>())
}
