//! Which food a name means.

use super::food_words::{ALONE, BESIDE, OTHER, WORDS};
use super::measure::singular;
use crate::engine::ingredients::{Food, Label, Listed, OwnFood, Role};
use crate::sheet::plain;
use crate::storage::interchange::csv::full_name;

/// The food of a name, and whether it had to become an own ingredient; `letter_by_letter` is the
/// name as written in the line.
pub(super) fn food(name: &str, letter_by_letter: &str) -> Option<(Food, bool)> {
    if let Some(listed) = exactly(letter_by_letter).or_else(|| by_words(name)) {
        return Some((Food::Listed(listed), false));
    }
    let short = plain::name(name, OwnFood::NAME_LENGTH);
    let own = OwnFood::new(&short, guessed(name), Label::default(), Vec::new()).ok()?;
    Some((Food::Own(own), true))
}

/// A row called just so.
fn exactly(name: &str) -> Option<Listed> {
    let wanted = name.to_lowercase();
    Listed::all().find(|listed| full_name(&Food::Listed(*listed)).to_lowercase() == wanted)
}

/// A row that the words of a name tell of.
fn by_words(name: &str) -> Option<Listed> {
    let words = words(name);
    let has = |wanted: &str| {
        let mut all = words.iter();
        all.any(|word| word == wanted || singular(word) == wanted)
    };
    let found = WORDS
        .iter()
        .find(|(wanted, _)| wanted.iter().all(|word| has(word)));
    let number = match found {
        Some((wanted, number)) => {
            let other = OTHER.iter().any(|word| has(word) && !wanted.contains(word));
            (!other).then_some(*number)
        }
        None => alone(&words),
    };
    Listed::numbered(number?).ok()
}

/// "Flour" by itself is plain white flour; beside a word that is not known it is not.
fn alone(words: &[String]) -> Option<u16> {
    let mut telling = words.iter().filter(|word| !BESIDE.contains(&word.as_str()));
    let (first, second) = (telling.next()?, telling.next());
    let found = ALONE.iter().find(|(word, _)| word == first)?;
    second.is_none().then_some(found.1)
}

fn words(name: &str) -> Vec<String> {
    name.to_lowercase()
        .split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

/// What an unknown food most likely does in a dough.
fn guessed(name: &str) -> Role {
    let words = words(name);
    let has = |any: &[&str]| words.iter().any(|word| any.contains(&singular(word)));
    if has(&["flour", "starch"]) {
        Role::Flour
    } else if has(&["egg"]) {
        Role::Egg
    } else if has(&["milk", "juice", "beer", "wine", "drink", "broth"]) {
        Role::Liquid
    } else if has(&["oil", "fat", "ghee", "tallow"]) {
        Role::Fat
    } else if has(&["sugar", "syrup", "nectar"]) {
        Role::Sugar
    } else if has(&["chocolate"]) {
        Role::Chocolate
    } else {
        Role::Inclusion
    }
}
