//! How the water ledger's figures came about, line by line.

use super::{Contributor, Water, WaterLedger};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::{Given, WorkingLine, given};

impl WaterLedger {
    /// How the true and the total water came about, and their shares.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let (of_flours, others): (Vec<_>, Vec<_>) = self.from.iter().partition(|one| one.is_flour);
        let true_water = self.true_water.mass;
        let mut lines = vec![
            sum("W", "true hydration", &others, self.steam, true_water),
            self.share_line("W", "true hydration", self.true_water),
            self.share_line("P", "added water", self.poured),
            self.share_line("L", "liquids", self.liquids),
        ];
        if !of_flours.is_empty() {
            lines.push(self.with_own_water(&of_flours));
        }
        lines.push(WorkingLine {
            rule: "100 × A / D".into(),
            with: vec![
                given("A", "all water", self.total.mass.grams(), "g"),
                given("D", "dough", self.dough.grams(), "g"),
            ],
            result: given("M", "moisture of the dough", self.moisture.percent(), "%"),
            source: "by definition".into(),
        });
        lines
    }

    fn with_own_water(&self, of_flours: &[&Contributor]) -> WorkingLine {
        let total = self.total.mass;
        let mut line = sum("A", "all water", of_flours, Mass::ZERO, total);
        let true_water = self.true_water.mass.grams();
        line.rule = format!("W + {}", line.rule).into();
        line.with
            .insert(0, given("W", "true hydration", true_water, "g"));
        line
    }

    fn share_line(&self, letter: &'static str, of: &'static str, water: Water) -> WorkingLine {
        WorkingLine {
            rule: format!("100 × {letter} / F").into(),
            with: vec![
                given(letter, of, water.mass.grams(), "g"),
                given("F", "flour", self.flour.grams(), "g"),
            ],
            result: given("p", of, water.share.percent(), "%"),
            source: "by definition".into(),
        }
    }
}

/// `m1 × c1 + m2 × c2 + … − S`; a share that is the whole is left out of its term.
fn sum(
    letter: &'static str,
    of: &'static str,
    from: &[&Contributor],
    steam: Mass,
    result: Mass,
) -> WorkingLine {
    let mut rule = Vec::new();
    let mut with: Vec<Given> = Vec::new();
    for (count, one) in from.iter().enumerate() {
        let (weight, content) = (format!("m{}", count + 1), format!("c{}", count + 1));
        with.push(given(
            weight.clone(),
            one.food.clone(),
            one.mass.grams(),
            "g",
        ));
        if one.water_content == Share::WHOLE {
            rule.push(weight);
        } else {
            with.push(given(
                content.clone(),
                "water in a gram of it",
                one.water_content.fraction(),
                "",
            ));
            rule.push(format!("{weight} × {content}"));
        }
    }
    if rule.is_empty() {
        rule.push("0".to_owned());
    }
    let mut rule = rule.join(" + ");
    if steam > Mass::ZERO {
        rule.push_str(" − S");
        with.push(given("S", "steam lost", steam.grams(), "g"));
    }
    WorkingLine {
        rule: rule.into(),
        with,
        result: given(letter, of, result.grams(), "g"),
        source: "composition of each ingredient".into(),
    }
}
