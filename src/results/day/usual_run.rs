//! The run of a sheet that no bake is under way of: what paper and the class sheet show.

use super::input::DayInput;
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
pub fn usual_run(
    sheet: &Sheet,
    kitchen: &Kitchen,
    (settings, learnt): (&DaySettings, &Learnt),
) -> Run {
    let input = DayInput {
        sheet,
        kitchen,
        settings,
        learnt,
        rounded: None,
        zone: &Zone::default(),
        now: Moment::default(),
        bench: None,
    };
    input.run()
}
