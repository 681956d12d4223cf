//! Dividing: the dough really on the bench, into pieces a scale can show.

use std::num::NonZeroU32;

use super::error::BatchError;
use crate::engine::quantity::{Division, Mass, MassChange};

/// So many pieces of one weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Portion {
    /// How many pieces; may be none.
    pub count: u32,
    /// The weight of each, in divisions of the scale.
    pub divisions: u32,
    /// The weight of each.
    pub each: Mass,
}

/// Dough divided: so many of one weight, and the rest one division lighter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Divided {
    /// The dough there was.
    pub dough: Mass,
    /// The pieces wanted.
    pub pieces: NonZeroU32,
    /// The scale's division.
    pub division: Division,
    /// Whole divisions in the dough; the pieces add up to exactly as many.
    pub divisions: u32,
    /// The heavier pieces; none when all are alike.
    pub heavier: Portion,
    /// The lighter pieces, one division less.
    pub lighter: Portion,
    /// The part of the dough below one division; it goes into any piece, unseen by the scale.
    pub below_division: MassChange,
}

/// Divides the dough on the bench into pieces whose weights differ by at most one division.
///
/// With N whole divisions and n pieces, the remainder of N / n pieces weigh one division more
/// than the rest, so that all add up to exactly N.
///
/// Source: division with remainder (by definition).
///
/// # Errors
/// [`BatchError::TooLittleToDivide`] when a piece would be less than one division.
pub fn divide(dough: Mass, pieces: NonZeroU32, division: Division) -> Result<Divided, BatchError> {
    let divisions = division.whole_in(dough);
    let count = pieces.get();
    let (Some(each), Some(over)) = (divisions.checked_div(count), divisions.checked_rem(count))
    else {
        return Err(too_little(dough, pieces, division));
    };
    if each == 0 {
        return Err(too_little(dough, pieces, division));
    }
    let portion = |count: u32, divisions: u32| Portion {
        count,
        divisions,
        each: division.times(divisions),
    };
    Ok(Divided {
        dough,
        pieces,
        division,
        divisions,
        heavier: portion(over, each + 1),
        lighter: portion(count - over, each),
        below_division: dough - division.times(divisions),
    })
}

const fn too_little(dough: Mass, pieces: NonZeroU32, division: Division) -> BatchError {
    BatchError::TooLittleToDivide {
        dough,
        pieces,
        division,
    }
}
