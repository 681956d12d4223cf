//! What tins, nutrients, laws and parts of a link are called.

use crate::engine::nutrition::{LabelLaw, Nutrient};
use crate::engine::tin::{TinKind, TinMeasure};
use crate::sheet::interchange::{LinkPart, MeasureUnit};

/// What a kind of tin is called.
#[must_use]
pub const fn tin_kind(kind: TinKind) -> &'static str {
    match kind {
        TinKind::Loaf => "Loaf tin",
        TinKind::Round => "Round tin",
        TinKind::Ring => "Ring tin",
        TinKind::Cups => "Tin of cups",
        TinKind::Tray => "Flat tray",
    }
}

/// What a measure of a tin is called.
#[must_use]
pub const fn tin_measure(measure: TinMeasure) -> &'static str {
    match measure {
        TinMeasure::RimLong => "Length at the rim",
        TinMeasure::RimWide => "Width at the rim",
        TinMeasure::BottomLong => "Length at the bottom",
        TinMeasure::BottomWide => "Width at the bottom",
        TinMeasure::Rim => "Across the rim",
        TinMeasure::Bottom => "Across the bottom",
        TinMeasure::Tube => "Across the tube",
        TinMeasure::Deep => "Depth",
    }
}

/// What a nutrient is called on a label.
#[must_use]
pub const fn nutrient(nutrient: Nutrient, law: LabelLaw) -> &'static str {
    match (nutrient, law) {
        (Nutrient::Fat, LabelLaw::Eu) => "Fat",
        (Nutrient::Fat, LabelLaw::Us) => "Total fat",
        (Nutrient::Saturates, LabelLaw::Eu) => "of which saturates",
        (Nutrient::Saturates, LabelLaw::Us) => "Saturated fat",
        (Nutrient::Carbohydrate, _) => "Carbohydrate",
        (Nutrient::TotalCarbohydrate, _) => "Total carbohydrate",
        (Nutrient::Sugars, LabelLaw::Eu) => "of which sugars",
        (Nutrient::Sugars, LabelLaw::Us) => "Total sugars",
        (Nutrient::Fibre, LabelLaw::Eu) => "Fibre",
        (Nutrient::Fibre, LabelLaw::Us) => "Dietary fiber",
        (Nutrient::Protein, _) => "Protein",
        (Nutrient::Salt, _) => "Salt",
        (Nutrient::Sodium, _) => "Sodium",
    }
}

/// What a law is called.
#[must_use]
pub const fn law(law: LabelLaw) -> &'static str {
    match law {
        LabelLaw::Eu => "European Union",
        LabelLaw::Us => "United States",
    }
}

/// What can be left out of a link.
#[must_use]
pub const fn link_part(part: LinkPart) -> &'static str {
    match part {
        LinkPart::Note => "the note",
        LinkPart::Heat => "what the formula asks of heat",
        LinkPart::Labels => "the labels of your own ingredients",
    }
}

/// What one of a measure is called, and several.
#[must_use]
pub const fn measure(unit: MeasureUnit) -> (&'static str, &'static str) {
    match unit {
        MeasureUnit::Cup => ("cup", "cups"),
        MeasureUnit::Tablespoon => ("tablespoon", "tablespoons"),
        MeasureUnit::Teaspoon => ("teaspoon", "teaspoons"),
        MeasureUnit::Millilitre => ("ml", "ml"),
        MeasureUnit::Stick => ("stick", "sticks"),
        MeasureUnit::Packet => ("packet", "packets"),
        MeasureUnit::Whole => ("piece", "pieces"),
    }
}
