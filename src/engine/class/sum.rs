//! Sums of formulas of the same lines.

use super::error::ClassError;
use crate::engine::formula::Formula;
use crate::engine::quantity::Mass;

/// Formulas of the same lines, each so many times, added line by line.
///
/// # Errors
/// [`ClassError::OffScale`] when a line passes a tonne.
pub fn sum(formula: &Formula, all: &[(u32, &Formula)]) -> Result<Formula, ClassError> {
    let mut sum = formula.clone();
    for (part, own) in sum.parts.iter_mut().enumerate() {
        own.steam = total_of(all, |one| one.parts.get(part).map(|own| own.steam))?;
        for (line, written) in own.lines.iter_mut().enumerate() {
            written.mass = total_of(all, |one| {
                let own = one.parts.get(part)?;
                own.lines.get(line).map(|one| one.mass)
            })?;
            written.poured = None;
        }
    }
    Ok(sum)
}

fn total_of(
    all: &[(u32, &Formula)],
    of: impl Fn(&Formula) -> Option<Mass>,
) -> Result<Mass, ClassError> {
    let grams = all
        .iter()
        .map(|(count, one)| of(one).unwrap_or_default().grams() * f64::from(*count));
    Ok(Mass::from_grams(grams.sum())?)
}
