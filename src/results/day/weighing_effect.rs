//! What deviating masses at the bench do to the dough, and what makes up for them.

use super::day_results::DayResults;
use super::input::DayInput;
use super::weighed_formula::{as_weighed, asked, settled};
use super::which_rise::WhichRise;
use crate::engine::formula::{Figure, Figures, Form, Formula, LineAt};
use crate::engine::heat::dough_temperature;
use crate::engine::ingredients::Role;
use crate::engine::plan::{StepAt, StepKind, weighed_at};
use crate::engine::quantity::{Mass, Minutes, Share, TemperatureChange};
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
    /// The rises that other yeast makes longer or shorter: how long they were to take, and take.
    pub rises: Vec<(WhichRise, [Minutes; 2])>,
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
    /// Whether it belongs to another part than those of the step it is told at.
    pub elsewhere: bool,
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
    let (formula, bench) = (&asked(rounded), &settled(rounded, bench));
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
        rises: Vec::new(),
    }
}

/// What the masses weighed do, as far as something can still be done about it at a step: those of
/// its own lines, and of all while the dough is being mixed; nothing where there are none.
#[must_use]
pub fn step_weighing_effect(
    input: &DayInput,
    results: &DayResults,
    step: StepAt,
) -> WeighingEffect {
    let here = weighed_at(step, &results.plan, &input.sheet.formula);
    let mut effect = weighing_effect(input);
    effect.differences.retain_mut(|line| {
        line.elsewhere = !here.iter().any(|at| at.part == line.at.part);
        mixes(step) || here.contains(&line.at)
    });
    if effect.differences.is_empty() {
        return WeighingEffect::default();
    }
    let formula = &input.sheet.formula;
    let yeast = |line: &WeighingDifference| {
        let line = formula.line(line.at);
        line.is_some_and(|line| line.food.role() == Role::Yeast)
    };
    if effect.differences.iter().any(yeast) {
        effect.rises = changed_rises(input, results);
    }
    effect
}

/// Flour goes into a dough that is being mixed.
const fn mixes(step: StepAt) -> bool {
    matches!(step.work, StepKind::Mix | StepKind::ButterIn)
}

/// A rise that takes another time by less is not told, min.
const SAME_RISE: f64 = 5.0;

/// The rises that take another time than with the masses asked for.
fn changed_rises(input: &DayInput, results: &DayResults) -> Vec<(WhichRise, [Minutes; 2])> {
    let mut bench = input.bench.cloned();
    if let Some(bench) = &mut bench {
        bench.weighed.clear();
    }
    let as_asked = DayInput {
        bench: bench.as_ref(),
        ..*input
    };
    let asked = as_asked.run_known(&results.run.coolings);
    let both = [WhichRise::Bulk, WhichRise::Proof].into_iter();
    let changed = both.filter_map(|which| {
        let was = asked.rises.of(which).ok()?.due;
        let now = results.run.rises.of(which).ok()?.due;
        let apart = (now.minutes() - was.minutes()).abs();
        (apart >= SAME_RISE).then_some((which, [was, now]))
    });
    changed.collect()
}

fn differences(formula: &Formula, bench: &Bench) -> impl Iterator<Item = WeighingDifference> {
    let weighed = bench.weighed.iter();
    weighed.filter_map(|Weighing { at, mass }| {
        let (actual, target) = ((*mass)?, formula.line(*at)?.mass);
        (actual != target).then_some(WeighingDifference {
            at: *at,
            target,
            actual,
            elsewhere: false,
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
    let all = additions(&asked(rounded), &settled(rounded, bench)).into_iter();
    all.filter(|more| here.contains(&more.at) || (mixes(step) && !more.as_asked))
        .collect()
}
