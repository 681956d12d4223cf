//! A trial: changes that are saved only when the user decides so.

use std::time::Duration;

use leptos::prelude::*;

use super::AppState;
use crate::app::browser::storage;
use crate::app::lazy::records;
use crate::sheet::{Id, Sheet, Trial};
use crate::storage::key;

impl AppState {
    /// Whether there is a trial.
    pub fn is_trial(self) -> bool {
        self.displayed.with(|displayed| displayed.is_trial)
    }

    /// Whether the saved sheet was changed in another tab since the trial began.
    pub fn has_diverged(self) -> bool {
        self.trial.with(|trial| {
            let has_diverged = |trial: &Trial| self.with_saved(|saved| trial.has_diverged(saved));
            trial.as_ref().is_some_and(has_diverged)
        })
    }

    /// Begins a trial of the current sheet; does nothing during a trial.
    pub fn begin_trial(self) {
        if self.trial.with_untracked(Option::is_none) {
            let trial = Trial::on(self.sheet(), self.next_revision());
            self.trial.set(Some(trial));
        }
    }

    /// Shows another sheet as a trial.
    pub fn attempt(self, sheet: Sheet) {
        self.begin_trial();
        self.put(sheet, None);
        self.reset_inputs();
    }

    /// Drops the trial.
    pub fn drop_trial(self) {
        self.trial.set(None);
        self.reset_inputs();
    }

    /// Saves the trial, as one undo step.
    pub fn save_trial(self) {
        if let Some(tried) = self.trial.get_untracked() {
            self.trial.set(None);
            self.put(tried.steps.now().clone(), None);
            self.reset_inputs();
        }
    }

    /// Writes the trial's record after each change; its writer is loaded with the first trial.
    pub(super) fn follow_trial(self) {
        Effect::new(move |was_on: Option<bool>| {
            self.open_id.track();
            let is_on = self.is_trial();
            if is_on || was_on.unwrap_or_default() {
                let write = move || records::then(move || records::write_trial(self));
                self.write_later("trial", write);
            }
            is_on
        });
    }

    /// Looks for a stored trial of the open formula, once that is drawn.
    pub(super) fn find_trial(self) {
        let select = move || {
            let begins = key::of_trials(self.open_id.get_untracked().as_ref());
            if storage::keys().iter().any(|key| key.starts_with(&begins)) {
                records::then(move || records::find_trial(self));
            }
        };
        set_timeout(select, Duration::ZERO);
    }

    /// Removes the stored trials of deleted formulas.
    pub(super) fn forget_trials(gone: &[Id]) {
        let begins: Vec<String> = gone.iter().map(|id| key::of_trials(Some(id))).collect();
        let is_gone = |key: &String| begins.iter().any(|begins| key.starts_with(begins));
        for key in storage::keys().iter().filter(|key| is_gone(key)) {
            storage::remove(key);
        }
    }

    /// Saves the trial as a new formula, and opens it; the old formula does not change.
    pub fn save_trial_as_copy(self) {
        let tried = self.sheet();
        self.trial.set(None);
        self.open_new(&self.copy_of(&tried));
    }
}
