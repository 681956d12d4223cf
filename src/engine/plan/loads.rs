//! Loads: what of a plan comes again for each further filling of the oven.

use std::num::NonZeroU16;

use super::step::{DurationRange, Step, StepAt, StepKind};
use crate::engine::quantity::Minutes;

/// How often the oven is filled, and what becomes of the dough that is not in the first load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Loads {
    /// How often.
    pub count: NonZeroU16,
    /// From one load out to the next one in: emptying, filling, coming back to heat.
    pub between: Minutes,
    /// Whether each load has a dough of its own, begun that much later; else all are shaped together
    /// and the later pieces begin their proof later.
    pub staggered: bool,
}

/// Door open, loaves out, oven back to its heat. Common practice.
const BETWEEN: Minutes = Minutes::known(5.0);

impl Loads {
    /// The oven is filled so often, with what is usual in between, all from one dough.
    #[must_use]
    pub const fn of(count: NonZeroU16) -> Self {
        Self {
            count,
            between: BETWEEN,
            staggered: false,
        }
    }

    /// The most loads there may be.
    pub const MOST: NonZeroU16 = NonZeroU16::MIN.saturating_add(98);

    /// Whether there is more than one.
    #[must_use]
    pub const fn are_several(self) -> bool {
        self.count.get() > 1
    }

    /// From the start of one load to the start of the next: `bake + between`.
    #[must_use]
    pub fn apart(self, bake: Minutes) -> Minutes {
        held(bake.minutes() + self.between.minutes())
    }

    /// From the first load into the oven to the last out of it.
    #[must_use]
    pub fn from_first_to_last(self, bake: Minutes) -> Minutes {
        let count = f64::from(self.count.get());
        held(count * (bake.minutes() + self.between.minutes()) - self.between.minutes())
    }
}

impl Default for Loads {
    fn default() -> Self {
        Self::of(NonZeroU16::MIN)
    }
}

/// What the first load's steps say of one that comes later.
struct First {
    /// From the bowl, or from the tin on, until it goes into the oven.
    until_oven: DurationRange,
    over_between: Option<(Minutes, Minutes)>,
    bake: Minutes,
}

/// Adds the steps of every load after the first to `steps`, in which `bake` is the last step of the
/// first load. A later dough waits for `ahead`, later pieces for `shaped`. Gives the last bake.
///
/// Whoever makes a later dough is there for it: of the baker it takes two minutes to begin it.
pub(super) fn later_loads(
    steps: &mut Vec<Step>,
    loads: Loads,
    (ahead, shaped): (&[usize], usize),
    bake: usize,
) -> usize {
    let first = First::of(steps, loads.staggered);
    let work = if loads.staggered {
        StepKind::LaterDough
    } else {
        StepKind::LaterProof
    };
    let two = Minutes::known(2.0);
    let mut last = bake;
    for of in 2..=loads.count.get() {
        let inputs = if loads.staggered {
            ahead.to_vec()
        } else {
            vec![shaped]
        };
        let at = |work| StepAt { work, of };
        let mut rising = Step::new(at(work), first.until_oven, two, inputs);
        rising.over_between = first.over_between;
        let risen = add(steps, rising);
        let mut ready = last;
        if loads.between > Minutes::ZERO {
            let between = DurationRange::just(loads.between);
            let hands = if loads.between > BETWEEN {
                BETWEEN
            } else {
                loads.between
            };
            ready = add(
                steps,
                Step::new(at(StepKind::Refill), between, hands, vec![last]),
            );
        }
        let hands = if first.bake < two { first.bake } else { two };
        let bakes = DurationRange::just(first.bake);
        last = add(
            steps,
            Step::new(at(StepKind::LaterBake), bakes, hands, vec![risen, ready]),
        );
    }
    last
}

fn add(steps: &mut Vec<Step>, step: Step) -> usize {
    steps.push(step);
    steps.len().saturating_sub(1)
}

impl First {
    fn of(steps: &[Step], whole_dough: bool) -> Self {
        let sum = |wanted: &dyn Fn(StepKind) -> bool, look: &dyn Fn(&Step) -> Minutes| {
            let found = steps.iter().filter(|step| wanted(step.at.work));
            held(found.map(|step| look(step).minutes()).sum())
        };
        let again = |work| after_the_tin(work) || (whole_dough && before_the_tin(work));
        let wished = |step: &Step| step.lasts.wished();
        let soonest = sum(&again, &|step| {
            step.over_between
                .map_or(wished(step), |(soonest, _)| soonest)
        });
        let latest = sum(&again, &|step| {
            step.over_between.map_or(wished(step), |(_, latest)| latest)
        });
        Self {
            until_oven: DurationRange::just(sum(&again, &wished)),
            over_between: (soonest < latest).then_some((soonest, latest)),
            bake: sum(&|work| work == StepKind::Bake, &wished),
        }
    }
}

/// What every load's dough goes through before it is set in its tin.
const fn before_the_tin(work: StepKind) -> bool {
    matches!(
        work,
        StepKind::WarmUp
            | StepKind::Mix
            | StepKind::ButterIn
            | StepKind::Bulk
            | StepKind::Divide
            | StepKind::Round
            | StepKind::Rest
            | StepKind::Shape
            | StepKind::Tin
    )
}

/// What it goes through after that, before the oven.
const fn after_the_tin(work: StepKind) -> bool {
    matches!(work, StepKind::Proof | StepKind::Brush | StepKind::Drizzle)
}

fn held(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
}
