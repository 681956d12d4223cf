//! Which differences of mass are told.

use crate::engine::quantity::Mass;

/// A smaller difference is not told, g. Common practice: a kitchen scale shows whole grams.
const TOLD: f64 = 0.5;

/// Whether so much is told of.
///
/// ```
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::batch::is_told;
///
/// let of = Mass::from_grams;
/// assert!(is_told(of(5.0)?) && !is_told(of(0.4)?));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn is_told(mass: Mass) -> bool {
    mass.grams() > TOLD
}
