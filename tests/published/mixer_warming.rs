//! How much mixing warms a dough, against printed friction factors.

use softcrumb::engine::heat::{
    Dough, DoughItem, DoughTemperature, HeatPart, LiquidUse, Material, Matter, PrintedFactor,
    ThermalMaterial, Vessel, dough_temperature,
};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Mass, Minutes, Temperature, WarmingRate};

use crate::accuracy::{lies_in, note_range};
use crate::printed::{agrees, agrees_within, number};

/// Where everything starts, °C.
const START: f64 = 21.0;

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

/// A straight dough of 1 kg, everything at room temperature, so that the sum of temperatures and the
/// balance mean the same warming.
fn straight(water: f64, mixed: f64) -> Dough {
    let flour = 1000.0 / (1.0 + water);
    let item = |number: u16, g: f64, handling| DoughItem {
        component: HeatPart {
            of: "".into(),
            mass: grams(g),
            stuff: ThermalMaterial::Food(
                Matter::of(&Listed::numbered(number).unwrap().row().composition()).unwrap(),
            ),
            temperature: celsius(START),
        },
        handling,
    };
    Dough {
        items: vec![
            item(1, flour, LiquidUse::Flour),
            item(200, flour * water, LiquidUse::Water),
        ],
        vessel: Some(Vessel::new(Material::Steel, grams(900.0), celsius(START)).unwrap()),
        dry_flour: grams(flour),
        friction: Dough::FRICTION,
        friction_spread: Dough::FRICTION_SPREAD,
        minutes: minutes(mixed),
        usual: minutes(9.0),
        stood: Minutes::ZERO,
        room: celsius(START),
    }
}

fn mixed(dough: &Dough) -> DoughTemperature {
    dough_temperature(dough).unwrap()
}

/// Least, likely and most warming in all, K.
fn warming(mixed: &DoughTemperature) -> (f64, f64, f64) {
    let over = |t: Temperature| t.celsius() - START;
    (over(mixed.low), over(mixed.temperature), over(mixed.high))
}

/// Common practice: a straight dough of about 1 kg mixed ten minutes at medium speed warms by 3.5 to
/// 5 K in all; sources differ by some 2.5 K to either side.
#[test]
pub(crate) fn ten_minutes_warm_a_kilogram_by_three_and_a_half_to_five_kelvin() {
    for water in [0.6, 0.65, 0.7] {
        let (low, likely, high) = warming(&mixed(&straight(water, 10.0)));
        lies_in(likely, &(3.5..=5.0), 0.0);
        agrees(likely - low, "2.5");
        agrees(high - likely, "2.5");
    }
}

/// Source: heat of hydration 15.1 kJ/kg of flour (*Baking & Snack*, "Targeting dough temperatures"):
/// computed 3.8, 3.3 and 2.9 K at 50, 65 and 80 % water with a specific heat of flour of 1.85
/// kJ/(kg·K). Choi and Okos give flour less, so up to 0.2 K more here.
#[test]
pub(crate) fn hydration_alone_warms_a_dough_by_three_to_four_kelvin() {
    for (water, printed) in [(0.5, "3.8"), (0.65, "3.3"), (0.8, "2.9")] {
        let dough = Dough {
            vessel: None,
            ..straight(water, 0.0)
        };
        agrees_within(warming(&mixed(&dough)).1, printed, 0.2);
    }
}

/// Source: factors of the sum of three temperatures are three times the whole warming. Flour
/// miller's bakers' line (from memory): stand mixer 22 to 24 °F in 4 + 4 min. Mixer maker's
/// statement: about 1 °F a minute, 2 to 5 min. Artisan Baking Center, class notes: 2 to 3 °F above
/// the mean of what goes in. General how-to page: 2 °F a minute in the sum, 8 min. *Cook's
/// Illustrated*, "Precise water temperature": 20 °F. *Pizza Today*, June 2018: 35 °F, fast mixing.
///
/// DISAGREEMENT: they differ by a factor of five; each meets the range of the default.
#[test]
pub(crate) fn every_printed_friction_factor_meets_the_range_of_the_default() {
    let sum = |factor: &str| number(factor) / 3.0 / 1.8;
    let whole = |rise: &str| number(rise) / 1.8;
    for (who, at, from, to) in [
        ("22 to 24 in the sum", 8.0, sum("22"), sum("24")),
        ("1 a minute", 5.0, whole("2"), whole("5")),
        ("2 to 3 in all", 8.0, whole("2"), whole("3")),
        ("2 a minute in the sum", 8.0, sum("16"), sum("16")),
        ("20 in the sum", 8.0, sum("20"), sum("20")),
        ("35 in the sum", 10.0, sum("35"), sum("35")),
    ] {
        let (low, likely, high) = warming(&mixed(&straight(0.65, at)));
        note_range(likely, from, to);
        assert!(
            from <= high + 0.05 && to >= low - 0.05,
            "{who}: {low} {high}"
        );
    }
}

/// Source: FF / 3 at equal starting temperatures: 20, 22, 24 and 35 °F are 3.7, 4.1, 4.4 and 6.5 K.
/// A mixer whose friction makes up what hydration leaves is met to a hundredth.
#[test]
fn a_mixer_taught_by_a_printed_factor_warms_by_a_third_of_it() {
    for (factor, printed) in [("20", "3.7"), ("22", "4.1"), ("24", "4.4"), ("35", "6.5")] {
        let target = number(factor) / 3.0 / 1.8;
        agrees(target, printed);
        let idle = Dough {
            friction: WarmingRate::from_kelvin_per_minute(0.0).unwrap(),
            ..straight(0.65, 10.0)
        };
        let without = mixed(&idle);
        let rate = (target - warming(&without).1) / without.warmed_for().minutes();
        let taught = Dough {
            friction: WarmingRate::from_kelvin_per_minute(rate).unwrap(),
            ..idle
        };
        agrees_within(warming(&mixed(&taught)).1, printed, 0.05);
        // Friction between 0.05 and 0.45 K/min: ten minutes of 0.2 to 1.2 K, and of fast mixing.
        assert!((0.04..0.45).contains(&rate), "{factor}: {rate}");
    }
}

/// Source: the temperature of a stirred body follows `dT/dt = r − k·(T − T_room)` (OpenStax, *College
/// Physics 2e*, §14.5, on Newton's law of cooling); here by ten thousand small steps.
#[test]
fn the_closed_form_is_what_many_small_steps_come_to() {
    for (room, rate) in [(5.0, 0.12), (35.0, 0.12), (21.0, 2.0)] {
        let dough = Dough {
            room: celsius(room),
            friction: WarmingRate::from_kelvin_per_minute(rate).unwrap(),
            ..straight(0.65, 20.0)
        };
        let made = mixed(&dough);
        let volume = made.exchange.volume.cubic_centimetres() * 1e-6;
        let surface = (36.0 * std::f64::consts::PI * volume * volume).cbrt();
        let k = 60.0 * 9.0 * surface / made.exchange.capacity.joules_per_kelvin();
        let mut t = made.mixed.temperature.celsius();
        for _ in 0..10_000 {
            t += 0.002 * (rate - k * (t - room));
        }
        agrees_within(made.temperature.celsius(), &t.to_string(), 0.001);
    }
}

/// Source: a degree Fahrenheit is 5/9 K (NIST SP 811); the factors as printed.
#[test]
fn printed_factors_are_as_printed() {
    let printed = ["5", "20", "23", "35"];
    for (factor, printed) in PrintedFactor::ALL.into_iter().zip(printed) {
        agrees(factor.factor().kelvin() * 1.8, printed);
    }
}
