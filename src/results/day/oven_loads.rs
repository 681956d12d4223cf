//! Oven loads: their times, the loads of the class, and where the class bakes for another time.

use std::num::NonZeroU32;

use super::usual_run::usual_run;
use crate::engine::class::{ClassSettings, OvenPlan, OvenSettings, oven};
use crate::engine::learn::Learnt;
use crate::engine::plan::Loads;
use crate::engine::quantity::Minutes;
use crate::results::batch::class_batch;
use crate::sheet::day::DaySettings;
use crate::sheet::{Kitchen, Sheet};

/// The times of several oven loads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadTimes {
    /// The loads.
    pub loads: Loads,
    /// From the start of one load to the start of the next.
    pub apart: Minutes,
    /// From the first load in to the last load out.
    pub in_all: Minutes,
}

/// A baking time that differs by less is the same, min.
const SAME: f64 = 1.0;

/// The times of several loads that bake for `bake` each; `None` for a single load.
///
/// ```
/// use softcrumb::engine::{plan::Loads, quantity::Minutes};
/// use softcrumb::results::day::load_times;
///
/// let loads = Loads { between: Minutes::from_minutes(10.0)?, ..Loads::of(3.try_into()?) };
/// let times = load_times(loads, Minutes::from_minutes(25.0)?);
/// // 3 × 25 min of baking and 2 × 10 min in between.
/// assert_eq!(times.map(|times| times.in_all.minutes()), Some(95.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn load_times(loads: Loads, bake: Minutes) -> Option<LoadTimes> {
    loads.are_several().then(|| LoadTimes {
        loads,
        apart: loads.apart(bake),
        in_all: loads.from_first_to_last(bake),
    })
}

/// Returns the oven loads of the class; `None` where there are no loaves, or too many loads.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::day::class_loads;
///
/// // Twelve students and the teacher make a loaf each; six go into the oven at once: 6 + 6 + 1.
/// let oven = class_loads(&ClassSettings::default());
/// assert_eq!(oven.map(|oven| oven.loads.len()), Some(3));
/// ```
#[must_use]
pub fn class_loads(class: &ClassSettings) -> Option<OvenPlan> {
    let loaves = NonZeroU32::new(class.loaves_in_all())?;
    oven(loaves, class.oven).ok()
}

/// The settings of a class whose loads bake as long as the run of its loaves says in this kitchen and
/// as the log has taught of it: the minutes of the bench card. `class` has the loaf that is baked: see
/// [`class_batch::with_own_loaf`].
///
/// ```
/// use softcrumb::engine::{class::ClassSettings, learn::Learnt};
/// use softcrumb::results::batch::class_batch;
/// use softcrumb::results::day::{as_the_run_bakes, usual_run};
/// use softcrumb::sheet::{Kitchen, day::DaySettings, examples};
///
/// let (_, mut sheet) = examples().remove(0);
/// let kitchen = Kitchen::default();
/// let (settings, learnt) = (DaySettings::default(), Learnt::default());
/// let of_day = (&settings, &learnt);
/// let class = class_batch::with_own_loaf(&sheet, ClassSettings::default());
/// let class = as_the_run_bakes(&sheet, class, &kitchen, of_day);
/// sheet.batch = class_batch::of_bench(&sheet, &class);
/// assert_eq!(class.oven.bake, usual_run(&sheet, &kitchen, of_day).bake_time());
/// ```
#[must_use]
pub fn as_the_run_bakes(
    sheet: &Sheet,
    class: ClassSettings,
    kitchen: &Kitchen,
    of_day: (&DaySettings, &Learnt),
) -> ClassSettings {
    let mut made = sheet.clone();
    made.batch = class_batch::of_bench(sheet, &class);
    ClassSettings {
        oven: OvenSettings {
            bake: usual_run(&made, kitchen, of_day).bake_time(),
            ..class.oven
        },
        ..class
    }
}

/// Returns the class's baking time and the plan's, in minutes, where they differ and the plan has
/// the class's loads.
#[must_use]
pub fn bake_difference(
    class: &ClassSettings,
    loads: Loads,
    bake: Minutes,
) -> Option<(Minutes, Minutes)> {
    let differs = (class.oven.bake.minutes() - bake.minutes()).abs() >= SAME;
    (loads.staggered && differs).then_some((class.oven.bake, bake))
}
