//! A figure of the dough: what it counts, gram by gram.

use super::{Line, StreamKind};
use crate::engine::larder::{Composition, Role};
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
    /// How many there are.
    pub const COUNT: usize = 20;

    /// Every figure, in the order they are shown.
    pub const ALL: [Self; Self::COUNT] = [
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

    /// Whether steam lost from a stream of that kind is missing from the figure.
    pub(super) fn loses_steam_of(self, kind: StreamKind) -> bool {
        let own = match kind {
            StreamKind::Paste => matches!(self, Self::Paste | Self::WaterInPaste),
            StreamKind::Preferment => matches!(self, Self::Preferment | Self::WaterInPreferment),
            StreamKind::Final => self == Self::WaterInFinal,
            StreamKind::Filling | StreamKind::Topping | StreamKind::Wash => return false,
        };
        own || matches!(self, Self::Dough | Self::TrueWater | Self::TotalWater)
    }

    /// How many grams of the figure one gram of the ingredient brings.
    pub(super) fn in_gram(self, part: &Part) -> Share {
        let made_of = &part.made_of;
        match self {
            Self::Dough => Share::WHOLE,
            Self::Flour => when(part.is_flour),
            Self::PrefermentedFlour => when(part.is_flour && part.kind == StreamKind::Preferment),
            Self::ScaldedFlour => when(part.is_flour && part.kind == StreamKind::Paste),
            Self::Paste => when(part.kind == StreamKind::Paste),
            Self::Preferment => when(part.kind == StreamKind::Preferment),
            Self::PouredWater => when(part.is_water),
            Self::Liquids => when(part.is_liquid),
            Self::TrueWater => part.beside_flour(made_of.water),
            Self::TotalWater => made_of.water,
            Self::WaterInPaste => part.water_of(StreamKind::Paste),
            Self::WaterInPreferment => part.water_of(StreamKind::Preferment),
            Self::WaterInFinal => part.water_of(StreamKind::Final),
            Self::Salt => when(part.role == Role::Salt),
            Self::Yeast => when(part.role == Role::Yeast),
            Self::FreshYeast => part.fresh_yeast(),
            Self::Sugar => when(part.role == Role::Sugar),
            Self::Sugars => part.beside_flour(made_of.sugars),
            Self::Fat => part.beside_flour(made_of.fat),
            Self::MilkPowder => when(part.is_milk_powder()),
        }
    }
}

/// Whether a line is plain water.
pub(super) fn is_water(line: &Line) -> bool {
    line.food.role() == Role::Water && !line.is_flour()
}

/// Whether a line is poured: water, milk and other liquids, eggs. Dried egg is not, nor is
/// anything that counts as flour.
pub(super) fn is_liquid(line: &Line) -> bool {
    if line.is_flour() {
        return false;
    }
    match line.food.role() {
        Role::Water | Role::Liquid => true,
        Role::Egg => line.food.composition().water.fraction() > DRIED,
        Role::Flour
        | Role::Fat
        | Role::Sugar
        | Role::Salt
        | Role::Yeast
        | Role::Dairy
        | Role::Chocolate
        | Role::Inclusion => false,
    }
}

/// What has less water than this is dried.
const DRIED: f64 = 0.1;

const fn when(counts: bool) -> Share {
    if counts { Share::WHOLE } else { Share::NONE }
}

/// What has to be known of an ingredient of the dough, to say what it brings.
pub(super) struct Part {
    kind: StreamKind,
    role: Role,
    is_flour: bool,
    is_water: bool,
    is_liquid: bool,
    made_of: Composition,
}

impl Part {
    pub(super) fn new(kind: StreamKind, line: &Line) -> Self {
        Self {
            kind,
            role: line.food.role(),
            is_flour: line.is_flour(),
            is_water: is_water(line),
            is_liquid: is_liquid(line),
            made_of: line.food.composition(),
        }
    }

    const fn beside_flour(&self, share: Share) -> Share {
        if self.is_flour { Share::NONE } else { share }
    }

    fn water_of(&self, kind: StreamKind) -> Share {
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
        self.role == Role::Dairy && self.made_of.water.fraction() < DRIED
    }
}
