//! The pastes of a formula in this kitchen: what goes into each, and how each is cooked.

use super::part_matter::{heat_part, part_at};
use super::start_temperatures::line_start;
use super::steam::{BOIL, SteamPrediction, predicted_steam, steam_of};
use crate::engine::formula::{Form, Formula, Part, PartKind};
use crate::engine::heat::{
    CookedPaste, CoolingVessel, Grain, HeatError, Matter, OpenAir, Paste, Scalded, SteamLoss,
    Stirring, cook,
};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, Minutes, Temperature};
use crate::sheet::{HeatSettings, Kitchen, PasteSettings};

/// A paste of the formula.
#[derive(Clone, Debug, PartialEq)]
pub struct PasteResult {
    /// The place of its part in the formula.
    pub part: usize,
    /// The paste just after stirring.
    pub cooked: Result<CookedPaste, HeatError>,
    /// What it loses as steam, by the steam stored with its part.
    pub steam: Option<SteamLoss>,
    /// What it will lose by stirring and cooling, where nothing is stored; `None` where that cannot
    /// be worked out.
    pub predicted: Option<SteamPrediction>,
}

/// Every paste of a formula; parts without flour or liquid are left out.
///
/// ```
/// use softcrumb::engine::formula::PartKind;
/// use softcrumb::results::heat::pastes;
/// use softcrumb::sheet::{HeatSettings, Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let results = pastes(&sheet.formula, &Kitchen::default(), &HeatSettings::default());
/// let parts = sheet.formula.parts.iter();
/// assert_eq!(results.len(), parts.filter(|part| part.kind == PartKind::Paste).count());
/// ```
#[must_use]
pub fn pastes(formula: &Formula, kitchen: &Kitchen, settings: &HeatSettings) -> Vec<PasteResult> {
    let numbered = formula.parts.iter().enumerate();
    numbered
        .filter(|(_, own)| own.kind == PartKind::Paste)
        .filter_map(|(part, own)| {
            let asked = paste(formula, part, kitchen, &settings.paste).transpose()?;
            let cooked = asked.and_then(|asked| cook(&asked));
            let at = cooked.as_ref().map_or(BOIL, |cooked| cooked.temperature);
            let predicted = cooked.as_ref().ok().filter(|_| own.steam <= Mass::ZERO);
            let predicted = predicted
                .and_then(|cooked| predicted_steam(own, cooked, kitchen, &settings.cooling).ok());
            Some(PasteResult {
                predicted,
                part,
                cooked,
                steam: steam_of(own, at).ok(),
            })
        })
        .collect()
}

/// What a paste will lose as steam by the time it goes into the fridge, whatever was weighed of it
/// before.
///
/// # Errors
/// [`HeatError::NoPaste`] for a part that is none; else those of [`predicted_steam`].
pub fn expected_steam(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    heat: &HeatSettings,
) -> Result<SteamPrediction, HeatError> {
    let mut unweighed = formula.clone();
    let own = unweighed.parts.get_mut(part).ok_or(HeatError::NoPart)?;
    own.steam = Mass::ZERO;
    let paste = paste(&unweighed, part, kitchen, &heat.paste)?.ok_or(HeatError::NoPaste)?;
    let own = unweighed.parts.get(part).ok_or(HeatError::NoPart)?;
    predicted_steam(own, &cook(&paste)?, kitchen, &heat.cooling)
}

/// A part as a paste: its water and other liquids are poured boiling on the rest; `None` where it
/// has no liquid or no flour, or is not there.
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
