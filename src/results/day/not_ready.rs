//! What the next step waits for that is not ready yet: dough that has not risen, bread that is not
//! baked, an oven that is not hot.

use super::bench_course::Course;
use super::day_results::DayResults;
use super::doing::{Doing, doing};
use super::grave::GRAVE;
use crate::engine::plan::{Step, StepAt, StepKind};
use crate::engine::quantity::{Instant, Minutes};
use crate::sheet::Moment;
use crate::sheet::day::Bench;

/// Something that a step waits for and that is not ready yet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotReady {
    /// The step that runs, or should; the oven itself where it would be lit too soon.
    pub step: StepAt,
    /// When it is over at the soonest; `None` for an oven that nobody has switched on.
    pub until: Option<Instant>,
}

/// An oven that is lit by so much too soon stands hot for nothing, min. Common practice.
const STANDS_HOT: f64 = 15.0;

/// What a step waits for and is not ready by five minutes or more, even at the soonest; of several what
/// takes longest. `None` where the step can begin.
///
/// ```
/// use softcrumb::engine::plan::{StepAt, StepKind};
/// use softcrumb::results::day::not_ready;
/// use softcrumb::sheet::Moment;
///
/// // Without a plan nothing is waited for.
/// let bake = StepAt { work: StepKind::Bake, of: 0 };
/// assert_eq!(not_ready(None, None, bake, Moment::default()), None);
/// ```
#[must_use]
pub fn not_ready(
    results: Option<&DayResults>,
    bench: Option<&Bench>,
    at: StepAt,
    now: Moment,
) -> Option<NotReady> {
    let course = Course {
        results: results?,
        bench: bench?,
    };
    let inputs = course.inputs(at).filter_map(|input| running(course, input));
    let within = |minutes| Minutes::from_minutes(minutes).unwrap_or(Minutes::ZERO);
    if let Some(lit) = lit_in_time(course, at)
        && lit >= now.instant().later(within(STANDS_HOT))
    {
        return Some(NotReady {
            step: at,
            until: Some(lit),
        });
    }
    let soon = now.instant().later(within(GRAVE));
    let late = inputs.filter(|found| found.until.is_none_or(|until| until >= soon));
    // An oven that is off takes longest: nobody knows how long.
    late.max_by_key(|found| (found.until.is_none(), found.until))
}

/// When an oven is lit so that it is hot as the bread goes in; `None` for any other step.
fn lit_in_time(course: Course<'_>, at: StepAt) -> Option<Instant> {
    let (_, timed) = course.results.find(at)?;
    (at.work == StepKind::Preheat).then_some(timed.begins)
}

/// A step that runs and is not noted as over, or an oven that is off.
fn running(course: Course<'_>, step: &Step) -> Option<NotReady> {
    if doing(step.at.work) == Doing::ByHand || course.bench.bake.is_over(step.at) {
        return None;
    }
    let until = course.soonest_end(step);
    let is_off = until.is_none() && step.at.work == StepKind::Preheat;
    (until.is_some() || is_off).then_some(NotReady {
        step: step.at,
        until,
    })
}
