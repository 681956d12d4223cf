//! The run and the steps of a sheet that no bake is under way of: what a visitor, paper and the class
//! sheet follow.

use super::bench_list::{ListedStep, bench_list};
use super::day_results::of;
use super::input::DayInput;
use crate::engine::batch::Rounded;
use crate::engine::learn::Learnt;
use crate::results::run::Run;
use crate::sheet::civil::Zone;
use crate::sheet::day::DaySettings;
use crate::sheet::{Kitchen, Moment, Sheet};

/// The run of a sheet's batch in a kitchen: by the settings of its day, and as far as the log has
/// `learnt` of this kitchen; of no bake under way.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::usual_run;
/// use softcrumb::sheet::day::DaySettings;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let run = usual_run(&sheet, &Kitchen::default(), (&DaySettings::default(), &Learnt::default()));
/// // It ends in the oven: the core of soft bread, common practice.
/// assert!(run.baking.unwrap().core.from.celsius() >= 85.0);
/// ```
#[must_use]
pub fn usual_run(sheet: &Sheet, kitchen: &Kitchen, of_day: (&DaySettings, &Learnt)) -> Run {
    usual(sheet, kitchen, (None, of_day), |input| input.run())
}

/// An evening, from whose six o'clock on a plan without times of its own is made. Common practice.
const EVENING: f64 = 18.0 * 3_600_000.0;

/// The steps of a sheet's batch in a kitchen, with the usual settings of the day, begun in the
/// evening; none where there is no plan. `rounded` is the batch as the scales show it.
///
/// ```
/// use softcrumb::results::day::usual_list;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let list = usual_list(&sheet, &Kitchen::default(), None);
/// assert!(list.len() > 10);
/// ```
#[must_use]
pub fn usual_list(sheet: &Sheet, kitchen: &Kitchen, rounded: Option<&Rounded>) -> Vec<ListedStep> {
    let of_day = (&DaySettings::default(), &Learnt::default());
    evening_list(sheet, kitchen, rounded, of_day)
}

/// As [`usual_list`], by the settings of a day without a time of its own and by what the log has
/// `learnt`: begun in the evening, whenever it is asked.
#[must_use]
pub fn evening_list(
    sheet: &Sheet,
    kitchen: &Kitchen,
    rounded: Option<&Rounded>,
    of_day: (&DaySettings, &Learnt),
) -> Vec<ListedStep> {
    usual(sheet, kitchen, (rounded, of_day), plan_list)
}

/// The steps of the bench by the plan of a day; none where there is no plan.
#[must_use]
pub fn plan_list(input: &DayInput) -> Vec<ListedStep> {
    of(input).map_or_else(|_| Vec::new(), |results| bench_list(input, &results))
}

fn usual<T>(
    sheet: &Sheet,
    kitchen: &Kitchen,
    (rounded, (settings, learnt)): (Option<&Rounded>, (&DaySettings, &Learnt)),
    ask: impl FnOnce(&DayInput) -> T,
) -> T {
    ask(&DayInput {
        sheet,
        kitchen,
        settings,
        learnt,
        rounded,
        zone: &Zone::default(),
        now: Moment::from_milliseconds(EVENING).unwrap_or_default(),
        bench: None,
    })
}
