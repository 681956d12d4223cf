//! The words after a verb, read into flags and values.

use anyhow::{Result, bail};
use std::collections::BTreeMap;

/// What was asked for behind a verb.
pub(crate) struct Arguments {
    flags: Vec<String>,
    values: BTreeMap<String, String>,
}

impl Arguments {
    /// Reads `given`; anything that is in neither list is answered in words.
    pub(crate) fn read(given: &[String], flags: &[&str], values: &[&str]) -> Result<Self> {
        let mut read = Self {
            flags: Vec::new(),
            values: BTreeMap::new(),
        };
        let mut words = given.iter();
        while let Some(word) = words.next() {
            let (name, attached) = match word.split_once('=') {
                Some((name, value)) => (name, Some(value.to_owned())),
                None => (word.as_str(), None),
            };
            if flags.contains(&name) {
                read.flags.push(name.to_owned());
            } else if values.contains(&name) {
                match attached.or_else(|| words.next().cloned()) {
                    Some(value) => read.values.insert(name.to_owned(), value),
                    None => bail!("{name} wants a value behind it"),
                };
            } else {
                bail!("\"{word}\" is not known here; cargo xtask --help lists what is");
            }
        }
        Ok(read)
    }

    /// Whether a flag was given.
    pub(crate) fn has(&self, flag: &str) -> bool {
        self.flags.iter().any(|given| given == flag)
    }

    /// The value given behind a name.
    pub(crate) fn value(&self, name: &str) -> Option<&str> {
        self.values.get(name).map(String::as_str)
    }
}

#[cfg(test)]
mod tests {
    use super::Arguments;

    fn words(line: &str) -> Vec<String> {
        line.split_whitespace().map(str::to_owned).collect()
    }

    #[test]
    fn flags_and_values_are_read_in_any_order() {
        for line in ["--watch --port 9000", "--port=9000 --watch"] {
            let read = Arguments::read(&words(line), &["--watch"], &["--port"]).unwrap();
            assert!(read.has("--watch"));
            assert_eq!(read.value("--port"), Some("9000"));
        }
    }

    #[test]
    fn unknown_words_and_missing_values_are_named() {
        for (line, named) in [("--prot 1", "--prot"), ("--port", "--port")] {
            let trouble = Arguments::read(&words(line), &[], &["--port"])
                .err()
                .unwrap();
            assert!(trouble.to_string().contains(named));
        }
    }
}
