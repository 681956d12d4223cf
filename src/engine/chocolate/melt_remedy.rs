//! What melts the lumps that a hot liquid leaves: each by itself, in numbers.

use super::melt::{LATENT_HEAT, Lumps, MELTED, Melted, Melting};
use crate::engine::heat::{
    Air, Balance, Body, Exposure, HeatError, Probe, Shape, TemperatureStep, simulate,
};
use crate::engine::quantity::{
    Conductivity, Density, Heat, Length, Mass, Minutes, SpecificHeat, SurfaceCoefficient,
    Temperature,
};

/// One thing that would melt it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MeltRemedy {
    /// Pour the liquid hotter.
    HotterLiquid {
        /// How hot.
        to: Temperature,
    },
    /// Warm the bowl beforehand.
    WarmBowl {
        /// To what.
        to: Temperature,
    },
    /// More liquid, which also makes it thinner.
    MoreLiquid {
        /// How much more.
        liquid: Mass,
    },
    /// Set the bowl in a water bath. Steam must not get in, and the chocolate not above 50 °C.
    WaterBath {
        /// How warm the bath is.
        at: Temperature,
        /// How long, unstirred; stirring shortens it.
        minutes: Minutes,
    },
    /// Chop it finer: large pieces do not melt while the liquid is hot.
    FinerChop {
        /// To what, across.
        to: Length,
    },
}

/// The water bath offered, °C: warm, and below where chocolate suffers.
pub(super) const BATH: Temperature = Temperature::known(50.0);
/// The warmest that a bowl is made.
const BOWL_AT_MOST: Temperature = Temperature::known(60.0);
/// How long a liquid poured on chocolate stays much hotter than it, min. Common practice: let it
/// stand two minutes, then stir.
const STAYS_HOT: f64 = 2.0;
/// The finest that a knife chops. Common practice.
const FINEST_CHOP: Length = Length::known(0.003);
/// How readily heat passes from liquid to a piece in it, hardly moving.
const LIQUID: SurfaceCoefficient = SurfaceCoefficient::known(300.0);

/// What would melt what stays in lumps, gentlest first; nothing where there are none.
///
/// The water bath and the chop are followed by the solver for conduction.
///
/// # Errors
/// [`HeatError::OffScale`] when a step leaves its range.
pub fn melt_remedies(melting: &Melting, melted: &Melted) -> Result<Vec<MeltRemedy>, HeatError> {
    let mut found = Vec::with_capacity(5);
    found.extend(finer_chop(melting)?);
    if melted.lumps == Lumps::None {
        return Ok(found);
    }
    let goal = MELTED.celsius();
    let lacking = Balance::of(&melting.components()).taken_at(goal) + melting.absorbed(goal);
    if lacking > 0.0 {
        found.extend(hotter_liquid(melting, lacking));
        found.extend(warm_bowl(melting, lacking));
        found.extend(more_liquid(melting, lacking));
        found.extend(water_bath(melting, melted, lacking)?);
    }
    Ok(found)
}

fn hotter_liquid(melting: &Melting, lacking: f64) -> Option<MeltRemedy> {
    let over = TemperatureStep {
        from: melting.liquid_at,
        to: melting.liquid_at_most,
    };
    let capacity = melting.liquid_matter.specific_heat(over).ok()? * melting.liquid;
    if capacity.joules_per_kelvin() <= 0.0 {
        return None;
    }
    let needed = melting.liquid_at.celsius() + lacking / capacity.joules_per_kelvin();
    let to = Temperature::from_celsius(needed).ok()?;
    (to <= melting.liquid_at_most).then_some(MeltRemedy::HotterLiquid { to })
}

fn warm_bowl(melting: &Melting, lacking: f64) -> Option<MeltRemedy> {
    let component = melting.vessel?.component();
    let capacity = melting.vessel?.material.specific_heat() * component.mass;
    if capacity.joules_per_kelvin() <= 0.0 {
        return None;
    }
    let needed = component.temperature.celsius() + lacking / capacity.joules_per_kelvin();
    let to = Temperature::from_celsius(needed).ok()?;
    (to <= BOWL_AT_MOST).then_some(MeltRemedy::WarmBowl { to })
}

fn more_liquid(melting: &Melting, lacking: f64) -> Option<MeltRemedy> {
    let over = TemperatureStep {
        from: MELTED,
        to: melting.liquid_at,
    };
    let gram = Mass::from_grams(1.0).ok()?;
    let brings =
        melting.liquid_matter.specific_heat(over).ok()? * gram * (melting.liquid_at - MELTED);
    if brings <= Heat::ZERO {
        return None;
    }
    let liquid = Mass::from_grams(lacking / brings.joules()).ok()?;
    Some(MeltRemedy::MoreLiquid { liquid })
}

/// Chocolate as conduction sees it while it melts: what melting takes is spread over the warming.
///
/// Source: conductivity 0.26 and density 1200 to 1300, Beckett.
fn body(shape: Shape, half: f64, mass: Mass, specific_heat: f64) -> Result<Body, HeatError> {
    Ok(Body {
        shape,
        half: Length::from_metres(half)?,
        mass,
        specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(specific_heat)?,
        conductivity: Conductivity::from_watts_per_metre_kelvin(0.26)?,
        density: Density::from_kilograms_per_cubic_metre(DENSITY)?,
    })
}

/// Density of chocolate, kg/m³. Source: 1200 to 1300, Beckett.
pub(super) const DENSITY: f64 = 1250.0;
/// Depth of chocolate over the warm wall of a bowl, m.
pub(super) const DEPTH: f64 = 0.02;

fn water_bath(
    melting: &Melting,
    melted: &Melted,
    lacking: f64,
) -> Result<Option<MeltRemedy>, HeatError> {
    let mass = melting.chocolate + melting.liquid;
    let rise = (MELTED - melted.temperature).kelvin();
    if rise <= 0.0 || mass <= Mass::ZERO {
        return Ok(None);
    }
    // A mix that has nearly settled at the goal takes much heat for little warming.
    let specific = (lacking / (mass.grams() / 1000.0) / rise).clamp(500.0, 10_000.0);
    let reached = warming_in_bath(mass, melted.temperature, specific)?;
    Ok(reached.map(|minutes| MeltRemedy::WaterBath { at: BATH, minutes }))
}

/// The time in the bath until chocolate is melted, unstirred; `None` where it takes over two hours.
pub(super) fn warming_in_bath(
    mass: Mass,
    from: Temperature,
    specific: f64,
) -> Result<Option<Minutes>, HeatError> {
    let body = body(Shape::Slab, DEPTH, mass, specific)?;
    let stay = Exposure {
        minutes: Minutes::from_minutes(120.0)?,
        air: Air {
            temperature: BATH,
            coefficient: Air::WATER_BATH,
        },
    };
    let curve = simulate(&body, from, &[stay])?;
    Ok(curve.reaches(MELTED, Probe::Mean, Minutes::ZERO))
}

/// How finely it must be chopped to melt while the liquid is still hot; `None` where it is.
fn finer_chop(melting: &Melting) -> Result<Option<MeltRemedy>, HeatError> {
    let (Some(across), true) = (melting.pieces, melting.chocolate_at < MELTED) else {
        return Ok(None);
    };
    if melting.liquid_at <= MELTED || melting.chocolate <= Mass::ZERO {
        return Ok(None);
    }
    let latent = LATENT_HEAT.joules_per_gram() * 1000.0 * melting.fat.fraction();
    let rise = (MELTED - melting.chocolate_at).kelvin();
    let specific = (1590.0 + latent / rise).min(10_000.0);
    let air = Air {
        temperature: melting.liquid_at,
        coefficient: LIQUID,
    };
    let stay = Exposure {
        minutes: Minutes::from_minutes(STAYS_HOT)?,
        air,
    };
    let mut size = across.metres();
    for _ in 0..8 {
        let piece = body(Shape::Sphere, size / 2.0, melting.chocolate, specific)?;
        let curve = simulate(&piece, melting.chocolate_at, &[stay])?;
        if curve
            .reaches(MELTED, Probe::Centre, Minutes::ZERO)
            .is_some()
        {
            break;
        }
        size *= 0.75;
    }
    let to = Length::from_metres(size)?;
    Ok((to < across && to >= FINEST_CHOP).then_some(MeltRemedy::FinerChop { to }))
}
