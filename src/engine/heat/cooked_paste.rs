//! Cooking a paste: how hot flour gets when boiling liquid is poured on it, and how much of its
//! starch that cooks.

use std::borrow::Cow;

use super::balance::Balance;
use super::error::HeatError;
use super::grain::Grain;
use super::mix::{Mixed, equilibrate};
use super::paste::{Paste, Scalded};
use super::paste_remedy::{PasteRemedy, remedies};
use crate::engine::quantity::{Heat, Mass, Share, Temperature, TemperatureChange};
use crate::engine::working::TableReading;

/// What holds a flour's starch back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PasteLimit {
    /// It does not get hot enough.
    Temperature,
    /// There is not enough water for it.
    Water,
    /// Nothing: it cooks whole.
    None,
}

/// How a flour fares.
#[derive(Clone, Debug, PartialEq)]
pub struct CookedFlour {
    /// What it is called.
    pub of: Cow<'static, str>,
    /// What it is milled from.
    pub grain: Grain,
    /// The starch in it.
    pub starch: Mass,
    /// How much of it the temperature cooks.
    pub by_temperature: Share,
    /// How much of it the water cooks.
    pub by_water: Share,
    /// How much of it is cooked: the lesser of the two.
    pub cooked: Share,
    /// Which of the two holds it back.
    pub limit: PasteLimit,
    pub(super) temperature_reading: TableReading,
}

/// A paste just after stirring.
#[derive(Clone, Debug, PartialEq)]
pub struct CookedPaste {
    /// Where the liquid boils.
    pub boils: Temperature,
    /// What it loses on its way.
    pub drop: TemperatureChange,
    /// How hot the liquid is when it reaches the bowl.
    pub poured: Temperature,
    /// The balance of heat.
    pub mixed: Mixed,
    /// How hot the paste is.
    pub temperature: Temperature,
    /// The steam that leaves while it is stirred.
    pub steamed: Mass,
    /// All water in it, the flours' own moisture included.
    pub water: Mass,
    /// All starch in it.
    pub starch: Mass,
    /// Its flours.
    pub flours: Vec<CookedFlour>,
    /// How much of all starch is cooked.
    pub cooked: Share,
    /// What to do where it falls short; empty where it does not.
    pub remedies: Vec<PasteRemedy>,
    pub(super) water_reading: TableReading,
}

/// Share of starch cooked against grams of water to a gram of starch.
///
/// None up to 0.43 (Collison and Chilton 1974, potato), 85 % at 1.0, all at 1.5 (*J. Food Sci.* 55,
/// 1990); Donovan, *Biopolymers* 18, 1979, finds two stages below 1.5 as well.
const BY_WATER: [(f64, f64); 3] = [(0.43, 0.0), (1.0, 0.85), (Paste::PLENTY_OF_WATER, 1.0)];

/// Works out how hot the paste is just after stirring, and how much of its starch that cooks.
///
/// Liquid at the boil less the drop, flours, bowl, heat of cooking and the heat of the steam that
/// leaves while stirring balance. A flour's starch cooks to the lesser of what the temperature and what
/// the water allow. Sugar, which raises the range of temperature, is left out.
///
/// # Errors
/// [`HeatError::NoFlour`] without flour or starch; else those of [`super::mix()`].
pub fn cook(paste: &Paste) -> Result<CookedPaste, HeatError> {
    let starch = paste.starch();
    let water = paste.water();
    let per_starch = water.share_of(starch).ok_or(HeatError::NoFlour)?;
    let water_reading = TableReading::of(&BY_WATER, per_starch.fraction());
    let poured = Temperature::from_celsius(paste.boils.celsius() - paste.drop.kelvin())?;
    let components = paste.components(poured);
    let absorbed = |t: f64| paste.absorbed(t, water_reading.value);
    let mixed = equilibrate(&components, Heat::ZERO, absorbed)?;
    let temperature = mixed.temperature;
    let mut flours = Vec::with_capacity(paste.flours.len());
    let mut cooked = 0.0;
    for flour in &paste.flours {
        let one = CookedFlour::of(flour, temperature, water_reading.value)?;
        cooked += one.starch.grams() * one.cooked.fraction();
        flours.push(one);
    }
    let cooked = Share::from_fraction(cooked / starch.grams())?;
    let goal = paste.goal().celsius();
    let lacking = Balance::of(&components).taken_at(goal) + absorbed(goal);
    let steamed = paste
        .stirring
        .map_or(0.0, |stirring| stirring.grams_at(temperature.celsius()));
    Ok(CookedPaste {
        steamed: Mass::from_grams(steamed)?,
        boils: paste.boils,
        drop: paste.drop,
        poured,
        remedies: remedies(paste, poured, cooked, Heat::from_joules(lacking)),
        mixed,
        temperature,
        water,
        starch,
        flours,
        cooked,
        water_reading,
    })
}

impl CookedFlour {
    fn of(flour: &Scalded, at: Temperature, by_water: f64) -> Result<Self, HeatError> {
        let temperature_reading = flour.grain.cooked_at(at.celsius());
        let by_temperature = temperature_reading.value;
        let limit = if by_temperature.min(by_water) >= 1.0 {
            PasteLimit::None
        } else if by_temperature <= by_water {
            PasteLimit::Temperature
        } else {
            PasteLimit::Water
        };
        Ok(Self {
            of: flour.of.clone(),
            grain: flour.grain,
            starch: flour.mass.component(flour.starch),
            by_temperature: Share::from_fraction(by_temperature)?,
            by_water: Share::from_fraction(by_water)?,
            cooked: Share::from_fraction(by_temperature.min(by_water))?,
            limit,
            temperature_reading,
        })
    }
}
