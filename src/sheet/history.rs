//! History: undo and redo.

use std::collections::VecDeque;

/// Something as it is now, as it was before, and as it was before that was undone.
///
/// Formula and kitchens have a history each. Their steps are numbered in one row, so that whoever
/// holds both can take back the one that was made last.
#[derive(Clone, Debug, PartialEq)]
pub struct History<T> {
    past: VecDeque<Step<T>>,
    now: T,
    future: Vec<Step<T>>,
    /// The box being typed into, whose next change belongs to the last one.
    editing: Option<String>,
}

/// What stood on the other side of a step, and the step's number.
#[derive(Clone, Debug, PartialEq)]
struct Step<T> {
    other: T,
    turn: u64,
}

impl<T: PartialEq> History<T> {
    /// The most steps that can be undone; the oldest are forgotten.
    pub const MOST: usize = 100;

    /// A history that begins with `first`.
    #[must_use]
    pub const fn new(first: T) -> Self {
        Self {
            past: VecDeque::new(),
            now: first,
            future: Vec::new(),
            editing: None,
        }
    }

    /// How it is now.
    #[must_use]
    pub const fn now(&self) -> &T {
        &self.now
    }

    /// Changes it, as step number `turn`. Changes in a row with the same `edit` are one step, so
    /// that undo takes back a number and not its last digit. A change to the same is none.
    pub fn change(&mut self, to: T, edit: Option<&str>, turn: u64) {
        if to == self.now {
            return;
        }
        let goes_on = edit.is_some() && edit == self.editing.as_deref();
        let other = std::mem::replace(&mut self.now, to);
        if !goes_on {
            self.past.push_back(Step { other, turn });
            if self.past.len() > Self::MOST {
                self.past.pop_front();
            }
        }
        self.future.clear();
        self.editing = edit.map(str::to_owned);
    }

    /// Ends the step: the next change is one of its own, whatever box it comes from.
    pub fn settle(&mut self) {
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

    /// The number of the step that undo takes back; none where there is none.
    #[must_use]
    pub fn last(&self) -> Option<u64> {
        self.past.back().map(|step| step.turn)
    }

    /// The number of the step that redo takes again; none where there is none.
    #[must_use]
    pub fn next(&self) -> Option<u64> {
        self.future.last().map(|step| step.turn)
    }

    /// Forgets what was undone: something else was changed since.
    pub fn forget_undone(&mut self) {
        self.future.clear();
    }

    /// Takes back the last step. `false` when there is none.
    pub fn undo(&mut self) -> bool {
        self.editing = None;
        self.past.pop_back().is_some_and(|step| {
            let forth = self.stepped(step);
            self.future.push(forth);
            true
        })
    }

    /// Takes the last step that was undone again. `false` when there is none.
    pub fn redo(&mut self) -> bool {
        self.editing = None;
        self.future.pop().is_some_and(|step| {
            let back = self.stepped(step);
            self.past.push_back(back);
            true
        })
    }

    /// Goes over a step; gives it as it is seen from there.
    fn stepped(&mut self, step: Step<T>) -> Step<T> {
        Step {
            other: std::mem::replace(&mut self.now, step.other),
            turn: step.turn,
        }
    }
}
