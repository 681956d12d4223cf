//! A bound on cooling: a food that conducts without limit, which no real food outruns.

use super::conduction::{Curve, Sample};
use super::cooled::{Cooled, judge};
use super::error::HeatError;
use super::filling::{Cover, Filling, VesselStay};
use super::rule_set::RuleSet;
use crate::engine::quantity::{Heat, Minutes, Temperature};

/// Steps within one stay; each is longer than the one before.
const STEPS: u8 = 48;
const GROWS: f64 = 1.15;
/// A stage may take this much longer before it counts as hopeless: what straight lines between the
/// steps may be off by. 5 %.
const LENIENT: f64 = 1.05;

/// Whether a food under cover fails even as one body that is as warm throughout.
///
/// `T = Tₐ + (T₀ − Tₐ)·e^(−h·A·t / C)`: its surface is warmer than that of a real food, so it loses
/// heat faster. Where its surface is open to the air, nothing is said.
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub(super) fn is_hopeless(
    filling: &Filling,
    start: Temperature,
    stays: &[VesselStay],
    rules: RuleSet,
) -> Result<bool, HeatError> {
    if stays.iter().any(|stay| stay.cover.is_open()) {
        return Ok(false);
    }
    let cooled = lumped(filling, start, stays, rules)?;
    Ok(cooled.stages.iter().any(|stage| {
        let took = stage.took.map_or(f64::MAX, Minutes::minutes);
        took > LENIENT * stage.stage.within.minutes()
    }))
}

fn lumped(
    filling: &Filling,
    start: Temperature,
    stays: &[VesselStay],
    rules: RuleSet,
) -> Result<Cooled, HeatError> {
    let kilograms = filling.mass.grams() / 1000.0;
    let capacity = kilograms * filling.specific_heat.joules_per_kilogram_kelvin()
        + filling.vessel.joules_per_kelvin();
    let mut celsius = start.celsius();
    let mut moments = Vec::new();
    let mut begun = 0.0;
    let mut note = |minutes: f64, celsius: f64| -> Result<(), HeatError> {
        let at = Temperature::from_celsius(celsius)?;
        moments.push(Sample {
            time: Minutes::from_minutes(minutes)?,
            centre: at,
            mean: at,
            surface: at,
        });
        Ok(())
    };
    note(0.0, celsius)?;
    for stay in stays {
        let passes = passes(filling, stay);
        let (around, whole) = (stay.around.celsius(), stay.minutes.minutes());
        let first = whole * (GROWS - 1.0) / (libm::pow(GROWS, f64::from(STEPS)) - 1.0);
        let (mut passed, mut step) = (0.0, first);
        for _ in 0..STEPS {
            passed += step;
            step *= GROWS;
            let gone = libm::exp(-passes * passed * 60.0 / capacity);
            note(begun + passed, around + (celsius - around) * gone)?;
        }
        begun += whole;
        celsius = around + (celsius - around) * libm::exp(-passes * whole * 60.0 / capacity);
    }
    let curve = Curve {
        moments,
        lost: Heat::ZERO,
    };
    Ok(judge(curve, rules))
}

/// What passes at top, side and bottom, W/K.
fn passes(filling: &Filling, stay: &VesselStay) -> f64 {
    let radius = filling.across.metres() / 2.0;
    let floor = std::f64::consts::PI * radius * radius;
    let wall = 2.0 * std::f64::consts::PI * radius * filling.deep.metres();
    let beside = stay.coefficient.watts_per_square_metre_kelvin();
    let over = match stay.cover {
        Cover::Closed => stay.closed(),
        Cover::Open(_) | Cover::Skin(_) | Cover::Wet { .. } | Cover::Surrounded => beside,
    };
    beside * (floor + wall) + over * floor
}
