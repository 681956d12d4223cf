//! Eggs and their parts.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
