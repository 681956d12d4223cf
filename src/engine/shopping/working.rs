//! The working of packs and costs.

use super::item::ShoppingItem;
use super::list::Shopping;
use crate::engine::quantity::{Mass, Money};
use crate::engine::working::{Given, WorkingLine, given};

impl ShoppingItem {
    /// The steps that lead to its packs and its cost.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let (Some(holds), Some(packs)) = (self.pack, self.packs) else {
            return Vec::new();
        };
        let count = given("p", "whole packs", f64::from(packs), "");
        let mut lines = vec![WorkingLine {
            rule: "max(N − H, 0) / P".into(),
            with: vec![
                grams("N", "needed", self.needed),
                grams("H", "on hand", self.on_hand),
                grams("P", "in a pack", holds),
            ],
            result: given(
                "q",
                "packs, before rounding up",
                self.to_buy.grams() / holds.grams(),
                "",
            ),
            source: "by definition".into(),
        }];
        if let (Some(price), Some(used), Some(paid)) = (self.price, self.used, self.paid) {
            lines.push(WorkingLine {
                rule: "e × N / P".into(),
                with: vec![
                    money("e", "price of a pack", price),
                    grams("N", "needed", self.needed),
                    grams("P", "in a pack", holds),
                ],
                result: money("u", "cost of what is used", used),
                source: "by definition".into(),
            });
            lines.push(WorkingLine {
                rule: "p × e".into(),
                with: vec![count, money("e", "price of a pack", price)],
                result: money("b", "to pay", paid),
                source: "by definition".into(),
            });
        }
        lines
    }
}

impl Shopping {
    /// The step that leads to the cost of what is used: the sum of the items that have a price.
    #[must_use]
    pub fn working(&self) -> WorkingLine {
        let mut rule = Vec::new();
        let mut with = Vec::new();
        let priced = self
            .items
            .iter()
            .filter_map(|item| Some((item, item.used?)));
        for (at, (item, used)) in priced.enumerate() {
            let letter = format!("u{}", at + 1);
            with.push(given(
                letter.clone(),
                item.food.name().to_owned(),
                used.amount(),
                "",
            ));
            rule.push(letter);
        }
        if rule.is_empty() {
            rule.push("0".to_owned());
        }
        WorkingLine {
            rule: rule.join(" + ").into(),
            with,
            result: money("U", "cost of what is used", self.used),
            source: "by definition".into(),
        }
    }
}

fn grams(letter: &'static str, of: &'static str, mass: Mass) -> Given {
    given(letter, of, mass.grams(), "g")
}

fn money(letter: &'static str, of: &'static str, money: Money) -> Given {
    given(letter, of, money.amount(), "")
}
