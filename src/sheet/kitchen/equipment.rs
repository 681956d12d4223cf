//! Equipment: scales, bowls, mixer, oven.

use crate::engine::heat::{Dough, HeatError, HeatFrom, Material, PrintedFactor, Vessel};
use crate::engine::quantity::{Mass, Minutes, Temperature, WarmingRate};

/// The divisions of the scales in the kitchen, each one of
/// [`crate::engine::quantity::Division::ALL`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scales {
    /// The division of the kitchen scale.
    pub main: Mass,
    /// The division of the pocket scale for yeast and salt, where there is one.
    pub pocket: Option<Mass>,
}

/// A bowl.
#[derive(Clone, Debug, PartialEq)]
pub struct Bowl {
    /// As the user calls it.
    pub name: String,
    /// What it is made of.
    pub material: Material,
    /// What it weighs empty.
    pub mass: Mass,
}

impl Bowl {
    /// The bowl as heat sees it, this warm.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never.
    pub fn vessel(&self, temperature: Temperature) -> Result<Vessel, HeatError> {
        Vessel::new(self.material, self.mass, temperature)
    }
}

/// What a mixer does to a dough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mixer {
    /// How fast its friction warms it.
    pub friction: WarmingRate,
    /// How far the true friction may lie above or below that.
    pub friction_spread: WarmingRate,
    /// How long a dough is usually mixed.
    pub minutes: Minutes,
    /// The printed friction factor for the handbook's sum.
    pub printed: PrintedFactor,
}

impl Mixer {
    /// Sets the friction to a figure of the user's, open as widely as printed figures are; nothing
    /// where it is that already.
    pub fn set_friction(&mut self, friction: WarmingRate) {
        if friction != self.friction {
            self.friction = friction;
            self.friction_spread = Dough::FRICTION_SPREAD;
        }
    }
}

impl Default for Mixer {
    /// A stand mixer at middle speed for nine minutes. Common practice.
    fn default() -> Self {
        Self {
            friction: Dough::FRICTION,
            friction_spread: Dough::FRICTION_SPREAD,
            minutes: Minutes::known(9.0),
            printed: PrintedFactor::default(),
        }
    }
}

/// What an oven can do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Oven {
    /// Whether its fan runs.
    pub fan: bool,
    /// Where its heat comes from, unless a phase says otherwise.
    pub from: HeatFrom,
}

impl Default for Oven {
    /// A still oven, heated from above and below.
    fn default() -> Self {
        Self {
            fan: false,
            from: HeatFrom::Both,
        }
    }
}
