//! The handbook's factor method, for those who teach it.

use super::error::HeatError;
use crate::engine::quantity::{Temperature, TemperatureChange};
use crate::engine::working::{WorkingLine, given};

/// A friction factor as it is printed, for the sum of temperatures. It is some three times the whole
/// warming, heat of hydration included.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum PrintedFactor {
    /// Mixed by hand: 5 °F.
    Hand,
    /// A stand mixer, the whole mix: 20 °F.
    TestKitchen,
    /// A stand mixer at home, some ten minutes: 22 to 24 °F.
    #[default]
    HomeMixer,
    /// Fast mixing: 35 °F.
    FastMixing,
}

impl PrintedFactor {
    /// Every factor, in the order lists are shown.
    pub const ALL: [Self; 4] = [
        Self::Hand,
        Self::TestKitchen,
        Self::HomeMixer,
        Self::FastMixing,
    ];

    /// The factor; the middle where two are printed. A degree Fahrenheit is 5/9 K.
    #[must_use]
    pub const fn factor(self) -> TemperatureChange {
        let fahrenheit = match self {
            Self::Hand => 5.0,
            Self::TestKitchen => 20.0,
            Self::HomeMixer => 23.0,
            Self::FastMixing => 35.0,
        };
        TemperatureChange::known(fahrenheit * 5.0 / 9.0)
    }

    /// The whole warming it stands for in a dough without a preferment, a third of it: three
    /// temperatures are in the sum.
    #[must_use]
    pub const fn warming(self) -> TemperatureChange {
        TemperatureChange::known(self.factor().kelvin() / 3.0)
    }

    /// Where it is printed.
    #[must_use]
    pub const fn source(self) -> &'static str {
        match self {
            Self::Hand => "Cook's Illustrated, Precise water temperature: by hand 5 °F",
            Self::TestKitchen => "Cook's Illustrated, Precise water temperature: stand mixer 20 °F",
            Self::HomeMixer => "common practice: stand mixer at home, 22 to 24 °F",
            Self::FastMixing => "Pizza Today, June 2018: 35 °F",
        }
    }
}

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
    /// Where the friction factor is printed.
    pub source: &'static str,
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
        source: "bakers' handbooks",
    })
}

impl FactorMethod {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
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
        vec![WorkingLine {
            rule: rule.into(),
            with,
            result: given("W", "water", self.water.celsius(), "°C"),
            source: self.source.into(),
        }]
    }
}
