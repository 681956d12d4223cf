//! Liquid: how warm it must be for the dough to come off the mixer as wished.

use super::balance::{Balance, temperature_at_zero};
use super::dough::{Dough, DoughTemperature, HEAT_OF_HYDRATION, LiquidUse, dough_temperature};
use super::error::HeatError;
use super::heat_part::HeatPart;
use super::surroundings::LiquidRange;
use crate::engine::quantity::{Temperature, TemperatureChange};

/// How warm the liquid must be.
#[derive(Clone, Debug, PartialEq)]
pub enum LiquidAnswer {
    /// This warm.
    At {
        /// The temperature.
        liquid: Temperature,
        /// The dough it makes.
        dough: DoughTemperature,
    },
    /// No liquid in range reaches the target.
    OutOfReach(OutOfReach),
}

/// The best the liquid can do. What else would do: [`super::dough_remedies`].
#[derive(Clone, Debug, PartialEq)]
pub struct OutOfReach {
    /// What it would have to be, where a thermometer could show it.
    pub wanted: Option<Temperature>,
    /// The end of the range that comes nearest.
    pub best: Temperature,
    /// The dough that makes.
    pub dough: DoughTemperature,
    /// How far the dough stays from the target: above zero where it stays too cold.
    pub short: TemperatureChange,
}

/// How warm the liquids must be, all alike, for the dough to come off the mixer at `target`.
///
/// The balance of [`dough_temperature`] turned round: what all else lacks to come to the temperature
/// that mixing brings to the target, the liquids bring.
///
/// # Errors
/// [`HeatError::NoLiquid`] when there is none; else those of [`dough_temperature`].
pub fn liquid_for(
    dough: &Dough,
    target: Temperature,
    range: LiquidRange,
) -> Result<LiquidAnswer, HeatError> {
    let wanted = wanted_liquid(dough, target)?;
    if let Some(liquid) = wanted
        && liquid >= range.coldest
        && liquid <= range.hottest
    {
        let dough = dough_temperature(&dough.poured_at(liquid))?;
        return Ok(LiquidAnswer::At { liquid, dough });
    }
    let coldest = dough_temperature(&dough.poured_at(range.coldest))?;
    let too_warm = coldest.temperature > target;
    let best = if too_warm {
        range.coldest
    } else {
        range.hottest
    };
    let reached = dough_temperature(&dough.poured_at(best))?;
    Ok(LiquidAnswer::OutOfReach(OutOfReach {
        wanted,
        best,
        short: target - reached.temperature,
        dough: reached,
    }))
}

/// The temperature all liquids must have; `None` where no thermometer shows it.
fn wanted_liquid(dough: &Dough, target: Temperature) -> Result<Option<Temperature>, HeatError> {
    let equilibrium = dough.mixing()?.before(target.celsius());
    let (liquids, others) = dough.split();
    let liquid = Balance::of(&liquids);
    if liquid.is_empty() {
        return Err(HeatError::NoLiquid);
    }
    let hydration = (HEAT_OF_HYDRATION * dough.dry_flour).joules();
    let lacking = Balance::of(&others).taken_at(equilibrium) - hydration;
    // The liquids hold this much at the end, so they must have held that and the rest before.
    let holds = liquid.held_at(equilibrium) + lacking;
    let found = temperature_at_zero(|t| liquid.held_at(t) - holds);
    Ok(found.ok().and_then(|t| Temperature::from_celsius(t).ok()))
}

impl Dough {
    /// Itself with all liquids at one temperature.
    #[must_use]
    pub fn poured_at(&self, liquid: Temperature) -> Self {
        self.with(|item| match item.handling {
            LiquidUse::Water | LiquidUse::Liquid => item.component.temperature = liquid,
            LiquidUse::Flour | LiquidUse::Standing(_) | LiquidUse::AsItIs => {}
        })
    }

    /// Liquids whose temperature can be chosen, and all the rest, bowl included.
    fn split(&self) -> (Vec<HeatPart>, Vec<HeatPart>) {
        let chosen = self.items.iter().map(|item| match item.handling {
            LiquidUse::Water | LiquidUse::Liquid => true,
            LiquidUse::Flour | LiquidUse::Standing(_) | LiquidUse::AsItIs => false,
        });
        let components = self.components().into_iter();
        let (liquids, others): (Vec<_>, Vec<_>) = components
            .zip(chosen.chain(std::iter::repeat(false)))
            .partition(|(_, is_liquid)| *is_liquid);
        let only = |pairs: Vec<(HeatPart, bool)>| {
            pairs.into_iter().map(|(component, _)| component).collect()
        };
        (only(liquids), only(others))
    }
}
