//! Layout: where each piece lies in its tin, for a drawn plan.

use std::f64::consts::PI;
use std::num::NonZeroU16;

use super::error::TinError;
use super::grid::{Grid, MOST_PIECES, best};
use super::round_layout::{around, in_round};
use super::shape::{Across, Tin, TinShape};
use super::spot::{PiecePosition, spot};
use super::usual::DOUGH_SPECIFIC_VOLUME;
use crate::engine::quantity::{Factor, Length, Mass};

/// What is drawn round the pieces: the bottom of the tin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outline {
    /// A rectangle of such sides.
    Rectangle(Across),
    /// A circle so far across.
    Circle(Length),
    /// A circle with a tube in the middle.
    Ring {
        /// Across the circle.
        across: Length,
        /// Across the tube.
        tube: Length,
    },
    /// Cups, each where a piece lies.
    Cups(Grid),
}

/// How two neighbours lie.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Between {
    /// So far apart.
    Apart(Length),
    /// They just touch.
    Touching,
    /// Pressed into each other by so much.
    Pressed(Length),
}

/// Pieces laid out in one tin.
#[derive(Clone, Debug, PartialEq)]
pub struct Layout {
    /// The tin's bottom.
    pub outline: Outline,
    /// Rows and columns; none in round tins and rings.
    pub grid: Option<Grid>,
    /// Where each piece lies.
    pub spots: Vec<PiecePosition>,
    /// Room for one piece: the side or the circle it has to itself.
    pub place: Length,
    /// Across one piece, rolled into a ball, when it is put in.
    pub ball: Length,
    /// Across one piece when it has risen.
    pub risen: Length,
    /// How neighbours lie when they are put in.
    pub put_in: Between,
    /// How neighbours lie when they have risen.
    pub when_risen: Between,
}

/// Lays `pieces` of dough out in one tin; `rows` overrules the grid that is most nearly square.
///
/// A piece is taken as a ball of its dough: across = (6·m·v/π)^⅓, grown by the cube root of the
/// rise. In a round tin pieces lie in circles, in a ring around the tube.
///
/// Source: geometry; dough at rest: see [`DOUGH_SPECIFIC_VOLUME`].
///
/// # Errors
/// [`TinError::TooManyPieces`] above [`MOST_PIECES`]; [`TinError`] when a piece weighs nothing.
pub fn layout(
    tin: &Tin,
    pieces: NonZeroU16,
    rows: Option<NonZeroU16>,
    each: Mass,
    rise: Factor,
) -> Result<Layout, TinError> {
    if pieces.get() > MOST_PIECES {
        let most = MOST_PIECES;
        return Err(TinError::TooManyPieces { pieces, most });
    }
    if each <= Mass::ZERO {
        return Err(TinError::NoDough);
    }
    let first = each.grams() * DOUGH_SPECIFIC_VOLUME.cubic_centimetres_per_gram();
    let ball = |volume: f64| Length::from_metres(libm::cbrt(6.0 * volume / PI) / 100.0);
    let (put_in, risen) = (ball(first)?, ball(first * rise.number())?);
    let laid = lay(tin, pieces, rows)?;
    Ok(Layout {
        outline: laid.outline,
        grid: laid.grid,
        spots: laid.spots,
        place: laid.place,
        ball: put_in,
        risen,
        put_in: between(laid.place, put_in),
        when_risen: between(laid.place, risen),
    })
}

struct Laid {
    outline: Outline,
    grid: Option<Grid>,
    spots: Vec<PiecePosition>,
    place: Length,
}

fn lay(tin: &Tin, pieces: NonZeroU16, rows: Option<NonZeroU16>) -> Result<Laid, TinError> {
    match tin.shape {
        TinShape::Rectangle { bottom: across, .. } | TinShape::Tray { across } => {
            let grid =
                rows.map_or_else(|| best(pieces, across), |rows| Grid::in_rows(pieces, rows));
            let (long, wide) = (across.long.metres(), across.wide.metres());
            let column = long / f64::from(grid.columns.get());
            let row = wide / f64::from(grid.rows.get());
            Ok(Laid {
                outline: Outline::Rectangle(across),
                grid: Some(grid),
                spots: in_rows(grid, pieces),
                place: Length::from_metres(column.min(row))?,
            })
        }
        TinShape::Round { bottom, .. } => {
            let (spots, place) = in_round(pieces, bottom)?;
            let outline = Outline::Circle(bottom);
            Ok(unruled(outline, spots, place))
        }
        TinShape::Ring { bottom, tube, .. } => {
            let (spots, place) = around(pieces, bottom, tube)?;
            let across = bottom;
            Ok(unruled(Outline::Ring { across, tube }, spots, place))
        }
        TinShape::Muffin { bottom, cups, .. } => {
            let side = Across {
                long: Length::known(0.4),
                wide: Length::known(0.3),
            };
            let grid = rows.map_or_else(|| best(cups, side), |rows| Grid::in_rows(cups, rows));
            Ok(Laid {
                outline: Outline::Cups(grid),
                grid: Some(grid),
                spots: in_rows(grid, cups),
                place: bottom,
            })
        }
    }
}

const fn unruled(outline: Outline, spots: Vec<PiecePosition>, place: Length) -> Laid {
    Laid {
        outline,
        grid: None,
        spots,
        place,
    }
}

/// Row by row; a row that is not full is centred.
fn in_rows(grid: Grid, pieces: NonZeroU16) -> Vec<PiecePosition> {
    let (rows, columns) = (grid.rows.get(), grid.columns.get());
    let mut spots = Vec::new();
    let mut left = pieces.get();
    for row in 0..rows {
        let here = left.min(columns);
        left = left.saturating_sub(here);
        let begins = f64::from(columns - here) / 2.0;
        for column in 0..here {
            spots.push(spot(
                (begins + f64::from(column) + 0.5) / f64::from(columns),
                (f64::from(row) + 0.5) / f64::from(rows),
            ));
        }
    }
    spots
}

fn between(place: Length, ball: Length) -> Between {
    let gap = place.metres() - ball.metres();
    match Length::from_metres(gap.abs()) {
        Ok(length) if gap > 0.0005 => Between::Apart(length),
        Ok(length) if gap < -0.0005 => Between::Pressed(length),
        Ok(_) | Err(_) => Between::Touching,
    }
}
