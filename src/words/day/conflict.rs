//! What is in the way of a plan, and what solves it.

use crate::engine::formula::Formula;
use crate::engine::plan::{Change, Conflict, Plan};
use crate::sheet::civil::Zone;
use crate::words::{manner::Manner, name, say, write};

/// What cannot be kept.
#[must_use]
pub fn conflict(
    conflict: &Conflict,
    plan: &Plan,
    formula: &Formula,
    zone: &Zone,
    manner: Manner,
) -> String {
    let called = |step: usize| called(plan, step, formula);
    let minutes = |time| write::minutes(time, manner);
    match conflict {
        Conflict::TooLate { step, by } => say!(
            "“{}” would have to begin {} sooner than it can.",
            called(*step),
            minutes(*by)
        ),
        Conflict::Waits { step, by } => say!(
            "After “{}” the dough would wait {} too long.",
            called(*step),
            minutes(*by)
        ),
        Conflict::Asleep {
            step,
            begins,
            wakes,
        } => say!(
            "“{}” would begin {}, while you sleep until {}.",
            called(*step),
            write::day_and_clock(*begins, zone),
            write::clock_at(*wakes, zone)
        ),
        Conflict::HandsFull { step, other, by } => say!(
            "“{}” and “{}” want the same hands for {}.",
            called(*step),
            called(*other),
            minutes(*by)
        ),
    }
}

/// What solves all of it, as something to do.
#[must_use]
pub fn change(
    change: &Change,
    plan: &Plan,
    formula: &Formula,
    zone: &Zone,
    manner: Manner,
) -> String {
    match change {
        Change::TableLater(at) => {
            say!(
                "Have the bread on the table later, {}.",
                write::day_and_clock(*at, zone)
            )
        }
        Change::TableEarlier(at) => say!(
            "Have the bread on the table earlier, {}.",
            write::day_and_clock(*at, zone)
        ),
        Change::LetLast {
            step,
            minutes,
            longer,
        } => say!(
            "Let “{}” last {}, {} than its limits say.",
            called(plan, *step, formula),
            write::minutes(*minutes, manner),
            if *longer {
                say!("longer")
            } else {
                say!("less")
            }
        ),
        Change::HelpingHand => say!("Have somebody help at that time.").to_owned(),
    }
}

fn called(plan: &Plan, step: usize, formula: &Formula) -> String {
    let step = plan.steps().get(step);
    step.map_or_else(String::new, |step| name::step(step, formula))
}
