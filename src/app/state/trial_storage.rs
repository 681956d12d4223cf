//! The trial that is on, stored on the device: it outlasts a reload and the closing of its tab.
//!
//! Each tab keeps its own under its own key, so that none overwrites another. A tab holds a name
//! while it is open; a trial whose tab is closed is adopted by the next that opens the formula.

use leptos::prelude::*;

use super::{AppState, SaveError};
use crate::app::browser::presses::presses;
use crate::app::browser::{random, storage, tabs};
use crate::sheet::{Id, Trial};
use crate::storage::record::SavedTrial;
use crate::storage::{Record, key};

/// This tab, among those that are open.
#[derive(Clone)]
struct Tab {
    id: Id,
    /// The key under which its trial is stored, while there is one.
    key: StoredValue<Option<String>>,
}

impl Tab {
    /// This tab, held from when it is first asked for.
    fn from_context(state: AppState) -> Self {
        state.page_singleton(|_| {
            let id = Id::from_random(random::bits());
            tabs::hold(&held_by(id.as_text()));
            Self {
                id,
                key: StoredValue::new(None),
            }
        })
    }
}

/// The name that a tab holds.
fn held_by(tab: &str) -> String {
    format!("softcrumb.tab.{tab}")
}

impl AppState {
    /// Writes the trial's record, or removes it where the trial was saved or dropped.
    pub fn write_trial(self) {
        let tab = Tab::from_context(self);
        let id = self.open_id.get_untracked();
        let record = self
            .trial
            .with_untracked(|trial| trial.as_ref().map(|trial| SavedTrial::of(trial).write()));
        let key = record.as_ref().map(|_| key::of_trial(id.as_ref(), &tab.id));
        let old = tab.key.get_value();
        if let Some(old) = old.filter(|old| key.as_ref() != Some(old)) {
            storage::remove(&old);
        }
        if let (Some(key), Some(record)) = (&key, &record) {
            self.write_text(key, record);
        }
        tab.key.set_value(key);
    }

    /// Adopts a trial of the open formula whose tab is closed. Nothing changes while
    /// the user works: after the first press on this page, a trial waits for the next opening.
    pub fn resume_trial(self) {
        let id = self.open_id.get_untracked();
        let begins = key::of_trials(id.as_ref());
        let pressed = presses();
        for key in storage::keys() {
            let Some(tab) = key.strip_prefix(&begins) else {
                continue;
            };
            let (name, id) = (held_by(tab), id.clone());
            tabs::once_free(&name, move || {
                // Another formula may have been opened meanwhile, or another trial begun.
                let waits = self.trial.with_untracked(Option::is_none)
                    && self.open_id.get_untracked() == id
                    && presses() == pressed;
                // Another tab may have opened the trial.
                let text = storage::get(&key).ok().flatten();
                if let (true, Some(text)) = (waits, text) {
                    self.take_up(&key, &text);
                }
            });
        }
    }

    /// Resumes a trial that was left; one of a visitor's copy only where that is open.
    fn take_up(self, key: &str, text: &str) {
        match SavedTrial::read(text) {
            Ok(SavedTrial { base, tried }) => {
                let is_visit = self.open_id.with_untracked(Option::is_none);
                let is_other = is_visit && untrack(|| self.with_saved(|saved| *saved != base));
                if !is_other {
                    storage::remove(key);
                    let trial = Trial::again(base, tried, self.next_revision());
                    self.trial.set(Some(trial));
                    self.reset_inputs();
                }
            }
            Err(error) => self.report(SaveError::Record(key.to_owned(), error)),
        }
    }
}
