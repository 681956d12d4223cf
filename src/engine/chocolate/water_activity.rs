//! Water activity: how free the water in a syrup is, and so how it must be kept.

use super::blend::Blend;
use super::solubility::SolubilityTable;
use crate::engine::quantity::{Share, Temperature};

/// How a syrup must be kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Perishability {
    /// Water activity 0.85 or more, or less than a hundredth below it, since the figure is no better
    /// than that: a fresh food. Into the refrigerator, and use it within days.
    FreshFood,
    /// Clearly below 0.85: the germs that make ill do not grow, but moulds and some yeasts do.
    MouldsSlowly,
}

/// How free the water is, as a syrup stands at 20 °C.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WaterActivity {
    /// Sugar dissolved at 20 °C as a share of sugar and water.
    pub sugar_in_solution: Share,
    /// Mole fraction of sugar.
    pub mole_fraction: Share,
    /// Water activity by sugar alone.
    pub by_sugar: Share,
    /// Salt on water, mol/kg, as a plain share.
    pub salt_molality: Share,
    /// Water activity by salt alone.
    pub by_salt: Share,
    /// Water activity: the two multiplied.
    pub water_activity: Share,
    /// How it must be kept.
    pub keeps_as: Perishability,
}

/// Grams of a mole of sucrose.
pub(super) const SUCROSE: f64 = 342.30;
/// Grams of a mole of water.
pub(super) const WATER: f64 = 18.015;
/// Grams of a mole of sodium.
pub(super) const SODIUM: f64 = 22.990;

impl WaterActivity {
    /// Norrish's constant for sucrose.
    ///
    /// Source: Chirife, Favetto and Ferro Fontán (1980) (from memory); agrees with Starzak and
    /// Peacock (1997) to 0.0008 from 5 to 65 %.
    pub const NORRISH: f64 = 6.47;
    /// Slot of water activity by a mole of salt in a kilogram of water, to 1.4 mol/kg.
    pub const SALT: f64 = 0.0333;
    /// Where the two ways of keeping part: above it, the United States' rules for shelf-stable
    /// foods (21 CFR 114.3, from memory) ask for acid, heat or cold.
    pub const LIMIT: f64 = 0.85;
    /// How far below the limit the figure must be to be trusted.
    pub const MARGIN: f64 = 0.01;

    /// How free the water of a blend is.
    ///
    /// `aw = (1 − x)·exp(−K·x²)` with x the mole fraction of sugar, all taken as sucrose,
    /// dissolved as far as 20 °C allows; by salt `1 − 0.0333·m`; together their product. Simple
    /// sugars, alcohol and cocoa bind more, so that the true figure is rather lower.
    ///
    /// Source: Norrish, J. Food Technol. 1 (1966) 25; Ross, Food Technol. 29(3) (1975) 26.
    pub(super) fn of(blend: &Blend, table: SolubilityTable) -> Self {
        let room = Temperature::from_celsius(20.0)
            .map_or(0.0, |room| table.sugar_on_water(room).fraction());
        let dissolved = blend.sugars.min(room * blend.water);
        let moles_sugar = dissolved / SUCROSE;
        let moles = moles_sugar + blend.water / WATER;
        let x = if moles > 0.0 {
            moles_sugar / moles
        } else {
            0.0
        };
        let by_sugar = norrish(x);
        let molality = if blend.water > 0.0 {
            (1000.0 * blend.sodium / SODIUM / blend.water).min(6.0)
        } else {
            0.0
        };
        let by_salt = (1.0 - Self::SALT * molality).max(0.75);
        let activity = by_sugar * by_salt;
        let solution = dissolved + blend.water;
        let keeps_as = if activity >= Self::LIMIT - Self::MARGIN {
            Perishability::FreshFood
        } else {
            Perishability::MouldsSlowly
        };
        Self {
            sugar_in_solution: share(if solution > 0.0 {
                dissolved / solution
            } else {
                0.0
            }),
            mole_fraction: share(x),
            by_sugar: share(by_sugar),
            salt_molality: share(molality),
            by_salt: share(by_salt),
            water_activity: share(activity),
            keeps_as,
        }
    }
}

/// Water activity of sucrose in water, `x` its mole fraction.
fn norrish(x: f64) -> f64 {
    (1.0 - x) * libm::exp(-WaterActivity::NORRISH * x * x)
}

fn share(fraction: f64) -> Share {
    Share::from_fraction(fraction).unwrap_or(Share::NONE)
}

/// Water activity of sugar in water by Norrish's equation; `sugar` is its share of the solution.
///
/// Source: as for [`WaterActivity`]. Holds to 0.002 up to 65 %.
#[must_use]
pub fn sugar_water_activity(sugar: Share) -> Share {
    let component = sugar.fraction().min(1.0);
    let moles_sugar = component / SUCROSE;
    share(norrish(
        moles_sugar / (moles_sugar + (1.0 - component) / WATER),
    ))
}
