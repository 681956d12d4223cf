//! The batch of a sheet: its formula scaled, rounded to the scales, and written back as a formula.

use std::num::NonZeroU16;

use crate::engine::batch::{
    BatchError, BatchFigure, BatchTarget, Rounded, ScaleReading, ScaleSettings, Scaled, round,
    scale as scale_formula,
};
use crate::engine::formula::Formula;
use crate::engine::quantity::{Division, Factor};
use crate::engine::working::WorkingLine;
use crate::sheet::{Scales, Sheet};

/// The batch of a sheet on the scales of a kitchen.
#[derive(Clone, Debug, PartialEq)]
pub struct BatchResults {
    /// The formula scaled to the batch target.
    pub scaled: Result<Scaled, BatchError>,
    /// The formula as it is made: scaled, or as written where it cannot be scaled.
    pub formula: Formula,
    /// The divisions of the scales.
    pub weighing: ScaleSettings,
    /// The scaled formula rounded to those divisions; none where it cannot be scaled.
    pub rounded: Option<Rounded>,
}

/// Scales a sheet's formula to its batch target and rounds it to the divisions of the scales.
///
/// Scales whose division is none of [`Division::ALL`] count as one scale of 1 g.
///
/// ```
/// use softcrumb::results::batch;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let results = batch::of(&sheet, Kitchen::default().scales);
///
/// let scaled = results.scaled.unwrap();
/// assert_eq!(scaled.pieces.count.get(), u32::from(sheet.batch.pieces.get()));
/// assert!(results.rounded.unwrap().lines.len() > 5);
/// ```
#[must_use]
pub fn of(sheet: &Sheet, scales: Scales) -> BatchResults {
    let weighing = divisions(scales);
    let scaled = scale(sheet);
    let (formula, rounded) = match &scaled {
        Ok(scaled) => (
            scaled.formula.clone(),
            Some(round(&scaled.formula, weighing)),
        ),
        Err(_) => (sheet.formula.clone(), None),
    };
    BatchResults {
        scaled,
        formula,
        weighing,
        rounded,
    }
}

/// The divisions of the scales; one scale of 1 g where either is none of [`Division::ALL`].
pub(super) fn divisions(scales: Scales) -> ScaleSettings {
    ScaleSettings::from_masses(scales.main, scales.pocket).unwrap_or(ScaleSettings {
        main: Division::ONE_GRAM,
        pocket: None,
    })
}

/// What a bench has in the bowl: what its scale shows, and the exact mass where that shows nothing,
/// because such a line is measured in another way.
pub(super) fn shown_or_exact(bench: &Rounded) -> Formula {
    let mut formula = bench.formula.clone();
    for line in &bench.lines {
        let own = formula.parts.get_mut(line.at.part);
        let own = own.and_then(|part| part.lines.get_mut(line.at.line));
        if let Some(own) = own.filter(|_| line.reading == ScaleReading::BelowScale) {
            own.mass = line.exact;
        }
    }
    formula
}

/// Scales a sheet's formula to its batch target.
///
/// ```
/// use softcrumb::engine::batch::BatchTarget;
/// use softcrumb::engine::quantity::Factor;
/// use softcrumb::results::batch;
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// sheet.batch.wanted = BatchTarget::Times(Factor::from_number(2.0).unwrap());
/// let scaled = batch::scale(&sheet).unwrap();
///
/// let (once, twice) = (sheet.formula.dough(), scaled.formula.dough());
/// assert_eq!(twice.grams(), 2.0 * once.grams());
/// ```
///
/// # Errors
/// [`BatchError`] when the formula has no dough or none of what is on hand, when losses take all
/// of the dough, or when a mass or the factor leaves its range.
pub fn scale(sheet: &Sheet) -> Result<Scaled, BatchError> {
    let batch = &sheet.batch;
    scale_formula(&sheet.formula, batch.wanted, batch.losses, batch.pieces)
}

/// A sheet's formula as it is made: scaled, or as written where it cannot be scaled.
///
/// ```
/// use softcrumb::results::batch;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = batch::scaled_formula(&sheet);
/// // Scaling changes weights, never parts.
/// assert_eq!(scaled.parts.len(), sheet.formula.parts.len());
/// ```
#[must_use]
pub fn scaled_formula(sheet: &Sheet) -> Formula {
    scale(sheet).map_or_else(|_| sheet.formula.clone(), |scaled| scaled.formula)
}

/// The sheet whose formula, made once, is the batch of this sheet.
///
/// The batch target stays, except that a multiple of the formula becomes 1.
///
/// ```
/// use softcrumb::results::batch;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = batch::scale(&sheet).unwrap();
/// let made_once = batch::as_formula(&sheet).unwrap();
///
/// assert_eq!(made_once.formula.dough(), scaled.formula.dough());
/// ```
///
/// # Errors
/// [`BatchError`] when the batch cannot be scaled, or when a line of it passes a tonne.
pub fn as_formula(sheet: &Sheet) -> Result<Sheet, BatchError> {
    let scaled = scale(sheet)?;
    let mut batch = sheet.clone();
    batch.formula = scaled.as_formula(&sheet.formula)?;
    batch.batch.pieces = scaled.pieces.count.try_into().unwrap_or(NonZeroU16::MAX);
    if let BatchTarget::Times(times) = &mut batch.batch.wanted {
        *times = Factor::ONE;
    }
    Ok(batch)
}

impl BatchResults {
    /// Returns whether the batch is the formula made exactly once.
    #[must_use]
    pub fn is_formula_once(&self) -> bool {
        let scaled = self.scaled.as_ref();
        scaled.is_ok_and(|scaled| scaled.factor == Factor::ONE)
    }

    /// Returns the steps that lead to a figure of the batch; none where it cannot be scaled.
    #[must_use]
    pub fn working_of(&self, figure: BatchFigure) -> Vec<WorkingLine> {
        let scaled = self.scaled.as_ref();
        scaled.map_or_else(|_| Vec::new(), |scaled| scaled.working_of(figure))
    }
}
