//! The working of the range of the time the bread is ready.

use super::ready_range::{ReadyItem, ReadyPath, ReadyRange};
use crate::engine::working::{WorkingLine, given};

/// Where sums in quadrature are from.
const QUADRATURE: &str = "what is off for reasons of its own adds in quadrature: JCGM 100:2008, \
                          Guide to the Expression of Uncertainty in Measurement, 5.1.2; spreads: \
                          common practice";

impl ReadyRange {
    /// Returns the working of both ends in minutes, first of what is later, then of what is sooner.
    /// `called` names a step.
    #[must_use]
    pub fn working(&self, called: impl Fn(&ReadyItem) -> String) -> Vec<WorkingLine> {
        let mut lines = self.later.working("later at the latest", &called);
        lines.extend(self.sooner.working("sooner at the soonest", &called));
        lines
    }
}

impl ReadyPath {
    /// One line for each run of sums in quadrature, and one for each wait between them.
    fn working(
        &self,
        of: &'static str,
        called: &impl Fn(&ReadyItem) -> String,
    ) -> Vec<WorkingLine> {
        let (mut lines, mut line) = (Vec::new(), Quadrature::default());
        for item in &self.items {
            match item {
                ReadyItem::Step { by, .. } | ReadyItem::Dough { by, .. } => {
                    line.add(called(item), by.minutes());
                }
                ReadyItem::Wait { by, .. } => {
                    let before = line.close(of, &mut lines);
                    let left = (before - by.minutes()).max(0.0);
                    lines.push(WorkingLine {
                        rule: "v − w".into(),
                        with: vec![
                            given("v", "until then", before, "min"),
                            given("w", called(item), by.minutes(), "min"),
                        ],
                        result: given("t", of, left, "min"),
                        source: "by definition".into(),
                    });
                    line.add("until then".to_owned(), left);
                }
            }
        }
        line.close(of, &mut lines);
        lines
    }
}

/// Terms of a sum in quadrature.
#[derive(Default)]
struct Quadrature {
    terms: Vec<(String, f64)>,
}

impl Quadrature {
    fn add(&mut self, of: String, minutes: f64) {
        self.terms.push((of, minutes));
    }

    /// Writes its line, where it has terms, and gives what it comes to.
    fn close(&mut self, of: &'static str, lines: &mut Vec<WorkingLine>) -> f64 {
        let terms = std::mem::take(&mut self.terms);
        let sum = terms.iter().fold(0.0, |sum, (_, by)| libm::hypot(sum, *by));
        if !terms.is_empty() {
            let letters = (1..=terms.len()).map(|number| format!("s{number}"));
            let squares = letters.clone().map(|letter| format!("{letter}^2"));
            let squares: Vec<String> = squares.collect();
            let with = letters.zip(terms);
            lines.push(WorkingLine {
                rule: format!("sqrt({})", squares.join(" + ")).into(),
                with: with
                    .map(|(letter, (of, by))| given(letter, of, by, "min"))
                    .collect(),
                result: given("t", of, sum, "min"),
                source: QUADRATURE.into(),
            });
        }
        sum
    }
}
