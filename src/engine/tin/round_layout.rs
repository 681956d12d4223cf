//! Round layouts: pieces in circles, one inside the other, or around a tube.

use std::f64::consts::PI;
use std::num::NonZeroU16;

use super::error::TinError;
use super::spot::{PiecePosition, spot};
use crate::engine::quantity::Length;

/// Pieces in a round tin, and the circle each has to itself: outer circle first.
///
/// Up to five lie in one circle; from six on one lies in the middle, and larger numbers in
/// circles inside each other. Each circle of k pieces at radius R − d/2 leaves every piece
/// d = 2·R·s / (1 + s), s = sin(π/k); the narrowest of them is kept.
pub(super) fn in_round(
    pieces: NonZeroU16,
    across: Length,
) -> Result<(Vec<PiecePosition>, Length), TinError> {
    let mut left = pieces.get();
    let mut radius = 0.5;
    let mut narrowest = 1.0_f64;
    let mut spots = Vec::new();
    while left > 0 {
        let here = outermost(left);
        let place = if here == 1 {
            2.0 * radius
        } else {
            let sine = libm::sin(PI / f64::from(here));
            2.0 * radius * sine / (1.0 + sine)
        };
        circle(here, radius - place / 2.0, &mut spots);
        narrowest = narrowest.min(place);
        radius = (radius - place).max(place / 2.0);
        left -= here;
    }
    let place = Length::from_metres(narrowest * across.metres())?;
    Ok((spots, place))
}

/// How many of so many pieces lie in the outermost circle.
fn outermost(pieces: u16) -> u16 {
    match pieces {
        0..=5 => pieces,
        6..=9 => pieces - 1,
        10..=14 => pieces.saturating_sub(pieces.saturating_sub(6).div_ceil(2)),
        _ => (pieces * 5).div_ceil(9),
    }
}

/// Pieces around the tube of a ring, and the circle each has to itself.
pub(super) fn around(
    pieces: NonZeroU16,
    across: Length,
    tube: Length,
) -> Result<(Vec<PiecePosition>, Length), TinError> {
    let (outer, inner) = (across.metres() / 2.0, tube.metres() / 2.0);
    let middle = (outer + inner) / 2.0;
    let mut spots = Vec::new();
    circle(pieces.get(), middle / (2.0 * outer), &mut spots);
    let along = 2.0 * middle * libm::sin(PI / f64::from(pieces.get().max(2)));
    let place = Length::from_metres(along.min(outer - inner))?;
    Ok((spots, place))
}

/// So many spots on a circle about the middle, the first at the top.
fn circle(count: u16, radius: f64, spots: &mut Vec<PiecePosition>) {
    for at in 0..count {
        let turn = 2.0 * PI * f64::from(at) / f64::from(count);
        spots.push(spot(
            0.5 + radius * libm::sin(turn),
            0.5 - radius * libm::cos(turn),
        ));
    }
}
