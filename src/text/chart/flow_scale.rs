//! The scales of the flow curve: liquid across in even steps, thickness up in even ratios.

use crate::engine::chocolate::FlowCurve;
use crate::engine::quantity::{Share, Viscosity};

/// Left edge of the curve's own field.
pub(super) const LEFT: f64 = 38.0;
/// Right edge, where the names beside it are short.
const RIGHT: f64 = 258.0;
/// Width of the picture, and the distance of the names from the field.
pub(super) const WIDTH: f64 = 340.0;
pub(super) const BESIDE: f64 = 5.0;
/// The room that a figure across takes.
const FIGURE: f64 = 36.0;
/// Upper edge.
pub(super) const TOP: f64 = 40.0;
/// Lower edge.
pub(super) const BOTTOM: f64 = 240.0;

/// Pa·s that are always in the picture, from thin cream to a stiff paste.
const THIN: f64 = 0.02;
const THICK: f64 = 400.0;

/// Steps in hundredths that are easily counted.
const STEPS: [f64; 9] = [10.0, 20.0, 25.0, 50.0, 100.0, 200.0, 250.0, 500.0, 1000.0];

/// From quantities to places in the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scale {
    /// The right edge of the curve's own field.
    pub(super) right: f64,
    /// Liquid to chocolate at the right edge.
    pub(super) to: Share,
    /// The logarithm of the thickness at the lower edge.
    thin: f64,
    /// The same at the upper edge.
    thick: f64,
}

impl Scale {
    /// The scales on which a curve is drawn, with room for names so wide on its right.
    pub(super) fn of(curve: &FlowCurve, names: f64) -> Self {
        let thinnest = curve
            .points
            .iter()
            .filter_map(|point| point.thickness)
            .map(Viscosity::pascal_seconds)
            .fold(THIN, f64::min);
        let here = curve.here.thickness.map_or(0.0, Viscosity::pascal_seconds);
        Self {
            right: (WIDTH - BESIDE - names).clamp(LEFT + FIGURE, RIGHT),
            to: curve.to,
            thin: libm::log10(thinnest * 0.8),
            thick: libm::log10(THICK.max(1.5 * here)),
        }
    }

    pub(super) fn x(self, liquid_on_chocolate: Share) -> f64 {
        let to = self.to.fraction();
        let component = if to > 0.0 {
            liquid_on_chocolate.fraction() / to
        } else {
            0.0
        };
        LEFT + (self.right - LEFT) * component.clamp(0.0, 1.0)
    }

    pub(super) fn y(self, thickness: Viscosity) -> f64 {
        let place = libm::log10(thickness.pascal_seconds());
        let component = (place - self.thin) / (self.thick - self.thin);
        BOTTOM - (BOTTOM - TOP) * component.clamp(0.0, 1.0)
    }

    /// From figure to figure across, in hundredths: as many as have room.
    pub(super) fn step(self) -> f64 {
        let to = self.to.percent();
        let most = (self.right - LEFT) / FIGURE;
        STEPS
            .into_iter()
            .find(|step| to / step <= most)
            .unwrap_or(1000.0)
    }
}
