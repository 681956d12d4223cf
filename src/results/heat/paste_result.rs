//! The pastes of a formula in this kitchen, cooked, with the steam that each loses.

use super::paste::paste;
use super::paste_cooling::PasteCooling;
use super::steam::{BOIL, SteamPrediction, predicted_steam, steam_of};
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{CookedPaste, HeatError, SteamLoss, cook};
use crate::engine::quantity::Mass;
use crate::sheet::{HeatSettings, Kitchen};

/// A paste of the formula.
#[derive(Clone, Debug, PartialEq)]
pub struct PasteResult {
    /// The place of its part in the formula.
    pub part: usize,
    /// The liquid poured on it.
    pub poured: Mass,
    /// The paste just after stirring.
    pub cooked: Result<CookedPaste, HeatError>,
    /// What it loses as steam, by the steam stored with its part.
    pub steam: Option<SteamLoss>,
    /// What it will lose by stirring and cooling, where nothing is stored; `None` where that cannot
    /// be worked out.
    pub predicted: Option<SteamPrediction>,
}

/// Every paste of a formula, whose coolings are `followed`; parts without flour or liquid are left
/// out.
///
/// ```
/// use softcrumb::engine::formula::PartKind;
/// use softcrumb::results::heat::{paste_coolings, pastes};
/// use softcrumb::sheet::{HeatSettings, Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let (kitchen, heat) = (Kitchen::default(), HeatSettings::default());
/// let followed = paste_coolings(&sheet.formula, &kitchen, &heat, &[]);
/// let results = pastes(&sheet.formula, &kitchen, &heat, &followed);
/// let parts = sheet.formula.parts.iter();
/// assert_eq!(results.len(), parts.filter(|part| part.kind == PartKind::Paste).count());
/// ```
#[must_use]
pub fn pastes(
    formula: &Formula,
    kitchen: &Kitchen,
    settings: &HeatSettings,
    followed: &[PasteCooling],
) -> Vec<PasteResult> {
    let numbered = formula.parts.iter().enumerate();
    numbered
        .filter(|(_, own)| own.kind == PartKind::Paste)
        .filter_map(|(part, own)| {
            let asked = paste(formula, part, kitchen, &settings.paste).transpose()?;
            let poured = asked.as_ref().map_or(Mass::ZERO, |asked| asked.liquid);
            let cooked = asked.and_then(|asked| cook(&asked));
            let at = cooked.as_ref().map_or(BOIL, |cooked| cooked.temperature);
            let predicted = cooked.as_ref().ok().filter(|_| own.steam <= Mass::ZERO);
            let followed = followed.iter().find(|one| one.part == part);
            let predicted = predicted.and_then(|cooked| {
                predicted_steam(cooked, settings.cooling.lid, followed, kitchen.cooling)
            });
            Some(PasteResult {
                predicted,
                part,
                poured,
                cooked,
                steam: steam_of(own, at).ok(),
            })
        })
        .collect()
}

/// Returns the steam in g that a paste is expected to lose by the time it goes into the fridge,
/// whatever was weighed of it before.
///
/// Source: as for [`evaporated`](crate::engine::heat::evaporated).
///
/// # Errors
/// [`HeatError::NoPaste`] for a part that is none, or whose cooling cannot be simulated; else those
/// of [`paste`](super::paste()).
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
    let followed = PasteCooling::of(&unweighed, part, kitchen, heat, &[]).ok();
    let (lid, factors) = (heat.cooling.lid, kitchen.cooling);
    predicted_steam(&cook(&paste)?, lid, followed.as_ref(), factors).ok_or(HeatError::NoPaste)
}
