//! A trial: changes to a formula that are not saved, with the formula they began from.

use super::{History, Sheet};

/// Unsaved changes to a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Trial {
    /// The saved sheet at the beginning of the trial.
    pub base: Sheet,
    /// The changed sheet, with its undo steps.
    pub steps: History<Sheet>,
    /// The number of the step that began it.
    pub revision: u64,
}

impl Trial {
    /// Begins a trial from the saved sheet.
    #[must_use]
    pub fn on(saved: Sheet, revision: u64) -> Self {
        Self {
            steps: History::new(saved.clone()),
            base: saved,
            revision,
        }
    }

    /// Resumes a trial; undo leads back to its beginning.
    #[must_use]
    pub fn again(base: Sheet, tried: Sheet, revision: u64) -> Self {
        let mut trial = Self::on(base, revision);
        trial.steps.change(tried, None, revision);
        trial
    }

    /// Whether the saved sheet has changed since the trial began (in another tab).
    #[must_use]
    pub fn has_diverged(&self, saved: &Sheet) -> bool {
        self.base != *saved
    }

    /// The number of the step that undo would take: the trial's beginning if nothing has changed.
    #[must_use]
    pub fn last(&self) -> u64 {
        self.steps.last().unwrap_or(self.revision)
    }
}
