//! The measured temperature of a paste or preferment at a step, and how long it still needs.

use super::input::DayInput;
use crate::engine::heat::HeatError;
use crate::engine::plan::StepAt;
use crate::engine::quantity::{Minutes, Temperature};
use crate::results::heat::{StillNeeds, time_to_target};

/// A measured paste or preferment.
#[derive(Clone, Debug, PartialEq)]
pub struct PartWarmth {
    /// The temperature that was measured.
    pub measured: Temperature,
    /// The temperature it needs to reach, and how long that takes.
    pub needs: Result<StillNeeds, HeatError>,
    /// How long to leave it where it is, as sentence and button say it; `None` where it can go on.
    pub wait: Option<Minutes>,
    /// How long it needs in ice water instead, where that cools it.
    pub in_ice: Option<Minutes>,
}

/// A shorter wait is none, min.
const NEGLIGIBLE: f64 = 1.0;

/// Returns a wait as it is shown and as its timer is set: rounded up to whole minutes below ten, to
/// fives below an hour, then to tens.
///
/// ```
/// use softcrumb::engine::quantity::Minutes;
/// use softcrumb::results::day::as_shown;
///
/// let shown = |minutes| Minutes::from_minutes(minutes).map(|wait| as_shown(wait).minutes());
/// assert_eq!(shown(8.2), Ok(9.0));
/// assert_eq!(shown(41.0), Ok(45.0));
/// assert_eq!(shown(62.0), Ok(70.0));
/// ```
#[must_use]
pub fn as_shown(wait: Minutes) -> Minutes {
    let exact = wait.minutes();
    let step = if exact < 10.0 {
        1.0
    } else if exact < 60.0 {
        5.0
    } else {
        10.0
    };
    Minutes::from_minutes(libm::ceil(exact / step) * step).unwrap_or(wait)
}

/// Returns how many minutes a paste or preferment that was measured at a step still needs, on the
/// bench, in ice water or in the fridge; `None` where none was measured.
#[must_use]
pub fn part_warmth(input: &DayInput, step: StepAt, part: usize) -> Option<PartWarmth> {
    let number = u16::try_from(part).ok()?;
    let measured = input.bench?.found(step, number)?.at;
    let sheet = input.sheet;
    let at = (step.work, part);
    let kitchen = input.taught_kitchen();
    // As much as is made, more of it takes longer; as cold as the run has it leave the fridge.
    let needs = time_to_target(&input.run().formula, &kitchen, &sheet.heat, at, measured);
    let waits = needs.as_ref().ok();
    let waits = waits.filter(|needs| needs.there.minutes() >= NEGLIGIBLE);
    Some(PartWarmth {
        measured,
        wait: waits.map(|needs| as_shown(needs.there)),
        in_ice: waits.and_then(|needs| needs.in_ice).map(as_shown),
        needs,
    })
}
