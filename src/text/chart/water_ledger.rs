//! The water ledger in words.

use super::sentence::{listed, stopped};
use crate::engine::formula::{Contributor, Water, WaterLedger};
use crate::engine::quantity::Mass;
use crate::text::{format, format_options::FormatOptions, language::tr_dynamic, tr};

/// How many ingredients are named.
const NAMED: usize = 3;

/// The water ledger in words: how much, in which parts, from which ingredients.
#[must_use]
pub fn water_ledger(ledger: &WaterLedger, options: FormatOptions) -> String {
    let mass = |mass| format::mass(mass, options);
    let mut sentences = vec![tr!(
        "Water: {first}, {second}.",
        first = mass(ledger.true_water.mass),
        second = format::of_flour(ledger.true_water.share, options)
    )];
    sentences.extend(where_it_sits(ledger, options));
    sentences.extend(who_brought_it(&ledger.from, options));
    if ledger.steam > Mass::ZERO {
        sentences.push(tr!("Steam took {value} away.", value = mass(ledger.steam)));
    }
    sentences.push(tr!(
        "With flour’s own moisture it is {first}, {second} of the dough.",
        first = mass(ledger.total.mass),
        second = format::share(ledger.moisture, options)
    ));
    sentences.join(" ")
}

/// "The paste holds 140 g, the preferment 50 g and the final dough brings 122 g."
fn where_it_sits(ledger: &WaterLedger, options: FormatOptions) -> Option<String> {
    let held = |water: Water| (water.mass > Mass::ZERO).then(|| format::mass(water.mass, options));
    let components: Vec<String> = [
        held(ledger.in_paste).map(|mass| tr!("the paste holds {mass}", mass = mass)),
        held(ledger.in_preferment).map(|mass| tr!("the preferment has {mass}", mass = mass)),
        held(ledger.free).map(|mass| tr!("the final dough adds {mass}", mass = mass)),
    ]
    .into_iter()
    .flatten()
    .collect();
    Some(stopped(&listed(&components)?))
}

/// "Most of it is from Water 200 g, Whole milk 88 g, Egg 24 g."
fn who_brought_it(from: &[Contributor], options: FormatOptions) -> Option<String> {
    let named: Vec<String> = together(from)
        .into_iter()
        .take(NAMED)
        .map(|(food, water)| format!("{} {}", tr_dynamic(food), format::mass(water, options)))
        .collect();
    (!named.is_empty()).then(|| tr!("Most of it is from {value}.", value = named.join(tr!(", "))))
}

/// Each ingredient once, whatever its part, most water first; flour is left out.
fn together(from: &[Contributor]) -> Vec<(&str, Mass)> {
    let mut foods: Vec<(&str, Mass)> = Vec::new();
    for one in from.iter().filter(|one| !one.is_flour) {
        match foods.iter_mut().find(|(food, _)| *food == one.food) {
            Some((_, water)) => *water = *water + one.water,
            None => foods.push((&one.food, one.water)),
        }
    }
    foods.sort_by(|(_, one), (_, other)| other.grams().total_cmp(&one.grams()));
    foods
}
