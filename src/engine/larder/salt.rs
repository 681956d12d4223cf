//! Salt and raising powders.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
