//! Conduction: how a body's centre, mean and surface follow what surrounds it.

use super::body::{Air, Body};
use super::error::HeatError;
use super::grid::Grid;
use crate::engine::numerics::{first_crossing, interpolate};
use crate::engine::quantity::{Heat, Minutes, Temperature};

/// Some time in one surrounding.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Exposure {
    /// How long.
    pub minutes: Minutes,
    /// In what.
    pub air: Air,
}

/// How warm a body is at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Since the beginning.
    pub time: Minutes,
    /// In the middle.
    pub centre: Temperature,
    /// On the whole.
    pub mean: Temperature,
    /// At the surface.
    pub surface: Temperature,
}

/// Where in a body.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Probe {
    /// In the middle: the last to follow.
    Centre,
    /// On the whole: where it settles once it is stirred.
    Mean,
    /// At the surface.
    Surface,
}

/// What a body did.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Sample by moment, close together after each change of surroundings.
    pub moments: Vec<Sample>,
    /// Heat that left through the surface; below zero where heat came in.
    pub lost: Heat,
}

/// Cells from the middle to the surface.
const CELLS: usize = 32;
/// Steps between two doublings of the step.
const STEPS: u16 = 16;
/// How often the step doubles within one stay: 2⁸ − 1 = 255 times [`STEPS`] first steps fill it.
const DOUBLINGS: u8 = 8;

/// Follows `body`, `start` warm throughout, through one stay after another.
///
/// `ρ·c·∂T/∂t = ∇·(k·∇T)`, with `−k·∂T/∂n = h·(T − T_air)` at the surface. Implicit finite volumes,
/// second order in space and time, 32 cells, 128 steps a stay, longer as it goes on. Heat is kept
/// to rounding. Properties stay as they are; evaporation is left out, so hot wet food cools
/// somewhat faster than this.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn simulate(body: &Body, start: Temperature, stays: &[Exposure]) -> Result<Curve, HeatError> {
    simulate_on::<CELLS>(body, start, stays, STEPS)
}

/// As [`simulate`], with half the cells and steps: for mean temperatures, which change slowly, and
/// for times that are rounded to minutes.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn simulate_coarsely(
    body: &Body,
    start: Temperature,
    stays: &[Exposure],
) -> Result<Curve, HeatError> {
    simulate_on::<16>(body, start, stays, 8)
}

/// As [`simulate`], on a grid of `GRID` cells and with `steps` steps between two doublings: for
/// showing how the answer depends on either.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn simulate_on<const GRID: usize>(
    body: &Body,
    start: Temperature,
    stays: &[Exposure],
    steps: u16,
) -> Result<Curve, HeatError> {
    let density = body.density.kilograms_per_cubic_metre();
    let per_volume = density * body.specific_heat.joules_per_kilogram_kelvin();
    let conductivity = body.conductivity.watts_per_metre_kelvin();
    let grid = Grid::<GRID>::new(body.shape, body.half.metres(), conductivity, per_volume);
    let whole = grid.whole();
    let steps = steps.max(1);
    let mut cells = [start.celsius(); GRID];
    let mut run = Run::begin(start, stays, steps);
    for stay in stays.iter().filter(|stay| stay.minutes > Minutes::ZERO) {
        let air = stay.air.temperature.celsius();
        let h = stay.air.coefficient.watts_per_square_metre_kelvin();
        let mut seconds = stay.minutes.minutes() * 60.0 / (255.0 * f64::from(steps));
        run.limits = (run.limits.0.min(air), run.limits.1.max(air));
        for _ in 0..DOUBLINGS {
            let ready = grid.factor(seconds, air, h);
            for _ in 0..steps {
                let stepped = grid.step(&ready, &mut cells);
                run.lost += stepped.left;
                run.seconds += seconds;
                let surface = grid.surface(&ready, &cells);
                run.note(grid.centre(&cells), stepped.held / whole, surface)?;
            }
            seconds *= 2.0;
        }
    }
    let kilograms = body.mass.grams() / 1000.0;
    let all = kilograms * body.specific_heat.joules_per_kilogram_kelvin();
    Ok(Curve {
        moments: run.moments,
        lost: Heat::from_joules(run.lost * all / whole),
    })
}

/// What is noted while a body is followed; room for all of it is taken beforehand.
struct Run {
    moments: Vec<Sample>,
    seconds: f64,
    lost: f64,
    /// Nothing can get colder or hotter than the start and what surrounded it so far.
    limits: (f64, f64),
}

impl Run {
    fn begin(start: Temperature, stays: &[Exposure], steps: u16) -> Self {
        let each = usize::from(steps).saturating_mul(usize::from(DOUBLINGS));
        let mut moments = Vec::with_capacity(1 + stays.len().saturating_mul(each));
        moments.push(Sample {
            time: Minutes::ZERO,
            centre: start,
            mean: start,
            surface: start,
        });
        let limits = (start.celsius(), start.celsius());
        Self {
            moments,
            seconds: 0.0,
            lost: 0.0,
            limits,
        }
    }

    fn note(&mut self, centre: f64, mean: f64, surface: f64) -> Result<(), HeatError> {
        let held = |t: f64| Temperature::from_celsius(t.clamp(self.limits.0, self.limits.1));
        self.moments.push(Sample {
            time: Minutes::from_minutes(self.seconds / 60.0)?,
            centre: held(centre)?,
            mean: held(mean)?,
            surface: held(surface)?,
        });
        Ok(())
    }
}

impl Sample {
    /// How warm it is there.
    #[must_use]
    pub const fn at(&self, place: Probe) -> Temperature {
        match place {
            Probe::Centre => self.centre,
            Probe::Mean => self.mean,
            Probe::Surface => self.surface,
        }
    }
}

impl Curve {
    /// How warm it is in the end.
    #[must_use]
    pub fn end(&self) -> Option<&Sample> {
        self.moments.last()
    }

    /// When a place first gets to `target` after `after`, from whichever side; `None` where it
    /// does not get there in the time followed. Between moments the straight line is taken.
    #[must_use]
    pub fn reaches(&self, target: Temperature, place: Probe, after: Minutes) -> Option<Minutes> {
        let when = first_crossing(self.points(place), target.celsius(), after.minutes())?;
        Minutes::from_minutes(when).ok()
    }

    /// How warm a place is at a time; its end for all later times.
    #[must_use]
    pub fn at(&self, time: Minutes, place: Probe) -> Option<Temperature> {
        let celsius = interpolate(self.points(place), time.minutes())?;
        Temperature::from_celsius(celsius).ok()
    }

    /// Minutes and °C of a place, moment by moment.
    fn points(&self, place: Probe) -> impl Iterator<Item = (f64, f64)> {
        let moments = self.moments.iter();
        moments.map(move |moment| (moment.time.minutes(), moment.at(place).celsius()))
    }
}
