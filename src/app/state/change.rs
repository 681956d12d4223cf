//! Changes: the sheet as it stands, read and changed; back and forward.

use std::sync::Arc;

use leptos::prelude::*;

use super::State;
use crate::engine::formula::Formula;
use crate::sheet::{History, Sheet};

impl State {
    /// Looks at the sheet as it stands: the trial where there is one, else what is kept.
    pub fn with<T>(self, look: impl FnOnce(&Sheet) -> T) -> T {
        look(&self.stands())
    }

    /// Looks at the sheet as it is kept.
    pub fn with_kept<T>(self, look: impl FnOnce(&Sheet) -> T) -> T {
        look(&self.kept())
    }

    /// The sheet as it stands. Handed out whole, so that what looks at it stays small.
    #[inline(never)]
    pub fn stands(self) -> Arc<Sheet> {
        self.stands.get()
    }

    /// The sheet as it is kept.
    #[inline(never)]
    pub fn kept(self) -> Arc<Sheet> {
        self.kept.get()
    }

    /// The sheet as it stands, not followed.
    pub fn sheet(self) -> Sheet {
        untrack(|| self.with(Clone::clone))
    }

    /// Puts another sheet in place of the one that stands. Changes in a row from the same box
    /// are one step back.
    pub fn put(self, sheet: Sheet, from: Option<&str>) {
        self.step(|history| {
            history.change(sheet, from);
            true
        });
    }

    /// Ends the step that is being typed: what is typed next is another.
    pub fn end_step(self) {
        self.history.update_untracked(History::settle);
    }

    /// Takes a step in the trial that is on, else in what is kept. Gives what the step gives.
    fn step(self, step: impl FnOnce(&mut History) -> bool) -> bool {
        if self.trial.with_untracked(Option::is_none) {
            return self.history.try_update(step).unwrap_or_default();
        }
        let stepped = |trial: &mut Option<History>| trial.as_mut().is_some_and(step);
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
        self.settle();
    }

    /// Changes the sheet in place, as typed into the box `from`.
    pub fn type_in(self, from: &str, change: impl FnOnce(&mut Sheet)) {
        let mut sheet = self.sheet();
        change(&mut sheet);
        self.put(sheet, Some(from));
    }

    /// Goes a step back. A trial that is back where it began is dropped.
    pub fn undo(self) {
        if !self.step(History::undo) && self.trial.with_untracked(Option::is_some) {
            self.trial.set(None);
        }
        self.settle();
    }

    /// Goes a step forward again.
    pub fn redo(self) {
        self.step(History::redo);
        self.settle();
    }

    /// Whether there is a step to go back.
    pub fn can_undo(self) -> bool {
        self.is_trial() || self.history.with(History::can_undo)
    }

    /// Whether there is a step to go forward.
    pub fn can_redo(self) -> bool {
        self.trial.with(|trial| match trial {
            Some(tried) => tried.can_redo(),
            None => self.history.with(History::can_redo),
        })
    }
}
