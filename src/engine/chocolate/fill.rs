//! Filling: how much chocolate goes into each piece.

use std::num::NonZeroU32;

use super::error::ChocolateError;
use crate::engine::quantity::{Mass, Share};

/// What is known about the filling.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FillAsked {
    /// So much in each piece.
    Each(Mass),
    /// So much is made in all, for all pieces, none spare.
    Total(Mass),
}

/// A doubt about a filling.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FillCaution {
    /// More than 12 % of the dough: seams open and the middle bakes late. Common practice is 7 to
    /// 10 g in a piece of 85 g.
    Heavy,
}

/// Filling for a batch, with the numbers met on the way.
#[derive(Clone, Debug, PartialEq)]
pub struct Fill {
    /// What was asked.
    pub asked: FillAsked,
    /// How many pieces are filled.
    pub pieces: NonZeroU32,
    /// The dough of one piece.
    pub dough_each: Mass,
    /// The share of what is made that stays in bag and bowl.
    pub stays: Share,
    /// Filling in each piece.
    pub each: Mass,
    /// Filling in all pieces together.
    pub in_pieces: Mass,
    /// To make for all pieces, what stays behind included.
    pub to_make: Mass,
    /// To make for all pieces with one spare, what stays behind included.
    pub with_spare: Mass,
    /// Filling as a share of the dough of a piece.
    pub of_dough: Share,
    /// Doubts.
    pub cautions: Vec<FillCaution>,
}

impl Fill {
    /// Filling as a share of the dough that calls for a caution, as a fraction (common practice).
    pub const HEAVY: f64 = 0.12;
}

/// Works out a filling from either side.
///
/// To make = each × pieces / (1 − what stays in bag and bowl); with a spare, one piece more. All
/// in g.
///
/// Source: mass kept (by definition); the caution is common practice.
///
/// # Errors
/// [`ChocolateError`] when a piece weighs nothing, when everything stays behind, or when a mass
/// passes a tonne.
pub fn fill(
    asked: FillAsked,
    pieces: NonZeroU32,
    dough_each: Mass,
    stays: Share,
) -> Result<Fill, ChocolateError> {
    let left = 1.0 - stays.fraction();
    if left <= 0.0 {
        return Err(ChocolateError::NothingLeft { stays });
    }
    let n = f64::from(pieces.get());
    let each = match asked {
        FillAsked::Each(mass) => mass.grams(),
        FillAsked::Total(mass) => mass.grams() * left / n,
    };
    let each = Mass::from_grams(each)?;
    let of_dough = each.share_of(dough_each).ok_or(ChocolateError::NoDough)?;
    let mut cautions = Vec::new();
    if of_dough.fraction() > Fill::HEAVY {
        cautions.push(FillCaution::Heavy);
    }
    Ok(Fill {
        asked,
        pieces,
        dough_each,
        stays,
        each,
        in_pieces: Mass::from_grams(each.grams() * n)?,
        to_make: Mass::from_grams(each.grams() * n / left)?,
        with_spare: Mass::from_grams(each.grams() * (n + 1.0) / left)?,
        of_dough,
        cautions,
    })
}
