//! Ripeness: how far a preferment has come, against one that is known to be ripe.

use super::cardinal::Cardinal;
use super::equivalent_time::sums;
use super::error::RiseError;
use super::yeast_activity::YeastActivity;
use crate::engine::heat::{Air, Body, Curve, Exposure, Shape, simulate_coarsely};
use crate::engine::numerics::first_crossing;
use crate::engine::quantity::{
    Conductivity, Density, Factor, Length, Mass, Minutes, Share, SpecificHeat, Temperature,
};
use crate::engine::working::{WorkingLine, given};

/// How far a preferment has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RipenessState {
    /// It has little gas and little taste yet.
    Under,
    /// It can be used.
    Ripe,
    /// It begins to fall, and tastes sour.
    Over,
}

/// The ripeness of a preferment at the end of its course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ripeness {
    /// The work of its yeast as a multiple of the reference's.
    pub of_reference: Factor,
    /// What that means.
    pub state: RipenessState,
    /// When it begins to be ripe; `None` where that is later than was followed.
    pub ripe_from: Option<Minutes>,
    /// When it begins to be over; `None` where that is later than was followed.
    pub ripe_until: Option<Minutes>,
    work: f64,
    reference: f64,
}

/// Its yeast has done at least this much of the reference's work when it is ripe, and at most that
/// much. Common practice: printed preferments reach from half of it (0.07 % instant yeast, 12 h
/// in the room) to nearly twice (a sponge of 0.5 %, 3.5 to 4.5 h at 24 to 27 °C).
const RIPE: (f64, f64) = (0.45, 2.2);
/// The reference: instant yeast as fresh yeast of the same dry matter, on the flour, in hundred.
/// 0.7 % instant. Common practice.
const YEAST: Share = Share::in_hundred(2.2);
/// It stands at 24 °C for 40 minutes and then spends 13 hours at 4 °C. Common practice: 12 to 14.
const WARM: (Temperature, Minutes) = (Temperature::known(24.0), Minutes::known(40.0));
const COLD: (Temperature, Minutes) = (Temperature::known(4.0), Minutes::known(780.0));

/// How ripe a preferment is at `end`, `course` being what it goes through and beyond.
///
/// `R = v·∫γ dt / (vᵣ·∫γᵣ dt)`: work of the yeast, as the rise counts it, against that of a
/// preferment of 300 g with 0.7 % of instant yeast after 40 min at 24 °C and 13 h at 4 °C. Ripe from
/// 0.45 to 2.2: printed preferments differ as much. Acid and enzymes are left out.
///
/// # Errors
/// [`RiseError::Heat`] never within the ranges of the quantities.
pub fn ripeness(
    course: &Curve,
    activity: &YeastActivity,
    end: Minutes,
) -> Result<Ripeness, RiseError> {
    let reference = reference_work()?;
    let sums = sums(course, Cardinal::DOUGH);
    let vigour = activity.product();
    let at_end = crate::engine::numerics::interpolate(sums.iter().copied(), end.minutes());
    let work = vigour * at_end.unwrap_or_default();
    let of_reference = work / reference;
    let when = |share: f64| {
        let points = sums
            .iter()
            .map(|(time, sum)| (*time, sum * vigour / reference));
        let when = first_crossing(points, share, 0.0)?;
        Minutes::from_minutes(when).ok()
    };
    Ok(Ripeness {
        of_reference: Factor::from_number(of_reference)?,
        state: if of_reference < RIPE.0 {
            RipenessState::Under
        } else if of_reference <= RIPE.1 {
            RipenessState::Ripe
        } else {
            RipenessState::Over
        },
        ripe_from: when(RIPE.0),
        ripe_until: when(RIPE.1),
        work,
        reference,
    })
}

/// The work of the reference's yeast, min.
fn reference_work() -> Result<f64, RiseError> {
    let activity = YeastActivity::of(YEAST, Share::NONE, Share::NONE)?;
    // 300 g of stiff dough as a ball, by Choi and Okos at 12 °C.
    let ball = Body {
        shape: Shape::Sphere,
        half: Length::known(0.0396),
        mass: Mass::known(300.0),
        specific_heat: SpecificHeat::known(2800.0),
        conductivity: Conductivity::from_watts_per_metre_kelvin(0.42)?,
        density: Density::from_kilograms_per_cubic_metre(1150.0)?,
    };
    let stays = [WARM, COLD].map(|(temperature, minutes)| Exposure {
        minutes,
        air: Air::still(temperature),
    });
    let course = simulate_coarsely(&ball, WARM.0, &stays)?;
    let sum = sums(&course, Cardinal::DOUGH)
        .last()
        .map_or(0.0, |(_, sum)| *sum);
    Ok(activity.product() * sum)
}

impl Ripeness {
    /// How many times as active its yeast would have to be for it to be ripe just at its end; `None`
    /// where no yeast has worked.
    #[must_use]
    pub fn activity_to_be_ripe(&self) -> Option<Factor> {
        Factor::from_number(RIPE.0 / self.of_reference.number()).ok()
    }

    /// How it came about.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "w / r".into(),
            with: vec![
                given("w", "work of its yeast", self.work, "min"),
                given("r", "work of the reference's yeast", self.reference, "min"),
            ],
            result: given("R", "of the reference", self.of_reference.number(), ""),
            source: "common practice: 0.7 % instant yeast, 40 min at 24 °C, 13 h at 4 °C".into(),
        }]
    }
}
