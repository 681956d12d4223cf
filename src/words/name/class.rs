//! What tins, nutrients, laws and parts of a link are called.

use crate::engine::nutrition::{LabelLaw, Nutrient};
use crate::engine::tin::{TinKind, TinMeasure};
use crate::sheet::interchange::{LinkPart, MeasureUnit};
use crate::words::say;

/// What a kind of tin is called.
#[must_use]
pub fn tin_kind(kind: TinKind) -> &'static str {
    match kind {
        TinKind::Loaf => say!("Loaf tin"),
        TinKind::Round => say!("Round tin"),
        TinKind::Ring => say!("Ring tin"),
        TinKind::Cups => say!("Tin of cups"),
        TinKind::Tray => say!("Flat tray"),
    }
}

/// What a measure of a tin is called.
#[must_use]
pub fn tin_measure(measure: TinMeasure) -> &'static str {
    match measure {
        TinMeasure::RimLong => say!("Length at the rim"),
        TinMeasure::RimWide => say!("Width at the rim"),
        TinMeasure::BottomLong => say!("Length at the bottom"),
        TinMeasure::BottomWide => say!("Width at the bottom"),
        TinMeasure::Rim => say!("Across the rim"),
        TinMeasure::Bottom => say!("Across the bottom"),
        TinMeasure::Tube => say!("Across the tube"),
        TinMeasure::Deep => say!("Depth"),
    }
}

/// What a nutrient is called on a label.
#[must_use]
pub fn nutrient(nutrient: Nutrient, law: LabelLaw) -> &'static str {
    match (nutrient, law) {
        (Nutrient::Fat, LabelLaw::Eu) => say!("Fat"),
        (Nutrient::Fat, LabelLaw::Us) => say!("Total fat"),
        (Nutrient::Saturates, LabelLaw::Eu) => say!("of which saturates"),
        (Nutrient::Saturates, LabelLaw::Us) => say!("Saturated fat"),
        (Nutrient::Carbohydrate, _) => say!("Carbohydrate"),
        (Nutrient::TotalCarbohydrate, _) => say!("Total carbohydrate"),
        (Nutrient::Sugars, LabelLaw::Eu) => say!("of which sugars"),
        (Nutrient::Sugars, LabelLaw::Us) => say!("Total sugars"),
        (Nutrient::Fibre, LabelLaw::Eu) => say!("Fibre"),
        (Nutrient::Fibre, LabelLaw::Us) => say!("Dietary fiber"),
        (Nutrient::Protein, _) => say!("Protein"),
        (Nutrient::Salt, _) => say!("Salt"),
        (Nutrient::Sodium, _) => say!("Sodium"),
    }
}

/// What a law is called.
#[must_use]
pub fn law(law: LabelLaw) -> &'static str {
    match law {
        LabelLaw::Eu => say!("European Union"),
        LabelLaw::Us => say!("United States"),
    }
}

/// What can be left out of a link.
#[must_use]
pub fn link_part(part: LinkPart) -> &'static str {
    match part {
        LinkPart::Note => say!("the note"),
        LinkPart::Tin => say!("the tin"),
        LinkPart::Heat => say!("what the formula asks of heat"),
        LinkPart::Labels => say!("the labels of your own ingredients"),
    }
}

/// What one of a measure is called, and several.
#[must_use]
pub fn measure(unit: MeasureUnit) -> (&'static str, &'static str) {
    match unit {
        MeasureUnit::Cup => (say!("cup"), say!("cups")),
        MeasureUnit::Tablespoon => (say!("tablespoon"), say!("tablespoons")),
        MeasureUnit::Teaspoon => (say!("teaspoon"), say!("teaspoons")),
        MeasureUnit::Millilitre => ("ml", "ml"),
        MeasureUnit::Stick => (say!("stick"), say!("sticks")),
        MeasureUnit::Packet => (say!("packet"), say!("packets")),
        MeasureUnit::Whole => (say!("piece"), say!("pieces")),
    }
}
