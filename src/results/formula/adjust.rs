//! A figure set by a chosen ingredient: what can make up the difference, and the step of a button.

use super::change::{reached, try_figure};
use super::formula_results::figures;
use crate::engine::formula::{
    Figure, Formula, FormulaError, Line, LineAt, PartKind, with_water_line,
};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::WorkingLine;
use crate::sheet::Sheet;

/// Half a point of a hundred.
const STEP: Share = Share::in_hundred(0.5);

/// What makes up the difference when a figure is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Adjuster {
    /// Plain water in the final dough, a new line where it has none.
    Water,
    /// This line.
    Line(LineAt),
}

/// What can make up the difference when a figure is set, the usual one first.
///
/// For water in the dough: plain water, every other liquid of the final dough that is not an egg, its heaviest flour.
/// For other figures: the line that usually does.
///
/// ```
/// use softcrumb::engine::formula::Figure;
/// use softcrumb::results::formula::{Adjuster, adjusters};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// assert_eq!(adjusters(&sheet, Figure::TrueWater)[0], Adjuster::Water);
/// ```
#[must_use]
pub fn adjusters(sheet: &Sheet, figure: Figure) -> Vec<Adjuster> {
    let formula = &sheet.formula;
    let usual = || figure.gives_way(formula).map(Adjuster::Line);
    if !matches!(figure, Figure::TrueWater | Figure::PouredWater) {
        return usual().into_iter().collect();
    }
    if !formula.parts.iter().any(|own| own.kind == PartKind::Final) {
        return usual().into_iter().collect();
    }
    let liquids = final_lines(formula)
        .filter(|(_, line)| line.food.role() == Role::Liquid && line.mass > Mass::ZERO)
        .map(|(at, _)| Adjuster::Line(at));
    let flour = final_lines(formula)
        .filter(|(_, line)| line.is_flour() && line.mass > Mass::ZERO)
        .max_by(|(_, one), (_, other)| one.mass.grams().total_cmp(&other.mass.grams()))
        .map(|(at, _)| Adjuster::Line(at));
    std::iter::once(Adjuster::Water)
        .chain(liquids)
        .chain(flour)
        .collect()
}

fn final_lines(formula: &Formula) -> impl Iterator<Item = (LineAt, &Line)> {
    let parts = formula.parts.iter().enumerate();
    let finals = parts.filter(|(_, own)| own.kind == PartKind::Final);
    finals.flat_map(|(part, own)| {
        let lines = own.lines.iter().enumerate();
        lines.map(move |(line, written)| (LineAt { part, line }, written))
    })
}

/// The sheet with a figure set to a share of the flour by a chosen ingredient, and by no other.
///
/// The share that it has already changes nothing.
///
/// ```
/// use softcrumb::engine::formula::Figure;
/// use softcrumb::results::formula::{self, Adjuster};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let now = formula::figures(&sheet).share(Figure::TrueWater).unwrap();
/// let more = formula::nudged(now, true);
/// let tried = formula::try_adjusted(&sheet, Figure::TrueWater, more, Adjuster::Water).unwrap();
/// let is = formula::figures(&tried).share(Figure::TrueWater).unwrap();
/// assert!((is.percent() - now.percent() - 0.5).abs() < 1e-9);
/// ```
///
/// # Errors
/// Those of [`with_water_line`] and [`try_figure`].
pub fn try_adjusted(
    sheet: &Sheet,
    figure: Figure,
    share: Share,
    adjuster: Adjuster,
) -> Result<Sheet, FormulaError> {
    if figures(sheet).share(figure).is_ok_and(|now| now == share) {
        return Ok(sheet.clone());
    }
    match adjuster {
        Adjuster::Line(at) => try_figure(sheet, figure, share, Some(at)),
        Adjuster::Water => {
            let (formula, at) = with_water_line(&sheet.formula)?;
            try_figure(&sheet.with_formula(formula), figure, share, Some(at))
        }
    }
}

/// Returns the step that leads to the weight, in g, of the ingredient by which [`try_adjusted`] sets
/// a figure; none where the figure stays as it is, or cannot be had.
#[must_use]
pub fn adjusted_working(
    sheet: &Sheet,
    figure: Figure,
    share: Share,
    adjuster: Adjuster,
) -> Vec<WorkingLine> {
    if figures(sheet).share(figure).is_ok_and(|now| now == share) {
        return Vec::new();
    }
    let found = match adjuster {
        Adjuster::Line(at) => reached(sheet, figure, share, Some(at)),
        Adjuster::Water => with_water_line(&sheet.formula).and_then(|(formula, at)| {
            reached(&sheet.with_formula(formula), figure, share, Some(at))
        }),
    };
    found.map_or_else(|_| Vec::new(), |found| found.working())
}

/// Half a point more or less; a share at the end of its range stays there.
#[must_use]
pub fn nudged(share: Share, is_more: bool) -> Share {
    if is_more {
        share.try_plus(STEP).unwrap_or(share)
    } else {
        share.less(STEP)
    }
}
