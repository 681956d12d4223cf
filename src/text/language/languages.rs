//! The languages of the page: own name, direction, choice by browser tags.

use crate::sheet::Language;

impl Language {
    /// Its name in the language itself.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
            Self::Japanese => "日本語",
        }
    }

    /// Its direction: `ltr` or `rtl`.
    #[must_use]
    pub const fn direction(self) -> &'static str {
        match self {
            Self::English | Self::Spanish | Self::Japanese => "ltr",
        }
    }

    /// Picks the first of these BCP 47 tags that the page has; English if there is none.
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
