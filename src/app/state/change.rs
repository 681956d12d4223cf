//! Changes: the sheet as it stands, read and changed.

use std::sync::Arc;

use leptos::prelude::*;

use super::AppState;
use crate::engine::formula::Formula;
use crate::sheet::{History, Sheet, Trial};

impl AppState {
    /// Looks at the sheet as it stands: the trial where there is one, else what is kept.
    pub fn with<T>(self, look: impl FnOnce(&Sheet) -> T) -> T {
        look(&self.current())
    }

    /// Looks at the sheet as it is kept.
    pub fn with_saved<T>(self, look: impl FnOnce(&Sheet) -> T) -> T {
        look(&self.saved())
    }

    /// The sheet as it stands. Handed out whole, so that what looks at it stays small.
    #[inline(never)]
    pub fn current(self) -> Arc<Sheet> {
        self.displayed
            .with(|displayed| Arc::clone(&displayed.current))
    }

    /// The sheet as it is kept.
    #[inline(never)]
    pub fn saved(self) -> Arc<Sheet> {
        self.displayed
            .with(|displayed| Arc::clone(&displayed.saved))
    }

    /// The sheet as it is kept, while a trial is on.
    pub fn saved_in_trial(self) -> Option<Arc<Sheet>> {
        self.is_trial().then(|| self.saved())
    }

    /// The sheet as it stands now, not followed.
    pub fn sheet(self) -> Sheet {
        self.current.with_untracked(|sheet| Sheet::clone(sheet))
    }

    /// Puts another sheet in place of the one that stands. Changes in a row from the same box
    /// are one step back.
    pub fn put(self, sheet: Sheet, from: Option<&str>) {
        let revision = self.next_revision();
        let is_new = self.step(|steps| {
            steps.change(sheet, from, revision);
            steps.last() == Some(revision)
        });
        if is_new {
            self.leave_kitchens();
        }
    }

    /// The number of a step that is about to be made.
    pub(super) fn next_revision(self) -> u64 {
        self.revision
            .try_update_value(|revision| {
                *revision = revision.saturating_add(1);
                *revision
            })
            .unwrap_or_default()
    }

    /// Ends the step that is being typed: what is typed next is another.
    pub fn end_step(self) {
        self.kitchens.update_untracked(History::end_step);
        self.history.update_untracked(History::end_step);
        self.trial.update_untracked(|trial| {
            if let Some(trial) = trial {
                trial.steps.end_step();
            }
        });
    }

    /// Takes a step in the trial that is on, else in what is kept. Gives what the step gives.
    pub(super) fn step(self, step: impl FnOnce(&mut History<Sheet>) -> bool) -> bool {
        if self.trial.with_untracked(Option::is_none) {
            return self.history.try_update(step).unwrap_or_default();
        }
        let stepped =
            |trial: &mut Option<Trial>| trial.as_mut().is_some_and(|trial| step(&mut trial.steps));
        self.trial.try_update(stepped).unwrap_or_default()
    }

    /// Puts another formula in place of the one that stands, typed into the box `from`.
    ///
    /// # Errors
    /// What the change says against it; then nothing is changed.
    pub fn change<E>(
        self,
        from: &str,
        change: impl FnOnce(&Formula) -> Result<Formula, E>,
    ) -> Result<(), E> {
        let mut sheet = self.sheet();
        sheet.formula = change(&sheet.formula)?;
        self.put(sheet, Some(from));
        Ok(())
    }

    /// Changes the sheet in place, as one step that no box typed.
    pub fn edit(self, change: impl FnOnce(&mut Sheet)) {
        let mut sheet = self.sheet();
        change(&mut sheet);
        self.put(sheet, None);
        self.reset_inputs();
    }

    /// Changes the sheet in place, as typed into the box `from`.
    pub fn type_in(self, from: &str, change: impl FnOnce(&mut Sheet)) {
        let mut sheet = self.sheet();
        change(&mut sheet);
        self.put(sheet, Some(from));
    }
}
