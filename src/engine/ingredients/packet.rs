//! Packet: the allergens that packets of a made-up food name beyond what the food itself is.

use super::Allergen;
use super::Allergen::{Almonds, Hazelnuts, Milk, Soybeans, Sulphites, Wheat};

/// The allergens that packets of a made-up food name.
///
/// The maker decides what is in such a food. What is in neither list is not known.
#[derive(Debug, PartialEq, Eq)]
pub struct Packet {
    /// Most packets name these among the ingredients.
    pub usual: &'static [Allergen],
    /// Some packets name these, as an ingredient or as a trace.
    pub possible: &'static [Allergen],
}

/// How sure it is that an ingredient holds an allergen.
///
/// [`Presence::Usual`] and [`Presence::Possible`] both say 'read the packet'. A single food
/// (flour, milk, egg) that is not an allergen's source has no presence of it at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Presence {
    /// It holds it: by what it is, or by what the user read on its packet.
    Contains,
    /// It usually holds it: the packet tells.
    Usual,
    /// It may hold it: the packet tells.
    Possible,
    /// Nothing is known of it: the packet tells.
    NotKnown,
}

/// A food that is made up, with nothing that most or some makers add.
pub(super) const MADE_UP: Packet = Packet {
    usual: &[],
    possible: &[],
};

/// Dark chocolate with milk sugar in its table.
///
/// Source: USDA ARS, Release 28, 19902 and 19903: lactose measured; soya lecithin: Food Standards
/// Agency, examples of foods with hidden soya.
pub(super) const DARK_WITH_MILK: Packet = Packet {
    usual: &[Soybeans, Milk],
    possible: &[],
};

/// Sweetened dark chocolate.
///
/// Source: FDA survey 2013–14: 51 of 88 dark chocolate bars that did not list milk held it; soya
/// lecithin: Food Standards Agency, examples of foods with hidden soya.
pub(super) const DARK: Packet = Packet {
    usual: &[Soybeans],
    possible: &[Milk],
};

/// Dark chocolate with more cocoa than anything else: lecithin is often left out.
///
/// Source: as [`DARK`].
pub(super) const BITTER: Packet = Packet {
    usual: &[],
    possible: &[Soybeans, Milk],
};

/// Milk and white chocolate; milk is in them by definition.
///
/// Source: label of a mixed milk chocolate: milk, soya lecithin, hazelnut, almond.
pub(super) const MILK_CHOCOLATE: Packet = Packet {
    usual: &[Soybeans],
    possible: &[Almonds, Hazelnuts],
};

/// Hazelnut and chocolate spread; hazelnuts are in it by name.
///
/// Source: label of a hazelnut spread: 13 % hazelnuts, 8.7 % skimmed milk powder; soya lecithin
/// (from memory).
pub(super) const HAZELNUT_SPREAD: Packet = Packet {
    usual: &[Soybeans, Milk],
    possible: &[],
};

/// Margarine: whey or buttermilk, and lecithin of soya, in some. Common practice.
pub(super) const MARGARINE: Packet = Packet {
    usual: &[],
    possible: &[Soybeans, Milk],
};

/// Shortening: soya among its oils in some. Common practice.
pub(super) const SHORTENING: Packet = Packet {
    usual: &[],
    possible: &[Soybeans],
};

/// Baking powder and icing sugar: wheat starch as the starch in some. Common practice.
pub(super) const WITH_STARCH: Packet = Packet {
    usual: &[],
    possible: &[Wheat],
};

/// Dried fruit, coconut and molasses, which some makers treat with sulphites. Common practice.
pub(super) const SULPHITED: Packet = Packet {
    usual: &[],
    possible: &[Sulphites],
};
