//! Weighing at the bench: what goes in at a step.

use super::day_results::DayResults;
use super::input::DayInput;
use crate::engine::batch::{RoundedLine, ScaleReading};
use crate::engine::formula::{LineAt, PartKind};
use crate::engine::plan::{StepAt, StepKind, weighed_at};
use crate::engine::quantity::{Mass, Temperature};
use crate::results::heat::part_matter;

/// What goes in at a step: pastes and preferments whole, then the lines to weigh, in the order of the
/// formula.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StepWeighing {
    /// The pastes and preferments.
    pub parts: Vec<WeighedPart>,
    /// The lines.
    pub lines: Vec<WeighedLine>,
    /// All of it together.
    pub total: Mass,
    /// What is in the bowl so far.
    pub so_far: Mass,
}

impl StepWeighing {
    /// Returns the line at a place of the formula; `None` where this step does not weigh it.
    #[must_use]
    pub fn line(&self, at: LineAt) -> Option<WeighedLine> {
        self.lines.iter().find(|line| line.at == at).copied()
    }

    /// A paste or preferment by its place in the formula.
    #[must_use]
    pub fn part(&self, part: usize) -> Option<WeighedPart> {
        self.parts.iter().find(|one| one.part == part).copied()
    }

    /// The places of the lines in the formula.
    #[must_use]
    pub fn places(&self) -> Vec<LineAt> {
        self.lines.iter().map(|line| line.at).collect()
    }
}

/// A paste or preferment that goes into the mixer whole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeighedPart {
    /// Which part.
    pub part: usize,
    /// The step that made it.
    pub made: StepAt,
    /// What it weighs, steam left out.
    pub mass: Mass,
    /// The reading of a scale that was not tared since the first of the step.
    pub untared: Mass,
    /// Whether it is in.
    pub is_in: bool,
}

/// A line to weigh at a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeighedLine {
    /// Which line.
    pub at: LineAt,
    /// The mass to weigh; `None` where the batch cannot be worked out.
    pub target: Option<Mass>,
    /// Whether the scale would show nothing of it.
    pub below_scale: bool,
    /// Whether the scale misses it by more than needs no thought.
    pub is_missed: bool,
    /// The temperature it is to have, where that is not where it is stored.
    pub warm: Option<Temperature>,
    /// The reading of a scale that was not tared since the first line of the step.
    pub untared: Mass,
    /// Whether it has been weighed.
    pub is_weighed: bool,
    /// The mass to show as weighed: the one that was typed, also where it was taken back, else the
    /// target.
    pub mass: Option<Mass>,
}

/// Returns the lines that are weighed at a step, each with its planned and its actual mass in g.
#[must_use]
pub fn step_weighing(input: &DayInput, results: &DayResults, step: StepAt) -> StepWeighing {
    let mut untared = Mass::ZERO;
    let parts = weighed_parts(input, results, step, &mut untared);
    let places = weighed_at(step, &results.plan, &input.sheet.formula).into_iter();
    let lines: Vec<WeighedLine> = places
        .map(|at| weighed_line(input, at, &mut untared))
        .collect();
    let whole = parts.iter().filter(|part| part.is_in);
    let whole = whole.map(|part| part.mass);
    let weighed = lines.iter().filter(|line| line.is_weighed);
    StepWeighing {
        so_far: whole.chain(weighed.filter_map(|line| line.mass)).sum(),
        parts,
        lines,
        total: untared,
    }
}

/// The pastes and preferments of a step; the reading of the scale goes on with each.
fn weighed_parts(
    input: &DayInput,
    results: &DayResults,
    step: StepAt,
    untared: &mut Mass,
) -> Vec<WeighedPart> {
    if step.work != StepKind::Mix {
        return Vec::new();
    }
    let put_in = input.bench.map(|bench| bench.put_in.as_slice());
    let parts = parts_mixed_in(input, results).map(|(part, made, mass)| {
        *untared = [*untared, mass].into_iter().sum();
        WeighedPart {
            part,
            made,
            mass,
            untared: *untared,
            is_in: put_in.unwrap_or_default().contains(&made),
        }
    });
    parts.collect()
}

/// A line of a step; the reading of the scale goes on with it, by what was typed where that is in.
fn weighed_line(input: &DayInput, at: LineAt, untared: &mut Mass) -> WeighedLine {
    let rounded = input.rounded.and_then(|rounded| rounded.line(at));
    let target = rounded.map(|line| line.weighed);
    let weighing = input.bench.and_then(|bench| bench.weighing(at));
    let mass = input.bench.and_then(|bench| bench.typed(at)).or(target);
    let counts = if weighing.is_some() { mass } else { target };
    *untared = [*untared, counts.unwrap_or(Mass::ZERO)].into_iter().sum();
    WeighedLine {
        at,
        target,
        below_scale: rounded.is_some_and(|line| line.reading == ScaleReading::BelowScale),
        is_missed: rounded.is_some_and(is_missed),
        warm: warm(input, at),
        untared: *untared,
        is_weighed: weighing.is_some(),
        mass,
    }
}

/// The same lines as are marked where the batch is weighed.
const fn is_missed(line: &RoundedLine) -> bool {
    line.aids.is_some()
}

/// The pastes and preferments that go into the mixer, the steps that made them, and what they weigh.
fn parts_mixed_in<'a>(
    input: &'a DayInput,
    results: &'a DayResults,
) -> impl Iterator<Item = (usize, StepAt, Mass)> + 'a {
    let parts = input.sheet.formula.parts.iter().enumerate();
    parts.filter_map(|(part, own)| {
        let work = match own.kind {
            PartKind::Paste => StepKind::Scald,
            PartKind::Preferment => StepKind::MixPreferment,
            PartKind::Final | PartKind::Filling | PartKind::Topping | PartKind::Wash => {
                return None;
            }
        };
        let of = u16::try_from(part).ok()?;
        let (mass, _) = part_matter(results.run.formula.parts.get(part)?).ok()?;
        let shown = input
            .rounded
            .map(|rounded| rounded.weighing.main.nearest(mass));
        let weighed = weighed_paste(input).filter(|_| own.kind == PartKind::Paste);
        let mass = weighed.or(shown).unwrap_or(mass);
        Some((part, StepAt { work, of }, mass))
    })
}

/// What the only paste of the formula weighed after scalding, where that was noted.
fn weighed_paste(input: &DayInput) -> Option<Mass> {
    let parts = input.sheet.formula.parts.iter();
    let pastes = parts.filter(|part| part.kind == PartKind::Paste).count();
    let noted = input.bench?.bake.noted.steam?;
    (pastes == 1).then_some(noted.weighed.after)
}

/// Flour this much warmer or colder than the room is told, K.
const NOTICED: f64 = 2.0;

/// The temperature a line of the final dough is to have, where that was set, or where flour is not as
/// warm as the room.
pub(super) fn warm(input: &DayInput, at: LineAt) -> Option<Temperature> {
    let part = input.sheet.formula.parts.get(at.part)?;
    let line = part.lines.get(at.line)?;
    let kitchen = input.kitchen;
    let flour = line.is_flour() && (kitchen.flour_at() - kitchen.room).kelvin().abs() > NOTICED;
    let set = line
        .temperature
        .or_else(|| flour.then_some(kitchen.flour_at()));
    set.filter(|_| part.kind == PartKind::Final)
}

/// Whether what is weighed at a kind of step goes into one bowl.
#[must_use]
pub const fn goes_into_a_bowl(kind: StepKind) -> bool {
    matches!(
        kind,
        StepKind::Scald | StepKind::MixPreferment | StepKind::Mix | StepKind::Melt
    )
}
