//! Puts a picked ingredient into the formula: as a new line, or in place of another ingredient.

use leptos::prelude::GetUntracked;

use crate::app::browser::live_region::announce;
use crate::app::state::AppState;
use crate::engine::formula::{Hold, Line, LineAt, swap};
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;
use crate::text::ErrorText;

/// Adds a line without a weight; returns its place, none where the formula is full.
pub fn add(state: AppState, part: usize, food: Food) -> Option<LineAt> {
    let mut added = None;
    state.edit(|sheet| {
        if sheet.formula.has_room()
            && let Some(own) = sheet.formula.parts.get_mut(part)
        {
            let line = own.lines.len();
            own.lines.push(Line::new(food, Mass::ZERO));
            added = Some(LineAt { part, line });
        }
    });
    added
}

/// Replaces the ingredient of a line, with the same weight.
pub fn replace(state: AppState, at: LineAt, food: Food) {
    state.end_step();
    let changed = state.change("swap", |formula| swap(formula, at, food, Hold::Weight));
    if let Err(error) = changed {
        announce(&error.sentence(state.options.get_untracked()));
    }
    state.end_step();
    state.reset_inputs();
}
