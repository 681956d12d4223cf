//! One whole evaluation: every sum of the engine for one document.

use softcrumb::engine::batch::{BatchError, Divided, Scaled, divide};
use softcrumb::engine::chocolate::{ChocolateError, Fill, LiquidNeeded};
use softcrumb::engine::formula::{
    Compared, Form, Formula, FormulaError, PartKind, Reached, reach, set_part_share,
};
use softcrumb::engine::plan::PlanError;
use softcrumb::results;
use softcrumb::results::batch::{
    self, BatchResults,
    dividing::{self, DoughOnBench},
};
use softcrumb::results::chocolate::{SyrupResults, filling, syrup_at};
use softcrumb::results::day::DayResults;
use softcrumb::results::formula::FormulaResults;
use softcrumb::results::run::Run;

use crate::asked::Asked;
use crate::day::work_out;
use crate::heat::Heat;

/// Everything that follows from one document.
pub(crate) struct Evaluation {
    pub(crate) formula: FormulaResults,
    pub(crate) batch: BatchResults,
    pub(crate) divided: Option<Result<Divided, BatchError>>,
    pub(crate) fills: Vec<(usize, Result<Fill, ChocolateError>)>,
    pub(crate) syrups: Vec<(usize, Result<SyrupSums, ChocolateError>)>,
    pub(crate) compared: Option<Compared>,
    pub(crate) targets: Vec<Result<Reached, FormulaError>>,
    pub(crate) part_shares: Vec<Result<Formula, FormulaError>>,
    pub(crate) divisions: Vec<Result<Divided, BatchError>>,
    pub(crate) day: Option<Result<DayResults, PlanError>>,
    pub(crate) heat: Option<Heat>,
}

/// A topping's syrup with its curve and the liquid for each thickness asked for.
pub(crate) struct SyrupSums {
    pub(crate) found: SyrupResults,
    pub(crate) wished: Vec<Result<LiquidNeeded, ChocolateError>>,
}

impl Evaluation {
    /// Works out everything.
    pub(crate) fn of(asked: &Asked) -> Self {
        let formula = &asked.sheet.formula;
        let batch = batch::of(&asked.sheet, asked.kitchen.scales);
        let made = batch.scaled.as_ref().ok();
        let heat = (!asked.without_heat).then(|| Heat::of(asked, &batch.formula, made));
        Self {
            formula: results::formula::of(&asked.sheet),
            divided: dividing::of(&batch, DoughOnBench::default()).map(|dividing| dividing.divided),
            fills: made.map_or_else(Vec::new, fills),
            syrups: syrups(asked, &batch.formula),
            compared: asked
                .before
                .as_ref()
                .map(|before| Compared::of(before, formula, Form::AsWritten)),
            targets: targets(asked),
            part_shares: part_shares(asked),
            divisions: divisions(asked),
            day: day(asked, heat.as_ref().map(|heat| &heat.run)),
            heat,
            batch,
        }
    }
}

fn day(asked: &Asked, run: Option<&Run>) -> Option<Result<DayResults, PlanError>> {
    let wanted = asked.day.as_ref()?;
    Some(work_out(wanted, &asked.sheet, &asked.kitchen, run))
}

fn targets(asked: &Asked) -> Vec<Result<Reached, FormulaError>> {
    let wanted = asked.targets.iter();
    wanted
        .map(|(target, at)| reach(&asked.sheet.formula, *target, *at))
        .collect()
}

fn part_shares(asked: &Asked) -> Vec<Result<Formula, FormulaError>> {
    let wanted = asked.part_shares.iter();
    wanted
        .map(|(part, share)| set_part_share(&asked.sheet.formula, *part, *share))
        .collect()
}

fn divisions(asked: &Asked) -> Vec<Result<Divided, BatchError>> {
    let wanted = asked.divide.iter();
    wanted
        .map(|(dough, pieces, division)| divide(*dough, *pieces, *division))
        .collect()
}

/// Where the parts of a kind stand: of several fillings or syrups the page shows the first.
fn of_kind(formula: &Formula, kind: PartKind) -> impl Iterator<Item = usize> {
    let numbered = formula.parts.iter().enumerate();
    let wanted = numbered.filter(move |(_, part)| part.kind == kind);
    wanted.map(|(at, _)| at)
}

fn fills(made: &Scaled) -> Vec<(usize, Result<Fill, ChocolateError>)> {
    of_kind(&made.formula, PartKind::Filling)
        .filter_map(|at| Some((at, filling(made, at)?)))
        .collect()
}

fn syrups(asked: &Asked, formula: &Formula) -> Vec<(usize, Result<SyrupSums, ChocolateError>)> {
    of_kind(formula, PartKind::Topping)
        .filter_map(|at| {
            let found = syrup_at(formula, at, asked.sheet.batch.syrup_at)?;
            let wishes = asked.thickness.iter();
            let sums = found.map(|found| SyrupSums {
                wished: wishes.map(|wish| found.syrup.liquid_for(*wish)).collect(),
                found,
            });
            Some((at, sums))
        })
        .collect()
}
