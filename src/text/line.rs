//! The notes below an ingredient's name, and the letters of parts.

use super::format;
use super::format_options::FormatOptions;
use crate::engine::formula::{Formula, Line, LineAt};
use crate::engine::ingredients::{Food, Listed, Role};
use crate::results::formula::{Adjuster, Offer};
use crate::text::{language::text, name, tr};

/// Returns the notes below an ingredient's name: its kind where another one has the same name, its
/// actual weight, how it counts.
#[must_use]
pub fn wording(line: &Line, options: FormatOptions) -> String {
    let detail = match &line.food {
        Food::Listed(listed) => {
            let row = listed.row();
            let mut same = Listed::all().filter(|other| other.row().name == row.name);
            same.nth(1).map_or("", |_| text(row.detail))
        }
        Food::Own(_) => tr!("of your own"),
    };
    let poured = line
        .poured
        .map(|poured| tr!("poured {value}", value = format::mass(poured, options)));
    let counts = match (line.is_flour(), line.food.role() == Role::Flour) {
        (true, false) => Some(tr!("counts as flour").to_owned()),
        (false, true) => Some(tr!("not counted as flour").to_owned()),
        (true, true) | (false, false) => None,
    };
    let detail = (!detail.is_empty()).then(|| detail.to_owned());
    [detail, poured, counts]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(tr!("; "))
}

/// Returns the letter of a part by its index: A, B, C, …
#[must_use]
pub fn mark(part: usize) -> char {
    ('A'..='Z').nth(part).unwrap_or('·')
}

/// Names what makes up the difference when a figure is set, as one word of a choice.
#[must_use]
pub fn adjuster(formula: &Formula, adjuster: Adjuster) -> String {
    match adjuster {
        Adjuster::Water => name::role(Role::Water).to_owned(),
        Adjuster::Line(at) => formula
            .line(at)
            .map(|line| name::food_short(&line.food).into_owned())
            .unwrap_or_default(),
    }
}

/// Names a trial of one tap, with the liquid that it takes where that is not plain water: "Two points less water (takes
/// whole milk)".
#[must_use]
pub fn offer(formula: &Formula, offer: Offer) -> String {
    let does = name::what_if(offer.what_if);
    let takes = offer.takes.and_then(|at| formula.line(at));
    takes.map_or_else(
        || does.to_owned(),
        |line| {
            let food = name::food_short(&line.food);
            let food = match line.food {
                Food::Listed(_) => food.to_lowercase(),
                Food::Own(_) => food.into_owned(),
            };
            tr!("{does} (takes {food})", does = does, food = food)
        },
    )
}

/// Labels every line of the dough by ingredient and part: "Whole milk (C, Final dough)".
#[must_use]
pub fn all_of_dough(formula: &Formula) -> Vec<(LineAt, String)> {
    let parts = formula.parts.iter().enumerate();
    parts
        .filter(|(_, own)| own.kind.in_dough())
        .flat_map(|(part, own)| {
            own.lines.iter().enumerate().map(move |(line, written)| {
                let says = tr!(
                    "{food} ({letter}, {part})",
                    food = name::food_short(&written.food),
                    letter = mark(part),
                    part = own.name
                );
                (LineAt { part, line }, says)
            })
        })
        .collect()
}
