//! Dividing: the dough on the bench into pieces that the scale can show.

use std::num::{NonZeroU16, NonZeroU32};

use super::BatchResults;
use crate::engine::batch::{BatchError, Divided, divide};
use crate::engine::quantity::Mass;

/// What is really on the bench; what is not given is as in the batch.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct DoughOnBench {
    /// The dough.
    pub dough: Option<Mass>,
    /// The pieces wanted.
    pub pieces: Option<NonZeroU16>,
}

/// Dough and pieces to divide, and how they divide.
#[derive(Clone, Debug, PartialEq)]
pub struct DividingResults {
    /// The dough.
    pub dough: Mass,
    /// The pieces wanted.
    pub pieces: NonZeroU32,
    /// The pieces as the kitchen scale shows them.
    pub divided: Result<Divided, BatchError>,
}

/// Divides the dough on the bench; none where there is no batch.
///
/// ```
/// use softcrumb::results::batch::{self, dividing};
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let results = batch::of(&sheet, Kitchen::default().scales);
/// let dividing = dividing::of(&results, dividing::DoughOnBench::default()).unwrap();
///
/// let divided = dividing.divided.unwrap();
/// assert_eq!(divided.heavier.count + divided.lighter.count, dividing.pieces.get());
/// ```
#[must_use]
pub fn of(batch: &BatchResults, bench: DoughOnBench) -> Option<DividingResults> {
    let scaled = batch.scaled.as_ref().ok()?;
    let dough = bench.dough.unwrap_or(scaled.needed);
    let pieces = bench.pieces.map_or(scaled.pieces.count, Into::into);
    Some(DividingResults {
        dough,
        pieces,
        divided: divide(dough, pieces, batch.weighing.main),
    })
}
