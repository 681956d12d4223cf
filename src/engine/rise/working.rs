//! The working of a rise: speeds at the two temperatures, then the time.

use super::cardinal::Cardinal;
use super::risen::Risen;
use super::yeast_activity::{HALF_SPEED, YeastActivity};
use crate::engine::quantity::{Factor, Temperature};
use crate::engine::working::{WorkingLine, given};

const ROSSO: &str = "Rosso, Lobry and Flandrois 1993, J. Theor. Biol. 162:447-463; ends from \
                     Salvadó et al. 2011, Appl. Environ. Microbiol. 77:2292-2302";

impl Cardinal {
    /// How the speed at a temperature between the two ends comes about; nothing outside them.
    #[must_use]
    pub fn working(self, at: Temperature) -> Vec<WorkingLine> {
        if at <= self.least() || at >= self.most() {
            return Vec::new();
        }
        vec![WorkingLine {
            rule:
                "(T − X) × (T − N)^2 / ((O − N) × ((O − N) × (T − O) − (O − X) × (O + N − 2 × T)))"
                    .into(),
            with: vec![
                given("T", "dough", at.celsius(), "°C"),
                given("N", "least", self.least().celsius(), "°C"),
                given("O", "best", self.best().celsius(), "°C"),
                given("X", "most", self.most().celsius(), "°C"),
            ],
            result: given("g", "speed", self.fraction(at), ""),
            source: ROSSO.into(),
        }]
    }
}

impl Risen {
    /// How the time came about: the speed of the known rise, then its time scaled.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let anchor = self.asked.anchor;
        let mut lines = self.asked.cardinal.working(anchor.at);
        lines.push(WorkingLine {
            rule: "A × g / (m × v)".into(),
            with: vec![
                given("A", "known rise", anchor.time.minutes(), "min"),
                given("g", "speed then", self.anchor_rate.fraction(), ""),
                given("m", "mean speed now", self.mean_rate.fraction(), ""),
                given("v", "vigour now", self.asked.yeast_activity.number(), ""),
            ],
            result: given("t", "dough is up", self.due.minutes(), "min"),
            source: "speed summed along the dough's temperature".into(),
        });
        lines
    }
}

impl YeastActivity {
    /// How many times as fast as `other`, and how that comes about.
    #[must_use]
    pub fn working(&self, other: &Self, result: Factor) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "Y / (1 + Y / h) × s × n / (Z / (1 + Z / h) × u × k)".into(),
            with: vec![
                given("Y", "yeast now, as fresh", self.yeast.percent(), "%"),
                given("s", "sugar leaves", self.sugar_leaves.fraction(), ""),
                given("n", "salt leaves", self.salt_leaves.fraction(), ""),
                given("Z", "yeast then", other.yeast.percent(), "%"),
                given("u", "sugar left", other.sugar_leaves.fraction(), ""),
                given("k", "salt left", other.salt_leaves.fraction(), ""),
                given("h", "yeast of which a gram works half as fast", HALF_SPEED, "%"),
            ],
            result: given("v", "vigour", result.number(), ""),
            source: "much yeast brings less than its share, by a table of gas from plain doughs; sugar from 5 % on after Marek and Bushuk 1967, Cereal \
                     Chem. 44:300-307; the rest common practice"
                .into(),
        }]
    }
}
