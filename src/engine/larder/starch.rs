//! Starches.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
