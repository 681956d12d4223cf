//! Known bakes: one that came out well, to scale from, and the usual ones of each kind of bread.

use crate::engine::formula::Bread;
use crate::engine::heat::BakedShape;
use crate::engine::quantity::{Mass, Minutes, Temperature};

/// A bake that is known to come out well.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnownBake {
    /// How long it took.
    pub minutes: Minutes,
    /// The oven, as a still one.
    pub oven: Temperature,
    /// The mass of what baked by itself: of the dough in a tin, or of one piece.
    pub piece: Mass,
    /// How it baked; `None` tells it from the mass.
    pub shape: Option<BakedShape>,
}

/// A piece of this mass or more baked in a tin, where nothing else is known of it. Common practice.
const LOAF: Mass = Mass::known(300.0);

impl KnownBake {
    /// What earlier releases began with; a record or link that holds it means the usual bake.
    pub const FORMER: Self = Self {
        minutes: Minutes::known(25.0),
        oven: Temperature::known(180.0),
        piece: Mass::known(85.0),
        shape: None,
    };

    /// The usual bake of a kind of bread, in a tin or apart.
    ///
    /// In a tin: 800 g of soft dough 32 min at 180 °C (700 to 900 g: 30 to 35 min), plain 900 g
    /// 45 min at 220 °C, rye 900 g an hour at 205 °C. Apart: filled buns of 75 g 16 min at 180 °C
    /// (60 to 90 g: 15 to 18 min), plain rolls of 57 g 19 min at 204 °C.
    ///
    /// Source: common practice; rolls: US Department of Agriculture, school recipes (1988).
    #[must_use]
    pub const fn usual(bread: Bread, shape: BakedShape) -> Self {
        let (minutes, oven, grams) = match (shape, bread) {
            (BakedShape::Loaf, Bread::SoftTin | Bread::SweetBun | Bread::RichEgg) => {
                (32.0, 180.0, 800.0)
            }
            (BakedShape::Loaf, Bread::PlainTin) => (45.0, 220.0, 900.0),
            (BakedShape::Loaf, Bread::Rye) => (60.0, 205.0, 900.0),
            (BakedShape::Apart, Bread::SoftTin | Bread::SweetBun | Bread::RichEgg) => {
                (16.0, 180.0, 75.0)
            }
            (BakedShape::Apart, Bread::PlainTin | Bread::Rye) => (19.0, 204.0, 57.0),
        };
        Self {
            minutes: Minutes::known(minutes),
            oven: Temperature::known(oven),
            piece: Mass::known(grams),
            shape: Some(shape),
        }
    }

    /// How it baked: as is set, or told from the mass.
    #[must_use]
    pub fn baked_as(&self) -> BakedShape {
        self.shape.unwrap_or(if self.piece >= LOAF {
            BakedShape::Loaf
        } else {
            BakedShape::Apart
        })
    }
}
