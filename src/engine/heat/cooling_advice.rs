//! Advice for a cooling: the longest time on the bench, and what makes a slow one pass.

use super::cooling::{Cooling, cool};
use super::cooling_remedy::{CoolingRemedy, remedies};
use super::error::HeatError;
use crate::engine::numerics::try_first_true;
use crate::engine::quantity::Minutes;

/// What would have to be done.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingAdvice {
    /// The longest it may stay on the bench and still pass; `None` where not even the fridge from
    /// the start is fast enough.
    pub bench_at_most: Option<Minutes>,
    /// What makes it pass, each by itself, with the times it then takes.
    pub remedies: Vec<CoolingRemedy>,
}

/// The longest time on the bench that is tried, min.
const LONGEST: f64 = 512.0;

/// Finds how long it may stay on the bench, and what makes it pass where it does not.
///
/// Each is found by trying: some forty runs of the solver, so it is asked for after the frame.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn advise(cooling: &Cooling) -> Result<CoolingAdvice, HeatError> {
    let fails = |minutes: f64| -> Result<bool, HeatError> {
        let on_bench = Minutes::from_minutes(minutes)?;
        let cooled = cool(&Cooling {
            on_bench,
            ..*cooling
        })?;
        Ok(!cooled.passes)
    };
    // Nine halvings of 512 minutes end at whole minutes.
    let first_failing = try_first_true(0.0..=LONGEST, 9, fails)?.unwrap_or(LONGEST);
    let bench_at_most = if first_failing > 0.0 {
        Some(Minutes::from_minutes(first_failing - 1.0)?)
    } else {
        None
    };
    let remedies = if cool(cooling)?.passes {
        Vec::new()
    } else {
        remedies(cooling)?
    };
    Ok(CoolingAdvice {
        bench_at_most,
        remedies,
    })
}
