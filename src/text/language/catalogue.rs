//! Catalogue: what each English text is in one other language.

use thiserror::Error;

/// What can be wrong with a catalogue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum CatalogueError {
    /// A line without a tab: English, tab, translation are wanted.
    #[error("line {line} is no pair of texts")]
    NoPair {
        /// Which line, from 1.
        line: usize,
    },
}

/// What each English text is in one other language. It stands for as long as the page is open.
#[derive(Debug)]
pub struct Catalogue {
    /// English and translation, by the English text.
    pairs: Vec<(&'static str, &'static str)>,
}

impl Catalogue {
    /// Reads a catalogue as the build writes it: a line each, the English text, a tab, the translation.
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

    /// What an English text is in this language, where it is known.
    #[must_use]
    pub fn find(&self, english: &str) -> Option<&'static str> {
        let at = self
            .pairs
            .binary_search_by(|(own, _)| (*own).cmp(english))
            .ok()?;
        self.pairs.get(at).map(|(_, translation)| *translation)
    }
}
