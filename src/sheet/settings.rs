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

/// How figures and pages are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Settings {
    /// The units.
    pub units: Units,
    /// Light or dark.
    pub theme: Theme,
}
