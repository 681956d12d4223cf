//! A trial: changes that are not kept until the user says so.

use leptos::prelude::*;

use super::State;
use crate::sheet::{History, Sheet};

impl State {
    /// Whether a trial is on.
    pub fn is_trial(self) -> bool {
        self.trial.with(Option::is_some)
    }

    /// Begins a trial on the sheet as it stands; one that is on goes on.
    pub fn begin_trial(self) {
        if self.trial.with_untracked(Option::is_none) {
            self.trial.set(Some(History::new(self.sheet())));
        }
    }

    /// Tries another sheet without keeping it.
    pub fn attempt(self, sheet: Sheet) {
        self.begin_trial();
        self.put(sheet, None);
        self.settle();
    }

    /// Drops the trial; the sheet stands as it was kept.
    pub fn drop_trial(self) {
        self.trial.set(None);
        self.settle();
    }

    /// Keeps the trial; one step back undoes it.
    pub fn keep_trial(self) {
        if let Some(tried) = self.trial.get_untracked() {
            self.trial.set(None);
            self.put(tried.now().clone(), None);
            self.settle();
        }
    }
}
