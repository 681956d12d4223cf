//! Undo and redo.

use std::collections::VecDeque;
use std::sync::Arc;

/// A value with the earlier values to undo to and the undone ones to redo.
///
/// Formula and kitchens have a history each. Their steps share one numbering, so that undo takes
/// the latest of both. Values are shared, so that neither a step nor a reader copies one.
#[derive(Clone, Debug, PartialEq)]
pub struct History<T> {
    past: VecDeque<Step<T>>,
    now: Arc<T>,
    future: Vec<Step<T>>,
    /// The box being typed into, whose next change belongs to the last one.
    editing: Option<String>,
}

/// The value on the other side of a step, and the number of the step.
#[derive(Clone, Debug, PartialEq)]
struct Step<T> {
    other: Arc<T>,
    revision: u64,
}

impl<T: PartialEq> History<T> {
    /// Most steps that can be undone; older ones are dropped.
    pub const MOST: usize = 100;

    /// Starts a history with `first`.
    #[must_use]
    pub fn new(first: T) -> Self {
        Self {
            past: VecDeque::new(),
            now: Arc::new(first),
            future: Vec::new(),
            editing: None,
        }
    }

    /// The current value.
    #[must_use]
    pub fn now(&self) -> &T {
        &self.now
    }

    /// The current value, shared.
    #[must_use]
    pub fn shared(&self) -> Arc<T> {
        Arc::clone(&self.now)
    }

    /// The value that the next change with this `edit` begins from: the current one, or the one
    /// before the step that it goes on with.
    #[must_use]
    pub fn entered(&self, edit: &str) -> Arc<T> {
        let goes_on = self.editing.as_deref() == Some(edit);
        match self.past.back().filter(|_| goes_on) {
            Some(step) => Arc::clone(&step.other),
            None => self.shared(),
        }
    }

    /// Changes the value, as step number `revision`. Successive changes with the same `edit` are
    /// one step, so that undo removes a number and not its last digit. An equal value is no change.
    pub fn change(&mut self, to: T, edit: Option<&str>, revision: u64) {
        if to == *self.now {
            return;
        }
        let goes_on = edit.is_some() && edit == self.editing.as_deref();
        let other = std::mem::replace(&mut self.now, Arc::new(to));
        if goes_on {
            // Typed back to where it began: no step is left.
            let began = self.past.back().map(|step| &step.other);
            if began.is_some_and(|began| *began == self.now) {
                self.past.pop_back();
                self.editing = None;
                return;
            }
        } else {
            self.past.push_back(Step { other, revision });
            if self.past.len() > Self::MOST {
                self.past.pop_front();
            }
        }
        self.future.clear();
        self.editing = edit.map(str::to_owned);
    }

    /// Ends the step: the next change is a new step, in whatever box it is typed.
    pub fn end_step(&mut self) {
        self.editing = None;
    }

    /// Whether there is something to undo.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is something to redo.
    #[must_use]
    pub const fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// The number of the step that undo would take; `None` if there is none.
    #[must_use]
    pub fn last(&self) -> Option<u64> {
        self.past.back().map(|step| step.revision)
    }

    /// The number of the step that redo would take; `None` if there is none.
    #[must_use]
    pub fn next(&self) -> Option<u64> {
        self.future.last().map(|step| step.revision)
    }

    /// Drops the undone steps, after a change elsewhere.
    pub fn forget_undone(&mut self) {
        self.future.clear();
    }

    /// Undoes the last step. `false` if there is none.
    pub fn undo(&mut self) -> bool {
        self.editing = None;
        self.past.pop_back().is_some_and(|step| {
            let forth = self.stepped(step);
            self.future.push(forth);
            true
        })
    }

    /// Redoes the last undone step. `false` if there is none.
    pub fn redo(&mut self) -> bool {
        self.editing = None;
        self.future.pop().is_some_and(|step| {
            let back = self.stepped(step);
            self.past.push_back(back);
            true
        })
    }

    /// Moves the current value across a step.
    fn stepped(&mut self, step: Step<T>) -> Step<T> {
        Step {
            other: std::mem::replace(&mut self.now, step.other),
            revision: step.revision,
        }
    }
}
