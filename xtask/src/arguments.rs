//! Parses the command-line arguments of a command into flags and values.

use anyhow::{Result, bail};
use std::collections::BTreeMap;

/// The arguments of a command.
pub(crate) struct Arguments {
    flags: Vec<String>,
    values: BTreeMap<String, String>,
}

impl Arguments {
    /// Parses `arguments`.
    ///
    /// # Errors
    /// Names an argument that is in neither list, or a value that is missing.
    pub(crate) fn read(arguments: &[String], flags: &[&str], values: &[&str]) -> Result<Self> {
        let mut read = Self {
            flags: Vec::new(),
            values: BTreeMap::new(),
        };
        let mut words = arguments.iter();
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
                    None => bail!("{name} needs a value"),
                };
            } else {
                bail!("unknown argument \"{word}\"; `cargo xtask --help` lists the known ones");
            }
        }
        Ok(read)
    }

    /// Whether a flag is present.
    pub(crate) fn has(&self, flag: &str) -> bool {
        self.flags.iter().any(|present| present == flag)
    }

    /// The value of an option.
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
    fn unknown_arguments_and_missing_values_are_named() {
        for (line, named) in [("--prot 1", "--prot"), ("--port", "--port")] {
            let error = Arguments::read(&words(line), &[], &["--port"])
                .err()
                .unwrap();
            assert!(error.to_string().contains(named));
        }
    }
}
