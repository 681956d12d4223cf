//! A part as a paste in this kitchen: what goes into it, and how warm it is once it is stirred.

use super::part_matter::{heat_part, part_at};
use super::start_temperatures::line_start;
use crate::engine::formula::{Form, Formula, Part};
use crate::engine::heat::{
    CoolingVessel, Grain, HeatError, Matter, OpenAir, Paste, Scalded, Stirring, cook,
};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, Minutes, Temperature};
use crate::sheet::{Kitchen, PasteSettings};

/// Returns a part as a paste: its water and other liquids are poured on the rest at the boiling
/// point of this kitchen. `None` where it has no liquid or no flour, or is not there.
///
/// # Errors
/// [`HeatError::UnknownFood`] for a food whose composition is empty.
pub fn paste(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    settings: &PasteSettings,
) -> Result<Option<Paste>, HeatError> {
    let Ok(own) = part_at(formula, part) else {
        return Ok(None);
    };
    let mut paste = Paste {
        flours: Vec::new(),
        others: Vec::new(),
        liquid: Mass::ZERO,
        liquid_matter: Matter::WATER,
        boils: kitchen.boiling()?.temperature,
        drop: settings.drop,
        vessel: kitchen.vessel(kitchen.paste_bowl, settings.bowl)?,
        stirring: Some(stirring(own, kitchen)),
    };
    let mut liquids = Vec::new();
    for line in &own.lines {
        let matter = Matter::of(&line.food.composition())?;
        if line.is_flour() {
            paste.flours.push(Scalded {
                of: line.food.name().to_owned().into(),
                mass: Form::AsMade.mass(line),
                matter,
                starch: line.food.composition().starch,
                grain: Grain::of(&line.food),
                temperature: line_start(line, kitchen),
            });
        } else if matches!(line.food.role(), Role::Water | Role::Liquid) {
            liquids.push((Form::AsMade.mass(line), matter));
        } else {
            let other = heat_part(line, line_start(line, kitchen))?;
            paste.others.push(other);
        }
    }
    let liquid: Mass = liquids.iter().map(|(mass, _)| *mass).sum();
    paste.liquid = liquid.unsaturated()?;
    if paste.flours.is_empty() || paste.liquid <= Mass::ZERO {
        return Ok(None);
    }
    paste.liquid_matter = Matter::blend(&liquids)?;
    Ok(Some(paste))
}

/// A paste stirred in an open bowl of the usual width; no more leaves than was weighed.
fn stirring(own: &Part, kitchen: &Kitchen) -> Stirring {
    Stirring {
        air: OpenAir {
            temperature: kitchen.room,
            humidity: OpenAir::HUMIDITY,
        },
        across: CoolingVessel::Bowl.usual_across(),
        minutes: stirred_for(kitchen),
        at_most: (own.steam > Mass::ZERO).then_some(own.steam),
    }
}

/// How long a paste steams in the open: as is usual, times the factor that weighings have taught.
fn stirred_for(kitchen: &Kitchen) -> Minutes {
    let factor = kitchen.cooling.steam.map(|factor| factor.likely.number());
    let usual = Stirring::USUAL;
    let minutes = factor.and_then(|factor| Minutes::from_minutes(usual.minutes() * factor).ok());
    minutes.unwrap_or(usual)
}

/// The temperature of a paste just after stirring.
///
/// # Errors
/// [`HeatError::NoPaste`] where the part has no liquid or no flour; else those of [`cook`].
pub(super) fn paste_temperature(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    settings: &PasteSettings,
) -> Result<Temperature, HeatError> {
    let paste = paste(formula, part, kitchen, settings)?.ok_or(HeatError::NoPaste)?;
    Ok(cook(&paste)?.temperature)
}
