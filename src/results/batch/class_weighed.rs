//! Why a class weighs more than the dough of its loaves: filling and topping, steam, and what stays in
//! bowls.

use super::batch_results::BatchResults;
use super::class::{ClassWeights, of as class_of};
use super::small_mass::is_told;
use crate::engine::class::ClassSettings;
use crate::engine::formula::Formula;
use crate::engine::quantity::Mass;
use crate::sheet::{Scales, Sheet};

/// What a class weighs in all, and what of it is no dough in a tin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassWeighed {
    /// All lines of all benches.
    pub all: Mass,
    /// Filling, topping and wash.
    pub beside: Mass,
    /// Steam that leaves the pastes.
    pub steam: Mass,
    /// What stays in bowls and on benches, and what rounding to the scales adds.
    pub left: Mass,
}

/// What the class weighs in all, where it is more than the dough of its loaves.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::{class, class_weighed};
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let class = class::of(&sheet, &ClassSettings::default(), Kitchen::default().scales);
/// let weights = class.weights?;
/// let weighed = class_weighed::of(&weights).unwrap();
/// let no_dough = weighed.beside + weighed.steam + weighed.left;
/// assert!((weighed.all.less(no_dough) - weights.class.dough).grams().abs() < 1e-6);
/// # Ok::<(), softcrumb::engine::class::ClassError>(())
/// ```
#[must_use]
pub fn of(weights: &ClassWeights) -> Option<ClassWeighed> {
    let formula = &weights.total.formula;
    let all = all_of(formula);
    let of_dough: Mass = formula.dough_parts().map(|part| part.mass()).sum();
    let steam: Mass = formula.dough_parts().map(|part| part.steam).sum();
    let dough = weights.class.dough;
    let found = ClassWeighed {
        all,
        beside: all.less(of_dough),
        steam,
        left: of_dough.less(steam).less(dough),
    };
    is_told(all.less(dough)).then_some(found)
}

fn all_of(formula: &Formula) -> Mass {
    formula.parts.iter().map(|part| part.mass()).sum()
}

/// All that a class's batch weighs, in its two ways.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TwoWays {
    /// As one batch, as the weighing list has it.
    pub one_batch: Mass,
    /// Weighed bench by bench, each by its own scale and with its own rest in the bowl.
    pub by_benches: Mass,
}

/// What the batch weighs as one and bench by bench, where it is the class's and they differ.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::{self, class_batch, class_weighed};
/// use softcrumb::sheet::{Kitchen, Sheet, examples};
///
/// let (_, mut sheet) = examples().remove(0);
/// let scales = Kitchen::default().scales;
/// let class = ClassSettings::default();
/// let class = class.with_loaf(class.loaf);
/// let two = |sheet: &Sheet| class_weighed::two_ways(sheet, &batch::of(sheet, scales), &class, scales);
/// assert_eq!(two(&sheet), None);
/// sheet.batch = class_batch::of_all(&sheet, &class);
/// // Thirteen scales that show whole grams do not add up to what one shows.
/// assert!(two(&sheet).is_some());
/// ```
#[must_use]
pub fn two_ways(
    sheet: &Sheet,
    batch: &BatchResults,
    settings: &ClassSettings,
    scales: Scales,
) -> Option<TwoWays> {
    if !settings.is_made_by(sheet.batch.wanted) {
        return None;
    }
    let weights = class_of(sheet, settings, scales).weights.ok()?;
    let found = TwoWays {
        one_batch: all_of(&batch.rounded.as_ref()?.formula),
        by_benches: all_of(&weights.total.formula),
    };
    let differs = (found.by_benches - found.one_batch).size();
    is_told(differs).then_some(found)
}
