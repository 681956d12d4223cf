//! Trial: a formula changed without being kept, with the formula it began from.

use super::{History, Sheet};

/// A trial: what it began from, and what was made of it since.
#[derive(Clone, Debug, PartialEq)]
pub struct Trial {
    /// The sheet as it was kept when the trial began.
    pub base: Sheet,
    /// The sheet as it is tried, with the steps to it.
    pub steps: History<Sheet>,
    /// The number of the step that began it.
    pub turn: u64,
}

impl Trial {
    /// A trial that begins with what is kept.
    #[must_use]
    pub fn on(kept: Sheet, turn: u64) -> Self {
        Self {
            steps: History::new(kept.clone()),
            base: kept,
            turn,
        }
    }

    /// A trial that was left and is taken up again; one step back is where it began.
    #[must_use]
    pub fn again(base: Sheet, tried: Sheet, turn: u64) -> Self {
        let mut trial = Self::on(base, turn);
        trial.steps.change(tried, None, turn);
        trial
    }

    /// Whether what is kept is no longer what it began from: another page has changed it.
    #[must_use]
    pub fn is_parted(&self, kept: &Sheet) -> bool {
        self.base != *kept
    }

    /// The number of the step that undo takes back: its beginning where nothing was changed yet.
    #[must_use]
    pub fn last(&self) -> u64 {
        self.steps.last().unwrap_or(self.turn)
    }
}
