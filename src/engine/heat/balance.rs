//! The balance of heat of several parts: one curve for all, and where it passes a wanted amount.

use super::error::HeatError;
use super::heat_part::{HeatPart, ThermalMaterial};
use super::ice;
use super::matter::HeatCurve;
use crate::engine::numerics::root;
use crate::engine::quantity::{OutOfRange, Temperature};

/// The temperature, °C, at which a function that rises with it passes through zero.
///
/// # Errors
/// [`HeatError::OffScale`] when that is outside [`Temperature::RANGE`].
pub(crate) fn temperature_at_zero(function: impl Fn(f64) -> f64) -> Result<f64, HeatError> {
    root(function, Temperature::RANGE).map_err(|none| {
        let value = if none.at_start > 0.0 {
            f64::NEG_INFINITY
        } else {
            f64::INFINITY
        };
        HeatError::OffScale(OutOfRange {
            value,
            range: Temperature::RANGE,
        })
    })
}

/// All parts as one curve, with the heat they hold before they are mixed.
pub(crate) struct Balance {
    curve: HeatCurve,
    /// Heat held above 0 °C, J.
    held: f64,
    /// Heat to melt the ice there is, J.
    pub(super) melting: f64,
    /// Whether there is ice.
    pub(super) ice: bool,
}

impl Balance {
    pub(crate) fn of<'p>(components: impl IntoIterator<Item = &'p HeatPart>) -> Self {
        let mut all = Self {
            curve: HeatCurve::default(),
            held: 0.0,
            melting: 0.0,
            ice: false,
        };
        for component in components {
            let kilograms = component.mass.grams() / 1000.0;
            let curve = component.stuff.curve();
            all.curve = all.curve.plus(kilograms, curve);
            all.held += kilograms * curve.up_to(component.starts().celsius());
            if component.stuff == ThermalMaterial::Ice && kilograms > 0.0 {
                all.ice = true;
                all.melting += ice::melting(component.mass, component.temperature).joules();
            }
        }
        all
    }

    /// The heat, J, all parts together take to come to `t`, melting included.
    pub(crate) fn taken_at(&self, t: f64) -> f64 {
        self.curve.up_to(t) - self.held + self.melting
    }

    /// The heat, J, all parts together hold at `t` above what they hold at 0 °C.
    pub(crate) fn held_at(&self, t: f64) -> f64 {
        self.curve.up_to(t)
    }

    /// Where all parts settle with `gained` joules from outside, °C.
    pub(crate) fn equilibrium_with(&self, gained: f64) -> Result<f64, HeatError> {
        temperature_at_zero(|t| self.taken_at(t) - gained)
    }

    /// Whether there is nothing to warm.
    pub(crate) fn is_empty(&self) -> bool {
        self.curve.above.a <= 0.0
    }
}
