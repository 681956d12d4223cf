//! Speaking: the language of the page, changed while it is open.

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
    /// The language that was chosen and kept, before there is a page; none where the browser decides.
    pub fn language_saved() -> Option<Language> {
        let settings = stored_by(key::SETTINGS, records::settings);
        settings.ok().flatten()?.language
    }

    /// Changes the language, and keeps it once its texts have come; what they do not come for is told.
    pub fn choose_language(self, chosen: Option<Language>, trouble: RwSignal<&'static str>) {
        spawn_local(async move {
            if language::load(chosen).await {
                trouble.set("");
                let settings = Settings {
                    language: chosen,
                    ..self.settings.get_untracked()
                };
                self.settings.set(settings);
                self.write_record(key::SETTINGS, &settings);
                self.language_revision
                    .set(self.language_revision.get_untracked().wrapping_add(1));
            } else {
                trouble.set(notice::language_not_loaded());
                announce(notice::language_not_loaded());
            }
        });
    }
}
