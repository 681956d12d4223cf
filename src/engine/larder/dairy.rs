//! Milks, creams, milk powders, yoghurt and cheese.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
