//! Amounts: the number and the measure in a line, and the name that is left.

use super::measure::{MeasureUnit, Unit, fluid_ounce, unit};
use super::spanish;
use super::token::Token;
use crate::engine::quantity::Mass;
use crate::sheet::Language;

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
pub(super) fn asked(tokens: &[Token], language: Language) -> (Option<Asked>, Vec<String>) {
    let (amounts, words) = split(tokens, language);
    let weighed = |one: &&Asked| matches!(one.unit, Unit::Weight(_));
    let aside = tokens
        .iter()
        .enumerate()
        .find_map(|(at, token)| match token {
            Token::Aside(inside) => {
                let (found, _) = split(inside, language);
                let weight = found.iter().find(weighed).copied()?;
                Some((at, weight))
            }
            Token::Number { .. } | Token::Word(_) | Token::Pause => None,
        });
    if let Some(found) = amounts.iter().find(weighed) {
        let found = with_ounces(&amounts, *found);
        let count = found.count * packs(tokens);
        return (Some(Asked { count, ..found }), words);
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

/// How many packs of a weight there are: "2 x 400 g tins"; else one.
fn packs(tokens: &[Token]) -> f64 {
    match tokens {
        [
            Token::Number { value, .. },
            Token::Word(word),
            Token::Number { .. },
            ..,
        ] if word == "x" => *value,
        _ => 1.0,
    }
}

/// What stands between two amounts of one food: "1 cup plus 2 tablespoons".
const AND: [&str; 6] = ["plus", "and", "+", "y", "más", "と"];

/// Teaspoons of a spoon or a cup, by which they are added.
fn teaspoons(unit: MeasureUnit) -> Option<f64> {
    match unit {
        MeasureUnit::Cup => Some(48.0),
        MeasureUnit::Tablespoon => Some(3.0),
        MeasureUnit::Teaspoon => Some(1.0),
        MeasureUnit::Millilitre | MeasureUnit::Stick | MeasureUnit::Packet | MeasureUnit::Whole => {
            None
        }
    }
}

/// Two amounts of one food made one, where both are spoons or cups, or both weights.
fn joined(first: Asked, second: Asked) -> Option<Asked> {
    let times = match (first.unit, second.unit) {
        (Unit::Measure(one, times), Unit::Measure(other, more)) => {
            teaspoons(other)? * more / (teaspoons(one)? * times)
        }
        (Unit::Weight(one), Unit::Weight(other)) => other.grams() / one.grams(),
        (Unit::Weight(_), Unit::Measure(..)) | (Unit::Measure(..), Unit::Weight(_)) => return None,
    };
    Some(Asked {
        count: first.count + second.count * times,
        unit: first.unit,
        range: first.range || second.range,
    })
}

/// Adds an amount to those before it, or to the last of them: "1 cup plus 2 tablespoons".
fn add(amounts: &mut Vec<Asked>, words: &mut Vec<String>, found: Option<Asked>) {
    // Japanese has the name before both amounts.
    let adds = words
        .last()
        .is_some_and(|word| AND.contains(&word.as_str()) && (words.len() == 1 || word == "と"));
    let both = amounts.last().copied().zip(found).filter(|_| adds);
    match both.and_then(|(first, second)| joined(first, second)) {
        Some(sum) => {
            amounts.pop();
            amounts.push(sum);
            words.pop();
        }
        None => amounts.extend(found),
    }
}

/// All amounts outside brackets, and the words up to the first pause that follows one.
fn split(tokens: &[Token], language: Language) -> (Vec<Asked>, Vec<String>) {
    let mut amounts: Vec<Asked> = Vec::new();
    let mut words: Vec<String> = Vec::new();
    let mut left = tokens.iter();
    let mut paused = false;
    while let Some(token) = left.next() {
        let begins = amounts.is_empty() && words.is_empty();
        let counted = match token {
            Token::Number { value, range } => Some((*value, *range)),
            Token::Word(word) if begins => article(word, language).map(|value| (value, false)),
            Token::Word(_) | Token::Aside(_) | Token::Pause => None,
        };
        match (counted, token) {
            (Some((count, range)), _) => {
                let ahead = left.as_slice();
                let (unit, takes) = unit_after(ahead.first(), ahead.get(1), language);
                for _ in 0..takes {
                    left.next();
                }
                let whole = Unit::Measure(MeasureUnit::Whole, 1.0);
                // "Juice of 1 lemon" counts too.
                let counts = begins
                    || words
                        .last()
                        .is_some_and(|word| word == "of" || word == "de");
                let unit = unit.or(counts.then_some(whole));
                let found = unit.map(|unit| Asked { count, unit, range });
                add(&mut amounts, &mut words, found);
            }
            (None, Token::Word(word)) if !paused && word.chars().all(char::is_alphanumeric) => {
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
fn article(word: &str, language: Language) -> Option<f64> {
    if language == Language::Spanish {
        return spanish::article(word);
    }
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
fn unit_after(
    next: Option<&Token>,
    after: Option<&Token>,
    language: Language,
) -> (Option<Unit>, usize) {
    // In Spanish these are cut-short words of several measures.
    let unit = |word: &str| {
        let is_unclear = language == Language::Spanish && matches!(word, "c" | "t");
        unit(word).filter(|_| !is_unclear)
    };
    let word = |token: Option<&Token>| match token {
        Some(Token::Word(word)) => Some(word.as_str().to_owned()),
        _ => None,
    };
    let (next, after) = (word(next), word(after));
    match (next.as_deref(), after.as_deref()) {
        (Some("fl" | "fluid"), Some("oz" | "ounce" | "ounces")) => (Some(fluid_ounce()), 2),
        (
            Some("heaped" | "level" | "scant" | "rounded" | "generous" | "metric" | "us" | "buena"),
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
