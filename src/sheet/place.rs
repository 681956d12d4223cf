//! Place: one of the places of the page.

/// One of the places of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Place {
    /// The place for the formula.
    #[default]
    Formula,
    /// The place for the batch and its tins.
    Batch,
    /// The place for temperatures and food safety.
    Heat,
    /// Will it run, will it melt?
    Chocolate,
    /// When?
    Day,
}

impl Place {
    /// Every place that is built, in the order of the bar.
    pub const ALL: [Self; 5] = [
        Self::Formula,
        Self::Batch,
        Self::Heat,
        Self::Chocolate,
        Self::Day,
    ];

    /// The word for it in an address.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Formula => "formula",
            Self::Batch => "batch",
            Self::Heat => "heat",
            Self::Chocolate => "chocolate",
            Self::Day => "day",
        }
    }
}
