//! The two laws: whose rounding is used, and which groups of allergens they name.

use crate::engine::ingredients::Allergen;

/// Whose rules for rounding and naming.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum LabelLaw {
    /// Regulation (EU) No 1169/2011.
    #[default]
    Eu,
    /// 21 CFR 101.9 and 21 USC 343(w).
    Us,
}

impl LabelLaw {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Eu, Self::Us];
}

/// The fourteen groups of annex II to Regulation (EU) No 1169/2011, in its order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum EuGroup {
    /// Cereals containing gluten.
    Gluten,
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
    /// Milk.
    Milk,
    /// Nuts.
    Nuts,
    /// Celery.
    Celery,
    /// Mustard.
    Mustard,
    /// Sesame seeds.
    Sesame,
    /// Sulphur dioxide and sulphites.
    Sulphites,
    /// Lupin.
    Lupin,
    /// Molluscs.
    Molluscs,
}

/// The nine major food allergens of 21 USC 321(qq).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum UsMajor {
    /// Milk.
    Milk,
    /// Eggs.
    Eggs,
    /// Fish, each kind named.
    Fish,
    /// Crustacean shellfish, each kind named.
    Crustaceans,
    /// Tree nuts, each kind named.
    TreeNuts,
    /// Peanuts.
    Peanuts,
    /// Wheat.
    Wheat,
    /// Soybeans.
    Soybeans,
    /// Sesame, since 1 January 2023.
    Sesame,
}

impl EuGroup {
    /// All fourteen.
    pub const ALL: [Self; 14] = [
        Self::Gluten,
        Self::Crustaceans,
        Self::Eggs,
        Self::Fish,
        Self::Peanuts,
        Self::Soybeans,
        Self::Milk,
        Self::Nuts,
        Self::Celery,
        Self::Mustard,
        Self::Sesame,
        Self::Sulphites,
        Self::Lupin,
        Self::Molluscs,
    ];

    /// The group an allergen belongs to.
    #[must_use]
    pub const fn of(allergen: Allergen) -> Self {
        match allergen {
            Allergen::Wheat | Allergen::Rye | Allergen::Barley | Allergen::Oats => Self::Gluten,
            Allergen::Crustaceans => Self::Crustaceans,
            Allergen::Eggs => Self::Eggs,
            Allergen::Fish => Self::Fish,
            Allergen::Peanuts => Self::Peanuts,
            Allergen::Soybeans => Self::Soybeans,
            Allergen::Milk => Self::Milk,
            Allergen::Almonds
            | Allergen::Hazelnuts
            | Allergen::Walnuts
            | Allergen::Cashews
            | Allergen::Pecans
            | Allergen::BrazilNuts
            | Allergen::Pistachios
            | Allergen::Macadamias => Self::Nuts,
            Allergen::Celery => Self::Celery,
            Allergen::Mustard => Self::Mustard,
            Allergen::Sesame => Self::Sesame,
            Allergen::Sulphites => Self::Sulphites,
            Allergen::Lupin => Self::Lupin,
            Allergen::Molluscs => Self::Molluscs,
        }
    }
}

impl UsMajor {
    /// All nine.
    pub const ALL: [Self; 9] = [
        Self::Milk,
        Self::Eggs,
        Self::Fish,
        Self::Crustaceans,
        Self::TreeNuts,
        Self::Peanuts,
        Self::Wheat,
        Self::Soybeans,
        Self::Sesame,
    ];

    /// The major allergen it is; none for those the law leaves out (rye, barley, oats, celery,
    /// mustard, sulphites, lupin, molluscs).
    #[must_use]
    pub const fn of(allergen: Allergen) -> Option<Self> {
        match EuGroup::of(allergen) {
            EuGroup::Gluten if matches!(allergen, Allergen::Wheat) => Some(Self::Wheat),
            EuGroup::Crustaceans => Some(Self::Crustaceans),
            EuGroup::Eggs => Some(Self::Eggs),
            EuGroup::Fish => Some(Self::Fish),
            EuGroup::Peanuts => Some(Self::Peanuts),
            EuGroup::Soybeans => Some(Self::Soybeans),
            EuGroup::Milk => Some(Self::Milk),
            EuGroup::Nuts => Some(Self::TreeNuts),
            EuGroup::Sesame => Some(Self::Sesame),
            EuGroup::Gluten
            | EuGroup::Celery
            | EuGroup::Mustard
            | EuGroup::Sulphites
            | EuGroup::Lupin
            | EuGroup::Molluscs => None,
        }
    }
}
