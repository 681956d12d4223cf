//! Observed: what a bake shows at a step, noted so that it can be learnt from.

use super::day_results::Planned;
use crate::engine::formula::Formula;
use crate::engine::heat::dough_temperature;
use crate::engine::learn::{MeasuredDuration, Weighed};
use crate::engine::plan::StepKind;
use crate::engine::quantity::{Mass, Minutes, Temperature, WarmingRate};
use crate::engine::rise::{ReferenceRise, RiseError, Risen};
use crate::results::heat::mixer_load;
use crate::sheet::Kitchen;
use crate::sheet::day::{Bake, Bench, DaySettings};
use crate::sheet::{Moment, Sheet};

/// How warm a dough would come off the mixer if mixing did not warm it.
#[must_use]
pub fn unmixed(sheet: &Sheet, kitchen: &Kitchen) -> Option<Temperature> {
    let mut dough = mixer_load(&sheet.formula, kitchen, &sheet.heat).ok()?.dough;
    dough.friction = WarmingRate::from_kelvin_per_minute(0.0).ok()?;
    Some(dough_temperature(&dough).ok()?.temperature)
}

/// The formula as it was really weighed.
#[must_use]
pub fn as_weighed(formula: &Formula, bench: &Bench) -> Formula {
    let mut formula = formula.clone();
    for weighing in &bench.weighed {
        if let Some(line) = formula.line_mut(weighing.at) {
            line.poured = weighing.mass;
        }
    }
    formula
}

/// What lies on the bench to be divided, beside what went into the bowl.
pub fn note_dough(bake: &mut Bake, into_bowl: Mass, on_bench: Mass) {
    bake.noted.bowl = Some(Weighed {
        before: into_bowl,
        after: on_bench,
    });
}

/// What comes out of the oven, beside what was divided; nothing where that was not noted.
pub fn note_bread(bake: &mut Bake, bread: Mass) {
    bake.noted.oven_loss = bake.noted.bowl.map(|bowl| Weighed {
        before: bowl.after,
        after: bread,
    });
}

/// How long rises and bake took, as far as they are over, beside what the formula's own statement
/// gave for that day.
pub fn note_times(bake: &mut Bake, planned: &Planned, settings: &DaySettings, bake_time: Minutes) {
    let rises = &settings.rises;
    let bulk = ReferenceRise::stated(rises.bulk.time, rises.bulk.at);
    let proof = ReferenceRise::stated(rises.proof.time, rises.proof.at);
    let (bulk, proof) = (
        expected(&planned.rising.bulk, bulk),
        expected(&planned.rising.proof, proof),
    );
    bake.noted.bulk = took(bake, StepKind::Bulk, bulk).or(bake.noted.bulk);
    bake.noted.proof = took(bake, StepKind::Proof, proof).or(bake.noted.proof);
    bake.noted.bake = took(bake, StepKind::Bake, Some(bake_time)).or(bake.noted.bake);
}

/// What the formula's own statement gives where bakes have taught another: in proportion.
fn expected(risen: &Result<Risen, RiseError>, stated: ReferenceRise) -> Option<Minutes> {
    let risen = risen.as_ref().ok()?;
    let learnt = risen.asked.anchor.time.minutes();
    let due = risen.due.minutes() * stated.time.minutes();
    (learnt > 0.0)
        .then(|| Minutes::from_minutes(due / learnt).ok())
        .flatten()
}

/// From the first beginning to the last end of a work; nothing while some of it is under way.
fn took(bake: &Bake, work: StepKind, expected: Option<Minutes>) -> Option<MeasuredDuration> {
    let steps: Vec<(Moment, Option<Moment>)> = bake
        .steps
        .iter()
        .filter(|done| done.step.work == work)
        .map(|done| (done.began, done.ended))
        .collect();
    let began = steps.iter().map(|(began, _)| began.instant()).min()?;
    let ended: Option<Vec<_>> = steps.iter().map(|(_, ended)| *ended).collect();
    let ended = ended?.into_iter().map(Moment::instant).max()?;
    Some(MeasuredDuration {
        expected: expected?,
        minutes: ended.since(began),
    })
}
