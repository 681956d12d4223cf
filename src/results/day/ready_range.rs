//! The time the bread is ready, with its range: what every step that is left adds, in quadrature.

use super::ready_shares::{ReadyEnd, ReadyInput};
use crate::engine::plan::Aim;
use crate::engine::quantity::{Instant, Minutes};

/// When the bread is ready to be cut.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadyRange {
    /// At the soonest.
    pub soonest: Instant,
    /// Most likely: as planned, and where the plan has the bread wait longer than it cools, before
    /// that wait.
    pub likely: Instant,
    /// At the latest.
    pub latest: Instant,
    /// How much sooner it may be, min.
    pub sooner: ReadyPath,
    /// How much later it may be, min.
    pub later: ReadyPath,
}

/// The path to one end of the range: the minutes that steps add and absorb.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadyPath {
    /// In the order of time.
    pub items: Vec<ReadyItem>,
    /// What it comes to.
    pub minutes: Minutes,
}

/// Something that widens the range or narrows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ReadyItem {
    /// A step may be over sooner or later: added in quadrature.
    Step {
        /// Its place in the plan's list.
        step: usize,
        /// By so much.
        by: Minutes,
    },
    /// A rise takes another time in a dough that is warmer or colder than predicted: added in
    /// quadrature.
    Dough {
        /// The place of the rise in the plan's list.
        step: usize,
        /// By so much.
        by: Minutes,
    },
    /// A wait is shortened or lengthened: subtracted, as far as there is something.
    Wait {
        /// The place of the step that waits, or is waited for.
        step: usize,
        /// As far as this.
        by: Minutes,
    },
}

/// For a wished time, how what is ready at the latest lies to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ReadyMargin {
    /// It is ready in time even at the latest, with so much to spare.
    ToSpare(Minutes),
    /// How much later it is ready at the latest.
    Late(Minutes),
}

/// Times are shown to five minutes, s: no range is known more closely.
const TOLD_TO: i64 = 300;

/// The time the bread is ready, with its range.
///
/// Along the path by which a step may be late, each adds its own minutes in quadrature; a wait
/// absorbs what it can. A step is as late as the latest of what it waits for, and is early only
/// where all is that it follows at once.
///
/// Source: JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement, 5.1.2: what is off
/// for reasons of its own adds in quadrature.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::engine::quantity::Minutes;
/// use softcrumb::results::day::{self, DayInput, ReadyInput, ready_range};
/// use softcrumb::sheet::{Kitchen, Moment, civil::Zone, day::DaySettings, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let now = Moment::from_milliseconds(1_774_634_400_000.0)?;
/// let results = day::of(&DayInput {
///     sheet: &sheet,
///     kitchen: &Kitchen::default(),
///     settings: &DaySettings::default(),
///     learnt: &Learnt::default(),
///     rounded: None,
///     zone: &Zone::default(),
///     now,
///     bench: None,
/// })?;
/// let ready = ready_range(&ReadyInput {
///     plan: &results.plan,
///     solved: &results.solved,
///     stages: &results.run.stages,
///     dough: [Minutes::ZERO; 2],
///     bake: None,
///     now: now.instant(),
/// });
/// assert_eq!(ready.likely, results.solved.table);
/// assert!(ready.soonest < ready.likely && ready.likely < ready.latest);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn ready_range(input: &ReadyInput) -> ReadyRange {
    let likely = input.solved.table.earlier(input.lies_ready());
    let sooner = path(input, ReadyEnd::Soonest);
    let later = path(input, ReadyEnd::Latest);
    let soonest = likely.earlier(sooner.minutes);
    // What is not ready yet is not ready before now.
    let soonest = soonest.max(input.now.min(likely));
    ReadyRange {
        soonest,
        likely,
        latest: likely.later(later.minutes),
        sooner,
        later,
    }
}

/// How far a step's end is off, and the steps that cause it.
#[derive(Clone, Default)]
struct Off {
    minutes: f64,
    items: Vec<ReadyItem>,
}

/// The path to one end.
fn path(input: &ReadyInput, end: ReadyEnd) -> ReadyPath {
    let mut ends: Vec<Off> = Vec::new();
    for place in 0..input.plan.steps().len() {
        let mut off = if input.has_begun(place) {
            Off::default()
        } else {
            starts(input, place, end, &ends)
        };
        let [own, dough] = input.shares(place, end);
        off.add(own, |by| ReadyItem::Step { step: place, by });
        off.add(dough, |by| ReadyItem::Dough { step: place, by });
        off.absorb(input.absorbs(place, end), place);
        ends.push(off);
    }
    // The last step to end; each step comes after all it waits for.
    let steps = input.solved.steps.iter().zip(ends);
    let last = steps.max_by_key(|(timed, _)| timed.ends);
    let off = last.map(|(_, off)| off).unwrap_or_default();
    ReadyPath {
        items: off.items,
        minutes: held(off.minutes),
    }
}

/// How far the start of a step is off: late by the latest of what it waits for, less the wait
/// between; early only where all is that it follows at once.
fn starts(input: &ReadyInput, place: usize, end: ReadyEnd, ends: &[Off]) -> Off {
    let Some((step, timed)) = input.step(place) else {
        return Off::default();
    };
    let inputs = step.after.iter().filter_map(|before| {
        let (earlier, over) = input.step(*before)?;
        let wait = timed.begins.since(over.ends).minutes();
        Some((ends.get(*before)?.clone(), wait, earlier.after.is_empty()))
    });
    let by_minutes = |one: &Off, other: &Off| one.minutes.total_cmp(&other.minutes);
    let decides = match end {
        ReadyEnd::Latest => inputs
            .map(|(mut off, wait, _)| {
                off.absorb(wait, place);
                off
            })
            .max_by(by_minutes),
        // What waits for nothing, such as the oven, can be begun sooner.
        ReadyEnd::Soonest => {
            let all: Vec<_> = inputs.collect();
            let any_waits = all.iter().any(|(_, _, first)| !first);
            let decide = all
                .into_iter()
                .filter(|(_, wait, first)| *wait <= 0.0 && !(any_waits && *first));
            decide.map(|(off, ..)| off).min_by(by_minutes)
        }
    };
    decides.unwrap_or_default()
}

impl Off {
    /// Adds in quadrature.
    fn add(&mut self, minutes: f64, item: impl FnOnce(Minutes) -> ReadyItem) {
        if minutes > 0.0 {
            self.minutes = libm::hypot(self.minutes, minutes);
            self.items.push(item(held(minutes)));
        }
    }

    /// Subtracts what a wait absorbs; where nothing is left, nothing before it counts.
    fn absorb(&mut self, wait: f64, step: usize) {
        if wait <= 0.0 {
            return;
        }
        self.minutes = (self.minutes - wait).max(0.0);
        if self.minutes > 0.0 {
            let by = held(wait);
            self.items.push(ReadyItem::Wait { step, by });
        } else {
            self.items.clear();
        }
    }
}

fn held(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
}

impl ReadyRange {
    /// Returns the soonest and the latest as they are shown: to five minutes, rounded outwards.
    #[must_use]
    pub fn shown(&self) -> [Instant; 2] {
        let (soonest, latest) = (self.soonest.seconds(), self.latest.seconds());
        [
            Instant::held(soonest - soonest.rem_euclid(TOLD_TO)),
            Instant::held(latest + (-latest).rem_euclid(TOLD_TO)),
        ]
    }

    /// Returns whether no duration is left that could be off.
    #[must_use]
    pub fn is_certain(&self) -> bool {
        self.soonest == self.latest
    }

    /// Returns, for a plan that is solved from the table, by how many minutes the latest lies
    /// before or after the wished time.
    #[must_use]
    pub fn margin(&self, aim: Aim) -> Option<ReadyMargin> {
        let Aim::Table(wished) = aim else {
            return None;
        };
        let [_, latest] = self.shown();
        Some(if latest > wished {
            ReadyMargin::Late(latest.since(wished))
        } else {
            ReadyMargin::ToSpare(wished.since(latest))
        })
    }
}
