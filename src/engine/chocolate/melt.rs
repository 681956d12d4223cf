//! Melting: where chocolate and hot liquid settle, and how much stays in lumps.

use crate::engine::heat::equilibrate;
use crate::engine::heat::{HeatError, HeatPart, Matter, Mixed, ThermalMaterial, Vessel};
use crate::engine::quantity::{Heat, HeatPerMass, Length, Mass, Share, SpecificHeat, Temperature};
use crate::engine::working::TableReading;

/// Chocolate about to be melted by a hot liquid.
#[derive(Clone, Debug, PartialEq)]
pub struct Melting {
    /// How much chocolate.
    pub chocolate: Mass,
    /// How much of it is fat, all of it taken for cocoa butter.
    pub fat: Share,
    /// How warm the chocolate is.
    pub chocolate_at: Temperature,
    /// How large its pieces are across, where that is known.
    pub pieces: Option<Length>,
    /// How much liquid.
    pub liquid: Mass,
    /// What the liquid is made of.
    pub liquid_matter: Matter,
    /// How hot the liquid is as it meets the chocolate.
    pub liquid_at: Temperature,
    /// The hottest it could be poured in this kitchen.
    pub liquid_at_most: Temperature,
    /// What they meet in.
    pub vessel: Option<Vessel>,
}

/// What is to be seen of lumps.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lumps {
    /// None.
    None,
    /// A few; stirring or a minute's warmth sees to them.
    Few,
    /// Clear ones.
    Clear,
}

/// Chocolate and liquid, settled.
#[derive(Clone, Debug, PartialEq)]
pub struct Melted {
    /// The balance of heat.
    pub mixed: Mixed,
    /// Where they settle.
    pub temperature: Temperature,
    /// How much of all fat was solid before.
    pub solid_before: Share,
    /// How much of all fat stays solid.
    pub unmelted: Share,
    /// What is to be seen of it.
    pub lumps: Lumps,
    /// The chocolate.
    pub chocolate: Mass,
    /// How much of it is fat.
    pub fat: Share,
    /// How warm it was.
    pub chocolate_at: Temperature,
    pub(super) reading: TableReading,
}

/// What melts all that is solid at 20 °C in a gram of cocoa butter.
///
/// Source: Beckett (ed.), *Industrial Chocolate Manufacture and Use*, 4th ed. 2009, p. 668 (after
/// Chevalley 1970): cocoa butter 157, dark chocolate 46, milk chocolate 44 J/g.
pub const LATENT_HEAT: HeatPerMass = HeatPerMass::known(157.0);

/// Specific heat of chocolate up to 40 °C. Source: Beckett, p. 667: 1590 from 15 to 40 °C.
pub(super) const COOL: SpecificHeat = SpecificHeat::known(1590.0);
/// How much more it is above 40 °C, J/(kg·K). Source: Beckett, p. 667: 1670 from 40 to 60 °C.
pub(super) const HOT_MORE: f64 = 80.0;
/// Where the one gives way to the other, °C.
pub(super) const HOT: f64 = 40.0;

/// Where the form of cocoa butter in well-tempered chocolate, form V, has melted.
/// Source: Wille and Lutton, *J. Am. Oil Chem. Soc.* 43, 1966.
pub const MELTED: Temperature = Temperature::known(33.8);

/// Solid share of all fat at 20 °C: the whole that [`LATENT_HEAT`] melts, and a hundred per cent
/// there only. Source: as for [`SOLID`].
pub(super) const SOLID_AT_20: f64 = 0.760;

/// Solid share of all fat against °C.
///
/// Source: Chaiseri and Dimick, *J. Am. Oil Chem. Soc.* 66, 1989, West African cocoa butter: 76.0 %
/// solid at 20, 69.6 at 25, 45.0 at 30, 1.1 at 35 °C (from memory); the 1.1 % is taken to be
/// reached where form V has melted, 33.8, and nothing is left where form VI has, 36.3 °C (Wille and
/// Lutton 1966). Milk fat softens chocolate further and is left out.
const SOLID: [(f64, f64); 5] = [
    (20.0, SOLID_AT_20),
    (25.0, 0.696),
    (30.0, 0.450),
    (33.8, 0.011),
    (36.3, 0.0),
];

/// Up to this much of all fat still solid there are no lumps to be seen; up to the next, a few.
const NO_LUMPS: f64 = 0.02;
const FEW_LUMPS: f64 = 0.15;

/// How much of cocoa butter is solid, of all of it.
///
/// # Errors
/// [`HeatError::OffScale`] never.
pub fn solid_fat(at: Temperature) -> Result<Share, HeatError> {
    Ok(Share::from_fraction(solid(at.celsius()).value)?)
}

fn solid(celsius: f64) -> TableReading {
    TableReading::of(&SOLID, celsius)
}

/// Where chocolate and hot liquid settle, and how much of the chocolate stays in lumps.
///
/// Liquid and bowl give what the chocolate takes: 1590 J/(kg·K) up to 40 °C, 1670 above, and
/// 157 J for each gram of its fat that melts from what is solid at 20 °C to nothing. Heat lost to the air is left out, so the truth is
/// rather a little cooler.
///
/// # Errors
/// Those of [`crate::engine::heat::mix`].
pub fn melt(melting: &Melting) -> Result<Melted, HeatError> {
    let mixed = equilibrate(&melting.components(), Heat::ZERO, |t| melting.absorbed(t))?;
    let temperature = mixed.temperature;
    let unmelted = solid_fat(temperature)?;
    Ok(Melted {
        mixed,
        temperature,
        solid_before: solid_fat(melting.chocolate_at)?,
        unmelted,
        lumps: if unmelted.fraction() <= NO_LUMPS {
            Lumps::None
        } else if unmelted.fraction() <= FEW_LUMPS {
            Lumps::Few
        } else {
            Lumps::Clear
        },
        chocolate: melting.chocolate,
        fat: melting.fat,
        chocolate_at: melting.chocolate_at,
        reading: solid(temperature.celsius()),
    })
}

impl Melting {
    /// Everything that shares its heat.
    pub(super) fn components(&self) -> Vec<HeatPart> {
        let liquid = HeatPart {
            of: "liquid".into(),
            mass: self.liquid,
            stuff: ThermalMaterial::Food(self.liquid_matter),
            temperature: self.liquid_at,
        };
        let chocolate = HeatPart {
            of: "chocolate".into(),
            mass: self.chocolate,
            stuff: ThermalMaterial::Plain(COOL),
            temperature: self.chocolate_at,
        };
        let bowl = self.vessel.as_ref().map(Vessel::component);
        [liquid, chocolate].into_iter().chain(bowl).collect()
    }

    /// Heat that melting takes on the way to `t` °C, and warming above 40 °C beyond what
    /// [`COOL`] counts, J.
    pub(super) fn absorbed(&self, t: f64) -> f64 {
        melting_heat(self.chocolate, self.fat, self.chocolate_at.celsius(), t)
            + more_above_hot(self.chocolate, self.chocolate_at.celsius(), t)
    }
}

fn melting_heat(chocolate: Mass, fat: Share, from: f64, to: f64) -> f64 {
    let fat = LATENT_HEAT.joules_per_gram() * chocolate.component(fat).grams();
    fat * (solid(from).value - solid(to).value) / SOLID_AT_20
}

fn more_above_hot(chocolate: Mass, from: f64, to: f64) -> f64 {
    let over = |t: f64| (t - HOT).max(0.0);
    chocolate.grams() / 1000.0 * HOT_MORE * (over(to) - over(from))
}

/// The heat that warms and melts chocolate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeltHeat {
    /// To warm it.
    pub warming: Heat,
    /// To melt its fat.
    pub melting: Heat,
}

/// The heat that takes chocolate from one temperature to another.
#[must_use]
pub fn heat_to_melt(chocolate: Mass, fat: Share, from: Temperature, to: Temperature) -> MeltHeat {
    let (from_c, to_c) = (from.celsius(), to.celsius());
    let cool = COOL * chocolate * (to - from);
    MeltHeat {
        warming: cool + Heat::from_joules(more_above_hot(chocolate, from_c, to_c)),
        melting: Heat::from_joules(melting_heat(chocolate, fat, from_c, to_c)),
    }
}
