//! Measures: what a number in a recipe counts.

use crate::engine::quantity::Mass;

/// A household measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MeasureUnit {
    /// A US cup.
    Cup,
    /// A tablespoon.
    Tablespoon,
    /// A teaspoon.
    Teaspoon,
    /// A millilitre.
    Millilitre,
    /// A stick of butter.
    Stick,
    /// A packet of dried yeast, a cake of fresh.
    Packet,
    /// One whole thing: an egg, a lemon.
    Whole,
}

/// What a word after a number means.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Unit {
    /// A weight.
    Weight(Mass),
    /// So many of a measure.
    Measure(MeasureUnit, f64),
}

const fn grams(grams: f64) -> Unit {
    Unit::Weight(Mass::known(grams))
}

const fn millilitres(millilitres: f64) -> Unit {
    Unit::Measure(MeasureUnit::Millilitre, millilitres)
}

const fn one(unit: MeasureUnit) -> Unit {
    Unit::Measure(unit, 1.0)
}

/// Source: the avoirdupois ounce and pound, exact by the international agreement of 1959; the US
/// fluid ounce of 29.5735295625 ml, pint and quart of 16 and 32 of them.
const UNITS: &[(&[&str], Unit)] = &[
    (&["g", "gr", "gram", "gramme"], grams(1.0)),
    (&["kg", "kilo", "kilogram", "kilogramme"], grams(1000.0)),
    (&["mg"], grams(0.001)),
    (&["oz", "ounce"], grams(28.349_523_125)),
    (&["lb", "pound"], grams(453.592_37)),
    (&["cup", "c"], one(MeasureUnit::Cup)),
    (
        &["tablespoon", "tbsp", "tbs", "tbl", "tblsp"],
        one(MeasureUnit::Tablespoon),
    ),
    (&["teaspoon", "tsp", "t"], one(MeasureUnit::Teaspoon)),
    (&["ml", "millilitre", "milliliter", "cc"], millilitres(1.0)),
    (&["cl", "centilitre", "centiliter"], millilitres(10.0)),
    (&["dl", "decilitre", "deciliter"], millilitres(100.0)),
    (&["l", "litre", "liter"], millilitres(1000.0)),
    (&["pint", "pt"], millilitres(473.176_473)),
    (&["quart", "qt"], millilitres(946.352_946)),
    (&["stick"], one(MeasureUnit::Stick)),
    (
        &[
            "packet", "package", "pkg", "envelope", "sachet", "pack", "cake",
        ],
        one(MeasureUnit::Packet),
    ),
];

/// The US fluid ounce, ml.
const FLUID_OUNCE: f64 = 29.573_529_562_5;

/// What a word means as a unit.
pub(super) fn unit(word: &str) -> Option<Unit> {
    let single = singular(word);
    UNITS
        .iter()
        .find(|(words, _)| words.contains(&word) || words.contains(&single))
        .map(|(_, unit)| *unit)
}

/// A fluid ounce.
pub(super) const fn fluid_ounce() -> Unit {
    millilitres(FLUID_OUNCE)
}

/// Without an "s" at its end; "ss" stays.
pub(super) fn singular(word: &str) -> &str {
    match word.strip_suffix('s') {
        Some(single) if single.len() > 1 && !single.ends_with('s') => single,
        _ => word,
    }
}
