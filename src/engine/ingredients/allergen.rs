//! Allergens: the EU's fourteen groups, with the cereals and nuts told apart, and the US nine.

/// A substance that must be named, Regulation (EU) 1169/2011 annex II; 21 USC 343(w) for the US.
///
/// Cereals and nuts are named one by one because both laws want the kind named.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Allergen {
    /// Wheat, spelt and khorasan included.
    Wheat,
    /// Rye.
    Rye,
    /// Barley.
    Barley,
    /// Oats.
    Oats,
    /// Crustaceans.
    Crustaceans,
    /// Eggs.
    Eggs,
    /// Fish.
    Fish,
    /// Peanuts.
    Peanuts,
    /// Soybeans.
    Soybeans,
    /// Milk, lactose included.
    Milk,
    /// Almonds.
    Almonds,
    /// Hazelnuts.
    Hazelnuts,
    /// Walnuts.
    Walnuts,
    /// Cashews.
    Cashews,
    /// Pecans.
    Pecans,
    /// Brazil nuts.
    BrazilNuts,
    /// Pistachios.
    Pistachios,
    /// Macadamias.
    Macadamias,
    /// Celery.
    Celery,
    /// Mustard.
    Mustard,
    /// Sesame.
    Sesame,
    /// Sulphur dioxide and sulphites above 10 mg/kg.
    Sulphites,
    /// Lupin.
    Lupin,
    /// Molluscs.
    Molluscs,
}

impl Allergen {
    /// Every allergen, in annex II's order.
    pub const ALL: [Self; 24] = [
        Self::Wheat,
        Self::Rye,
        Self::Barley,
        Self::Oats,
        Self::Crustaceans,
        Self::Eggs,
        Self::Fish,
        Self::Peanuts,
        Self::Soybeans,
        Self::Milk,
        Self::Almonds,
        Self::Hazelnuts,
        Self::Walnuts,
        Self::Cashews,
        Self::Pecans,
        Self::BrazilNuts,
        Self::Pistachios,
        Self::Macadamias,
        Self::Celery,
        Self::Mustard,
        Self::Sesame,
        Self::Sulphites,
        Self::Lupin,
        Self::Molluscs,
    ];
}
