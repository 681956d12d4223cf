//! The day ribbon: two days as one strip, with a lane each for paste, preferment, dough, chocolate.

use crate::engine::formula::{Formula, PartKind};
use crate::engine::numerics::float_from_usize;
use crate::engine::plan::{StepAt, StepKind, Timed};
use crate::engine::quantity::{Instant, Minutes};
use crate::results::day::DayResults;
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, language::text, name, tr, tr_noop};

use super::Tick;
use super::ribbon_labels::{days, hours, shortened};
use super::ribbon_scale::{Scale, WIDTH};

/// A stretch of one lane.
#[derive(Clone, Debug, PartialEq)]
pub struct RibbonBlock {
    /// Which step of the plan's list.
    pub step: usize,
    /// Where it begins.
    pub x: f64,
    /// How wide it is.
    pub width: f64,
    /// How much of that, from its beginning, is work.
    pub work: f64,
    /// The top of its lane.
    pub y: f64,
    /// What it is called, for pointing at.
    pub name: String,
}

/// A lane of the ribbon.
#[derive(Clone, Debug, PartialEq)]
pub struct Lane {
    /// What is in it.
    pub name: String,
    /// Its top.
    pub y: f64,
}

/// The ribbon laid out on a field of [`DayRibbon::WIDTH`] by its height.
#[derive(Clone, Debug, PartialEq)]
pub struct DayRibbon {
    /// How high it is.
    pub height: f64,
    /// The lanes that have something in them.
    pub lanes: Vec<Lane>,
    /// The steps.
    pub blocks: Vec<RibbonBlock>,
    /// Where the baker sleeps: left edge and width.
    pub nights: Vec<(f64, f64)>,
    /// What is written below the nights, which are drawn narrower than the days.
    pub shortened: Vec<Tick>,
    /// Hours along the foot, midnights among them.
    pub hours: Vec<Tick>,
    /// Midnights, with the day that begins.
    pub days: Vec<Tick>,
    /// Now, where it falls into the ribbon.
    pub now: Option<f64>,
}

/// Which lane a step belongs to: those of [`LANES`], then one for each later load.
fn lane(at: StepAt) -> usize {
    match at.work {
        StepKind::Scald | StepKind::CoolPaste | StepKind::ChillPaste => 0,
        StepKind::MixPreferment | StepKind::StandPreferment | StepKind::ChillPreferment => 1,
        StepKind::WarmUp
        | StepKind::Mix
        | StepKind::ButterIn
        | StepKind::Bulk
        | StepKind::Divide
        | StepKind::Round
        | StepKind::Rest
        | StepKind::Shape
        | StepKind::Tin
        | StepKind::Proof
        | StepKind::Drizzle
        | StepKind::Brush
        | StepKind::Preheat
        | StepKind::Bake
        | StepKind::Cool
        | StepKind::Own => 2,
        StepKind::Melt => 3,
        StepKind::LaterDough | StepKind::LaterProof | StepKind::Refill | StepKind::LaterBake => {
            LANES.len() + usize::from(at.of).saturating_sub(2).min(MOST_LOADS - 1)
        }
    }
}

const LANES: [&str; 4] = [
    tr_noop!("Paste"),
    tr_noop!("Preferment"),
    tr_noop!("Dough"),
    tr_noop!("Chocolate"),
];
/// The most later loads that have a lane of their own; the rest share the last.
const MOST_LOADS: usize = 8;
/// The most characters of parts' names that stand beside the line of midnight.
const LONGEST: usize = 20;
/// What a lane is called: the names of its parts, where they are short enough.
fn lane_name(lane: usize, formula: &Formula) -> String {
    let own = match lane {
        0 => name::names_of(formula, |kind| kind == PartKind::Paste),
        1 => name::names_of(formula, |kind| kind == PartKind::Preferment),
        _ => None,
    };
    if let Some(own) = own.filter(|own| own.chars().count() <= LONGEST) {
        return own;
    }
    LANES.get(lane).map_or_else(
        || {
            tr!(
                "Load {value}",
                value = (lane + 2).saturating_sub(LANES.len())
            )
        },
        |name| text(name).to_owned(),
    )
}

const TOP: f64 = 20.0;
const LANE: f64 = 38.0;
/// Room for the lane's name above its blocks.
const NAME: f64 = 14.0;
const BLOCK: f64 = 20.0;
/// From the lanes to the baseline of the hours, from there to that of the words below the nights, and from either to
/// the foot.
const HOURS: f64 = 14.0;
const SHORTENED: f64 = 17.0;
const FOOT: f64 = 5.0;
/// The least visible width.
const LEAST: f64 = 2.0;

impl DayRibbon {
    /// Width of the field.
    pub const WIDTH: f64 = WIDTH;
    /// How high a block is.
    pub const BLOCK: f64 = BLOCK;
    /// The top of the first lane.
    pub const TOP: f64 = TOP;

    /// The foot of the lanes, where the lines of midnight and now end.
    #[must_use]
    pub fn lanes_foot(&self) -> f64 {
        self.hours_y() - HOURS
    }

    /// How high the shade of a night is: down to below the hours.
    #[must_use]
    pub fn shade(&self) -> f64 {
        self.hours_y() + FOOT - TOP
    }

    /// The baseline of the hours.
    #[must_use]
    pub fn hours_y(&self) -> f64 {
        self.height - FOOT - self.below()
    }

    /// The baseline of the words below the nights.
    #[must_use]
    pub fn shortened_y(&self) -> f64 {
        self.height - FOOT
    }

    fn below(&self) -> f64 {
        if self.shortened.is_empty() {
            0.0
        } else {
            SHORTENED
        }
    }

    /// Lays out a plan with its times.
    #[must_use]
    pub fn of(results: &DayResults, formula: &Formula, now: Instant, zone: &Zone) -> Self {
        let (plan, solved) = (&results.plan, &results.solved);
        let half = Minutes::from_minutes(30.0).unwrap_or(Minutes::ZERO);
        let (from, until) = (solved.begins.earlier(half), solved.table.later(half));
        let scale = Scale::of(from, until, &results.nights);
        let used: Vec<usize> = (0..LANES.len() + MOST_LOADS)
            .filter(|lanes| plan.steps().iter().any(|step| lane(step.at) == *lanes))
            .collect();
        let rows = used.iter().enumerate();
        let lanes = rows.map(|(row, at)| Lane {
            name: lane_name(*at, formula),
            y: top(row),
        });
        let row = |at| used.iter().position(|one| *one == lane(at)).unwrap_or(0);
        let pairs = plan.steps().iter().zip(&solved.steps).enumerate();
        let blocks = pairs
            .map(|(place, (step, timed))| {
                let called = name::step(step, formula);
                block(place, timed, top(row(step.at)) + NAME, called, &scale)
            })
            .collect();
        let nights: Vec<(f64, f64)> = results
            .nights
            .iter()
            .map(|span| (scale.x(span.from), scale.x(span.until) - scale.x(span.from)))
            .filter(|(_, width)| *width > 0.0)
            .collect();
        let shortened = shortened(&nights);
        let below = if shortened.is_empty() { 0.0 } else { SHORTENED };
        Self {
            height: top(used.len()) + HOURS + below + FOOT,
            lanes: lanes.collect(),
            blocks,
            nights,
            shortened,
            hours: hours(&scale, from, until, zone),
            days: days(&scale, from, until, zone),
            now: (now > from && now < until).then(|| scale.x(now)),
        }
    }
}

fn top(row: usize) -> f64 {
    TOP + LANE * float_from_usize(row)
}

fn block(step: usize, timed: &Timed, y: f64, name: String, scale: &Scale) -> RibbonBlock {
    let x = scale.x(timed.begins);
    let width = (scale.x(timed.ends) - x).max(LEAST);
    let work = scale.x(timed.hands_until) - x;
    let work = if timed.hands_until > timed.begins {
        work.max(LEAST)
    } else {
        0.0
    };
    RibbonBlock {
        step,
        x,
        width,
        work: work.min(width),
        y,
        name,
    }
}

/// The ribbon in words: from when to when, and how much of it is work.
#[must_use]
pub fn day_ribbon(results: &DayResults, zone: &Zone, options: FormatOptions) -> String {
    let solved = &results.solved;
    let minutes = |minutes| format::minutes(minutes, options);
    tr!(
        "The work begins {first} and the bread is ready {second}, {third} later. {fourth} of that is work; the longest wait is {fifth}.",
        first = format::day_and_clock(solved.begins, zone),
        second = format::day_and_clock(results.ready_to_cut(), zone),
        third = minutes(format::between_clocks(
            solved.begins,
            results.ready_to_cut()
        )),
        fourth = minutes(results.hands),
        fifth = minutes(results.longest_wait)
    )
}
