//! Display settings; no calculation depends on them.

/// The units that figures are shown and typed in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum UnitSystem {
    /// Grams and °C.
    #[default]
    Grams,
    /// Ounces, pounds and °F.
    Ounces,
}

/// Light or dark.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// The device's setting.
    #[default]
    Device,
    /// Light.
    Light,
    /// Dark.
    Dark,
}

/// A language of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English, the language of the source texts.
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

    /// Its IETF BCP 47 tag.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
            Self::Japanese => "ja",
        }
    }
}

/// Display settings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Settings {
    /// The units.
    pub units: UnitSystem,
    /// Light or dark.
    pub theme: Theme,
    /// The language; `None` for the browser's.
    pub language: Option<Language>,
}
