//! The balance of the bowl: who brings heat and who takes it, held against what is wanted.

use super::mixer_load::{LoadSource, MixerLoad};
use crate::engine::heat::{
    DoughItem, DoughTemperature, HEAT_OF_HYDRATION, HeatError, HeatPart, LiquidUse, TemperatureStep,
};
use crate::engine::quantity::{Heat, HeatCapacity, Temperature};

/// Who brings heat, or takes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeatSource {
    /// A paste or preferment.
    Part(usize),
    /// Flour.
    Flour,
    /// Water, milk and other liquids.
    Liquid,
    /// All else that goes in.
    Rest,
    /// The bowl.
    Bowl,
    /// Flour taking up water.
    Hydration,
    /// The mixer.
    Mixer,
    /// The room, while the dough is mixed.
    Room,
}

/// What one of them brings above what it takes to be as warm as is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatShare {
    /// Who.
    pub giver: HeatSource,
    /// Its temperature as it goes in, the mean where there are several; `None` for heat without a
    /// mass.
    pub temperature: Option<Temperature>,
    /// The heat, below zero where it takes some.
    pub heat: Heat,
}

/// Returns the heat in J that each part of the dough brings or takes, against `wanted`. Their sum
/// is what the dough holds above it, or lacks.
///
/// `Qᵢ = mᵢ·cᵢ·(Tᵢ − W)`, cᵢ the mean between Tᵢ and W, less what melts ice; hydration gives H·F,
/// the mixer C·r·t, and the room what then lacks to the temperature off the mixer.
///
/// Source: specific heats of Choi and Okos 1986, [`Properties`](crate::engine::heat::Properties).
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn shares(
    load: &MixerLoad,
    mixed_dough: &DoughTemperature,
    wanted: Temperature,
) -> Result<Vec<HeatShare>, HeatError> {
    let dough = &load.dough;
    let mut groups: Vec<Group> = Vec::new();
    for (item, from) in dough.items.iter().zip(&load.from) {
        put(&mut groups, giver(item, *from), &item.component, wanted)?;
    }
    if let Some(vessel) = &dough.vessel {
        put(&mut groups, HeatSource::Bowl, &vessel.component(), wanted)?;
    }
    let mut shares = groups
        .iter()
        .map(Group::share)
        .collect::<Result<Vec<_>, _>>()?;
    let by_itself = |giver, heat| HeatShare {
        giver,
        temperature: None,
        heat,
    };
    shares.push(by_itself(
        HeatSource::Hydration,
        HEAT_OF_HYDRATION * dough.dry_flour,
    ));
    let (mixer, room) = while_mixed(dough.components(), mixed_dough)?;
    shares.push(by_itself(HeatSource::Mixer, mixer));
    shares.push(by_itself(HeatSource::Room, room));
    shares.retain(|share| share.heat != Heat::ZERO || share.temperature.is_some());
    Ok(shares)
}

/// What the mixer and the room bring: all that is in the bowl, from where it settles to where it
/// comes off.
fn while_mixed(
    components: Vec<HeatPart>,
    mixed_dough: &DoughTemperature,
) -> Result<(Heat, Heat), HeatError> {
    let over = TemperatureStep {
        from: mixed_dough.mixed.temperature,
        to: mixed_dough.temperature,
    };
    let mut capacity = Vec::with_capacity(components.len());
    for component in components {
        capacity.push(component.specific_heat(over)? * component.mass);
    }
    let all: HeatCapacity = capacity.into_iter().sum();
    let rubbed = mixed_dough.friction.kelvin_per_minute() * mixed_dough.minutes.minutes();
    let mixer = all.joules_per_kelvin() * rubbed;
    let room = (all * mixed_dough.rise).joules() - mixer;
    Ok((Heat::from_joules(mixer), Heat::from_joules(room)))
}

const fn giver(item: &DoughItem, from: LoadSource) -> HeatSource {
    match (from, item.handling) {
        (LoadSource::Part(part), _) => HeatSource::Part(part),
        (LoadSource::Line(_), LiquidUse::Flour) => HeatSource::Flour,
        (LoadSource::Line(_), LiquidUse::Water | LiquidUse::Liquid) => HeatSource::Liquid,
        (LoadSource::Line(_), LiquidUse::Standing(_) | LiquidUse::AsItIs) => HeatSource::Rest,
    }
}

/// Those that are counted together.
struct Group {
    giver: HeatSource,
    heat: Heat,
    capacity: f64,
    warmth: f64,
}

fn put(
    groups: &mut Vec<Group>,
    giver: HeatSource,
    component: &HeatPart,
    wanted: Temperature,
) -> Result<(), HeatError> {
    let over = TemperatureStep {
        from: component.temperature,
        to: wanted,
    };
    let capacity = component.specific_heat(over)? * component.mass;
    let joules_per_kelvin = capacity.joules_per_kelvin();
    let heat = component.heat_above(wanted)?;
    let warmth = joules_per_kelvin * component.temperature.celsius();
    if let Some(group) = groups.iter_mut().find(|group| group.giver == giver) {
        group.heat = group.heat + heat;
        group.capacity += joules_per_kelvin;
        group.warmth += warmth;
    } else {
        groups.push(Group {
            giver,
            heat,
            capacity: joules_per_kelvin,
            warmth,
        });
    }
    Ok(())
}

impl Group {
    fn share(&self) -> Result<HeatShare, HeatError> {
        let temperature = if self.capacity > 0.0 {
            Some(Temperature::from_celsius(self.warmth / self.capacity)?)
        } else {
            None
        };
        Ok(HeatShare {
            giver: self.giver,
            temperature,
            heat: self.heat,
        })
    }
}
