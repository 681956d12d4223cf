//! How the water ledger's figures came about, line by line.

use super::account::{Entry, sum};
use super::{Contributor, Water, WaterLedger};
use crate::engine::quantity::Mass;
use crate::engine::working::{Line, given};

impl WaterLedger {
    /// How the true and the total water came about, and their shares.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let (of_flours, others): (Vec<_>, Vec<_>) = self.from.iter().partition(|one| one.is_flour);
        let true_water = self.true_water.mass;
        let mut lines = vec![
            sum("W", "true water", &entries(&others), self.steam, true_water),
            self.share_line("W", "true water", self.true_water),
            self.share_line("P", "poured water", self.poured),
            self.share_line("L", "liquids", self.liquids),
        ];
        if !of_flours.is_empty() {
            lines.push(self.with_own_water(&of_flours));
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

    fn with_own_water(&self, of_flours: &[&Contributor]) -> Line {
        let total = self.total.mass;
        let mut line = sum("A", "all water", &entries(of_flours), Mass::ZERO, total);
        let true_water = self.true_water.mass.grams();
        line.rule = format!("W + {}", line.rule).into();
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

fn entries(from: &[&Contributor]) -> Vec<Entry> {
    from.iter()
        .map(|one| Entry {
            at: one.at,
            food: one.food.clone(),
            mass: one.mass,
            brings: one.water_content,
        })
        .collect()
}
