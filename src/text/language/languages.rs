//! What is to be known of a language before anything is said in it.

use crate::sheet::Language;

impl Language {
    /// What its own speakers call it.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
            Self::Japanese => "日本語",
        }
    }

    /// Which way it is written: `ltr`, or `rtl` for a language that runs from right to left.
    #[must_use]
    pub const fn direction(self) -> &'static str {
        match self {
            Self::English | Self::Spanish | Self::Japanese => "ltr",
        }
    }

    /// The first of these tags that is a language of the page; English where none is.
    #[must_use]
    pub fn first_of<'a>(tags: impl IntoIterator<Item = &'a str>) -> Self {
        let mut known = tags.into_iter().filter_map(|tag| {
            let main = tag.split('-').next()?;
            let mut all = Self::ALL.into_iter();
            all.find(|own| own.tag().eq_ignore_ascii_case(main))
        });
        known.next().unwrap_or_default()
    }
}
