//! Bare foods in vessels that are asked to be cooled, in two dimensions.

use softcrumb::engine::heat::{Cover, Filling, VesselStay};
use softcrumb::engine::quantity::{
    Conductivity, Density, HeatCapacity, Length, Mass, Minutes, SpecificHeat, SurfaceCoefficient,
    Temperature,
};
use softcrumb::storage::Json;

use crate::asked::{Read, each, get, known};
use crate::asked_heat::{minutes, quantity};
use crate::error::ErrorText;

/// A food in a vessel that cools or warms through some stays, read off at some times.
pub(crate) struct VesselAsked {
    pub(crate) filling: Filling,
    pub(crate) start: Temperature,
    pub(crate) stays: Vec<VesselStay>,
    pub(crate) times: Vec<Minutes>,
}

/// Reads one of them. The vessel itself weighs nothing.
pub(crate) fn vessel_cooling(tree: &Json) -> Read<VesselAsked> {
    let keys = [
        "across_m",
        "deep_m",
        "mass_g",
        "specific_heat_j_per_kg_k",
        "conductivity_w_per_m_k",
        "density_kg_per_m3",
        "start_c",
        "stays",
        "times_min",
    ];
    known(tree, &keys)?;
    let start = quantity(tree, "start_c", Temperature::from_celsius)?;
    Ok(VesselAsked {
        filling: filling(tree, start)?,
        start,
        stays: each(tree, "stays", stay)?,
        times: each(tree, "times_min", minutes)?,
    })
}

fn filling(tree: &Json, start: Temperature) -> Read<Filling> {
    Ok(Filling {
        across: quantity(tree, "across_m", Length::from_metres)?,
        deep: quantity(tree, "deep_m", Length::from_metres)?,
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
        vessel: HeatCapacity::from_joules_per_kelvin(0.0),
        vessel_at: start,
    })
}

fn stay(tree: &Json) -> Read<VesselStay> {
    known(
        tree,
        &["minutes", "around_c", "coefficient_w_per_m2_k", "cover"],
    )?;
    let word = match get(tree, "cover") {
        Some(Json::Text(word)) => word.as_ref(),
        _ => "",
    };
    let cover = match word {
        "closed" => Cover::Closed,
        "surrounded" => Cover::Surrounded,
        other => return Err(ErrorText::new("cover", "UnknownWord", other)),
    };
    Ok(VesselStay {
        minutes: quantity(tree, "minutes", Minutes::from_minutes)?,
        around: quantity(tree, "around_c", Temperature::from_celsius)?,
        coefficient: quantity(
            tree,
            "coefficient_w_per_m2_k",
            SurfaceCoefficient::from_watts_per_square_metre_kelvin,
        )?,
        cover,
    })
}
