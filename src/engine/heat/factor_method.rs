//! The handbook's factor method, for those who teach it.

use super::error::HeatError;
use crate::engine::quantity::{Temperature, TemperatureChange};
use crate::engine::working::{Line, given};

/// What the factor method says.
#[derive(Clone, Debug, PartialEq)]
pub struct FactorMethod {
    /// The wished temperature of the dough.
    pub target: Temperature,
    /// Room, flour, and preferment where there is one.
    pub others: Vec<Temperature>,
    /// The friction factor: a summed number, not the rise; the rise is this over the number of
    /// temperatures in the sum.
    pub friction: TemperatureChange,
    /// How many temperatures are in the sum, the water's included.
    pub count: f64,
    /// Where the water should be.
    pub water: Temperature,
}

/// The temperature of the water by the factor method.
///
/// `T_water = n·T_dough − Σ T_others − friction`, n one more than there are others. It takes every
/// temperature for equally weighty, whatever the masses, and knows no bowl: beside the balance of
/// heat it can be off by several degrees.
///
/// Source: bakers' handbooks; *Pizza Today*, June 2018; *Cook's Illustrated*.
///
/// # Errors
/// [`HeatError::OffScale`] when no water is that hot or cold.
pub fn factor_method(
    target: Temperature,
    others: &[Temperature],
    friction: TemperatureChange,
) -> Result<FactorMethod, HeatError> {
    let count = others.iter().fold(1.0, |count, _| count + 1.0);
    let sum: f64 = others.iter().map(|one| one.celsius()).sum();
    let water = count * target.celsius() - sum - friction.kelvin();
    Ok(FactorMethod {
        target,
        others: others.to_vec(),
        friction,
        count,
        water: Temperature::from_celsius(water)?,
    })
}

impl FactorMethod {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let mut rule = "n × D".to_owned();
        let mut with = vec![
            given("n", "temperatures in the sum", self.count, ""),
            given("D", "dough", self.target.celsius(), "°C"),
        ];
        for (place, other) in self.others.iter().enumerate() {
            let letter = format!("T{}", place + 1);
            rule.push_str(&format!(" − {letter}"));
            with.push(given(
                letter,
                "room, flour, preferment",
                other.celsius(),
                "°C",
            ));
        }
        rule.push_str(" − f");
        with.push(given("f", "friction factor", self.friction.kelvin(), "K"));
        vec![Line {
            rule: rule.into(),
            with,
            gives: given("W", "water", self.water.celsius(), "°C"),
            source: "bakers' handbooks".into(),
        }]
    }
}
