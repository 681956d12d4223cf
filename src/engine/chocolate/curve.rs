//! Flow curve: thickness against liquid, ready to be drawn.

use super::syrup::Syrup;
use crate::engine::quantity::{Share, Viscosity};

/// One point of the flow curve.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CurvePoint {
    /// Liquid to chocolate: 0.25 is 25 g to 100 g.
    pub liquid_on_chocolate: Share,
    /// How thick it is there; none where it has seized.
    pub thickness: Option<Viscosity>,
}

/// Thickness against liquid for one chocolate and one liquid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlowCurve {
    /// Points at even steps from no liquid to [`FlowCurve::to`].
    pub points: [CurvePoint; FlowCurve::POINTS],
    /// Where the curve ends, liquid to chocolate.
    pub to: Share,
    /// Where it stops seizing, liquid to chocolate; none when it always does.
    pub seizes_below: Option<Share>,
    /// Where the syrup itself stands.
    pub here: CurvePoint,
}

impl FlowCurve {
    /// How many points there are.
    pub const POINTS: usize = 61;
    /// The shortest curve: 60 g of liquid to 100 g, as a fraction.
    pub const SHORTEST: f64 = 0.60;
    /// The longest, as a fraction.
    pub const LONGEST: f64 = 20.0;
}

impl Syrup {
    /// The flow curve of this chocolate with this liquid, at this temperature.
    ///
    /// It reaches to 60 g in 100 g, to half again the syrup's own liquid, or to twice where
    /// seizing ends, whichever is farthest.
    #[must_use]
    pub fn curve(&self) -> FlowCurve {
        let chocolate = self.components.chocolate.total;
        let here = self.liquid_on_chocolate.fraction();
        let seizes = self.least_liquid.map(|least| least.grams() / chocolate);
        let to = FlowCurve::SHORTEST
            .max(1.5 * here)
            .max(2.0 * seizes.unwrap_or(0.0))
            .min(FlowCurve::LONGEST);
        let mut points = [CurvePoint::default(); FlowCurve::POINTS];
        let mut step = 0.0;
        for point in &mut points {
            *point = self.point(to * step / 60.0);
            step += 1.0;
        }
        FlowCurve {
            points,
            to: Share::from_fraction(to).unwrap_or(Share::WHOLE),
            seizes_below: seizes.and_then(|share| Share::from_fraction(share).ok()),
            here: self.point(here),
        }
    }

    fn point(&self, on_chocolate: f64) -> CurvePoint {
        let mix = self
            .components
            .with(on_chocolate * self.components.chocolate.total);
        CurvePoint {
            liquid_on_chocolate: Share::from_fraction(on_chocolate).unwrap_or(Share::NONE),
            thickness: mix
                .pascal_seconds(&self.components.conditions)
                .and_then(|eta| Viscosity::from_pascal_seconds(eta).ok()),
        }
    }
}
