//! Tables in comma-separated files: rows are found by number, cells by the head of their column.

use std::collections::HashMap;

use crate::printed::number;

/// USDA ARS, *National Nutrient Database for Standard Reference, Release 28* (2016).
pub(crate) const SR28: &str = include_str!("data/usda_sr28.csv");

/// ANSES, *Table de composition nutritionnelle des aliments Ciqual 2020*.
pub(crate) const CIQUAL: &str = include_str!("data/ciqual_2020.csv");

/// One row: the head of each column, and what is printed under it.
pub(crate) type Row = HashMap<String, String>;

/// Every row of a file whose first line holds the heads of its columns.
pub(crate) fn rows(file: &str) -> Vec<Row> {
    let mut lines = file.lines();
    let heads = cells(lines.next().unwrap());
    lines
        .map(|line| heads.iter().cloned().zip(cells(line)).collect())
        .collect()
}

/// The cells of one line; a quoted cell may hold commas.
fn cells(line: &str) -> Vec<String> {
    let mut found = vec![String::new()];
    let mut quoted = false;
    for letter in line.trim_end().chars() {
        match letter {
            '"' => quoted = !quoted,
            ',' if !quoted => found.push(String::new()),
            other => found.last_mut().unwrap().push(other),
        }
    }
    found
}

/// The row of `rows` that has `value` in column `head`, read as a whole number.
pub(crate) fn row_numbered<'a>(rows: &'a [Row], head: &str, value: u32) -> &'a Row {
    rows.iter()
        .find(|row| row[head].parse() == Ok(value))
        .unwrap_or_else(|| panic!("no row has {value} under {head}"))
}

/// What a cell prints; `None` where the table has no figure. "traces" and "< x" count as none
/// of it, as the larder's docs say.
pub(crate) fn figure(cell: &str) -> Option<f64> {
    match cell.trim() {
        "" | "-" => None,
        "traces" => Some(0.0),
        below if below.starts_with('<') => Some(0.0),
        printed => Some(number(printed)),
    }
}
