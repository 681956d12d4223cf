//! `cargo xtask catalogues`: updates the translations to the texts in the source.

mod catalogue;
mod messages;

use crate::arguments::Arguments;
use crate::paths;
use anyhow::{Result, bail};
use std::collections::BTreeMap;

/// Tags of the languages besides English; each has a catalogue, `TAG.po`.
const TAGS: [&str; 2] = ["es", "ja"];

/// Texts of the script that starts the page: that it is opening, that a link is, and that it could
/// not start.
const BOOT_TEXTS: [&str; 3] = [
    "Softcrumb is opening …",
    "Opening the formula that came with this link. It is read on this device and sent nowhere.",
    "Softcrumb could not start here. Load the page again with a signal; if that does not help, a newer browser will. \
     What you saved is still on this device.",
];

/// Every text of the page, the start script's included.
fn texts() -> Result<messages::Messages> {
    let mut all = messages::all(&paths::root().join("src"))?;
    for text in BOOT_TEXTS {
        all.entry(text.to_owned())
            .or_insert_with(|| "app/browser/boot.js".to_owned());
    }
    Ok(all)
}

/// The texts of the start script in each language, as JSON.
pub(crate) fn boot_texts(catalogues: &[(String, String)]) -> String {
    let mut texts = serde_json::Map::new();
    texts.insert("en".to_owned(), BOOT_TEXTS.to_vec().into());
    for (tag, catalogue) in catalogues {
        let pairs: BTreeMap<&str, &str> = catalogue
            .lines()
            .filter_map(|line| line.split_once('\t'))
            .collect();
        let translated: Vec<&str> = BOOT_TEXTS
            .iter()
            .map(|text| pairs.get(text).copied().unwrap_or(text))
            .collect();
        texts.insert(tag.clone(), translated.into());
    }
    serde_json::Value::Object(texts).to_string()
}

/// Runs the command: adds new texts without a translation, removes texts that are gone.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    Arguments::read(arguments, &[], &[])?;
    let messages = texts()?;
    for tag in TAGS {
        let (added, removed) = catalogue::update(&catalogue::path(tag), tag, &messages)?;
        println!(
            "{tag}: {} texts, {added} added and to be translated, {removed} removed",
            messages.len()
        );
    }
    Ok(())
}

/// The catalogues as the page reads them, by tag: a line each, the English text, a tab, the
/// translation.
///
/// # Errors
/// Names every text without a translation, and every translation with other placeholders.
pub(crate) fn catalogues() -> Result<Vec<(String, String)>> {
    let messages = texts()?;
    let mut catalogues = Vec::new();
    let mut mistakes = Vec::new();
    for tag in TAGS {
        let pairs = catalogue::read(&catalogue::path(tag))?;
        mistakes.extend(
            catalogue::mistakes(&messages, &pairs)
                .into_iter()
                .map(|mistake| format!("{tag}.po: {mistake}")),
        );
        catalogues.push((tag.to_owned(), catalogue::lines(&messages, &pairs)));
    }
    if !mistakes.is_empty() {
        bail!(
            "translations are missing or wrong in {}. `cargo xtask catalogues` adds what is new; translate it there.\n{}",
            catalogue::folder().display(),
            mistakes.join("\n")
        );
    }
    Ok(catalogues)
}
