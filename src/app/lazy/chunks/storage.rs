//! Reading and writing what is not there before the first answer: records, and links by themselves.

use leptos::wasm_split::wasm_split;

use super::Entry;
use crate::app::state::AppState;
use crate::sheet::{Id, Kitchens, Moment, Settings, Sheet, Shelf};
use crate::storage::link::{self, LinkError};
use crate::storage::{Record, RecordError, repair};
use crate::text::example;

/// What the chunk holds.
pub struct StorageChunk {
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

/// What the chunk of links holds.
pub struct LinkChunk {
    pub read: fn(&str) -> Result<Sheet, LinkError>,
    pub write: fn(&Sheet) -> Result<String, LinkError>,
}

#[wasm_split(links, wasm_split_path = ::leptos::wasm_split, fallible)]
pub fn links() -> Entry<LinkChunk> {
    Ok(LinkChunk {
        // What an example calls its parts is read in the language of the page.
        read: |text| link::read(text).map(example::in_words),
        write: link::write,
    })
}
