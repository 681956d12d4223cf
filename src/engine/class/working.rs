//! The working of a class and its oven.

use super::bench::Class;
use super::oven::OvenPlan;
use crate::engine::numerics::float_from_usize;
use crate::engine::working::{Line, given};

impl Class {
    /// The steps that lead to the number of loaves and their dough.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let loaves = f64::from(self.loaves);
        vec![
            Line {
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
                gives: given("n", "loaves", loaves, ""),
                source: "by definition".into(),
            },
            Line {
                rule: "n × e".into(),
                with: vec![
                    given("n", "loaves", loaves, ""),
                    given("e", "dough in a loaf", self.settings.loaf.grams(), "g"),
                ],
                gives: given("N", "dough for the tins", self.dough.grams(), "g"),
                source: "by definition".into(),
            },
        ]
    }
}

impl OvenPlan {
    /// The step that leads to the time until everything is baked.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let loads = float_from_usize(self.loads.len());
        vec![Line {
            rule: "(k − 1) × (b + w) + b".into(),
            with: vec![
                given("k", "loads", loads, ""),
                given("b", "baking", self.oven.bake.minutes(), "min"),
                given("w", "between loads", self.oven.between.minutes(), "min"),
            ],
            gives: given("T", "until all is baked", self.all_out.minutes(), "min"),
            source: "by definition".into(),
        }]
    }
}
