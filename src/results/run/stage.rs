//! Stages of a run: what each takes in, hands on, and how long it lasts.

use crate::engine::quantity::{Minutes, Temperature};
use crate::engine::rise::{RiseError, Risen};

/// What happens in a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum StageKind {
    /// Boiling liquid is stirred into the flour of a paste.
    Scald,
    /// A paste cools, or a preferment rests, outside the fridge.
    Stand,
    /// It is in the fridge.
    Chill,
    /// It warms in the room before it is mixed in.
    WarmUp,
    /// The dough is mixed.
    Mix,
    /// The dough rises in one piece.
    Bulk,
    /// It is divided, rounded, rested and shaped.
    Shape,
    /// The pieces rise in the tin.
    Proof,
    /// They bake.
    Bake,
    /// The bread cools.
    Cool,
}

/// A stage of a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stage {
    /// What happens.
    pub kind: StageKind,
    /// The part it happens to; `None` for the dough.
    pub part: Option<usize>,
    /// The mean temperature at its beginning.
    pub starts: Temperature,
    /// The mean temperature at its end; the core's in the oven and afterwards.
    pub ends: Temperature,
    /// How long it lasts: at the soonest, most likely, at the latest.
    pub lasts: [Minutes; 3],
    /// Whether its end was measured.
    pub is_measured: bool,
}

/// Groups the stages by what they follow: one paste, one preferment, or the dough. Within a strand
/// each stage starts at the temperature at which the one before it ends.
#[must_use]
pub fn strands(stages: &[Stage]) -> Vec<Vec<Stage>> {
    let mut strands: Vec<Vec<Stage>> = Vec::new();
    for stage in stages {
        let own = strands
            .iter_mut()
            .find(|strand| strand.first().is_some_and(|first| first.part == stage.part));
        match own {
            Some(strand) => strand.push(*stage),
            None => strands.push(vec![*stage]),
        }
    }
    strands
}

/// At the soonest, most likely, at the latest; the stated time where a rise cannot be worked out.
pub(crate) fn between(risen: &Result<Risen, RiseError>, stated: Minutes) -> [Minutes; 3] {
    match risen {
        Ok(risen) => [risen.soonest, risen.due, risen.latest.unwrap_or(risen.due)],
        Err(_) => [stated; 3],
    }
}

/// Minutes brought into their range.
pub(super) fn held(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
}
