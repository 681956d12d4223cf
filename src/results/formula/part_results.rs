//! `LineResults` and `PartResults`: the numbers of one row and of one card, drawn first.

use crate::engine::formula::{
    Basis, FormulaError, LineAt, PartKind, PartTotals, part_totals, percentage,
};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::WorkingLine;
use crate::sheet::Sheet;

/// The numbers of one line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LineResults {
    /// Its weight.
    pub mass: Mass,
    /// Its baker's percentage; `None` where there is no flour to compare with.
    pub percentage: Option<Share>,
    /// Whether its weight differs from that in the saved sheet.
    pub is_changed: bool,
}

/// A share that the user can set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SettableShare {
    /// The share; `None` where there is none.
    pub share: Option<Share>,
    /// Whether it differs from that in the saved sheet.
    pub is_changed: bool,
}

/// The numbers of one part.
#[derive(Clone, Debug, PartialEq)]
pub struct PartResults {
    /// What becomes of it.
    pub kind: PartKind,
    /// How many lines it has.
    pub lines: usize,
    /// Its weight.
    pub mass: Mass,
    /// Whether it is made ahead of the dough, so that its shares can be set.
    pub is_made_ahead: bool,
    /// What it is, compared with the flour of the dough.
    pub totals: Result<PartTotals, FormulaError>,
    /// Its flour as a share of all flour.
    pub flour_share: SettableShare,
    /// Its liquid on its own flour.
    pub liquid_to_flour: SettableShare,
    /// Whether the formula may have one line more.
    pub has_room: bool,
}

/// The numbers of one line on a basis; `None` where the sheet has no such line.
///
/// `saved` is the sheet without the trial that is on, for what the trial changed.
///
/// ```
/// use softcrumb::engine::formula::{Basis, LineAt};
/// use softcrumb::results::formula;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let at = LineAt { part: 0, line: 0 };
/// let line = formula::line(&sheet, None, at, Basis::AllFlour).unwrap();
/// assert_eq!(line.mass, sheet.formula.parts[0].lines[0].mass);
/// assert!(!line.is_changed);
/// ```
#[must_use]
pub fn line(sheet: &Sheet, saved: Option<&Sheet>, at: LineAt, basis: Basis) -> Option<LineResults> {
    let now = sheet.formula.line(at)?.mass;
    let share = percentage(&sheet.formula, at, basis).ok();
    Some(LineResults {
        mass: now,
        percentage: share.map(|percentage| percentage.share),
        is_changed: saved.is_some_and(|saved| saved_mass(sheet, saved, at) != Some(now)),
    })
}

/// What a line weighs in the saved sheet: the first line of the same ingredient stands beside the
/// first, the second beside the second, in the part that is the same among those of its kind.
fn saved_mass(sheet: &Sheet, saved: &Sheet, at: LineAt) -> Option<Mass> {
    let (parts, line) = (&sheet.formula.parts, sheet.formula.line(at)?);
    let own = parts.get(at.part)?;
    let before = parts.iter().take(at.part);
    let nth_part = before.filter(|part| part.kind == own.kind).count();
    let mut alike = saved
        .formula
        .parts
        .iter()
        .filter(|part| part.kind == own.kind);
    let beside = alike.nth(nth_part)?;
    let before = own.lines.iter().take(at.line);
    let nth_line = before.filter(|one| one.food == line.food).count();
    let mut same = beside.lines.iter().filter(|one| one.food == line.food);
    same.nth(nth_line).map(|line| line.mass)
}

/// The numbers of one part; `None` where the sheet has no such part. `saved` is as for [`line()`].
///
/// ```
/// use softcrumb::results::formula;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let part = formula::part(&sheet, None, 0).unwrap();
/// assert_eq!(part.mass, sheet.formula.parts[0].mass());
/// ```
#[must_use]
pub fn part(sheet: &Sheet, saved: Option<&Sheet>, at: usize) -> Option<PartResults> {
    let own = sheet.formula.parts.get(at)?;
    let totals = part_totals(&sheet.formula, at);
    let before = saved.map(|saved| part_totals(&saved.formula, at));
    let settable = |of: fn(&PartTotals) -> Option<Share>| {
        let of = |totals: &Result<PartTotals, FormulaError>| totals.as_ref().ok().and_then(of);
        let share = of(&totals);
        SettableShare {
            share,
            is_changed: before.as_ref().is_some_and(|before| of(before) != share),
        }
    };
    Some(PartResults {
        kind: own.kind,
        lines: own.lines.len(),
        mass: own.mass(),
        is_made_ahead: own.kind.is_made_ahead(),
        flour_share: settable(|totals| Some(totals.flour_share)),
        liquid_to_flour: settable(PartTotals::liquid_to_flour),
        has_room: sheet.formula.has_room(),
        totals,
    })
}

/// Returns the steps that lead to the figures of one part, in g and % of the flour: its weight and
/// its flour on all flour, its liquid on its own. None where the dough has no flour.
#[must_use]
pub fn part_working(sheet: &Sheet, at: usize) -> Vec<WorkingLine> {
    let totals = part_totals(&sheet.formula, at);
    totals.map_or_else(|_| Vec::new(), |totals| totals.working())
}
