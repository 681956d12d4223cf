//! The batch of a class: the loaves of all or of one bench, each in a tin, in the formula's pieces.

use std::num::{NonZeroU16, NonZeroU32};

use super::batch_results::{as_formula, of, scale, shown_or_exact};
use crate::engine::batch::BatchTarget;
use crate::engine::class::ClassSettings;
use crate::engine::quantity::Mass;
use crate::sheet::{Batch, Scales, Sheet};

/// The batch of all loaves of a class, the teacher's included: a loaf in each tin, divided into as
/// many pieces as a loaf of the formula.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::{class_batch, scale};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// sheet.batch = class_batch::of_all(&sheet, &ClassSettings::default());
///
/// // Twelve students and the teacher make a loaf of 450 g each, of ten pieces.
/// assert_eq!(sheet.batch.tin.unwrap().tins.count.get(), 13);
/// assert_eq!(scale(&sheet).unwrap().pieces.count.get(), 130);
/// ```
#[must_use]
pub fn of_all(sheet: &Sheet, settings: &ClassSettings) -> Batch {
    in_loaves(sheet, settings, settings.loaves_in_all(), settings.target())
}

/// The batch of one bench's loaves: a loaf in each tin, divided as a loaf of the formula is.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::{class_batch, scale};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// sheet.batch = class_batch::of_bench(&sheet, &ClassSettings::default());
/// assert_eq!(sheet.batch.tin.unwrap().tins.count.get(), 1);
/// assert!((scale(&sheet).unwrap().needed.grams() - 450.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn of_bench(sheet: &Sheet, settings: &ClassSettings) -> Batch {
    let loaves = settings.at_bench.saturating_mul(settings.loaves);
    in_loaves(
        sheet,
        settings,
        loaves.get().into(),
        settings.bench_target(),
    )
}

/// The batch of one bench that makes so many loaves, each divided as a loaf of the formula is.
///
/// ```
/// use std::num::NonZeroU16;
///
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::{class_batch, scale};
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// let three = NonZeroU16::new(3).unwrap();
/// sheet.batch = class_batch::of_loaves(&sheet, &ClassSettings::default(), three);
/// assert!((scale(&sheet).unwrap().needed.grams() - 3.0 * 450.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn of_loaves(sheet: &Sheet, settings: &ClassSettings, loaves: NonZeroU16) -> Batch {
    let whole = BatchTarget::Pieces {
        count: loaves,
        each: settings.loaf,
    };
    in_loaves(sheet, settings, loaves.get().into(), whole)
}

/// The batch of so many loaves of the class; by the target `whole`, which counts a loaf as a piece,
/// where a loaf is one piece.
fn in_loaves(sheet: &Sheet, settings: &ClassSettings, loaves: u32, whole: BatchTarget) -> Batch {
    let mut batch = sheet.batch.clone();
    batch.wanted = in_pieces(settings, loaves, pieces_in_loaf(sheet)).unwrap_or(whole);
    if let (Some(used), Some(loaves)) = (&mut batch.tin, counted(loaves)) {
        used.tins.count = loaves;
    }
    batch
}

/// The target of all pieces of so many loaves; `None` where a loaf is one piece, or where they are
/// more than a target counts.
fn in_pieces(settings: &ClassSettings, loaves: u32, in_loaf: NonZeroU16) -> Option<BatchTarget> {
    if in_loaf == NonZeroU16::MIN {
        return None;
    }
    let in_loaf = in_loaf.get();
    Some(BatchTarget::Pieces {
        count: counted(loaves.checked_mul(in_loaf.into())?)?,
        each: Mass::from_grams(settings.loaf.grams() / f64::from(in_loaf)).ok()?,
    })
}

fn counted(count: u32) -> Option<NonZeroU16> {
    NonZeroU16::new(u16::try_from(count).ok()?)
}

/// The pieces of a loaf. In one tin the formula made once is one loaf; in several a loaf is what a
/// tin of the batch holds. Without a tin a loaf is one piece.
fn pieces_in_loaf(sheet: &Sheet) -> NonZeroU16 {
    let Some(used) = sheet.batch.tin else {
        return NonZeroU16::MIN;
    };
    let tins = NonZeroU32::from(used.tins.count);
    if tins == NonZeroU32::MIN {
        return sheet.batch.pieces;
    }
    let pieces = scale(sheet).map_or(1, |scaled| scaled.pieces.count.get());
    counted(pieces.div_ceil(tins.get())).unwrap_or(NonZeroU16::MIN)
}

/// The settings of a class whose loaf, where nobody has set it, is that of the sheet's batch.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::{class_batch, scale};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let class = class_batch::with_own_loaf(&sheet, ClassSettings::default());
/// assert_eq!(class.loaf, scale(&sheet).unwrap().needed);
/// ```
#[must_use]
pub fn with_own_loaf(sheet: &Sheet, settings: ClassSettings) -> ClassSettings {
    let own = settings.of_batch.then(|| loaf(sheet)).flatten();
    ClassSettings {
        loaf: own.unwrap_or(settings.loaf),
        ..settings
    }
}

/// The dough of a loaf of a batch: what one tin holds, or a piece without a tin. `None` where the
/// batch cannot be scaled.
///
/// ```
/// use softcrumb::results::batch::{class_batch, scale};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// // The formula fills one tin.
/// let needed = scale(&sheet).unwrap().needed;
/// assert_eq!(class_batch::loaf(&sheet), Some(needed));
/// ```
#[must_use]
pub fn loaf(sheet: &Sheet) -> Option<Mass> {
    let scaled = scale(sheet).ok()?;
    let Some(used) = sheet.batch.tin else {
        return Some(scaled.pieces.each);
    };
    Mass::from_grams(scaled.needed.grams() / f64::from(used.tins.count.get())).ok()
}

/// The sheet whose formula, made once, is what the scales show of this sheet's batch: as card and
/// link have it. What is too little for the scale is exact. As it is where it cannot be scaled.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::class_batch;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, mut sheet) = examples().remove(0);
/// sheet.batch = class_batch::of_bench(&sheet, &ClassSettings::default());
/// let weighed = class_batch::weighed_out(&sheet, Kitchen::default().scales);
/// // A kitchen scale shows whole grams.
/// let flour = weighed.formula.parts[0].lines[0].mass.grams();
/// assert!((flour - flour.round()).abs() < 1e-9);
/// ```
#[must_use]
pub fn weighed_out(sheet: &Sheet, scales: Scales) -> Sheet {
    let Ok(mut made) = as_formula(sheet) else {
        return sheet.clone();
    };
    if let Some(rounded) = of(sheet, scales).rounded {
        made.formula = shown_or_exact(&rounded);
    }
    made
}
