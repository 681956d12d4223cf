//! What materials, shapes, rules and ways of heating are called.

use std::borrow::Cow;

use crate::engine::chocolate::Lumps;
use crate::engine::heat::{Grain, HeatFrom, Material, RuleSet, Shape};
use crate::words::{language::told, say};

/// What a material is called.
#[must_use]
pub fn material(material: Material) -> &'static str {
    match material {
        Material::Steel => say!("Steel"),
        Material::Aluminium => say!("Aluminium"),
        Material::Copper => say!("Copper"),
        Material::Glass => say!("Glass"),
        Material::Ceramic => say!("Stoneware or china"),
        Material::Plastic => say!("Plastic"),
        Material::Wood => say!("Wood"),
    }
}

/// What a kitchen or a bowl is called: in the language of the page where the name is our own.
#[must_use]
pub fn called(name: &str) -> Cow<'_, str> {
    if name.trim().is_empty() {
        say!("without a name").into()
    } else {
        told(name)
    }
}

/// What a shape is called, as something lies or stands in the kitchen.
#[must_use]
pub fn shape(shape: Shape) -> &'static str {
    match shape {
        Shape::Slab => say!("Flat in a dish"),
        Shape::Cylinder => say!("Roll or tall jar"),
        Shape::Sphere => say!("Heap in a bowl"),
    }
}

/// What a set of rules is called.
#[must_use]
pub fn rule_set(rules: RuleSet) -> &'static str {
    match rules {
        RuleSet::Strictest => say!("Strictest of all"),
        RuleSet::UnitedStates => say!("United States"),
        RuleSet::UnitedKingdom => say!("United Kingdom"),
        RuleSet::France => say!("France"),
    }
}

/// A set of rules inside a sentence: "the rules of France".
#[must_use]
pub fn rules_of(rules: RuleSet) -> &'static str {
    match rules {
        RuleSet::Strictest => say!("the strictest of the rules"),
        RuleSet::UnitedStates => say!("the rules of the United States"),
        RuleSet::UnitedKingdom => say!("the rules of the United Kingdom"),
        RuleSet::France => say!("the rules of France"),
    }
}

/// Where an oven's heat comes from.
#[must_use]
pub fn heat_from(from: HeatFrom) -> &'static str {
    match from {
        HeatFrom::Both => say!("Both"),
        HeatFrom::Top => say!("Top"),
        HeatFrom::Bottom => say!("Bottom"),
    }
}

/// What a grain is called.
#[must_use]
pub fn grain(grain: Grain) -> &'static str {
    match grain {
        Grain::Wheat => say!("wheat"),
        Grain::Rye => say!("rye"),
        Grain::Rice => say!("rice"),
        Grain::Maize => say!("maize"),
        Grain::Potato => say!("potato"),
        Grain::Tapioca => say!("tapioca"),
        Grain::Oat => say!("oat"),
        Grain::Barley => say!("barley"),
        Grain::Buckwheat => say!("buckwheat"),
    }
}

/// What is to be seen of lumps.
#[must_use]
pub fn lumps(lumps: Lumps) -> &'static str {
    match lumps {
        Lumps::None => say!("no lumps"),
        Lumps::Few => say!("a few lumps"),
        Lumps::Clear => say!("clear lumps"),
    }
}
