//! Places: one folder each, and the three figures that each is about.

mod batch;
mod chocolate;
mod day;
mod formula;
mod heat;
mod visit;

pub use batch::{
    BatchContext, BatchKeys, BatchPlace, STAYS, TargetBoxes, TinBody, WeighLine, WeighingAids,
};
pub use chocolate::{ChocolateContext, ChocolateKeys, ChocolatePlace};
pub use day::{BakeNotice, Day, DayKeys, day_place, watch_timers};
pub use formula::{
    AboutFields, CardTexts, Compare, FormulaCards, FormulaKeys, FormulaPlace, FormulaRest,
    LineRows, PartShares, WaterContent, WhatIfContent, WhatIfSheet,
};
pub use heat::{HeatContext, HeatKeys, HeatPlace};

/// The id of the heading of the place that is shown.
pub const HEADING: &str = "place";
pub use visit::{
    NotYetForTin, OwnTin, StepList, VisitCards, VisitNotice, VisitSteps, WeighingHelp,
};
