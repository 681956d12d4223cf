//! A trial: changes that are not kept until the user says so.

use std::time::Duration;

use leptos::prelude::*;

use super::AppState;
use crate::app::browser::storage;
use crate::app::lazy::records;
use crate::sheet::{Id, Sheet, Trial};
use crate::storage::key;
use crate::text::tr;

impl AppState {
    /// Whether a trial is on.
    pub fn is_trial(self) -> bool {
        self.displayed.with(|displayed| displayed.is_trial)
    }

    /// Whether what is kept was changed elsewhere since the trial began.
    pub fn is_parted(self) -> bool {
        self.trial.with(|trial| {
            let parted = |trial: &Trial| self.with_saved(|saved| trial.is_parted(saved));
            trial.as_ref().is_some_and(parted)
        })
    }

    /// Begins a trial on the sheet as it stands; one that is on goes on.
    pub fn begin_trial(self) {
        if self.trial.with_untracked(Option::is_none) {
            let trial = Trial::on(self.sheet(), self.next_revision());
            self.trial.set(Some(trial));
        }
    }

    /// Tries another sheet without keeping it.
    pub fn attempt(self, sheet: Sheet) {
        self.begin_trial();
        self.put(sheet, None);
        self.reset_inputs();
    }

    /// Drops the trial; the sheet stands as it was kept.
    pub fn drop_trial(self) {
        self.trial.set(None);
        self.reset_inputs();
    }

    /// Saves the trial; one step back undoes it.
    pub fn keep_trial(self) {
        if let Some(tried) = self.trial.get_untracked() {
            self.trial.set(None);
            self.put(tried.steps.now().clone(), None);
            self.reset_inputs();
        }
    }

    /// Has the trial's record follow it; what writes it is loaded with the first trial.
    pub(super) fn follow_trial(self) {
        Effect::new(move |was_on: Option<bool>| {
            self.open_id.track();
            let is_on = self.is_trial();
            if is_on || was_on.unwrap_or_default() {
                records::then(move || records::keep_trial(self));
            }
            is_on
        });
    }

    /// Looks for a trial of the formula that was opened, once that is drawn.
    pub(super) fn find_trial(self) {
        let look = move || {
            let begins = key::of_trials(self.open_id.get_untracked().as_ref());
            if storage::keys().iter().any(|key| key.starts_with(&begins)) {
                records::then(move || records::find_trial(self));
            }
        };
        set_timeout(look, Duration::ZERO);
    }

    /// Forgets the trials of formulas that are deleted for good.
    pub(super) fn forget_trials(gone: &[Id]) {
        let begins: Vec<String> = gone.iter().map(|id| key::of_trials(Some(id))).collect();
        let is_gone = |key: &String| begins.iter().any(|begins| key.starts_with(begins));
        for key in storage::keys().iter().filter(|key| is_gone(key)) {
            storage::remove(key);
        }
    }

    /// Saves the trial as a formula of its own, and opens that; the other stays as it is kept.
    pub fn keep_trial_apart(self) {
        let tried = self.sheet();
        self.trial.set(None);
        self.open_new(&tried.copied(&tr!("Copy of {name}", name = tried.name)));
    }
}
