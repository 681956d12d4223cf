//! The stored name of each enum variant. A released name never changes.
//!
//! Links store a choice by its index in these tables, so a new one is added at the end.

use crate::engine::class::Ahead;
use crate::engine::formula::{Bread, PartKind};
use crate::engine::heat::{
    BakedShape, CoolingVessel, HeatFrom, Material, PrintedFactor, RuleSet, Shape,
};
use crate::engine::ingredients::{Allergen, Role};
use crate::engine::plan::StepKind;
use crate::sheet::BakeLength;

pub(super) const BREADS: &[(Bread, &str)] = &[
    (Bread::SoftTin, "soft_tin"),
    (Bread::SweetBun, "sweet_bun"),
    (Bread::RichEgg, "rich_egg"),
    (Bread::PlainTin, "plain_tin"),
    (Bread::Rye, "rye"),
];

pub(super) const PARTS: &[(PartKind, &str)] = &[
    (PartKind::Paste, "paste"),
    (PartKind::Preferment, "preferment"),
    (PartKind::Final, "final"),
    (PartKind::Filling, "filling"),
    (PartKind::Topping, "topping"),
    (PartKind::Wash, "wash"),
];

pub(super) const AHEAD: &[(Ahead, &str)] = &[
    (Ahead::EachBench, "each_bench"),
    (Ahead::TeacherBowl, "teacher_bowl"),
];

pub(super) const ROLES: &[(Role, &str)] = &[
    (Role::Flour, "flour"),
    (Role::Water, "water"),
    (Role::Liquid, "liquid"),
    (Role::Fat, "fat"),
    (Role::Sugar, "sugar"),
    (Role::Salt, "salt"),
    (Role::Yeast, "yeast"),
    (Role::Dairy, "dairy"),
    (Role::Egg, "egg"),
    (Role::Chocolate, "chocolate"),
    (Role::Inclusion, "inclusion"),
];

pub(super) const ALLERGENS: &[(Allergen, &str)] = &[
    (Allergen::Wheat, "wheat"),
    (Allergen::Rye, "rye"),
    (Allergen::Barley, "barley"),
    (Allergen::Oats, "oats"),
    (Allergen::Crustaceans, "crustaceans"),
    (Allergen::Eggs, "eggs"),
    (Allergen::Fish, "fish"),
    (Allergen::Peanuts, "peanuts"),
    (Allergen::Soybeans, "soybeans"),
    (Allergen::Milk, "milk"),
    (Allergen::Almonds, "almonds"),
    (Allergen::Hazelnuts, "hazelnuts"),
    (Allergen::Walnuts, "walnuts"),
    (Allergen::Cashews, "cashews"),
    (Allergen::Pecans, "pecans"),
    (Allergen::BrazilNuts, "brazil_nuts"),
    (Allergen::Pistachios, "pistachios"),
    (Allergen::Macadamias, "macadamias"),
    (Allergen::Celery, "celery"),
    (Allergen::Mustard, "mustard"),
    (Allergen::Sesame, "sesame"),
    (Allergen::Sulphites, "sulphites"),
    (Allergen::Lupin, "lupin"),
    (Allergen::Molluscs, "molluscs"),
];

pub(super) const MATERIALS: &[(Material, &str)] = &[
    (Material::Steel, "steel"),
    (Material::Aluminium, "aluminium"),
    (Material::Copper, "copper"),
    (Material::Glass, "glass"),
    (Material::Ceramic, "ceramic"),
    (Material::Plastic, "plastic"),
    (Material::Wood, "wood"),
];

pub(super) const PRINTED_FACTORS: &[(PrintedFactor, &str)] = &[
    (PrintedFactor::Hand, "hand"),
    (PrintedFactor::TestKitchen, "test_kitchen"),
    (PrintedFactor::HomeMixer, "home_mixer"),
    (PrintedFactor::FastMixing, "fast_mixing"),
];

pub(super) const RULES: &[(RuleSet, &str)] = &[
    (RuleSet::Strictest, "strictest"),
    (RuleSet::UnitedStates, "united_states"),
    (RuleSet::UnitedKingdom, "united_kingdom"),
    (RuleSet::France, "france"),
];

pub(super) const SHAPES: &[(Shape, &str)] = &[
    (Shape::Slab, "slab"),
    (Shape::Cylinder, "cylinder"),
    (Shape::Sphere, "sphere"),
];

pub(super) const BAKED_SHAPES: &[(BakedShape, &str)] =
    &[(BakedShape::Loaf, "loaf"), (BakedShape::Apart, "apart")];

pub(super) const BAKE_LENGTHS: &[(BakeLength, &str)] = &[
    (BakeLength::Predicted, "predicted"),
    (BakeLength::Programme, "programme"),
];

pub(super) const COOLING_VESSELS: &[(CoolingVessel, &str)] = &[
    (CoolingVessel::Bowl, "bowl"),
    (CoolingVessel::Dish, "dish"),
    (CoolingVessel::Tray, "tray"),
    (CoolingVessel::Jar, "jar"),
    (CoolingVessel::Bag, "bag"),
];

pub(super) const HEAT_FROM: &[(HeatFrom, &str)] = &[
    (HeatFrom::Both, "both"),
    (HeatFrom::Top, "top"),
    (HeatFrom::Bottom, "bottom"),
];

pub(super) const WORKS: &[(StepKind, &str)] = &[
    (StepKind::Scald, "scald"),
    (StepKind::CoolPaste, "cool_paste"),
    (StepKind::ChillPaste, "chill_paste"),
    (StepKind::MixPreferment, "mix_preferment"),
    (StepKind::StandPreferment, "stand_preferment"),
    (StepKind::ChillPreferment, "chill_preferment"),
    (StepKind::WarmUp, "warm_up"),
    (StepKind::Mix, "mix"),
    (StepKind::ButterIn, "butter_in"),
    (StepKind::Bulk, "bulk"),
    (StepKind::Divide, "divide"),
    (StepKind::Round, "round"),
    (StepKind::Rest, "rest"),
    (StepKind::Shape, "shape"),
    (StepKind::Tin, "tin"),
    (StepKind::Proof, "proof"),
    (StepKind::Melt, "melt"),
    (StepKind::Drizzle, "drizzle"),
    (StepKind::Brush, "brush"),
    (StepKind::Bake, "bake"),
    (StepKind::Cool, "cool"),
    (StepKind::Own, "own"),
    (StepKind::LaterDough, "later_dough"),
    (StepKind::LaterProof, "later_proof"),
    (StepKind::Refill, "refill"),
    (StepKind::LaterBake, "later_bake"),
    (StepKind::Preheat, "preheat"),
];

/// The stored name of `value`; a test checks that every variant has one.
pub(super) fn spelt<T: PartialEq>(value: T, table: &[(T, &'static str)]) -> &'static str {
    let found = table.iter().find(|(known, _)| *known == value);
    found.map_or("", |(_, word)| word)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn each_has_one_word<T: Copy + PartialEq + std::fmt::Debug>(
        all: &[T],
        table: &[(T, &'static str)],
    ) {
        assert_eq!(all.len(), table.len());
        for value in all {
            assert_ne!(spelt(*value, table), "", "{value:?}");
        }
        let mut words: Vec<&str> = table.iter().map(|(_, word)| *word).collect();
        words.sort_unstable();
        words.dedup();
        assert_eq!(words.len(), table.len());
    }

    #[test]
    fn every_choice_has_one_word_of_its_own() {
        each_has_one_word(&Bread::ALL, BREADS);
        each_has_one_word(&PartKind::ALL, PARTS);
        each_has_one_word(&Ahead::ALL, AHEAD);
        each_has_one_word(&Role::ALL, ROLES);
        each_has_one_word(&Allergen::ALL, ALLERGENS);
        each_has_one_word(&Material::ALL, MATERIALS);
        each_has_one_word(&RuleSet::ALL, RULES);
        each_has_one_word(&PrintedFactor::ALL, PRINTED_FACTORS);
        each_has_one_word(&Shape::ALL, SHAPES);
        each_has_one_word(&CoolingVessel::ALL, COOLING_VESSELS);
        each_has_one_word(&HeatFrom::ALL, HEAT_FROM);
        each_has_one_word(&StepKind::ALL, WORKS);
    }
}
