//! What tins, nutrients, laws and parts of a link are called.

use crate::engine::class::Ahead;
use crate::engine::nutrition::{LabelLaw, Nutrient};
use crate::engine::tin::{TinKind, TinMeasure};
use crate::storage::interchange::{LinkPart, MeasureUnit};
use crate::text::tr;

/// What a kind of tin is called.
#[must_use]
pub fn tin_kind(kind: TinKind) -> &'static str {
    match kind {
        TinKind::Loaf => tr!("Loaf tin"),
        TinKind::Round => tr!("Round tin"),
        TinKind::Ring => tr!("Ring tin"),
        TinKind::Cups => tr!("Muffin tin"),
        TinKind::Tray => tr!("Flat tray"),
    }
}

/// What a measure of a tin is called.
#[must_use]
pub fn tin_measure(measure: TinMeasure) -> &'static str {
    match measure {
        TinMeasure::RimLong => tr!("Length at the rim"),
        TinMeasure::RimWide => tr!("Width at the rim"),
        TinMeasure::BottomLong => tr!("Length at the bottom"),
        TinMeasure::BottomWide => tr!("Width at the bottom"),
        TinMeasure::Rim => tr!("Across the rim"),
        TinMeasure::Bottom => tr!("Across the bottom"),
        TinMeasure::Tube => tr!("Across the tube"),
        TinMeasure::Deep => tr!("Depth"),
    }
}

/// What a nutrient is called on a label.
#[must_use]
pub fn nutrient(nutrient: Nutrient, law: LabelLaw) -> &'static str {
    match (nutrient, law) {
        (Nutrient::Fat, LabelLaw::Eu) => tr!("Fat"),
        (Nutrient::Fat, LabelLaw::Us) => tr!("Total fat"),
        (Nutrient::Saturates, LabelLaw::Eu) => tr!("of which saturates"),
        (Nutrient::Saturates, LabelLaw::Us) => tr!("Saturated fat"),
        (Nutrient::Carbohydrate, _) => tr!("Carbohydrate"),
        (Nutrient::TotalCarbohydrate, _) => tr!("Total carbohydrate"),
        (Nutrient::Sugars, LabelLaw::Eu) => tr!("of which sugars"),
        (Nutrient::Sugars, LabelLaw::Us) => tr!("Total sugars"),
        (Nutrient::Fibre, LabelLaw::Eu) => tr!("Fibre"),
        (Nutrient::Fibre, LabelLaw::Us) => tr!("Dietary fiber"),
        (Nutrient::Protein, _) => tr!("Protein"),
        (Nutrient::Salt, _) => tr!("Salt"),
        (Nutrient::Sodium, _) => tr!("Sodium"),
    }
}

/// What a law is called.
#[must_use]
pub fn law(law: LabelLaw) -> &'static str {
    match law {
        LabelLaw::Eu => tr!("European Union"),
        LabelLaw::Us => tr!("United States"),
    }
}

/// What can be left out of a link.
#[must_use]
pub fn link_part(component: LinkPart) -> &'static str {
    match component {
        LinkPart::Note => tr!("the note"),
        LinkPart::Tin => tr!("the tin"),
        LinkPart::Heat => tr!("what the formula asks of heat"),
        LinkPart::Labels => tr!("the labels of your own ingredients"),
    }
}

/// What one of a measure is called, and several.
#[must_use]
pub fn measure(unit: MeasureUnit) -> (&'static str, &'static str) {
    match unit {
        MeasureUnit::Cup => (tr!("cup"), tr!("cups")),
        MeasureUnit::Tablespoon => (tr!("tablespoon"), tr!("tablespoons")),
        MeasureUnit::Teaspoon => (tr!("teaspoon"), tr!("teaspoons")),
        MeasureUnit::Millilitre => ("ml", "ml"),
        MeasureUnit::Stick => (tr!("stick"), tr!("sticks")),
        MeasureUnit::Packet => (tr!("packet"), tr!("packets")),
        MeasureUnit::Whole => (tr!("piece"), tr!("pieces")),
    }
}

/// Who makes paste and preferment in a class.
#[must_use]
pub fn ahead(ahead: Ahead) -> &'static str {
    match ahead {
        Ahead::EachBench => tr!("at each bench"),
        Ahead::TeacherBowl => tr!("by the teacher in one bowl"),
    }
}
