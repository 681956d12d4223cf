//! A figure of the dough: what it counts, gram by gram.

use super::{Line, PartKind};
use crate::engine::ingredients::{Composition, Role};
use crate::engine::quantity::Share;

/// A figure of the dough, each a weight that is also given as a share of the flour.
///
/// Flour's own water, fat and sugars are left out of the figures that are compared with flour,
/// by the convention of the trade; only [`Figure::TotalWater`] has them in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Figure {
    /// All of the dough.
    Dough,
    /// All that counts as flour.
    Flour,
    /// Flour in preferments.
    PrefermentedFlour,
    /// Flour in pastes.
    ScaldedFlour,
    /// The pastes, whole.
    Paste,
    /// The preferments, whole.
    Preferment,
    /// Plain water only.
    PouredWater,
    /// All that is poured, at full weight: water, other liquids, eggs. Yoghurt and other dairy
    /// that is spooned is no liquid here; its water is in [`Figure::TrueWater`].
    Liquids,
    /// All water by composition, flour's own left out.
    TrueWater,
    /// All water by composition, flour's own included.
    TotalWater,
    /// The true water that pastes bring, held by their starch.
    WaterInPaste,
    /// The true water that preferments bring.
    WaterInPreferment,
    /// The true water that the final dough adds, free when mixing begins.
    WaterInFinal,
    /// Salt as weighed.
    Salt,
    /// Yeast as weighed, whatever its kind.
    Yeast,
    /// Yeast as the compressed yeast that has as much dry matter.
    FreshYeast,
    /// Sugars, honey and syrups as weighed.
    Sugar,
    /// All sugars by composition, flour's own left out, milk sugar included.
    Sugars,
    /// All fat by composition, flour's own left out.
    Fat,
    /// Dried milk: dairy with less than a tenth of water.
    MilkPowder,
}

impl Figure {
    /// Every figure, in the order they are shown.
    pub const ALL: [Self; 20] = [
        Self::Dough,
        Self::Flour,
        Self::PrefermentedFlour,
        Self::ScaldedFlour,
        Self::Paste,
        Self::Preferment,
        Self::PouredWater,
        Self::Liquids,
        Self::TrueWater,
        Self::TotalWater,
        Self::WaterInPaste,
        Self::WaterInPreferment,
        Self::WaterInFinal,
        Self::Salt,
        Self::Yeast,
        Self::FreshYeast,
        Self::Sugar,
        Self::Sugars,
        Self::Fat,
        Self::MilkPowder,
    ];

    /// How many there are.
    pub const COUNT: usize = Self::ALL.len();

    /// The figures that can be set as a share of the flour, one ingredient giving way.
    pub const SETTABLE: [Self; 7] = [
        Self::TrueWater,
        Self::PouredWater,
        Self::Salt,
        Self::Sugar,
        Self::Fat,
        Self::FreshYeast,
        Self::MilkPowder,
    ];

    /// The figures beside flour and water, each of interest as a share of the flour.
    pub const MORE_SHARES: [Self; 11] = [
        Self::ScaldedFlour,
        Self::PrefermentedFlour,
        Self::Paste,
        Self::Preferment,
        Self::Salt,
        Self::Yeast,
        Self::FreshYeast,
        Self::Sugar,
        Self::Sugars,
        Self::Fat,
        Self::MilkPowder,
    ];

    /// Whether steam lost from a part of that kind is missing from the figure.
    pub(super) fn loses_steam_of(self, kind: PartKind) -> bool {
        let own = match kind {
            PartKind::Paste => matches!(self, Self::Paste | Self::WaterInPaste),
            PartKind::Preferment => matches!(self, Self::Preferment | Self::WaterInPreferment),
            PartKind::Final => self == Self::WaterInFinal,
            PartKind::Filling | PartKind::Topping | PartKind::Wash => return false,
        };
        own || matches!(self, Self::Dough | Self::TrueWater | Self::TotalWater)
    }

    /// How many grams of the figure one gram of the ingredient brings.
    pub(super) fn in_gram(self, component: &Contribution) -> Share {
        let made_of = &component.made_of;
        match self {
            Self::Dough => Share::WHOLE,
            Self::Flour => when(component.is_flour),
            Self::PrefermentedFlour => {
                when(component.is_flour && component.kind == PartKind::Preferment)
            }
            Self::ScaldedFlour => when(component.is_flour && component.kind == PartKind::Paste),
            Self::Paste => when(component.kind == PartKind::Paste),
            Self::Preferment => when(component.kind == PartKind::Preferment),
            Self::PouredWater => when(component.is_water),
            Self::Liquids => when(component.is_liquid),
            Self::TrueWater => component.beside_flour(made_of.water),
            Self::TotalWater => made_of.water,
            Self::WaterInPaste => component.water_of(PartKind::Paste),
            Self::WaterInPreferment => component.water_of(PartKind::Preferment),
            Self::WaterInFinal => component.water_of(PartKind::Final),
            Self::Salt => when(component.role == Role::Salt),
            Self::Yeast => when(component.role == Role::Yeast),
            Self::FreshYeast => component.fresh_yeast(),
            Self::Sugar => when(component.role == Role::Sugar),
            Self::Sugars => component.beside_flour(made_of.sugars),
            Self::Fat => component.beside_flour(made_of.fat),
            Self::MilkPowder => when(component.is_milk_powder()),
        }
    }
}

const fn when(counts: bool) -> Share {
    if counts { Share::WHOLE } else { Share::NONE }
}

/// What has to be known of an ingredient of the dough, to say what it brings.
pub(super) struct Contribution {
    kind: PartKind,
    role: Role,
    is_flour: bool,
    is_water: bool,
    is_liquid: bool,
    made_of: Composition,
}

impl Contribution {
    pub(super) fn new(kind: PartKind, line: &Line) -> Self {
        Self {
            kind,
            role: line.food.role(),
            is_flour: line.is_flour(),
            is_water: line.is_water(),
            is_liquid: line.is_liquid(),
            made_of: line.food.composition(),
        }
    }

    const fn beside_flour(&self, share: Share) -> Share {
        if self.is_flour { Share::NONE } else { share }
    }

    fn water_of(&self, kind: PartKind) -> Share {
        if self.kind == kind {
            self.beside_flour(self.made_of.water)
        } else {
            Share::NONE
        }
    }

    /// Compressed yeast is counted at 31 % dry matter, as the table gives it.
    ///
    /// So active dry yeast (94.9 %) counts 3.06-fold; AACC method 89-01.01 has 30 % and 92 %,
    /// which is 3.07-fold.
    ///
    /// Source: USDA SR28, NDB 18374 (water 69.0 g in 100 g).
    fn fresh_yeast(&self) -> Share {
        const COMPRESSED_SOLIDS: f64 = 0.31;
        if self.role == Role::Yeast {
            let solids = Share::WHOLE.less(self.made_of.water).fraction();
            Share::from_fraction(solids / COMPRESSED_SOLIDS).unwrap_or_default()
        } else {
            Share::NONE
        }
    }

    fn is_milk_powder(&self) -> bool {
        self.role == Role::Dairy && self.made_of.water < Composition::DRIED
    }
}
