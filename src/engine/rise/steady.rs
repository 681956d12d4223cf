//! Steady: a dough that stays as warm as it is.

use super::error::RiseError;
use crate::engine::heat::{Curve, Sample};
use crate::engine::quantity::{Heat, Minutes, Temperature};

/// Moments between the beginning and the end.
const PARTS: u16 = 24;

/// The course of a dough that stays at one temperature, to be laid beside one that does not.
///
/// # Errors
/// [`RiseError::OffScale`] never within the ranges of the quantities.
pub fn steady(at: Temperature, minutes: Minutes) -> Result<Curve, RiseError> {
    let mut moments = Vec::with_capacity(usize::from(PARTS) + 1);
    for component in 0..=PARTS {
        let share = f64::from(component) / f64::from(PARTS);
        moments.push(Sample {
            time: Minutes::from_minutes(minutes.minutes() * share)?,
            centre: at,
            mean: at,
            surface: at,
        });
    }
    Ok(Curve {
        moments,
        lost: Heat::from_joules(0.0),
    })
}
