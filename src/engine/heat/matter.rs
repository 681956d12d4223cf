//! Matter: a food taken apart into the components that heat can tell apart.

use super::component::{Component, Quadratic};
use super::error::HeatError;
use crate::engine::ingredients::Composition;
use crate::engine::quantity::{Mass, Share, SpecificHeat, Temperature};

/// A food as shares of its components, which sum to one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Matter {
    shares: [f64; 10],
}

/// A change of temperature as heat sees it: from one end to the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TemperatureStep {
    /// Where it starts.
    pub from: Temperature,
    /// Where it ends.
    pub to: Temperature,
}

/// Below this share of water, sugar and salt lie as dry crystals.
const DRY: f64 = 0.05;

/// Grams of salt to a gram of sodium: 58.443 / 22.990.
const SALT_OF_SODIUM: f64 = 2.5421;

impl Matter {
    /// Plain water.
    pub const WATER: Self = Self {
        shares: [1.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    };

    /// Ice.
    pub const ICE: Self = Self {
        shares: [0.0, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    };

    /// From a composition. Fibre is taken out of carbohydrate, where tables keep it; in a food
    /// with under 5 % of water sugars count as crystals, and sodium as salt. Rows that do not sum
    /// to one are stretched to it.
    ///
    /// # Errors
    /// [`HeatError::UnknownFood`] when every part is zero.
    pub fn of(food: &Composition) -> Result<Self, HeatError> {
        let dry = food.water.fraction() < DRY;
        let fibre = food.fibre.fraction();
        let carbohydrate = (food.carbohydrate.fraction() - fibre).max(0.0);
        let crystals = if dry {
            food.sugars.fraction().min(carbohydrate)
        } else {
            0.0
        };
        let ash = food.ash.fraction();
        let salt = if dry {
            (food.sodium.fraction() * SALT_OF_SODIUM).min(ash)
        } else {
            0.0
        };
        Self::stretched([
            food.water.fraction(),
            0.0,
            food.protein.fraction(),
            food.fat.fraction(),
            carbohydrate - crystals,
            fibre,
            ash - salt,
            crystals,
            salt,
            food.alcohol.fraction(),
        ])
    }

    /// Several foods stirred together: crystals dissolve as soon as there is water for them.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] when nothing weighs anything.
    pub fn blend(foods: &[(Mass, Self)]) -> Result<Self, HeatError> {
        let mut sums = [0.0; 10];
        for (mass, matter) in foods {
            for (sum, share) in sums.iter_mut().zip(matter.shares) {
                *sum += mass.grams() * share;
            }
        }
        let blended = Self::stretched(sums).map_err(|_| HeatError::EmptyBowl)?;
        Ok(blended.dissolved())
    }

    /// What is left of `mass` of it when this much `steam` has gone off: all of it water.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] when nothing is left.
    pub(crate) fn dried(self, mass: Mass, steam: Mass) -> Result<Self, HeatError> {
        let mut shares = self.shares.map(|share| share * mass.grams());
        if let Some(water) = shares.first_mut() {
            *water = (*water - steam.grams()).max(0.0);
        }
        Self::stretched(shares).map_err(|_| HeatError::EmptyBowl)
    }

    /// The share of one component.
    #[must_use]
    pub fn share(&self, component: Component) -> Share {
        Component::ALL
            .iter()
            .zip(self.shares)
            .find(|(one, _)| **one == component)
            .and_then(|(_, share)| Share::from_fraction(share).ok())
            .unwrap_or_default()
    }

    /// Its specific heat, meant over the whole of a change of temperature.
    ///
    /// `c = Σ xᵢ·cᵢ`, each cᵢ the mean of its curve between the two ends, J/(kg·K).
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when no food could have it.
    pub fn specific_heat(&self, over: TemperatureStep) -> Result<SpecificHeat, HeatError> {
        let mean = self
            .heat_curve()
            .mean(over.from.celsius(), over.to.celsius());
        Ok(SpecificHeat::from_joules_per_kilogram_kelvin(mean)?)
    }

    /// Each component with its share, those it has none of left out.
    pub(crate) fn components(&self) -> impl Iterator<Item = (Component, f64)> {
        Component::ALL
            .into_iter()
            .zip(self.shares)
            .filter(|(_, share)| *share > 0.0)
    }

    /// The curve of its specific heat, J/(kg·K).
    pub(crate) fn heat_curve(&self) -> HeatCurve {
        let mut curve = HeatCurve::default();
        for (component, share) in self.components() {
            let thousand = 1000.0 * share;
            curve.above = curve.above.plus(thousand, component.specific_heat());
            curve.below = curve
                .below
                .plus(thousand, component.specific_heat_below_freezing());
        }
        curve
    }

    fn stretched(shares: [f64; 10]) -> Result<Self, HeatError> {
        let whole: f64 = shares.iter().sum();
        if whole > 0.0 {
            Ok(Self {
                shares: shares.map(|share| share / whole),
            })
        } else {
            Err(HeatError::UnknownFood)
        }
    }

    fn dissolved(self) -> Self {
        let [
            water,
            ice,
            protein,
            fat,
            carbohydrate,
            fibre,
            ash,
            sugar,
            salt,
            alcohol,
        ] = self.shares;
        if water < DRY {
            return self;
        }
        Self {
            shares: [
                water,
                ice,
                protein,
                fat,
                carbohydrate + sugar,
                fibre,
                ash + salt,
                0.0,
                0.0,
                alcohol,
            ],
        }
    }
}

/// A specific heat against temperature, J/(kg·K): one quadratic above 0 °C and one below.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct HeatCurve {
    pub(crate) above: Quadratic,
    pub(crate) below: Quadratic,
}

impl HeatCurve {
    /// The same at every temperature.
    pub(crate) const fn level(value: f64) -> Self {
        let flat = Quadratic {
            a: value,
            b: 0.0,
            c: 0.0,
        };
        Self {
            above: flat,
            below: flat,
        }
    }

    /// Heat from 0 °C to `t`, J/kg.
    pub(crate) fn up_to(self, t: f64) -> f64 {
        if t < 0.0 {
            self.below.up_to(t)
        } else {
            self.above.up_to(t)
        }
    }

    /// The mean between two temperatures.
    pub(crate) fn mean(self, from: f64, to: f64) -> f64 {
        if from >= 0.0 && to >= 0.0 {
            self.above.mean(from, to)
        } else if from <= 0.0 && to <= 0.0 {
            self.below.mean(from, to)
        } else {
            // The ends lie on either side of 0 °C, so their distance is not zero.
            (self.up_to(to) - self.up_to(from)) / (to - from)
        }
    }

    /// Itself with `mass` times `other` added.
    pub(crate) fn plus(self, mass: f64, other: Self) -> Self {
        Self {
            above: self.above.plus(mass, other.above),
            below: self.below.plus(mass, other.below),
        }
    }
}
