//! A cooked paste weighed: what went off as steam, kept with the formula as it is written.

use crate::engine::formula::{Form, Stream};
use crate::engine::heat::{HeatError, SteamLoss, steam_loss};
use crate::engine::quantity::{Mass, Temperature};

/// What a stream weighs before any steam is lost.
#[must_use]
pub fn stirred_in(stream: &Stream) -> Mass {
    let lines = stream.lines.iter();
    lines.map(|line| Form::AsMade.mass(line)).sum()
}

/// What a paste lost as steam, by the steam that is kept with it.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when nothing was stirred in.
pub fn steam_of(stream: &Stream, at: Temperature) -> Result<SteamLoss, HeatError> {
    let before = stirred_in(stream);
    steam_loss(before, before.less(stream.steam), at)
}

/// Keeps with `written` what a paste of the batch, `made` of it, weighed `after` cooking, its bowl
/// taken off: the same share went off as steam, however much is made.
///
/// # Errors
/// [`HeatError::Gained`] when it weighs more than was stirred in; [`HeatError::EmptyBowl`] when
/// nothing was.
pub fn weigh_cooked(
    written: &mut Stream,
    made: &Stream,
    after: Mass,
    at: Temperature,
) -> Result<(), HeatError> {
    let loss = steam_loss(stirred_in(made), after, at)?;
    written.steam = stirred_in(written).part(loss.share);
    Ok(())
}
