//! The steps of a formula in sentences, stream by stream, each with the caution that belongs to it.

use crate::engine::formula::{Stream, StreamKind};
use crate::sheet::Sheet;
use crate::words::{
    caution::{Step, safety},
    manner::Manner,
    picture::listed,
    say,
};

/// What to do with each stream, in the order of the formula: the work, then the usual cautions.
#[must_use]
pub fn steps(sheet: &Sheet, manner: Manner) -> Vec<Vec<String>> {
    let streams = sheet.formula.streams.iter().zip(work(sheet));
    streams
        .map(|(stream, mut steps)| {
            let cautions = of_kind(stream.kind).iter();
            steps.extend(cautions.map(|step| safety(*step, manner).sentence()));
            steps
        })
        .collect()
}

/// What to do with each stream, without the cautions.
pub(super) fn work(sheet: &Sheet) -> Vec<Vec<String>> {
    let ahead =
        |stream: &&Stream| matches!(stream.kind, StreamKind::Paste | StreamKind::Preferment);
    let streams = || sheet.formula.streams.iter();
    let ahead: Vec<String> = streams()
        .filter(ahead)
        .map(|stream| stream.name.clone())
        .collect();
    streams()
        .map(|stream| of_stream(stream.kind, &ahead))
        .collect()
}

/// Every caution that belongs to one of the streams, each once, in the order of the work.
pub(super) fn cautions(sheet: &Sheet, manner: Manner) -> Vec<String> {
    let wanted = |step: &Step| {
        let mut streams = sheet.formula.streams.iter();
        streams.any(|stream| of_kind(stream.kind).contains(step))
    };
    let all = Step::ALL.into_iter().filter(wanted);
    all.map(|step| safety(step, manner).sentence()).collect()
}

/// The cautions of a kind of stream.
const fn of_kind(kind: StreamKind) -> &'static [Step] {
    match kind {
        StreamKind::Paste => &[Step::Scalding, Step::CoolingPaste],
        StreamKind::Preferment => &[Step::KeepingCold],
        StreamKind::Final => &[Step::Mixing, Step::RawDough, Step::Baking],
        StreamKind::Topping => &[Step::HotChocolate],
        StreamKind::Filling | StreamKind::Wash => &[],
    }
}

fn of_stream(kind: StreamKind, ahead: &[String]) -> Vec<String> {
    match kind {
        StreamKind::Paste => vec![
            say!("Pour the boiling liquid on the flour, stir until no dry spot is left, cover and cool.")
                .to_owned(),
        ],
        StreamKind::Preferment => {
            vec![say!("Mix to a stiff dough, cover, and leave it in the fridge overnight.").to_owned()]
        }
        StreamKind::Final => {
            let mut steps = Vec::new();
            if let Some(list) = listed(ahead) {
                steps.push(say!("Put {list} into the mixer, cold.", list));
            }
            steps.push(
                say!("Mix everything to a smooth, stretchy dough; let it rise, divide, shape, and let \
                 it rise again.")
                    .to_owned(),
            );
            steps.push(say!("Bake until the middle is done by the thermometer.").to_owned());
            steps
        }
        StreamKind::Filling => {
            vec![say!("Share it out among the pieces and close them well.").to_owned()]
        }
        StreamKind::Topping => {
            vec![say!("Stir it smooth and spread or pour it on the bread.").to_owned()]
        }
        StreamKind::Wash => vec![say!("Stir it smooth and brush it on before baking.").to_owned()],
    }
}
