//! Conduction through one stay after another against a general solver.

use softcrumb::engine::heat::{Air, Body, Exposure, Shape, simulate};
use softcrumb::engine::quantity::{
    Conductivity, Density, Length, Mass, Minutes, SpecificHeat, SurfaceCoefficient, Temperature,
};

use crate::printed::{agrees_within, number};

fn celsius(printed: &str) -> Temperature {
    Temperature::from_celsius(number(printed)).unwrap()
}

fn stay(printed: &str) -> Exposure {
    let [minutes, air, h] = printed.split('/').collect::<Vec<_>>()[..] else {
        panic!("{printed}");
    };
    let coefficient = SurfaceCoefficient::from_watts_per_square_metre_kelvin(number(h)).unwrap();
    Exposure {
        minutes: Minutes::from_minutes(number(minutes)).unwrap(),
        air: Air {
            temperature: celsius(air),
            coefficient,
        },
    }
}

fn body(shape: &str, half: &str, k: &str, density: &str, heat: &str) -> Body {
    Body {
        shape: match shape {
            "slab" => Shape::Slab,
            "cylinder" => Shape::Cylinder,
            "sphere" => Shape::Sphere,
            other => panic!("{other}"),
        },
        half: Length::from_metres(number(half)).unwrap(),
        mass: Mass::from_grams(500.0).unwrap(),
        specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(number(heat)).unwrap(),
        conductivity: Conductivity::from_watts_per_metre_kelvin(number(k)).unwrap(),
        density: Density::from_kilograms_per_cubic_metre(number(density)).unwrap(),
    }
}

/// Source: the same bodies and surroundings as systems of 200 ordinary differential equations,
/// solved with scipy's `solve_ivp` (LSODA, tolerance 1e-8): 200 random cases, one to three stays.
/// `BatchTarget` is half of the tenth of a degree that a kitchen thermometer shows.
#[test]
fn two_hundred_random_bodies_are_as_warm_as_a_general_solver_has_them() {
    let mut held = 0;
    for row in include_str!("data/conduction_by_scipy.csv").lines().skip(1) {
        let [
            shape,
            half,
            k,
            density,
            heat,
            start,
            stays,
            centre,
            mean,
            surface,
        ] = row.split(',').collect::<Vec<_>>()[..]
        else {
            panic!("{row}");
        };
        let stays: Vec<_> = stays.split(';').map(stay).collect();
        let curve = simulate(&body(shape, half, k, density, heat), celsius(start), &stays).unwrap();
        let end = *curve.end().unwrap();
        agrees_within(end.centre.celsius(), centre, 0.05);
        agrees_within(end.mean.celsius(), mean, 0.05);
        agrees_within(end.surface.celsius(), surface, 0.05);
        held += 1;
    }
    assert_eq!(held, 200);
}
