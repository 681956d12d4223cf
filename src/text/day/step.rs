//! A step of the plan as a line: when, what, how long, how much of it is work.

use super::rise::signs;
use crate::engine::formula::Formula;
use crate::engine::plan::{Step, StepKind, Timed};
use crate::engine::quantity::Minutes;
use crate::results::day::DayResults;
use crate::sheet::civil::Zone;
use crate::text::{caution, format, format_options::FormatOptions, name, tr};

/// A step as a line of the plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StepLine {
    /// When it begins: "21:10".
    pub clock: String,
    /// Its name.
    pub name: String,
    /// How long: "12 h".
    pub long: String,
    /// Whether no hands are needed.
    pub waits: bool,
    /// How long, and how much of it is work.
    pub lasts: String,
    /// What to look for; may be empty.
    pub signs: &'static str,
}

/// Writes a step as a line of the plan.
#[must_use]
pub fn step_line(
    step: &Step,
    timed: &Timed,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> StepLine {
    StepLine {
        clock: format::clock_at(timed.begins, zone),
        name: name::step(step, formula),
        long: format::whole_minutes(timed.lasts, options),
        waits: step.hands <= Minutes::ZERO,
        lasts: lasts(step, timed, options),
        signs: signs(step.at.work),
    }
}

/// The date of a step that is the first of its day in the plan; `None` for the others.
#[must_use]
pub fn first_of_day(results: &DayResults, place: usize, zone: &Zone) -> Option<String> {
    let date = |place: usize| {
        let (_, timed) = results.step(place)?;
        Some(zone.civil(timed.begins).date)
    };
    let at = results.order.iter().position(|one| *one == place)?;
    let before = at.checked_sub(1).and_then(|at| results.order.get(at));
    if before.and_then(|before| date(*before)) == date(place) {
        return None;
    }
    let (_, timed) = results.step(place)?;
    Some(format::date(timed.begins, zone))
}

/// "14 min of work", "12 h, 2 min of it work", "72 min (60 min to 86 min), 2 min of it work".
fn lasts(step: &Step, timed: &Timed, options: FormatOptions) -> String {
    let minutes = |time| format::whole_minutes(time, options);
    let all = match step.over_between {
        Some((soonest, latest)) if minutes(soonest) != minutes(latest) => tr!(
            "{first} ({second} to {third})",
            first = minutes(timed.lasts),
            second = minutes(soonest),
            third = minutes(latest)
        ),
        Some(_) | None => minutes(timed.lasts),
    };
    let waits = timed.lasts > step.hands;
    if !waits {
        tr!("{all} hands-on", all = all)
    } else if step.hands > Minutes::ZERO {
        tr!(
            "{all} ({value} hands-on)",
            all = all,
            value = minutes(step.hands)
        )
    } else {
        tr!("{all}, nothing to do", all = all)
    }
}

/// What safety asks for at a step.
#[must_use]
pub const fn caution_of(kind: StepKind) -> Option<caution::Hazard> {
    match kind {
        StepKind::Scald => Some(caution::Hazard::Scalding),
        StepKind::CoolPaste | StepKind::ChillPaste => Some(caution::Hazard::CoolingPaste),
        StepKind::StandPreferment | StepKind::ChillPreferment | StepKind::WarmUp => {
            Some(caution::Hazard::KeepingCold)
        }
        StepKind::Mix | StepKind::ButterIn => Some(caution::Hazard::Mixing),
        StepKind::MixPreferment | StepKind::Divide | StepKind::Shape | StepKind::LaterDough => {
            Some(caution::Hazard::RawDough)
        }
        StepKind::Melt | StepKind::Drizzle => Some(caution::Hazard::HotChocolate),
        StepKind::Bake | StepKind::Refill | StepKind::LaterBake => Some(caution::Hazard::Baking),
        StepKind::Cool => Some(caution::Hazard::Allergens),
        StepKind::Bulk
        | StepKind::Round
        | StepKind::Rest
        | StepKind::Tin
        | StepKind::Proof
        | StepKind::Brush
        | StepKind::Preheat
        | StepKind::Own
        | StepKind::LaterProof => None,
    }
}
