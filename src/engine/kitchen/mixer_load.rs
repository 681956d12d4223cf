//! The bowl in the morning: everything that goes into the mixer, each at its own temperature.

use super::place::Kitchen;
use super::settings::HeatSettings;
use crate::engine::formula::{Form, Formula, Line, LineAt, PartKind};
use crate::engine::heat::{
    Air, Dough, Exposure, FactorMethod, Handling, HeatError, Item, MixerEffect, Probe, dough_of,
    factor_method, follow,
};
use crate::engine::quantity::{Mass, Minutes, Temperature, TemperatureChange};

/// What an item of the bowl is of the formula.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadSource {
    /// A whole paste or preferment.
    Part(usize),
    /// A line of the final dough.
    Line(LineAt),
}

/// A dough about to be mixed, with where each of its items stands in the formula.
#[derive(Clone, Debug, PartialEq)]
pub struct MixerLoad {
    /// The dough.
    pub dough: Dough,
    /// Where each item comes from, in the order of the dough's own.
    pub from: Vec<LoadSource>,
}

/// Everything that goes into the mixer: pastes and preferments whole, from the fridge unless they
/// say otherwise, having stood out as wished; lines of the final dough each by itself.
///
/// # Errors
/// [`HeatError::UnknownFood`] where nothing is known of an ingredient; [`HeatError::OffScale`] for
/// a paste or preferment too large to be handled.
pub fn bowlful(
    formula: &Formula,
    kitchen: &Kitchen,
    settings: &HeatSettings,
) -> Result<MixerLoad, HeatError> {
    let mixer = MixerEffect {
        vessel: kitchen.vessel(kitchen.mixing_bowl, settings.mixing_bowl)?,
        friction: kitchen.mixer.friction,
        minutes: settings.mixing.unwrap_or(kitchen.mixer.minutes),
    };
    let mut dough = dough_of(formula, &kitchen.stores(formula), &mixer)?;
    if settings.standing > Minutes::ZERO {
        for item in &mut dough.items {
            stand_out(item, settings.standing, kitchen.room)?;
        }
    }
    Ok(MixerLoad {
        from: whence(formula),
        dough,
    })
}

/// Where each item of the dough comes from, in the order of [`dough_of`].
fn whence(formula: &Formula) -> Vec<LoadSource> {
    let mut from = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        let weighs = |line: &Line| Form::AsMade.mass(line) > Mass::ZERO;
        match own.kind {
            PartKind::Paste | PartKind::Preferment => {
                if own.lines.iter().any(weighs) {
                    from.push(LoadSource::Part(part));
                }
            }
            PartKind::Final => {
                let numbered = own.lines.iter().enumerate();
                let there = numbered.filter(|(_, line)| weighs(line));
                from.extend(there.map(|(line, _)| LoadSource::Line(LineAt { part, line })));
            }
            PartKind::Filling | PartKind::Topping | PartKind::Wash => {}
        }
    }
    from
}

/// Has a paste or preferment stand in the room.
fn stand_out(item: &mut Item, minutes: Minutes, room: Temperature) -> Result<(), HeatError> {
    if let Handling::Standing(body) = item.handling {
        let stay = Exposure {
            minutes,
            air: Air::still(room),
        };
        let curve = follow(&body, item.component.temperature, &[stay])?;
        if let Some(warm) = curve.at(minutes, Probe::Mean) {
            item.component.temperature = warm;
        }
    }
    Ok(())
}

/// The handbook's factor method for the same morning: room, flour and each paste or preferment,
/// the friction factor such that it stands for the same rise.
///
/// # Errors
/// [`HeatError::OffScale`] when no liquid is that hot or cold.
pub fn factor_method_for(
    bowlful: &MixerLoad,
    kitchen: &Kitchen,
    target: Temperature,
) -> Result<FactorMethod, HeatError> {
    let mut others = vec![kitchen.room, kitchen.flour];
    for item in &bowlful.dough.items {
        if matches!(item.handling, Handling::Standing(_)) {
            others.push(item.component.temperature);
        }
    }
    let rate = bowlful.dough.friction.kelvin_per_minute();
    let count = others.iter().fold(1.0, |count, _| count + 1.0);
    let friction = count * rate * bowlful.dough.minutes.minutes();
    factor_method(target, &others, TemperatureChange::from_kelvin(friction)?)
}
