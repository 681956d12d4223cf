//! The rise of a preferment: what it goes through on the bench and in the fridge, and how ripe it is.

use crate::engine::formula::{Form, Formula, Part};
use crate::engine::heat::{Air, Body, Curve, Exposure, HeatError, Probe, simulate_coarsely};
use crate::engine::quantity::{Minutes, Temperature};
use crate::engine::rise::{
    Cardinal, EquivalentTime, Ripeness, RiseError, RiseSettings, equivalent_time, ripeness,
    yeast_activity,
};
use crate::engine::working::WorkingLine;
use crate::results::heat::part_matter;
use crate::sheet::Kitchen;

/// A preferment's rise, on the bench and then in the fridge.
#[derive(Clone, Debug, PartialEq)]
pub struct PrefermentRise {
    /// Which part.
    pub part: usize,
    /// Its temperature over time.
    pub course: Curve,
    /// The work of its yeast.
    pub equivalent_time: EquivalentTime,
    /// The same, in the fridge from the start.
    pub chilled_at_once: EquivalentTime,
    /// The same, on the bench all the time.
    pub never_chilled: EquivalentTime,
    /// How ripe it is when it leaves the fridge.
    pub ripeness: Result<Ripeness, RiseError>,
}

/// How much longer a preferment is followed to tell when it is ripe: two days.
const RIPENS: Minutes = Minutes::known(2880.0);

/// A part as a formula of its own.
pub(super) fn alone(part: &Part) -> Formula {
    Formula {
        parts: vec![part.clone()],
    }
}

/// Returns the temperature of a preferment over time. It starts as warm as the room and goes
/// through `stages`, each some minutes in a place of some °C.
///
/// Source: heat conduction in a ball of its volume, [`simulate`](crate::engine::heat::simulate).
///
/// # Errors
/// [`HeatError::NoPart`] where there is no such part; [`HeatError::EmptyBowl`] where it weighs
/// nothing.
pub fn preferment_course(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    stages: &[(Minutes, Temperature)],
) -> Result<Curve, HeatError> {
    let own = formula.parts.get(part).ok_or(HeatError::NoPart)?;
    let (mass, matter) = part_matter(own)?;
    let body = Body::ball_of(&matter, mass, (kitchen.room, kitchen.fridge))?;
    let exposures: Vec<Exposure> = stages
        .iter()
        .map(|(minutes, place)| Exposure {
            minutes: *minutes,
            air: Air::of_kitchen(*place, &kitchen.cooling),
        })
        .collect();
    simulate_coarsely(&body, kitchen.room, &exposures)
}

/// The rise of a preferment on the bench and in the fridge, as an equivalent time at `at`.
///
/// # Errors
/// [`RiseError::Heat`] where it weighs nothing; [`RiseError::AnchorAtRest`] where yeast does not
/// work at `at`.
pub fn preferment_rise(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    settings: &RiseSettings,
    at: Temperature,
) -> Result<PrefermentRise, RiseError> {
    let all = Minutes::from_minutes(settings.bench.minutes() + settings.fridge.minutes())?;
    let course =
        |stages: &[(Minutes, Temperature)]| preferment_course(formula, part, kitchen, stages);
    let equivalent = |course: &Curve| equivalent_time(course, Cardinal::DOUGH, at);
    let bench = (settings.bench, kitchen.room);
    let planned = course(&[bench, (settings.fridge, kitchen.fridge)])?;
    let longer = course(&[
        bench,
        (settings.fridge, kitchen.fridge),
        (RIPENS, kitchen.fridge),
    ])?;
    let own = formula.parts.get(part).ok_or(HeatError::NoPart)?;
    Ok(PrefermentRise {
        part,
        equivalent_time: equivalent(&planned)?,
        course: planned,
        chilled_at_once: equivalent(&course(&[(all, kitchen.fridge)])?)?,
        never_chilled: equivalent(&course(&[(all, kitchen.room)])?)?,
        ripeness: yeast_activity(&alone(own), Form::AsMade)
            .and_then(|activity| ripeness(&longer, &activity, all)),
    })
}

impl PrefermentRise {
    /// Returns the steps that lead to the work of its yeast, in minutes at one temperature, and to
    /// its ripeness.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = self.equivalent_time.working();
        lines.extend(self.ripeness.iter().flat_map(Ripeness::working));
        lines
    }

    /// How long it stands and is in the fridge, in all.
    #[must_use]
    pub fn in_all(&self) -> Minutes {
        self.course.end().map_or(Minutes::ZERO, |end| end.time)
    }

    /// Its mean temperature as it leaves the fridge.
    #[must_use]
    pub fn end_temperature(&self) -> Option<Temperature> {
        let end = self.course.end()?;
        Some(end.at(Probe::Mean))
    }
}
