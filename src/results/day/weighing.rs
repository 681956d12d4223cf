//! Weighed again: what makes up for a weight that missed.

use super::observed::as_weighed;
use crate::engine::formula::{Figure, Figures, Form, Formula, LineAt};
use crate::engine::heat::dough_temperature;
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, TemperatureChange};
use crate::results::heat::mixer_load;
use crate::sheet::day::Bench;
use crate::sheet::{HeatSettings, Kitchen};

/// Something to be added, and what the line then comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AddMore {
    /// To which line.
    pub at: LineAt,
    /// How much.
    pub more: Mass,
    /// What has gone in of it then.
    pub then: Mass,
    /// Whether that is what was asked for.
    pub as_asked: bool,
}

/// What is smaller than this is not weighed again, g.
const NOTHING: f64 = 0.5;

/// What can be added to make up for weights that missed: the rest of what fell short; flour, where
/// too much water went in otherwise.
#[must_use]
pub fn add_more(formula: &Formula, bench: &Bench) -> Vec<AddMore> {
    let mut found = Vec::new();
    for weighing in &bench.weighed {
        let asked = formula.line(weighing.at).map(|line| line.mass);
        if let Some((asked, got)) = asked.zip(weighing.mass)
            && got < asked
        {
            found.push(AddMore {
                at: weighing.at,
                more: asked.less(got),
                then: asked,
                as_asked: true,
            });
        }
    }
    if found.is_empty() {
        found.extend(more_flour(formula, bench));
    }
    found
}

/// Flour that brings the true water back to what was asked, where there is too much of it.
fn more_flour(formula: &Formula, bench: &Bench) -> Option<AddMore> {
    let made = as_weighed(formula, bench);
    // Steam that a paste loses is missing from both.
    let (asked, got) = (
        Figures::of(formula, Form::AsMade),
        Figures::of(&made, Form::AsMade),
    );
    let ratio = asked.share(Figure::TrueWater).ok()?.fraction();
    let flour = got.mass(Figure::TrueWater).grams() / ratio;
    let more = Mass::from_grams(flour - got.mass(Figure::Flour).grams()).ok()?;
    let over = bench.weighed.iter().find(|weighing| {
        let asked = formula.line(weighing.at).map(|line| line.mass);
        asked
            .zip(weighing.mass)
            .is_some_and(|(asked, got)| got > asked)
    })?;
    let at = flour_near(formula, over.at)?;
    let there = bench.weighing(at).and_then(|weighing| weighing.mass);
    let there = there.or_else(|| formula.line(at).map(|line| line.mass))?;
    (more.grams() >= NOTHING).then(|| AddMore {
        at,
        more,
        then: [there, more].into_iter().sum(),
        as_asked: false,
    })
}

/// The first flour of the same part, else of any.
fn flour_near(formula: &Formula, near: LineAt) -> Option<LineAt> {
    let parts = formula.parts.iter().enumerate();
    let mut flours = parts.flat_map(|(part, own)| {
        let lines = own.lines.iter().enumerate();
        let flours = lines.filter(|(_, line)| line.food.role() == Role::Flour);
        flours.map(move |(line, _)| LineAt { part, line })
    });
    let first = flours.next()?;
    let same = std::iter::once(first)
        .chain(flours)
        .find(|at| at.part == near.part);
    Some(same.unwrap_or(first))
}

/// How much warmer the dough comes off the mixer for what really went in.
#[must_use]
pub fn warmed_by_weights(
    formula: &Formula,
    bench: &Bench,
    kitchen: &Kitchen,
    heat: &HeatSettings,
) -> Option<TemperatureChange> {
    let comes_off = |formula: &Formula| {
        let bowl = mixer_load(formula, kitchen, heat).ok()?;
        Some(dough_temperature(&bowl.dough).ok()?.temperature)
    };
    Some(comes_off(&as_weighed(formula, bench))? - comes_off(formula)?)
}
