//! The desk: what is kept for tins, the pantry and the class, read when it is first asked for.

use leptos::prelude::*;

use super::{AppState, use_app_state};
use crate::app::browser::storage;
use crate::engine::class::ClassSettings;
use crate::engine::nutrition::LabelLaw;
use crate::engine::plan::Loads;
use crate::sheet::record::{
    RecordError, read_class, read_day, read_pantry, read_tins, write_class, write_day,
    write_pantry, write_tins,
};
use crate::sheet::{Pantry, SavedTin, key};

/// What is kept for tins, the pantry and the class.
#[derive(Clone, Copy)]
pub struct WorkspaceStore {
    /// The user's tins.
    pub tins: RwSignal<Vec<SavedTin>>,
    /// Packs, prices, and what packets say.
    pub pantry: RwSignal<Pantry>,
    /// What is wanted of a class.
    pub settings: RwSignal<ClassSettings>,
    /// Whose law labels go by; not kept.
    pub law: RwSignal<LabelLaw>,
    state: AppState,
}

impl WorkspaceStore {
    /// The desk of this page. What other tabs keep comes onto it too.
    pub fn here() -> Self {
        use_app_state().page_singleton(|state| {
            let desk = Self::of(state);
            storage::watch(move |changed| desk.take_in(changed.as_deref()));
            desk
        })
    }

    /// Takes in what another tab has kept under a key, or under any where none is told.
    fn take_in(self, changed: Option<&str>) {
        let told = |key: &'static str| {
            let is_told = changed.is_none_or(|changed| changed == key);
            if is_told {
                self.state.forget_changes(key);
            }
            is_told
        };
        if told(key::TINS) {
            let _taken = read(self.state, key::TINS, read_tins).map(|tins| self.tins.set(tins));
        }
        if told(key::PANTRY) {
            let found = read(self.state, key::PANTRY, read_pantry);
            let _taken = found.map(|pantry| self.pantry.set(pantry));
        }
        if told(key::CLASS) {
            let found = read(self.state, key::CLASS, read_class);
            let _taken = found.map(|settings| self.settings.set(settings));
        }
    }

    fn of(state: AppState) -> Self {
        Self {
            tins: RwSignal::new(read(state, key::TINS, read_tins).unwrap_or_default()),
            pantry: RwSignal::new(read(state, key::PANTRY, read_pantry).unwrap_or_default()),
            settings: RwSignal::new(read(state, key::CLASS, read_class).unwrap_or_default()),
            law: RwSignal::new(LabelLaw::default()),
            state,
        }
    }

    /// Changes the user's tins, and keeps them.
    pub fn set_tins(self, tins: Vec<SavedTin>) {
        let change = [self.tins.get_untracked(), tins.clone()];
        self.put_tins(tins);
        let put = |tins| Self::here().put_tins(tins);
        self.state.note_step(key::TINS, change, put);
    }

    fn put_tins(self, tins: Vec<SavedTin>) {
        self.state.keep_small(key::TINS, &write_tins(&tins));
        self.tins.set(tins);
    }

    /// Changes the pantry, and keeps it.
    pub fn set_pantry(self, change: impl FnOnce(&mut Pantry)) {
        let before = self.pantry.get_untracked();
        let mut pantry = before.clone();
        change(&mut pantry);
        self.put_pantry(pantry.clone());
        let put = |pantry| Self::here().put_pantry(pantry);
        self.state.note_step(key::PANTRY, [before, pantry], put);
    }

    fn put_pantry(self, pantry: Pantry) {
        self.state.keep_small(key::PANTRY, &write_pantry(&pantry));
        self.pantry.set(pantry);
    }

    /// Changes what is wanted of a class, and keeps it.
    pub fn set_wishes(self, settings: ClassSettings) {
        let change = [self.settings.get_untracked(), settings];
        self.put_class(settings);
        let put = |settings| Self::here().put_class(settings);
        self.state.note_step(key::CLASS, change, put);
    }

    fn put_class(self, settings: ClassSettings) {
        self.state.keep_small(key::CLASS, &write_class(&settings));
        self.settings.set(settings);
    }

    /// Puts loads of the oven into the plan of the open formula, and keeps it. `false` where there
    /// is no plan to keep, or the one that is kept cannot be opened.
    pub fn plan_loads(self, loads: Loads) -> bool {
        let Some(id) = self.state.open_id.get_untracked() else {
            return false;
        };
        let key = key::of_day(&id);
        let is_kept = matches!(storage::get(&key), Ok(Some(_)));
        let found = read(self.state, &key, read_day);
        if is_kept && found.is_none() {
            return false;
        }
        let mut settings = found.unwrap_or_default();
        settings.loads = loads;
        self.state.keep_small(&key, &write_day(&settings));
        true
    }
}

/// What stands under a key; what cannot be opened is said, and left as it is.
fn read<T>(state: AppState, key: &str, read: fn(&str) -> Result<T, RecordError>) -> Option<T> {
    let text = storage::get(key).ok().flatten()?;
    read(&text)
        .map_err(|error| state.say_unread(key, error))
        .ok()
}
