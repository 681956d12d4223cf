//! Kitchens: changed and saved at once, trial or not.

use leptos::prelude::*;

use super::AppState;
use crate::app::lazy::records;
use crate::sheet::{History, Kitchen, Kitchens};
use crate::storage::{Record, key};

impl AppState {
    /// Reads all kitchens.
    pub fn with_kitchens<T>(self, read: impl FnOnce(&Kitchens) -> T) -> T {
        self.kitchens.with(|kitchens| read(kitchens.now()))
    }

    /// Changes the kitchen here and keeps it, as one step.
    pub fn set_kitchen(self, kitchen: Kitchen) {
        self.put_kitchen(kitchen, None);
    }

    /// Changes the kitchen here and keeps it, as typed into the box `from`.
    pub fn type_kitchen(self, from: &str, kitchen: Kitchen) {
        self.put_kitchen(kitchen, Some(from));
    }

    fn put_kitchen(self, kitchen: Kitchen, from: Option<&str>) {
        let mut kitchens = untrack(|| self.with_kitchens(Clone::clone));
        *kitchens.current_mut() = kitchen;
        self.put_kitchens(kitchens, from);
    }

    /// Changes the kitchens, or which of them is here, and keeps them, as one step.
    pub fn set_kitchens(self, kitchens: Kitchens) {
        self.put_kitchens(kitchens, None);
    }

    fn put_kitchens(self, kitchens: Kitchens, from: Option<&str>) {
        let revision = self.next_revision();
        let changed = |steps: &mut History<Kitchens>| {
            steps.change(kitchens, from, revision);
            steps.last() == Some(revision)
        };
        if self.kitchens.try_update(changed).unwrap_or_default() {
            self.leave_journal();
            self.step(|steps| {
                steps.end_step();
                steps.forget_undone();
                true
            });
        }
        self.write_later(key::KITCHEN, move || records::write_kitchens(self));
    }

    /// Ends what is being typed in the kitchen, and what was undone there: the formula was changed.
    pub(super) fn leave_kitchens(self) {
        if self
            .kitchens
            .with_untracked(|kitchens| kitchens.next().is_some())
        {
            self.kitchens.update(History::forget_undone);
        }
        self.kitchens.update_untracked(History::end_step);
    }

    /// Writes the record of the kitchens.
    pub fn write_kitchens(self) {
        let record = untrack(|| self.with_kitchens(Record::write));
        self.write_text(key::KITCHEN, &record);
    }

    /// Reads the kitchens that another tab has saved.
    pub fn follow_kitchens(self, theirs: Kitchens) {
        let revision = self.next_revision();
        self.kitchens
            .update(|steps| steps.change(theirs, None, revision));
    }
}
