//! `Shown`: a figure as it is written, with what it was where a trial changes it.

use super::tr;

/// A figure written out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shown {
    /// The figure with its unit, or why there is none.
    pub value: String,
    /// What a trial changes: old value and difference.
    pub was: Option<String>,
}

impl Shown {
    /// A dash for a figure that cannot be had; one sentence of the page says why.
    #[must_use]
    pub fn missing() -> Self {
        Self::plain("–".to_owned())
    }

    /// A figure that no trial changes.
    #[must_use]
    pub const fn plain(value: String) -> Self {
        Self { value, was: None }
    }

    /// A figure beside the one before the trial, where that is there and reads otherwise.
    #[must_use]
    pub fn beside(value: String, before: Option<String>) -> Self {
        let was = before.filter(|before| *before != value);
        Self {
            was: was.map(|before| tr!("was {before}", before = before)),
            value,
        }
    }

    /// The same, with the difference between the two.
    #[must_use]
    pub fn changed(value: String, before: Option<(String, String)>) -> Self {
        let was = before.filter(|(before, _)| *before != value);
        Self {
            was: was.map(|(before, difference)| was_by(&before, &difference)),
            value,
        }
    }
}

/// What a figure was and, on a line of its own, by how much it has changed: a key figure has room
/// for the first line only.
pub(super) fn was_by(old: &str, difference: &str) -> String {
    let was = tr!("was {before}", before = old);
    format!("{was}\n{difference}")
}
