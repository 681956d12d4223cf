//! Measures: what a number in a recipe counts.

use crate::engine::quantity::Mass;

/// A household measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MeasureUnit {
    /// A cup, of the size that is usual where the recipe's language is spoken.
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

/// What thumb and finger take of a powder, ml: 0.3 to 0.5 ml, common practice.
const PIZCA: f64 = 0.4;
/// What three fingers take of a powder: a fifth of a teaspoon, common practice.
const TSUMAMI: f64 = 0.2;

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
    (&["gramo", "グラム"], grams(1.0)),
    (&["kgs", "kilogramo", "キロ", "キログラム"], grams(1000.0)),
    (&["mililitro", "ミリリットル"], millilitres(1.0)),
    (&["centilitro"], millilitres(10.0)),
    (&["decilitro"], millilitres(100.0)),
    (&["litro", "リットル"], millilitres(1000.0)),
    (&["taza", "カップ"], one(MeasureUnit::Cup)),
    (
        &["cucharada", "cda", "cdas", "大さじ"],
        one(MeasureUnit::Tablespoon),
    ),
    (
        &["cucharadita", "cdta", "cdita", "cucharilla", "小さじ"],
        one(MeasureUnit::Teaspoon),
    ),
    // A glass of water: 200 ml, common practice.
    (&["vaso"], millilitres(200.0)),
    (&["pizca", "pellizco"], millilitres(PIZCA)),
    (&["つまみ"], Unit::Measure(MeasureUnit::Teaspoon, TSUMAMI)),
    (
        &["sobre", "cubo", "cubito", "dado", "pastilla", "袋"],
        one(MeasureUnit::Packet),
    ),
    (
        &[
            "unidad", "unidade", "ud", "uds", "個", "個分", "コ", "ケ", "玉", "本", "枚",
        ],
        one(MeasureUnit::Whole),
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
