//! Undo for what is stored beside formula and kitchen: tins, pantry, class, plan, bench.

use std::sync::Arc;

use leptos::prelude::*;

use super::AppState;
use crate::sheet::History;

/// Puts an earlier or later value back.
type Restore = Arc<dyn Fn() + Send + Sync>;

/// A change of one store that can be undone.
struct Step {
    revision: u64,
    /// The key of the store.
    store: &'static str,
    undo: Restore,
    redo: Restore,
}

/// The steps that can be undone, and the undone ones that can be redone.
#[derive(Default)]
pub struct Journal {
    past: Vec<Step>,
    future: Vec<Step>,
    typing: Option<Typing>,
}

/// The box that is typed into: all its keys are one step.
struct Typing {
    id: String,
    /// The number of the step that it has made.
    step: Option<u64>,
    /// Whether a key of it is being read now.
    is_now: bool,
}

impl Journal {
    /// Most steps that can be undone; older ones are dropped.
    const MOST: usize = 100;

    /// The number of the step that undo would take; none if there is none.
    pub fn last(&self) -> Option<u64> {
        self.past.last().map(|step| step.revision)
    }

    /// The number of the step that redo would take; none if there is none.
    pub fn next(&self) -> Option<u64> {
        self.future.last().map(|step| step.revision)
    }

    /// Ends the step: the next change is a new one.
    pub fn end_step(&mut self) {
        self.typing = None;
    }

    /// Undoes or redoes a step: what is to be called for it.
    fn take(&mut self, is_undo: bool) -> Option<Restore> {
        self.typing = None;
        let (from, to) = if is_undo {
            (&mut self.past, &mut self.future)
        } else {
            (&mut self.future, &mut self.past)
        };
        let step = from.pop()?;
        let restore = Arc::clone(if is_undo { &step.undo } else { &step.redo });
        to.push(step);
        Some(restore)
    }

    /// Adds a step. One that is typed on, with nothing else changed since, stays the same step.
    fn add(&mut self, step: Step, is_next: bool) {
        self.future.clear();
        let typed = self.typing.as_mut().filter(|typing| typing.is_now);
        let own = typed.and_then(|typing| typing.step.replace(step.revision));
        let is_own =
            |last: &&mut Step| is_next && own == Some(last.revision) && last.store == step.store;
        if let Some(last) = self.past.last_mut().filter(is_own) {
            last.redo = step.redo;
            last.revision = step.revision;
            return;
        }
        if self.past.len() >= Self::MOST {
            self.past.remove(0);
        }
        self.past.push(step);
    }
}

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
