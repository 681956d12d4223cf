//! A trial in words: what it changes of the formula that is kept.

use super::manner::Manner;
use super::{name, write};
use crate::engine::formula::{Compared, Form, Formula, LinePair};
use crate::sheet::Sheet;
use crate::words::say;

/// What a trial changes: "Water in Scalded paste, 150 g → 160 g"; how many things, where it is
/// more than one.
#[must_use]
pub fn changed(kept: &Sheet, tried: &Sheet, manner: Manner) -> String {
    let compared = Compared::of(&kept.formula, &tried.formula, Form::AsWritten);
    let moved: Vec<&LinePair> = compared
        .lines
        .iter()
        .filter(|pair| pair.sides.old != pair.sides.new)
        .collect();
    match moved.as_slice() {
        [] if kept == tried => say!("nothing is changed yet").to_owned(),
        [] => say!("the formula’s weights are as they were").to_owned(),
        [pair] => one(pair, &kept.formula, &tried.formula, manner),
        several => say!("{} ingredients changed", several.len()),
    }
}

fn one(pair: &LinePair, kept: &Formula, tried: &Formula, manner: Manner) -> String {
    let line = match (pair.new_at, pair.old_at) {
        (Some(at), _) => tried.line(at),
        (None, Some(at)) => kept.line(at),
        (None, None) => None,
    };
    let food = line
        .map(|line| name::food_short(&line.food))
        .unwrap_or_default();
    let old = write::mass(pair.sides.old, manner);
    let new = write::mass(pair.sides.new, manner);
    say!(
        "{food} in {}, {}",
        food,
        name::stream_kind(pair.kind).to_lowercase(),
        write::from_to(&old, &new)
    )
}
