//! Persistence: each change of the open sheet is saved, and what other tabs save is read.

use std::sync::Arc;
use std::time::Duration;

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::persisted::stored_by;
use super::{AppState, SaveError};
use crate::app::browser::storage::StorageError;
use crate::app::browser::{address, clock, storage};
use crate::app::lazy::{links, records, start_timers};
use crate::sheet::{Id, Moment, Place, Sheet};
use crate::storage::{Fragment, key};
use crate::text::name;

/// The rest after which what a visitor typed stands in the address: a reload may follow soon, and
/// browsers allow some three changes a second.
const REST: Duration = Duration::from_millis(350);

impl AppState {
    /// What follows the sheet: storage, address; and the trial's own record.
    pub fn follow(self) {
        Effect::new(move |before: Option<Option<Id>>| {
            let id = self.open_id.get();
            let saved = self.saved.get();
            let is_stored = |stored: &Option<Arc<Sheet>>| {
                stored
                    .as_ref()
                    .is_some_and(|stored| Arc::ptr_eq(stored, &saved))
            };
            // The first run sees the sheet that was just read; one that changed is stored.
            if let (Some(own), Some(before)) = (&id, before)
                && before == id
                && !self.stored.with_value(is_stored)
            {
                let (own, sheet) = (own.clone(), Arc::clone(&saved));
                self.write_later("formula", move || self.write(&own, &sheet));
            }
            self.stored.set_value(Some(saved));
            id
        });
        Effect::new(move |before: Option<(String, String, Place)>| {
            let place = self.place.get();
            let name = self.saved.with(|sheet| sheet.name.clone());
            let title = format!("{}: {}", name, name::place(place));
            let fragment = self.fragment(place);
            let (old_title, old_fragment, old_place) = before.unwrap_or_default();
            if title != old_title {
                address::title(&title);
            }
            // Browsers refuse an address that changes with every key. A tap on another place has
            // put that into the address, though, and a visitor's copy must not be lost by it.
            let is_typing = !old_fragment.is_empty() && place == old_place;
            if is_typing && self.open_id.with(Option::is_none) {
                self.address_debounce
                    .run(REST, move || self.write_address());
            } else if fragment != old_fragment || place != old_place {
                address::replace(&fragment);
            }
            (title, fragment, place)
        });
        self.follow_trial();
    }

    /// Writes the address of the open formula, which may have been saved since it was typed.
    fn write_address(self) {
        address::replace(&untrack(|| self.fragment(self.place.get())));
    }

    /// What the address says. A visitor's copy lives in it, so that it outlasts a reload.
    fn fragment(self, place: Place) -> String {
        let is_visit = self.open_id.with(Option::is_none);
        let visit = is_visit.then(|| self.with_saved(links::write)).flatten();
        if is_visit && visit.is_none() {
            self.await_links();
        }
        let fragment = match visit {
            Some(Ok(text)) => Fragment::SharedFormula(text),
            Some(Err(_)) | None => Fragment::Place(place),
        };
        fragment.write()
    }

    /// Loads what writes links, then writes the address anew.
    fn await_links(self) {
        spawn_local(async move {
            if links::load().await {
                self.write_address();
            }
        });
    }

    /// Puts the open formula's record into storage; its line in the index follows a little later.
    fn write(self, id: &Id, sheet: &Sheet) {
        let Some(record) = records::write_sheet(sheet) else {
            return;
        };
        match storage::set(&key::of_formula(id), &record) {
            Ok(()) => {
                // The storage has space again; a record of a newer release still cannot be overwritten.
                let has_room = |error: &Option<SaveError>| {
                    matches!(
                        error,
                        Some(SaveError::Storage(
                            StorageError::Full | StorageError::Blocked
                        ))
                    )
                };
                if self.save_error.with_untracked(has_room) {
                    self.save_error.set(None);
                }
                self.note_change();
            }
            Err(error) => self.report(SaveError::Storage(error)),
        }
    }

    /// Follows what other tabs store.
    pub fn follow_other_tabs(self) {
        storage::watch(move |changed| records::then(move || self.sync_changed(changed.as_deref())));
    }

    fn sync_changed(self, changed: Option<&str>) {
        match changed {
            Some(key::SHELF) | None => self.merge_shelf(),
            Some(key::SETTINGS) => self.read_settings(),
            Some(key::KITCHEN) => {
                if let Some(theirs) = self.read_kitchens() {
                    records::follow_kitchens(self, theirs);
                }
            }
            Some(key::BENCH) => start_timers(self),
            Some(other) => {
                let id = key::formula_of(other);
                if id.is_some() && id == self.open_id.get_untracked() {
                    self.take_from_other_tab(other);
                }
            }
        }
    }

    fn take_from_other_tab(self, key: &str) {
        if let Some(sheet) = self.reported(stored_by(key, records::sheet)) {
            let revision = self.next_revision();
            self.history
                .update(|history| history.change(sheet, None, revision));
            // It came from storage.
            self.unsaved.forget("formula");
            self.stored.set_value(Some(self.saved.get_untracked()));
            self.reset_inputs();
        }
    }

    /// The sheet saved under an id.
    ///
    /// # Errors
    /// The error of reading it; `None` where there is no record, or its reader is not loaded yet.
    pub(super) fn read(id: &Id) -> Result<Option<Sheet>, SaveError> {
        stored_by(&key::of_formula(id), records::sheet)
    }
}

/// The present moment.
pub(super) fn now() -> Moment {
    Moment::from_milliseconds(clock::milliseconds()).unwrap_or_default()
}
