//! The desk: what is kept for tins, the pantry and the class, read when it is first asked for.

use leptos::prelude::*;

use super::State;
use crate::app::browser::storage;
use crate::engine::class::ClassWishes;
use crate::engine::nutrition::LabelLaw;
use crate::sheet::record::{
    RecordError, read_class, read_pantry, read_tins, write_class, write_pantry, write_tins,
};
use crate::sheet::{Pantry, SavedTin, key};

/// What is kept for tins, the pantry and the class.
#[derive(Clone, Copy)]
pub struct Desk {
    /// The user's tins.
    pub tins: RwSignal<Vec<SavedTin>>,
    /// Packs, prices, and what packets say.
    pub pantry: RwSignal<Pantry>,
    /// What is wanted of a class.
    pub wishes: RwSignal<ClassWishes>,
    /// Whose law labels go by; not kept.
    pub law: RwSignal<LabelLaw>,
    state: State,
}

impl Desk {
    /// The desk of this page.
    pub fn here() -> Self {
        State::here().for_good(Self::of)
    }

    fn of(state: State) -> Self {
        Self {
            tins: RwSignal::new(read(state, key::TINS, read_tins).unwrap_or_default()),
            pantry: RwSignal::new(read(state, key::PANTRY, read_pantry).unwrap_or_default()),
            wishes: RwSignal::new(read(state, key::CLASS, read_class).unwrap_or_default()),
            law: RwSignal::new(LabelLaw::default()),
            state,
        }
    }

    /// Changes the user's tins, and keeps them.
    pub fn set_tins(self, tins: Vec<SavedTin>) {
        self.state.keep_small(key::TINS, &write_tins(&tins));
        self.tins.set(tins);
    }

    /// Changes the pantry, and keeps it.
    pub fn set_pantry(self, change: impl FnOnce(&mut Pantry)) {
        let mut pantry = self.pantry.get_untracked();
        change(&mut pantry);
        self.state.keep_small(key::PANTRY, &write_pantry(&pantry));
        self.pantry.set(pantry);
    }

    /// Changes what is wanted of a class, and keeps it.
    pub fn set_wishes(self, wishes: ClassWishes) {
        self.state.keep_small(key::CLASS, &write_class(&wishes));
        self.wishes.set(wishes);
    }
}

/// What stands under a key; what cannot be opened is said, and left as it is.
fn read<T>(state: State, key: &str, read: fn(&str) -> Result<T, RecordError>) -> Option<T> {
    let text = storage::get(key).ok().flatten()?;
    read(&text)
        .map_err(|error| state.say_unread(key, error))
        .ok()
}
