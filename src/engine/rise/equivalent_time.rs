//! `EquivalentTime`: what a dough went through, told as minutes at one temperature.

use super::cardinal::Cardinal;
use super::error::RiseError;
use crate::engine::heat::Curve;
use crate::engine::quantity::{Minutes, Share, Temperature};
use crate::engine::working::{WorkingLine, given};

/// What a dough went through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EquivalentTime {
    /// How long it took.
    pub took: Minutes,
    /// The mean rate of the yeast, as a share of its maximum.
    pub mean_rate: Share,
    /// The temperature it is held against.
    pub at: Temperature,
    /// How fast the yeast is there.
    pub rate_there: Share,
    /// As much happened as in so long there.
    pub equals: Minutes,
}

/// What the yeast did along a course of temperatures, as minutes at `at`.
///
/// `t = ∫γ dt / γ(at)`, the rate taken at the dough's mean temperature, by the trapezoidal rule
/// between the moments of the course. That its own heat warms the dough is left out.
///
/// # Errors
/// [`RiseError::AnchorAtRest`] where yeast does not work at `at`.
pub fn equivalent_time(
    course: &Curve,
    cardinal: Cardinal,
    at: Temperature,
) -> Result<EquivalentTime, RiseError> {
    let there = cardinal.fraction(at);
    if there <= 0.0 {
        return Err(RiseError::AnchorAtRest { at });
    }
    let sums = sums(course, cardinal);
    let (took, sum) = sums.last().copied().unwrap_or_default();
    let mean = if took > 0.0 { sum / took } else { 0.0 };
    Ok(EquivalentTime {
        took: Minutes::from_minutes(took)?,
        mean_rate: Share::from_fraction(mean)?,
        at,
        rate_there: Share::from_fraction(there)?,
        equals: Minutes::from_minutes(sum / there)?,
    })
}

/// Time, min, and ∫γ dt up to it, min, moment by moment.
pub(super) fn sums(course: &Curve, cardinal: Cardinal) -> Vec<(f64, f64)> {
    let mut found = Vec::with_capacity(course.moments.len());
    let mut sum = 0.0;
    let mut before: Option<(f64, f64)> = None;
    for moment in &course.moments {
        let (time, rate) = (moment.time.minutes(), cardinal.fraction(moment.mean));
        if let Some((earlier, was)) = before {
            sum += (time - earlier) * was.midpoint(rate);
        }
        found.push((time, sum));
        before = Some((time, rate));
    }
    found
}

impl EquivalentTime {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "t × m / g".into(),
            with: vec![
                given("t", "time it took", self.took.minutes(), "min"),
                given("m", "mean speed", self.mean_rate.fraction(), ""),
                given("g", "speed there", self.rate_there.fraction(), ""),
            ],
            result: given("e", "as long there", self.equals.minutes(), "min"),
            source:
                "Rosso, Lobry and Flandrois 1993, J. Theor. Biol. 162:447-463, summed over time"
                    .into(),
        }]
    }
}
