//! A trial in words: what it changes of the saved formula.

use super::format_options::FormatOptions;
use super::{Shown, format, heat, name};
use crate::engine::formula::{Compared, Form, Formula, LinePair};
use crate::results::run::Run;
use crate::sheet::Sheet;
use crate::text::tr;

/// What a trial changes: "Water in Scalded paste, 150 g → 160 g"; how many things, where it is
/// more than one.
#[must_use]
pub fn changed(saved: &Sheet, tried: &Sheet, options: FormatOptions) -> String {
    let compared = Compared::of(&saved.formula, &tried.formula, Form::AsWritten);
    let moved: Vec<&LinePair> = compared
        .lines
        .iter()
        .filter(|pair| pair.sides.old != pair.sides.new)
        .collect();
    match moved.as_slice() {
        [] if saved == tried => tr!("nothing is changed yet").to_owned(),
        [] => tr!("the formula’s weights are as they were").to_owned(),
        [pair] => one(pair, &saved.formula, &tried.formula, options),
        several => tr!("{value} ingredients changed", value = several.len()),
    }
}

/// What follows from a trial: the name of a figure, and the figure beside the one before.
pub type Follows = (&'static str, Shown);

/// What follows from a trial for the dough's temperature and rise. `before` is the run of the saved
/// formula.
#[must_use]
pub fn follows(now: &Run, before: &Run, options: FormatOptions) -> Vec<Follows> {
    let warmth = |run: &Run| run.mixing.as_ref().ok().map(|mix| mix.dough.temperature);
    let warm = warmth(now).map(|now| {
        let before =
            warmth(before).map(|before| heat::dough_before_and_change(before, now, options));
        Shown::changed(format::near_temperature(now, options), before)
    });
    let rise = |run: &Run| {
        let risen = run.rises.bulk.as_ref().ok();
        risen.map(|risen| format::minutes(risen.due, options))
    };
    let risen = rise(now).map(|now| Shown::beside(now, rise(before)));
    let warm = warm.map(|shown| (tr!("Dough temperature"), shown));
    let risen = risen.map(|shown| (tr!("Bulk rise"), shown));
    warm.into_iter().chain(risen).collect()
}

fn one(pair: &LinePair, saved: &Formula, tried: &Formula, options: FormatOptions) -> String {
    let line = match (pair.new_at, pair.old_at) {
        (Some(at), _) => tried.line(at),
        (None, Some(at)) => saved.line(at),
        (None, None) => None,
    };
    let food = line
        .map(|line| name::food_short(&line.food))
        .unwrap_or_default();
    let old = format::mass(pair.sides.old, options);
    let new = format::mass(pair.sides.new, options);
    tr!(
        "{food} in {first}, {second}",
        food = food,
        first = name::part_kind(pair.kind).to_lowercase(),
        second = format::from_to(&old, &new)
    )
}
