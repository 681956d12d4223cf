//! What the page notes in the journal, and how it undoes and redoes it.

use std::sync::Arc;

use leptos::prelude::*;

use super::AppState;
use super::journal::{Journal, Step, Typing};
use crate::sheet::History;

impl AppState {
    /// Reads a key typed into a box.
    pub fn typed_in<T>(self, id: &str, read: impl FnOnce() -> T) -> T {
        self.journal.update_untracked(|journal| {
            let same = journal.typing.take().filter(|typing| typing.id == id);
            let step = same.and_then(|typing| typing.step);
            journal.typing = Some(Typing {
                id: id.to_owned(),
                step,
                is_now: true,
            });
        });
        let given = read();
        self.journal.update_untracked(|journal| {
            if let Some(typing) = &mut journal.typing {
                typing.is_now = false;
            }
        });
        given
    }

    /// Notes that a store was changed, as a step that can be undone. `put` stores a value there.
    pub fn note_step<T: Clone + PartialEq + Send + Sync + 'static>(
        self,
        store: &'static str,
        [before, after]: [T; 2],
        put: impl Fn(T) + Clone + Send + Sync + 'static,
    ) {
        if before == after {
            return;
        }
        let before_this = self.revision.get_value();
        let revision = self.next_revision();
        self.journal.update(|journal| {
            let is_next = journal.last() == Some(before_this);
            let step = Step {
                revision,
                store,
                undo: Arc::new({
                    let put = put.clone();
                    move || put(before.clone())
                }),
                redo: Arc::new(move || put(after.clone())),
            };
            journal.add(step, is_next);
        });
        self.leave_kitchens();
        self.step(|steps| {
            steps.end_step();
            steps.forget_undone();
            true
        });
    }

    /// Forgets the steps of a store that was changed elsewhere: they would undo that.
    pub fn forget_changes(self, store: &'static str) {
        self.journal.update(|journal| {
            journal.past.retain(|step| step.store != store);
            journal.future.retain(|step| step.store != store);
        });
    }

    /// Ends what is being typed, and forgets what was undone: formula or kitchen was changed.
    pub(super) fn leave_journal(self) {
        self.journal.update_untracked(Journal::end_step);
        if self
            .journal
            .with_untracked(|journal| journal.next().is_some())
        {
            self.journal.update(|journal| journal.future.clear());
        }
    }

    /// Undoes or redoes the last step of the journal.
    pub(super) fn step_journal(self, is_undo: bool) {
        let restore = self
            .journal
            .try_update(|journal| journal.take(is_undo))
            .flatten();
        if let Some(restore) = restore {
            restore();
        }
        self.history.update_untracked(History::end_step);
        self.reset_inputs();
    }
}
