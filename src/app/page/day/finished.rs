//! A bake that was finished, with what was predicted of it.

use crate::engine::quantity::Temperature;
use crate::sheet::day::{Bake, PlanSnapshot};

/// A bake that was finished.
#[derive(Clone, Debug, PartialEq)]
pub struct Finished {
    /// How the plan stood as it began.
    pub planned: Vec<PlanSnapshot>,
    /// The temperature of the dough that was predicted.
    pub dough: Option<Temperature>,
    /// The bake.
    pub bake: Bake,
}
