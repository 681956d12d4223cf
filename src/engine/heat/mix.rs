//! Mixing: where things settle when they are put together.

use std::borrow::Cow;

use super::balance::{Balance, temperature_at_zero};
use super::error::HeatError;
use super::heat_part::HeatPart;
use super::matter::TemperatureStep;
use crate::engine::quantity::{Heat, HeatCapacity, Mass, SpecificHeat, Temperature};
use crate::engine::working::{WorkingLine, given};

/// One thing after mixing.
#[derive(Clone, Debug, PartialEq)]
pub struct Settled {
    /// What it is called.
    pub of: Cow<'static, str>,
    /// How much of it.
    pub mass: Mass,
    /// Its specific heat, meant between where it started and where it settled.
    pub specific_heat: SpecificHeat,
    /// Its heat capacity, from that.
    pub capacity: HeatCapacity,
    /// Where it started; 0 °C for ice, whose melting is counted apart.
    pub started: Temperature,
    /// The heat it took up, below zero where it gave heat.
    pub took: Heat,
}

/// A mix that has settled.
#[derive(Clone, Debug, PartialEq)]
pub struct Mixed {
    /// Its parts.
    pub components: Vec<Settled>,
    /// Heat brought by something other than the parts: kneading, hydration.
    pub gained: Heat,
    /// Heat used up by what happens on the way: melting, cooking.
    pub absorbed: Heat,
    /// The heat capacity of all parts together.
    pub capacity: HeatCapacity,
    /// Where it settled.
    pub temperature: Temperature,
}

const BALANCE: &str = "OpenStax, College Physics 2e, §14.2";

/// The temperature at which `parts` settle when mixed, `gained` included.
///
/// `T = (Σ mᵢ·cᵢ·Tᵢ + Q) / Σ mᵢ·cᵢ`, each cᵢ meant between Tᵢ and T, so that heat is kept exactly.
/// Ice first melts: its heat of melting is taken from the rest. Fats do not melt here.
///
/// Source: OpenStax, *College Physics 2e*, §14.2.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when the parts weigh nothing; [`HeatError::IceLeft`] when not all ice
/// melts; [`HeatError::OffScale`] when the answer leaves [`Temperature::RANGE`].
pub fn mix(components: &[HeatPart], gained: Heat) -> Result<Mixed, HeatError> {
    equilibrate(components, gained, |_| 0.0)
}

/// As [`mix`], with `absorbed` joules used up on the way to a temperature in °C; it must not fall
/// as the temperature rises.
pub(crate) fn equilibrate(
    components: &[HeatPart],
    gained: Heat,
    absorbed: impl Fn(f64) -> f64,
) -> Result<Mixed, HeatError> {
    let balance = Balance::of(components);
    let mass: Mass = components.iter().map(|component| component.mass).sum();
    if mass <= Mass::ZERO {
        return Err(HeatError::EmptyBowl);
    }
    let lacking = |t: f64| balance.taken_at(t) + absorbed(t) - gained.joules();
    let temperature = Temperature::from_celsius(temperature_at_zero(lacking)?)?;
    if balance.ice && temperature.celsius() < 0.0 {
        return Err(HeatError::IceLeft);
    }
    let used = Heat::from_joules(balance.melting + absorbed(temperature.celsius()));
    Mixed::gather(components, temperature, gained, used)
}

impl Mixed {
    fn gather(
        components: &[HeatPart],
        temperature: Temperature,
        gained: Heat,
        absorbed: Heat,
    ) -> Result<Self, HeatError> {
        let mut settled = Vec::with_capacity(components.len());
        for component in components
            .iter()
            .filter(|component| component.mass > Mass::ZERO)
        {
            let started = component.starts();
            let specific_heat = component.specific_heat(TemperatureStep {
                from: started,
                to: temperature,
            })?;
            let capacity = specific_heat * component.mass;
            settled.push(Settled {
                of: component.of.clone(),
                mass: component.mass,
                specific_heat,
                capacity,
                started,
                took: capacity * (temperature - started),
            });
        }
        let capacity = settled.iter().map(|component| component.capacity).sum();
        Ok(Self {
            components: settled,
            gained,
            absorbed,
            capacity,
            temperature,
        })
    }

    /// How it came about: the heat capacity of each part, then the balance of all.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = Vec::with_capacity(self.components.len() + 1);
        let (mut tops, mut bottoms) = (Vec::new(), Vec::new());
        let mut with = vec![
            given("Q", "heat gained", self.gained.joules(), "J"),
            given("A", "heat used up", self.absorbed.joules(), "J"),
        ];
        for (place, component) in self.components.iter().enumerate() {
            let (c, t) = (format!("C{}", place + 1), format!("T{}", place + 1));
            lines.push(component.line(c.clone()));
            with.push(given(
                c.clone(),
                component.of.clone(),
                component.capacity.joules_per_kelvin(),
                "J/K",
            ));
            with.push(given(
                t.clone(),
                component.of.clone(),
                component.started.celsius(),
                "°C",
            ));
            tops.push(format!("{c} × {t}"));
            bottoms.push(c);
        }
        lines.push(WorkingLine {
            rule: format!("({} + Q − A) / ({})", tops.join(" + "), bottoms.join(" + ")).into(),
            with,
            result: given("T", "all together", self.temperature.celsius(), "°C"),
            source: BALANCE.into(),
        });
        lines
    }
}

impl Settled {
    fn line(&self, letter: String) -> WorkingLine {
        WorkingLine {
            rule: "m / 1000 × c".into(),
            with: vec![
                given("m", self.of.clone(), self.mass.grams(), "g"),
                given(
                    "c",
                    self.of.clone(),
                    self.specific_heat.joules_per_kilogram_kelvin(),
                    "J/(kg·K)",
                ),
            ],
            result: given(
                letter,
                self.of.clone(),
                self.capacity.joules_per_kelvin(),
                "J/K",
            ),
            source: "specific heat by composition: Choi and Okos 1986".into(),
        }
    }
}
