//! What a hot food cools in: bowl, dish, tray, jar or bag, how wide it is, and what of it warms.

use super::error::HeatError;
use super::material::Material;
use crate::engine::numerics::whole;
use crate::engine::quantity::{HeatCapacity, Length, Mass};

/// What a hot food cools in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum CoolingVessel {
    /// The bowl it was stirred in, or one like it.
    #[default]
    Bowl,
    /// A wide, shallow dish.
    Dish,
    /// An oven tray.
    Tray,
    /// A jar.
    Jar,
    /// A closed bag, pressed flat.
    Bag,
}

/// How a food lies in its vessels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Laid {
    /// How wide it lies in each: the width of a circle.
    pub across: Length,
    /// In how many of them.
    pub count: u16,
}

/// What is usual of a vessel, m and g. Common practice.
struct Usual {
    across: f64,
    /// How high its wall is.
    wall: f64,
    /// How deep a food is put into it.
    deep: f64,
    /// The widest there are; more of a food goes into several.
    widest: f64,
    material: Material,
    mass: f64,
}

const BOWL: Usual = Usual {
    across: 0.145,
    wall: 0.07,
    deep: 0.05,
    widest: 0.30,
    material: Material::Steel,
    mass: 320.0,
};
const DISH: Usual = Usual {
    across: 0.22,
    wall: 0.05,
    deep: 0.02,
    widest: 0.28,
    material: Material::Ceramic,
    mass: 900.0,
};
/// As wide as a circle of the area of a tray of 40 by 30 cm.
const TRAY: Usual = Usual {
    across: 0.39,
    wall: 0.02,
    deep: 0.01,
    widest: 0.39,
    material: Material::Steel,
    mass: 700.0,
};
const JAR: Usual = Usual {
    across: 0.08,
    wall: 0.12,
    deep: 0.09,
    widest: 0.10,
    material: Material::Glass,
    mass: 350.0,
};
const BAG: Usual = Usual {
    across: 0.25,
    wall: 0.0,
    deep: 0.015,
    widest: 0.32,
    material: Material::Plastic,
    mass: 10.0,
};

/// The deepest a food stands in a bowl that suits it, as a share of the width. Common practice.
const BOWL_DEPTH: f64 = 0.3;

impl CoolingVessel {
    /// Every vessel, in the order lists are shown.
    pub const ALL: [Self; 5] = [Self::Bowl, Self::Dish, Self::Tray, Self::Jar, Self::Bag];

    const fn usual(self) -> &'static Usual {
        match self {
            Self::Bowl => &BOWL,
            Self::Dish => &DISH,
            Self::Tray => &TRAY,
            Self::Jar => &JAR,
            Self::Bag => &BAG,
        }
    }

    /// How wide one usually is. Common practice.
    #[must_use]
    pub const fn usual_across(self) -> Length {
        Length::known(self.usual().across)
    }

    /// How deep a food is usually put into it. Common practice.
    #[must_use]
    pub const fn usual_depth(self) -> Length {
        Length::known(self.usual().deep)
    }

    /// What it is usually made of. Common practice.
    #[must_use]
    pub const fn material(self) -> Material {
        self.usual().material
    }

    /// What it usually weighs. Common practice.
    #[must_use]
    pub const fn mass(self) -> Mass {
        Mass::known(self.usual().mass)
    }

    /// How a food that takes up `volume` m³ lies in vessels of this kind: in one that is `across`
    /// wide, or, where no width is given, in as many as it takes of a width that suits it.
    ///
    /// A bowl is at least as wide as usual and no deeper filled than three tenths of its width;
    /// in a dish, on a tray and in a bag a food is spread to the usual depth; a jar has its width.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] for a volume that no vessel holds.
    pub(super) fn laid(self, volume: f64, across: Option<Length>) -> Result<Laid, HeatError> {
        if let Some(across) = across {
            return Ok(Laid { across, count: 1 });
        }
        let usual = self.usual();
        let wide = |volume: f64, deep: f64| {
            libm::sqrt(4.0 * volume / (std::f64::consts::PI * deep.max(1e-3)))
        };
        let most = match self {
            Self::Bowl => {
                BOWL_DEPTH * std::f64::consts::PI / 4.0 * usual.widest * usual.widest * usual.widest
            }
            Self::Dish | Self::Tray | Self::Jar | Self::Bag => {
                let deep = if self == Self::Jar {
                    usual.wall
                } else {
                    usual.deep
                };
                std::f64::consts::PI / 4.0 * usual.widest * usual.widest * deep
            }
        };
        let count = u16::try_from(whole(libm::ceil(volume / most))).unwrap_or(u16::MAX);
        let count = count.max(1);
        let each = volume / f64::from(count);
        let across = match self {
            Self::Bowl => {
                let suits = libm::cbrt(4.0 * each / (BOWL_DEPTH * std::f64::consts::PI));
                suits.max(usual.across)
            }
            Self::Jar => usual.across.max(wide(each, usual.wall)),
            Self::Dish | Self::Tray | Self::Bag => wide(each, usual.deep),
        };
        Ok(Laid {
            across: Length::from_metres(across)?,
            count,
        })
    }

    /// Heat capacity of the part of a vessel that a food touches, as wide and deep as it lies.
    ///
    /// A bowl that is known has the mass and material given; others have the usual ones, their mass
    /// in proportion to their floor. Of wall and floor the part below the food's level counts.
    #[must_use]
    pub(super) fn capacity(
        self,
        across: Length,
        deep: Length,
        known: Option<(Material, Mass)>,
    ) -> HeatCapacity {
        let usual = self.usual();
        let wider = across.metres() / usual.across;
        let own = known.filter(|_| self == Self::Bowl);
        let (material, grams) = own.map_or(
            (usual.material, usual.mass * wider * wider),
            |(material, mass)| (material, mass.grams()),
        );
        let radius = across.metres() / 2.0;
        let wall = if self == Self::Bowl {
            radius
        } else {
            usual.wall
        };
        let touched = (radius + 2.0 * deep.metres()) / (radius + 2.0 * wall);
        let specific = material.specific_heat().joules_per_kilogram_kelvin();
        HeatCapacity::from_joules_per_kelvin(grams / 1000.0 * specific * touched.min(1.0))
    }
}
