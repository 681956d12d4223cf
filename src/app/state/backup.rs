//! Backup: formulas and the workspace, written to a file and imported from one.

use leptos::prelude::*;

use super::persisted::stored;
use super::persistence::now;
use super::{AppState, SaveError, WorkspaceStore};
use crate::app::browser::{random, storage};
use crate::sheet::day::{DaySettings, Log};
use crate::sheet::{Added, Id, Pantry, Shelf, Standing, Workspace};
use crate::storage::Record;
use crate::storage::key::{self, Keyed};
use crate::storage::record::{FormulaFile, FormulaInFile, SavedTins};

impl AppState {
    /// The formula that is open, as the text of a file.
    pub fn file_of_one(self) -> String {
        let sheet = untrack(|| self.with_saved(Clone::clone));
        let one = FormulaInFile {
            id: self.open_id.get_untracked(),
            changed: None,
            binned: None,
            sheet,
        };
        let file = FormulaFile {
            formulas: vec![one],
            ..FormulaFile::default()
        };
        file.write()
    }

    /// All formulas, those in the bin included, and the workspace, as the text of a
    /// file. What cannot be opened is not in it.
    pub fn file_of_all(self) -> String {
        self.flush();
        let file = FormulaFile {
            formulas: self.shelf.with_untracked(filed),
            beside: self.beside(),
            refused: Vec::new(),
        };
        file.write()
    }

    /// Adds the formulas of a file to the shelf and opens the first. A formula that is there already
    /// is added as a copy. Adds to the workspace what it lacks, and returns what that was.
    pub fn import_all(self, opened: &FormulaFile) -> Added {
        let added = self.put_beside(&opened.beside);
        let mut first = None;
        let mut shelf = self.shelf.get_untracked();
        for one in &opened.formulas {
            let same = one.id.as_ref().filter(|id| {
                one.binned.is_none()
                    && shelf.standing_of(id) == Some(Standing::Shelved)
                    && Self::read(id).ok().flatten().as_ref() == Some(&one.sheet)
            });
            if let Some(same) = same {
                first = first.or_else(|| Some(same.clone()));
                continue;
            }
            let known = one.id.clone().filter(|id| shelf.standing_of(id).is_none());
            let id = known.unwrap_or_else(|| Id::from_random(random::bits()));
            if let Err(error) = storage::set(&key::of_formula(&id), &one.sheet.write()) {
                self.report(SaveError::Storage(error));
                break;
            }
            shelf.put(&id, &one.sheet, one.changed.unwrap_or_else(now));
            match one.binned {
                Some(at) => drop(shelf.bin(&id, at).then_some(())),
                None => first = first.or(Some(id)),
            }
        }
        self.shelf.set(shelf);
        self.write_index();
        match first {
            Some(id) => drop(self.open_formula(&id).then_some(())),
            // The views of plans and log read them again.
            None => self.open_id.notify(),
        }
        added
    }

    /// The workspace: tins, pantry, class, days and log.
    fn beside(self) -> Workspace {
        let ids = storage::all().into_iter().filter_map(|(key, text)| {
            let settings = DaySettings::read(&text).ok();
            Some((key::day_of(&key)?, settings?))
        });
        Workspace {
            kitchens: Some(untrack(|| self.with_kitchens(Clone::clone))),
            tins: saved::<SavedTins>().unwrap_or_default().tins,
            pantry: saved().unwrap_or_default(),
            class: saved(),
            days: ids.collect(),
            log: saved().unwrap_or_default(),
        }
    }

    /// Adds what is not here yet. What cannot be opened here is left as it is.
    fn put_beside(self, file: &Workspace) -> Added {
        let current = self.beside();
        let (joined, added) = current.clone().joined_by(file);
        let workspace = self.with_root_owner(WorkspaceStore::from_context);
        if added.kitchens > 0
            && let Some(kitchens) = joined.kitchens
        {
            self.set_kitchens(kitchens);
        }
        if joined.tins != current.tins && can_write::<SavedTins>() {
            workspace.tins.update(|saved| saved.tins = joined.tins);
        }
        if joined.pantry != current.pantry && can_write::<Pantry>() {
            workspace.pantry.update(|pantry| *pantry = joined.pantry);
        }
        if let Some(class) = joined.class.filter(|_| added.class) {
            workspace.settings.update(|settings| *settings = class);
        }
        if added.bakes > 0 && can_write::<Log>() {
            self.write_record(key::LOG, &joined.log);
        }
        let new = joined.days.iter().skip(current.days.len());
        for (id, settings) in new.filter(|_| added.days > 0) {
            self.write_record(&key::of_day(id), settings);
        }
        added
    }
}

/// The record under its own key, where it can be opened.
fn saved<T: Keyed>() -> Option<T> {
    stored(T::KEY).ok().flatten()
}

/// Whether nothing is lost by writing under its key.
fn can_write<T: Keyed>() -> bool {
    stored::<T>(T::KEY).is_ok()
}

/// Every formula of the shelf and the bin that can be opened.
fn filed(shelf: &Shelf) -> Vec<FormulaInFile> {
    let shelved = shelf.shelved().into_iter().map(|entry| (entry, None));
    let binned = shelf.binned().into_iter();
    let binned = binned.map(|(entry, since)| (entry, Some(since)));
    shelved
        .chain(binned)
        .filter_map(|(entry, binned)| {
            Some(FormulaInFile {
                id: Some(entry.id.clone()),
                changed: Some(entry.changed),
                binned,
                sheet: AppState::read(&entry.id).ok().flatten()?,
            })
        })
        .collect()
}
