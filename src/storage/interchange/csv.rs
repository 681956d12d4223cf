//! A formula as a table for spreadsheets: CSV by RFC 4180.

use crate::engine::formula::{Basis, Formula, LineAt, percentage};
use crate::engine::ingredients::{Food, Source};

const HEADS: &str =
    "part,kind,ingredient,grams,percent_of_all_flour,percent_of_part_flour,table,number";

/// The formula as CSV: one line for each ingredient, points for decimals, a line break of CR LF,
/// UTF-8; `called` names an ingredient. A percentage that cannot be had is left empty.
///
/// A cell that a spreadsheet would take for a sum, because it begins with `=`, `+`, `-`, `@` or a
/// tab, gets an apostrophe in front, so that a name from a link is never a formula.
///
/// Source: RFC 4180.
#[must_use]
pub fn csv(formula: &Formula, called: fn(&Food) -> String) -> String {
    let mut text = format!("{HEADS}\r\n");
    for (part, own) in formula.parts.iter().enumerate() {
        for (line, written) in own.lines.iter().enumerate() {
            let at = LineAt { part, line };
            let percent = |basis| {
                let found = percentage(formula, at, basis).ok();
                found.map_or_else(String::new, |found| decimal(found.share.percent()))
            };
            let (table, number) = origin(&written.food);
            let cells = [
                cell(&own.name),
                crate::storage::enum_names::spelt(own.kind, crate::storage::enum_names::PARTS)
                    .to_owned(),
                cell(&called(&written.food)),
                decimal(written.mass.grams()),
                percent(Basis::AllFlour),
                percent(Basis::OwnPart),
                table.to_owned(),
                number,
            ];
            text.push_str(&cells.join(","));
            text.push_str("\r\n");
        }
    }
    text
}

/// A number to six places: what lies behind them is the binary fraction's, not the formula's.
fn decimal(number: f64) -> String {
    let text = format!("{number:.6}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A cell in quotes where it needs them.
fn cell(text: &str) -> String {
    let reckons = text.starts_with(['=', '+', '-', '@', '\t']);
    let plain = if reckons {
        format!("'{text}")
    } else {
        text.to_owned()
    };
    if plain.contains([',', '"', '\r', '\n']) {
        format!("\"{}\"", plain.replace('"', "\"\""))
    } else {
        plain
    }
}

/// Name and detail: "Whole milk, 3.25 % fat".
pub(super) fn full_name(food: &Food) -> String {
    match food {
        Food::Listed(listed) if !listed.row().detail.is_empty() => {
            format!("{}, {}", listed.row().name, listed.row().detail)
        }
        Food::Listed(_) | Food::Own(_) => food.name().to_owned(),
    }
}

/// Which table its composition was read in, and the number there.
fn origin(food: &Food) -> (&'static str, String) {
    match food.source() {
        Source::UsdaSr28(ndb) => ("USDA SR28", format!("{ndb:05}")),
        Source::Ciqual2020(code) => ("Ciqual 2020", code.to_string()),
        Source::Label => ("label", String::new()),
    }
}
