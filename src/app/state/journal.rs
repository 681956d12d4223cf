//! Undo for what is stored beside formula and kitchen: tins, pantry, class, plan, bench.

use std::sync::Arc;

/// Puts an earlier or later value back.
pub(super) type Restore = Arc<dyn Fn() + Send + Sync>;

/// A change of one store that can be undone.
pub(super) struct Step {
    /// Its number among the steps of all stores.
    pub(super) revision: u64,
    /// The key of the store.
    pub(super) store: &'static str,
    /// Puts the earlier value back.
    pub(super) undo: Restore,
    /// Puts the later value back.
    pub(super) redo: Restore,
}

/// The steps that can be undone, and the undone ones that can be redone.
#[derive(Default)]
pub struct Journal {
    pub(super) past: Vec<Step>,
    pub(super) future: Vec<Step>,
    pub(super) typing: Option<Typing>,
}

/// The box that is typed into: all its keys are one step.
pub(super) struct Typing {
    pub(super) id: String,
    /// The number of the step that it has made.
    pub(super) step: Option<u64>,
    /// Whether a key of it is being read now.
    pub(super) is_now: bool,
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
    pub(super) fn take(&mut self, is_undo: bool) -> Option<Restore> {
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

    /// Adds a step. Typing on in one box, with nothing else changed since, is one step.
    pub(super) fn add(&mut self, step: Step, is_next: bool) {
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
