//! Sugars, honey and syrups.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
