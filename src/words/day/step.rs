//! A step of the plan as a line: when, what, how long, how much of it is work.

use super::rise::looks;
use crate::engine::formula::Formula;
use crate::engine::plan::{Step, Timed, Work};
use crate::engine::quantity::Minutes;
use crate::sheet::civil::Zone;
use crate::words::{caution, manner::Manner, name, say, write};

/// A step as a line of the plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// When it begins: "21:10".
    pub clock: String,
    /// On which day: "Sat 28 March".
    pub day: String,
    /// What it is called.
    pub name: String,
    /// How long, and how much of it is work.
    pub lasts: String,
    /// What to look for; may be empty.
    pub looks: &'static str,
}

/// A step as a line of the plan.
#[must_use]
pub fn told(step: &Step, timed: &Timed, formula: &Formula, zone: &Zone, manner: Manner) -> Told {
    Told {
        clock: write::clock_at(timed.begins, zone),
        day: write::date(timed.begins, zone),
        name: name::step(step, formula),
        lasts: lasts(step, timed, manner),
        looks: looks(step.at.work),
    }
}

/// "14 min of work", "12 h, 2 min of it work", "72 min (60 min to 86 min), 2 min of it work".
fn lasts(step: &Step, timed: &Timed, manner: Manner) -> String {
    let minutes = |time| write::minutes(time, manner);
    let all = match step.over_between {
        Some((soonest, latest)) if soonest < latest => say!(
            "{} ({} to {})",
            minutes(timed.lasts),
            minutes(soonest),
            minutes(latest)
        ),
        Some(_) | None => minutes(timed.lasts),
    };
    let waits = timed.lasts > step.hands;
    if !waits {
        say!("{all} of work", all)
    } else if step.hands > Minutes::ZERO {
        say!("{all}, {} of it work", all, minutes(step.hands))
    } else {
        say!("{all}, no work", all)
    }
}

/// What safety asks for at a step.
#[must_use]
pub const fn caution_of(work: Work) -> Option<caution::Step> {
    match work {
        Work::Scald => Some(caution::Step::Scalding),
        Work::CoolPaste | Work::ChillPaste => Some(caution::Step::CoolingPaste),
        Work::StandPreferment | Work::ChillPreferment | Work::WarmUp => {
            Some(caution::Step::KeepingCold)
        }
        Work::Mix | Work::ButterIn => Some(caution::Step::Mixing),
        Work::MixPreferment | Work::Divide | Work::Shape | Work::LaterDough => {
            Some(caution::Step::RawDough)
        }
        Work::Melt | Work::Drizzle => Some(caution::Step::HotChocolate),
        Work::Bake | Work::Refill | Work::LaterBake => Some(caution::Step::Baking),
        Work::Cool => Some(caution::Step::Allergens),
        Work::Bulk
        | Work::Round
        | Work::Rest
        | Work::Tin
        | Work::Proof
        | Work::Brush
        | Work::Own
        | Work::LaterProof => None,
    }
}

/// How long until something: "in 25 min", "now", "12 min ago".
#[must_use]
pub fn before_it(left: Minutes, gone: Minutes, manner: Manner) -> String {
    if left.minutes() >= 0.5 {
        say!("in {}", write::minutes(left, manner))
    } else if gone.minutes() >= 0.5 {
        say!("{} ago", write::minutes(gone, manner))
    } else {
        say!("now").to_owned()
    }
}
