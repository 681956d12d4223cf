//! What a caution says.

use std::borrow::Cow;

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
            source: source.into(),
        }
    }

    /// What it means and what to do, in one text.
    #[must_use]
    pub fn sentence(&self) -> String {
        format!("{} {}", self.means, self.to_do)
    }
}

/// What bakers do and pass on, where no work is cited.
pub(super) const COMMON_PRACTICE: &str = "common practice";
