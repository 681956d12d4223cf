//! What a plan is solved around: nights, now, what is done, and one pair of hands.

use super::input::DayInput;
use super::nights::nights_between;
use crate::engine::plan::{Aim, Around, Done, Plan};
use crate::engine::quantity::Minutes;
use crate::sheet::Moment;
use crate::sheet::day::Bake;

/// How far around the target nights are looked for.
const NIGHTS_WITHIN_DAYS: f64 = 6.0;

/// What a plan is solved around.
pub(super) fn around(input: &DayInput, plan: &Plan, aim: Aim) -> Around {
    let (Aim::Table(at) | Aim::From(at)) = aim;
    let days = Minutes::from_hours(NIGHTS_WITHIN_DAYS * 24.0).unwrap_or(Minutes::ZERO);
    Around {
        nights: nights_between(input, at.earlier(days), at.later(days)),
        now: Some(input.now.instant()),
        done: input.bake().map_or_else(Vec::new, |bake| done(bake, plan)),
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
