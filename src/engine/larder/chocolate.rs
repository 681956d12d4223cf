//! Chocolate, cocoa and cocoa butter.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
