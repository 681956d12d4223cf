//! Library index: the index of all formulas, in step with their records and with other tabs.

use std::time::Duration;

use leptos::prelude::*;

use super::persistence::now;
use super::{AppState, SaveError};
use crate::app::browser::{random, storage};
use crate::app::lazy::records;
use crate::sheet::{Id, Moment, Sheet, Shelf};
use crate::storage::key;
use crate::text::example;

impl AppState {
    /// Notes that the open formula changed. Its line in the index is written once the typing rests.
    pub(super) fn note_change(self) {
        self.changes_since_backup
            .update_untracked(|changes| *changes = changes.saturating_add(1));
        self.index_dirty.set_value(true);
        self.index_debounce
            .run(Duration::from_secs(1), move || self.flush());
    }

    /// Writes what is due; brings the open formula's line in the index up to date, and writes the
    /// index.
    pub fn flush(self) {
        self.write_unsaved();
        let Some(id) = self.open_id.get_untracked() else {
            return;
        };
        if !self.index_dirty.get_value() {
            return;
        }
        self.index_dirty.set_value(false);
        self.changes_since_backup.notify();
        self.shelf
            .update(|shelf| untrack(|| self.with_saved(|sheet| shelf.put(&id, sheet, now()))));
        self.write_index();
    }

    /// Writes the index, merged with what other tabs have written.
    ///
    /// An index of a newer release is left as it is. Where theirs cannot be read yet, it waits.
    pub(super) fn write_index(self) {
        records::then(move || self.write_index_now());
    }

    fn write_index_now(self) {
        self.merge_shelf();
        let Some(text) = self.shelf.with_untracked(records::write_shelf) else {
            return;
        };
        let changes_since_backup = self.changes_since_backup.get_untracked().to_string();
        let saved = storage::set(key::SHELF, &text)
            .and_then(|()| storage::set(key::UNFILED, &changes_since_backup));
        if let Err(error) = saved {
            self.report(SaveError::Storage(error));
        }
    }

    /// Brings in what other tabs have written into the index.
    pub(super) fn merge_shelf(self) {
        if let Ok(Some(text)) = storage::get(key::SHELF)
            && let Some(Ok(theirs)) = records::shelf(&text)
        {
            let mine = self.shelf.get_untracked();
            let both = mine.clone().merge(theirs);
            if both != mine {
                self.shelf.set(both);
            }
        }
    }

    /// A copy of a sheet, under a name that no formula of the shelf has.
    pub fn copy_of(self, sheet: &Sheet) -> Sheet {
        self.shelf.with_untracked(|shelf| {
            let shelved = shelf.shelved();
            let taken: Vec<&str> = shelved.iter().map(|entry| entry.name.as_str()).collect();
            sheet.copied(&taken)
        })
    }

    /// A sheet under its name, or as a copy where a formula of the shelf has that name.
    pub fn named_apart(self, sheet: &Sheet) -> Sheet {
        self.shelf.with_untracked(|shelf| {
            let shelved = shelf.shelved();
            let taken: Vec<&str> = shelved.iter().map(|entry| entry.name.as_str()).collect();
            sheet.named_apart(&taken)
        })
    }

    /// Puts a sheet onto the shelf under a new id; it is not opened.
    pub fn shelve(self, sheet: &Sheet) -> Id {
        let id = Id::from_random(random::bits());
        self.shelve_as(&id, sheet, now());
        id
    }

    /// Puts a sheet onto the shelf under an id, as changed at a given moment.
    fn shelve_as(self, id: &Id, sheet: &Sheet, changed: Moment) {
        self.store_as(id, sheet, changed);
        self.write_index();
    }

    /// As [`Self::shelve_as`], without writing the index.
    pub(super) fn store_as(self, id: &Id, sheet: &Sheet, changed: Moment) {
        let (key, sheet_now) = (key::of_formula(id), sheet.clone());
        records::then(move || {
            let Some(text) = records::write_sheet(&sheet_now) else {
                return;
            };
            if let Err(error) = storage::set(&key, &text) {
                self.report(SaveError::Storage(error));
            }
        });
        self.shelf.update(|shelf| shelf.put(id, sheet, changed));
    }

    /// Moves a formula to the bin. In place of the open one, the one that was changed last is
    /// opened; a new one where there is no other.
    pub fn bin(self, id: &Id) {
        self.write_unsaved();
        self.shelf.update(|shelf| {
            shelf.bin(id, now());
        });
        self.write_index();
        if self.open_id.get_untracked().as_ref() == Some(id) {
            self.open_id.set(None);
            self.trial.set(None);
            self.open_any();
            if self.open_id.with_untracked(Option::is_none) {
                self.open_new(&example::in_words(self.sheet().emptied()));
            }
        }
    }

    /// Restores a deleted formula.
    pub fn restore(self, id: &Id) {
        self.shelf.update(|shelf| {
            shelf.restore(id, now());
        });
        self.write_index();
    }

    /// Deletes all formulas in the bin for good.
    pub fn empty_bin(self) {
        let mut gone = Vec::new();
        self.shelf.update(|shelf| gone = shelf.empty_bin(now()));
        Self::forget_trials(&gone);
        for id in gone {
            storage::remove(&key::of_formula(&id));
        }
        self.write_index();
    }

    /// An index of the records found.
    pub(super) fn from_records() -> Shelf {
        let records: Vec<(Id, String)> = storage::all()
            .into_iter()
            .filter_map(|(key, text)| Some((key::formula_of(&key)?, text)))
            .collect();
        records::repair(&records, now()).unwrap_or_default()
    }

    /// Notes that everything has been saved to a file.
    pub fn note_filed(self) {
        self.changes_since_backup.set(0);
        self.write_index();
    }
}
