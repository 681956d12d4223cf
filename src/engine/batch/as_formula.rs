//! A batch as a formula: every line at the mass of the batch.

use super::error::BatchError;
use super::scale::{Scaled, scaled_formula};
use crate::engine::formula::Formula;

impl Scaled {
    /// The formula that gives this batch when it is made once; `original` is what was scaled.
    ///
    /// Fillings and toppings grow with the dough: what stays in bag and bowl is added when a batch
    /// is weighed out, so it is no part of a formula.
    ///
    /// # Errors
    /// [`BatchError::OffScale`] when a line would pass a tonne.
    pub fn as_formula(&self, original: &Formula) -> Result<Formula, BatchError> {
        scaled_formula(original, self.factor, self.factor)
    }
}
