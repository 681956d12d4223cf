//! Batch targets: the same batch asked for in another way, and which ingredient is on hand.

use std::num::NonZeroU16;

use super::scale;
use crate::engine::batch::{BatchTarget, TargetKind};
use crate::engine::formula::{Formula, LineAt};
use crate::engine::numerics::whole;
use crate::engine::quantity::Mass;
use crate::sheet::{Batch, Sheet};

/// The batch of a sheet by another target, its pieces as many as they were: where the new target does
/// not count them, the pieces of the formula made once follow. As it is where it cannot be scaled.
///
/// ```
/// use std::num::NonZeroU16;
/// use softcrumb::engine::batch::{BatchTarget, TargetKind};
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::batch::{scale, target};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// let each = Mass::from_grams(70.0).unwrap();
/// let count = NonZeroU16::new(9).unwrap();
/// sheet.batch.wanted = BatchTarget::Pieces { count, each };
/// let by_dough = target::of_kind(&sheet, TargetKind::Dough, None).unwrap();
/// sheet.batch = target::with_pieces_kept(&sheet, by_dough);
///
/// assert_eq!(scale(&sheet).unwrap().pieces.count.get(), 9);
/// ```
#[must_use]
pub fn with_pieces_kept(sheet: &Sheet, target: BatchTarget) -> Batch {
    let mut changed = with_target(sheet, target);
    let before = scale(sheet).map(|scaled| scaled.pieces.count.get());
    if let (Ok(before), Ok(now)) = (before, scale(&changed))
        && !target.kind().counts_pieces()
        && now.pieces.count.get() != before
    {
        let once = f64::from(before) / now.factor.number().max(f64::MIN_POSITIVE);
        let once = u16::try_from(whole(once + 0.5))
            .ok()
            .and_then(NonZeroU16::new);
        changed.batch.pieces = once.unwrap_or(changed.batch.pieces);
    }
    changed.batch
}

/// The target of as many pieces of the same weight; none where the batch cannot be scaled.
///
/// ```
/// use std::num::NonZeroU16;
/// use softcrumb::results::batch::{scale, target};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// let each = scale(&sheet).unwrap().pieces.each;
/// sheet.batch.wanted = target::of_pieces(&sheet, NonZeroU16::new(7).unwrap()).unwrap();
///
/// let pieces = scale(&sheet).unwrap().pieces;
/// assert_eq!(pieces.count.get(), 7);
/// assert!((pieces.each.grams() - each.grams()).abs() < 1e-9);
/// ```
#[must_use]
pub fn of_pieces(sheet: &Sheet, count: NonZeroU16) -> Option<BatchTarget> {
    let each = scale(sheet).ok()?.pieces.each;
    Some(BatchTarget::Pieces { count, each })
}

/// The target that fills the tins of a sheet with `dough`, its pieces as many as they were.
///
/// ```
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::batch::{scale, target};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// let before = scale(&sheet).unwrap().pieces.count;
/// sheet.batch.wanted = target::of_dough(&sheet, Mass::from_grams(644.0).unwrap());
///
/// let scaled = scale(&sheet).unwrap();
/// assert!((scaled.needed.grams() - 644.0).abs() < 1e-6);
/// assert_eq!(scaled.pieces.count, before);
/// ```
#[must_use]
pub fn of_dough(sheet: &Sheet, dough: Mass) -> BatchTarget {
    let pieces = scale(sheet).ok().and_then(|scaled| {
        let count = scaled.pieces.count.get();
        let each = Mass::from_grams(dough.grams() / f64::from(count)).ok()?;
        let count = NonZeroU16::try_from(scaled.pieces.count).ok()?;
        Some(BatchTarget::Pieces { count, each })
    });
    pieces.unwrap_or(BatchTarget::Dough(dough))
}

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
