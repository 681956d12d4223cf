//! The run of a sheet with nothing set for the day and nothing learnt: what a visitor follows.

use super::input::DayInput;
use crate::engine::learn::Learnt;
use crate::results::run::Run;
use crate::sheet::civil::Zone;
use crate::sheet::day::DaySettings;
use crate::sheet::{Kitchen, Moment, Sheet};

/// The run of a sheet's batch in a kitchen, with the usual settings of the day.
///
/// ```
/// use softcrumb::results::day::usual_run;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let run = usual_run(&sheet, &Kitchen::default());
/// // It ends in the oven: the core of soft bread, common practice.
/// assert!(run.baking.unwrap().core.from.celsius() >= 85.0);
/// ```
#[must_use]
pub fn usual_run(sheet: &Sheet, kitchen: &Kitchen) -> Run {
    let input = DayInput {
        sheet,
        kitchen,
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now: Moment::default(),
        bench: None,
    };
    input.run()
}
