//! Fragment: the part of the address behind `#`, which says what is open.

use crate::sheet::Place;

/// What the part behind `#` asks for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fragment {
    /// Nothing.
    Empty,
    /// A place.
    Place(Place),
    /// A formula handed out: the text of a link, not yet opened.
    SharedFormula(String),
    /// Something else: a link spoilt on the way, or not ours.
    Unknown,
}

/// What a handed-out formula begins with.
const LOAF: &str = "loaf=";

impl Fragment {
    /// Reads the part behind `#`, with or without the `#`.
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

    /// Writes the part behind `#`, with the `#`.
    #[must_use]
    pub fn write(&self) -> String {
        match self {
            Self::Empty | Self::Unknown => String::new(),
            Self::Place(place) => format!("#{}", place.word()),
            Self::SharedFormula(link) => format!("#{LOAF}{link}"),
        }
    }
}
