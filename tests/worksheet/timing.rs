//! Timing: how long one whole evaluation of the first example takes, against its budget.

use std::hint::black_box;
use std::time::{Duration, Instant};

use softcrumb::engine::quantity::Viscosity;
use softcrumb::sheet::{Kitchen, examples};

use crate::asked::Asked;
use crate::day::AskedDay;
use crate::evaluation::Evaluation;

const TURNS: usize = 2_001;
const MIDDLE: usize = 1_000;
const NEAR_THE_END: usize = 1_900;

/// What one whole evaluation may take, µs, in a release build.
const BUDGET: f64 = 200.0;
/// The same with rises and plan.
const BUDGET_WITH_DAY: f64 = 1000.0;

/// The line to print, and whether the budget is kept; an unoptimised build has none.
pub(crate) struct Timed {
    pub(crate) line: String,
    pub(crate) within_budget: bool,
}

/// Takes the median of many evaluations, the working of every figure included; then the same with
/// rises and plan.
pub(crate) fn time() -> Timed {
    let mut asked = Asked::plain(examples().remove(0).1, Kitchen::default());
    asked.thickness.extend(Viscosity::from_pascal_seconds(0.5));
    let plain = timed("one whole evaluation", &asked, BUDGET);
    asked.day = Some(AskedDay::usual());
    let with_day = timed("with rises and plan", &asked, BUDGET_WITH_DAY);
    Timed {
        line: format!("{}\n{}", plain.line, with_day.line),
        within_budget: plain.within_budget && with_day.within_budget,
    }
}

fn timed(what: &str, asked: &Asked, budget: f64) -> Timed {
    let mut took: Vec<Duration> = (0..TURNS).map(|_| one(asked)).collect();
    took.sort_unstable();
    let at = |place: usize| took.get(place).map_or(0.0, |time| time.as_secs_f64() * 1e6);
    let (median, late) = (at(MIDDLE), at(NEAR_THE_END));
    let build = if cfg!(debug_assertions) {
        "not optimised"
    } else {
        "optimised"
    };
    Timed {
        line: format!(
            "{what}: {median:.1} µs median, {late:.1} µs 95th of 100, {TURNS} turns, {build}; \
             budget {budget} µs"
        ),
        within_budget: cfg!(debug_assertions) || median <= budget,
    }
}

#[allow(
    clippy::disallowed_methods,
    reason = "only a clock can tell how long it takes"
)]
fn one(asked: &Asked) -> Duration {
    let start = Instant::now();
    let evaluation = Evaluation::of(black_box(asked));
    let working = crate::told::working(&evaluation);
    let took = start.elapsed();
    black_box((evaluation, working));
    took
}
