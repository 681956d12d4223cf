//! The usual steps of a formula, from scald to table.

use super::error::PlanError;
use super::loads::{Loads, later_loads};
use super::order::Plan;
use super::step::{Lasts, Step, StepAt, Work};
use crate::engine::formula::{Formula, StreamKind};
use crate::engine::larder::Role;
use crate::engine::quantity::{Mass, Minutes};

/// How long the steps of a formula take, worked out beforehand or wished.
#[derive(Clone, Debug, PartialEq)]
pub struct Times {
    /// How long a paste cools outside the fridge.
    pub cool_paste: Minutes,
    /// How long it is in the fridge.
    pub chill_paste: Lasts,
    /// How long a preferment stands.
    pub stand: Minutes,
    /// How long it is in the fridge.
    pub chill: Lasts,
    /// How long both stand out before they go in.
    pub warm_up: Minutes,
    /// How long the dough is mixed.
    pub mix: Minutes,
    /// The rise in one piece: soonest, likely, latest.
    pub bulk: [Minutes; 3],
    /// The rest of the pieces.
    pub rest: Minutes,
    /// The rise in the tin: soonest, likely, latest.
    pub proof: [Minutes; 3],
    /// The phases of the bake of one load.
    pub bake: Vec<Minutes>,
    /// How often the oven is filled.
    pub loads: Loads,
    /// How many pieces there are.
    pub pieces: u16,
}

/// The steps as they are put together.
struct Making {
    steps: Vec<Step>,
}

/// The usual steps of a formula. Times of hands are common practice.
///
/// # Errors
/// [`PlanError::TooManySteps`] for a formula of very many streams, or very many loads.
pub fn usual(formula: &Formula, times: &Times) -> Result<Plan, PlanError> {
    let mut making = Making { steps: Vec::new() };
    let mut inputs = Vec::new();
    for (stream, own) in formula.streams.iter().enumerate() {
        let of = u16::try_from(stream).unwrap_or(u16::MAX);
        match own.kind {
            StreamKind::Paste => inputs.push(making.paste(of, times)),
            StreamKind::Preferment => inputs.push(making.preferment(of, times)),
            StreamKind::Final | StreamKind::Filling | StreamKind::Topping | StreamKind::Wash => {}
        }
    }
    let ahead = inputs.clone();
    if !inputs.is_empty() && times.warm_up > Minutes::ZERO {
        let hands = minutes(2.0);
        inputs = vec![making.add(Work::WarmUp, 0, Lasts::just(times.warm_up), hands, inputs)];
    }
    let mixing = minutes(5.0 + times.mix.minutes());
    let mut last = making.add(Work::Mix, 0, Lasts::just(mixing), mixing, inputs);
    if has_butter(formula) {
        last = making.busy(Work::ButterIn, 6.0, last);
    }
    last = making.rises(Work::Bulk, times.bulk, last);
    last = making.pieces(formula, times, last);
    let shaped = last;
    last = making.rises(Work::Proof, times.proof, last);
    last = making.top(formula, last);
    for (phase, lasts) in times.bake.iter().enumerate() {
        let of = u16::try_from(phase).unwrap_or(u16::MAX);
        let hands = minutes(lasts.minutes().min(2.0));
        last = making.add(Work::Bake, of, Lasts::just(*lasts), hands, vec![last]);
    }
    last = later_loads(&mut making.steps, times.loads, (&ahead, shaped), last);
    let cool = Lasts::between(minutes(30.0), minutes(60.0), minutes(720.0))?;
    making.add(Work::Cool, 0, cool, minutes(5.0), vec![last]);
    Plan::of(making.steps)
}

impl Making {
    fn add(
        &mut self,
        work: Work,
        of: u16,
        lasts: Lasts,
        hands: Minutes,
        after: Vec<usize>,
    ) -> usize {
        self.steps
            .push(Step::new(StepAt { work, of }, lasts, hands, after));
        self.steps.len().saturating_sub(1)
    }

    /// A step that is all work.
    fn busy(&mut self, work: Work, lasts: f64, after: usize) -> usize {
        let lasts = minutes(lasts);
        self.add(work, 0, Lasts::just(lasts), lasts, vec![after])
    }

    fn rises(&mut self, work: Work, [soonest, due, latest]: [Minutes; 3], after: usize) -> usize {
        let place = self.add(work, 0, Lasts::just(due), minutes(2.0), vec![after]);
        if let Some(step) = self.steps.last_mut() {
            step.over_between = Some((soonest, latest));
        }
        place
    }

    fn paste(&mut self, of: u16, times: &Times) -> usize {
        let work = minutes(12.0);
        let scalded = self.add(Work::Scald, of, Lasts::just(work), work, Vec::new());
        let cool = Lasts::just(times.cool_paste);
        let cooled = self.add(Work::CoolPaste, of, cool, minutes(2.0), vec![scalded]);
        self.add(
            Work::ChillPaste,
            of,
            times.chill_paste,
            minutes(2.0),
            vec![cooled],
        )
    }

    fn preferment(&mut self, of: u16, times: &Times) -> usize {
        let work = minutes(10.0);
        let mixed = self.add(Work::MixPreferment, of, Lasts::just(work), work, Vec::new());
        let stand = Lasts::just(times.stand);
        let stood = self.add(Work::StandPreferment, of, stand, Minutes::ZERO, vec![mixed]);
        self.add(
            Work::ChillPreferment,
            of,
            times.chill,
            minutes(1.0),
            vec![stood],
        )
    }

    fn pieces(&mut self, formula: &Formula, times: &Times, after: usize) -> usize {
        let each = f64::from(times.pieces);
        let filled = has(formula, StreamKind::Filling);
        let divided = self.busy(Work::Divide, 3.0 + 0.4 * each, after);
        let rounded = self.busy(Work::Round, 1.0 + 0.3 * each, divided);
        let rest = Lasts::just(times.rest);
        let rested = self.add(Work::Rest, 0, rest, Minutes::ZERO, vec![rounded]);
        let a_piece = if filled { 1.0 } else { 0.5 };
        let shaped = self.busy(Work::Shape, 2.0 + a_piece * each, rested);
        self.busy(Work::Tin, 1.0 + 0.1 * each, shaped)
    }

    /// What goes on top before the bake.
    fn top(&mut self, formula: &Formula, after: usize) -> usize {
        let mut last = after;
        if has(formula, StreamKind::Wash) {
            last = self.busy(Work::Brush, 3.0, last);
        }
        if has(formula, StreamKind::Topping) {
            let lasts = Lasts::between(minutes(12.0), minutes(15.0), minutes(45.0));
            let lasts = lasts.unwrap_or(Lasts::just(minutes(15.0)));
            let melted = self.add(Work::Melt, 0, lasts, minutes(12.0), Vec::new());
            let drizzle = minutes(3.0);
            let after = vec![last, melted];
            last = self.add(Work::Drizzle, 0, Lasts::just(drizzle), drizzle, after);
        }
        last
    }
}

fn minutes(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes).unwrap_or(Minutes::ZERO)
}

fn has(formula: &Formula, kind: StreamKind) -> bool {
    let mut streams = formula.streams.iter();
    streams.any(|stream| stream.kind == kind && stream.mass() > Mass::ZERO)
}

/// Whether fat goes into the final dough that is more than a trace.
fn has_butter(formula: &Formula) -> bool {
    let finals = formula
        .streams
        .iter()
        .filter(|stream| stream.kind == StreamKind::Final);
    let fat: Mass = finals
        .flat_map(|stream| &stream.lines)
        .filter(|line| line.food.role() == Role::Fat)
        .map(|line| line.mass)
        .sum();
    fat.share_of(formula.flour())
        .is_some_and(|share| share.percent() >= 4.0)
}
