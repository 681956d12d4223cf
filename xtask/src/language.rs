//! `cargo xtask words`: brings the catalogues of the other languages up to the texts of the page.

mod catalogue;
mod messages;

use crate::arguments::Arguments;
use crate::house;
use anyhow::{Result, bail};
use std::collections::BTreeMap;

/// The languages beside English, by their tags; a catalogue each in `src/text/language/`.
const TAGS: [&str; 2] = ["es", "ja"];

/// What the page says before its binary can speak: that it is opening, and that it could not start.
const FIRST_WORDS: [&str; 2] = [
    "Softcrumb is opening …",
    "Softcrumb could not start here. Load the page again with a signal; if that does not help, a newer browser will. \
     What you saved is still on this device.",
];

/// Every text of the page, the first words included.
fn texts() -> Result<messages::Messages> {
    let mut all = messages::all(&house::root().join("src"))?;
    for text in FIRST_WORDS {
        all.entry(text.to_owned())
            .or_insert_with(|| "app/browser/boot.js".to_owned());
    }
    Ok(all)
}

/// The first words in each language, for the script that starts the page.
pub(crate) fn first_words(catalogues: &[(String, String)]) -> String {
    let mut words = serde_json::Map::new();
    words.insert("en".to_owned(), FIRST_WORDS.to_vec().into());
    for (tag, catalogue) in catalogues {
        let pairs: BTreeMap<&str, &str> = catalogue
            .lines()
            .filter_map(|line| line.split_once('\t'))
            .collect();
        let said: Vec<&str> = FIRST_WORDS
            .iter()
            .map(|text| pairs.get(text).copied().unwrap_or(text))
            .collect();
        words.insert(tag.clone(), said.into());
    }
    serde_json::Value::Object(words).to_string()
}

/// The verb: texts that are new come in without a translation, texts that are gone go out.
pub(crate) fn run(given: &[String]) -> Result<()> {
    Arguments::read(given, &[], &[])?;
    let messages = texts()?;
    for tag in TAGS {
        let (new, gone) = catalogue::bring_up(&catalogue::path(tag), tag, &messages)?;
        println!(
            "{tag}: {} texts, {new} of them new and to be translated, {gone} gone",
            messages.len()
        );
    }
    Ok(())
}

/// The catalogues as the page reads them, by tag: a line each, the English text, a tab, the translation.
///
/// # Errors
/// A text without its translation, or one whose places are others, is named.
pub(crate) fn catalogues() -> Result<Vec<(String, String)>> {
    let messages = texts()?;
    let mut written = Vec::new();
    let mut troubles = Vec::new();
    for tag in TAGS {
        let pairs = catalogue::read(&catalogue::path(tag))?;
        troubles.extend(
            catalogue::troubles(&messages, &pairs)
                .into_iter()
                .map(|trouble| format!("{tag}.po: {trouble}")),
        );
        written.push((tag.to_owned(), catalogue::lines(&messages, &pairs)));
    }
    if !troubles.is_empty() {
        bail!(
            "the catalogues in src/text/language/ are not whole. `cargo xtask words` brings in what is new; \
             translate it there.\n{}",
            troubles.join("\n")
        );
    }
    Ok(written)
}
