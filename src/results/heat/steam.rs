//! A cooked paste weighed: its loss of steam, stored with the formula as it is written.

use super::paste_cooling::PasteCooling;
use crate::engine::formula::{Form, Formula, Part};
use crate::engine::heat::{CookedPaste, CoolingFactors, HeatError, SteamLoss, steam_loss};
use crate::engine::quantity::{Mass, Minutes, Temperature};

/// The temperature at which a paste loses its steam, where its own is not known. Only the heat
/// of the steam depends on it.
pub(super) const BOIL: Temperature = Temperature::known(100.0);

/// The steam a paste is expected to lose, by stirring in the open and by cooling.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SteamPrediction {
    /// With a skin or a cover, and quick stirring.
    pub least: Mass,
    /// As is likely.
    pub likely: Mass,
    /// Left open without a skin, and slow stirring.
    pub most: Mass,
}

/// How far the minutes of stirring differ: from half as long to three times as long. Common
/// practice.
const STIRRED: [f64; 3] = [0.5, 1.0, 3.0];

/// What a paste will lose as steam: while it is stirred in the open, and until it is in the fridge.
///
/// Under a lid, in a bag or in ice water nothing evaporates. The surface dries to a skin or not,
/// and is covered sooner or later: the range says so, unless weighings of this kitchen say better.
/// `None` where it is left open and its cooling cannot be `followed`.
pub(super) fn predicted_steam(
    cooked: &CookedPaste,
    lid: bool,
    followed: Option<&PasteCooling>,
    factors: CoolingFactors,
) -> Option<SteamPrediction> {
    let on_bench = if lid {
        [Mass::ZERO; 3]
    } else {
        let followed = followed?;
        if followed.plan.way.bench > Minutes::ZERO {
            followed.cooled.evaporated
        } else {
            [Mass::ZERO; 3]
        }
    };
    let [_, bench, _] = on_bench;
    let likely = Mass::from_grams(cooked.steamed.grams() + bench.grams()).ok()?;
    if let Some([least, likely, most]) = factors.steam_range(likely) {
        return Some(SteamPrediction {
            least,
            likely,
            most,
        });
    }
    let [quick, usual, slow] = STIRRED.map(|times| cooked.steamed.grams() * times);
    let [least, likely, most] = on_bench.map(Mass::grams);
    Some(SteamPrediction {
        least: Mass::from_grams(quick + least).ok()?,
        likely: Mass::from_grams(usual + likely).ok()?,
        most: Mass::from_grams(slow + most).ok()?,
    })
}

/// What a part weighs before any steam is lost.
///
/// ```
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::heat::stirred_in;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// assert!(sheet.formula.parts.iter().all(|part| stirred_in(part) > Mass::ZERO));
/// ```
#[must_use]
pub fn stirred_in(part: &Part) -> Mass {
    let lines = part.lines.iter();
    lines.map(|line| Form::AsMade.mass(line)).sum()
}

/// Returns the steam in g that is stored with a paste, and the heat in J it carries off at a
/// temperature.
///
/// Source: as for [`steam_loss`].
///
/// # Errors
/// [`HeatError::EmptyBowl`] when nothing was stirred in.
pub fn steam_of(part: &Part, at: Temperature) -> Result<SteamLoss, HeatError> {
    let before = stirred_in(part);
    steam_loss(before, before.less(part.steam), at)
}

/// Stores with `written` the steam in g of a paste of `batch` that weighed `after` cooking, without
/// its bowl: the same share is lost, however large the batch.
///
/// ```
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::heat::weigh_cooked;
/// use softcrumb::sheet::examples;
///
/// // Mass is conserved: a paste that weighs a tenth less has lost that tenth as steam.
/// let (_, sheet) = examples().remove(0);
/// let mut paste = sheet.formula.parts[0].clone();
/// let (before, batch) = (paste.mass().grams(), paste.clone());
/// weigh_cooked(&mut paste, &batch, Mass::from_grams(0.9 * before)?)?;
/// assert!((paste.steam.grams() - 0.1 * before).abs() < 1e-9);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
/// [`HeatError::Gained`] when it weighs more than was stirred in; [`HeatError::EmptyBowl`] when
/// nothing was.
pub fn weigh_cooked(written: &mut Part, batch: &Part, after: Mass) -> Result<(), HeatError> {
    // The share lost does not depend on the temperature.
    let loss = steam_loss(stirred_in(batch), after, BOIL)?;
    written.steam = stirred_in(written).component(loss.share);
    Ok(())
}

/// Stores with a part of `written` the steam that part lost in `batch`, which weighed `after`
/// cooking.
///
/// ```
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::heat::{stirred_in, weigh_cooked_part};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let (mut written, batch) = (sheet.formula.clone(), sheet.formula);
/// let before = stirred_in(&batch.parts[0]);
/// weigh_cooked_part(&mut written, &batch, 0, before)?;
/// // A paste that weighs as much as before has lost no steam.
/// assert_eq!(written.parts[0].steam, Mass::ZERO);
/// # Ok::<(), softcrumb::engine::heat::HeatError>(())
/// ```
///
/// # Errors
/// [`HeatError::NoPart`] where either has no such part; those of [`weigh_cooked`].
pub fn weigh_cooked_part(
    written: &mut Formula,
    batch: &Formula,
    part: usize,
    after: Mass,
) -> Result<(), HeatError> {
    let written = written.parts.get_mut(part).ok_or(HeatError::NoPart)?;
    let batch = batch.parts.get(part).ok_or(HeatError::NoPart)?;
    weigh_cooked(written, batch, after)
}

/// Stores with a part of `written` the steam in g that this part is expected to lose in `batch`.
///
/// # Errors
/// Those of [`weigh_cooked_part`].
pub fn reckon_with_steam(
    written: &mut Formula,
    batch: &Formula,
    part: usize,
    steam: Mass,
) -> Result<(), HeatError> {
    let own = batch.parts.get(part).ok_or(HeatError::NoPart)?;
    let after = stirred_in(own).less(steam);
    weigh_cooked_part(written, batch, part, after)
}
