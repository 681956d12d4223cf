//! The two rises of a dough, and the steps that belong to them.

use crate::engine::plan::{StepAt, StepKind};

/// One of the two rises of a dough.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhichRise {
    /// The dough in one piece.
    Bulk,
    /// The pieces in the tin.
    Proof,
}

impl WhichRise {
    /// The rise that a step belongs to: the bulk rise from mixing on, the proof from shaping on.
    ///
    /// ```
    /// use softcrumb::engine::plan::StepKind;
    /// use softcrumb::results::day::WhichRise;
    ///
    /// assert_eq!(WhichRise::of_step(StepKind::Mix), Some(WhichRise::Bulk));
    /// assert_eq!(WhichRise::of_step(StepKind::Bake), None);
    /// ```
    #[must_use]
    pub fn of_step(kind: StepKind) -> Option<Self> {
        if matches!(kind, StepKind::Mix | StepKind::ButterIn | StepKind::Bulk) {
            Some(Self::Bulk)
        } else {
            let is_proof = matches!(kind, StepKind::Shape | StepKind::Tin | StepKind::Proof);
            is_proof.then_some(Self::Proof)
        }
    }

    /// The step of the rise itself.
    ///
    /// ```
    /// use softcrumb::engine::plan::StepKind;
    /// use softcrumb::results::day::WhichRise;
    ///
    /// assert_eq!(WhichRise::Proof.step().work, StepKind::Proof);
    /// ```
    #[must_use]
    pub const fn step(self) -> StepAt {
        let work = match self {
            Self::Bulk => StepKind::Bulk,
            Self::Proof => StepKind::Proof,
        };
        StepAt { work, of: 0 }
    }
}
