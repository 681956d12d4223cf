//! Advice for a cooling: the longest time on the bench, and what makes a slow one pass.

use super::cooling::{Cooling, cool};
use super::cooling_remedy::{CoolingRemedy, remedies};
use super::error::HeatError;
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

/// Finds how long it may stay on the bench, and what makes it pass where it does not.
///
/// Each is found by trying: some forty runs of the solver, so it is asked for after the frame.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn advise(cooling: &Cooling) -> Result<CoolingAdvice, HeatError> {
    let passes = |minutes: u16| -> Result<bool, HeatError> {
        let on_bench = Minutes::from_minutes(f64::from(minutes))?;
        Ok(cool(&Cooling {
            on_bench,
            ..*cooling
        })?
        .passes)
    };
    let bench_at_most = match last_that_holds(passes)? {
        Some(minutes) => Some(Minutes::from_minutes(f64::from(minutes))?),
        None => None,
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

/// The largest number below 512 for which `holds`, where it holds for all smaller ones; `None`
/// where it does not even hold for 0.
fn last_that_holds(
    holds: impl Fn(u16) -> Result<bool, HeatError>,
) -> Result<Option<u16>, HeatError> {
    if !holds(0)? {
        return Ok(None);
    }
    let mut found = 0;
    for bit in [256, 128, 64, 32, 16, 8, 4, 2, 1] {
        if holds(found + bit)? {
            found += bit;
        }
    }
    Ok(Some(found))
}
