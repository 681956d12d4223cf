//! Batch targets: the same batch asked for in another way, and which ingredient is on hand.

use super::scale;
use crate::engine::batch::{BatchTarget, TargetKind};
use crate::engine::formula::{Formula, LineAt};
use crate::engine::quantity::Mass;
use crate::sheet::Sheet;

/// The target of another kind for the batch of a sheet.
///
/// `previous`, the last target of that kind, is used where the formula can still be scaled to it.
/// Otherwise the target that asks for the same batch is given. None where no batch can be scaled.
///
/// ```
/// use softcrumb::engine::batch::TargetKind;
/// use softcrumb::results::batch::{scale, target};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// let before = scale(&sheet).unwrap().needed;
/// sheet.batch.wanted = target::of_kind(&sheet, TargetKind::Dough, None).unwrap();
///
/// assert!((scale(&sheet).unwrap().needed - before).grams().abs() < 1e-9);
/// ```
#[must_use]
pub fn of_kind(
    sheet: &Sheet,
    kind: TargetKind,
    previous: Option<BatchTarget>,
) -> Option<BatchTarget> {
    let possible = |target: &BatchTarget| scale(&with_target(sheet, *target)).is_ok();
    previous
        .filter(possible)
        .or_else(|| of_same_batch(sheet, kind))
}

/// The target of a kind that asks for the batch of a sheet; for the formula made once where that
/// batch cannot be scaled.
fn of_same_batch(sheet: &Sheet, kind: TargetKind) -> Option<BatchTarget> {
    scale(sheet)
        .or_else(|_| scale(&with_target(sheet, BatchTarget::default())))
        .ok()
        .map(|scaled| scaled.target_of_kind(kind))
}

fn with_target(sheet: &Sheet, target: BatchTarget) -> Sheet {
    let mut with = sheet.clone();
    with.batch.wanted = target;
    with
}

/// Every ingredient that weighs something, by the first line that holds it.
///
/// ```
/// use softcrumb::results::batch::target;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let lines = target::ingredients(&sheet.formula);
/// let first = sheet.formula.line(lines[0]).unwrap();
/// assert!(first.mass.grams() > 0.0);
/// ```
#[must_use]
pub fn ingredients(formula: &Formula) -> Vec<LineAt> {
    let mut found = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        for (line, one) in own.lines.iter().enumerate() {
            let at = LineAt { part, line };
            if one.mass > Mass::ZERO && first_line(formula, at) == Some(at) {
                found.push(at);
            }
        }
    }
    found
}

/// Returns the first line with the ingredient that is on hand; `None` under another kind of target.
#[must_use]
pub fn ingredient_on_hand(sheet: &Sheet) -> Option<LineAt> {
    let BatchTarget::OnHand { at, .. } = sheet.batch.wanted else {
        return None;
    };
    first_line(&sheet.formula, at)
}

/// The target that asks for the batch of a sheet by all there is of the ingredient of a line.
/// None where no batch can be scaled to it.
///
/// ```
/// use softcrumb::results::batch::{scale, target};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// let before = scale(&sheet).unwrap().needed;
/// let line = target::ingredients(&sheet.formula)[1];
/// sheet.batch.wanted = target::by_ingredient(&sheet, line).unwrap();
///
/// assert!((scale(&sheet).unwrap().needed - before).grams().abs() < 1e-9);
/// ```
#[must_use]
pub fn by_ingredient(sheet: &Sheet, at: LineAt) -> Option<BatchTarget> {
    let target = scale(sheet).ok()?.target_by_ingredient(at);
    scale(&with_target(sheet, target)).is_ok().then_some(target)
}

/// The first line that holds the same ingredient as the line `at`.
fn first_line(formula: &Formula, at: LineAt) -> Option<LineAt> {
    let food = &formula.line(at)?.food;
    formula.parts.iter().enumerate().find_map(|(part, own)| {
        let line = own.lines.iter().position(|line| line.food == *food)?;
        Some(LineAt { part, line })
    })
}
