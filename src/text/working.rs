//! The working of a figure, as text: one step of a calculation.

use super::format;
use super::format_options::{FormatOptions, NumberStyle};
use crate::engine::working::{Given, WorkingLine};
use crate::text::language::tr_dynamic;

/// A symbol of a rule: "m1", "whole milk", "250 g".
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Letter {
    /// The symbol.
    pub letter: String,
    /// Its meaning; may be empty.
    pub of: String,
    /// Its value and unit, rounded for display.
    pub figure: String,
}

/// One step of a calculation as text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Worked {
    /// The rule in symbols: "M = 100 × A / D".
    pub rule: String,
    /// The rule with its numbers: "100 × 402 / 960".
    pub put_in: String,
    /// The result: "41.88 %".
    pub result: String,
    /// The name of the result; may be empty.
    pub result_of: String,
    /// The symbols, in the order of the rule.
    pub letters: Vec<Letter>,
    /// The source of the rule.
    pub source: String,
}

/// Formats a step of a calculation; rounds for display only.
#[must_use]
pub fn worked(line: &WorkingLine, options: FormatOptions) -> Worked {
    Worked {
        rule: format!("{} = {}", line.result.letter, signs(&line.rule)),
        put_in: signs(&put_in(line, options.numbers)),
        result: figure(&line.result, options.numbers),
        result_of: tr_dynamic(&line.result.of).into_owned(),
        letters: line
            .with
            .iter()
            .map(|given| Letter {
                letter: given.letter.clone().into_owned(),
                of: called(&given.of),
                figure: figure(given, options.numbers),
            })
            .collect(),
        source: tr_dynamic(&line.source).into_owned(),
    }
}

/// What a number is; where a table is named in brackets behind it, that stays as it is.
fn called(of: &str) -> String {
    let inside = of.strip_suffix(')').and_then(|text| text.split_once(" ("));
    if let Some((before, inside)) = inside {
        let english = format!("{before} ({{}})");
        let own = tr_dynamic(&english);
        if *own != *english {
            return own.replace("{}", inside);
        }
    }
    tr_dynamic(of).into_owned()
}

/// Replaces each symbol of the rule by its number.
fn put_in(line: &WorkingLine, style: NumberStyle) -> String {
    let mut text = String::new();
    let mut word = String::new();
    for character in line.rule.chars().chain(std::iter::once(' ')) {
        if character.is_alphanumeric() || character == '_' || character == '.' {
            word.push(character);
        } else {
            text.push_str(&number_for(&word, &line.with, style));
            word.clear();
            text.push(character);
        }
    }
    text.trim_end().to_owned()
}

/// Replaces a token by its number if it is a symbol.
fn number_for(word: &str, with: &[Given], style: NumberStyle) -> String {
    match with.iter().find(|given| given.letter == word) {
        Some(given) if given.value < 0.0 => format!("({})", number(given, style)),
        Some(given) => number(given, style),
        None if word
            .chars()
            .all(|character| character.is_ascii_digit() || character == '.') =>
        {
            word.replace('.', &style.decimal.to_string())
        }
        None => word.to_owned(),
    }
}

/// Typographic operators in place of ASCII ones.
fn signs(rule: &str) -> String {
    rule.replace('*', "×").replace('-', "−")
}

/// Formats a number with its unit.
fn figure(given: &Given, style: NumberStyle) -> String {
    let number = number(given, style);
    if given.unit.is_empty() {
        number
    } else {
        format!("{number}\u{A0}{}", given.unit)
    }
}

/// Formats a number with enough digits to recompute the step by hand.
fn number(given: &Given, style: NumberStyle) -> String {
    match given.unit {
        "g" | "%" | "°C" | "min" if given.value.abs() >= 1.0 => {
            format::plain(given.value, 2, style)
        }
        _ => format::significant(given.value, 4, style),
    }
}
