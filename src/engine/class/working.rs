//! The working of a class, of the portions from the teacher's bowl, and of the oven.

use super::bench::Class;
use super::oven::OvenPlan;
use super::portions::BowlPortion;
use crate::engine::numerics::float_from_usize;
use crate::engine::quantity::Mass;
use crate::engine::working::{Given, WorkingLine, given};

impl Class {
    /// The steps that lead to the number of loaves and their dough.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let loaves = f64::from(self.loaves);
        vec![
            WorkingLine {
                rule: "s × l + t".into(),
                with: vec![
                    given("s", "students", f64::from(self.settings.students.get()), ""),
                    given(
                        "l",
                        "loaves each",
                        f64::from(self.settings.loaves.get()),
                        "",
                    ),
                    given("t", "the teacher’s", f64::from(self.settings.shown), ""),
                ],
                result: given("n", "loaves", loaves, ""),
                source: "by definition".into(),
            },
            WorkingLine {
                rule: "n × e".into(),
                with: vec![
                    given("n", "loaves", loaves, ""),
                    given("e", "dough in a loaf", self.settings.loaf.grams(), "g"),
                ],
                result: given("N", "dough for the tins", self.dough.grams(), "g"),
                source: "by definition".into(),
            },
        ]
    }
}

impl OvenPlan {
    /// The step that leads to the time until everything is baked.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let loads = float_from_usize(self.loads.len());
        vec![WorkingLine {
            rule: "(k − 1) × (b + w) + b".into(),
            with: vec![
                given("k", "loads", loads, ""),
                given("b", "baking", self.oven.bake.minutes(), "min"),
                given("w", "between loads", self.oven.between.minutes(), "min"),
            ],
            result: given("T", "until all is baked", self.all_out.minutes(), "min"),
            source: "by definition".into(),
        }]
    }
}

impl BowlPortion {
    /// The steps that lead to each portion, and to what stays in the bowl.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let kinds = self.each.iter().zip(&self.needs);
        let taken = kinds.filter(|(_, (needs, _))| *needs > Mass::ZERO);
        let mut lines = Vec::new();
        let (mut rule, mut with) = ("H".to_owned(), vec![self.in_bowl()]);
        for (number, (each, (needs, count))) in (1..).zip(taken) {
            lines.extend(self.portion(*each, *needs));
            let letters = [format!("k{number}"), format!("w{number}")];
            rule += &format!(" − {}", letters.join(" × "));
            let [many, portion] = letters;
            with.push(given(many, "benches", f64::from(*count), ""));
            with.push(given(portion, "portion of each", each.grams(), "g"));
        }
        lines.push(WorkingLine {
            rule: rule.into(),
            with,
            result: given("L", "stays in the bowl", self.left.grams(), "g"),
            source: "by definition".into(),
        });
        lines
    }

    /// The steps that lead to the portion of a kind of bench.
    fn portion(&self, each: Mass, needs: Mass) -> [WorkingLine; 2] {
        let exact = self.holds.grams() * needs.grams() / self.planned.grams();
        let whole = f64::from(self.division.whole_in(each));
        [
            WorkingLine {
                rule: "H × b / B".into(),
                with: vec![
                    self.in_bowl(),
                    given("b", "needed at the bench", needs.grams(), "g"),
                    given(
                        "B",
                        "needed by all, and what stays in the bowl",
                        self.planned.grams(),
                        "g",
                    ),
                ],
                result: given("m", "portion, exact", exact, "g"),
                source: "by definition".into(),
            },
            WorkingLine {
                rule: "k × d".into(),
                with: vec![
                    given("k", "whole divisions that fit in it", whole, ""),
                    given("d", "division of the scale", self.division.grams(), "g"),
                ],
                result: given("w", "portion of each", each.grams(), "g"),
                source: "rounding down, so that the bowl is never short (by definition)".into(),
            },
        ]
    }

    fn in_bowl(&self) -> Given {
        given(
            "H",
            "in the bowl as it was weighed",
            self.holds.grams(),
            "g",
        )
    }
}
