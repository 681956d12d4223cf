//! The trial that is on, kept on the device: it outlasts a reload and the closing of its tab.
//!
//! Each tab keeps its own under its own key, so that none overwrites another. A tab holds a name
//! while it is open; a trial whose tab no longer does is taken up by the next that opens the formula.

use std::time::Duration;

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::{SaveError, State};
use crate::app::browser::{random, storage, tabs};
use crate::sheet::record::{read_trial, write_trial};
use crate::sheet::{Id, Trial, key};

/// This tab, among those that are open.
#[derive(Clone)]
struct Tab {
    id: Id,
    /// The key under which its trial is kept, while one is.
    key: StoredValue<Option<String>>,
}

impl Tab {
    /// This tab, held from when it is first asked for.
    fn here(state: State) -> Self {
        state.for_good(|_| {
            let id = Id::from_random(chance::bits());
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

impl State {
    /// SaveError the trial as it stands, or forgets it where it was kept for good or dropped.
    pub fn keep_trial_record(self) {
        let tab = Tab::here(self);
        let id = self.open_id.get_untracked();
        let record = self
            .trial
            .with_untracked(|trial| trial.as_ref().map(write_trial));
        let key = record.as_ref().map(|_| key::of_trial(id.as_ref(), &tab.id));
        let old = tab.key.get_value();
        if let Some(old) = old.filter(|old| key.as_ref() != Some(old)) {
            storage::remove(&old);
        }
        if let (Some(key), Some(record)) = (&key, &record) {
            self.keep_small(key, record);
        }
        tab.key.set_value(key);
    }

    /// Looks for a trial of the open formula whose tab is gone, and takes it up. A tab that is
    /// being loaded anew may still be held for a moment: it is looked for again.
    pub fn look_for_trial(self, times: u8) {
        let id = self.open_id.get_untracked();
        let begins = key::of_trials(id.as_ref());
        let keys = storage::keys().into_iter();
        let left = storage::with_text(keys.filter(|key| key.starts_with(&begins)));
        if left.is_empty() {
            return;
        }
        spawn_local(async move {
            let held = tabs::held().await;
            let is_free =
                |key: &str| !held.contains(&held_by(key.strip_prefix(&begins).unwrap_or_default()));
            let mut free = left.into_iter().filter(|(key, _)| is_free(key)).peekable();
            if free.peek().is_none() && times > 1 {
                let again = move || self.look_for_trial(times.saturating_sub(1));
                set_timeout(again, Duration::from_millis(300));
            }
            // Another formula may have been opened meanwhile, or another trial begun.
            let waits =
                || self.trial.with_untracked(Option::is_none) && self.open_id.get_untracked() == id;
            while let (true, Some((key, text))) = (waits(), free.next()) {
                self.take_up(&key, &text);
            }
        });
    }

    /// Goes on with a trial that was left. One on a visitor's copy only where that stands open.
    fn take_up(self, key: &str, text: &str) {
        match read_trial(text) {
            Ok((base, tried)) => {
                let is_visit = self.open_id.with_untracked(Option::is_none);
                let is_other = is_visit && untrack(|| self.with_kept(|kept| *kept != base));
                if !is_other {
                    storage::remove(key);
                    let trial = Trial::again(base, tried, self.next_turn());
                    self.trial.set(Some(trial));
                    self.settle();
                }
            }
            Err(error) => self.say_unkept(SaveError::Record(key.to_owned(), error)),
        }
    }
}
