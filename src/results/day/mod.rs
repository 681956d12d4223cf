//! The day: rises, the steps with their times, the bench, and what corrects a bake that deviates.
//!
//! [`of`] is the entry of the place. The others answer for one feature of it, where its answer is
//! needed on its own or is too slow for every key: the step at the bench ([`bench_screen`],
//! [`step_weighing`], [`weighing_effect`], [`part_warmth`], [`step_corrections`]), the beginning
//! and the end of a bake ([`begin_bake`], [`finish_bake`]), oven loads and what the log has taught.

mod adjustments;
mod around;
mod bedtime;
mod before_mixing;
mod bench;
mod bench_course;
mod bench_figures;
mod bench_list;
mod bench_order;
mod bench_progress;
mod bench_step;
mod bench_summary;
mod core_found;
mod corrections;
mod critical_path;
mod day_results;
mod doing;
mod doughs;
mod first_load;
mod fresh_paste;
mod gives_way;
mod grave;
mod in_plan;
mod input;
mod kitchen_observations;
mod learning;
mod nights;
mod not_ready;
mod observations;
mod oven_loads;
mod part_warmth;
mod paste_conflicts;
mod plan_times;
mod planned_dough;
mod preferment;
mod preferment_conflicts;
mod ready_range;
mod ready_shares;
mod ready_working;
mod rise_comparison;
mod rise_correction;
mod rise_place;
mod rises;
mod solutions;
mod start_now;
mod target;
mod usual_run;
mod weighed_formula;
mod weighing;
mod weighing_effect;
mod which_rise;

pub use adjustments::{Adjustment, AdjustmentReason, adjustments};
pub use bedtime::Bedtime;
pub use before_mixing::{BeforeMixing, before_mixing};
pub use bench::{TimerState, begin_bake, finish_bake, is_untouched, last_time, timer_state};
pub use bench_course::{BenchScreen, bench_screen, timers_beside};
pub use bench_figures::bench_step;
pub use bench_list::{ListedStep, RunningStep, bench_list};
pub use bench_order::{step_count, steps_counted};
pub use bench_progress::{begin_early, put_rise, step_done, take_back, to_keep};
pub use bench_step::BenchStep;
pub use bench_summary::{SummaryFigure, SummaryRow, as_expected, bake_summary, note_findings};
pub use core_found::{Underbaked, underbaked};
pub use corrections::{
    DurationChange, ReadyTime, StartDeviation, StepCorrections, duration_changes, is_asleep,
    late_under_way, plan_snapshot, step_corrections,
};
pub use critical_path::{PathItem, critical_path};
pub use day_results::{DayResults, of, of_run};
pub use doing::{Doing, doing};
pub use doughs::Doughs;
pub use first_load::{first_load, is_later, later_than_first, load_begins};
pub use fresh_paste::{FoundWarmth, FreshPaste, found_warmth};
pub use input::DayInput;
pub use kitchen_observations::{measured_cooling, measured_steam};
pub use learning::{learnt, learnt_oven, taught_kitchen, with_learnt_friction, with_learnt_losses};
pub use not_ready::{NotReady, not_ready};
pub use observations::{
    Measurement, measurement_at, mixing_time, note_bread, note_dough, note_dough_temperature,
    note_durations, note_mixing_time, unmixed,
};
pub use oven_loads::{LoadTimes, as_the_run_bakes, bake_difference, class_loads, load_times};
pub use part_warmth::{PartWarmth, as_shown, part_warmth};
pub use paste_conflicts::{PasteConflict, PasteCure};
pub use preferment::{PrefermentRise, preferment_course, preferment_rise};
pub use preferment_conflicts::PrefermentConflict;
pub use ready_range::{ReadyItem, ReadyMargin, ReadyPath, ReadyRange, ready_range};
pub use ready_shares::{ReadyEnd, ReadyInput};
pub use rise_comparison::{
    RiseDifference, RiseFactors, RiseSpeed, rise_difference, rise_factors, rise_speed,
};
pub use rise_correction::{RiseDeviation, rise_deviation};
pub use rise_place::{RisePlace, rise_place};
pub use rises::{DoughTemperatures, ReferenceRises, RiseInput, Rises, rises};
pub use solutions::ConflictedPlan;
pub use start_now::{Moved, StartNow, start_now};
pub use target::open_target;
pub use usual_run::{evening_list, plan_list, usual_list, usual_run};
pub use weighed_formula::as_weighed;
pub use weighing::{StepWeighing, WeighedLine, WeighedPart, goes_into_a_bowl, step_weighing};
pub use weighing_effect::{
    Addition, WeighingDifference, WeighingEffect, additions, step_additions, step_weighing_effect,
    weighing_effect,
};
pub use which_rise::WhichRise;
