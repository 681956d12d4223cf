//! The formula with the masses that were really weighed at the bench.

use crate::engine::batch::{Rounded, RoundedLine, ScaleReading};
use crate::engine::formula::Formula;
use crate::engine::quantity::{Division, Mass};
use crate::sheet::day::Bench;

/// Returns the formula with the masses in g that were weighed at the bench, where they were noted.
#[must_use]
pub fn as_weighed(formula: &Formula, bench: &Bench) -> Formula {
    let mut formula = formula.clone();
    for weighing in &bench.weighed {
        if let Some(line) = formula.line_mut(weighing.at) {
            line.poured = weighing.mass;
        }
    }
    formula
}

/// The formula with every line as exact as it is asked for: what was not typed counts as that.
pub(super) fn exact(rounded: &Rounded) -> Formula {
    with_masses(rounded, |line| line.exact)
}

/// The formula as it is to be weighed: as the scales show it, and exact where a scale shows nothing.
pub(super) fn asked(rounded: &Rounded) -> Formula {
    with_masses(rounded, |line| match line.reading {
        ScaleReading::AsWeighed => line.weighed,
        ScaleReading::BelowScale => line.exact,
    })
}

fn with_masses(rounded: &Rounded, mass: impl Fn(&RoundedLine) -> Mass) -> Formula {
    let mut formula = rounded.formula.clone();
    for of in &rounded.lines {
        if let Some(line) = formula.line_mut(of.at) {
            line.mass = mass(of);
        }
    }
    formula
}

/// The bench with every mass that is as asked noted as just that.
pub(super) fn settled(rounded: &Rounded, bench: &Bench) -> Bench {
    let mut bench = bench.clone();
    for weighing in &mut bench.weighed {
        let line = rounded.line(weighing.at);
        weighing.mass = weighing
            .mass
            .filter(|mass| !line.is_some_and(|line| is_as_asked(line, *mass)));
    }
    bench
}

/// Whether a mass is what a line asks for: within half a division of what the scale shows, or of
/// the exact mass on the pocket scale that the page advises.
fn is_as_asked(line: &RoundedLine, mass: Mass) -> bool {
    let near =
        |asked: Mass, division: Division| (mass - asked).size().grams() <= division.grams() / 2.0;
    let aid = line.aids.and_then(|aids| aids.pocket_scale);
    let on_aid = aid.is_some_and(|aid| near(line.exact, aid.division));
    match line.reading {
        ScaleReading::AsWeighed => {
            // Where half a division is much of the line, only what the scale shows is as asked.
            on_aid || mass == line.weighed || (aid.is_none() && near(line.weighed, line.division))
        }
        ScaleReading::BelowScale => on_aid || mass == line.exact,
    }
}
