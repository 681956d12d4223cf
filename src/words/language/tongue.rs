//! Languages the page can be read in.

/// A language the page can be read in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English, which the page is written in.
    #[default]
    English,
    /// Spanish.
    Spanish,
    /// Japanese.
    Japanese,
}

impl Language {
    /// All of them, in the order the switch shows them.
    pub const ALL: [Self; 3] = [Self::English, Self::Spanish, Self::Japanese];

    /// Its tag, as IETF BCP 47 has it.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
            Self::Japanese => "ja",
        }
    }

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
            Self::ALL
                .into_iter()
                .find(|own| own.tag().eq_ignore_ascii_case(main))
        });
        known.next().unwrap_or_default()
    }
}
