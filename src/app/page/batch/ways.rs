//! What was asked for in each way, so that changing the way loses nothing that was typed.

use std::collections::BTreeMap;

use leptos::prelude::*;

use super::BatchAnswers;
use super::results::scale_sheet;
use crate::app::state::AppState;
use crate::engine::batch::{BatchTarget, Way};
use crate::sheet::{Id, Sheet};

/// Texts that cannot be read, by box, with what is in the way.
type Unread = BTreeMap<String, (String, String)>;

/// What was asked for in each way.
#[derive(Clone, Default)]
pub struct Ways {
    /// The formula this belongs to.
    of: Option<Id>,
    asked: BTreeMap<Way, BatchTarget>,
    invalid_inputs: BTreeMap<Way, Unread>,
}

/// What the ids of the boxes of all ways begin with.
const BOXES: &str = "wanted-";

/// Asks for the batch in another way: as it was last asked for in that way, else for as much as
/// there is now.
pub fn choose(state: AppState, answers: BatchAnswers, way: Way) {
    let mut sheet = state.sheet();
    let before = sheet.batch.wanted;
    let id = state.open_id.get_untracked();
    let mut ways = answers.ways.get_untracked();
    if ways.of != id {
        ways = Ways {
            of: id,
            ..Ways::default()
        };
    }
    ways.asked.insert(before.way(), before);
    let asked = ways.asked.get(&way).copied();
    let Some(wanted) = asked
        .filter(|asked| current(&sheet, *asked))
        .or_else(|| as_now(&sheet, way))
    else {
        return;
    };
    let mut unread = state.invalid_inputs.get_untracked();
    let aside = unread
        .extract_if(.., |id, _| id.starts_with(BOXES))
        .collect();
    ways.invalid_inputs.insert(before.way(), aside);
    unread.extend(ways.invalid_inputs.remove(&way).unwrap_or_default());
    state.invalid_inputs.set(unread);
    answers.ways.set(ways);
    sheet.batch.wanted = wanted;
    state.put(sheet, None);
}

/// Whether the formula can still be asked for in this way.
fn current(sheet: &Sheet, wanted: BatchTarget) -> bool {
    let asked = with(sheet, wanted);
    scale_sheet(&asked).is_ok()
}

/// As much as there is now, asked for in another way.
fn as_now(sheet: &Sheet, way: Way) -> Option<BatchTarget> {
    scale_sheet(sheet)
        .or_else(|_| scale_sheet(&with(sheet, BatchTarget::default())))
        .ok()
        .map(|scaled| scaled.asked_as(way))
}

fn with(sheet: &Sheet, wanted: BatchTarget) -> Sheet {
    let mut asked = sheet.clone();
    asked.batch.wanted = wanted;
    asked
}
