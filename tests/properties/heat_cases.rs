//! Generated parts, bodies and stays for questions about heat.

use proptest::prelude::*;
use proptest::sample::select;
use softcrumb::engine::heat::{
    Air, Body, Exposure, HeatPart, Material, Matter, Shape, ThermalMaterial,
};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Length, Mass, Minutes, SurfaceCoefficient, Temperature};

pub(crate) fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

pub(crate) fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

pub(crate) fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

pub(crate) fn any_matter() -> impl Strategy<Value = Matter> {
    let all: Vec<_> = Listed::all()
        .map(|food| Matter::of(&food.row().composition()).unwrap())
        .collect();
    select(all)
}

pub(crate) fn any_stuff() -> impl Strategy<Value = ThermalMaterial> {
    prop_oneof![
        6 => any_matter().prop_map(ThermalMaterial::Food),
        1 => select(&Material::ALL[..]).prop_map(|one| ThermalMaterial::Plain(one.specific_heat())),
    ]
}

pub(crate) fn any_part() -> impl Strategy<Value = HeatPart> {
    (any_stuff(), 0.1..2000.0f64, 0.0..110.0f64).prop_map(|(stuff, mass, t)| HeatPart {
        of: "".into(),
        mass: grams(mass),
        stuff,
        temperature: celsius(t),
    })
}

pub(crate) fn any_body() -> impl Strategy<Value = Body> {
    (
        any_matter(),
        select(&Shape::ALL[..]),
        0.002..0.15f64,
        10.0..3000.0f64,
    )
        .prop_map(|(matter, shape, half, mass)| {
            let half = Length::from_metres(half).unwrap();
            Body::of(
                &matter,
                grams(mass),
                shape,
                half,
                (celsius(60.0), celsius(10.0)),
            )
            .unwrap()
        })
}

pub(crate) fn any_stay() -> impl Strategy<Value = Exposure> {
    (0.0..800.0f64, -20.0..100.0f64, 1.0..500.0f64).prop_map(|(m, t, h)| Exposure {
        minutes: minutes(m),
        air: Air {
            temperature: celsius(t),
            coefficient: SurfaceCoefficient::from_watts_per_square_metre_kelvin(h).unwrap(),
        },
    })
}
