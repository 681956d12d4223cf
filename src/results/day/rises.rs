//! The rises of a formula in a kitchen, each along the simulated temperature of its dough.

use super::preferment::{PrefermentRise, preferment_rise};
use super::which_rise::WhichRise;
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{Air, Body, Exposure, HeatError, Matter, Shape, simulate_coarsely};
use crate::engine::plan::shaping_time;
use crate::engine::quantity::{Factor, Length, Mass, Minutes, Temperature};
use crate::engine::rise::{
    Cardinal, ReferenceRise, RiseAsked, RiseError, RiseSettings, Risen, Stated, rise,
};
use crate::results::heat::part_matter;
use crate::sheet::Kitchen;

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

/// The temperatures of the dough from stage to stage, each the mean of the dough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DoughTemperatures {
    /// Off the mixer.
    pub mixed: Temperature,
    /// At the end of the bulk rise.
    pub risen: Temperature,
    /// As the shaped pieces go into the tin.
    pub shaped: Temperature,
    /// At the end of the proof, as it goes into the oven.
    pub proofed: Temperature,
}

/// Every rise of a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Rises {
    /// The dough in one piece.
    pub bulk: Result<Risen, RiseError>,
    /// The pieces in the tin.
    pub proof: Result<Risen, RiseError>,
    /// The temperatures at which each stage hands the dough on.
    pub temperatures: DoughTemperatures,
    /// The preferments, in the order of their parts.
    pub preferments: Vec<Result<PrefermentRise, RiseError>>,
}

/// How long a rise is simulated, min: a day.
const SIMULATED: Minutes = Minutes::known(1440.0);

impl ReferenceRises {
    /// Returns the rises that the formula states; where their dough was not noted, that of a usual
    /// dough.
    #[must_use]
    pub fn of(settings: &RiseSettings) -> Self {
        let reference = |stated: Stated| match settings.dough {
            Some(_) => stated.reference(),
            None => ReferenceRise::usual(stated.time, stated.at),
        };
        Self {
            bulk: reference(settings.bulk),
            proof: reference(settings.proof),
            yeast_activity: Factor::ONE,
        }
    }
}

/// What the rises of a dough follow from.
#[derive(Clone, Copy, Debug)]
pub struct RiseInput<'i> {
    /// The formula, as large as it is made.
    pub formula: &'i Formula,
    /// The kitchen.
    pub kitchen: &'i Kitchen,
    /// The temperature of the dough off the mixer.
    pub dough: Temperature,
    /// How many pieces it is divided into.
    pub pieces: u16,
    /// The settings of the rises.
    pub settings: &'i RiseSettings,
    /// The rises that all others are scaled from.
    pub references: &'i ReferenceRises,
}

/// Every rise of a formula in a kitchen.
///
/// The dough rises as a ball in the room, or in the place set for it, from the temperature at which
/// it leaves the mixer. Its pieces are then shaped in the room, one by one as balls, and proof
/// close together, as a loaf 2½ times as long as it is thick. A preferment starts at the
/// temperature of the room.
///
/// ```
/// use softcrumb::engine::quantity::Temperature;
/// use softcrumb::engine::rise::RiseSettings;
/// use softcrumb::results::day::{ReferenceRises, RiseInput, rises};
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let settings = RiseSettings::default();
/// let rises = rises(&RiseInput {
///     formula: &sheet.formula,
///     kitchen: &Kitchen::default(),
///     dough: Temperature::from_celsius(24.0)?,
///     pieces: 9,
///     settings: &settings,
///     references: &ReferenceRises::of(&settings),
/// });
/// // A room that is cooler than the dough of the reference rise makes it slower.
/// assert!(rises.bulk?.due > settings.bulk.time);
/// # Ok::<(), softcrumb::engine::rise::RiseError>(())
/// ```
#[must_use]
pub fn rises(input: &RiseInput) -> Rises {
    let numbered = input.formula.parts.iter().enumerate();
    let preferments = numbered.filter(|(_, own)| own.kind == PartKind::Preferment);
    let at = input.references.bulk.at;
    let preferments = preferments
        .map(|(part, _)| preferment_rise(input.formula, part, input.kitchen, input.settings, at))
        .collect();
    Rises {
        preferments,
        ..dough_rises(input)
    }
}

/// The two rises of the dough, without those of its preferments.
pub(super) fn dough_rises(input: &RiseInput) -> Rises {
    let (kitchen, settings) = (input.kitchen, input.settings);
    let references = input.references;
    let body = whole_dough(input.formula, (input.dough, kitchen.room));
    let bulk_place = settings.bulk_place.unwrap_or(kitchen.room);
    let proof_place = settings.proof_place.unwrap_or(kitchen.room);
    let ball = || body.clone().map_err(RiseError::from);
    let bulk = ball().and_then(|body| {
        let places = (input.dough, bulk_place);
        rise_in(&body, places, references.bulk, references, settings)
    });
    let ends = |risen: &Result<Risen, RiseError>, start: Temperature| {
        let end = risen.as_ref().ok().and_then(end_temperature);
        end.unwrap_or(start)
    };
    let bulk_ends = ends(&bulk, input.dough);
    let shaped = ball()
        .and_then(|body| Ok(shaped(body, bulk_ends, input)?))
        .unwrap_or(bulk_ends);
    let proof = ball().and_then(|body| {
        let places = (shaped, proof_place);
        rise_in(&loaf(body)?, places, references.proof, references, settings)
    });
    let proof_ends = ends(&proof, shaped);
    Rises {
        bulk,
        proof,
        temperatures: DoughTemperatures {
            mixed: input.dough,
            risen: bulk_ends,
            shaped,
            proofed: proof_ends,
        },
        preferments: Vec::new(),
    }
}

/// The temperature of the pieces after dividing, rounding, resting and shaping in the room.
fn shaped(dough: Body, from: Temperature, input: &RiseInput) -> Result<Temperature, HeatError> {
    let piece = dough.shared_out(input.pieces)?;
    let exposure = Exposure {
        minutes: shaping_time(input.formula, input.pieces, input.settings.rest),
        air: Air::still(input.kitchen.room),
    };
    let course = simulate_coarsely(&piece, from, &[exposure])?;
    Ok(course.end().map_or(from, |end| end.mean))
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
    let course = simulate_coarsely(body, start, &[exposure])?;
    let asked = RiseAsked {
        anchor,
        cardinal: Cardinal::DOUGH,
        yeast_activity: references.yeast_activity,
        volume: settings.volume,
    };
    rise(&course, &asked)
}

/// The temperature of a dough at the end of its rise.
fn end_temperature(risen: &Risen) -> Option<Temperature> {
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

impl Rises {
    /// Returns one of the two rises of the dough.
    ///
    /// # Errors
    /// [`RiseError`] as stored, where that rise cannot be worked out.
    pub const fn of(&self, which: WhichRise) -> Result<&Risen, &RiseError> {
        match which {
            WhichRise::Bulk => self.bulk.as_ref(),
            WhichRise::Proof => self.proof.as_ref(),
        }
    }
}
