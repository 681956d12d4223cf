//! The working of rounded weights and weighing aids.

use super::divide::Divided;
use super::round::{Rounded, RoundedLine};
use super::weighing_aid::{PocketScale, YeastSolution};
use crate::engine::formula::LineAt;
use crate::engine::quantity::{Division, Mass, MassChange, Share};
use crate::engine::working::{Given, WorkingLine, given};

const BY_DEFINITION: &str = "by definition";
const PRACTICE: &str = "common practice";

impl RoundedLine {
    /// The steps that lead to the weight, its error and the size of that error.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = vec![
            divisions(self.division, self.weighed, "to weigh"),
            error(self.weighed, self.exact, self.error),
        ];
        lines.extend(error_share(self.error, self.exact, self.error_share));
        lines
    }
}

impl PocketScale {
    /// The step that leads to the weight on the pocket scale.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![divisions(self.division, self.weighed, "to weigh")]
    }
}

impl Rounded {
    /// The steps that lead to a line's weight, error and percentages; none for a line that does not exist.
    #[must_use]
    pub fn line_working(&self, at: LineAt) -> Vec<WorkingLine> {
        let Some(line) = self.line(at) else {
            return Vec::new();
        };
        let mut lines = line.working();
        lines.extend(percentage(
            line.exact,
            self.flour_exact,
            line.percent_exact,
            "percentage, exact",
        ));
        lines.extend(percentage(
            line.weighed,
            self.flour_weighed,
            line.percent_weighed,
            "percentage, as weighed",
        ));
        lines
    }

    /// The steps that lead to the true water, exact and as weighed, and to the change of the dough.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let sides = [
            (self.water_exact, self.flour_exact, self.true_water_exact),
            (
                self.water_weighed,
                self.flour_weighed,
                self.true_water_weighed,
            ),
        ];
        let names = ["true hydration, exact", "true hydration, as weighed"];
        let mut lines: Vec<WorkingLine> = sides
            .into_iter()
            .zip(names)
            .filter_map(|((water, flour, share), name)| {
                Some(WorkingLine {
                    rule: "100 × W / F".into(),
                    with: vec![grams("W", "water", water), grams("F", "flour", flour)],
                    result: given("p", name, share?.percent(), "%"),
                    source: BY_DEFINITION.into(),
                })
            })
            .collect();
        lines.push(WorkingLine {
            rule: "a − b".into(),
            with: vec![
                grams("a", "dough as weighed", self.dough_weighed),
                grams("b", "dough, exact", self.dough_exact),
            ],
            result: change(
                "c",
                "change of the dough",
                self.dough_weighed - self.dough_exact,
            ),
            source: BY_DEFINITION.into(),
        });
        lines
    }
}

impl YeastSolution {
    /// The steps that lead to the amounts of the solution.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = vec![
            WorkingLine {
                rule: "21 × y".into(),
                with: vec![grams("y", "yeast wanted", self.wanted)],
                result: grams("s", "solution, exact", self.solution_exact),
                source: PRACTICE.into(),
            },
            divisions(self.division, self.solution, "solution to weigh"),
            self.component("s / 21", "yeast in it", self.yeast),
            self.component("20 × s / 21", "water in it", self.water),
            WorkingLine {
                rule: "W − w".into(),
                with: vec![
                    grams("W", "plain water of the part", self.part_water),
                    grams("w", "water in the solution", self.water),
                ],
                result: grams("L", "water left, exact", self.water_left_exact),
                source: BY_DEFINITION.into(),
            },
            divisions(self.water_division, self.water_left, "water left to weigh"),
            error(self.yeast, self.wanted, self.error),
        ];
        lines.extend(error_share(self.error, self.wanted, self.error_share));
        lines.extend(self.within());
        lines
    }

    /// The step that leads to the most by which the yeast can be off.
    fn within(&self) -> Option<WorkingLine> {
        Some(WorkingLine {
            rule: "p + 50 × d / y + 50 × d / s".into(),
            with: vec![
                given("p", "error", self.error_share?.percent(), "%"),
                given("d", "division of the scale", self.division.grams(), "g"),
                grams("y", "yeast stirred in", self.stir_in_yeast),
                grams("s", "solution to weigh", self.solution),
            ],
            result: given("q", "yeast is off by at most", self.within?.percent(), "%"),
            source: "half a division either way (by definition)".into(),
        })
    }

    fn component(&self, rule: &'static str, of: &'static str, mass: Mass) -> WorkingLine {
        WorkingLine {
            rule: rule.into(),
            with: vec![grams("s", "solution to weigh", self.solution)],
            result: grams("m", of, mass),
            source: PRACTICE.into(),
        }
    }
}

impl Divided {
    /// The steps that add the pieces up to the dough.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let sum = self.division.times(self.divisions);
        vec![
            WorkingLine {
                rule: "k × a + j × b".into(),
                with: vec![
                    given("k", "heavier pieces", f64::from(self.heavier.count), ""),
                    grams("a", "each", self.heavier.each),
                    given("j", "lighter pieces", f64::from(self.lighter.count), ""),
                    grams("b", "each", self.lighter.each),
                ],
                result: grams("T", "in pieces", sum),
                source: BY_DEFINITION.into(),
            },
            WorkingLine {
                rule: "D − T".into(),
                with: vec![
                    grams("D", "dough", self.dough),
                    grams("T", "in pieces", sum),
                ],
                result: change("x", "below one division", self.below_division),
                source: BY_DEFINITION.into(),
            },
        ]
    }
}

fn percentage(
    mass: Mass,
    flour: Mass,
    share: Option<Share>,
    of: &'static str,
) -> Option<WorkingLine> {
    Some(WorkingLine {
        rule: "100 × m / F".into(),
        with: vec![grams("m", "ingredient", mass), grams("F", "flour", flour)],
        result: given("p", of, share?.percent(), "%"),
        source: BY_DEFINITION.into(),
    })
}

/// So many divisions of the scale.
fn divisions(division: Division, weighed: Mass, of: &'static str) -> WorkingLine {
    let count = f64::from(division.whole_in(weighed));
    WorkingLine {
        rule: "k × d".into(),
        with: vec![
            given("k", "nearest whole number of divisions", count, ""),
            given("d", "division of the scale", division.grams(), "g"),
        ],
        result: grams("w", of, weighed),
        source: "rounding to the nearest (by definition)".into(),
    }
}

fn error(weighed: Mass, exact: Mass, error: MassChange) -> WorkingLine {
    WorkingLine {
        rule: "w − m".into(),
        with: vec![grams("w", "weighed", weighed), grams("m", "exact", exact)],
        result: change("e", "error", error),
        source: BY_DEFINITION.into(),
    }
}

fn error_share(error: MassChange, exact: Mass, share: Option<Share>) -> Option<WorkingLine> {
    Some(WorkingLine {
        rule: "100 × max(e, −e) / m".into(),
        with: vec![change("e", "error", error), grams("m", "exact", exact)],
        result: given("p", "error", share?.percent(), "%"),
        source: BY_DEFINITION.into(),
    })
}

fn grams(letter: &'static str, of: &'static str, mass: Mass) -> Given {
    given(letter, of, mass.grams(), "g")
}

fn change(letter: &'static str, of: &'static str, change: MassChange) -> Given {
    given(letter, of, change.grams(), "g")
}
