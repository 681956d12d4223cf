//! Undo and redo: one sequence of steps for the formula, trials, kitchens and the workspace.

use leptos::prelude::*;

use super::AppState;
use super::journal::Journal;
use crate::app::lazy::records;
use crate::sheet::{History, Kitchens};

/// What undo or redo has changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stepped {
    /// The formula, or the trial on it.
    Formula,
    /// The kitchen.
    Kitchen,
    /// What is stored beside them: tins, pantry, class, plan, bench.
    Beside,
}

impl AppState {
    /// Undoes the last step. A trial without changes is dropped.
    pub fn undo(self) -> Stepped {
        let of_sheet = self.trial.with_untracked(|trial| match trial {
            Some(trial) => Some(trial.last()),
            None => self.history.with_untracked(History::last),
        });
        let of_kitchen = self.kitchens.with_untracked(History::last);
        let beside = self.journal.with_untracked(Journal::last);
        if beside > of_sheet.max(of_kitchen) {
            self.step_journal(true);
            return Stepped::Beside;
        }
        if of_kitchen > of_sheet {
            return self.step_kitchens(History::undo);
        }
        if !self.step(History::undo) && self.trial.with_untracked(Option::is_some) {
            self.trial.set(None);
        }
        self.reset_inputs();
        Stepped::Formula
    }

    /// Redoes the step that was undone last.
    pub fn redo(self) -> Stepped {
        let of_sheet = self.trial.with_untracked(|trial| match trial {
            Some(trial) => trial.steps.next(),
            None => self.history.with_untracked(History::next),
        });
        let of_kitchen = self.kitchens.with_untracked(History::next);
        let beside = self.journal.with_untracked(Journal::next);
        let first = [of_sheet, of_kitchen, beside].into_iter().flatten().min();
        if beside.is_some() && beside == first {
            self.step_journal(false);
            return Stepped::Beside;
        }
        if of_kitchen.is_some() && of_kitchen == first {
            return self.step_kitchens(History::redo);
        }
        self.step(History::redo);
        self.reset_inputs();
        Stepped::Formula
    }

    fn step_kitchens(self, step: fn(&mut History<Kitchens>) -> bool) -> Stepped {
        self.kitchens.update(|kitchens| {
            step(kitchens);
        });
        self.end_step();
        records::then(move || records::write_kitchens(self));
        self.reset_inputs();
        Stepped::Kitchen
    }

    /// Whether there is a step to go back.
    pub fn can_undo(self) -> bool {
        self.is_trial()
            || self.history.with(History::can_undo)
            || self.kitchens.with(History::can_undo)
            || self.journal.with(|journal| journal.last().is_some())
    }

    /// Whether there is a step to go forward.
    pub fn can_redo(self) -> bool {
        self.kitchens.with(History::can_redo)
            || self.journal.with(|journal| journal.next().is_some())
            || self.trial.with(|trial| match trial {
                Some(trial) => trial.steps.can_redo(),
                None => self.history.with(History::can_redo),
            })
    }
}
