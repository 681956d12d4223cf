//! Minimum water: the handbook rule for how much water chocolate needs so as not to seize.

use super::blend::ChocolatePart;
use crate::engine::quantity::{Mass, Share};

/// What the handbook rule says of a syrup.
///
/// One tablespoon of water (14.8 g) to two ounces of chocolate (56.7 g) up to 60 % cocoa, half
/// more above: 0.26 and 0.39 g a gram.
///
/// Source: Corriher, *BakeWise* (2008) (from memory); common practice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MinimumWater {
    /// Cocoa in the chocolate, all of them together.
    pub cocoa: Share,
    /// Whether some of that had to be worked out as what is neither sugar nor water.
    pub cocoa_worked_out: bool,
    /// Water to chocolate by the rule.
    pub water_on_chocolate: Share,
    /// Water by the rule.
    pub needed: Mass,
    /// Water that the liquid brings.
    pub brought: Mass,
}

impl MinimumWater {
    /// Cocoa above which the rule asks for half more, as a fraction.
    pub const DARK: f64 = 0.60;
    /// Water on chocolate up to there, as a fraction.
    pub const USUAL: f64 = 0.26;
    /// Water on chocolate above, as a fraction.
    pub const ABOVE: f64 = 0.39;

    /// Whether the rule is met.
    #[must_use]
    pub fn met(&self) -> bool {
        self.brought >= self.needed
    }

    /// Judges so much water with some chocolates.
    pub(super) fn of(chocolate: &[ChocolatePart], mass: Mass, brought: Mass) -> Self {
        let cocoa: Mass = chocolate
            .iter()
            .map(|component| component.mass.component(cocoa(component)))
            .sum();
        let cocoa = cocoa.share_of(mass).unwrap_or(Share::NONE);
        // A share added up from parts may miss 60 % by the last binary place.
        let usual = cocoa.fraction() <= Self::DARK + 1e-9;
        let rule = if usual { Self::USUAL } else { Self::ABOVE };
        let water_on_chocolate = Share::from_fraction(rule).unwrap_or(Share::NONE);
        Self {
            cocoa,
            cocoa_worked_out: chocolate.iter().any(|component| component.cocoa.is_none()),
            water_on_chocolate,
            needed: mass.component(water_on_chocolate),
            brought,
        }
    }
}

/// The cocoa printed on the packet, or else everything that is neither sugar nor water.
fn cocoa(component: &ChocolatePart) -> Share {
    let composition = component.composition;
    component.cocoa.unwrap_or(
        Share::WHOLE
            .less(composition.sugars)
            .less(composition.water),
    )
}
