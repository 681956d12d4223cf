//! Cooling in a vessel, against exact short cylinders, evaporation by the Lewis relation, and bowls.

use crate::printed::agrees;
use softcrumb::engine::heat::{
    Cover, Filling, OpenAir, Probe, VesselStay, evaporated, follow_in_vessel,
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
    let course = follow_in_vessel(filling, celsius(start), &[stay]).unwrap();
    let when = course
        .curve
        .reaches(celsius(target), Probe::Centre, Minutes::ZERO);
    when.unwrap().minutes()
}

/// Source: Çengel, *Heat and Mass Transfer*, example 4-8: a brass cylinder, chart 63 °C in the middle
/// and 62 °C at the middle of the top; exact by the product of slab and cylinder 62.73 and 62.12.
#[test]
fn a_brass_cylinder_cools_as_the_product_of_slab_and_cylinder() {
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
    let course = follow_in_vessel(
        &brass,
        celsius(120.0),
        &[stay(15.0, 25.0, 60.0, Cover::Surrounded)],
    )
    .unwrap();
    let end = course.curve.end().unwrap();
    println!("{:?} {:?}", end, course.curve.moments.len());
    assert!((end.centre.celsius() - 62.73).abs() < 0.05, "{end:?}");
}

/// Source: computed with the exact series: 30, 23 and 21 °C in the middle after 117, 201, 277 min.
#[test]
fn a_closed_bowl_of_even_coefficient_follows_the_exact_series() {
    for (target, exact) in [(30.0, 117.0), (23.0, 201.0), (21.0, 277.0)] {
        let found = time_to(
            &bowl(),
            65.0,
            stay(600.0, 20.0, 8.0, Cover::Surrounded),
            target,
        );
        println!("{target} {found} {exact}");
        assert!(
            (found / exact - 1.0).abs() < 0.02,
            "{target}: {found}, {exact}"
        );
    }
    for (target, h, exact) in [
        (21.1, 6.0, 116.0),
        (5.0, 6.0, 4.8 * 60.0),
        (21.1, 11.0, 70.0),
        (5.0, 3.0, 11.9 * 60.0),
    ] {
        let found = time_to(
            &bowl(),
            57.2,
            stay(900.0, 4.0, h, Cover::Surrounded),
            target,
        );
        println!("{target} {h} {found} {exact}");
    }
}

#[test]
fn open_and_closed() {
    for (target, exact) in [(30.0, 28.0), (23.0, 53.0), (21.0, 69.0)] {
        let found = time_to(
            &bowl(),
            65.0,
            stay(600.0, 20.0, 8.0, Cover::Open(OpenAir::HUMIDITY)),
            target,
        );
        println!("open {target} {found} {exact}");
    }
    for (target, exact) in [(30.0, 93.0), (23.0, 168.0), (21.0, 236.0)] {
        let found = time_to(&bowl(), 65.0, stay(600.0, 20.0, 8.0, Cover::Closed), target);
        println!("closed {target} {found} {exact}");
    }
    for start in [65.0, 75.0, 85.0] {
        let course = follow_in_vessel(
            &bowl(),
            celsius(start),
            &[stay(600.0, 20.0, 8.0, Cover::Open(OpenAir::HUMIDITY))],
        )
        .unwrap();
        let when = course
            .curve
            .reaches(celsius(30.0), Probe::Mean, Minutes::ZERO)
            .unwrap();
        let at = course
            .curve
            .moments
            .iter()
            .position(|m| m.time >= when)
            .unwrap();
        println!(
            "{start}: {} g at 30, {} at end",
            course.evaporated[at].grams(),
            course.steam().grams()
        );
    }
    let air = OpenAir {
        temperature: celsius(20.0),
        humidity: OpenAir::HUMIDITY,
    };
    for t in [40.0, 50.0, 60.0, 70.0, 80.0, 90.0] {
        let steam = evaporated(
            celsius(t),
            air,
            Length::from_metres(0.12).unwrap(),
            minutes(1.0),
        )
        .unwrap();
        println!("{t} {}", steam.grams());
    }
    let begun = std::time::Instant::now();
    for _ in 0..100 {
        let three = [
            stay(30.0, 20.0, 8.0, Cover::Open(OpenAir::HUMIDITY)),
            stay(20.0, 0.0, 150.0, Cover::Surrounded),
            stay(720.0, 4.0, 6.0, Cover::Closed),
        ];
        std::hint::black_box(follow_in_vessel(&bowl(), celsius(65.0), &three).unwrap());
    }
    println!("{:?} a curve", begun.elapsed() / 100);
    agrees(1.0, "1");
}
