//! Constituent: one thing a food is made of.

/// One of the parts in a [`super::Composition`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Constituent {
    /// Water.
    Water,
    /// Protein.
    Protein,
    /// Fat.
    Fat,
    /// Saturated fat.
    Saturates,
    /// Carbohydrate.
    Carbohydrate,
    /// Sugars.
    Sugars,
    /// Starch.
    Starch,
    /// Fibre.
    Fibre,
    /// Ash.
    Ash,
    /// Sodium.
    Sodium,
    /// Alcohol.
    Alcohol,
}

impl Constituent {
    /// Every part, in the order of a composition.
    pub const ALL: [Self; 11] = [
        Self::Water,
        Self::Protein,
        Self::Fat,
        Self::Saturates,
        Self::Carbohydrate,
        Self::Sugars,
        Self::Starch,
        Self::Fibre,
        Self::Ash,
        Self::Sodium,
        Self::Alcohol,
    ];
}
