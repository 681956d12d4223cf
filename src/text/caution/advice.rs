//! What a caution says.

use std::borrow::Cow;

use crate::engine::quantity::{Mass, Share, Temperature};
use crate::text::{format, format_options::FormatOptions, language::text, tr_noop};

/// What a caution says: what it means, what to do, who says so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Advice {
    /// What it means.
    pub means: Cow<'static, str>,
    /// What to do about it.
    pub to_do: Cow<'static, str>,
    /// The work it is taken from, or "common practice".
    pub source: Cow<'static, str>,
}

impl Advice {
    /// A caution from its three parts.
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

    /// What it means and what to do, in one text.
    #[must_use]
    pub fn sentence(&self) -> String {
        format!("{} {}", self.means, self.to_do)
    }
}

/// What bakers do and pass on, where no work is cited.
pub(super) const COMMON_PRACTICE: &str = tr_noop!("common practice");

/// A limit of a rule, in °C or °F; empty only for what no thermometer shows.
pub(in crate::text) fn celsius(limit: f64, options: FormatOptions) -> String {
    Temperature::from_celsius(limit).map_or_else(
        |_| String::new(),
        |limit| format::temperature(limit, options),
    )
}

/// Limits of a rule, in °C or °F; empty only for what no thermometer shows.
pub(super) fn celsius_range(low: f64, high: f64, options: FormatOptions) -> String {
    match (
        Temperature::from_celsius(low),
        Temperature::from_celsius(high),
    ) {
        (Ok(low), Ok(high)) => format::temperature_range(low, high, options),
        _ => String::new(),
    }
}

/// A range of a rule in percent.
pub(super) fn percent_range(low: f64, high: f64, options: FormatOptions) -> String {
    let share = |percent| Share::from_percent(percent).unwrap_or(Share::NONE);
    format::share_range(share(low), share(high), options)
}

/// A weight of a rule.
pub(super) fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap_or(Mass::ZERO)
}
