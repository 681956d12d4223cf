//! Why a class weighs more than the dough of its loaves: filling and topping, steam, and what stays in
//! bowls.

use super::class::ClassWeights;
use super::told::is_told;
use crate::engine::quantity::Mass;

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
    let all: Mass = formula.parts.iter().map(|part| part.mass()).sum();
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
