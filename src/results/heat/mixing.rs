//! Mixing: the temperature of the dough off the mixer, the heat that each ingredient adds, and how
//! warm the liquid should be.

use super::heat_shares::{HeatShare, shares};
use super::mixer_load::{MixerLoad, factor_method_for, mixer_load};
use crate::engine::formula::Formula;
use crate::engine::heat::{
    Development, Dough, DoughTemperature, FactorMethod, HeatError, LiquidAnswer, dough_temperature,
    liquid_for,
};
use crate::engine::quantity::{Temperature, TemperatureChange};
use crate::engine::working::WorkingLine;
use crate::sheet::{HeatSettings, Kitchen};

/// The mixer's load and the dough it makes.
#[derive(Clone, Debug, PartialEq)]
pub struct MixingResult {
    /// Everything that goes in.
    pub load: MixerLoad,
    /// The dough it makes.
    pub dough: DoughTemperature,
    /// How long it is mixed until it is developed.
    pub development: Development,
    /// The heat that each ingredient adds; negative where it takes heat.
    pub shares: Vec<HeatShare>,
    /// How warm the liquid should be.
    pub liquid: Result<LiquidAnswer, HeatError>,
    /// How warm it should be by the handbook's sum.
    pub factor: Result<FactorMethod, HeatError>,
}

/// A dough's temperature beside the wanted one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DoughOffset {
    /// The same as far as such a prediction can tell: to half a degree.
    AsWanted,
    /// Colder than wanted; the change is negative.
    Below(TemperatureChange),
    /// Warmer than wanted.
    Above(TemperatureChange),
}

/// Temperatures nearer than this count as the same, K: predictions are shown to half a degree.
const SAME: f64 = 0.25;

/// Compares a dough's temperature with the wanted one.
///
/// ```
/// use softcrumb::engine::quantity::Temperature;
/// use softcrumb::results::heat::{DoughOffset, dough_offset};
///
/// let wanted = Temperature::from_celsius(25.0)?;
/// assert_eq!(dough_offset(wanted, wanted), DoughOffset::AsWanted);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn dough_offset(dough: Temperature, wanted: Temperature) -> DoughOffset {
    let offset = dough - wanted;
    if offset.kelvin().abs() < SAME {
        DoughOffset::AsWanted
    } else if dough < wanted {
        DoughOffset::Below(offset)
    } else {
        DoughOffset::Above(offset)
    }
}

impl MixingResult {
    /// How warm the dough comes off the mixer, and how long it is mixed until it is developed.
    ///
    /// ```
    /// use softcrumb::results::heat::MixingResult;
    /// use softcrumb::sheet::{Kitchen, examples};
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let mixing = MixingResult::of(&sheet.formula, &Kitchen::default(), &sheet.heat)?;
    /// // Every step names its source.
    /// assert!(mixing.working().iter().all(|line| !line.source.is_empty()));
    /// # Ok::<(), softcrumb::engine::heat::HeatError>(())
    /// ```
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = self.dough.working();
        lines.extend(self.development.working());
        lines
    }

    /// Works out everything about the mix.
    ///
    /// ```
    /// use softcrumb::results::heat::MixingResult;
    /// use softcrumb::sheet::{HeatSettings, Kitchen, examples};
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let settings = HeatSettings::default();
    /// let mixing = MixingResult::of(&sheet.formula, &Kitchen::default(), &settings)?;
    /// // Mixing warms the dough, and where it ends is a range.
    /// assert!(mixing.dough.temperature > mixing.dough.mixed.temperature);
    /// assert!(mixing.dough.low < mixing.dough.temperature);
    /// # Ok::<(), softcrumb::engine::heat::HeatError>(())
    /// ```
    ///
    /// # Errors
    /// Those of [`mixer_load`] and [`dough_temperature`].
    pub fn of(
        formula: &Formula,
        kitchen: &Kitchen,
        settings: &HeatSettings,
    ) -> Result<Self, HeatError> {
        let load = mixer_load(formula, kitchen, settings)?;
        let dough = dough_temperature(&load.dough)?;
        let range = kitchen.surroundings().liquid;
        Ok(Self {
            shares: shares(&load, &dough, settings.dough)?,
            liquid: liquid_for(&load.dough, settings.dough, range),
            development: Development::of(load.dough.usual, &dough),
            factor: factor_method_for(&load, kitchen, settings.dough),
            load,
            dough,
        })
    }

    /// Returns whether the friction was learnt from bakes; else its range is that of printed
    /// figures.
    #[must_use]
    pub fn friction_is_learnt(&self) -> bool {
        self.dough.friction_spread != Dough::FRICTION_SPREAD
    }
}
