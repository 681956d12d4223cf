//! Japanese recipes: their lines in the order the reader knows, and what their spoons and cups weigh.

use super::letters::{half_width, is_japanese};
use super::measure::MeasureUnit;
use crate::engine::quantity::Mass;

/// Whether a line is Japanese.
pub(super) fn is_written(line: &str) -> bool {
    line.chars().any(is_japanese)
}

/// Measures that stand before their number: "大さじ2".
const BEFORE: [&str; 3] = ["大さじ", "小さじ", "カップ"];

/// Other ways to write measures and numbers.
const SPELT: &[(&str, &str)] = &[
    ("おおさじ", "大さじ"),
    ("大匙", "大さじ"),
    ("大サジ", "大さじ"),
    ("こさじ", "小さじ"),
    ("小匙", "小さじ"),
    ("小サジ", "小さじ"),
    ("計量カップ", "カップ"),
    ("半カップ", "0.5カップ"),
    ("ひとつまみ", "1つまみ"),
    ("一つまみ", "1つまみ"),
    ("ふたつまみ", "2つまみ"),
    ("二つまみ", "2つまみ"),
];

/// A line with its figures in half width, spaces between figures and words, and each measure behind
/// its number: "強力粉２５０ｇ" is "強力粉 250 g", "大さじ1と1/2" is "1 1/2 大さじ".
pub(super) fn rewritten(line: &str) -> String {
    let mut text: String = line.chars().map(half_width).collect();
    for (written, meant) in SPELT {
        text = text.replace(written, meant);
    }
    for measure in BEFORE {
        text = text.replace(measure, &format!(" {measure} "));
    }
    // Marks of lists and groups.
    let text = text.replace(['・', '…', '‥', '、', ':'], " ");
    swapped(&spaced(&text))
}

/// Spaces where figures or Latin letters meet Japanese ones, and around brackets.
fn spaced(text: &str) -> String {
    let mut found = String::with_capacity(text.len() * 2);
    let mut last = None;
    for letter in text.chars() {
        let meets = last.is_some_and(|last: char| {
            (last.is_ascii_alphanumeric() && is_japanese(letter))
                || (is_japanese(last)
                    && (letter.is_ascii_alphanumeric() || "½¼¾⅓⅔⅛".contains(letter)))
                || ("½¼¾⅓⅔⅛".contains(last) && is_japanese(letter))
                || (last.is_ascii_digit() && letter.is_ascii_alphabetic())
        });
        if meets || "()".contains(letter) {
            found.push(' ');
        }
        found.push(letter);
        if letter == ')' {
            found.push(' ');
        }
        last = Some(letter);
    }
    found
}

/// Measures behind their numbers; "と" between a whole and its parts left out.
fn swapped(text: &str) -> String {
    let words: Vec<&str> = text.split_whitespace().collect();
    let is_number = |word: &&&str| {
        word.starts_with(|letter: char| letter.is_ascii_digit() || "½¼¾⅓⅔⅛".contains(letter))
    };
    let mut found: Vec<&str> = Vec::with_capacity(words.len());
    let mut waits = None;
    let mut left = words.iter().peekable();
    let mut after_number = false;
    while let Some(word) = left.next() {
        let number = is_number(&word);
        let joins = *word == "と" && after_number && left.peek().is_some_and(is_number);
        if joins {
            continue;
        }
        if let (Some(measure), false) = (waits, number) {
            found.push(measure);
            waits = None;
        }
        if BEFORE.contains(word) && left.peek().is_some_and(is_number) && !after_number {
            waits = Some(*word);
        } else {
            found.push(word);
        }
        after_number = number;
    }
    found.extend(waits);
    found.join(" ")
}

/// A cup, ml: common practice.
pub(super) const CUP: f64 = 200.0;

/// Grams in a teaspoon, a tablespoon and a cup; nought where the table has none.
struct Weights(u16, f64, f64, f64);

/// By the ingredients' numbers. The cup holds 200 ml, the spoons 15 and 5 ml.
///
/// Source: Kagawa Nutrition University Press, 調理のためのベーシックデータ, table of weights by standard
/// measuring cups and spoons. Sugar is 上白糖, salt 精製塩.
const WEIGHTS: &[Weights] = &[
    Weights(1, 3.0, 9.0, 110.0),
    Weights(2, 3.0, 9.0, 110.0),
    Weights(3, 3.0, 9.0, 110.0),
    Weights(100, 2.0, 6.0, 100.0),
    Weights(101, 3.0, 9.0, 130.0),
    Weights(200, 5.0, 15.0, 200.0),
    Weights(300, 5.0, 15.0, 210.0),
    Weights(311, 5.0, 15.0, 210.0),
    Weights(321, 5.0, 15.0, 200.0),
    Weights(341, 2.0, 6.0, 90.0),
    Weights(500, 4.0, 12.0, 180.0),
    Weights(501, 4.0, 12.0, 180.0),
    Weights(510, 4.0, 12.0, 180.0),
    Weights(512, 4.0, 12.0, 160.0),
    Weights(513, 4.0, 12.0, 170.0),
    Weights(520, 4.0, 12.0, 180.0),
    Weights(522, 4.0, 12.0, 180.0),
    Weights(700, 3.0, 9.0, 130.0),
    Weights(710, 7.0, 21.0, 280.0),
    Weights(800, 6.0, 18.0, 240.0),
    Weights(810, 4.0, 12.0, 190.0),
    Weights(811, 4.0, 12.0, 150.0),
    Weights(902, 3.0, 10.0, 0.0),
];

/// Granulated sugar, which is heavier by the spoon than 上白糖.
///
/// Source: as [`WEIGHTS`].
const GRANULATED: Weights = Weights(700, 4.0, 12.0, 180.0);

/// The weight of one of a measure by the Japanese table; none where it has no such food.
pub(super) fn weight(number: u16, name: &str, unit: MeasureUnit) -> Option<Mass> {
    let row = if number == GRANULATED.0 && name.contains("グラニュー") {
        &GRANULATED
    } else {
        WEIGHTS.iter().find(|row| row.0 == number)?
    };
    let grams = match unit {
        MeasureUnit::Teaspoon => row.1,
        MeasureUnit::Tablespoon => row.2,
        MeasureUnit::Cup => row.3,
        MeasureUnit::Millilitre | MeasureUnit::Stick | MeasureUnit::Packet | MeasureUnit::Whole => {
            0.0
        }
    };
    (grams > 0.0)
        .then(|| Mass::from_grams(grams).ok())
        .flatten()
}
