//! Which conflicts of a plan are more than a late hand.

use crate::engine::plan::{Around, Conflict, Solved};
use crate::engine::quantity::Minutes;

/// A conflict by less than this is no more than a late hand, min. Common practice.
pub(super) const GRAVE: f64 = 5.0;

/// Whether a conflict is one by five minutes or more. Work at night counts as far as it reaches into
/// sleep from either end.
pub(super) fn is_grave(conflict: &Conflict, around: &Around, solved: &Solved) -> bool {
    match conflict {
        Conflict::TooLate { by, .. }
        | Conflict::Waits { by, .. }
        | Conflict::HandsFull { by, .. } => by.minutes() >= GRAVE,
        Conflict::AtNight { step, .. } => {
            let few = Minutes::from_minutes(GRAVE).unwrap_or(Minutes::ZERO);
            let timed = solved.steps.get(*step);
            timed.is_none_or(|timed| {
                around.nights.iter().any(|night| {
                    let (from, until) = (night.from.later(few), night.until.earlier(few));
                    timed.begins < until && timed.hands_until > from
                })
            })
        }
    }
}

/// How grave a kind of conflict is, the gravest first: what cannot be, what spoils the dough, work in
/// the night, two works at once.
pub(super) const fn gravity(conflict: &Conflict) -> u8 {
    match conflict {
        Conflict::TooLate { .. } => 0,
        Conflict::Waits { .. } => 1,
        Conflict::AtNight { .. } => 2,
        Conflict::HandsFull { .. } => 3,
    }
}

/// Leaves only the conflicts that are grave, the gravest first.
pub(super) fn keep_grave(solved: &mut Solved, around: &Around) {
    let conflicts = std::mem::take(&mut solved.conflicts).into_iter();
    solved.conflicts = conflicts
        .filter(|conflict| is_grave(conflict, around, solved))
        .collect();
    solved.conflicts.sort_by_key(gravity);
}
