//! Mixes and ice water against worked examples.

use softcrumb::engine::heat::{HeatPart, Matter, ThermalMaterial, ice_in_water, mix};
use softcrumb::engine::quantity::{Heat, Mass, SpecificHeat, Temperature};

use crate::printed::{agrees, agrees_within, disagrees, number};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn plain(kilograms: &str, specific_heat: &str, t: &str) -> HeatPart {
    let heat = SpecificHeat::from_joules_per_kilogram_kelvin(number(specific_heat)).unwrap();
    HeatPart {
        of: "".into(),
        mass: grams(1000.0 * number(kilograms)),
        stuff: ThermalMaterial::Plain(heat),
        temperature: celsius(number(t)),
    }
}

/// Source: OpenStax, *College Physics 2e*, §14.2, worked example "Pouring Cold Water in a Hot Pan":
/// 0.250 kg of water at 20.0 °C poured into a 0.500 kg aluminium pan at 150 °C.
#[test]
fn water_in_a_hot_pan_settles_at_59_1() {
    let components = [plain("0.250", "4186", "20.0"), plain("0.500", "900", "150")];
    agrees(
        mix(&components, Heat::ZERO).unwrap().temperature.celsius(),
        "59.1",
    );
}

/// Source: D. Argyriou, "A simple calculation" (trade article): 40 kg of water, tap 20 °C, wanted
/// 10 °C. Printed: replace 4.4 kg of the water by ice. That is the answer to another question:
/// 4.4 kg is for ice on top of all 40 kg; in place of water it takes 4.00 kg, as Gisslen's rule
/// (water × fall / (tap + 112) in °F) also has it.
#[test]
fn ice_in_place_of_water_is_less_than_ice_on_top_of_it() {
    let answer = ice_in_water(grams(40_000.0), celsius(20.0), celsius(10.0), celsius(0.0)).unwrap();
    // The article's L is 334.6 and ours 333.43 J/g: up to 0.01 kg.
    agrees_within(answer.replacing.grams() / 1000.0, "4.003", 0.01);
    agrees_within(answer.on_top.grams() / 1000.0, "4.448", 0.01);
    agrees(answer.replacing.grams() / 1000.0, "4.0");
    agrees(answer.on_top.grams() / 1000.0, "4.5");
    let gisslen = 40.0 * (68.0 - 50.0) / (68.0 + 112.0);
    agrees_within(
        answer.replacing.grams() / 1000.0,
        &gisslen.to_string(),
        0.01,
    );
}

/// Source: Gisslen's rule, water × fall / (tap + 112) in °F, for 30 L from 18 to 13 °C.
///
/// DISAGREEMENT: a bakers' short rule, fall × litres / 80, prints 1.875 kg. It forgets that the
/// melted ice must be warmed and that it replaces water, and asks for a fifth too much.
#[test]
fn the_short_rule_over_80_asks_for_a_fifth_too_much_ice() {
    let answer = ice_in_water(grams(30_000.0), celsius(18.0), celsius(13.0), celsius(0.0)).unwrap();
    let gisslen = 30.0 * (64.4 - 55.4) / (64.4 + 112.0);
    let replacing = answer.replacing.grams() / 1000.0;
    agrees_within(replacing, &gisslen.to_string(), 0.01);
    disagrees(replacing, "1.875", 0.78..0.86);
}

/// Ice in a mix melts: the balance of the mix and the closed rule for ice water are one.
#[test]
fn mixing_the_ice_that_was_worked_out_gives_the_water_that_was_wanted() {
    let answer = ice_in_water(
        grams(40_000.0),
        celsius(20.0),
        celsius(10.0),
        celsius(-18.0),
    )
    .unwrap();
    let ice = |mass| HeatPart {
        of: "ice".into(),
        mass,
        stuff: ThermalMaterial::Ice,
        temperature: celsius(-18.0),
    };
    let water = |mass| HeatPart {
        of: "water".into(),
        mass,
        stuff: ThermalMaterial::Food(Matter::WATER),
        temperature: celsius(20.0),
    };
    for (ice_mass, water_mass) in [
        (answer.replacing, answer.water.less(answer.replacing)),
        (answer.on_top, answer.water),
    ] {
        let mixed = mix(&[ice(ice_mass), water(water_mass)], Heat::ZERO).unwrap();
        agrees_within(mixed.temperature.celsius(), "10", 1e-6);
    }
}
