//! The oven: conversions, scaling and core temperature.

use softcrumb::engine::heat::{
    Air, BakeSetting, Body, Crumb, Exposure, HeatFrom, Phase, PhaseAdvice, Probe, Shape, bake_time,
    boiling_at, core_target, fan_to_still, follow, review, still_to_fan, thickness_of,
};
use softcrumb::engine::quantity::{
    Altitude, Conductivity, Density, Factor, Length, Mass, Minutes, SpecificHeat,
    SurfaceCoefficient, Temperature,
};

use crate::printed::{agrees, agrees_within};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

fn setting(oven: f64) -> BakeSetting {
    BakeSetting {
        oven: celsius(oven),
        dough: celsius(28.0),
        core: celsius(92.0),
    }
}

/// Common practice: a fan oven is set 20 °C lower.
#[test]
fn a_fan_oven_is_set_20_lower() {
    agrees(still_to_fan(celsius(180.0)).unwrap().celsius(), "160");
    agrees(fan_to_still(celsius(160.0)).unwrap().celsius(), "180");
}

/// The scaled time against the solver, on pieces whose surface is at once as hot as the oven: both
/// then are conduction, and the logarithm is off only by what is left of the first terms of the
/// series, 3 % here.
#[test]
fn the_scaled_time_is_that_of_conduction() {
    let to_core = |half: f64, oven: f64| {
        let piece = Body {
            shape: Shape::Cylinder,
            half: Length::from_metres(half).unwrap(),
            mass: Mass::from_grams(500.0).unwrap(),
            specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(2800.0).unwrap(),
            conductivity: Conductivity::from_watts_per_metre_kelvin(0.4).unwrap(),
            density: Density::from_kilograms_per_cubic_metre(400.0).unwrap(),
        };
        let coefficient = SurfaceCoefficient::from_watts_per_square_metre_kelvin(20_000.0).unwrap();
        let air = Air {
            temperature: celsius(oven),
            coefficient,
        };
        let stay = Exposure {
            minutes: minutes(600.0),
            air,
        };
        follow(&piece, celsius(28.0), &[stay])
            .unwrap()
            .reaches(celsius(92.0), Probe::Centre, Minutes::ZERO)
            .unwrap()
    };
    let known = to_core(0.03, 120.0);
    let thicker = Factor::from_number(1.5).unwrap();
    let scaled = bake_time(known, &setting(120.0), &setting(120.0), thicker).unwrap();
    let solved = to_core(0.045, 120.0).minutes();
    agrees_within(
        scaled.by_conduction.minutes(),
        &solved.to_string(),
        0.03 * solved,
    );
    assert!(scaled.from < scaled.by_conduction && scaled.by_conduction < scaled.to);
}

/// A piece alike in shape and eight times as heavy is twice as thick.
#[test]
fn eight_times_as_heavy_is_twice_as_thick() {
    agrees(
        thickness_of(Factor::from_number(8.0).unwrap())
            .unwrap()
            .number(),
        "2.000",
    );
}

#[test]
fn a_hotter_oven_bakes_faster_and_one_cooler_than_the_core_never() {
    let of = |oven| bake_time(minutes(30.0), &setting(180.0), &setting(oven), Factor::ONE);
    assert!(of(200.0).unwrap().by_conduction < of(170.0).unwrap().by_conduction);
    agrees(of(180.0).unwrap().by_conduction.minutes(), "30.00");
    assert!(of(90.0).is_err());
}

/// Source: boiling points by IAPWS-95: at 3000 m water boils at 89.98 °C, so no core gets to the 91
/// that a soft loaf may have at sea level.
#[test]
fn altitude_caps_the_core() {
    let at = |metres| {
        let boils = boiling_at(Altitude::from_metres(metres).unwrap())
            .unwrap()
            .temperature;
        core_target(Crumb::SoftEnriched, boils).unwrap()
    };
    assert!(!at(0.0).capped);
    assert!(at(3000.0).capped);
    assert!(at(3000.0).to.celsius() < 89.98);
    agrees(at(0.0).to.celsius(), "91");
}

#[test]
fn phases_follow_one_another_and_the_last_hot_one_is_tented() {
    let phase = |m, t, from, fan| Phase {
        minutes: minutes(m),
        temperature: celsius(t),
        from,
        fan,
    };
    let programme = review(&[
        phase(8.0, 170.0, HeatFrom::Bottom, false),
        phase(10.0, 160.0, HeatFrom::Both, true),
        phase(4.0, 200.0, HeatFrom::Top, false),
    ])
    .unwrap();
    agrees(programme.total.minutes(), "22");
    let seen: Vec<_> = programme.phases.iter().map(|one| one.advice).collect();
    assert_eq!(
        seen,
        [PhaseAdvice::Leave, PhaseAdvice::Tent, PhaseAdvice::MoveDown]
    );
    agrees(programme.phases[1].as_still.celsius(), "180");
    agrees(programme.phases[2].begins.minutes(), "18");
    // (170·8 + 180·10 + 200·4) / 22
    agrees(programme.mean_as_still.celsius(), "180.0");
    assert!(review(&[]).is_err());
}
