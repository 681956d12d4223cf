//! What deviating masses at the bench do to the dough, and what makes up for them.

use super::day_results::DayResults;
use super::input::DayInput;
use super::weighed_formula::as_weighed;
use crate::engine::formula::{Figure, Figures, Form, Formula, LineAt};
use crate::engine::heat::dough_temperature;
use crate::engine::ingredients::Role;
use crate::engine::plan::{StepAt, StepKind, weighed_at};
use crate::engine::quantity::{Mass, Share, TemperatureChange};
use crate::results::heat::mixer_load;
use crate::sheet::day::{Bench, Weighing};

/// What the masses that were really weighed do to the dough.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct WeighingEffect {
    /// The lines of which another mass was weighed.
    pub differences: Vec<WeighingDifference>,
    /// True water on the flour: as asked, and as weighed.
    pub true_water: Option<(Share, Share)>,
    /// How much warmer the dough comes off the mixer.
    pub warming: Option<TemperatureChange>,
    /// What can be added to make up for it.
    pub additions: Vec<Addition>,
}

/// A change of the dough temperature below this is not reported, K.
const NOTICEABLE: f64 = 0.1;

impl WeighingEffect {
    /// The change of the dough temperature; `None` where it is too small to report.
    ///
    /// ```
    /// use softcrumb::results::day::WeighingEffect;
    ///
    /// assert_eq!(WeighingEffect::default().noticeable_warming(), None);
    /// ```
    #[must_use]
    pub fn noticeable_warming(&self) -> Option<TemperatureChange> {
        self.warming.filter(|by| by.kelvin().abs() >= NOTICEABLE)
    }
}

/// A line of which another mass was weighed than was asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeighingDifference {
    /// Which line.
    pub at: LineAt,
    /// The mass asked for.
    pub target: Mass,
    /// The mass weighed.
    pub actual: Mass,
}

/// Something to add, and the mass the line then has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Addition {
    /// To which line.
    pub at: LineAt,
    /// How much.
    pub more: Mass,
    /// The mass of the line afterwards.
    pub then: Mass,
    /// Whether that is the mass asked for.
    pub as_asked: bool,
}

/// What the masses weighed in the bake under way do; nothing without a bake or a batch.
#[must_use]
pub fn weighing_effect(input: &DayInput) -> WeighingEffect {
    let (Some(bench), Some(rounded)) = (input.bench, input.rounded) else {
        return WeighingEffect::default();
    };
    let formula = &rounded.formula;
    let actual = as_weighed(formula, bench);
    // The steam that a paste loses is missing from both.
    let water = |formula| {
        let figures = Figures::of(formula, Form::AsMade);
        figures.share(Figure::TrueWater).ok()
    };
    WeighingEffect {
        differences: differences(formula, bench).collect(),
        true_water: water(formula).zip(water(&actual)),
        warming: warming(input, formula, &actual),
        additions: additions(formula, bench),
    }
}

fn differences(formula: &Formula, bench: &Bench) -> impl Iterator<Item = WeighingDifference> {
    let weighed = bench.weighed.iter();
    weighed.filter_map(|Weighing { at, mass }| {
        let (actual, target) = ((*mass)?, formula.line(*at)?.mass);
        (actual != target).then_some(WeighingDifference {
            at: *at,
            target,
            actual,
        })
    })
}

/// How much warmer the dough of the masses weighed comes off the mixer.
fn warming(input: &DayInput, asked: &Formula, actual: &Formula) -> Option<TemperatureChange> {
    let temperature = |formula: &Formula| {
        let load = mixer_load(formula, &input.taught_kitchen(), &input.sheet.heat).ok()?;
        Some(dough_temperature(&load.dough).ok()?.temperature)
    };
    Some(temperature(actual)? - temperature(asked)?)
}

/// Less flour than this is not added, g.
const NEGLIGIBLE: f64 = 0.5;

/// What can be added: the rest of every line that fell short; where none did and there is too much
/// water, flour.
#[must_use]
pub fn additions(formula: &Formula, bench: &Bench) -> Vec<Addition> {
    let short = differences(formula, bench).filter(|line| line.actual < line.target);
    let found: Vec<Addition> = short
        .map(|line| Addition {
            at: line.at,
            more: line.target.less(line.actual),
            then: line.target,
            as_asked: true,
        })
        .collect();
    if found.is_empty() {
        return more_flour(formula, bench).into_iter().collect();
    }
    found
}

/// The flour that brings true water on flour back to what was asked: `water / ratio − flour`.
fn more_flour(formula: &Formula, bench: &Bench) -> Option<Addition> {
    let actual = as_weighed(formula, bench);
    let (asked, got) = (
        Figures::of(formula, Form::AsMade),
        Figures::of(&actual, Form::AsMade),
    );
    let ratio = asked.share(Figure::TrueWater).ok()?.fraction();
    let flour = got.mass(Figure::TrueWater).grams() / ratio;
    let more = Mass::from_grams(flour - got.mass(Figure::Flour).grams()).ok()?;
    let over = differences(formula, bench).find(|line| line.actual > line.target)?;
    let at = flour_near(formula, over.at)?;
    let there = bench.weighing(at).and_then(|weighing| weighing.mass);
    let there = there.or_else(|| formula.line(at).map(|line| line.mass))?;
    (more.grams() >= NEGLIGIBLE).then(|| Addition {
        at,
        more,
        then: [there, more].into_iter().sum(),
        as_asked: false,
    })
}

/// The first flour of the same part, else the first of all.
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

/// What can be added at a step to make up for what was weighed: the rest of a line of this step, and
/// flour while the dough is being mixed.
#[must_use]
pub fn step_additions(input: &DayInput, results: &DayResults, step: StepAt) -> Vec<Addition> {
    let (Some(bench), Some(rounded)) = (input.bench, input.rounded) else {
        return Vec::new();
    };
    let here = weighed_at(step, &results.plan, &input.sheet.formula);
    let mixes = matches!(step.work, StepKind::Mix | StepKind::ButterIn);
    let all = additions(&rounded.formula, bench).into_iter();
    all.filter(|more| here.contains(&more.at) || (mixes && !more.as_asked))
        .collect()
}
