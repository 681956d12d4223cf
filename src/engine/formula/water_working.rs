//! How the water ledger's figures came about, line by line.

use super::{Contributor, Water, WaterLedger};
use crate::engine::quantity::Mass;
use crate::engine::working::{Given, Line, given};

const BY_COMPOSITION: &str = "composition of each ingredient";

impl WaterLedger {
    /// How the true and the total water came about, and their shares.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let (of_flours, others): (Vec<_>, Vec<_>) = self.from.iter().partition(|one| one.is_flour);
        let mut lines = vec![
            self.brought("W", "true water", &others, self.true_water.mass),
            self.share_line("W", "true water", self.true_water),
            self.share_line("P", "poured water", self.poured),
            self.share_line("L", "liquids", self.liquids),
        ];
        if !of_flours.is_empty() {
            lines.push(self.own_water(&of_flours));
        }
        lines.push(Line {
            rule: "100 × A / D".into(),
            with: vec![
                given("A", "all water", self.total.mass.grams(), "g"),
                given("D", "dough", self.dough.grams(), "g"),
            ],
            gives: given("M", "moisture of the dough", self.moisture.percent(), "%"),
            source: "by definition".into(),
        });
        lines
    }

    fn brought(
        &self,
        letter: &'static str,
        of: &'static str,
        from: &[&Contributor],
        gives: Mass,
    ) -> Line {
        let mut rule = Vec::new();
        let mut with = Vec::new();
        for (count, one) in from.iter().enumerate() {
            let number = count + 1;
            rule.push(format!("m{number} × w{number}"));
            with.push(weight(format!("m{number}"), one));
            with.push(given(
                format!("w{number}"),
                "water in it",
                one.water_content.fraction(),
                "",
            ));
        }
        if rule.is_empty() {
            rule.push("0".to_owned());
        }
        let mut rule = rule.join(" + ");
        if self.steam > Mass::ZERO {
            rule.push_str(" − S");
            with.push(given("S", "steam lost", self.steam.grams(), "g"));
        }
        Line {
            rule: rule.into(),
            with,
            gives: given(letter, of, gives.grams(), "g"),
            source: BY_COMPOSITION.into(),
        }
    }

    fn own_water(&self, of_flours: &[&Contributor]) -> Line {
        let mut line = self.brought("A", "all water", of_flours, self.total.mass);
        let without_steam = line.rule.replace(" − S", "");
        line.rule = format!("W + {without_steam}").into();
        line.with.retain(|one| one.letter != "S");
        let true_water = self.true_water.mass.grams();
        line.with
            .insert(0, given("W", "true water", true_water, "g"));
        line
    }

    fn share_line(&self, letter: &'static str, of: &'static str, water: Water) -> Line {
        Line {
            rule: format!("100 × {letter} / F").into(),
            with: vec![
                given(letter, of, water.mass.grams(), "g"),
                given("F", "flour", self.flour.grams(), "g"),
            ],
            gives: given("p", of, water.share.percent(), "%"),
            source: "by definition".into(),
        }
    }
}

fn weight(letter: String, one: &Contributor) -> Given {
    given(letter, one.food.clone(), one.mass.grams(), "g")
}
