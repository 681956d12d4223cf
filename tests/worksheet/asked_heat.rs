//! What is asked about heat beside the formula: bare bodies to be cooled, heights to boil at.

use softcrumb::engine::heat::{Air, Body, Exposure, Probe, Shape};
use softcrumb::engine::quantity::{
    Altitude, Conductivity, Density, Length, Mass, Minutes, Pressure, SpecificHeat,
    SurfaceCoefficient, Temperature,
};
use softcrumb::sheet::BoilsBy;
use softcrumb::storage::Json;

use crate::asked::{Read, each, get, in_range, known, number};
use crate::asked_vessel::{VesselAsked, vessel_cooling};
use crate::error::ErrorText;

/// What is asked about heat beside the formula.
#[derive(Default)]
pub(crate) struct HeatAsked {
    pub(crate) coolings: Vec<CoolingAsked>,
    pub(crate) vessel_coolings: Vec<VesselAsked>,
    pub(crate) boilings: Vec<BoilsBy>,
}

/// A bare body that cools or warms through some stays, read off at some times.
pub(crate) struct CoolingAsked {
    pub(crate) body: Body,
    pub(crate) start: Temperature,
    pub(crate) stays: Vec<Exposure>,
    pub(crate) times: Vec<Minutes>,
}

/// The places of a body that are read off.
pub(crate) const PLACES: [Probe; 3] = [Probe::Centre, Probe::Mean, Probe::Surface];

impl HeatAsked {
    pub(crate) fn read(tree: &Json) -> Read<Self> {
        Ok(Self {
            coolings: each(tree, "coolings", cooling)?,
            vessel_coolings: each(tree, "vessel_coolings", vessel_cooling)?,
            boilings: each(tree, "boilings", boils_by)?,
        })
    }
}

fn cooling(tree: &Json) -> Read<CoolingAsked> {
    let keys = [
        "shape",
        "half_m",
        "mass_g",
        "specific_heat_j_per_kg_k",
        "conductivity_w_per_m_k",
        "density_kg_per_m3",
        "start_c",
        "stays",
        "times_min",
    ];
    known(tree, &keys)?;
    Ok(CoolingAsked {
        body: body(tree)?,
        start: quantity(tree, "start_c", Temperature::from_celsius)?,
        stays: each(tree, "stays", stay)?,
        times: each(tree, "times_min", minutes)?,
    })
}

fn body(tree: &Json) -> Read<Body> {
    Ok(Body {
        shape: shape(tree)?,
        half: quantity(tree, "half_m", Length::from_metres)?,
        mass: quantity(tree, "mass_g", Mass::from_grams)?,
        specific_heat: quantity(
            tree,
            "specific_heat_j_per_kg_k",
            SpecificHeat::from_joules_per_kilogram_kelvin,
        )?,
        conductivity: quantity(
            tree,
            "conductivity_w_per_m_k",
            Conductivity::from_watts_per_metre_kelvin,
        )?,
        density: quantity(
            tree,
            "density_kg_per_m3",
            Density::from_kilograms_per_cubic_metre,
        )?,
    })
}

pub(crate) fn minutes(tree: &Json) -> Read<Minutes> {
    if let Json::Number(minutes) = tree {
        in_range("", Minutes::from_minutes(*minutes))
    } else {
        Err(ErrorText::new("", "WrongType", "expected a number"))
    }
}

fn stay(tree: &Json) -> Read<Exposure> {
    known(tree, &["minutes", "air_c", "coefficient_w_per_m2_k"])?;
    Ok(Exposure {
        minutes: quantity(tree, "minutes", Minutes::from_minutes)?,
        air: Air {
            temperature: quantity(tree, "air_c", Temperature::from_celsius)?,
            coefficient: quantity(
                tree,
                "coefficient_w_per_m2_k",
                SurfaceCoefficient::from_watts_per_square_metre_kelvin,
            )?,
        },
    })
}

fn shape(tree: &Json) -> Read<Shape> {
    let word = match get(tree, "shape") {
        Some(Json::Text(word)) => word.as_ref(),
        _ => "",
    };
    let found = Shape::ALL
        .into_iter()
        .find(|shape| crate::spelling::snake(shape) == word);
    found.ok_or_else(|| ErrorText::new("shape", "UnknownWord", word))
}

fn boils_by(tree: &Json) -> Read<BoilsBy> {
    known(tree, &["altitude_m", "pressure_hpa"])?;
    if get(tree, "altitude_m").is_some() {
        let altitude = quantity(tree, "altitude_m", Altitude::from_metres)?;
        return Ok(BoilsBy::Altitude(altitude));
    }
    let pressure = quantity(tree, "pressure_hpa", Pressure::from_hectopascals)?;
    Ok(BoilsBy::Pressure(pressure))
}

pub(crate) fn quantity<T>(
    tree: &Json,
    key: &str,
    from: fn(f64) -> Result<T, softcrumb::engine::quantity::OutOfRange>,
) -> Read<T> {
    in_range(key, from(number(tree, key)?))
}
