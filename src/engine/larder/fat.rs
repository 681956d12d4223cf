//! Butter, oils and other fats.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
