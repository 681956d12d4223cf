//! Changes: the sheet as it stands, read and changed; back and forward.

use leptos::prelude::*;

use super::State;
use crate::engine::formula::Formula;
use crate::sheet::{History, Sheet};

impl State {
    /// Looks at the sheet as it stands: the trial where there is one, else what is kept.
    pub fn with<T>(self, look: impl FnOnce(&Sheet) -> T) -> T {
        self.trial.with(|trial| match trial {
            Some(tried) => look(tried),
            None => self.with_kept(look),
        })
    }

    /// Looks at the sheet as it is kept.
    pub fn with_kept<T>(self, look: impl FnOnce(&Sheet) -> T) -> T {
        self.history.with(|history| look(history.now()))
    }

    /// The sheet as it stands, not followed.
    pub fn sheet(self) -> Sheet {
        untrack(|| self.with(Clone::clone))
    }

    /// Puts another sheet in place of the one that stands. Changes in a row from the same box
    /// are one step back.
    pub fn put(self, sheet: Sheet, from: Option<&str>) {
        if self.trial.with_untracked(Option::is_some) {
            self.trial.set(Some(sheet));
        } else {
            self.history.update(|history| history.change(sheet, from));
        }
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

    /// Goes a step back; a trial is dropped first.
    pub fn undo(self) {
        if self.trial.with_untracked(Option::is_some) {
            self.drop_trial();
        } else {
            self.history.update(|history| {
                history.undo();
            });
            self.settle();
        }
    }

    /// Goes a step forward again.
    pub fn redo(self) {
        self.history.update(|history| {
            history.redo();
        });
        self.settle();
    }

    /// Whether there is a step to go back.
    pub fn can_undo(self) -> bool {
        self.is_trial() || self.history.with(History::can_undo)
    }

    /// Whether there is a step to go forward.
    pub fn can_redo(self) -> bool {
        !self.is_trial() && self.history.with(History::can_redo)
    }
}
