//! Dough height: how high the risen dough reaches against the rim.

use super::capacity::Capacity;
use super::error::TinError;
use super::shape::Tin;
use super::usual::DOUGH_SPECIFIC_VOLUME;
use super::usual_rise::LAID_IN;
use crate::engine::numerics::root;
use crate::engine::quantity::{Factor, Length, Mass, Share, Volume};

/// How high dough reaches in a tin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DoughHeight {
    /// Dough in one tin.
    pub dough: Mass,
    /// How many times its volume without gas.
    pub rise: Factor,
    /// How many times the volume it had when it was laid in the tin, some gas in it.
    pub as_laid: Factor,
    /// The volume of the risen dough.
    pub risen: Volume,
    /// Volume of the tin.
    pub tin: Volume,
    /// The tin's depth.
    pub deep: Length,
    /// Its height as a share of the depth; above one when over the rim.
    pub of_rim: Share,
    /// How far below the rim, where it is below by a tenth of a millimetre or more.
    pub below: Option<Length>,
    /// How far above the rim, as if the sides continued straight up.
    pub above: Option<Length>,
    /// How many times its volume without gas the dough is when it is level with the rim.
    pub level_at: Factor,
    /// The same, as a multiple of what was laid in the tin.
    pub level_as_laid: Factor,
    /// How far up the sides, for the working: the share found, up to one.
    pub(super) up_the_side: f64,
    pub(super) rim_area: f64,
}

/// The height of `dough` in one tin when it has risen to `rise` times its volume without gas.
///
/// Laid in the tin it already has [`LAID_IN`] times that volume.
///
/// At that height the tin's volume below equals the dough's. Dough that does not fit is spread over
/// the area at the rim, which gives the mean height of the dome.
///
/// Source: geometry; dough at rest: see [`DOUGH_SPECIFIC_VOLUME`].
///
/// # Errors
/// [`TinError::NoSides`] for a tray; [`TinError::TubeFillsTin`] for a ring whose tube fills it;
/// [`TinError::NoDough`] when the dough weighs nothing; [`TinError::OffScale`] when an answer leaves
/// its range.
pub fn dough_height(tin: &Tin, dough: Mass, rise: Factor) -> Result<DoughHeight, TinError> {
    if dough <= Mass::ZERO {
        return Err(TinError::NoDough);
    }
    let capacity = Capacity::of(tin)?;
    let volume = capacity.volume()?;
    let first = dough.grams() * DOUGH_SPECIFIC_VOLUME.cubic_centimetres_per_gram();
    let risen = Volume::from_cubic_centimetres(first * rise.number())?;
    let fits = volume.cubic_centimetres().min(risen.cubic_centimetres());
    let up_the_side = if risen >= volume {
        1.0
    } else {
        filled_depth(&capacity, fits)
    };
    let crown = (risen.cubic_centimetres() - fits) / capacity.at_rim();
    let height = up_the_side * capacity.deep() + crown;
    let level_at = volume.cubic_centimetres() / first;
    let off = |centimetres: f64| Length::from_metres(centimetres / 100.0).ok();
    Ok(DoughHeight {
        dough,
        rise,
        as_laid: Factor::from_number(rise.number() / LAID_IN.number())?,
        risen,
        tin: volume,
        deep: Length::from_metres(capacity.deep() / 100.0)?,
        of_rim: Share::from_fraction(height / capacity.deep())?,
        below: off(capacity.deep() - height),
        above: off(crown),
        level_at: Factor::from_number(level_at)?,
        level_as_laid: Factor::from_number(level_at / LAID_IN.number())?,
        up_the_side,
        rim_area: capacity.at_rim(),
    })
}

/// The share of the depth up to which the tin holds `wanted` cm³; the whole depth where it holds
/// less.
fn filled_depth(capacity: &Capacity, wanted: f64) -> f64 {
    root(|share| capacity.up_to(share) - wanted, 0.0..=1.0).unwrap_or(1.0)
}
