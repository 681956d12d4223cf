//! The plan's settings: changed, stored with their formula, and brought back by undo.

use leptos::prelude::*;

use super::bench_copy;
use super::results::{DAY, Day};
use crate::engine::formula::Form;
use crate::engine::plan::Edit;
use crate::engine::rise::{YeastActivity, yeast_activity};
use crate::sheet::Id;
use crate::sheet::day::DaySettings;
use crate::storage::key;

impl Day {
    /// Notes that the known rises are of the current dough.
    pub fn know_this_dough(self) {
        let dough = self.own_dough();
        self.change_settings(|settings| settings.rises.dough = dough);
    }

    /// What is in the current dough for its yeast and against it, where it has yeast.
    fn own_dough(self) -> Option<YeastActivity> {
        untrack(|| {
            self.state
                .with(|sheet| yeast_activity(&sheet.formula, Form::AsMade))
        })
        .ok()
    }

    /// Changes the plan settings and saves them.
    pub fn change_settings(self, change: impl FnOnce(&mut DaySettings)) {
        let before = self.settings.get_untracked();
        let mut settings = before.clone();
        change(&mut settings);
        if settings.rises.states_other_rises_than(&before.rises) {
            // The stated rise applies to this dough.
            settings.rises.dough = self.own_dough();
        }
        let id = self.formula_id();
        self.put_settings(id.as_ref(), settings.clone());
        let change = [(id.clone(), before), (id, settings)];
        let put = |(id, settings): (Option<Id>, DaySettings)| {
            Self::from_context().put_settings(id.as_ref(), settings);
        };
        self.state.note_step(DAY, change, put);
    }

    /// Stores the settings of a formula's plan, and shows them if that formula is open.
    fn put_settings(self, id: Option<&Id>, settings: DaySettings) {
        if let Some(id) = id {
            self.state.write_record(&key::of_day(id), &settings);
        } else if self.bakes_copy() {
            bench_copy::store_settings(self.state, &settings);
        }
        if self.formula_id().as_ref() == id {
            self.settings.set(settings);
        }
    }

    /// Changes a step of the plan.
    pub fn edit(self, edit: Edit) {
        self.change_settings(|settings| settings.add(edit));
    }
}
