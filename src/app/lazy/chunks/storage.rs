//! Reading and writing what is not there before the first answer: links and records.

use leptos::wasm_split::wasm_split;

use super::Entry;
use crate::app::state::AppState;
use crate::sheet::{Id, Kitchens, Moment, Settings, Sheet, Shelf};
use crate::storage::link::{self, LinkError};
use crate::storage::{Record, RecordError, repair};
use crate::text::example;

/// What the chunk holds.
pub struct StorageChunk {
    pub read_link: fn(&str) -> Result<Sheet, LinkError>,
    pub write_link: fn(&Sheet) -> Result<String, LinkError>,
    pub write_sheet: fn(&Sheet) -> String,
    pub write_shelf: fn(&Shelf) -> String,
    pub read_sheet: fn(&str) -> Result<Sheet, RecordError>,
    pub read_shelf: fn(&str) -> Result<Shelf, RecordError>,
    pub read_settings: fn(&str) -> Result<Settings, RecordError>,
    pub read_kitchens: fn(&str) -> Result<Kitchens, RecordError>,
    pub repair_shelf: fn(&[(Id, String)], Moment) -> Shelf,
    pub write_trial: fn(AppState),
    pub find_trial: fn(AppState),
    pub write_kitchens: fn(AppState),
    pub follow_kitchens: fn(AppState, Kitchens),
}

#[wasm_split(records, wasm_split_path = ::leptos::wasm_split, fallible)]
pub fn storage() -> Entry<StorageChunk> {
    Ok(StorageChunk {
        // What an example calls its parts is read in the language of the page.
        read_link: |text| link::read(text).map(example::in_words),
        write_link: link::write,
        write_sheet: Sheet::write,
        write_shelf: Shelf::write,
        read_sheet: Sheet::read,
        read_shelf: Shelf::read,
        read_settings: Settings::read,
        read_kitchens: Kitchens::read,
        repair_shelf: |records, now| {
            let texts = records.iter().map(|(id, text)| (id.clone(), text.as_str()));
            repair(Shelf::default(), texts, now).shelf
        },
        write_trial: AppState::write_trial,
        find_trial: AppState::resume_trial,
        write_kitchens: AppState::write_kitchens,
        follow_kitchens: AppState::follow_kitchens,
    })
}
