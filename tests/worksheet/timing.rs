//! Timing: how long one whole evaluation of the first example takes, against its budget, and how
//! long the slow parts take that the page works out once all else has been drawn.

use std::hint::black_box;
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use softcrumb::engine::heat::{HeatError, VesselCourse, simulate};
use softcrumb::engine::quantity::Viscosity;
use softcrumb::results::heat::{CoolingPlan, CoolingResult};
use softcrumb::sheet::{Kitchen, examples};

use crate::asked::Asked;
use crate::asked_heat::CoolingAsked;
use crate::cooling_case::{self, CONDUCTIVITY, DENSITY, HALF, MASS, SPECIFIC_HEAT, START, STAYS};
use crate::day::AskedDay;
use crate::evaluation::Evaluation;

const TURNS: usize = 2_001;

/// What formula, batch and chocolate may take, µs, in a release build.
const BUDGET: f64 = 200.0;
/// The same with heat, three coolings among it, rises and plan.
const BUDGET_OF_ALL: f64 = 1000.0;

/// One cooling in a vessel.
const BUDGET_OF_BOWL: f64 = 1000.0;

/// The lines to print, and whether the budgets are met; an unoptimised build has none.
pub(crate) struct Timed {
    pub(crate) lines: Vec<String>,
    pub(crate) within_budget: bool,
}

/// Takes the median of many evaluations, the working of every figure included.
///
/// # Errors
/// None: the cooling that is timed lies within all ranges.
pub(crate) fn time() -> Result<Timed, HeatError> {
    let mut asked = Asked::plain(examples().remove(0).1, Kitchen::default());
    asked.thickness.extend(Viscosity::from_pascal_seconds(0.5));
    asked.without_heat = true;
    let plain = turns(|| evaluate(&asked));
    asked.without_heat = false;
    asked.day = Some(AskedDay::usual());
    let (body, start, stays) = cooling_case::case()?;
    for _ in 0..2 {
        asked.heat.coolings.push(CoolingAsked {
            body,
            start,
            stays: stays.clone(),
            times: Vec::new(),
        });
    }
    let whole = turns(|| evaluate(&asked));
    let cooling = turns(|| simulate(&body, start, &stays));
    let evaluation = Evaluation::of(&asked);
    let in_bowl = turns(|| in_a_bowl(&evaluation));
    let later = turns(|| {
        plans(&evaluation)
            .map(CoolingPlan::advise)
            .collect::<Vec<_>>()
    });
    Ok(Timed {
        within_budget: plain.is_within(BUDGET)
            && whole.is_within(BUDGET_OF_ALL)
            && in_bowl.is_within(BUDGET_OF_BOWL),
        lines: vec![
            plain.say("formula, batch and chocolate", Some(BUDGET)),
            whole.say(
                "with heat, three coolings, rises and plan",
                Some(BUDGET_OF_ALL),
            ),
            cooling.say("12 h of cooling, one run", None),
            in_bowl.say("12 h of cooling in a bowl, one run", Some(BUDGET_OF_BOWL)),
            later.say("what makes a cooling pass, found after the frame", None),
        ],
    })
}

/// The first paste's cooling in its vessel, as is likely.
fn in_a_bowl(evaluation: &Evaluation) -> Option<VesselCourse> {
    plans(evaluation).next()?.likely().ok()
}

fn plans(evaluation: &Evaluation) -> impl Iterator<Item = &CoolingPlan> {
    let coolings = evaluation.heat.iter().flat_map(|heat| &heat.paste_coolings);
    coolings.filter_map(CoolingResult::good_plan)
}

fn evaluate(asked: &Asked) -> (Evaluation, usize) {
    let evaluation = Evaluation::of(black_box(asked));
    let lines = crate::json::working(&evaluation).len();
    (evaluation, lines)
}

/// The cooling that is timed, as a document.
pub(crate) fn cooling_document() -> Value {
    let stays = STAYS.map(|(minutes, air, coefficient)| {
        json!({ "minutes": minutes, "air_c": air, "coefficient_w_per_m2_k": coefficient })
    });
    json!({
        "worksheet": 1, "formula": { "streams": [] },
        "coolings": [{
            "shape": "sphere", "half_m": HALF, "mass_g": MASS,
            "specific_heat_j_per_kg_k": SPECIFIC_HEAT, "conductivity_w_per_m_k": CONDUCTIVITY,
            "density_kg_per_m3": DENSITY, "start_c": START, "stays": stays,
            "times_min": [10.0, 30.0, 60.0, 120.0, 240.0, 360.0, 480.0, 720.0],
        }],
    })
}

/// How long one evaluation takes, µs.
pub(crate) struct MeasuredDuration {
    /// The median of all turns.
    pub(crate) median: f64,
    late: f64,
    turns: usize,
}

impl MeasuredDuration {
    /// Whether a budget is met; an unoptimised build has none.
    pub(crate) fn is_within(&self, budget: f64) -> bool {
        cfg!(debug_assertions) || self.median <= budget
    }

    pub(crate) fn say(&self, what: &str, budget: Option<f64>) -> String {
        let (median, late, turns) = (self.median, self.late, self.turns);
        let build = if cfg!(debug_assertions) {
            ", not optimised"
        } else {
            ""
        };
        let budget = budget.map_or_else(String::new, |budget| format!("; budget {budget:.0} µs"));
        format!(
            "{what}: {median:.1} µs median, {late:.1} µs 95th of 100, {turns} turns{build}{budget}"
        )
    }
}

fn turns<T>(work: impl Fn() -> T) -> MeasuredDuration {
    median_of(TURNS, work)
}

/// Times an evaluation so many times over.
#[allow(
    clippy::disallowed_methods,
    reason = "only a clock can tell how long it takes"
)]
pub(crate) fn median_of<T>(turns: usize, work: impl Fn() -> T) -> MeasuredDuration {
    let one = |_| {
        let start = Instant::now();
        let done = work();
        let took = start.elapsed();
        black_box(done);
        took
    };
    let mut took: Vec<Duration> = (0..turns).map(one).collect();
    took.sort_unstable();
    let at = |place: usize| took.get(place).map_or(0.0, |time| time.as_secs_f64() * 1e6);
    MeasuredDuration {
        median: at(turns.div_euclid(2)),
        late: at(turns.saturating_mul(95).div_euclid(100)),
        turns,
    }
}
