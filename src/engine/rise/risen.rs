//! Risen: when a dough is up, as a range, and its volume on the way.

use super::cardinal::Cardinal;
use super::equivalent_time::sums;
use super::error::RiseError;
use super::reference_rise::ReferenceRise;
use crate::engine::heat::Curve;
use crate::engine::numerics::{first_crossing, interpolate};
use crate::engine::quantity::{Factor, Minutes, Share, Temperature};

/// What is asked of a rise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RiseAsked {
    /// The rise that is known.
    pub anchor: ReferenceRise,
    /// How fast yeast is at each temperature.
    pub cardinal: Cardinal,
    /// How many times as fast as the dough of the known rise, for what is in it.
    pub yeast_activity: Factor,
    /// How many times its volume it comes to.
    pub volume: Factor,
}

/// One moment of a rise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RisePoint {
    /// Since the beginning.
    pub time: Minutes,
    /// The mean temperature of the dough.
    pub temperature: Temperature,
    /// How much of the rise is done; 1 when it is up.
    pub done: Share,
    /// How many times its volume it is.
    pub volume: Factor,
}

/// A rise.
#[derive(Clone, Debug, PartialEq)]
pub struct Risen {
    /// What was asked.
    pub asked: RiseAsked,
    /// When it is up.
    pub due: Minutes,
    /// Nine of ten are not up before.
    pub soonest: Minutes,
    /// Nine of ten are up by then; `None` where the course ends before.
    pub latest: Option<Minutes>,
    /// How fast the yeast is at the temperature of the known rise.
    pub anchor_rate: Share,
    /// The mean rate of the yeast until the dough was up.
    pub mean_rate: Share,
    /// Moment by moment, up to the latest and somewhat beyond.
    pub points: Vec<RisePoint>,
}

/// When a dough that goes through these temperatures is up.
///
/// `∫γ dt = γₐ·A / v`: as much yeast work as the known rise of A minutes took at its temperature,
/// less where the dough is more vigorous. The range is that sum over and times one and the spread.
/// Volume grows in step with the work, from one to what is asked; gas that escapes from an old
/// dough, and the dough's own warmth, are left out. At a constant temperature the sum is exact.
///
/// # Errors
/// [`RiseError::AnchorAtRest`] and [`RiseError::AnchorOfNoTime`] where the known rise says nothing;
/// [`RiseError::NotInTime`] where it is not up by the end of the course.
pub fn rise(course: &Curve, asked: &RiseAsked) -> Result<Risen, RiseError> {
    let at = asked.anchor.at;
    let anchor_rate = asked.cardinal.fraction(at);
    if anchor_rate <= 0.0 {
        return Err(RiseError::AnchorAtRest { at });
    }
    let needed = anchor_rate * asked.anchor.time.minutes() / asked.yeast_activity.number();
    if needed <= 0.0 {
        return Err(RiseError::AnchorOfNoTime);
    }
    let sums = sums(course, asked.cardinal);
    let (followed, reached) = sums.last().copied().unwrap_or_default();
    let not_in_time = || -> Result<RiseError, RiseError> {
        Ok(RiseError::NotInTime {
            followed: Minutes::from_minutes(followed)?,
            reached: Share::from_fraction(reached / needed)?,
        })
    };
    let wide = 1.0 + asked.anchor.spread.fraction();
    let Some(due) = reaches(&sums, needed) else {
        return Err(not_in_time()?);
    };
    let soonest = reaches(&sums, needed / wide).unwrap_or(due);
    let latest = reaches(&sums, needed * wide);
    let mean = if due > 0.0 { needed / due } else { anchor_rate };
    let until = latest.unwrap_or(followed) * 1.15;
    Ok(Risen {
        asked: *asked,
        due: Minutes::from_minutes(due)?,
        soonest: Minutes::from_minutes(soonest)?,
        latest: latest.map(Minutes::from_minutes).transpose()?,
        anchor_rate: Share::from_fraction(anchor_rate)?,
        mean_rate: Share::from_fraction(mean)?,
        points: points(course, &sums, needed, until, asked.volume)?,
    })
}

/// When the sum first equals `needed`, min; linear between two moments.
fn reaches(sums: &[(f64, f64)], needed: f64) -> Option<f64> {
    let points = std::iter::once((0.0, 0.0)).chain(sums.iter().copied());
    first_crossing(points, needed, 0.0)
}

fn points(
    course: &Curve,
    sums: &[(f64, f64)],
    needed: f64,
    until: f64,
    volume: Factor,
) -> Result<Vec<RisePoint>, RiseError> {
    let grows = volume.number() - 1.0;
    let mut found = Vec::with_capacity(sums.len());
    for (moment, (time, sum)) in course.moments.iter().zip(sums) {
        let done = sum / needed;
        found.push(RisePoint {
            time: moment.time,
            temperature: moment.mean,
            done: Share::from_fraction(done)?,
            volume: Factor::from_number((1.0 + grows * done).max(*Factor::RANGE.start()))?,
        });
        if *time > until {
            break;
        }
    }
    Ok(found)
}

impl Risen {
    /// How much of the rise is done after some time; its value at the end of the course for all later times.
    #[must_use]
    pub fn done_at(&self, time: Minutes) -> Share {
        let points = self.points.iter();
        let points = points.map(|point| (point.time.minutes(), point.done.fraction()));
        let done = interpolate(std::iter::once((0.0, 0.0)).chain(points), time.minutes());
        Share::from_fraction(done.unwrap_or(0.0)).unwrap_or_default()
    }
}
