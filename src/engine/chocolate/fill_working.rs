//! How a filling came about, line by line.

use super::fill::{Fill, FillAsked};
use crate::engine::quantity::Mass;
use crate::engine::working::{Given, Line, given};

const MASS_KEPT: &str = "mass kept (by definition)";

impl Fill {
    /// How the filling of a piece, its share of the dough and the amount to make came about.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let each = grams("e", "in each piece", self.each);
        let mut lines = Vec::new();
        if let FillAsked::Total(made) = self.asked {
            lines.push(Line {
                rule: "T × (1 − s) / n".into(),
                with: vec![grams("T", "made in all", made), self.stays(), self.count()],
                gives: each.clone(),
                source: MASS_KEPT.into(),
            });
        }
        lines.extend([
            Line {
                rule: "n × e".into(),
                with: vec![self.count(), each.clone()],
                gives: grams("P", "in all pieces", self.in_pieces),
                source: "by definition".into(),
            },
            Line {
                rule: "n × e / (1 − s)".into(),
                with: vec![self.count(), each.clone(), self.stays()],
                gives: grams("T", "to make", self.to_make),
                source: MASS_KEPT.into(),
            },
            Line {
                rule: "(n + 1) × e / (1 − s)".into(),
                with: vec![self.count(), each.clone(), self.stays()],
                gives: grams("U", "to make, with one spare", self.with_spare),
                source: "a spare piece: common practice".into(),
            },
            Line {
                rule: "100 × e / d".into(),
                with: vec![each, grams("d", "dough of a piece", self.dough_each)],
                gives: given("p", "filling on dough", self.of_dough.percent(), "%"),
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
