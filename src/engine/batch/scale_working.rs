//! The working of a scaled batch.

use super::scale::Scaled;
use super::target::BatchTarget;
use super::yields::FactorBasis;
use crate::engine::formula::{Formula, LineAt};
use crate::engine::quantity::Mass;
use crate::engine::working::{Given, WorkingLine, given};

const MASS_KEPT: &str = "mass kept (by definition)";

impl Scaled {
    /// The steps that lead to the factor, the dough and the pieces.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = Vec::new();
        match self.basis {
            FactorBasis::Dough => {
                lines.extend(self.asked());
                lines.push(self.mixed_from_needed());
                lines.push(self.factor_from_mixed());
            }
            FactorBasis::Asked => lines.extend([self.mixed_from_factor(), self.needed_line()]),
            FactorBasis::Flour(flour) => {
                lines.extend(self.factor_from_flour(flour));
                lines.extend([self.mixed_from_factor(), self.needed_line()]);
            }
            FactorBasis::Ingredient { in_dough, outside } => {
                lines.extend(self.factor_from_ingredient(in_dough, outside));
                lines.extend([self.mixed_from_factor(), self.needed_line()]);
            }
        }
        lines.extend([self.each_line(), self.beside_line(), self.baked_line()]);
        lines.push(self.baked_each_line());
        lines
    }

    /// The step that leads to the exact mass of a line; `original` is the formula that was scaled.
    #[must_use]
    pub fn line_working(&self, original: &Formula, at: LineAt) -> Option<WorkingLine> {
        let in_dough = original.parts.get(at.part)?.kind.in_dough();
        let factor = if in_dough { self.factor } else { self.beside };
        Some(WorkingLine {
            rule: "m × f".into(),
            with: vec![
                grams("m", "in the formula", original.line(at)?.mass),
                given("f", "factor", factor.number(), ""),
            ],
            result: grams("M", "to weigh, exact", self.line(at)?),
            source: "by definition".into(),
        })
    }

    /// The dough asked for, where it is asked for in pieces.
    fn asked(&self) -> Option<WorkingLine> {
        let (count, each) = match self.wanted {
            BatchTarget::Pieces { count, each } => (f64::from(count.get()), each),
            BatchTarget::Class {
                students,
                loaves,
                loaf,
            } => (f64::from(students.get()) * f64::from(loaves.get()), loaf),
            BatchTarget::Times(_)
            | BatchTarget::Dough(_)
            | BatchTarget::FlourOnHand(_)
            | BatchTarget::OnHand { .. } => return None,
        };
        Some(WorkingLine {
            rule: "n × e".into(),
            with: vec![given("n", "pieces", count, ""), grams("e", "each", each)],
            result: grams("N", "dough in pieces", self.needed),
            source: "by definition".into(),
        })
    }

    fn mixed_from_needed(&self) -> WorkingLine {
        let mut with = vec![grams("N", "dough in pieces", self.needed)];
        with.extend(self.losses_given());
        WorkingLine {
            rule: "(N + R) / (1 − r − d)".into(),
            with,
            result: grams("M", "dough mixed", self.mixed),
            source: MASS_KEPT.into(),
        }
    }

    fn factor_from_mixed(&self) -> WorkingLine {
        WorkingLine {
            rule: "M / (D − S)".into(),
            with: vec![
                grams("M", "dough mixed", self.mixed),
                grams("D", "the formula's dough", self.formula_dough),
                grams("S", "the formula's steam", self.formula_steam),
            ],
            result: self.factor_given(),
            source: "by definition".into(),
        }
    }

    fn factor_from_flour(&self, flour: Mass) -> Option<WorkingLine> {
        let BatchTarget::FlourOnHand(there) = self.wanted else {
            return None;
        };
        Some(WorkingLine {
            rule: "H / F".into(),
            with: vec![
                grams("H", "flour on hand", there),
                grams("F", "the formula's flour", flour),
            ],
            result: self.factor_given(),
            source: "by definition".into(),
        })
    }

    fn factor_from_ingredient(&self, in_dough: Mass, outside: Mass) -> Option<WorkingLine> {
        let BatchTarget::OnHand { mass, .. } = self.wanted else {
            return None;
        };
        let mut with = vec![
            grams("H", "on hand", mass),
            grams("A", "in the formula's dough", in_dough),
        ];
        let rule = if outside > Mass::ZERO {
            with.push(grams("B", "beside the formula's dough", outside));
            with.push(self.topping_given());
            with.push(grams("D", "the formula's dough", self.formula_dough));
            with.push(grams("S", "the formula's steam", self.formula_steam));
            with.extend(self.losses_given());
            "(H + B / (1 − t) × R / (D − S)) / (A + B / (1 − t) × (1 − r − d))"
        } else {
            "H / A"
        };
        Some(WorkingLine {
            rule: rule.into(),
            with,
            result: self.factor_given(),
            source: MASS_KEPT.into(),
        })
    }

    fn mixed_from_factor(&self) -> WorkingLine {
        WorkingLine {
            rule: "f × (D − S)".into(),
            with: vec![
                self.factor_given(),
                grams("D", "the formula's dough", self.formula_dough),
                grams("S", "the formula's steam", self.formula_steam),
            ],
            result: grams("M", "dough mixed", self.mixed),
            source: "by definition".into(),
        }
    }

    fn needed_line(&self) -> WorkingLine {
        let mut with = vec![grams("M", "dough mixed", self.mixed)];
        with.extend(self.losses_given());
        WorkingLine {
            rule: "M × (1 − r − d) − R".into(),
            with,
            result: grams("N", "dough in pieces", self.needed),
            source: MASS_KEPT.into(),
        }
    }

    fn each_line(&self) -> WorkingLine {
        WorkingLine {
            rule: "N / n".into(),
            with: vec![
                grams("N", "dough in pieces", self.needed),
                self.count_given(),
            ],
            result: grams("e", "each", self.pieces.each),
            source: "by definition".into(),
        }
    }

    fn beside_line(&self) -> WorkingLine {
        WorkingLine {
            rule: "N / (D − S) / (1 − t)".into(),
            with: vec![
                grams("N", "dough in pieces", self.needed),
                grams("D", "the formula's dough", self.formula_dough),
                grams("S", "the formula's steam", self.formula_steam),
                self.topping_given(),
            ],
            result: given("g", "times filling and topping", self.beside.number(), ""),
            source: MASS_KEPT.into(),
        }
    }

    fn baked_line(&self) -> WorkingLine {
        WorkingLine {
            rule: "N × (1 − b) + C".into(),
            with: vec![
                grams("N", "dough in pieces", self.needed),
                given("b", "lost in the oven", self.losses.bake.fraction(), ""),
                grams("C", "filling in the pieces", self.filling),
            ],
            result: grams("B", "baked", self.baked),
            source: "water lost in baking only (by definition)".into(),
        }
    }

    fn baked_each_line(&self) -> WorkingLine {
        WorkingLine {
            rule: "B / n".into(),
            with: vec![grams("B", "baked", self.baked), self.count_given()],
            result: grams("b", "one piece baked", self.baked_each),
            source: "by definition".into(),
        }
    }

    fn losses_given(&self) -> [Given; 3] {
        [
            grams("R", "left in bowls", self.losses.residue),
            given(
                "r",
                "left in bowls, share",
                self.losses.residue_share.fraction(),
                "",
            ),
            given("d", "lost at dividing", self.losses.dividing.fraction(), ""),
        ]
    }

    fn topping_given(&self) -> Given {
        given(
            "t",
            "stays in bag and bowl",
            self.losses.topping.fraction(),
            "",
        )
    }

    fn factor_given(&self) -> Given {
        given("f", "factor", self.factor.number(), "")
    }

    fn count_given(&self) -> Given {
        given("n", "pieces", f64::from(self.pieces.count.get()), "")
    }
}

fn grams(letter: &'static str, of: &'static str, mass: Mass) -> Given {
    given(letter, of, mass.grams(), "g")
}
