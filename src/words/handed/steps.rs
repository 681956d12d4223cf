//! The steps of a formula in sentences, stream by stream, each with the caution that belongs to it.

use crate::engine::formula::{Stream, StreamKind};
use crate::sheet::Sheet;
use crate::words::caution::{Step, safety};
use crate::words::manner::Manner;
use crate::words::picture::listed;

/// What to do with each stream, in the order of the formula: sentences, the last of them the
/// usual caution where the step has one.
#[must_use]
pub fn steps(sheet: &Sheet, manner: Manner) -> Vec<Vec<String>> {
    let ahead: Vec<String> = sheet
        .formula
        .streams
        .iter()
        .filter(|stream| matches!(stream.kind, StreamKind::Paste | StreamKind::Preferment))
        .map(|stream| stream.name.clone())
        .collect();
    let streams = sheet.formula.streams.iter();
    streams
        .map(|stream| of_stream(stream, &ahead, manner))
        .collect()
}

fn of_stream(stream: &Stream, ahead: &[String], manner: Manner) -> Vec<String> {
    let caution = |step| safety(step, manner).sentence();
    match stream.kind {
        StreamKind::Paste => vec![
            "Pour the boiling liquid on the flour, stir until no dry spot is left, cover and cool."
                .to_owned(),
            caution(Step::Scalding),
            caution(Step::CoolingPaste),
        ],
        StreamKind::Preferment => vec![
            "Mix to a stiff dough, cover, and leave it in the fridge overnight.".to_owned(),
            caution(Step::KeepingCold),
        ],
        StreamKind::Final => {
            let mut steps = Vec::new();
            if let Some(list) = listed(ahead) {
                steps.push(format!("Put {list} into the mixer, cold."));
            }
            steps.push("Mix everything to a smooth, stretchy dough; let it rise, divide, shape, and let it rise again.".to_owned());
            steps.push("Bake until the middle is done by the thermometer.".to_owned());
            steps.extend([
                caution(Step::Mixing),
                caution(Step::RawDough),
                caution(Step::Baking),
            ]);
            steps
        }
        StreamKind::Filling => {
            vec!["Share it out among the pieces and close them well.".to_owned()]
        }
        StreamKind::Topping => vec![
            "Stir it smooth and spread or pour it on the bread.".to_owned(),
            caution(Step::HotChocolate),
        ],
        StreamKind::Wash => vec!["Stir it smooth and brush it on before baking.".to_owned()],
    }
}
