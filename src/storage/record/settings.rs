//! The settings as a record.

use serde::{Deserialize, Serialize};

use crate::sheet::{Language, Settings, Theme, UnitSystem};

use super::Record;
use super::read::described;
use super::text::words;

words! {
    UnitSystem: &[(UnitSystem::Grams, "grams"), (UnitSystem::Ounces, "ounces")];
    Theme: &[
        (Theme::Device, "device"),
        (Theme::Light, "light"),
        (Theme::Dark, "dark"),
    ];
    Language: &[
        (Language::English, Language::English.tag()),
        (Language::Spanish, Language::Spanish.tag()),
        (Language::Japanese, Language::Japanese.tag()),
    ];
}

described! { Settings: SettingsRecord; }

impl Record for Settings {
    const KIND: &'static str = "settings";
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Settings", deny_unknown_fields)]
struct SettingsRecord {
    units: UnitSystem,
    theme: Theme,
    /// Left out where it is the browser's, so that a release without languages reads it too.
    #[serde(skip_serializing_if = "Option::is_none")]
    language: Option<Language>,
}
