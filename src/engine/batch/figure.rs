//! Figures of a batch, each with the steps that lead to it.

use super::scale::Scaled;
use crate::engine::working::WorkingLine;

/// A figure of a batch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum BatchFigure {
    /// How many times the formula.
    Factor,
    /// Dough in the mixer.
    Mixed,
    /// One piece before baking.
    Each,
    /// All pieces baked.
    Baked,
    /// One piece baked.
    BakedEach,
}

impl BatchFigure {
    /// Every figure.
    pub const ALL: [Self; 5] = [
        Self::Factor,
        Self::Mixed,
        Self::Each,
        Self::Baked,
        Self::BakedEach,
    ];

    /// What the step that gives it calls it.
    const fn of(self) -> &'static str {
        match self {
            Self::Factor => "factor",
            Self::Mixed => "dough mixed",
            Self::Each => "each",
            Self::Baked => "baked",
            Self::BakedEach => "one piece baked",
        }
    }
}

impl Scaled {
    /// The steps up to one figure; where it was asked for, the step it is first used in.
    #[must_use]
    pub fn working_of(&self, figure: BatchFigure) -> Vec<WorkingLine> {
        let mut lines = self.working();
        let results_in = |line: &WorkingLine| line.result.of == figure.of();
        let uses = |line: &WorkingLine| line.with.iter().any(|given| given.of == figure.of());
        let last = lines
            .iter()
            .position(results_in)
            .or_else(|| lines.iter().position(uses));
        if let Some(last) = last {
            lines.truncate(last + 1);
        }
        lines
    }
}
