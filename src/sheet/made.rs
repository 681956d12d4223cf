//! Making a batch the formula.

use std::num::NonZeroU16;

use super::Sheet;
use crate::engine::batch::{BatchError, Scaled, Wanted};
use crate::engine::quantity::Factor;

impl Sheet {
    /// The sheet whose formula, made once, is this batch. What is wanted stays; where it was so
    /// many times the formula, it is once.
    ///
    /// # Errors
    /// As [`Scaled::as_formula`].
    pub fn made_from(&self, scaled: &Scaled) -> Result<Self, BatchError> {
        let mut made = self.clone();
        made.formula = scaled.as_formula(&self.formula)?;
        made.batch.pieces = scaled.pieces.count.try_into().unwrap_or(NonZeroU16::MAX);
        if let Wanted::Times(times) = &mut made.batch.wanted {
            *times = Factor::ONE;
        }
        Ok(made)
    }
}
