//! Doughs: how warm one comes off the mixer.

use super::balance::Balance;
use super::body::Body;
use super::error::HeatError;
use super::heat_part::HeatPart;
use super::material::Vessel;
use super::mix::{Mixed, mix};
use crate::engine::quantity::{
    HeatPerMass, Mass, Minutes, Temperature, TemperatureChange, WarmingRate,
};
use crate::engine::working::{Line, given};

/// How a thing that goes into the mixer can be handled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LiquidUse {
    /// Plain water: its temperature can be chosen, and some of it can go in as ice.
    Water,
    /// Another liquid: its temperature can be chosen.
    Liquid,
    /// Flour: it can be kept cold or warm.
    Flour,
    /// A paste or preferment from the fridge, of this shape: it can stand out first.
    Standing(Body),
    /// Anything else: it goes in as it is.
    AsItIs,
}

/// One thing that goes into the mixer.
#[derive(Clone, Debug, PartialEq)]
pub struct DoughItem {
    /// What, how much and how warm.
    pub component: HeatPart,
    /// How it can be handled.
    pub handling: LiquidUse,
}

/// A dough about to be mixed.
#[derive(Clone, Debug, PartialEq)]
pub struct Dough {
    /// Everything that goes in.
    pub items: Vec<DoughItem>,
    /// What it is mixed in.
    pub vessel: Option<Vessel>,
    /// Flour that is still dry: that of pastes and preferments has had its heat of hydration.
    pub dry_flour: Mass,
    /// How fast mixing warms it.
    pub friction: WarmingRate,
    /// How long it is mixed.
    pub minutes: Minutes,
}

/// How a dough's temperature comes about.
#[derive(Clone, Debug, PartialEq)]
pub struct DoughTemperature {
    /// Flour that takes up water.
    pub dry_flour: Mass,
    /// Everything brought together, heat of hydration included, before the mixer warms it.
    pub mixed: Mixed,
    /// How fast mixing warms it.
    pub friction: WarmingRate,
    /// How long it is mixed.
    pub minutes: Minutes,
    /// What mixing adds.
    pub rise: TemperatureChange,
    /// How warm it comes off the mixer.
    pub temperature: Temperature,
}

/// Heat that a gram of dry flour gives as it takes up water.
///
/// Source: *Baking & Snack*, "Targeting dough temperatures": 6.5 Btu a pound of flour.
pub const HEAT_OF_HYDRATION: HeatPerMass = HeatPerMass::known(15.1);

impl Dough {
    /// Rise by a stand mixer at middle speed, until the log knows better. Common practice: 0.5 to
    /// 1 K/min slow, 1 to 2 fast.
    pub const MIXER: WarmingRate = WarmingRate::known(1.0);

    /// Everything that shares its heat, the bowl included.
    #[must_use]
    pub fn components(&self) -> Vec<HeatPart> {
        let items = self.items.iter().map(|item| item.component.clone());
        items
            .chain(self.vessel.as_ref().map(Vessel::component))
            .collect()
    }

    /// What mixing adds: `r·t`.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when it is more than a thermometer can show.
    pub(super) fn rise(&self) -> Result<TemperatureChange, HeatError> {
        let kelvin = self.friction.kelvin_per_minute() * self.minutes.minutes();
        Ok(TemperatureChange::from_kelvin(kelvin)?)
    }

    /// Itself with some of its items changed.
    pub(super) fn with(&self, change: impl Fn(&mut DoughItem)) -> Self {
        let mut changed = self.clone();
        changed.items.iter_mut().for_each(change);
        changed
    }
}

/// How warm the dough comes off the mixer.
///
/// Everything settles as in [`mix`], the heat of hydration of the dry flour included; mixing then
/// adds `rate × minutes`. What is lost to the room while mixing is in the rate, which the log
/// learns. Butter's melting and sugar's dissolving are left out.
///
/// # Errors
/// Those of [`mix`].
pub fn dough_temperature(dough: &Dough) -> Result<DoughTemperature, HeatError> {
    let mixed = mix(&dough.components(), HEAT_OF_HYDRATION * dough.dry_flour)?;
    let rise = dough.rise()?;
    let temperature = Temperature::from_celsius(mixed.temperature.celsius() + rise.kelvin())?;
    Ok(DoughTemperature {
        dry_flour: dough.dry_flour,
        mixed,
        friction: dough.friction,
        minutes: dough.minutes,
        rise,
        temperature,
    })
}

/// As [`dough_temperature`], without the numbers met on the way: for finding by trying.
///
/// # Errors
/// Those of [`dough_temperature`].
pub(super) fn comes_off(dough: &Dough) -> Result<Temperature, HeatError> {
    let vessel = dough.vessel.as_ref().map(Vessel::component);
    let balance = Balance::of(
        dough
            .items
            .iter()
            .map(|item| &item.component)
            .chain(&vessel),
    );
    if balance.is_empty() {
        return Err(HeatError::EmptyBowl);
    }
    let hydration = HEAT_OF_HYDRATION * dough.dry_flour;
    let settles = balance.settles_with(hydration.joules())?;
    if balance.ice && settles < 0.0 {
        return Err(HeatError::IceLeft);
    }
    let rise = dough.rise()?;
    Ok(Temperature::from_celsius(settles + rise.kelvin())?)
}

impl DoughTemperature {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let mut lines = vec![Line {
            rule: "H × F".into(),
            with: vec![
                given(
                    "H",
                    "heat of hydration",
                    HEAT_OF_HYDRATION.joules_per_gram(),
                    "J/g",
                ),
                given("F", "dry flour", self.dry_flour.grams(), "g"),
            ],
            gives: given("Q", "heat gained", self.mixed.gained.joules(), "J"),
            source: "Baking & Snack, Targeting dough temperatures".into(),
        }];
        lines.extend(self.mixed.working());
        let rise = given("R", "friction", self.rise.kelvin(), "K");
        lines.push(Line {
            rule: "r × t".into(),
            with: vec![
                given("r", "friction", self.friction.kelvin_per_minute(), "K/min"),
                given("t", "mixing", self.minutes.minutes(), "min"),
            ],
            gives: rise.clone(),
            source: "common practice, then this kitchen's own log".into(),
        });
        lines.push(Line {
            rule: "T + R".into(),
            with: vec![
                given("T", "all together", self.mixed.temperature.celsius(), "°C"),
                rise,
            ],
            gives: given("D", "dough", self.temperature.celsius(), "°C"),
            source: "by definition".into(),
        });
        lines
    }
}
