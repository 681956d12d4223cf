//! The settings as a record.

use crate::sheet::settings::{Settings, Theme, Units};
use crate::sheet::spelling::spelt;

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

/// Writes the settings down as JSON.
#[must_use]
pub fn write_settings(settings: Settings) -> String {
    begin(KIND)
        .text("units", spelt(settings.units, UNITS))
        .text("theme", spelt(settings.theme, THEMES))
        .done()
        .to_string()
}

/// Reads the settings from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_settings(text: &str) -> Result<Settings, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    let fields = fields(&tree, KIND, &["units", "theme"])?;
    Ok(Settings {
        units: fields.needed("units", |tree| word(tree, UNITS))?,
        theme: fields.needed("theme", |tree| word(tree, THEMES))?,
    })
}
