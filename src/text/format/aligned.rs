//! Figures below each other: their decimal signs stand in one line.

use super::quantity::GAP;
use crate::text::format_options::FormatOptions;

/// As wide as a digit, and as wide as a decimal sign.
const DIGIT: char = '\u{2007}';
const SIGN: char = '\u{2008}';

/// Keeps the spaces before it in their line, where a browser would let them hang.
const JOINER: &str = "\u{2060}";

/// Fills up each figure of a column behind its unit, so that set to the right all have their decimal
/// sign at one place and the same gap before the unit. What has no figure stays as it is.
#[must_use]
pub fn in_line(cells: &[String], options: FormatOptions) -> Vec<String> {
    let decimal = options.numbers.decimal;
    let places = |cell: &str| {
        let (number, _) = split(cell)?;
        let digits = number.split_once(decimal);
        Some(digits.map_or(0, |(_, digits)| digits.chars().count()))
    };
    let most = cells.iter().filter_map(|cell| places(cell)).max();
    let most = most.unwrap_or(0);
    let filled = cells.iter().map(|cell| {
        let Some(((number, unit), own)) = split(cell).zip(places(cell)) else {
            return cell.clone();
        };
        let sign = if own == 0 && most > 0 { 1 } else { 0 };
        let filled = std::iter::repeat_n(SIGN, sign);
        let filled = filled.chain(std::iter::repeat_n(DIGIT, most.saturating_sub(own)));
        let filled = filled.collect::<String>();
        let joiner = if filled.is_empty() { "" } else { JOINER };
        format!("{number}{GAP}{unit}{filled}{joiner}")
    });
    filled.collect()
}

/// The figure and its unit; `None` where there are several.
fn split(cell: &str) -> Option<(&str, &str)> {
    let (number, unit) = cell.split_once(GAP)?;
    let is_one = !unit.contains(GAP) && number.starts_with(|first: char| first.is_ascii_digit());
    is_one.then_some((number, unit))
}
