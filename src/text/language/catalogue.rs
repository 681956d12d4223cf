//! The translations of all texts into one language.

use thiserror::Error;

/// Why a catalogue cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum CatalogueError {
    /// A line has no tab between English text and translation.
    #[error("line {line} is no pair of texts")]
    NoPair {
        /// Number of the line, from 1.
        line: usize,
    },
}

/// The translations of all texts into one language; lives until the page closes.
#[derive(Debug)]
pub struct Catalogue {
    /// Pairs of English text and translation, sorted by the English text.
    pairs: Vec<(&'static str, &'static str)>,
}

impl Catalogue {
    /// Reads a catalogue as the build writes it: per line the English text, a tab, the translation.
    ///
    /// # Errors
    /// [`CatalogueError::NoPair`] for a line of another kind.
    pub fn read(written: String) -> Result<&'static Self, CatalogueError> {
        let written: &'static str = written.leak();
        let lines = written.lines().enumerate();
        let pairs: Result<Vec<_>, _> = lines
            .map(|(at, line)| {
                line.split_once('\t')
                    .ok_or(CatalogueError::NoPair { line: at + 1 })
            })
            .collect();
        let mut pairs = pairs?;
        pairs.sort_unstable_by_key(|(english, _)| *english);
        Ok(Box::leak(Box::new(Self { pairs })))
    }

    /// Finds the translation of an English text.
    #[must_use]
    pub fn find(&self, english: &str) -> Option<&'static str> {
        let at = self
            .pairs
            .binary_search_by(|(own, _)| (*own).cmp(english))
            .ok()?;
        self.pairs.get(at).map(|(_, translation)| *translation)
    }
}
