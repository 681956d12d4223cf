//! One whole evaluation: every sum of the engine for one document.

use softcrumb::engine::batch::{
    BatchError, Divided, Rounded, Scaled, Weighing, divide, round, scale,
};
use softcrumb::engine::chocolate::{
    ChocolateError, Fill, FillAsked, FlowCurve, LiquidNeeded, Syrup, fill,
};
use softcrumb::engine::formula::{
    Basis, Caution, Compared, Figures, Form, Formula, FormulaError, LineAt, Part, PartKind,
    PartTotals, Percentage, Reached, WaterLedger, cautions, part_totals, percentage, reach,
    set_part_share,
};
use softcrumb::engine::plan::PlanError;
use softcrumb::engine::quantity::{Division, Mass};
use softcrumb::results::day::DayResults;

use crate::asked::Asked;
use crate::day::work_out;
use crate::heat::Heat;

type Both = (
    LineAt,
    Result<Percentage, FormulaError>,
    Result<Percentage, FormulaError>,
);

/// Everything that follows from one document.
pub(crate) struct Evaluation {
    pub(crate) figures: [Figures; 2],
    pub(crate) water: [Result<WaterLedger, FormulaError>; 2],
    pub(crate) percentages: Vec<Both>,
    pub(crate) parts: Vec<Result<PartTotals, FormulaError>>,
    pub(crate) cautions: Result<Vec<Caution>, FormulaError>,
    pub(crate) scaled: Result<Scaled, BatchError>,
    pub(crate) rounded: Option<Rounded>,
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
    pub(crate) syrup: Syrup,
    pub(crate) curve: FlowCurve,
    pub(crate) wished: Vec<Result<LiquidNeeded, ChocolateError>>,
}

impl Evaluation {
    /// Works out everything.
    pub(crate) fn of(asked: &Asked) -> Self {
        let (formula, batch) = (&asked.sheet.formula, &asked.sheet.batch);
        let forms = [Form::AsWritten, Form::AsMade];
        let scaled = scale(formula, batch.wanted, batch.losses, batch.pieces);
        let scales = asked.kitchen.scales;
        let weighing = Weighing::from_masses(scales.main, scales.pocket).ok();
        let made = scaled.as_ref().ok();
        let main = weighing.map_or(Division::ONE_GRAM, |weighing| weighing.main);
        Self {
            figures: forms.map(|form| Figures::of(formula, form)),
            water: forms.map(|form| WaterLedger::of(formula, form)),
            percentages: percentages(formula),
            parts: (0..formula.parts.len())
                .map(|at| part_totals(formula, at))
                .collect(),
            cautions: cautions(formula, asked.sheet.bread),
            rounded: made
                .zip(weighing)
                .map(|(made, weighing)| round(&made.formula, weighing)),
            divided: made.map(|made| divide(made.needed, made.pieces.count, main)),
            fills: made.map_or_else(Vec::new, fills),
            syrups: syrups(asked, made.map_or(formula, |made| &made.formula)),
            compared: asked
                .before
                .as_ref()
                .map(|before| Compared::of(before, formula, Form::AsWritten)),
            targets: targets(asked),
            part_shares: part_shares(asked),
            divisions: divisions(asked),
            day: day(asked),
            heat: (!asked.without_heat).then(|| {
                let formula = made.map_or(formula, |made| &made.formula);
                let piece = made.map_or(Mass::ZERO, |made| made.pieces.each);
                Heat::of(asked, formula, piece)
            }),
            scaled,
        }
    }
}

fn day(asked: &Asked) -> Option<Result<DayResults, PlanError>> {
    let wanted = asked.day.as_ref()?;
    Some(work_out(wanted, &asked.sheet, &asked.kitchen))
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

fn percentages(formula: &Formula) -> Vec<Both> {
    let places = formula
        .parts
        .iter()
        .enumerate()
        .flat_map(|(part, own)| (0..own.lines.len()).map(move |line| LineAt { part, line }));
    places
        .map(|at| {
            let of = |basis| percentage(formula, at, basis);
            (at, of(Basis::AllFlour), of(Basis::OwnPart))
        })
        .collect()
}

fn of_kind(formula: &Formula, kind: PartKind) -> impl Iterator<Item = (usize, &Part)> {
    let numbered = formula.parts.iter().enumerate();
    numbered.filter(move |(_, part)| part.kind == kind)
}

fn fills(made: &Scaled) -> Vec<(usize, Result<Fill, ChocolateError>)> {
    of_kind(&made.formula, PartKind::Filling)
        .map(|(at, part)| {
            let asked = FillAsked::Total(part.mass());
            (
                at,
                fill(
                    asked,
                    made.pieces.count,
                    made.pieces.each,
                    made.losses.topping,
                ),
            )
        })
        .collect()
}

fn syrups(asked: &Asked, formula: &Formula) -> Vec<(usize, Result<SyrupSums, ChocolateError>)> {
    of_kind(formula, PartKind::Topping)
        .map(|(at, part)| {
            let sums = Syrup::of(part, asked.sheet.batch.syrup_at).map(|syrup| SyrupSums {
                curve: syrup.curve(),
                wished: asked
                    .thickness
                    .iter()
                    .map(|wish| syrup.liquid_for(*wish))
                    .collect(),
                syrup,
            });
            (at, sums)
        })
        .collect()
}
