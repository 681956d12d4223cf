//! How long to bake, scaled from a bake that is known.

use super::error::HeatError;
use crate::engine::quantity::{Factor, Minutes, Temperature};
use crate::engine::working::{Line, given};

/// What decides how long a bake takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BakeSetting {
    /// The oven, as a still one.
    pub oven: Temperature,
    /// The dough as it goes in.
    pub dough: Temperature,
    /// The middle as it comes out.
    pub core: Temperature,
}

/// How long the new bake takes: a hint, the core temperature is the test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BakeTime {
    /// The known bake.
    pub known: Minutes,
    /// How many times as thick the new piece is.
    pub thickness: Factor,
    /// What the known bake's temperatures make of it: ln((oven − dough)/(oven − core)).
    pub known_logarithm: f64,
    /// What the new bake's temperatures make of it.
    pub new_logarithm: f64,
    /// By conduction alone: time grows with the square of the thickness.
    pub by_conduction: Minutes,
    /// From.
    pub from: Minutes,
    /// To.
    pub to: Minutes,
}

/// What an oven's own ways take from the range, either way. Common practice.
const SPREAD: f64 = 0.1;

/// How long the new bake takes, from a bake that is known.
///
/// `t₂ = t₁·n²·L₂/L₁`, n the ratio of thicknesses, L = ln((oven − dough)/(oven − core)), if
/// conduction inside governs; with n instead of n² if the oven's heat at the surface does. The
/// truth lies between, so the range spans both, and a tenth beyond either way.
///
/// # Errors
/// [`HeatError::OvenTooCool`] where an oven is not hotter than what its core is to reach, or the
/// dough not cooler; [`HeatError::OffScale`] when the time leaves its range.
pub fn bake_time(
    known: Minutes,
    from: &BakeSetting,
    to: &BakeSetting,
    thickness: Factor,
) -> Result<BakeTime, HeatError> {
    let (known_logarithm, new_logarithm) = (from.logarithm()?, to.logarithm()?);
    let at_surface = known.minutes() * thickness.number() * new_logarithm / known_logarithm;
    let by_conduction = at_surface * thickness.number();
    Ok(BakeTime {
        known,
        thickness,
        known_logarithm,
        new_logarithm,
        by_conduction: Minutes::from_minutes(by_conduction)?,
        from: Minutes::from_minutes(by_conduction.min(at_surface) * (1.0 - SPREAD))?,
        to: Minutes::from_minutes(by_conduction.max(at_surface) * (1.0 + SPREAD))?,
    })
}

/// How many times as thick a piece is that weighs this many times as much and is alike in shape.
///
/// # Errors
/// [`HeatError::OffScale`] never within [`Factor::RANGE`].
pub fn thickness_of(weight: Factor) -> Result<Factor, HeatError> {
    Ok(Factor::from_number(libm::cbrt(weight.number()))?)
}

impl BakeSetting {
    fn logarithm(&self) -> Result<f64, HeatError> {
        let (above_dough, above_core) = (self.oven - self.dough, self.oven - self.core);
        if above_core.kelvin() <= 0.0 || self.core <= self.dough {
            return Err(HeatError::OvenTooCool {
                oven: self.oven,
                core: self.core,
            });
        }
        Ok(libm::log(above_dough.kelvin() / above_core.kelvin()))
    }
}

impl BakeTime {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        vec![Line {
            rule: "t × n^2 × L / K".into(),
            with: vec![
                given("t", "known bake", self.known.minutes(), "min"),
                given("n", "times as thick", self.thickness.number(), ""),
                given("L", "new oven, dough and core", self.new_logarithm, ""),
                given("K", "known oven, dough and core", self.known_logarithm, ""),
            ],
            gives: given("T", "by conduction", self.by_conduction.minutes(), "min"),
            source: "conduction: Carslaw and Jaeger, Conduction of Heat in Solids".into(),
        }]
    }
}
