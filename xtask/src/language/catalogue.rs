//! A catalogue: the translations into one language, as a gettext file (`.po`).

use super::messages::Messages;
use crate::paths;
use anyhow::{Context, Result};
use polib::catalog::Catalog;
use polib::message::Message;
use polib::metadata::CatalogMetadata;
use polib::po_file;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

/// English texts and their translations.
type Pairs = BTreeMap<String, String>;

/// The folder of the catalogues.
pub(crate) fn folder() -> PathBuf {
    paths::root().join("src/text/language")
}

/// The file of a language's catalogue.
pub(crate) fn path(tag: &str) -> PathBuf {
    folder().join(format!("{tag}.po"))
}

/// Reads a catalogue; leaves out texts without a translation.
pub(crate) fn read(path: &Path) -> Result<Pairs> {
    let catalog = po_file::parse(path)
        .with_context(|| format!("{} cannot be read as a catalogue", path.display()))?;
    let mut pairs = Pairs::new();
    for message in catalog.messages().filter(|message| message.is_translated()) {
        pairs.insert(message.msgid().to_owned(), message.msgstr()?.to_owned());
    }
    Ok(pairs)
}

/// Rewrites the catalogue with exactly these texts; returns how many were added and removed.
pub(crate) fn update(path: &Path, tag: &str, messages: &Messages) -> Result<(usize, usize)> {
    let known = if path.exists() {
        read(path)?
    } else {
        Pairs::new()
    };
    let mut metadata = CatalogMetadata::new();
    metadata.project_id_version = "Softcrumb".to_owned();
    metadata.mime_version = "1.0".to_owned();
    metadata.content_type = "text/plain; charset=UTF-8".to_owned();
    metadata.content_transfer_encoding = "8bit".to_owned();
    metadata.language = tag.to_owned();
    let mut catalog = Catalog::new(metadata);
    for (text, file) in by_file(messages) {
        let mut message = Message::build_singular();
        message
            .with_source(file.to_owned())
            .with_msgid(text.to_owned())
            .with_msgstr(known.get(text).cloned().unwrap_or_default());
        catalog.append_or_update(message.done());
    }
    po_file::write_to_file(&catalog, path)
        .with_context(|| format!("{} cannot be written", path.display()))?;
    let is_new = |text: &&String| !known.contains_key(*text);
    Ok((
        messages.keys().filter(is_new).count(),
        known
            .keys()
            .filter(|text| !messages.contains_key(*text))
            .count(),
    ))
}

/// The texts sorted by file, so that a translator sees related texts together.
fn by_file(messages: &Messages) -> Vec<(&str, &str)> {
    let mut texts: Vec<(&str, &str)> = messages
        .iter()
        .map(|(text, file)| (text.as_str(), file.as_str()))
        .collect();
    texts.sort_by_key(|(text, file)| (*file, *text));
    texts
}

/// Texts without a translation, and translations with other placeholders.
pub(crate) fn mistakes(messages: &Messages, pairs: &Pairs) -> Vec<String> {
    let mut mistakes = Vec::new();
    for (text, file) in messages {
        match pairs.get(text) {
            None => mistakes.push(format!("not translated: {text:?} ({file})")),
            Some(translation) if placeholders(text) != placeholders(translation) => {
                mistakes.push(format!(
                    "other placeholders than in English: {text:?} ({file}) became {translation:?}"
                ));
            }
            Some(translation)
                if translation.contains(['\t', '\n']) || text.contains(['\t', '\n']) =>
            {
                mistakes.push(format!("a line break or a tab: {text:?} ({file})"));
            }
            Some(_) => {}
        }
    }
    mistakes
}

/// The placeholders of a text: the names in braces.
fn placeholders(text: &str) -> BTreeSet<&str> {
    let rests = text.split('{').skip(1);
    rests
        .filter_map(|rest| rest.split_once('}'))
        .map(|(name, _)| name)
        .collect()
}

/// The catalogue as the page reads it.
pub(crate) fn lines(messages: &Messages, pairs: &Pairs) -> String {
    let mut lines = String::new();
    for (text, translation) in pairs
        .iter()
        .filter(|(text, _)| messages.contains_key(*text))
    {
        // Writing into a string never fails.
        let _written = writeln!(lines, "{text}\t{translation}");
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::{Messages, Pairs, lines, mistakes, read, update};

    fn messages(texts: &[&str]) -> Messages {
        let with_file = |text: &&str| ((*text).to_owned(), "text/a.rs".to_owned());
        texts.iter().map(with_file).collect()
    }

    fn pairs(pairs: &[(&str, &str)]) -> Pairs {
        let owned = |(text, other): &(&str, &str)| ((*text).to_owned(), (*other).to_owned());
        pairs.iter().map(owned).collect()
    }

    #[test]
    fn a_text_without_a_translation_or_with_other_placeholders_is_named() {
        let all = messages(&["Flour", "{hot} of {part}", "{one} and {two}"]);
        let good = pairs(&[
            ("Flour", "Harina"),
            ("{hot} of {part}", "{part}: {hot}"),
            ("{one} and {two}", "{two} y {one}"),
        ]);
        assert_eq!(mistakes(&all, &good), Vec::<String>::new());
        let bad = pairs(&[
            ("{hot} of {part}", "{hot}"),
            ("{one} and {two}", "{two} y {one}"),
        ]);
        let found = mistakes(&all, &bad);
        assert_eq!(found.len(), 2);
        assert!(found.iter().any(|mistake| mistake.contains("Flour")));
        assert!(found.iter().any(|mistake| mistake.contains("{hot}")));
    }

    #[test]
    fn a_catalogue_is_written_read_and_updated() {
        let path = std::env::temp_dir().join(format!("softcrumb-{}.po", std::process::id()));
        let (added, removed) =
            update(&path, "es", &messages(&["Flour", "“Salt” \u{A0}{x}"])).unwrap();
        assert_eq!((added, removed), (2, 0));
        assert!(read(&path).unwrap().is_empty());
        let text = std::fs::read_to_string(&path).unwrap();
        let at = text.find("msgid \"Flour\"").unwrap();
        let (before, after) = text.split_at(at);
        std::fs::write(
            &path,
            before.to_owned() + &after.replacen("msgstr \"\"", "msgstr \"Harina\"", 1),
        )
        .unwrap();
        let (added, removed) = update(&path, "es", &messages(&["Flour", "Milk"])).unwrap();
        assert_eq!((added, removed), (1, 0));
        let known = read(&path).unwrap();
        assert_eq!(known, pairs(&[("Flour", "Harina")]));
        assert_eq!(
            lines(&messages(&["Flour", "Milk"]), &known),
            "Flour\tHarina\n"
        );
        std::fs::remove_file(&path).unwrap();
    }
}
