//! Role: what an ingredient does in a dough.

/// What an ingredient does in a dough; it decides how it is weighed and whether it counts as flour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Role {
    /// Flours and starches: they make up the 100 % of a baker's percentage.
    Flour,
    /// Plain water and ice.
    Water,
    /// Other pourable liquids: milk, cream, juice, plant drinks.
    Liquid,
    /// Butter, oils, lard.
    Fat,
    /// Sugars, honey, syrups.
    Sugar,
    /// Salt.
    Salt,
    /// Yeasts.
    Yeast,
    /// Dairy that is not poured: milk powders, yoghurt, cheese.
    Dairy,
    /// Eggs and their parts.
    Egg,
    /// Chocolate, cocoa, cocoa butter.
    Chocolate,
    /// Nuts, seeds, fruit, purées, spices, flavourings.
    Inclusion,
}

impl Role {
    /// Every role, in the order lists are shown.
    pub const ALL: [Self; 11] = [
        Self::Flour,
        Self::Water,
        Self::Liquid,
        Self::Fat,
        Self::Sugar,
        Self::Salt,
        Self::Yeast,
        Self::Dairy,
        Self::Egg,
        Self::Chocolate,
        Self::Inclusion,
    ];
}
