//! Observations: what is measured at a step and noted in the bake, so that later bakes learn from
//! it.

use super::day_results::DayResults;
use crate::engine::heat::dough_temperature;
use crate::engine::learn::{MeasuredDuration, WeighedLoss};
use crate::engine::plan::StepKind;
use crate::engine::quantity::{Mass, Minutes, Temperature, WarmingRate};
use crate::engine::rise::{ReferenceRise, RiseError, Risen};
use crate::results::heat::mixer_load;
use crate::sheet::Kitchen;
use crate::sheet::day::{Bake, DaySettings};
use crate::sheet::{Moment, Sheet};

/// What is measured at a step, beside the temperatures of pastes and preferments.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measurement {
    /// The temperature of the dough as it comes off the mixer, and the mixing time.
    DoughTemperature,
    /// The mass of the dough on the bench, before it is divided.
    DoughMass,
    /// The mass of a paste on its way to the fridge.
    PasteMass,
    /// The mass of the bread out of the oven.
    BreadMass,
}

/// Returns what is measured at a kind of step; `None` at steps where nothing is.
///
/// ```
/// use softcrumb::engine::plan::StepKind;
/// use softcrumb::results::day::{Measurement, measurement_at};
///
/// // Common practice: the dough's temperature is taken as it leaves the mixer.
/// assert_eq!(measurement_at(StepKind::Mix), Some(Measurement::DoughTemperature));
/// ```
#[must_use]
pub fn measurement_at(kind: StepKind) -> Option<Measurement> {
    if matches!(kind, StepKind::Mix | StepKind::ButterIn) {
        Some(Measurement::DoughTemperature)
    } else if kind == StepKind::ChillPaste {
        Some(Measurement::PasteMass)
    } else if kind == StepKind::Divide {
        Some(Measurement::DoughMass)
    } else {
        (kind == StepKind::Cool).then_some(Measurement::BreadMass)
    }
}

/// A dough that is mixed without friction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unmixed {
    /// Its temperature at the end, with what the room gave or took meanwhile.
    pub temperature: Temperature,
    /// The minutes of friction that would have been left in it.
    pub warmed_for: Minutes,
}

/// Returns the temperature in °C of the dough had the mixer no friction, after so many minutes in
/// it; `None` where no dough can be mixed.
#[must_use]
pub fn unmixed(sheet: &Sheet, kitchen: &Kitchen, minutes: Minutes) -> Option<Unmixed> {
    let mut dough = mixer_load(&sheet.formula, kitchen, &sheet.heat).ok()?.dough;
    dough.friction = WarmingRate::from_kelvin_per_minute(0.0).ok()?;
    dough.minutes = minutes;
    let dough = dough_temperature(&dough).ok()?;
    Some(Unmixed {
        temperature: dough.temperature,
        warmed_for: dough.warmed_for(),
    })
}

/// Returns the mixing time in minutes: as noted in the bake, else as the formula sets it, else the
/// kitchen's.
#[must_use]
pub fn mixing_time(bake: Option<&Bake>, sheet: &Sheet, kitchen: &Kitchen) -> Minutes {
    let noted = bake.and_then(|bake| bake.noted.mixing);
    noted.or(sheet.heat.mixing).unwrap_or(kitchen.mixer.minutes)
}

/// Notes the measured dough temperature in °C, and what friction is learnt from: the dough without
/// friction, and the mixing time where none is noted.
pub fn note_dough_temperature(
    bake: &mut Bake,
    sheet: &Sheet,
    kitchen: &Kitchen,
    measured: Temperature,
) {
    bake.noted.dough = Some(measured);
    note_mixing_time(
        bake,
        sheet,
        kitchen,
        mixing_time(Some(bake), sheet, kitchen),
    );
}

/// Notes the mixing time in minutes, and the dough without friction where its temperature is noted.
pub fn note_mixing_time(bake: &mut Bake, sheet: &Sheet, kitchen: &Kitchen, mixed: Minutes) {
    bake.noted.mixing = Some(mixed);
    if bake.noted.dough.is_some() {
        let unmixed = unmixed(sheet, kitchen, mixed);
        bake.noted.unmixed = unmixed.map(|dough| dough.temperature);
        bake.noted.warmed_for = unmixed.map(|dough| dough.warmed_for);
    }
}

/// Notes the mass in g of the dough on the bench, and the mass that went into the bowl.
pub fn note_dough(bake: &mut Bake, into_bowl: Mass, on_bench: Mass) {
    bake.noted.bowl = Some(WeighedLoss {
        before: into_bowl,
        after: on_bench,
    });
}

/// Notes the mass of the bread, and what its dough lost against the dough that was divided where that
/// was noted. `beside` is what is in and on the bread beside its dough: filling, topping and wash.
pub fn note_bread(bake: &mut Bake, bread: Mass, beside: Mass) {
    bake.found.bread = Some(bread);
    let divided = bake.noted.bowl.filter(|_| bread > beside);
    bake.noted.oven_loss = divided.map(|bowl| WeighedLoss {
        before: bowl.after,
        after: bread.less(beside),
    });
}

/// Notes the durations in minutes of rises and bake that are over, beside those expected for that
/// day from the formula's own statement.
pub fn note_durations(bake: &mut Bake, results: &DayResults, settings: &DaySettings) {
    let rises = &settings.rises;
    let bulk = ReferenceRise::stated(rises.bulk.time, rises.bulk.at);
    let proof = ReferenceRise::stated(rises.proof.time, rises.proof.at);
    let (bulk, proof) = (
        expected(&results.run.rises.bulk, bulk),
        expected(&results.run.rises.proof, proof),
    );
    let programme = Some(results.programme);
    bake.noted.bulk = measured(bake, StepKind::Bulk, bulk).or(bake.noted.bulk);
    bake.noted.proof = measured(bake, StepKind::Proof, proof).or(bake.noted.proof);
    bake.noted.bake = measured(bake, StepKind::Bake, programme).or(bake.noted.bake);
}

/// The duration by the formula's own statement: `due · stated / reference`, where the reference is
/// the time that the log has taught.
fn expected(risen: &Result<Risen, RiseError>, stated: ReferenceRise) -> Option<Minutes> {
    let risen = risen.as_ref().ok()?;
    let reference = risen.asked.anchor.time.minutes();
    let due = risen.due.minutes() * stated.time.minutes();
    (reference > 0.0)
        .then(|| Minutes::from_minutes(due / reference).ok())
        .flatten()
}

/// A time as it is noted: to a tenth of a minute, which is more than anybody reads off a clock.
fn as_noted(time: Minutes) -> Minutes {
    let tenths = libm::round(time.minutes() * 10.0);
    Minutes::from_minutes(tenths / 10.0).unwrap_or(time)
}

/// From the start of the first step of a kind to the end of the last; `None` while one is under
/// way.
fn measured(bake: &Bake, kind: StepKind, expected: Option<Minutes>) -> Option<MeasuredDuration> {
    let steps: Vec<(Moment, Option<Moment>)> = bake
        .steps
        .iter()
        .filter(|done| done.step.work == kind)
        .map(|done| (done.began, done.ended))
        .collect();
    let began = steps.iter().map(|(began, _)| began.instant()).min()?;
    let ended: Option<Vec<_>> = steps.iter().map(|(_, ended)| *ended).collect();
    let ended = ended?.into_iter().map(Moment::instant).max()?;
    Some(MeasuredDuration {
        expected: expected?,
        minutes: as_noted(ended.since(began)),
    })
}
