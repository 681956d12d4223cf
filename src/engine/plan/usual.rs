//! The usual steps of a formula, from scald to table.

use super::error::PlanError;
use super::hand_time::SCALDING;
use super::loads::{Loads, later_loads};
use super::order::Plan;
use super::step::{DurationRange, Step, StepAt, StepKind};
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::HeatFrom;
use crate::engine::ingredients::Role;
use crate::engine::numerics::saturating_u16;
use crate::engine::quantity::{Mass, Minutes};

/// How long the steps of a formula take, worked out beforehand or wished.
#[derive(Clone, Debug, PartialEq)]
pub struct Times {
    /// How long a paste cools outside the fridge.
    pub cool_paste: Minutes,
    /// How long it is in the fridge.
    pub chill_paste: DurationRange,
    /// How long a preferment stands.
    pub stand: Minutes,
    /// How long it is in the fridge.
    pub chill: DurationRange,
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
    /// How long the oven heats up.
    pub preheat: DurationRange,
    /// The phases of the bake of one load.
    pub bake: Vec<Minutes>,
    /// Where the heat of each phase comes from.
    pub heat: Vec<HeatFrom>,
    /// How long the bread cools before it is cut.
    pub cool: DurationRange,
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
/// [`PlanError::TooManySteps`] for a formula of very many parts, or very many loads.
pub fn usual(formula: &Formula, times: &Times) -> Result<Plan, PlanError> {
    let mut making = Making { steps: Vec::new() };
    let mut inputs = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        let of = saturating_u16(part);
        match own.kind {
            PartKind::Paste => inputs.push(making.paste(of, times)),
            PartKind::Preferment => inputs.push(making.preferment(of, times)),
            PartKind::Final | PartKind::Filling | PartKind::Topping | PartKind::Wash => {}
        }
    }
    let ahead = inputs.clone();
    let mut last = making.dough(formula, times, inputs);
    last = making.rises(StepKind::Bulk, times.bulk, last);
    last = making.pieces(formula, times, last);
    let shaped = last;
    last = making.rises(StepKind::Proof, times.proof, last);
    last = making.top(formula, last);
    last = making.bake(times, last);
    last = later_loads(&mut making.steps, times.loads, (&ahead, shaped), last);
    making.add(StepKind::Cool, 0, times.cool, minutes(5.0), vec![last]);
    Plan::of(making.steps)
}

impl Making {
    fn add(
        &mut self,
        work: StepKind,
        of: u16,
        lasts: DurationRange,
        hands: Minutes,
        after: Vec<usize>,
    ) -> usize {
        self.steps
            .push(Step::new(StepAt { work, of }, lasts, hands, after));
        self.steps.len().saturating_sub(1)
    }

    /// Warming up what is cold, mixing, and butter: after `inputs`.
    fn dough(&mut self, formula: &Formula, times: &Times, mut inputs: Vec<usize>) -> usize {
        if !inputs.is_empty() && times.warm_up > Minutes::ZERO {
            let lasts = DurationRange::just(times.warm_up);
            inputs = vec![self.add(StepKind::WarmUp, 0, lasts, minutes(2.0), inputs)];
        }
        let mixing = minutes(5.0 + times.mix.minutes());
        let lasts = DurationRange::just(mixing);
        let mixed = self.add(StepKind::Mix, 0, lasts, mixing, inputs);
        if has_butter(formula) {
            self.busy(StepKind::ButterIn, 6.0, mixed)
        } else {
            mixed
        }
    }

    /// The oven heats up until the bake begins, and then the phases of the baking programme.
    fn bake(&mut self, times: &Times, after: usize) -> usize {
        let mut inputs = vec![after];
        if !times.bake.is_empty() && times.preheat.wished() > Minutes::ZERO {
            inputs.push(self.add(
                StepKind::Preheat,
                0,
                times.preheat,
                minutes(1.0),
                Vec::new(),
            ));
        }
        for (phase, lasts) in times.bake.iter().enumerate() {
            let of = saturating_u16(phase);
            let hands = minutes(lasts.minutes().min(2.0));
            let range = DurationRange::just(*lasts);
            let place = self.add(StepKind::Bake, of, range, hands, inputs);
            let heat = times.heat.get(phase).filter(|_| times.bake.len() > 1);
            if let Some(step) = self.steps.last_mut() {
                step.heat = heat.copied();
            }
            inputs = vec![place];
        }
        inputs.first().copied().unwrap_or(after)
    }

    /// A step that is all work.
    fn busy(&mut self, work: StepKind, lasts: f64, after: usize) -> usize {
        let lasts = minutes(lasts);
        self.add(work, 0, DurationRange::just(lasts), lasts, vec![after])
    }

    fn rises(
        &mut self,
        work: StepKind,
        [soonest, due, latest]: [Minutes; 3],
        after: usize,
    ) -> usize {
        let place = self.add(work, 0, DurationRange::just(due), minutes(2.0), vec![after]);
        if let Some(step) = self.steps.last_mut() {
            step.over_between = Some((soonest, latest));
        }
        place
    }

    fn paste(&mut self, of: u16, times: &Times) -> usize {
        let work = SCALDING;
        let scalded = self.add(
            StepKind::Scald,
            of,
            DurationRange::just(work),
            work,
            Vec::new(),
        );
        let cool = DurationRange::just(times.cool_paste);
        let hands = minutes(times.cool_paste.minutes().min(2.0));
        let cooled = self.add(StepKind::CoolPaste, of, cool, hands, vec![scalded]);
        self.add(
            StepKind::ChillPaste,
            of,
            times.chill_paste,
            minutes(2.0),
            vec![cooled],
        )
    }

    fn preferment(&mut self, of: u16, times: &Times) -> usize {
        let work = minutes(10.0);
        let mixed = self.add(
            StepKind::MixPreferment,
            of,
            DurationRange::just(work),
            work,
            Vec::new(),
        );
        let stand = DurationRange::just(times.stand);
        let stood = self.add(
            StepKind::StandPreferment,
            of,
            stand,
            Minutes::ZERO,
            vec![mixed],
        );
        self.add(
            StepKind::ChillPreferment,
            of,
            times.chill,
            minutes(1.0),
            vec![stood],
        )
    }

    fn pieces(&mut self, formula: &Formula, times: &Times, after: usize) -> usize {
        let hands = PieceWork::of(formula, times.pieces);
        let divided = self.busy(StepKind::Divide, hands.divide, after);
        let rounded = self.busy(StepKind::Round, hands.round, divided);
        let rest = DurationRange::just(times.rest);
        let rested = self.add(StepKind::Rest, 0, rest, Minutes::ZERO, vec![rounded]);
        let shaped = self.busy(StepKind::Shape, hands.shape, rested);
        self.busy(StepKind::Tin, hands.tin, shaped)
    }

    /// What goes on top before the bake.
    fn top(&mut self, formula: &Formula, after: usize) -> usize {
        let mut last = after;
        if has(formula, PartKind::Wash) {
            last = self.busy(StepKind::Brush, 3.0, last);
        }
        if has(formula, PartKind::Topping) {
            let lasts = DurationRange::between(minutes(12.0), minutes(15.0), minutes(45.0));
            let lasts = lasts.unwrap_or(DurationRange::just(minutes(15.0)));
            let melted = self.add(StepKind::Melt, 0, lasts, minutes(12.0), Vec::new());
            let drizzle = minutes(3.0);
            let after = vec![last, melted];
            last = self.add(
                StepKind::Drizzle,
                0,
                DurationRange::just(drizzle),
                drizzle,
                after,
            );
        }
        last
    }
}

/// The minutes of hands that pieces take between the two rises. Common practice.
struct PieceWork {
    divide: f64,
    round: f64,
    shape: f64,
    tin: f64,
}

impl PieceWork {
    fn of(formula: &Formula, pieces: u16) -> Self {
        let each = f64::from(pieces);
        let is_filled = has(formula, PartKind::Filling);
        let a_piece = if is_filled { 1.0 } else { 0.5 };
        Self {
            divide: 3.0 + 0.4 * each,
            round: 1.0 + 0.3 * each,
            shape: 2.0 + a_piece * each,
            tin: 1.0 + 0.1 * each,
        }
    }
}

/// The time from the end of the bulk rise to the pieces in their tin, with so much rest.
#[must_use]
pub fn shaping_time(formula: &Formula, pieces: u16, rest: Minutes) -> Minutes {
    let hands = PieceWork::of(formula, pieces);
    let work = hands.divide + hands.round + hands.shape + hands.tin;
    minutes((work + rest.minutes()).min(*Minutes::RANGE.end()))
}

fn minutes(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes).unwrap_or(Minutes::ZERO)
}

fn has(formula: &Formula, kind: PartKind) -> bool {
    let mut parts = formula.parts.iter();
    parts.any(|part| part.kind == kind && part.mass() > Mass::ZERO)
}

/// Whether fat goes into the final dough that is more than a trace.
fn has_butter(formula: &Formula) -> bool {
    let finals = formula
        .parts
        .iter()
        .filter(|part| part.kind == PartKind::Final);
    let fat: Mass = finals
        .flat_map(|part| &part.lines)
        .filter(|line| line.food.role() == Role::Fat)
        .map(|line| line.mass)
        .sum();
    fat.share_of(formula.flour())
        .is_some_and(|share| share.percent() >= 4.0)
}
