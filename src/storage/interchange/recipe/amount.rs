//! Amounts: the number and the measure in a line, and the name that is left.

use super::measure::{MeasureUnit, Unit, fluid_ounce, unit};
use super::token::Token;
use crate::engine::quantity::Mass;

/// How much a line asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Asked {
    /// How many.
    pub(super) count: f64,
    /// Of what.
    pub(super) unit: Unit,
    /// Whether a range was given.
    pub(super) range: bool,
}

/// The amount a line asks for, where it has one, and the words that are left.
pub(super) fn asked(tokens: &[Token]) -> (Option<Asked>, Vec<String>) {
    let (amounts, words) = split(tokens);
    let weighed = |one: &&Asked| matches!(one.unit, Unit::Weight(_));
    let aside = tokens
        .iter()
        .enumerate()
        .find_map(|(at, token)| match token {
            Token::Aside(inside) => {
                let (found, _) = split(inside);
                let weight = found.iter().find(weighed).copied()?;
                Some((at, weight))
            }
            Token::Number { .. } | Token::Word(_) | Token::Pause => None,
        });
    if let Some(found) = amounts.iter().find(weighed) {
        return (Some(with_ounces(&amounts, *found)), words);
    }
    match (aside, tokens.first()) {
        // "2 (250 g) packs": the weight of each stands right behind the number.
        (Some((1, each)), Some(Token::Number { value, .. })) => {
            let count = each.count * value;
            (Some(Asked { count, ..each }), words)
        }
        (Some((_, whole)), _) => (Some(whole), words),
        (None, _) => (amounts.first().copied(), words),
    }
}

/// All amounts outside brackets, and the words up to the first pause that follows one.
fn split(tokens: &[Token]) -> (Vec<Asked>, Vec<String>) {
    let mut amounts: Vec<Asked> = Vec::new();
    let mut words: Vec<String> = Vec::new();
    let mut left = tokens.iter();
    let mut paused = false;
    while let Some(token) = left.next() {
        let begins = amounts.is_empty() && words.is_empty();
        let counted = match token {
            Token::Number { value, range } => Some((*value, *range)),
            Token::Word(word) if begins => article(word).map(|value| (value, false)),
            Token::Word(_) | Token::Aside(_) | Token::Pause => None,
        };
        match (counted, token) {
            (Some((count, range)), _) => {
                let ahead = left.as_slice();
                let (unit, takes) = unit_after(ahead.first(), ahead.get(1));
                for _ in 0..takes {
                    left.next();
                }
                let whole = Unit::Measure(MeasureUnit::Whole, 1.0);
                // "Juice of 1 lemon" counts too.
                let counts = begins || words.last().is_some_and(|word| word == "of");
                let unit = unit.or(counts.then_some(whole));
                amounts.extend(unit.map(|unit| Asked { count, unit, range }));
            }
            (None, Token::Word(word)) if !paused && word.chars().all(char::is_alphabetic) => {
                words.push(word.clone());
            }
            (None, Token::Pause) => paused = !words.is_empty(),
            (None, Token::Number { .. } | Token::Word(_) | Token::Aside(_)) => {}
        }
    }
    (amounts, words)
}

/// Pounds with the ounces that follow them: "1 lb 2 oz".
fn with_ounces(amounts: &[Asked], found: Asked) -> Asked {
    let (pound, ounce) = (unit("lb"), unit("oz"));
    let follows = amounts.iter().skip_while(|one| **one != found).nth(1);
    match follows {
        Some(more) if Some(found.unit) == pound && Some(more.unit) == ounce => Asked {
            count: found.count + more.count / 16.0,
            ..found
        },
        _ => found,
    }
}

/// "A", "one" to "six", "half".
fn article(word: &str) -> Option<f64> {
    Some(match word {
        "a" | "an" | "one" => 1.0,
        "half" => 0.5,
        "two" => 2.0,
        "three" => 3.0,
        "four" => 4.0,
        "five" => 5.0,
        "six" => 6.0,
        _ => return None,
    })
}

/// The unit after a number, and how many tokens it takes.
fn unit_after(next: Option<&Token>, after: Option<&Token>) -> (Option<Unit>, usize) {
    let word = |token: Option<&Token>| match token {
        Some(Token::Word(word)) => Some(word.as_str().to_owned()),
        _ => None,
    };
    let (next, after) = (word(next), word(after));
    match (next.as_deref(), after.as_deref()) {
        (Some("fl" | "fluid"), Some("oz" | "ounce" | "ounces")) => (Some(fluid_ounce()), 2),
        (
            Some("heaped" | "level" | "scant" | "rounded" | "generous" | "metric" | "us"),
            Some(word),
        ) if unit(word).is_some() => (unit(word), 2),
        (Some(word), _) => (unit(word), usize::from(unit(word).is_some())),
        (None, _) => (None, 0),
    }
}

/// What an amount weighs where it is a weight.
pub(super) fn weight(asked: Asked) -> Option<Mass> {
    match asked.unit {
        Unit::Weight(each) => Mass::from_grams(each.grams() * asked.count).ok(),
        Unit::Measure(..) => None,
    }
}
