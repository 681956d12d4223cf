//! Startup: what the page opens with, and opening another formula.

use leptos::prelude::*;

use super::journal::Journal;
use super::persisted::stored_by;
use super::persistence::now;
use super::{AppState, Drawing, SaveError, is_newer};
use crate::app::browser::{address, clock, first_touch, storage, theme};
use crate::app::lazy::{links, records};
use crate::sheet::{History, Id, Kitchens, Place, Settings, Sheet, Theme};
use crate::storage::RecordError;
use crate::storage::link::LinkError;
use crate::storage::{Fragment, key};
use crate::text::{error::ErrorText, example, language::text, notice, tr_noop};

/// Why a link is not opened while a trial is on.
const TRIAL_FIRST: &str = tr_noop!("A trial is on. Keep it or drop it, then open the link again.");

impl AppState {
    /// Reads the saved records, or creates the examples on a first visit; then navigates to the
    /// address.
    ///
    /// `first` is shown where nothing is saved and nothing can be. Where something is saved, the
    /// chunk that reads records must be loaded before.
    pub fn begin(first: (Id, Sheet)) -> Self {
        let state = Self::new(first.1.clone());
        if storage::is_untouched() {
            state.show_first(first);
        } else {
            state.read_settings();
            if let Some(kitchens) = state.read_kitchens() {
                state.kitchens.set(History::new(kitchens));
            }
            state.read_shelf();
            state.open_last();
        }
        state.navigate(&address::fragment());
        state
    }

    /// Opens the formula that was open last, else the one changed last.
    fn open_last(self) {
        let open = storage::get(key::OPEN).ok().flatten();
        let opened = open
            .and_then(|text| Id::from_text(&text))
            .is_some_and(|id| self.open_formula(&id));
        if !opened {
            self.open_any();
        }
    }

    fn read_shelf(self) {
        match storage::get(key::SHELF) {
            Ok(Some(text)) => match records::shelf(&text) {
                Some(Ok(shelf)) => self.shelf.set(shelf),
                Some(Err(error)) => self.mend_shelf(&text, error),
                None => {}
            },
            Ok(None) => self.find_lost(),
            Err(error) => self.report(SaveError::Storage(error)),
        }
        let changes_since_backup = storage::get(key::UNFILED).ok().flatten();
        self.changes_since_backup.set(
            changes_since_backup
                .and_then(|text| text.parse().ok())
                .unwrap_or_default(),
        );
    }

    /// Makes the index anew from the records. One that is damaged is put aside as it was; one of a
    /// newer release is left where it is.
    fn mend_shelf(self, text: &str, error: RecordError) {
        let key = if is_newer(&error) {
            key::SHELF.to_owned()
        } else {
            let aside = format!("{}.damaged", key::SHELF);
            self.write_text(&aside, text);
            aside
        };
        self.report(SaveError::Record(key, error));
        self.shelf.set(Self::from_records());
    }

    /// Rebuilds a lost index; creates the examples where there is no formula.
    fn find_lost(self) {
        let found = Self::from_records();
        if found.shelved().is_empty() {
            self.lay_out_examples();
        } else {
            self.shelf.set(found);
        }
    }

    /// Opens the first example. All of them are stored once the user touches the page, so that who
    /// only looks loads nothing that stores.
    fn show_first(self, first: (Id, Sheet)) {
        let (id, sheet) = first;
        self.show(sheet, Some(id));
        let store = move || {
            if !self.store_examples() {
                self.open_id.set(None);
            }
        };
        first_touch::then(move || self.write_later("examples", store));
    }

    /// Adds the examples to the shelf and opens the first, as a visitor's copy where it cannot be
    /// saved.
    fn lay_out_examples(self) {
        let is_saved = self.store_examples();
        if let Some((id, sheet)) = example::examples().into_iter().next() {
            self.show(sheet, is_saved.then_some(id));
        }
    }

    /// Stores the examples and which one is open, except what the user or another tab has stored
    /// meanwhile. Whether all could be stored.
    fn store_examples(self) -> bool {
        let is_stored = |key: &str| matches!(storage::get(key), Ok(Some(_)));
        let mut examples = example::examples();
        let first = examples.first().map(|(id, _)| id.clone());
        examples.retain(|(id, _)| !is_stored(&key::of_formula(id)));
        // The formula stored last is the one changed last, which comes first in the list.
        let mut changed = now();
        for (id, sheet) in examples.iter().rev() {
            self.store_as(id, sheet, changed);
            changed = now().after(changed);
        }
        self.write_index();
        let is_saved = self.save_error.with_untracked(Option::is_none);
        if let Some(id) = first.filter(|_| is_saved && !is_stored(key::OPEN)) {
            self.write_text(key::OPEN, id.as_text());
        }
        is_saved
    }

    /// Reads the settings; what cannot be read is left as it is, and the usual ones hold.
    pub(super) fn read_settings(self) {
        if let Some(settings) = self.reported(stored_by(key::SETTINGS, records::settings)) {
            self.settings.set(settings);
        }
        self.show_theme();
    }

    /// Reads the kitchens; what cannot be read is left as it is.
    pub(super) fn read_kitchens(self) -> Option<Kitchens> {
        self.reported(stored_by(key::KITCHEN, records::kitchens))
    }

    /// Changes the settings and stores them.
    pub fn set_settings(self, settings: Settings) {
        self.settings.set(settings);
        self.reset_inputs();
        self.show_theme();
        self.write_record(key::SETTINGS, &settings);
    }

    fn show_theme(self) {
        theme::set(match self.settings.get_untracked().theme {
            Theme::Device => None,
            Theme::Light => Some("light"),
            Theme::Dark => Some("dark"),
        });
    }

    /// Opens a saved formula. Returns `false` when it cannot be opened; the reason is then shown.
    pub fn open_formula(self, id: &Id) -> bool {
        self.write_unsaved();
        match Self::read(id) {
            Ok(Some(sheet)) => {
                self.write_text(key::OPEN, id.as_text());
                self.show(sheet, Some(id.clone()));
                true
            }
            Ok(None) => false,
            Err(error) => {
                self.report(error);
                false
            }
        }
    }

    /// Opens a copy that is not stored.
    pub fn open_copy(self, sheet: Sheet) {
        self.write_unsaved();
        self.show(sheet, None);
    }

    /// A saved formula, to compare with the open one.
    pub fn read_formula(self, id: &Id) -> Option<Sheet> {
        self.write_unsaved();
        Self::read(id).ok().flatten()
    }

    /// Opens the formula that was changed last, of those that can be opened. Without one the first
    /// sheet is left open, as a visitor's copy.
    pub(super) fn open_any(self) {
        let ids: Vec<Id> = self.shelf.with_untracked(|shelf| {
            let entries = shelf.shelved().into_iter();
            entries.map(|entry| entry.id.clone()).collect()
        });
        let _opened = ids.iter().any(|id| self.open_formula(id));
    }

    /// Whether a visitor's copy is open that could be saved. Where nothing can be saved, that is
    /// not offered.
    pub fn is_visit(self) -> bool {
        let refused = |error: &Option<SaveError>| matches!(error, Some(SaveError::Storage(_)));
        self.open_id.with(Option::is_none) && !self.save_error.with(refused)
    }

    /// Whether the open formula came by a link and begins with what to weigh, kept or not.
    pub fn begins_with_weights(self) -> bool {
        let kept = self.open_id.with(|id| {
            let key = key::of_handed(id.as_ref()?);
            storage::get(&key).ok().flatten()
        });
        kept.is_some() || self.is_visit()
    }

    /// Stores the visitor's copy as a formula of the shelf, named apart from another of its name; one
    /// that is there already is opened.
    pub fn save_visit(self) {
        let sheet = untrack(|| self.with_saved(Clone::clone));
        let stored = |id: &Id| Self::read(id).ok().flatten();
        let same = |id: &Id| stored(id).is_some_and(|stored| sheet.is_stored_as(&stored));
        let there = self.shelf.with_untracked(|shelf| {
            let ids = shelf.shelved().into_iter().map(|entry| entry.id.clone());
            ids.into_iter().find(same)
        });
        let (id, name) = match there {
            Some(id) => {
                let name = stored(&id).map_or_else(|| sheet.name.clone(), |stored| stored.name);
                (id, name)
            }
            None => {
                let apart = self.named_apart(&sheet);
                (self.shelve(&apart), apart.name)
            }
        };
        if name != sheet.name && self.trial.with_untracked(Option::is_none) {
            self.edit(|sheet| sheet.name = name);
        }
        self.write_text(key::OPEN, id.as_text());
        self.write_text(&key::of_handed(&id), "1");
        self.open_id.set(Some(id));
    }

    /// Adds a sheet to the shelf and opens it.
    pub fn open_new(self, sheet: &Sheet) {
        let id = self.shelve(sheet);
        self.open_formula(&id);
    }

    /// Replaces the open sheet by another, with a history of its own.
    fn show(self, sheet: Sheet, id: Option<Id>) {
        self.flush();
        self.trial.set(None);
        self.open_id.set(id);
        self.history.set(History::new(sheet));
        self.journal.set(Journal::default());
        self.reset_inputs();
        self.find_trial();
    }

    /// Opens a place: of a formula what fits the screen at once, the rest after the frame.
    pub fn go_to(self, place: Place) {
        let is_drawn = self.drawing.get_untracked() == Drawing::WHOLE;
        let from = self.place.get_untracked();
        if is_drawn && place == Place::Formula && from != place {
            self.drawing.set(Drawing::SCREEN);
            clock::after_frame(move || self.drawing.set(Drawing::WHOLE));
        }
        self.place.set(place);
    }

    /// Opens what the address's fragment names.
    pub fn navigate(self, fragment: &str) {
        self.link_error.set(None);
        match Fragment::read(fragment) {
            Fragment::Empty => {}
            Fragment::Place(place) => self.go_to(place),
            Fragment::SharedFormula(_) if self.trial.with_untracked(Option::is_some) => {
                self.link_error.set(Some(text(TRIAL_FIRST).to_owned()));
            }
            Fragment::SharedFormula(text) => match links::read(&text) {
                Some(Ok(sheet)) => self.show(sheet, None),
                Some(Err(error)) => self.say_of_link(&error),
                None => self.link_error.set(Some(notice::not_loaded().to_owned())),
            },
            Fragment::Unknown => self.say_of_link(&LinkError::NotALink),
        }
    }

    fn say_of_link(self, error: &LinkError) {
        let wording = error.sentence(self.options.get_untracked());
        self.link_error.set(Some(wording));
    }
}
