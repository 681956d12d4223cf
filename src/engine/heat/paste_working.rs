//! How a paste's temperature and cooked share came about.

use super::cooked_paste::{CookedFlour, CookedPaste};
use super::evaporation::LATENT;
use crate::engine::quantity::Mass;
use crate::engine::working::{WorkingLine, given};

impl CookedPaste {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = vec![WorkingLine {
            rule: "B − D".into(),
            with: vec![
                given("B", "boiling here", self.boils.celsius(), "°C"),
                given("D", "lost on the way", self.drop.kelvin(), "K"),
            ],
            result: given("T1", "liquid poured", self.poured.celsius(), "°C"),
            source: "common practice".into(),
        }];
        lines.extend(self.steam_working());
        lines.extend(self.mixed.working());
        lines.push(WorkingLine {
            rule: "W / S".into(),
            with: vec![
                given("W", "water, flours' own included", self.water.grams(), "g"),
                given("S", "starch", self.starch.grams(), "g"),
            ],
            result: given(
                "w",
                "water to a gram of starch",
                self.water_reading.at,
                "g/g",
            ),
            source: "by definition".into(),
        });
        lines.push(self.water_reading.working(
            given(
                "w",
                "water to a gram of starch",
                self.water_reading.at,
                "g/g",
            ),
            given("V", "cooked by water", self.water_reading.value, ""),
            "Collison and Chilton 1974; J. Food Sci. 55, 1990; Donovan 1979",
        ));
        for flour in &self.flours {
            lines.extend(flour.working(self.temperature.celsius()));
        }
        lines
    }
}

impl CookedPaste {
    /// The heat of the steam that leaves while it is stirred, where any does.
    fn steam_working(&self) -> Option<WorkingLine> {
        let heat = self.steamed.grams() * LATENT;
        (self.steamed > Mass::ZERO).then(|| WorkingLine {
            rule: "M × L".into(),
            with: vec![
                given("M", "steam while stirring", self.steamed.grams(), "g"),
                given("L", "heat of a gram of steam at 70 °C", LATENT, "J/g"),
            ],
            result: given("E", "heat the steam takes along", heat, "J"),
            source: "Lewis relation, Çengel, Heat and Mass Transfer; IAPWS-95".into(),
        })
    }
}

impl CookedFlour {
    fn working(&self, celsius: f64) -> Vec<WorkingLine> {
        let heat = given("H", self.of.clone(), self.temperature_reading.value, "");
        vec![
            self.temperature_reading.working(
                given("T", "paste", celsius, "°C"),
                heat.clone(),
                "range in which this starch cooks; see the grain's own sources",
            ),
            WorkingLine {
                rule: "min(H, V)".into(),
                with: vec![
                    heat,
                    given("V", "cooked by water", self.by_water.fraction(), ""),
                ],
                result: given("K", self.of.clone(), self.cooked.fraction(), ""),
                source: "the lesser limit holds".into(),
            },
        ]
    }
}
