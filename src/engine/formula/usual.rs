//! What is usual for a kind of bread: ranges, each with its source.

use super::{Bread, Figure};
use crate::engine::quantity::Share;

/// The range that is usual for one figure, as a share of the flour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usual {
    /// Which figure.
    pub figure: Figure,
    /// The least that is usual.
    pub low: Share,
    /// The most that is usual.
    pub high: Share,
    /// The work it is taken from, or "common practice".
    pub source: &'static str,
}

const COMMON_PRACTICE: &str = "common practice";

const fn usual(figure: Figure, low: f64, high: f64, source: &'static str) -> Usual {
    Usual {
        figure,
        low: Share::in_hundred(low),
        high: Share::in_hundred(high),
        source,
    }
}

/// From low to high, in percent of the flour.
type Percent = (f64, f64);

const fn common(figure: Figure, (low, high): Percent) -> Usual {
    usual(figure, low, high, COMMON_PRACTICE)
}

const fn prefermented(most: f64) -> Usual {
    common(Figure::PrefermentedFlour, (0.0, most))
}

/// A sponge of 65 % of the flour is the usual most.
///
/// Source: Cauvain and Young, *Technology of Breadmaking*, table 2.3, as quoted at second hand.
const SPONGE: Usual = usual(
    Figure::PrefermentedFlour,
    0.0,
    65.0,
    "Cauvain and Young, Technology of Breadmaking, table 2.3 (at second hand)",
);

/// A brioche with 70 % of butter has 62 % of fat, its eggs' and milk's with it; richer is rare.
const RICH_FAT: Percent = (15.0, 65.0);

/// Scalds and preferments are left out of many breads, so their ranges begin at none.
const fn ranges(
    salt: Percent,
    fresh_yeast: Percent,
    sugar: Percent,
    fat: Percent,
    true_water: Percent,
    scalded: f64,
    prefermented: Usual,
) -> [Usual; 7] {
    [
        common(Figure::Salt, salt),
        common(Figure::FreshYeast, fresh_yeast),
        common(Figure::Sugar, sugar),
        common(Figure::Fat, fat),
        common(Figure::TrueWater, true_water),
        common(Figure::ScaldedFlour, (0.0, scalded)),
        prefermented,
    ]
}

impl Bread {
    /// What is usual for such a bread, on all flour of the dough.
    ///
    /// In this order: salt, yeast, sugar, fat, true water, scalded flour, prefermented flour.
    /// Yeast is compressed yeast, or as much other yeast as has its dry matter.
    #[must_use]
    #[rustfmt::skip] // one row a bread, to be read as a table
    pub const fn usual(self) -> [Usual; 7] {
        match self {
            //                           salt         yeast       sugar        fat          true water
            Self::SoftTin => ranges((1.5, 2.2), (1.5, 5.0), (3.0, 15.0), (3.0, 16.0), (58.0, 80.0), 30.0, prefermented(70.0)),
            Self::SweetBun => ranges((1.0, 2.0), (2.5, 7.0), (8.0, 25.0), (5.0, 25.0), (50.0, 70.0), 25.0, prefermented(70.0)),
            Self::RichEgg => ranges((1.5, 2.5), (2.0, 7.0), (5.0, 25.0), RICH_FAT, (45.0, 75.0), 15.0, prefermented(50.0)),
            Self::PlainTin => ranges((1.5, 2.4), (0.5, 3.0), (0.0, 6.0), (0.0, 5.0), (57.0, 75.0), 25.0, SPONGE),
            Self::Rye => ranges((1.5, 2.2), (0.0, 3.0), (0.0, 6.0), (0.0, 4.0), (62.0, 85.0), 30.0, prefermented(60.0)),
        }
    }
}
