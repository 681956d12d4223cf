//! The workspace: tins, the pantry and the class, read at first use.

use leptos::prelude::*;

use super::persisted::{Persisted, stored};
use super::{AppState, use_app_state};
use crate::engine::class::ClassSettings;
use crate::engine::nutrition::LabelLaw;
use crate::engine::plan::Loads;
use crate::results::batch::class_batch;
use crate::sheet::Pantry;
use crate::sheet::day::DaySettings;
use crate::storage::key;
use crate::storage::record::SavedTins;

/// The records of tins, the pantry and the class.
#[derive(Clone, Copy)]
pub struct WorkspaceStore {
    /// The user's tins.
    pub tins: Persisted<SavedTins>,
    /// Packs, prices, and what packets say.
    pub pantry: Persisted<Pantry>,
    /// The settings of the class.
    pub settings: Persisted<ClassSettings>,
    /// The labelling law; not saved.
    pub law: RwSignal<LabelLaw>,
    state: AppState,
}

impl WorkspaceStore {
    /// The store of this page.
    pub fn from_context() -> Self {
        use_app_state().page_singleton(|state| Self {
            tins: Persisted::new(state),
            pantry: Persisted::new(state),
            settings: Persisted::new(state),
            law: RwSignal::new(LabelLaw::default()),
            state,
        })
    }

    /// The settings of the class for the open formula: a loaf that nobody has set is that of its batch.
    pub fn class(self) -> ClassSettings {
        let settings = self.settings.get();
        self.state
            .with(|sheet| class_batch::with_own_loaf(sheet, settings))
    }

    /// Puts loads of the oven into the plan of the open formula, and keeps it. `false` where there
    /// is no plan to save, or the saved one cannot be opened.
    pub fn plan_loads(self, loads: Loads) -> bool {
        let Some(id) = self.state.open_id.get_untracked() else {
            return false;
        };
        let key = key::of_day(&id);
        match stored::<DaySettings>(&key) {
            Ok(found) => {
                let mut settings = found.unwrap_or_default();
                settings.loads = loads;
                self.state.write_record(&key, &settings);
                true
            }
            Err(error) => {
                self.state.report(error);
                false
            }
        }
    }
}
