//! How a filling came about, line by line.

use super::fill::{Fill, FillAsked};
use crate::engine::quantity::Mass;
use crate::engine::working::{Given, WorkingLine, given};

const MASS_KEPT: &str = "mass kept (by definition)";

impl Fill {
    /// How the filling of a piece, its share of the dough and the amount to make came about.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let each = grams("e", "in each piece", self.each);
        let mut lines = Vec::new();
        if let FillAsked::Total(made) = self.asked {
            lines.push(WorkingLine {
                rule: "T × (1 − s) / n".into(),
                with: vec![grams("T", "made in all", made), self.stays(), self.count()],
                result: each.clone(),
                source: MASS_KEPT.into(),
            });
        }
        lines.extend([
            WorkingLine {
                rule: "n × e".into(),
                with: vec![self.count(), each.clone()],
                result: grams("P", "in all pieces", self.in_pieces),
                source: "by definition".into(),
            },
            WorkingLine {
                rule: "n × e / (1 − s)".into(),
                with: vec![self.count(), each.clone(), self.stays()],
                result: grams("T", "to make", self.to_make),
                source: MASS_KEPT.into(),
            },
            WorkingLine {
                rule: "(n + 1) × e / (1 − s)".into(),
                with: vec![self.count(), each.clone(), self.stays()],
                result: grams("U", "to make, with one spare", self.with_spare),
                source: "a spare piece: common practice".into(),
            },
            WorkingLine {
                rule: "100 × e / d".into(),
                with: vec![each, grams("d", "dough of a piece", self.dough_each)],
                result: given("p", "filling on dough", self.of_dough.percent(), "%"),
                source: "by definition".into(),
            },
        ]);
        lines
    }

    fn stays(&self) -> Given {
        given("s", "stays in bag and bowl", self.stays.fraction(), "")
    }

    fn count(&self) -> Given {
        given("n", "pieces", f64::from(self.pieces.get()), "")
    }
}

fn grams(letter: &'static str, of: &'static str, mass: Mass) -> Given {
    given(letter, of, mass.grams(), "g")
}
