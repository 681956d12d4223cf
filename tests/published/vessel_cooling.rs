//! Cooling in a vessel, against exact short cylinders, evaporation by the Lewis relation, and bowls.

use crate::accuracy::{lies_in, note, note_range};
use crate::printed::{agrees, agrees_within};
use softcrumb::engine::heat::{
    Cover, Filling, OpenAir, Probe, VesselStay, evaporated, simulate_in_vessel,
};
use softcrumb::engine::quantity::{
    Conductivity, Density, HeatCapacity, Length, Mass, Minutes, SpecificHeat, SurfaceCoefficient,
    Temperature,
};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn minutes(t: f64) -> Minutes {
    Minutes::from_minutes(t).unwrap()
}

fn stay(time: f64, around: f64, h: f64, cover: Cover) -> VesselStay {
    VesselStay {
        minutes: minutes(time),
        around: celsius(around),
        coefficient: SurfaceCoefficient::from_watts_per_square_metre_kelvin(h).unwrap(),
        cover,
    }
}

/// 226 g of a wet paste in a bowl 12 cm across: 2 cm deep, k 0.55, a 1.35e-7, c 3600.
fn bowl() -> Filling {
    Filling {
        across: Length::from_metres(0.12).unwrap(),
        deep: Length::from_metres(0.02).unwrap(),
        mass: Mass::from_grams(226.0).unwrap(),
        specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(4074.0).unwrap(),
        conductivity: Conductivity::from_watts_per_metre_kelvin(0.55).unwrap(),
        density: Density::from_kilograms_per_cubic_metre(1000.0).unwrap(),
        vessel: HeatCapacity::from_joules_per_kelvin(0.0),
        vessel_at: celsius(65.0),
    }
}

fn time_to(filling: &Filling, start: f64, stay: VesselStay, target: f64) -> f64 {
    let course = simulate_in_vessel(filling, celsius(start), &[stay]).unwrap();
    let when = course
        .curve
        .reaches(celsius(target), Probe::Centre, Minutes::ZERO);
    when.unwrap().minutes()
}

/// Source: Çengel, *Heat and Mass Transfer*, example 4-8: a brass cylinder, chart 63 °C in the middle
/// and 62 °C at the middle of the top; exact by the product of slab and cylinder 62.73 and 62.12.
#[test]
pub(crate) fn a_brass_cylinder_cools_as_the_product_of_slab_and_cylinder() {
    let brass = Filling {
        across: Length::from_metres(0.10).unwrap(),
        deep: Length::from_metres(0.12).unwrap(),
        mass: Mass::from_grams(8000.0).unwrap(),
        specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(381.0).unwrap(),
        conductivity: Conductivity::from_watts_per_metre_kelvin(110.0).unwrap(),
        density: Density::from_kilograms_per_cubic_metre(110.0 / 3.39e-5 / 381.0).unwrap(),
        vessel: HeatCapacity::from_joules_per_kelvin(0.0),
        vessel_at: celsius(120.0),
    };
    let course = simulate_in_vessel(
        &brass,
        celsius(120.0),
        &[stay(15.0, 25.0, 60.0, Cover::Surrounded)],
    )
    .unwrap();
    let end = course.curve.end().unwrap();
    agrees(end.centre.celsius(), "62.7");
    // The book reads 62 °C off a chart at the middle of the top; its mean over the top is cooler.
    agrees(end.surface.celsius(), "62");
}

/// Source: product of the exact series of slab and cylinder (Incropera, sections 5.5 and 5.6), summed
/// with `scipy` 1.17: 226 g, 12 cm across, 2 cm deep, from 65 °C in 20 °C, 8 W/(m²·K) all round.
#[test]
pub(crate) fn a_bowl_of_even_coefficient_follows_the_exact_series() {
    for (target, exact) in [(30.0, "117"), (23.0, "201"), (21.0, "277")] {
        let even = stay(600.0, 20.0, 8.0, Cover::Surrounded);
        // Within one part in a hundred: of time, from a grid of 10 layers.
        let exact_minutes: f64 = exact.parse().unwrap();
        agrees_within(
            time_to(&bowl(), 65.0, even, target),
            exact,
            exact_minutes / 100.0,
        );
    }
}

/// Source: the exact series of a slab (Carslaw and Jaeger, *Conduction of Heat in Solids*, section
/// 3.11), summed with `scipy` 1.17: k 0.55, a 1.35e-7, both faces 8 W/(m²·K), from 65 °C in 20 °C; the
/// middle is at 30 °C after so many hours. A layer many times as wide as deep cools as a slab.
#[test]
pub(crate) fn a_wide_shallow_layer_cools_as_a_slab() {
    let even = stay(1200.0, 20.0, 8.0, Cover::Surrounded);
    for (deep, hours) in [(0.01, "1.1"), (0.02, "2.3"), (0.05, "6.2"), (0.08, "10.7")] {
        let layer = Filling {
            across: Length::from_metres(2.0).unwrap(),
            deep: Length::from_metres(deep).unwrap(),
            mass: Mass::from_grams(std::f64::consts::PI * deep * 1e6).unwrap(),
            ..bowl()
        };
        let exact: f64 = hours.parse().unwrap();
        // Half of the last digit, and one part in a hundred for the grid.
        let found = time_to(&layer, 65.0, even, 30.0) / 60.0;
        agrees_within(found, hours, 0.05 + exact / 100.0);
    }
}

/// Source: the same series in a fridge of 4 °C from 57.2 °C: to 21.1 °C and to 5 °C at 3, 6, 8, 11 and
/// 14 W/(m²·K).
#[test]
pub(crate) fn a_bowl_in_a_fridge_follows_the_exact_series() {
    for (h, warm, cold) in [
        (3.0, 214.0, 11.9 * 60.0),
        (6.0, 116.0, 6.2 * 60.0),
        (8.0, 91.0, 4.8 * 60.0),
        (11.0, 70.0, 3.7 * 60.0),
        (14.0, 58.0, 3.0 * 60.0),
    ] {
        let place = stay(900.0, 4.0, h, Cover::Surrounded);
        let found = [21.1, 5.0].map(|target| time_to(&bowl(), 57.2, place, target));
        note(found[0], warm);
        note(found[1], cold);
        // Half of the last digit, and one part in a hundred for the grid.
        assert!(
            (found[0] - warm).abs() < 0.5 + warm / 100.0,
            "{h}: {found:?}"
        );
        assert!(
            (found[1] - cold).abs() < 3.0 + cold / 100.0,
            "{h}: {found:?}"
        );
    }
}

/// Source: Lewis relation with free convection over a heated plate facing up (Çengel, *Heat and Mass
/// Transfer*, chapters 9 and 14), 12 cm across, water activity 0.98, room 20 °C and 50 %: grams a
/// minute, as computed beside it with `scipy` 1.17.
#[test]
pub(crate) fn an_open_surface_gives_off_what_the_lewis_relation_says() {
    let air = OpenAir {
        temperature: celsius(20.0),
        humidity: OpenAir::HUMIDITY,
    };
    let across = Length::from_metres(0.12).unwrap();
    for (surface, grams, off) in [
        (40.0, "0.20", 0.01),
        (50.0, "0.39", 0.01),
        (60.0, "0.72", 0.02),
        (70.0, "1.23", 0.03),
        (80.0, "2.0", 0.05),
        (90.0, "3.2", 0.05),
    ] {
        let steam = evaporated(celsius(surface), air, across, minutes(1.0)).unwrap();
        agrees_within(steam.grams(), grams, off);
    }
}

/// Source: evaporation from open water tanks in a room of 60 °F, *Engineering Toolbox*, heat loss from
/// open water tanks: 1715, 3179 and 5359 g/(m²·h) at 48.9, 60 and 71.1 °C. A bowl is smaller than a tank and its air rises faster:
/// it gives off no less, and less than half as much again up to 71 °C.
#[test]
pub(crate) fn a_bowl_gives_off_as_much_as_a_tank_or_somewhat_more() {
    let air = OpenAir {
        temperature: celsius(15.6),
        humidity: OpenAir::HUMIDITY,
    };
    let across = Length::from_metres(0.12).unwrap();
    let area = std::f64::consts::PI * 0.12 * 0.12 / 4.0;
    for (surface, tank) in [(48.9, 1715.0), (60.0, 3179.0), (71.1, 5359.0)] {
        let steam = evaporated(celsius(surface), air, across, minutes(60.0)).unwrap();
        let ratio = steam.grams() / area / tank;
        lies_in(ratio, &(1.0..=1.5), 0.05);
    }
}

/// Source: the same rates on a body that is as warm throughout: 3 to 4 % of 226 g are lost from 65 °C,
/// 4 to 5 % from 75 °C, 5 to 6 % from 85 °C, by 30 and by 21 °C. A paste is not stirred as it cools, its
/// surface is cooler than its middle, and it may lose somewhat less by 30 °C.
#[test]
pub(crate) fn an_open_bowl_loses_three_to_six_per_cent() {
    for (start, least, most) in [(65.0, 2.9, 4.0), (75.0, 3.9, 5.1), (85.0, 4.8, 6.4)] {
        let open = stay(600.0, 20.0, 8.0, Cover::Open(OpenAir::HUMIDITY));
        let course = simulate_in_vessel(&bowl(), celsius(start), &[open]).unwrap();
        let when = |target| {
            let moments = &course.curve.moments;
            moments
                .iter()
                .position(|m| m.mean <= celsius(target))
                .unwrap()
        };
        let share = |target| course.evaporated[when(target)].grams() / 2.26;
        note_range(share(30.0), least, most);
        note_range(share(21.0), least, most);
        assert!(
            share(30.0) >= least && share(21.0) <= most,
            "{start}: {} {}",
            share(30.0),
            share(21.0)
        );
        let film = stay(600.0, 20.0, 8.0, Cover::Closed);
        let closed = simulate_in_vessel(&bowl(), celsius(start), &[film]).unwrap();
        assert_eq!(closed.steam(), Mass::ZERO);
    }
}
