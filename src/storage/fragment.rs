//! Fragment: the part of the address after `#`, which names what is open.

use crate::sheet::Place;

/// The meaning of the fragment.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fragment {
    /// Nothing.
    Empty,
    /// A place.
    Place(Place),
    /// A shared formula: the text of a link, not yet opened.
    SharedFormula(String),
    /// Something else: a link spoilt on the way, or not ours.
    Unknown,
}

/// The prefix of a shared formula.
const LOAF: &str = "loaf=";

impl Fragment {
    /// Reads the fragment, with or without the `#`.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let text = text.strip_prefix('#').unwrap_or(text);
        if text.is_empty() {
            return Self::Empty;
        }
        if let Some(link) = text.strip_prefix(LOAF) {
            return Self::SharedFormula(link.to_owned());
        }
        let place = Place::ALL.into_iter().find(|place| place.word() == text);
        place.map_or(Self::Unknown, Self::Place)
    }

    /// Writes the fragment, with the `#`.
    #[must_use]
    pub fn write(&self) -> String {
        match self {
            Self::Empty | Self::Unknown => String::new(),
            Self::Place(place) => format!("#{}", place.word()),
            Self::SharedFormula(link) => format!("#{LOAF}{link}"),
        }
    }
}
