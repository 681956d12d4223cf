//! What materials, shapes, rules and ways of heating are called.

use std::borrow::Cow;

use crate::engine::chocolate::Lumps;
use crate::engine::heat::{
    BakedShape, CoolingVessel, Grain, HeatFrom, Material, PrintedFactor, RuleSet,
};
use crate::sheet::BakeLength;
use crate::text::{language::tr_dynamic, tr};

/// What a material is called.
#[must_use]
pub fn material(material: Material) -> &'static str {
    match material {
        Material::Steel => tr!("Steel"),
        Material::Aluminium => tr!("Aluminium"),
        Material::Copper => tr!("Copper"),
        Material::Glass => tr!("Glass"),
        Material::Ceramic => tr!("Stoneware or china"),
        Material::Plastic => tr!("Plastic"),
        Material::Wood => tr!("Wood"),
    }
}

/// What a kitchen or a bowl is called: in the language of the page where the name is our own.
#[must_use]
pub fn called(name: &str) -> Cow<'_, str> {
    if name.trim().is_empty() {
        tr!("without a name").into()
    } else {
        tr_dynamic(name)
    }
}

/// What a printed friction factor was printed for.
#[must_use]
pub fn printed_factor(printed: PrintedFactor) -> &'static str {
    match printed {
        PrintedFactor::Hand => tr!("By hand"),
        PrintedFactor::TestKitchen => tr!("Stand mixer, a test kitchen’s book"),
        PrintedFactor::HomeMixer => tr!("Stand mixer at home, some ten minutes"),
        PrintedFactor::FastMixing => tr!("Fast mixing, a trade magazine"),
    }
}

/// What something hot cools in.
#[must_use]
pub fn cooling_vessel(vessel: CoolingVessel) -> &'static str {
    match vessel {
        CoolingVessel::Bowl => tr!("Bowl"),
        CoolingVessel::Dish => tr!("Dish"),
        CoolingVessel::Tray => tr!("Tray"),
        CoolingVessel::Jar => tr!("Jar"),
        CoolingVessel::Bag => tr!("Flat bag"),
    }
}

/// How a bread bakes, after 'It baked'.
#[must_use]
pub fn baked_shape(shape: BakedShape) -> &'static str {
    match shape {
        BakedShape::Loaf => tr!("in a tin"),
        BakedShape::Apart => tr!("apart, piece by piece"),
    }
}

/// How long the plan bakes.
#[must_use]
pub fn bake_length(length: BakeLength) -> &'static str {
    match length {
        BakeLength::Predicted => tr!("as worked out"),
        BakeLength::Programme => tr!("as typed"),
    }
}

/// What a set of rules is called.
#[must_use]
pub fn rule_set(rules: RuleSet) -> &'static str {
    match rules {
        RuleSet::Strictest => tr!("Strictest of all"),
        RuleSet::UnitedStates => tr!("United States"),
        RuleSet::UnitedKingdom => tr!("United Kingdom"),
        RuleSet::France => tr!("France"),
    }
}

/// A set of rules inside a sentence: "the rules of France".
#[must_use]
pub fn rules_of(rules: RuleSet) -> &'static str {
    match rules {
        RuleSet::Strictest => tr!("the strictest of the rules"),
        RuleSet::UnitedStates => tr!("the rules of the United States"),
        RuleSet::UnitedKingdom => tr!("the rules of the United Kingdom"),
        RuleSet::France => tr!("the rules of France"),
    }
}

/// Where an oven's heat comes from.
#[must_use]
pub fn heat_from(from: HeatFrom) -> &'static str {
    match from {
        HeatFrom::Both => tr!("Both"),
        HeatFrom::Top => tr!("Top"),
        HeatFrom::Bottom => tr!("Bottom"),
    }
}

/// What a grain is called.
#[must_use]
pub fn grain(grain: Grain) -> &'static str {
    match grain {
        Grain::Wheat => tr!("wheat"),
        Grain::Rye => tr!("rye"),
        Grain::Rice => tr!("rice"),
        Grain::Maize => tr!("maize"),
        Grain::Potato => tr!("potato"),
        Grain::Tapioca => tr!("tapioca"),
        Grain::Oat => tr!("oat"),
        Grain::Barley => tr!("barley"),
        Grain::Buckwheat => tr!("buckwheat"),
    }
}

/// The visible state of lumps.
#[must_use]
pub fn lumps(lumps: Lumps) -> &'static str {
    match lumps {
        Lumps::None => tr!("no lumps"),
        Lumps::Few => tr!("a few lumps"),
        Lumps::Clear => tr!("obvious lumps"),
    }
}
