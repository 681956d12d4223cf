//! How the room of grains, drops and sugared water came about, line by line.

use super::blend::Blend;
use super::suspension::{MixConditions, Suspension};
use crate::engine::working::{Given, WorkingLine, given};

const DENSITIES: &str =
    "densities: Choi and Okos, Food Engineering and Process Applications vol. 1 (1986) 93";

/// The room of fat, of solids, of sugar grains and of sugared water: mass by density.
pub(super) fn room_lines(
    all: &Blend,
    mix: &Suspension,
    conditions: &MixConditions,
) -> [WorkingLine; 4] {
    let d = &conditions.densities;
    let by_density = |rule: &'static str, with: Vec<Given>, result: Given| WorkingLine {
        rule: rule.into(),
        with,
        result,
        source: DENSITIES.into(),
    };
    [
        by_density(
            "F / f",
            vec![
                given("F", "fat", all.fat, "g"),
                given("f", "density of fat", d.fat, "g/cm³"),
            ],
            given("v", "room of fat", mix.fat_room, "cm³"),
        ),
        by_density(
            "P / p + X / x + O / o + A / a",
            solids(all, conditions),
            given("v", "room of cocoa and milk solids", mix.solids_room, "cm³"),
        ),
        by_density(
            "U / c",
            vec![
                given("U", "sugar left as grains", mix.grains, "g"),
                given("c", "density of sugar", d.carbohydrate, "g/cm³"),
            ],
            given("v", "room of sugar grains", mix.grains_room, "cm³"),
        ),
        sugared_water_line(all, mix, conditions),
    ]
}

fn solids(all: &Blend, conditions: &MixConditions) -> Vec<Given> {
    let d = &conditions.densities;
    vec![
        given("P", "protein", all.protein, "g"),
        given("p", "its density", d.protein, "g/cm³"),
        given("X", "fibre", all.fibre, "g"),
        given("x", "its density", d.fibre, "g/cm³"),
        given("O", "other carbohydrate", all.other_carbohydrate, "g"),
        given("o", "its density", d.carbohydrate, "g/cm³"),
        given("A", "ash", all.ash, "g"),
        given("a", "its density", d.ash, "g/cm³"),
    ]
}

fn sugared_water_line(all: &Blend, mix: &Suspension, conditions: &MixConditions) -> WorkingLine {
    let d = &conditions.densities;
    let mut rule = "W / w + d / c".to_owned();
    let mut with = vec![
        given("W", "water", all.water, "g"),
        given("w", "its density", d.water, "g/cm³"),
        given("d", "sugar dissolved", mix.dissolved, "g"),
        given("c", "its density", d.carbohydrate, "g/cm³"),
    ];
    if all.alcohol > 0.0 {
        rule.push_str(" + L / l");
        with.push(given("L", "alcohol", all.alcohol, "g"));
        with.push(given("l", "its density", d.alcohol, "g/cm³"));
    }
    WorkingLine {
        rule: rule.into(),
        with,
        result: given("v", "room of sugared water", mix.liquid_room, "cm³"),
        source: DENSITIES.into(),
    }
}

/// Grains and drops as a share of all room.
pub(super) fn crowding_line(mix: &Suspension) -> WorkingLine {
    WorkingLine {
        rule: "(f + c + g) / (f + c + g + w)".into(),
        with: vec![
            given("f", "room of fat", mix.fat_room, "cm³"),
            given("c", "room of cocoa and milk solids", mix.solids_room, "cm³"),
            given("g", "room of sugar grains", mix.grains_room, "cm³"),
            given("w", "room of sugared water", mix.liquid_room, "cm³"),
        ],
        result: given("v", "share of grains and drops", mix.crowding, ""),
        source: "by definition".into(),
    }
}
