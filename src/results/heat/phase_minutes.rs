//! The minutes of each phase of a bake as they are shown and typed.

use crate::engine::quantity::Minutes;
use crate::results::run::Run;
use crate::sheet::{BakeLength, BakeSettings};

/// The minutes of each phase: as the run bakes them where they are worked out, as they were typed
/// where the baker's own count; to the minute.
#[must_use]
pub fn shown_phases(run: &Run, bake: &BakeSettings) -> Vec<Minutes> {
    match bake.length {
        BakeLength::Predicted => run.bake.clone(),
        BakeLength::Programme => bake.phases.iter().map(|phase| phase.minutes).collect(),
    }
}

/// Takes typed minutes of a phase: from then on the baker's own count, and the other phases keep the
/// minutes that were `shown`.
pub fn type_minutes(bake: &mut BakeSettings, shown: &[Minutes], (phase, typed): (usize, Minutes)) {
    for (own, shown) in bake.phases.iter_mut().zip(shown) {
        own.minutes = *shown;
    }
    if let Some(own) = bake.phases.get_mut(phase) {
        own.minutes = typed;
    }
    bake.length = BakeLength::Programme;
}
