//! Which food a name means.

use super::letters::folded;
use super::measure::singular;
use super::names::RecipeNames;
use super::{food_words, japanese_words, spanish_words};
use crate::engine::ingredients::{Food, Label, Listed, OwnFood, Role};
use crate::sheet::{Language, plain};
use crate::storage::interchange::csv::full_name;

/// The food of a name, and whether it had to become an own ingredient; `letter_by_letter` is the
/// name as written in the line.
pub(super) fn food(
    name: &str,
    letter_by_letter: &str,
    language: Language,
    names: &RecipeNames,
) -> Option<(Food, bool)> {
    let listed = exactly(letter_by_letter)
        .or_else(|| called(letter_by_letter, names))
        .or_else(|| meant(name, language));
    if let Some(listed) = listed {
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

/// A row that the page calls so in its language.
fn called(name: &str, names: &RecipeNames) -> Option<Listed> {
    let wanted = folded(name.trim());
    let found = names.foods.iter().find(|(own, _)| folded(own) == wanted);
    found.map(|(_, listed)| *listed)
}

/// The row that the words of a name tell of in a language.
#[must_use]
pub fn meant(name: &str, language: Language) -> Option<Listed> {
    let words = words(name);
    let number = match language {
        Language::English => by_words(
            &words,
            food_words::WORDS,
            food_words::OTHER,
            (food_words::ALONE, food_words::BESIDE),
        ),
        Language::Spanish => by_words(
            &words,
            spanish_words::WORDS,
            spanish_words::OTHER,
            (spanish_words::ALONE, spanish_words::BESIDE),
        ),
        Language::Japanese => in_japanese(&words),
    };
    Listed::numbered(number?).ok()
}

/// What a language calls an ingredient, as words to search by.
#[must_use]
pub fn other_names(number: u16, language: Language) -> Vec<&'static str> {
    let of = |rows: &[(&[&'static str], u16)], alone: &[(&'static str, u16)]| {
        let rows = rows.iter().filter(|row| row.1 == number);
        let alone = alone.iter().filter(|row| row.1 == number);
        rows.flat_map(|row| row.0.iter().copied())
            .chain(alone.map(|row| row.0))
            .collect()
    };
    match language {
        // Its everyday words are the search's own.
        Language::English => Vec::new(),
        Language::Spanish => of(spanish_words::WORDS, spanish_words::ALONE),
        Language::Japanese => {
            let all = japanese_words::WORDS.iter().chain(japanese_words::ALONE);
            all.filter(|row| row.1 == number).map(|row| row.0).collect()
        }
    }
}

/// Foods by all of their words, each with the ingredient's number.
type Rows = [(&'static [&'static str], u16)];

/// The number of the row whose words are all there; `alone` are plain words, and those that may be
/// beside them.
fn by_words(
    words: &[String],
    rows: &Rows,
    other: &[&str],
    alone: (&[(&str, u16)], &[&str]),
) -> Option<u16> {
    let has = |wanted: &str| {
        let mut all = words.iter();
        all.any(|word| word == wanted || singular(word) == wanted)
    };
    let found = rows
        .iter()
        .find(|(wanted, _)| wanted.iter().all(|word| has(word)));
    match found {
        Some((wanted, number)) => {
            let other = other.iter().any(|word| has(word) && !wanted.contains(word));
            (!other).then_some(*number)
        }
        None => by_itself(words, alone.0, alone.1),
    }
}

/// "Flour" by itself is plain white flour; beside a word that is not known it is not.
fn by_itself(words: &[String], alone: &[(&str, u16)], beside: &[&str]) -> Option<u16> {
    let mut telling = words.iter().filter(|word| !beside.contains(&word.as_str()));
    let (first, second) = (telling.next()?, telling.next());
    let found = alone.iter().find(|(word, _)| word == first)?;
    second.is_none().then_some(found.1)
}

/// Japanese puts no spaces between words: a name means what it holds.
fn in_japanese(words: &[String]) -> Option<u16> {
    let (other, beside) = (japanese_words::OTHER, japanese_words::BESIDE);
    let whole = words.concat();
    if other.iter().any(|word| whole.contains(word)) {
        return None;
    }
    let mut rows = japanese_words::WORDS.iter();
    if let Some((_, number)) = rows.find(|(word, _)| whole.contains(word)) {
        return Some(*number);
    }
    let telling = words.iter().filter(|word| !beside.contains(&word.as_str()));
    let mut rest = telling.cloned().collect::<String>();
    for word in beside.iter().filter(|word| !word.is_ascii()) {
        rest = rest.replace(word, "");
    }
    let found = japanese_words::ALONE
        .iter()
        .find(|(word, _)| *word == rest)?;
    Some(found.1)
}

fn words(name: &str) -> Vec<String> {
    folded(name)
        .split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

/// Words of foods that no table has, and what those most likely do in a dough.
#[rustfmt::skip] // a role is a paragraph, not a column
const ROLES: &[(&[&str], Role)] = &[
    (&["flour", "starch", "harina", "almidon", "fecula", "粉"], Role::Flour),
    (&["egg", "huevo", "卵"], Role::Egg),
    (&["milk", "juice", "beer", "wine", "drink", "broth", "leche", "zumo", "jugo", "cerveza",
       "vino", "bebida", "caldo", "乳", "汁", "ジュース", "酒", "茶"], Role::Liquid),
    (&["oil", "fat", "ghee", "tallow", "aceite", "grasa", "manteca", "油", "オイル", "脂"], Role::Fat),
    (&["sugar", "syrup", "nectar", "azucar", "jarabe", "sirope", "almibar", "糖", "シロップ"],
        Role::Sugar),
    (&["chocolate", "チョコレート"], Role::Chocolate),
];

/// What an unknown food most likely does in a dough.
fn guessed(name: &str) -> Role {
    let words = words(name);
    // Japanese words are not apart: what they end in tells.
    let is = |word: &String, one: &&str| {
        *one == singular(word) || (!one.is_ascii() && word.ends_with(one))
    };
    let found = ROLES.iter().find(|(telling, _)| {
        let mut all = words.iter();
        all.any(|word| telling.iter().any(|one| is(word, one)))
    });
    found.map_or(Role::Inclusion, |(_, role)| *role)
}
