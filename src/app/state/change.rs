//! Reading and changing the current sheet.

use std::sync::Arc;

use leptos::prelude::*;

use super::AppState;
use super::journal::Journal;
use crate::engine::formula::Formula;
use crate::sheet::{History, Sheet, Trial};

impl AppState {
    /// Reads the current sheet: that of the trial, if there is one, else the saved one.
    pub fn with<T>(self, read: impl FnOnce(&Sheet) -> T) -> T {
        read(&self.current())
    }

    /// Reads the saved sheet.
    pub fn with_saved<T>(self, read: impl FnOnce(&Sheet) -> T) -> T {
        read(&self.saved())
    }

    /// The current sheet. Not inlined, so that the many readers stay small.
    #[inline(never)]
    pub fn current(self) -> Arc<Sheet> {
        self.displayed
            .with(|displayed| Arc::clone(&displayed.current))
    }

    /// The saved sheet.
    #[inline(never)]
    pub fn saved(self) -> Arc<Sheet> {
        self.displayed
            .with(|displayed| Arc::clone(&displayed.saved))
    }

    /// The saved sheet during a trial.
    pub fn saved_in_trial(self) -> Option<Arc<Sheet>> {
        self.is_trial().then(|| self.saved())
    }

    /// A copy of the current sheet, not followed.
    pub fn sheet(self) -> Sheet {
        self.current.with_untracked(|sheet| Sheet::clone(sheet))
    }

    /// Replaces the current sheet. Successive changes from the same box
    /// are one undo step.
    pub fn put(self, sheet: Sheet, from: Option<&str>) {
        let revision = self.next_revision();
        let is_new = self.step(|steps| {
            steps.change(sheet, from, revision);
            steps.last() == Some(revision)
        });
        if is_new {
            self.leave_kitchens();
            self.leave_journal();
        }
    }

    /// The number of the next step.
    pub(super) fn next_revision(self) -> u64 {
        self.revision
            .try_update_value(|revision| {
                *revision = revision.saturating_add(1);
                *revision
            })
            .unwrap_or_default()
    }

    /// Ends the current step: the next change is a new one.
    pub fn end_step(self) {
        self.kitchens.update_untracked(History::end_step);
        self.history.update_untracked(History::end_step);
        self.journal.update_untracked(Journal::end_step);
        self.trial.update_untracked(|trial| {
            if let Some(trial) = trial {
                trial.steps.end_step();
            }
        });
    }

    /// Runs `step` on the history of the trial, if there is one, else of the saved sheet.
    pub(super) fn step(self, step: impl FnOnce(&mut History<Sheet>) -> bool) -> bool {
        if self.trial.with_untracked(Option::is_none) {
            return self.history.try_update(step).unwrap_or_default();
        }
        let stepped =
            |trial: &mut Option<Trial>| trial.as_mut().is_some_and(|trial| step(&mut trial.steps));
        self.trial.try_update(stepped).unwrap_or_default()
    }

    /// Replaces the current formula, as typed into the box `from`. `change` is given the formula as
    /// it was when the box was entered.
    ///
    /// # Errors
    /// The error of `change`; then the formula is as it was when the box was entered.
    pub fn change<E>(
        self,
        from: &str,
        change: impl FnOnce(&Formula) -> Result<Formula, E>,
    ) -> Result<(), E> {
        let entered = self.entered(from);
        let changed = change(&entered.formula);
        let (sheet, stored) = match changed {
            Ok(formula) => (entered.with_formula(formula), Ok(())),
            // What cannot be had leaves nothing of the keys before it.
            Err(error) => (Sheet::clone(&entered), Err(error)),
        };
        self.put(sheet, Some(from));
        stored
    }

    /// Changes the current sheet, as one step that belongs to no box.
    pub fn edit(self, change: impl FnOnce(&mut Sheet)) {
        let mut sheet = self.sheet();
        change(&mut sheet);
        self.put(sheet, None);
        self.reset_inputs();
    }

    /// Changes the current sheet, as typed into the box `from`.
    pub fn type_in(self, from: &str, change: impl FnOnce(&mut Sheet)) {
        let mut sheet = Sheet::clone(&self.entered(from));
        change(&mut sheet);
        self.put(sheet, Some(from));
    }

    /// The current sheet as it was when the box `from` was entered: each key is applied to that.
    pub fn entered(self, from: &str) -> Arc<Sheet> {
        let of_trial =
            |trial: &Option<Trial>| trial.as_ref().map(|trial| trial.steps.entered(from));
        let tried = self.trial.with_untracked(of_trial);
        tried.unwrap_or_else(|| self.history.with_untracked(|history| history.entered(from)))
    }
}
