//! Puts a picked ingredient into the formula: as a new line, or in place of another ingredient.

use leptos::prelude::GetUntracked;

use crate::app::browser::announce::announce;
use crate::app::state::{PickFor, State};
use crate::engine::formula::{Hold, Line, LineAt, swap};
use crate::engine::larder::Food;
use crate::engine::quantity::Mass;
use crate::words::Trouble;

/// Changes the formula as the picker was asked to.
pub fn use_picked(state: State, pick_for: PickFor, food: Food) {
    match pick_for {
        PickFor::NewLine(stream) => add(state, stream, food),
        PickFor::Swap(at) => replace(state, at, food),
    }
}

/// Adds a line without a weight.
fn add(state: State, stream: usize, food: Food) {
    state.edit(|sheet| {
        if sheet.formula.has_room()
            && let Some(own) = sheet.formula.streams.get_mut(stream)
        {
            own.lines.push(Line::new(food, Mass::ZERO));
        }
    });
}

/// Replaces the ingredient of a line and keeps its weight.
fn replace(state: State, at: LineAt, food: Food) {
    let changed = state.change("swap", |formula| swap(formula, at, food, Hold::Weight));
    if let Err(error) = changed {
        announce(&error.sentence(state.manner.get_untracked()));
    }
    state.settle();
}
