//! The rises of a formula in this kitchen, each along the temperatures its dough goes through.

use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{
    Air, Body, Curve, Exposure, HeatError, Matter, Probe, Shape, follow_coarsely,
};
use crate::engine::quantity::{Factor, Length, Mass, Minutes, Temperature};
use crate::engine::rise::{
    Basis, Cardinal, EquivalentTime, ReferenceRise, RiseAsked, RiseError, RiseSettings, Risen,
    equivalent_time, rise,
};
use crate::results::heat::part_matter;
use crate::sheet::{HeatSettings, Kitchen};

/// What each rise is scaled from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Known {
    /// The dough in one piece.
    pub bulk: ReferenceRise,
    /// The pieces in the tin.
    pub proof: ReferenceRise,
    /// How many times as fast as the doughs of the known rises, for what is in it.
    pub yeast_activity: Factor,
}

/// A preferment's evening and night.
#[derive(Clone, Debug, PartialEq)]
pub struct Night {
    /// Which part.
    pub part: usize,
    /// How warm it was all along.
    pub course: Curve,
    /// What its yeast did.
    pub equivalent_time: EquivalentTime,
    /// What it would have done in the fridge from the start.
    pub chilled_at_once: EquivalentTime,
    /// What it would have done on the bench all along.
    pub never_chilled: EquivalentTime,
}

/// Every rise of a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Rising {
    /// The dough in one piece.
    pub bulk: Result<Risen, RiseError>,
    /// The pieces in the tin.
    pub proof: Result<Risen, RiseError>,
    /// Each preferment's night.
    pub nights: Vec<Result<Night, RiseError>>,
}

/// How long a rise is followed, min: a day.
const FOLLOWED: Minutes = Minutes::known(1440.0);

impl Known {
    /// What the formula itself says.
    #[must_use]
    pub const fn stated(settings: &RiseSettings) -> Self {
        Self {
            bulk: settings.bulk.anchor(Basis::Stated),
            proof: settings.proof.anchor(Basis::Stated),
            yeast_activity: Factor::ONE,
        }
    }
}

/// Every rise of a formula in this kitchen.
///
/// The dough stands in the room as a ball, unless it is put elsewhere; the pieces start as warm as it then is and proof close
/// together, as a loaf 2½ times as long as it is thick. A preferment starts as warm as the room.
#[must_use]
pub fn rising(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    settings: &RiseSettings,
    known: &Known,
) -> Rising {
    let body = whole_dough(formula, (heat.dough, kitchen.room));
    let bulk = body
        .as_ref()
        .map_err(|error| RiseError::from(error.clone()))
        .and_then(|body| {
            let place = settings.bulk_place.unwrap_or(kitchen.room);
            stands(body, heat.dough, place, known.bulk, known, settings)
        });
    let proof = body.map_err(RiseError::from).and_then(|body| {
        let warm = bulk.as_ref().ok().and_then(end_of).unwrap_or(heat.dough);
        let place = settings.proof_place.unwrap_or(kitchen.room);
        stands(&loaf(body)?, warm, place, known.proof, known, settings)
    });
    let numbered = formula.parts.iter().enumerate();
    let preferments = numbered.filter(|(_, own)| own.kind == PartKind::Preferment);
    let nights = preferments
        .map(|(part, _)| night(formula, part, kitchen, settings, known.bulk.at))
        .collect();
    Rising {
        bulk,
        proof,
        nights,
    }
}

fn stands(
    body: &Body,
    start: Temperature,
    place: Temperature,
    anchor: ReferenceRise,
    known: &Known,
    settings: &RiseSettings,
) -> Result<Risen, RiseError> {
    let stay = Exposure {
        minutes: FOLLOWED,
        air: Air::still(place),
    };
    let course = follow_coarsely(body, start, &[stay])?;
    let asked = RiseAsked {
        anchor,
        cardinal: Cardinal::DOUGH,
        yeast_activity: known.yeast_activity,
        volume: settings.volume,
    };
    rise(&course, &asked)
}

/// How warm a dough is when it is up.
fn end_of(risen: &Risen) -> Option<Temperature> {
    let after = risen.points.iter().find(|point| point.time >= risen.due);
    after.or(risen.points.last()).map(|point| point.temperature)
}

/// All of the dough as one ball.
fn whole_dough(formula: &Formula, between: (Temperature, Temperature)) -> Result<Body, HeatError> {
    let mut components: Vec<(Mass, Matter)> = Vec::new();
    for part in formula.dough_parts() {
        if part.mass() > Mass::ZERO {
            components.push(part_matter(part)?);
        }
    }
    let mass: Mass = components.iter().map(|(mass, _)| *mass).sum();
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

/// What a preferment does on the bench and in the fridge, against a dough at `at`.
///
/// # Errors
/// [`RiseError::Heat`] where it weighs nothing.
pub fn night(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    settings: &RiseSettings,
    at: Temperature,
) -> Result<Night, RiseError> {
    let own = formula.parts.get(part).ok_or(HeatError::NoPart)?;
    let (mass, matter) = part_matter(own)?;
    let between = (kitchen.room, kitchen.fridge);
    let body = Body::ball_of(&matter, mass, between)?;
    let all = Minutes::from_minutes(settings.bench.minutes() + settings.fridge.minutes())?;
    let stay = |minutes, place| Exposure {
        minutes,
        air: Air::still(place),
    };
    let follow_stays = |stays: &[Exposure]| -> Result<(Curve, EquivalentTime), RiseError> {
        let course = follow_coarsely(&body, kitchen.room, stays)?;
        let equivalent_time = equivalent_time(&course, Cardinal::DOUGH, at)?;
        Ok((course, equivalent_time))
    };
    let (course, equivalent_time) = follow_stays(&[
        stay(settings.bench, kitchen.room),
        stay(settings.fridge, kitchen.fridge),
    ])?;
    Ok(Night {
        part,
        course,
        equivalent_time,
        chilled_at_once: follow_stays(&[stay(all, kitchen.fridge)])?.1,
        never_chilled: follow_stays(&[stay(all, kitchen.room)])?.1,
    })
}

impl Night {
    /// How warm it is on the whole when it comes out of the fridge.
    #[must_use]
    pub fn comes_out(&self) -> Option<Temperature> {
        let end = self.course.end()?;
        Some(end.at(Probe::Mean))
    }
}
