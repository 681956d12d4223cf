//! Mixes and ice water against worked examples.

use softcrumb::engine::heat::{HeatPart, Matter, ThermalMaterial, mix};
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

/// The temperature in °C of ice of 0 °C that melted in water from the tap, masses in kg.
pub(crate) fn iced(ice: f64, water: f64, tap: f64) -> f64 {
    let part = |kilograms, stuff, t| HeatPart {
        of: "".into(),
        mass: grams(1000.0 * kilograms),
        stuff,
        temperature: celsius(t),
    };
    let ice = part(ice, ThermalMaterial::Ice, 0.0);
    let water = part(water, ThermalMaterial::Food(Matter::WATER), tap);
    mix(&[ice, water], Heat::ZERO)
        .unwrap()
        .temperature
        .celsius()
}

/// Source: D. Argyriou, "A simple calculation" (trade article): 40 kg of water, tap 20 °C, wanted
/// 10 °C. Printed: replace 4.4 kg of the water by ice. That is the answer to another question:
/// 4.448 kg is for ice on top of all 40 kg; in place of water it takes 4.003 kg, as Gisslen's rule
/// (water × fall / (tap + 112) in °F) also has it. The article's heat of melting is 334.6 and ours
/// 333.43 J/g: up to 0.03 K.
#[test]
fn ice_in_place_of_water_is_less_than_ice_on_top_of_it() {
    agrees_within(iced(4.003, 40.0 - 4.003, 20.0), "10", 0.03);
    agrees_within(iced(4.448, 40.0, 20.0), "10", 0.03);
    let gisslen = 40.0 * (68.0 - 50.0) / (68.0 + 112.0);
    agrees_within(iced(gisslen, 40.0 - gisslen, 20.0), "10", 0.03);
}

/// Source: Gisslen's rule, water × fall / (tap + 112) in °F, for 30 L from 18 to 13 °C.
///
/// DISAGREEMENT: a bakers' short rule, fall × litres / 80, prints 1.875 kg. It forgets that the
/// melted ice must be warmed and that it replaces water, and asks for a fifth too much: the water
/// becomes a kelvin too cold.
#[test]
fn the_short_rule_over_80_asks_for_a_fifth_too_much_ice() {
    let gisslen = 30.0 * (64.4 - 55.4) / (64.4 + 112.0);
    agrees_within(iced(gisslen, 30.0 - gisslen, 18.0), "13", 0.03);
    disagrees(iced(1.875, 30.0 - 1.875, 18.0), "13", 0.90..0.93);
}
