//! What becomes of the bread when a step begins before it is due, in sentences.

use super::conflict::{conflict, ready_later};
use super::corrections::duration_change;
use crate::engine::formula::Formula;
use crate::engine::plan::{Conflict, Plan};
use crate::results::day::{Moved, StartNow};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, tr};

/// What *Start it now* does, before it is tapped.
#[must_use]
pub fn start_now(
    then: &StartNow,
    plan: &Plan,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    let ready = format::day_and_clock(then.ready, zone);
    let mut wording = vec![match then.moved {
        Moved::Same => tr!(
            "Started now, the bread is ready {ready} all the same.",
            ready = ready
        ),
        Moved::Earlier(by) => tr!(
            "Started now, the bread is ready {ready}, {by} earlier.",
            ready = ready,
            by = format::minutes(by, options)
        ),
        Moved::Later(by) => tr!(
            "Started now, the bread is ready {ready}, {by} later.",
            ready = ready,
            by = format::minutes(by, options)
        ),
    }];
    let longer = then.longer.as_ref();
    wording.extend(longer.map(|change| duration_change(change, plan, formula, options)));
    wording.extend(then.hot.map(|hot| {
        tr!(
            "The oven is then hot {time} before the bread goes in.",
            time = format::minutes(hot, options)
        )
    }));
    let conflicts = then.conflicts.iter();
    wording.extend(conflicts.map(|one| match one {
        Conflict::TooLate { by, .. } => ready_later(*by, options),
        Conflict::Waits { .. } | Conflict::AtNight { .. } | Conflict::HandsFull { .. } => {
            conflict(one, plan, formula, zone, options)
        }
    }));
    wording.join(" ")
}
