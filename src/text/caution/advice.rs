//! The text of a caution.

use std::borrow::Cow;

use crate::engine::quantity::{Mass, Share, Temperature};
use crate::text::{format, format_options::FormatOptions, language::text, tr_noop};

/// The text of a caution: meaning, remedy, source.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Advice {
    /// Its meaning.
    pub means: Cow<'static, str>,
    /// The remedy.
    pub to_do: Cow<'static, str>,
    /// The source, or "common practice".
    pub source: Cow<'static, str>,
}

impl Advice {
    /// Makes a caution from its three texts.
    pub(super) fn new(
        means: impl Into<Cow<'static, str>>,
        to_do: impl Into<Cow<'static, str>>,
        source: impl Into<Cow<'static, str>>,
    ) -> Self {
        Self {
            means: means.into(),
            to_do: to_do.into(),
            source: match source.into() {
                Cow::Borrowed(source) => Cow::Borrowed(text(source)),
                owned @ Cow::Owned(_) => owned,
            },
        }
    }

    /// Meaning and remedy in one text.
    #[must_use]
    pub fn sentence(&self) -> String {
        format!("{} {}", self.means, self.to_do)
    }
}

/// The source of a rule of the trade without a cited work.
pub(super) const COMMON_PRACTICE: &str = tr_noop!("common practice");

/// Formats a limit in °C or °F; empty outside [`Temperature::RANGE`].
pub(in crate::text) fn celsius(limit: f64, options: FormatOptions) -> String {
    Temperature::from_celsius(limit).map_or_else(
        |_| String::new(),
        |limit| format::temperature(limit, options),
    )
}

/// Formats two limits in °C or °F; empty outside [`Temperature::RANGE`].
pub(super) fn celsius_range(low: f64, high: f64, options: FormatOptions) -> String {
    match (
        Temperature::from_celsius(low),
        Temperature::from_celsius(high),
    ) {
        (Ok(low), Ok(high)) => format::temperature_range(low, high, options),
        _ => String::new(),
    }
}

/// Formats a range in percent.
pub(super) fn percent_range(low: f64, high: f64, options: FormatOptions) -> String {
    let share = |percent| Share::from_percent(percent).unwrap_or(Share::NONE);
    format::share_range(share(low), share(high), options)
}

/// Formats a weight.
pub(super) fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap_or(Mass::ZERO)
}
