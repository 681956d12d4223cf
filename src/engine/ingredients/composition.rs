//! Composition: what a food is made of.

use super::Constituent;
use crate::engine::quantity::Share;

/// What is in a food, each part as a share of its weight.
///
/// Traps of the tables: fibre and sugars lie inside carbohydrate (by difference); some milk rows
/// have more sugars than carbohydrate; a row need not sum to one.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Composition {
    /// Water.
    pub water: Share,
    /// Protein.
    pub protein: Share,
    /// Fat, all kinds.
    pub fat: Share,
    /// Saturated fat, inside `fat`.
    pub saturates: Share,
    /// Carbohydrate by difference, fibre included.
    pub carbohydrate: Share,
    /// Mono- and disaccharides, inside `carbohydrate`.
    pub sugars: Share,
    /// Starch, inside `carbohydrate`.
    pub starch: Share,
    /// Fibre, inside `carbohydrate`.
    pub fibre: Share,
    /// Ash.
    pub ash: Share,
    /// Sodium, inside `ash`.
    pub sodium: Share,
    /// Alcohol.
    pub alcohol: Share,
}

impl Composition {
    /// A food with less water than this is dried.
    pub(crate) const DRIED: Share = Share::in_hundred(10.0);

    /// One part of it.
    #[must_use]
    pub const fn component(&self, component: Constituent) -> Share {
        match component {
            Constituent::Water => self.water,
            Constituent::Protein => self.protein,
            Constituent::Fat => self.fat,
            Constituent::Saturates => self.saturates,
            Constituent::Carbohydrate => self.carbohydrate,
            Constituent::Sugars => self.sugars,
            Constituent::Starch => self.starch,
            Constituent::Fibre => self.fibre,
            Constituent::Ash => self.ash,
            Constituent::Sodium => self.sodium,
            Constituent::Alcohol => self.alcohol,
        }
    }
}
