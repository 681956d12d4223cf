//! The language of the page, changed while it is open.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::AppState;
use super::persisted::stored_by;
use crate::app::browser::live_region::announce;
use crate::app::lazy::{language, records};
use crate::sheet::{Language, Settings};
use crate::storage::key;
use crate::text::notice;

impl AppState {
    /// The stored choice of language, before the page is drawn; none where the browser decides.
    pub fn language_saved() -> Option<Language> {
        let settings = stored_by(key::SETTINGS, records::settings);
        settings.ok().flatten()?.language
    }

    /// Changes the language and stores the choice, once its texts are loaded; sets `error` where
    /// they are not.
    pub fn choose_language(self, chosen: Option<Language>, error: RwSignal<&'static str>) {
        spawn_local(async move {
            if language::load(chosen).await {
                error.set("");
                let settings = Settings {
                    language: chosen,
                    ..self.settings.get_untracked()
                };
                self.settings.set(settings);
                self.write_record(key::SETTINGS, &settings);
                self.language_revision
                    .set(self.language_revision.get_untracked().wrapping_add(1));
            } else {
                error.set(notice::language_not_loaded());
                announce(notice::language_not_loaded());
            }
        });
    }
}
