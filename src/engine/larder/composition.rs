//! Composition: what a food is made of.

use super::Part;
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
    /// One part of it.
    #[must_use]
    pub const fn part(&self, part: Part) -> Share {
        match part {
            Part::Water => self.water,
            Part::Protein => self.protein,
            Part::Fat => self.fat,
            Part::Saturates => self.saturates,
            Part::Carbohydrate => self.carbohydrate,
            Part::Sugars => self.sugars,
            Part::Starch => self.starch,
            Part::Fibre => self.fibre,
            Part::Ash => self.ash,
            Part::Sodium => self.sodium,
            Part::Alcohol => self.alcohol,
        }
    }
}
