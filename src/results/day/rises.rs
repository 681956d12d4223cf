//! The rises of a formula in a kitchen, each along the simulated temperature of its dough.

use super::which_rise::WhichRise;
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{
    Air, Body, Curve, Exposure, HeatError, Matter, Probe, Shape, follow_coarsely,
};
use crate::engine::quantity::{Factor, Length, Mass, Minutes, Temperature};
use crate::engine::rise::{
    Cardinal, EquivalentTime, ReferenceRise, RiseAsked, RiseError, RiseSettings, Risen,
    equivalent_time, rise,
};
use crate::results::heat::part_matter;
use crate::sheet::{HeatSettings, Kitchen};

/// The rises that all others are scaled from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReferenceRises {
    /// The dough in one piece.
    pub bulk: ReferenceRise,
    /// The pieces in the tin.
    pub proof: ReferenceRise,
    /// The dough's yeast activity relative to that of the reference rises.
    pub yeast_activity: Factor,
}

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
}

/// Every rise of a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Rises {
    /// The dough in one piece.
    pub bulk: Result<Risen, RiseError>,
    /// The pieces in the tin.
    pub proof: Result<Risen, RiseError>,
    /// The preferments, in the order of their parts.
    pub preferments: Vec<Result<PrefermentRise, RiseError>>,
}

/// How long a rise is simulated, min: a day.
const SIMULATED: Minutes = Minutes::known(1440.0);

impl ReferenceRises {
    /// The formula's own statement.
    #[must_use]
    pub const fn stated(settings: &RiseSettings) -> Self {
        Self {
            bulk: settings.bulk.reference(),
            proof: settings.proof.reference(),
            yeast_activity: Factor::ONE,
        }
    }
}

/// Every rise of a formula in a kitchen.
///
/// The dough rises as a ball in the room, or in the place set for it. The pieces start at the
/// temperature it ends with and proof close together, as a loaf 2½ times as long as it is thick. A
/// preferment starts at the temperature of the room.
///
/// ```
/// use softcrumb::engine::rise::RiseSettings;
/// use softcrumb::results::day::{ReferenceRises, rises};
/// use softcrumb::sheet::{HeatSettings, Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let (kitchen, heat, settings) =
///     (Kitchen::default(), HeatSettings::default(), RiseSettings::default());
/// let references = ReferenceRises::stated(&settings);
/// let rises = rises(&sheet.formula, &kitchen, &heat, &settings, &references);
/// // A room that is cooler than the dough of the reference rise makes it slower.
/// assert!(rises.bulk?.due > settings.bulk.time);
/// # Ok::<(), softcrumb::engine::rise::RiseError>(())
/// ```
#[must_use]
pub fn rises(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    settings: &RiseSettings,
    references: &ReferenceRises,
) -> Rises {
    let body = whole_dough(formula, (heat.dough, kitchen.room));
    let bulk = body
        .as_ref()
        .map_err(|error| RiseError::from(error.clone()))
        .and_then(|body| {
            let place = settings.bulk_place.unwrap_or(kitchen.room);
            rise_in(
                body,
                (heat.dough, place),
                references.bulk,
                references,
                settings,
            )
        });
    let proof = body.map_err(RiseError::from).and_then(|body| {
        let warm = bulk
            .as_ref()
            .ok()
            .and_then(end_temperature)
            .unwrap_or(heat.dough);
        let place = settings.proof_place.unwrap_or(kitchen.room);
        rise_in(
            &loaf(body)?,
            (warm, place),
            references.proof,
            references,
            settings,
        )
    });
    let numbered = formula.parts.iter().enumerate();
    let preferments = numbered.filter(|(_, own)| own.kind == PartKind::Preferment);
    let preferments = preferments
        .map(|(part, _)| preferment_rise(formula, part, kitchen, settings, references.bulk.at))
        .collect();
    Rises {
        bulk,
        proof,
        preferments,
    }
}

/// The rise of a body that starts at one temperature in still air of another.
fn rise_in(
    body: &Body,
    (start, air): (Temperature, Temperature),
    anchor: ReferenceRise,
    references: &ReferenceRises,
    settings: &RiseSettings,
) -> Result<Risen, RiseError> {
    let exposure = Exposure {
        minutes: SIMULATED,
        air: Air::still(air),
    };
    let course = follow_coarsely(body, start, &[exposure])?;
    let asked = RiseAsked {
        anchor,
        cardinal: Cardinal::DOUGH,
        yeast_activity: references.yeast_activity,
        volume: settings.volume,
    };
    rise(&course, &asked)
}

/// The temperature of a dough at the end of its rise.
pub(super) fn end_temperature(risen: &Risen) -> Option<Temperature> {
    let after = risen.points.iter().find(|point| point.time >= risen.due);
    after.or(risen.points.last()).map(|point| point.temperature)
}

/// The whole dough as one ball.
fn whole_dough(formula: &Formula, between: (Temperature, Temperature)) -> Result<Body, HeatError> {
    let mut components: Vec<(Mass, Matter)> = Vec::new();
    for part in formula.dough_parts() {
        if part.mass() > Mass::ZERO {
            components.push(part_matter(part)?);
        }
    }
    let mass = components
        .iter()
        .map(|(mass, _)| *mass)
        .sum::<Mass>()
        .unsaturated()?;
    let matter = Matter::blend(&components)?;
    Body::ball_of(&matter, mass, between)
}

/// A ball of dough as a loaf in its tin, 2½ times as long as thick: `r = (V / 5π)^(1/3)`.
fn loaf(ball: Body) -> Result<Body, HeatError> {
    let radius = ball.half.metres() * libm::cbrt(4.0 / 15.0);
    Ok(Body {
        shape: Shape::Cylinder,
        half: Length::from_metres(radius)?,
        ..ball
    })
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
    let own = formula.parts.get(part).ok_or(HeatError::NoPart)?;
    let (mass, matter) = part_matter(own)?;
    let between = (kitchen.room, kitchen.fridge);
    let body = Body::ball_of(&matter, mass, between)?;
    let all = Minutes::from_minutes(settings.bench.minutes() + settings.fridge.minutes())?;
    let exposure = |minutes, place| Exposure {
        minutes,
        air: Air::still(place),
    };
    let simulate = |exposures: &[Exposure]| -> Result<(Curve, EquivalentTime), RiseError> {
        let course = follow_coarsely(&body, kitchen.room, exposures)?;
        let equivalent_time = equivalent_time(&course, Cardinal::DOUGH, at)?;
        Ok((course, equivalent_time))
    };
    let (course, equivalent_time) = simulate(&[
        exposure(settings.bench, kitchen.room),
        exposure(settings.fridge, kitchen.fridge),
    ])?;
    Ok(PrefermentRise {
        part,
        course,
        equivalent_time,
        chilled_at_once: simulate(&[exposure(all, kitchen.fridge)])?.1,
        never_chilled: simulate(&[exposure(all, kitchen.room)])?.1,
    })
}

impl Rises {
    /// One of the two rises of the dough.
    ///
    /// # Errors
    /// Why it cannot be worked out.
    pub const fn of(&self, which: WhichRise) -> Result<&Risen, &RiseError> {
        match which {
            WhichRise::Bulk => self.bulk.as_ref(),
            WhichRise::Proof => self.proof.as_ref(),
        }
    }
}

impl PrefermentRise {
    /// Its mean temperature as it leaves the fridge.
    #[must_use]
    pub fn end_temperature(&self) -> Option<Temperature> {
        let end = self.course.end()?;
        Some(end.at(Probe::Mean))
    }
}
