//! The settings as a record.

use crate::sheet::enum_names::spelt;
use crate::sheet::settings::{Language, Settings, Theme, Units};

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::RecordError;
use super::fields::word;

const KIND: &str = "settings";

const UNITS: &[(Units, &str)] = &[(Units::Grams, "grams"), (Units::Ounces, "ounces")];
const THEMES: &[(Theme, &str)] = &[
    (Theme::Device, "device"),
    (Theme::Light, "light"),
    (Theme::Dark, "dark"),
];

const LANGUAGES: &[(Language, &str)] = &[
    (Language::English, Language::English.tag()),
    (Language::Spanish, Language::Spanish.tag()),
    (Language::Japanese, Language::Japanese.tag()),
];

/// Writes the settings down as JSON.
#[must_use]
pub fn write_settings(settings: Settings) -> String {
    let written = begin(KIND)
        .text("units", spelt(settings.units, UNITS))
        .text("theme", spelt(settings.theme, THEMES));
    // Left out where it is the browser's, so that a release without languages reads it too.
    match settings.language {
        Some(language) => written.text("language", spelt(language, LANGUAGES)),
        None => written,
    }
    .done()
    .to_string()
}

/// Reads the settings from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_settings(text: &str) -> Result<Settings, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    let fields = fields(&tree, KIND, &["units", "theme", "language"])?;
    Ok(Settings {
        units: fields.needed("units", |tree| word(tree, UNITS))?,
        theme: fields.needed("theme", |tree| word(tree, THEMES))?,
        language: fields.maybe("language", |tree| word(tree, LANGUAGES))?,
    })
}
