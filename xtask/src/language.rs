//! `cargo xtask words`: brings the catalogues of the other languages up to the texts of the page.

mod catalogue;
mod messages;

use crate::arguments::Arguments;
use crate::house;
use anyhow::{Result, bail};

/// The languages beside English, by their tags; a catalogue each in `src/words/language/`.
const TAGS: [&str; 2] = ["es", "ja"];

/// The verb: texts that are new come in without a translation, texts that are gone go out.
pub(crate) fn run(given: &[String]) -> Result<()> {
    Arguments::read(given, &[], &[])?;
    let messages = messages::all(&house::root().join("src"))?;
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
    let messages = messages::all(&house::root().join("src"))?;
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
            "the catalogues in src/words/language/ are not whole. `cargo xtask words` brings in what is new; \
             translate it there.\n{}",
            troubles.join("\n")
        );
    }
    Ok(written)
}
