//! Ice in a dough: how much of its water goes in as ice.

use super::balance::Balance;
use super::dough::{Dough, HEAT_OF_HYDRATION, LiquidUse};
use super::error::HeatError;
use super::ice::melting;
use super::matter::Matter;
use crate::engine::quantity::{Heat, HeatPerMass, Mass, Temperature};
use crate::engine::working::{WorkingLine, given};

/// How much of the water goes in as ice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct IceAnswer {
    /// All the water there is, ice included.
    pub all_water: Mass,
    /// What of it goes in as ice.
    pub ice: Mass,
    /// What of it goes in as water.
    pub water: Mass,
    /// Heat that has to go for the target.
    pub surplus: Heat,
    /// Heat that a gram of ice takes more than a gram of that water.
    pub each: HeatPerMass,
    /// Where the dough comes off.
    pub temperature: Temperature,
    /// Whether all the ice that can melt is still not enough.
    pub falls_short: bool,
}

/// How much of the water must go in as ice for the dough to come off at `target`.
///
/// `x = H / (i + w)`: H the heat that has to go, i what a gram of ice takes to come to water at
/// 0 °C, w what a gram of the water holds above that. None where the dough is not too warm.
///
/// # Errors
/// [`HeatError::NoLiquid`] when there is no plain water; else those of [`super::dough_temperature`].
pub fn ice_for(
    dough: &Dough,
    target: Temperature,
    freezer: Temperature,
) -> Result<IceAnswer, HeatError> {
    let (all_water, tap) = dough.plain_water().ok_or(HeatError::NoLiquid)?;
    let mixing = dough.mixing()?;
    let before = mixing.before(target.celsius());
    // Below 0 °C ice would be left over, so a target that needs that is not reached.
    let frozen = before < 0.0;
    let equilibrium = before.max(0.0);
    let balance = Balance::of(&dough.components());
    let hydration = (HEAT_OF_HYDRATION * dough.dry_flour).joules();
    let surplus = (hydration - balance.taken_at(equilibrium)).max(0.0);
    let gram = Mass::from_grams(1.0)?;
    let holds = Matter::WATER.heat_curve().up_to(tap.celsius()) / 1000.0;
    let each = melting(gram, freezer).joules() + holds;
    let wished = if each > 0.0 {
        surplus / each
    } else {
        all_water.grams()
    };
    let ice = Mass::from_grams(wished.min(all_water.grams()))?;
    let falls_short = frozen || wished > all_water.grams();
    // The ice ends as water like the rest, so its heat of melting is all that changes.
    let temperature = mixing.after(balance.equilibrium_with(hydration - ice.grams() * each)?);
    Ok(IceAnswer {
        all_water,
        ice,
        water: all_water.less(ice),
        surplus: Heat::from_joules(surplus),
        each: HeatPerMass::from_joules_per_gram(each.max(0.0))?,
        temperature: Temperature::from_celsius(temperature)?,
        falls_short,
    })
}

impl Dough {
    /// All its plain water, and how warm that is.
    fn plain_water(&self) -> Option<(Mass, Temperature)> {
        let plain = |item: &&super::DoughItem| item.handling == LiquidUse::Water;
        let mass: Mass = self
            .items
            .iter()
            .filter(plain)
            .map(|item| item.component.mass)
            .sum();
        let tap = self.items.iter().find(plain)?.component.temperature;
        (mass > Mass::ZERO).then_some((mass, tap))
    }
}

impl IceAnswer {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "min(H / i, W)".into(),
            with: vec![
                given("H", "heat that has to go", self.surplus.joules(), "J"),
                given(
                    "i",
                    "heat a gram of ice takes more than one of water",
                    self.each.joules_per_gram(),
                    "J/g",
                ),
                given("W", "all the water", self.all_water.grams(), "g"),
            ],
            result: given("x", "ice", self.ice.grams(), "g"),
            source: "melting: IAPWS 2006; specific heats: Choi and Okos 1986".into(),
        }]
    }
}
