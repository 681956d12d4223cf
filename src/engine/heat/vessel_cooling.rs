//! Cooling in a vessel: how a food in a bowl, dish or jar follows what surrounds it.

use super::conduction::{Curve, Sample};
use super::error::HeatError;
use super::evaporation::{Leaving, OpenAir, leaving};
use super::filling::{Cover, Filling, VesselStay};
use super::vessel_grid::{Face, VesselGrid, VesselStep};
use super::vessel_solver::Cells;
use crate::engine::quantity::{Heat, Mass, Minutes, Share, Temperature};

/// What a food in a vessel did.
#[derive(Clone, Debug, PartialEq)]
pub struct VesselCourse {
    /// Sample by moment. The centre is the warmest place on the axis where the food cools, else the coldest.
    pub curve: Curve,
    /// The water that has evaporated by each moment, in the same order.
    pub evaporated: Vec<Mass>,
}

/// The share of evaporation that a skin lets through. No figure is published: half of it is taken,
/// between an open surface and none.
pub(super) const SKIN: f64 = 0.5;

const LAYERS: usize = 10;
const RINGS: usize = 6;
/// Steps between two doublings of the step, and doublings within one stay.
const STEPS: u16 = 6;
const DOUBLINGS: u8 = 8;

/// Follows a food in its vessel, `start` warm throughout, through one stay after another.
///
/// A short cylinder that passes heat at the top, at the side and underneath; the wall warms with the
/// cells that touch it. From an open top water evaporates, by the Lewis relation, without a skin.
/// Implicit finite volumes in two dimensions, 10 layers of 6 rings, 48 steps a stay, each direction
/// by itself and in turns. The weight lost is not taken off, and properties stay as they are.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn simulate_in_vessel(
    filling: &Filling,
    start: Temperature,
    stays: &[VesselStay],
) -> Result<VesselCourse, HeatError> {
    simulate_on_grid::<LAYERS, RINGS>(filling, start, stays, STEPS)
}

/// As [`simulate_in_vessel`], on a coarse grid: a fifth of the work, times within a few per cent.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub(super) fn simulate_in_vessel_coarsely(
    filling: &Filling,
    start: Temperature,
    stays: &[VesselStay],
) -> Result<VesselCourse, HeatError> {
    simulate_on_grid::<6, 4>(filling, start, stays, 3)
}

/// As [`simulate_in_vessel`], on another grid and with `steps` steps between two doublings.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
fn simulate_on_grid<const L: usize, const R: usize>(
    filling: &Filling,
    start: Temperature,
    stays: &[VesselStay],
    steps: u16,
) -> Result<VesselCourse, HeatError> {
    let grid = VesselGrid::<L, R>::new(&filling.grid());
    let mut run = Run {
        across: filling.across.metres(),
        cools: stays.iter().any(|stay| stay.around < start),
        cells: grid.start(start.celsius(), filling.vessel_at.celsius()),
        grid,
        course: VesselCourse {
            curve: Curve {
                moments: vec![Sample {
                    time: Minutes::ZERO,
                    centre: start,
                    mean: start,
                    surface: start,
                }],
                lost: Heat::ZERO,
            },
            evaporated: vec![Mass::ZERO],
        },
        seconds: 0.0,
        water: 0.0,
    };
    for stay in stays.iter().filter(|stay| stay.minutes > Minutes::ZERO) {
        run.stay(stay, steps.max(1))?;
    }
    let end = run.grid.mean(&run.cells);
    let kilograms = filling.mass.grams() / 1000.0;
    let capacity = kilograms * filling.specific_heat.joules_per_kilogram_kelvin();
    run.course.curve.lost = Heat::from_joules(capacity * (start.celsius() - end));
    Ok(run.course)
}

/// A simulation under way.
struct Run<const L: usize, const R: usize> {
    grid: VesselGrid<L, R>,
    cells: Cells<L, R>,
    across: f64,
    /// Whether any place is colder than the food at first.
    cools: bool,
    course: VesselCourse,
    seconds: f64,
    /// Water that has evaporated, kg.
    water: f64,
}

impl<const L: usize, const R: usize> Run<L, R> {
    fn stay(&mut self, stay: &VesselStay, steps: u16) -> Result<(), HeatError> {
        let around = Face {
            coefficient: stay.coefficient.watts_per_square_metre_kelvin(),
            air: stay.around.celsius(),
        };
        let mut seconds = stay.minutes.minutes() * 60.0 / (255.0 * f64::from(steps));
        let mut down_first = true;
        for _ in 0..DOUBLINGS {
            let (mut top, mut leaves) = self.top(stay, around);
            let mut step = self.grid.ready(seconds, (top, around, around));
            for _ in 0..steps {
                if stay.cover.is_open() {
                    (top, leaves) = self.top(stay, around);
                    self.grid.with_top(&mut step, seconds, (top, around));
                }
                self.step(&step, (seconds, down_first), top, leaves);
                down_first = !down_first;
                self.note(around.air, top)?;
            }
            seconds *= 2.0;
        }
        Ok(())
    }

    fn step(
        &mut self,
        step: &VesselStep<L, R>,
        (seconds, down_first): (f64, bool),
        top: Face,
        leaves: Option<(f64, Leaving, f64)>,
    ) {
        step.go(&mut self.cells, down_first);
        self.seconds += seconds;
        if let Some((before, leaving, slope)) = leaves {
            // The rate moves with the surface along the step; the mean of both ends counts.
            let moved = self.grid.top(&self.cells, top) - before;
            let rate = (leaving.water + slope * moved / 2.0).max(0.0);
            self.water += rate * self.grid.area() * seconds;
        }
    }

    /// The face on top, and where water evaporates how warm it is, what leaves, and how fast the
    /// water's rate grows with the temperature.
    fn top(&self, stay: &VesselStay, around: Face) -> (Face, Option<(f64, Leaving, f64)>) {
        match stay.cover {
            Cover::Surrounded => (around, None),
            Cover::Closed => (
                Face {
                    coefficient: stay.closed(),
                    air: around.air,
                },
                None,
            ),
            Cover::Open(humidity) => self.open(stay, around, humidity, 1.0),
            Cover::Skin(humidity) => self.open(stay, around, humidity, SKIN),
            Cover::Wet { humidity, share } => self.open(stay, around, humidity, share.fraction()),
        }
    }

    /// An open face: the surface as it would be with plain still air, then once more with what
    /// leaves.
    fn open(
        &self,
        stay: &VesselStay,
        around: Face,
        humidity: Share,
        wet: f64,
    ) -> (Face, Option<(f64, Leaving, f64)>) {
        let air = OpenAir {
            temperature: stay.around,
            humidity,
        };
        let still = self.open_face(self.grid.top(&self.cells, around), air, wet);
        let surface = self.grid.top(&self.cells, still.0);
        let (face, leaves, slope) = self.open_face(surface, air, wet);
        (face, Some((surface, leaves, slope)))
    }

    /// What leaves an open surface of which the share `wet` evaporates, as a straight line through
    /// its temperature.
    fn open_face(&self, surface: f64, air: OpenAir, wet: f64) -> (Face, Leaving, f64) {
        const SMALL: f64 = 0.5;
        let surface = surface.clamp(-40.0, 100.0);
        let leaves = leaving(surface, air, self.across, wet);
        let cooler = leaving(surface - SMALL, air, self.across, wet);
        let coefficient = ((leaves.heat - cooler.heat) / SMALL).max(0.1);
        let face = Face {
            coefficient,
            air: surface - leaves.heat / coefficient,
        };
        (face, leaves, (leaves.water - cooler.water) / SMALL)
    }

    fn note(&mut self, around: f64, top: Face) -> Result<(), HeatError> {
        let axis = self.cells.iter().filter_map(|layer| layer.first().copied());
        let slowest = if self.cools { f64::max } else { f64::min };
        let centre = axis.reduce(slowest).unwrap_or(around);
        let (least, most) = (Temperature::RANGE.start(), Temperature::RANGE.end());
        let held = |celsius: f64| Temperature::from_celsius(celsius.clamp(*least, *most));
        self.course.curve.moments.push(Sample {
            time: Minutes::from_minutes(self.seconds / 60.0)?,
            centre: held(centre)?,
            mean: held(self.grid.mean(&self.cells))?,
            surface: held(self.grid.top(&self.cells, top))?,
        });
        self.course
            .evaporated
            .push(Mass::from_grams(self.water * 1000.0)?);
        Ok(())
    }
}

impl VesselCourse {
    /// The water that has evaporated in all.
    #[must_use]
    pub fn steam(&self) -> Mass {
        self.evaporated.last().copied().unwrap_or(Mass::ZERO)
    }
}
