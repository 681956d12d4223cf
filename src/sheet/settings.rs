//! Settings: how figures and pages are shown; nothing that is calculated depends on them.

/// The units that figures are shown and typed in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Units {
    /// Grams and °C.
    #[default]
    Grams,
    /// Ounces, pounds and °F.
    Ounces,
}

/// Light or dark.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// As the device is set.
    #[default]
    Device,
    /// Light.
    Light,
    /// Dark.
    Dark,
}

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
}

/// How figures and pages are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Settings {
    /// The units.
    pub units: Units,
    /// Light or dark.
    pub theme: Theme,
    /// The language; none where it is the browser's.
    pub language: Option<Language>,
}
