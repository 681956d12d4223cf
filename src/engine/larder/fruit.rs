//! Fruit, juices and vegetable purées.

use super::listed::Ingredient;

pub(super) const ROWS: &[Ingredient] = &[];
