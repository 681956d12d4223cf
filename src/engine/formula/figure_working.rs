//! How a figure of the dough came about: which lines bring it, and its share of the flour.

use super::figure::Contribution;
use super::{Figure, Figures, Form, Formula, Percentage};
use crate::engine::ingredients::{Food, Source};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::{WorkingLine, given};

impl Figure {
    /// How the figure came about, as the formula is written: its weight line by line, and its
    /// baker's percentage where the dough has flour.
    #[must_use]
    pub fn working(self, formula: &Formula) -> Vec<WorkingLine> {
        let figures = Figures::of(formula, Form::AsWritten);
        let mass = figures.mass(self);
        let mut lines = vec![self.brought(formula, mass)];
        if self != Self::Flour
            && let Ok(percentage) = Percentage::of(mass, figures.mass(Self::Flour))
        {
            lines.extend(percentage.working());
        }
        lines
    }

    /// `m1 × b1 + m2 × b2 + …`, each line of the dough that brings any of it.
    fn brought(self, formula: &Formula, mass: Mass) -> WorkingLine {
        let mut rule = Vec::new();
        let mut with = Vec::new();
        for part in formula.dough_parts() {
            for line in &part.lines {
                let brings = self.in_gram(&Contribution::new(part.kind, line));
                if brings <= Share::NONE || line.mass <= Mass::ZERO {
                    continue;
                }
                let number = rule.len() + 1;
                let of = super::water::name(&line.food);
                with.push(given(format!("m{number}"), of, line.mass.grams(), "g"));
                if brings == Share::WHOLE {
                    rule.push(format!("m{number}"));
                } else {
                    rule.push(format!("m{number} × b{number}"));
                    let of = format!("of it in one gram ({})", read_in(&line.food));
                    with.push(given(format!("b{number}"), of, brings.fraction(), ""));
                }
            }
        }
        if rule.is_empty() {
            rule.push("0".to_owned());
        }
        WorkingLine {
            rule: rule.join(" + ").into(),
            with,
            result: given("X", "the figure by weight", mass.grams(), "g"),
            source: "composition of each ingredient".into(),
        }
    }
}

/// The table, and the number in it, that a composition was read in.
fn read_in(food: &Food) -> String {
    let source = match food {
        Food::Listed(listed) => listed.row().source,
        Food::Own(_) => Source::Label,
    };
    match source {
        Source::UsdaSr28(number) => format!("USDA SR28, {number:05}"),
        Source::Ciqual2020(number) => format!("Ciqual 2020, {number}"),
        Source::Label => "the packet’s label".to_owned(),
    }
}
