//! How long each step of a formula takes in this kitchen: cooling, rises, mixing, baking.

use super::baking::Baking;
use super::paste_cooling::PasteCooling;
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::HeatFrom;
use crate::engine::plan::{DurationRange, Loads, Times};
use crate::engine::quantity::Minutes;
use crate::engine::rise::RiseSettings;
use crate::sheet::{HeatSettings, Kitchen};

/// What a paste needs in the fridge where its cooling cannot be followed, min. Common practice.
const COOLS: f64 = 180.0;
/// The longest storage of a paste, min: a day. Common practice.
const KEEPS: f64 = 1440.0;

/// Returns how many minutes each step of a formula takes, whose pastes' coolings are `followed`.
/// Where a time cannot be worked out, the formula's own statement is used.
#[must_use]
pub fn times(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    rises: &RiseSettings,
    (asked, followed): (&TimesAsked<'_>, &[PasteCooling]),
) -> Times {
    let (out, cold) = paste_times(formula, heat, followed);
    Times {
        cool_paste: held(out),
        chill_paste: chill_paste(cold - out, rises),
        stand: rises.bench,
        chill: asked.chill,
        warm_up: heat.standing,
        mix: heat.mixing.unwrap_or(kitchen.mixer.minutes),
        bulk: asked.bulk,
        rest: rises.rest,
        proof: asked.proof,
        preheat: preheat(),
        bake: asked.bake.to_vec(),
        heat: heat_from(asked.baking),
        cool: cool(asked.baking),
        loads: asked.loads,
        pieces: asked.pieces,
    }
}

/// What is asked of the times, beside formula and kitchen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TimesAsked<'t> {
    /// The bulk rise: soonest, likely, latest.
    pub bulk: [Minutes; 3],
    /// The proof: soonest, likely, latest.
    pub proof: [Minutes; 3],
    /// How long a preferment may be in the fridge.
    pub chill: DurationRange,
    /// How often the oven is filled.
    pub loads: Loads,
    /// How many pieces there are.
    pub pieces: u16,
    /// The phases of the bake of one load, as this oven bakes.
    pub bake: &'t [Minutes],
    /// The bake, where it can be worked out.
    pub baking: Option<&'t Baking>,
}

/// Where the heat of each phase of the bake comes from.
fn heat_from(baking: Option<&Baking>) -> Vec<HeatFrom> {
    let planned = baking.and_then(|baking| baking.planned.as_ref().ok());
    let phases = planned.map(|planned| planned.phases.iter().map(|one| one.phase.from));
    phases.into_iter().flatten().collect()
}

/// How long an oven heats up. Common practice: a home oven takes some 20 min, and may wait hot.
fn preheat() -> DurationRange {
    let (least, most) = (Minutes::known(20.0), Minutes::known(45.0));
    DurationRange::between(least, least, most).unwrap_or(DurationRange::just(least))
}

/// How long one load bakes in all as expected without what the log has taught.
#[must_use]
pub fn expected_bake(bake: Option<&Baking>, heat: &HeatSettings) -> Minutes {
    let expected = bake.and_then(|bake| bake.expected.as_ref().ok());
    expected.map_or_else(
        || {
            held(
                heat.bake
                    .phases
                    .iter()
                    .map(|phase| phase.minutes.minutes())
                    .sum(),
            )
        },
        |expected| expected.total,
    )
}

/// Returns the minutes of each phase of the bake as planned; as set where that cannot be worked
/// out.
#[must_use]
pub fn planned_phases(bake: Option<&Baking>, heat: &HeatSettings) -> Vec<Minutes> {
    let planned = bake.and_then(|bake| bake.planned.as_ref().ok());
    planned.map_or_else(
        || heat.bake.phases.iter().map(|phase| phase.minutes).collect(),
        |planned| planned.phases.iter().map(|one| one.phase.minutes).collect(),
    )
}

/// How long bread cools before it is cut: at least as long as its middle is likely to take, since no
/// plan makes it cool faster, at most half a day.
fn cool(bake: Option<&Baking>) -> DurationRange {
    let found = bake.and_then(|bake| bake.cooling.as_ref().ok());
    let wished = found.map_or(COOLED_WELL, |cooling| cooling.likely);
    DurationRange::between(wished, wished, KEPT_WHOLE).unwrap_or(DurationRange::just(wished))
}

/// Cooling of bread where it cannot be worked out. Common practice.
const COOLED_WELL: Minutes = Minutes::known(60.0);
/// The longest that bread waits before it is cut: overnight.
const KEPT_WHOLE: Minutes = Minutes::known(720.0);

/// How long a paste is in the fridge: until its middle is cold at the least, `cold` min, a day at
/// the most, and overnight if nothing else decides.
fn chill_paste(cold: f64, rises: &RiseSettings) -> DurationRange {
    // Rounded to five minutes.
    let least = (libm::ceil(cold / 5.0) * 5.0).clamp(30.0, KEEPS);
    let lasts = DurationRange::between(held(least), held(least), held(KEEPS));
    lasts
        .unwrap_or(DurationRange::just(held(KEEPS)))
        .wishing(rises.fridge)
}

/// How long the pastes are out of the fridge, and when the slowest is cold in the middle, from the
/// scald on, min.
fn paste_times(formula: &Formula, heat: &HeatSettings, followed: &[PasteCooling]) -> (f64, f64) {
    let parts = formula.parts.iter().enumerate();
    let pastes = parts.filter(|(_, own)| own.kind == PartKind::Paste);
    let times = pastes.map(|(part, _)| {
        let own = heat.cooling.own_times();
        let out = own.map_or(0.0, |(bench, ice)| bench.minutes() + ice.minutes());
        let followed = followed.iter().find(|one| one.part == part);
        followed.and_then(cold_after).unwrap_or((out, out + COOLS))
    });
    times.fold((0.0, 0.0), |(out, cold), (also, colder)| {
        (f64::max(out, also), f64::max(cold, colder))
    })
}

/// How long a paste is out of the fridge, and when its middle is cold, from the scald on, min.
fn cold_after(followed: &PasteCooling) -> Option<(f64, f64)> {
    let out = followed.plan.out().ok()?.minutes();
    let cold = followed.chilled_after();
    Some((out, cold.map_or(out + COOLS, Minutes::minutes)))
}

fn held(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
}
