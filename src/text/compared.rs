//! Two formulas side by side in words: their figures and lines as shares of the flour.

use super::format_options::FormatOptions;
use super::{format, line, name};
use crate::engine::formula::{Compared, Form, Formula, LinePair, Sides};
use crate::engine::quantity::Mass;

/// One row: a figure or an ingredient, in the one formula and in the other.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Row {
    /// What is compared.
    pub name: String,
    /// Its share of the one's flour; a dash where it is not there.
    pub old: String,
    /// Its share of the other's flour; a dash where it is not there.
    pub new: String,
    /// The difference in points.
    pub difference: String,
}

/// The figures that differ or weigh anything, then the lines, aligned.
#[must_use]
pub fn rows(old: &Formula, new: &Formula, options: FormatOptions) -> Vec<Row> {
    let compared = Compared::of(old, new, Form::AsWritten);
    let figures = compared
        .figures
        .iter()
        .filter(|(_, sides)| sides.old > Mass::ZERO || sides.new > Mass::ZERO)
        .map(|(figure, sides)| row(name::figure(*figure).to_owned(), sides, options));
    let lines = compared
        .lines
        .iter()
        .map(|pair| row(line_name(pair, old, new), &pair.sides, options));
    figures.chain(lines).collect()
}

fn line_name(pair: &LinePair, old: &Formula, new: &Formula) -> String {
    let (formula, at) = match (pair.new_at, pair.old_at) {
        (Some(at), _) => (new, at),
        (None, Some(at)) => (old, at),
        (None, None) => return String::new(),
    };
    let food = formula
        .line(at)
        .map(|line| name::food_short(&line.food))
        .unwrap_or_default();
    format!("{}: {food}", line::mark(at.part))
}

fn row(name: String, sides: &Sides, options: FormatOptions) -> Row {
    let side = |mass: Mass, share| match share {
        Some(share) if mass > Mass::ZERO => format::share(share, options),
        _ => "–".to_owned(),
    };
    let difference = match (sides.old_share, sides.new_share) {
        (Some(old), Some(new)) => format::points_change(old, new, options),
        _ => String::new(),
    };
    Row {
        name,
        old: side(sides.old, sides.old_share),
        new: side(sides.new, sides.new_share),
        difference,
    }
}
