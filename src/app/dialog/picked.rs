//! Puts a picked ingredient into the formula: as a new line, or in place of another ingredient.

use leptos::prelude::GetUntracked;

use crate::app::browser::live_region::announce;
use crate::app::state::{AppState, PickFor};
use crate::engine::formula::{Hold, Line, LineAt, swap};
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;
use crate::text::ErrorText;

/// Changes the formula as the picker was asked to.
pub fn use_picked(state: AppState, pick_for: PickFor, food: Food) {
    match pick_for {
        PickFor::NewLine(part) => add(state, part, food),
        PickFor::Swap(at) => replace(state, at, food),
    }
}

/// Adds a line without a weight.
fn add(state: AppState, part: usize, food: Food) {
    state.edit(|sheet| {
        if sheet.formula.has_room()
            && let Some(own) = sheet.formula.parts.get_mut(part)
        {
            own.lines.push(Line::new(food, Mass::ZERO));
        }
    });
}

/// Replaces the ingredient of a line, with the same weight.
fn replace(state: AppState, at: LineAt, food: Food) {
    let changed = state.change("swap", |formula| swap(formula, at, food, Hold::Weight));
    if let Err(error) = changed {
        announce(&error.sentence(state.options.get_untracked()));
    }
    state.reset_inputs();
}
