//! The balance of heat of several parts: one curve for all, and where it passes a wanted amount.

use std::ops::RangeInclusive;

use super::error::HeatError;
use super::heat_part::{HeatPart, ThermalMaterial};
use super::ice;
use super::matter::HeatCurve;
use crate::engine::quantity::{OutOfRange, Temperature};

/// Halvings of the range of temperature: 390 K / 2⁶⁰ is far below what a thermometer shows.
const HALVINGS: u8 = 60;

/// Where a rising function passes through zero within `range`.
pub(crate) fn rising_root(
    function: impl Fn(f64) -> f64,
    range: RangeInclusive<f64>,
) -> Result<f64, HeatError> {
    let (mut low, mut high) = (*range.start(), *range.end());
    let off = |value: f64| {
        HeatError::OffScale(OutOfRange {
            value,
            range: range.clone(),
        })
    };
    if function(low) > 0.0 {
        return Err(off(f64::NEG_INFINITY));
    }
    if function(high) < 0.0 {
        return Err(off(f64::INFINITY));
    }
    for _ in 0..HALVINGS {
        let middle = low.midpoint(high);
        if function(middle) < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    Ok(low.midpoint(high))
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
    pub(crate) fn settles_with(&self, gained: f64) -> Result<f64, HeatError> {
        rising_root(|t| self.taken_at(t) - gained, Temperature::RANGE)
    }

    /// Whether there is nothing to warm.
    pub(crate) fn is_empty(&self) -> bool {
        self.curve.above.a <= 0.0
    }
}
