//! Ice that goes into a dough or its water, against printed tables and computed doughs.

use softcrumb::engine::formula::{Formula, Line, Part, PartKind};
use softcrumb::engine::heat::{
    Dough, DoughItem, HeatPart, LiquidUse, Matter, ThermalMaterial, dough_temperature,
};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Mass, Minutes, Temperature, WarmingRate};
use softcrumb::results::heat::{MixingResult, mixer_load, set_liquid_temperature};
use softcrumb::sheet::{HeatSettings, Kitchen};

use crate::mixes::iced;
use crate::printed::{agrees_within, number};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn item(stuff: ThermalMaterial, g: f64, t: f64, handling: LiquidUse) -> DoughItem {
    DoughItem {
        component: HeatPart {
            of: "".into(),
            mass: grams(g),
            stuff,
            temperature: celsius(t),
        },
        handling,
    }
}

/// 500 g of flour at 21 °C, 225 g of water at 20 °C and 100 g more of something, warmed by 4 K so
/// fast that the room has no part in it.
fn with_100_grams(of: ThermalMaterial, t: f64) -> f64 {
    let flour = Matter::of(&Listed::numbered(1).unwrap().row().composition()).unwrap();
    let dough = Dough {
        items: vec![
            item(ThermalMaterial::Food(flour), 500.0, 21.0, LiquidUse::Flour),
            item(
                ThermalMaterial::Food(Matter::WATER),
                225.0,
                20.0,
                LiquidUse::Water,
            ),
            item(of, 100.0, t, LiquidUse::AsItIs),
        ],
        vessel: None,
        dry_flour: grams(500.0),
        friction: WarmingRate::from_kelvin_per_minute(20.0).unwrap(),
        friction_spread: Dough::FRICTION_SPREAD,
        minutes: Minutes::from_minutes(0.2).unwrap(),
        usual: Minutes::from_minutes(9.0).unwrap(),
        stood: Minutes::ZERO,
        room: celsius(20.0),
    };
    dough_temperature(&dough).unwrap().temperature.celsius()
}

/// Source: computed balance with a heat of melting of 333.6 kJ/kg, a specific heat of ice of 2.1 and
/// of flour of 1.85 kJ/(kg·K): 9.4, 9.0 and 7.8 °C with ice of 0, −5 and −18 °C, 27.7 °C with water.
/// Choi and Okos give flour less: up to 0.6 K.
#[test]
pub(crate) fn a_fifth_of_the_flour_as_ice_takes_a_dough_down_by_eighteen_to_twenty_kelvin() {
    let water = with_100_grams(ThermalMaterial::Food(Matter::WATER), 20.0);
    agrees_within(water, "27.7", 0.5);
    for (t, printed) in [(0.0, "9.4"), (-5.0, "9.0"), (-18.0, "7.8")] {
        let ice = with_100_grams(ThermalMaterial::Ice, t);
        agrees_within(ice, printed, 0.6);
        assert!((17.3..=20.3).contains(&(water - ice)), "{}", water - ice);
    }
}

/// Source: an ice-machine dealer's table for bakeries: pounds of ice in place of a pound of water,
/// from the tap at 80 and 60 °F to the temperature wanted. By the exact rule, fall / (tap + 112), 5 °F
/// from 80 °F take 0.0260; the table repeats 0.0258: up to 0.003 of ice, which are 0.3 K.
#[test]
pub(crate) fn ice_in_place_of_water_is_as_in_the_dealers_table() {
    for (tap, wanted, printed) in [
        ("80", "75", "0.026"),
        ("80", "70", "0.052"),
        ("80", "65", "0.077"),
        ("80", "60", "0.103"),
        ("80", "50", "0.155"),
        ("80", "40", "0.206"),
        ("60", "50", "0.057"),
        ("60", "40", "0.115"),
    ] {
        let (tap, ice) = ((number(tap) - 32.0) / 1.8, number(printed));
        let fall = tap - (number(wanted) - 32.0) / 1.8;
        agrees_within(tap - iced(ice, 1.0 - ice, tap), &fall.to_string(), 0.35);
    }
}

/// A formula of flour, water and something more.
fn formula(more: u16, g: f64, at: Option<Temperature>) -> Formula {
    let line = |number: u16, g: f64, temperature| Line {
        temperature,
        ..Line::new(Food::Listed(Listed::numbered(number).unwrap()), grams(g))
    };
    Formula {
        parts: vec![Part {
            lines: vec![
                line(1, 500.0, None),
                line(200, 225.0, None),
                line(more, g, at),
            ],
            ..Part::empty(PartKind::Final, "Dough".to_owned())
        }],
    }
}

fn dough(formula: &Formula) -> f64 {
    let mixing = MixingResult::of(formula, &Kitchen::default(), &HeatSettings::default());
    mixing.unwrap().dough.temperature.celsius()
}

/// Common practice: ice in a dough melts, comes from the freezer and is never warmer than 0 °C.
#[test]
fn the_ingredient_ice_melts_and_starts_below_nought() {
    let (kitchen, settings) = (Kitchen::default(), HeatSettings::default());
    let water = dough(&formula(200, 50.0, Some(celsius(0.0))));
    let at_nought = dough(&formula(201, 50.0, Some(celsius(0.0))));
    let from_freezer = dough(&formula(201, 50.0, None));
    // 333.4 kJ/kg on some 2.3 kJ/K.
    assert!(
        (6.0..8.0).contains(&(water - at_nought)),
        "{water} {at_nought}"
    );
    assert!(from_freezer < at_nought);
    agrees_within(
        from_freezer,
        &dough(&formula(201, 50.0, Some(celsius(-18.0)))).to_string(),
        1e-9,
    );
    agrees_within(
        at_nought,
        &dough(&formula(201, 50.0, Some(celsius(20.0)))).to_string(),
        1e-9,
    );
    // It is no liquid that could be warmed, and counts as water in the formula.
    let mut with_ice = formula(201, 50.0, None);
    let load = mixer_load(&with_ice, &kitchen, &settings).unwrap();
    assert_eq!(load.dough.items[2].handling, LiquidUse::AsItIs);
    set_liquid_temperature(&mut with_ice, celsius(30.0)).unwrap();
    assert_eq!(with_ice.parts[0].lines[2].temperature, None);
    assert_eq!(with_ice.parts[0].lines[1].temperature, Some(celsius(30.0)));
}

/// Heat is kept: what each brings adds up to what the dough holds above the wanted temperature,
/// melting, friction and room included.
#[test]
fn the_balance_of_a_dough_with_ice_adds_up() {
    let formula = formula(201, 60.0, None);
    let mixing = MixingResult::of(&formula, &Kitchen::default(), &HeatSettings::default()).unwrap();
    let sum: f64 = mixing.shares.iter().map(|share| share.heat.joules()).sum();
    let over = mixing.dough.temperature.celsius() - HeatSettings::default().dough.celsius();
    let capacity = mixing.dough.exchange.capacity.joules_per_kelvin();
    // Specific heats change by less than a hundredth over these temperatures.
    agrees_within(sum / capacity, &over.to_string(), 0.01 * over.abs() + 0.05);
}

/// Source: *Baking & Snack*, "Targeting dough temperatures": dry flour gives 15.1 kJ/kg as it takes
/// up water. Flour of a preferment has given it before: moved there, it warms the dough no more.
#[test]
fn only_dry_flour_of_the_final_dough_gives_heat_of_hydration() {
    let (kitchen, settings) = (Kitchen::default(), HeatSettings::default());
    let mut straight = formula(200, 50.0, None);
    let dry = |formula: &Formula| {
        let load = mixer_load(formula, &kitchen, &settings).unwrap();
        load.dough.dry_flour.grams()
    };
    agrees_within(dry(&straight), "500", 1e-9);
    for kind in [PartKind::Preferment, PartKind::Paste] {
        let mut part = Part::empty(kind, "Before".to_owned());
        part.lines = vec![
            Line::new(Food::Listed(Listed::numbered(1).unwrap()), grams(200.0)),
            Line::new(Food::Listed(Listed::numbered(200).unwrap()), grams(200.0)),
        ];
        straight.parts.insert(0, part);
        straight.parts.last_mut().unwrap().lines[0].mass = grams(300.0);
        agrees_within(dry(&straight), "300", 1e-9);
        let mixing = MixingResult::of(&straight, &kitchen, &settings).unwrap();
        agrees_within(mixing.dough.mixed.gained.joules(), "4530", 0.5);
        straight.parts.remove(0);
    }
}
