//! A cooked paste weighed: its loss of steam, stored with the formula as it is written.

use crate::engine::formula::{Form, Formula, Part};
use crate::engine::heat::{HeatError, SteamLoss, steam_loss};
use crate::engine::quantity::{Mass, Temperature};

/// The temperature at which a paste loses its steam, where its own is not known. Only the heat
/// of the steam depends on it.
pub(super) const BOIL: Temperature = Temperature::known(100.0);

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

/// The steam loss of a paste, by the steam that is stored with it.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when nothing was stirred in.
pub fn steam_of(part: &Part, at: Temperature) -> Result<SteamLoss, HeatError> {
    let before = stirred_in(part);
    steam_loss(before, before.less(part.steam), at)
}

/// Stores with `written` the steam of a paste of `batch` that weighed `after` cooking, without its
/// bowl: the same share is lost, however large the batch.
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
