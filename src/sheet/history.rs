//! History: undo and redo.

use std::collections::VecDeque;

use super::Sheet;

/// A sheet as it is now, as it was before, and as it was before that was undone.
#[derive(Clone, Debug, PartialEq)]
pub struct History {
    past: VecDeque<Sheet>,
    now: Sheet,
    future: Vec<Sheet>,
    /// The box being typed into, whose next change belongs to the last one.
    editing: Option<String>,
}

impl History {
    /// The most steps that can be undone; the oldest are forgotten.
    pub const MOST: usize = 100;

    /// A history that begins with `sheet`.
    #[must_use]
    pub const fn new(sheet: Sheet) -> Self {
        Self {
            past: VecDeque::new(),
            now: sheet,
            future: Vec::new(),
            editing: None,
        }
    }

    /// The sheet as it is now.
    #[must_use]
    pub const fn now(&self) -> &Sheet {
        &self.now
    }

    /// Changes the sheet. Changes in a row with the same `edit` are one step, so that undo takes
    /// back a number and not its last digit. A change to the same is none.
    pub fn change(&mut self, sheet: Sheet, edit: Option<&str>) {
        if sheet == self.now {
            return;
        }
        let goes_on = edit.is_some() && edit == self.editing.as_deref();
        let before = std::mem::replace(&mut self.now, sheet);
        if !goes_on {
            self.past.push_back(before);
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

    /// Takes back the last step. `false` when there is none.
    pub fn undo(&mut self) -> bool {
        let before = self.past.pop_back();
        self.editing = None;
        before.is_some_and(|sheet| {
            self.future.push(std::mem::replace(&mut self.now, sheet));
            true
        })
    }

    /// Takes the last step that was undone again. `false` when there is none.
    pub fn redo(&mut self) -> bool {
        let after = self.future.pop();
        self.editing = None;
        after.is_some_and(|sheet| {
            self.past.push_back(std::mem::replace(&mut self.now, sheet));
            true
        })
    }
}
