//! When the time a bake began with gives way: where keeping it would have dough wait too long.

use super::grave::is_grave;
use super::input::DayInput;
use crate::engine::plan::{Aim, Around, Conflict, Plan, Solved, solve};
use crate::engine::quantity::{Instant, Minutes};

/// Returns the plan in which the bread is ready as soon as it can be; `None` where the time that the
/// bake began with is kept.
///
/// A bake that runs ahead keeps its time while something may still be held for longer: what is in the
/// fridge, or the bread once it is cool. Dough that has risen cannot wait, and so the bread is ready
/// sooner, also where it waits as long either way: nobody holds bread back for dough that waits
/// already. A time that was set after the bake began is kept.
pub(super) fn as_soon_as_it_can_be(
    input: &DayInput,
    plan: &Plan,
    (aim, around): (Aim, &Around),
    kept: &Solved,
) -> Option<Solved> {
    let (bench, Aim::Table(set)) = (input.bench?, aim) else {
        return None;
    };
    let waits = waits(around, kept)?;
    if is_another(bench.planned_table()?, set) {
        return None;
    }
    let soon = solve(plan, Aim::From(input.now.instant()), around);
    let is_better = self::waits(around, &soon).is_none_or(|then| then <= waits);
    (soon.table < set && is_better).then_some(soon)
}

/// Whether a time reads otherwise by the clock than another.
fn is_another(one: Instant, other: Instant) -> bool {
    let apart = if one > other {
        one.since(other)
    } else {
        other.since(one)
    };
    apart.minutes() >= 1.0
}

/// The longest that something waits beyond what it can bear; `None` where nothing does.
fn waits(around: &Around, solved: &Solved) -> Option<Minutes> {
    let all = solved.conflicts.iter();
    let waits = all.filter(|conflict| is_grave(conflict, around, solved));
    let waits = waits.filter_map(|conflict| match conflict {
        Conflict::Waits { by, .. } => Some(*by),
        Conflict::TooLate { .. } | Conflict::AtNight { .. } | Conflict::HandsFull { .. } => None,
    });
    waits.fold(None, |most: Option<Minutes>, by| match most {
        Some(most) if most > by => Some(most),
        Some(_) | None => Some(by),
    })
}
