//! What materials, shapes, rules and ways of heating are called.

use crate::engine::chocolate::Lumps;
use crate::engine::heat::{Grain, HeatFrom, Material, RuleSet, Shape};

/// What a material is called.
#[must_use]
pub const fn material(material: Material) -> &'static str {
    match material {
        Material::Steel => "Steel",
        Material::Aluminium => "Aluminium",
        Material::Copper => "Copper",
        Material::Glass => "Glass",
        Material::Ceramic => "Stoneware or china",
        Material::Plastic => "Plastic",
        Material::Wood => "Wood",
    }
}

/// What a kitchen or a bowl is called; words of our own where the user has none yet.
#[must_use]
pub fn called(name: &str) -> &str {
    if name.trim().is_empty() {
        "without a name"
    } else {
        name
    }
}

/// What a shape is called, as something lies or stands in the kitchen.
#[must_use]
pub const fn shape(shape: Shape) -> &'static str {
    match shape {
        Shape::Slab => "Flat in a dish",
        Shape::Cylinder => "Roll or tall jar",
        Shape::Sphere => "Heap in a bowl",
    }
}

/// What a set of rules is called.
#[must_use]
pub const fn rule_set(rules: RuleSet) -> &'static str {
    match rules {
        RuleSet::Strictest => "Strictest of all",
        RuleSet::UnitedStates => "United States",
        RuleSet::UnitedKingdom => "United Kingdom",
        RuleSet::France => "France",
    }
}

/// A set of rules inside a sentence: "the rules of France".
#[must_use]
pub const fn rules_of(rules: RuleSet) -> &'static str {
    match rules {
        RuleSet::Strictest => "the strictest of the rules",
        RuleSet::UnitedStates => "the rules of the United States",
        RuleSet::UnitedKingdom => "the rules of the United Kingdom",
        RuleSet::France => "the rules of France",
    }
}

/// Where an oven's heat comes from.
#[must_use]
pub const fn heat_from(from: HeatFrom) -> &'static str {
    match from {
        HeatFrom::Both => "Both",
        HeatFrom::Top => "Top",
        HeatFrom::Bottom => "Bottom",
    }
}

/// What a grain is called.
#[must_use]
pub const fn grain(grain: Grain) -> &'static str {
    match grain {
        Grain::Wheat => "wheat",
        Grain::Rye => "rye",
        Grain::Rice => "rice",
        Grain::Maize => "maize",
        Grain::Potato => "potato",
        Grain::Tapioca => "tapioca",
        Grain::Oat => "oat",
        Grain::Barley => "barley",
        Grain::Buckwheat => "buckwheat",
    }
}

/// What is to be seen of lumps.
#[must_use]
pub const fn lumps(lumps: Lumps) -> &'static str {
    match lumps {
        Lumps::None => "no lumps",
        Lumps::Few => "a few lumps",
        Lumps::Clear => "clear lumps",
    }
}
