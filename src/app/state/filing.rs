//! Filing: formulas written to a file, and put onto the shelf from one.

use leptos::prelude::*;

use super::keeping::now;
use super::{Keeps, State};
use crate::app::browser::{chance, storage};
use crate::sheet::record::{Filed, Opened, write_file, write_sheet};
use crate::sheet::{Id, Shelf, key};

impl State {
    /// The formula that is open, as the text of a file.
    pub fn file_of_one(self) -> String {
        let sheet = untrack(|| self.with_kept(Clone::clone));
        let one = Filed {
            id: self.open_id.get_untracked(),
            changed: None,
            binned: None,
            sheet,
        };
        write_file(&[one], None)
    }

    /// All formulas, those in the bin included, and the kitchen, as the text of a file. What
    /// cannot be opened is not in it.
    pub fn file_of_all(self) -> String {
        self.flush();
        let all = self.shelf.with_untracked(filed);
        write_file(&all, Some(&self.kitchen.get_untracked()))
    }

    /// Puts the formulas of a file onto the shelf; the first of them is opened. A formula that is
    /// there already is put beside it, not over it.
    pub fn unfile(self, opened: &Opened) {
        let mut first = None;
        let mut shelf = self.shelf.get_untracked();
        for one in &opened.formulas {
            let known = one.id.clone().filter(|id| shelf.standing_of(id).is_none());
            let id = known.unwrap_or_else(|| Id::from_random(chance::bits()));
            if let Err(trouble) = storage::set(&key::of_formula(&id), &write_sheet(&one.sheet)) {
                self.say_unkept(Keeps::Storage(trouble));
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
        if let Some(id) = first {
            self.open_formula(&id);
        }
    }
}

/// Every formula of the shelf and the bin that can be opened.
fn filed(shelf: &Shelf) -> Vec<Filed> {
    let shelved = shelf.shelved().into_iter().map(|entry| (entry, None));
    let binned = shelf.binned().into_iter();
    let binned = binned.map(|(entry, since)| (entry, Some(since)));
    shelved
        .chain(binned)
        .filter_map(|(entry, binned)| {
            Some(Filed {
                id: Some(entry.id.clone()),
                changed: Some(entry.changed),
                binned,
                sheet: State::read(&entry.id).ok().flatten()?,
            })
        })
        .collect()
}
