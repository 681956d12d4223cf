//! The water ledger in words.

use super::sentence::{begun, listed};
use crate::engine::formula::{Contributor, Water, WaterLedger};
use crate::engine::quantity::Mass;
use crate::words::{manner::Manner, say, write};

/// How many ingredients are named.
const NAMED: usize = 3;

/// The water ledger in words: how much, where it sits, who brought it.
#[must_use]
pub fn water_ledger(ledger: &WaterLedger, manner: Manner) -> String {
    let mass = |mass| write::mass(mass, manner);
    let mut sentences = vec![say!(
        "Water: {}, {}.",
        mass(ledger.true_water.mass),
        write::of_flour(ledger.true_water.share, manner)
    )];
    sentences.extend(where_it_sits(ledger, manner));
    sentences.extend(who_brought_it(&ledger.from, manner));
    if ledger.steam > Mass::ZERO {
        sentences.push(say!("Steam took {} away.", mass(ledger.steam)));
    }
    sentences.push(say!(
        "With flour’s own moisture it is {}, {} of the dough.",
        mass(ledger.total.mass),
        write::share(ledger.moisture, manner)
    ));
    sentences.join(" ")
}

/// "The paste holds 140 g, the preferment 50 g and the final dough brings 122 g."
fn where_it_sits(ledger: &WaterLedger, manner: Manner) -> Option<String> {
    let part = |water: Water, text: &str| {
        (water.mass > Mass::ZERO).then(|| format!("{text} {}", write::mass(water.mass, manner)))
    };
    let parts: Vec<String> = [
        part(ledger.in_paste, say!("the paste holds")),
        part(ledger.in_preferment, say!("the preferment has")),
        part(ledger.free, say!("the final dough adds")),
    ]
    .into_iter()
    .flatten()
    .collect();
    Some(format!("{}.", begun(&listed(&parts)?)))
}

/// "Most of it is from Water 200 g, Whole milk 88 g, Egg 24 g."
fn who_brought_it(from: &[Contributor], manner: Manner) -> Option<String> {
    let named: Vec<String> = together(from)
        .into_iter()
        .take(NAMED)
        .map(|(food, water)| format!("{food} {}", write::mass(water, manner)))
        .collect();
    (!named.is_empty()).then(|| say!("Most of it is from {}.", named.join(say!(", "))))
}

/// Each ingredient once, wherever it stands, most water first; flour is left out.
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
