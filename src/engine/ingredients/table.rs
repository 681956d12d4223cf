//! Table: one line of a composition table, as it is printed, turned into a composition.
//!
//! Both tables print grams per 100 g of what is eaten, sodium in milligrams.
//!
//! - A cell that says "traces" or "< x" is taken as none: the most it can hide is the x.
//! - A part the table leaves blank is none too, and is named in the row's `silent`.
//! - Starch: where no figure is printed but the food holds starch, it is what carbohydrate leaves
//!   when fibre and sugars are taken away. In cocoa, nuts and spices that is an upper bound:
//!   acids and tannins hide in it.

use super::Composition;
use crate::engine::quantity::Share;

/// Where a row's starch comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Starch {
    /// Printed in the table, g in 100 g.
    Printed(f64),
    /// Worked out: carbohydrate less fibre less sugars.
    Remainder,
    /// The food has none.
    Absent,
}

/// A line of the American table: carbohydrate is by difference, so fibre lies inside it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sr28 {
    pub(super) water: f64,
    pub(super) protein: f64,
    pub(super) fat: f64,
    pub(super) saturates: f64,
    pub(super) carbohydrate: f64,
    pub(super) sugars: f64,
    pub(super) fibre: f64,
    pub(super) ash: f64,
    pub(super) sodium_mg: f64,
    pub(super) alcohol: f64,
    pub(super) starch: Starch,
}

/// A line of the French table: carbohydrate is what the body takes up, and fibre, polyols and
/// organic acids stand beside it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ciqual {
    pub(super) water: f64,
    /// Nitrogen times the food's own factor, the one that closes the table's sums; its other
    /// column, nitrogen times 6.25, is for labels.
    pub(super) protein: f64,
    pub(super) fat: f64,
    pub(super) saturates: f64,
    pub(super) available_carbohydrate: f64,
    pub(super) sugars: f64,
    pub(super) fibre: f64,
    pub(super) polyols: f64,
    pub(super) organic_acids: f64,
    pub(super) ash: f64,
    pub(super) sodium_mg: f64,
    pub(super) starch: Starch,
}

impl Sr28 {
    /// Nothing of anything.
    pub(super) const EMPTY: Self = Self {
        water: 0.0,
        protein: 0.0,
        fat: 0.0,
        saturates: 0.0,
        carbohydrate: 0.0,
        sugars: 0.0,
        fibre: 0.0,
        ash: 0.0,
        sodium_mg: 0.0,
        alcohol: 0.0,
        starch: Starch::Absent,
    };

    /// The composition it stands for.
    pub(super) const fn composition(self) -> Composition {
        let starch = match self.starch {
            Starch::Printed(grams) => grams,
            Starch::Remainder => self.carbohydrate - self.fibre - self.sugars,
            Starch::Absent => 0.0,
        };
        Composition {
            water: Share::in_hundred(self.water),
            protein: Share::in_hundred(self.protein),
            fat: Share::in_hundred(self.fat),
            saturates: Share::in_hundred(self.saturates),
            carbohydrate: Share::in_hundred(self.carbohydrate),
            sugars: Share::in_hundred(self.sugars),
            starch: Share::in_hundred(starch),
            fibre: Share::in_hundred(self.fibre),
            ash: Share::in_hundred(self.ash),
            sodium: Share::in_hundred(self.sodium_mg / 1000.0),
            alcohol: Share::in_hundred(self.alcohol),
        }
    }
}

impl Ciqual {
    /// Nothing of anything.
    pub(super) const EMPTY: Self = Self {
        water: 0.0,
        protein: 0.0,
        fat: 0.0,
        saturates: 0.0,
        available_carbohydrate: 0.0,
        sugars: 0.0,
        fibre: 0.0,
        polyols: 0.0,
        organic_acids: 0.0,
        ash: 0.0,
        sodium_mg: 0.0,
        starch: Starch::Absent,
    };

    /// The composition it stands for, with carbohydrate as the American table counts it: fibre,
    /// polyols and organic acids put back in.
    pub(super) const fn composition(self) -> Composition {
        let indigestible = self.fibre + self.polyols + self.organic_acids;
        let by_difference = Sr28 {
            water: self.water,
            protein: self.protein,
            fat: self.fat,
            saturates: self.saturates,
            carbohydrate: self.available_carbohydrate + indigestible,
            sugars: self.sugars,
            fibre: self.fibre,
            ash: self.ash,
            sodium_mg: self.sodium_mg,
            alcohol: 0.0,
            starch: match self.starch {
                Starch::Remainder => Starch::Printed(self.available_carbohydrate - self.sugars),
                Starch::Printed(grams) => Starch::Printed(grams),
                Starch::Absent => Starch::Absent,
            },
        };
        by_difference.composition()
    }
}
