//! What a plan is solved around: nights, now, what is done, and one pair of hands.

use super::doing::{Doing, doing};
use super::input::DayInput;
use super::nights::nights_between;
use crate::engine::plan::{Aim, Around, Done, Plan};
use crate::engine::quantity::{Instant, Minutes};
use crate::sheet::Moment;
use crate::sheet::day::{Bake, Bench};

/// How far around the target nights are looked for.
const NIGHTS_WITHIN_DAYS: f64 = 6.0;

/// What a plan is solved around.
pub(super) fn around(input: &DayInput, plan: &Plan, aim: Aim) -> Around {
    let (Aim::Table(at) | Aim::From(at)) = aim;
    let days = Minutes::from_hours(NIGHTS_WITHIN_DAYS * 24.0).unwrap_or(Minutes::ZERO);
    Around {
        nights: nights_between(input, at.earlier(days), at.later(days)),
        now: Some(input.now.instant()),
        done: input.bench.map_or_else(Vec::new, |bench| {
            in_hand(bench, plan, input.now, done(&bench.bake, plan))
        }),
        one_pair_of_hands: input.settings.one_pair_of_hands,
    }
}

/// The steps of a bake that the plan has too.
fn done(bake: &Bake, plan: &Plan) -> Vec<Done> {
    let steps = bake.steps.iter().filter_map(|done| {
        Some(Done {
            step: plan.place(done.step)?,
            began: done.began.instant(),
            ended: done.ended.map(Moment::instant),
        })
    });
    steps.collect()
}

/// The same with the step that the bench shows, that hands are at and that is not noted: it began as its
/// *Done* would note it now, so that it does not begin anew with each minute.
fn in_hand(bench: &Bench, plan: &Plan, now: Moment, mut done: Vec<Done>) -> Vec<Done> {
    let shown = bench.at.filter(|at| doing(at.work) == Doing::ByHand);
    let shown = shown.filter(|at| bench.bake.began(*at).is_none());
    let place = shown.and_then(|at| plan.place(at));
    let Some((place, step)) = place.and_then(|place| Some((place, plan.steps().get(place)?)))
    else {
        return done;
    };
    let ends = |input: &usize| {
        let own = done.iter().find(|own| own.step == *input)?;
        let at = plan.steps().get(*input)?.at;
        let timer = bench.timers.iter().find(|timer| timer.step == at);
        own.ended.or_else(|| Some(timer?.ends.instant()))
    };
    let Some(ended) = step.after.iter().map(ends).collect::<Option<Vec<_>>>() else {
        return done;
    };
    let now = now.instant();
    let earliest = now.earlier(step.hands);
    // What waits for nothing is done when it was planned, not before.
    let planned = bench.planned(step.at).map(|one| one.begins.instant());
    let planned = planned.filter(|_| step.after.is_empty());
    let after = ended.into_iter().chain(planned);
    let began = after.fold(earliest, Instant::max).min(now);
    for input in done.iter_mut().filter(|own| step.after.contains(&own.step)) {
        input.ended = input.ended.or(Some(began));
    }
    done.push(Done {
        step: place,
        began,
        ended: None,
    });
    done
}
